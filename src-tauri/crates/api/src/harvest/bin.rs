//! `harvest.bin`: part of a harvest, still fresh, was used or thrown away.

use journal::{Harvest, HarvestId, Source};
use message::{Failure, say};
use reckon::herb::Known;
use reckon::{asked, told};
use serde::Deserialize;

use crate::discard::{Bin, WentTo};
use crate::harvest::card::{HarvestWritten, written};
use crate::open::Open;
use crate::request::Command;

/// Fresh plant was used in another way than in a jar or on a tray, or thrown away: all that is left of it unless `mass_g` says less.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BinHarvest {
    pub id: String,
    pub mass_g: Option<f64>,
    /// Thrown away, unless it says otherwise.
    pub went_to: Option<WentTo>,
    /// Why, or for what; it must be said of what is thrown away.
    pub reason: Option<String>,
    pub at: Option<String>,
}

impl Command for BinHarvest {
    const NAME: &'static str = "harvest.bin";
    type Reply = HarvestWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: HarvestId = asked::id("id", &self.id)?;
        let bin = Bin::asked(
            app,
            self.mass_g,
            self.went_to,
            self.reason,
            self.at.as_deref(),
        )?;
        let (done, ()) = app.perform(|writing| {
            let harvest = writing.get::<Harvest>(&id)?;
            let herb = told::herb(&Known::written(writing, &harvest.herb)?);
            let (went_to, mass) = bin.of(writing, Source::Harvest(id), harvest.picked_at)?;
            let code = &harvest.code;
            let line = match went_to {
                WentTo::Used => say!("deed-harvest-used", mass, herb, code),
                WentTo::ThrownAway => say!("deed-harvest-thrown-away", mass, herb, code),
            };
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}
