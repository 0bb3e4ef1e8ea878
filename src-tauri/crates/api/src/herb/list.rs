//! `herb.list`: what can be picked, the maker's recent ones first.

use std::collections::BTreeMap;

use formulary::herbs::OwnHerb;
use message::{Failure, Message};
use reckon::herb::Known;
use reckon::told;
use serde::Serialize;

use crate::open::Open;
use crate::request::{Command, bare_request};
use crate::speech;

bare_request!(
    /// Every herb, the maker's recent ones first.
    ListHerbs
);

/// A herb in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbLine {
    pub key: String,
    pub common: Message,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub own: bool,
    pub last_picked_at: Option<String>,
    pub look_alike: bool,
    /// What the maker wrote down of a herb of their own; none of a herb of the tables.
    pub own_figures: Option<OwnHerb>,
}

/// The answer to [`ListHerbs`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Herbs {
    pub herbs: Vec<HerbLine>,
}

impl Command for ListHerbs {
    const NAME: &'static str = "herb.list";
    type Reply = Herbs;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let mut lines: Vec<HerbLine> = formulary::herbs::all()
                .iter()
                .filter(|entry| entry.is_offered())
                .map(|entry| line(&Known::of_book(entry), None))
                .collect();
            for (id, herb) in reading.herbs()? {
                lines.push(line(&Known::of_maker(id.into(), herb), None));
            }
            let uses = reading.herb_uses()?;
            let recent: BTreeMap<&str, (usize, String)> = uses
                .iter()
                .enumerate()
                .map(|(rank, it)| (it.herb.as_str(), (rank, it.picked_at.to_rfc3339())))
                .collect();
            let rank = |line: &HerbLine| {
                recent
                    .get(line.key.as_str())
                    .map_or(usize::MAX, |(rank, _)| *rank)
            };
            lines
                .sort_by_cached_key(|line| (rank(line), speech::line(&line.common).to_lowercase()));
            for line in &mut lines {
                line.last_picked_at = recent.get(line.key.as_str()).map(|(_, at)| at.clone());
            }
            Ok(Herbs { herbs: lines })
        })
    }
}

/// A herb in a list.
pub(crate) fn line(known: &Known, last_picked_at: Option<String>) -> HerbLine {
    HerbLine {
        key: known.key.to_string(),
        common: told::title(known),
        latin: known.latin.clone(),
        parts: known.parts.clone(),
        own: known.entry.is_none(),
        last_picked_at,
        look_alike: known.has_look_alike(),
        own_figures: known.entry.is_none().then(|| known.own.clone()),
    }
}
