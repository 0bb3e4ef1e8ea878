//! `harvest.list`: what was picked lately.

use message::Failure;
use reckon::asked;
use serde::{Deserialize, Serialize};
use store::HarvestFilter;

use crate::harvest::card::{HarvestCard, card};
use crate::open::Open;
use crate::request::Command;

/// Harvests, the latest first; `before` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListHarvests {
    pub before: Option<String>,
    pub limit: Option<u32>,
    pub herb: Option<String>,
    pub bed: Option<String>,
}

/// The answer to [`ListHarvests`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Harvests {
    pub harvests: Vec<HarvestCard>,
    pub more: bool,
}

impl Command for ListHarvests {
    const NAME: &'static str = "harvest.list";
    type Reply = Harvests;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let before = asked::id_if_any("before", self.before.as_deref())?;
        let bed = asked::id_if_any("bed", self.bed.as_deref())?;
        let limit = asked::limit(self.limit, 50)?;
        app.read(|reading| {
            let herb = asked::herb_if_any(reading, self.herb.as_deref())?;
            let page = reading.harvests(&HarvestFilter {
                before,
                limit,
                herb,
                bed,
            })?;
            let cards: Result<Vec<_>, Failure> = page
                .rows
                .into_iter()
                .map(|row| card(reading, row))
                .collect();
            Ok(Harvests {
                harvests: cards?,
                more: page.more,
            })
        })
    }
}
