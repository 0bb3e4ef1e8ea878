//! `harvest.list`: what was picked lately.

use store::HarvestFilter;

use super::page::card;
use super::wire::{Harvests, ListHarvests};
use crate::herb::Known;
use crate::{App, Command, Failure, asked};

impl Command for ListHarvests {
    const NAME: &'static str = "harvest.list";
    type Reply = Harvests;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let before = self
            .before
            .as_deref()
            .map(|id| asked::id("before", id))
            .transpose()?;
        let bed = self
            .bed
            .as_deref()
            .map(|id| asked::id("bed", id))
            .transpose()?;
        let limit = asked::limit(self.limit, 50)?;
        app.read(|reading| {
            let herb = self
                .herb
                .as_deref()
                .map(|herb| Known::asked(reading, herb))
                .transpose()?;
            let herb = herb.map(|known| known.key);
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
