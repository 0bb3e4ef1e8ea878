//! `herb.list`: what can be picked, the maker's recent ones first.

use std::collections::BTreeMap;

use super::known::Known;
use super::wire::{HerbLine, Herbs, ListHerbs};
use crate::{App, Command, Failure};

impl Command for ListHerbs {
    const NAME: &'static str = "herb.list";
    type Reply = Herbs;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
            lines.sort_by_cached_key(|line| (rank(line), line.common.to_lowercase()));
            for line in &mut lines {
                line.last_picked_at = recent.get(line.key.as_str()).map(|(_, at)| at.clone());
            }
            Ok(Herbs { herbs: lines })
        })
    }
}

/// A herb in a list.
pub(super) fn line(known: &Known, last_picked_at: Option<String>) -> HerbLine {
    HerbLine {
        key: known.key.to_string(),
        common: known.common.clone(),
        latin: known.latin.clone(),
        parts: known.parts.clone(),
        own: known.entry.is_none(),
        last_picked_at,
        look_alike: known.has_look_alike(),
    }
}
