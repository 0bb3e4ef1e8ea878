//! `tray.bin`: part of a dried lot was used, as tea say, or thrown away; or a whole tray was, while it was drying.

use journal::{Source, TrayId};
use message::{Argument, Failure, say};
use reckon::herb::Known;
use reckon::tray::run::refuse_if_lost;
use reckon::{asked, told};
use serde::Deserialize;

use crate::discard::{Bin, WentTo};
use crate::open::Open;
use crate::request::Command;
use crate::tray::page::{TrayWritten, written};

/// Dried plant was used in another way than in a jar, or thrown away: all that is left of it unless `mass_g` says less.
/// A tray that is still drying is thrown away whole.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BinTray {
    pub id: String,
    pub mass_g: Option<f64>,
    /// Thrown away, unless it says otherwise.
    pub went_to: Option<WentTo>,
    /// Why, or for what; it must be said of what is thrown away.
    pub reason: Option<String>,
    pub at: Option<String>,
}

impl Command for BinTray {
    const NAME: &'static str = "tray.bin";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("id", &self.id)?;
        let bin = Bin::asked(
            app,
            self.mass_g,
            self.went_to,
            self.reason,
            self.at.as_deref(),
        )?;
        let (done, ()) = app.perform(|writing| {
            let row = writing.tray(&id)?;
            let mut tray = row.tray;
            refuse_if_lost(&tray).map_err(|why| why.renamed("id"))?;
            let herb = told::herb(&Known::written(writing, &row.harvest.herb)?);
            let code = tray.code.clone();
            if let Some(down) = tray.down() {
                let (went_to, mass) = bin.of(writing, Source::Tray(id), down.at)?;
                let line = match went_to {
                    WentTo::Used => say!("deed-tray-used", mass, herb, code = &code),
                    WentTo::ThrownAway => say!("deed-tray-thrown-away", mass, herb, code = &code),
                };
                return Ok((line, ()));
            }
            let weighed = row.last_weighing.map(|(_, weighing)| weighing.at);
            tray.lost = Some(bin.of_drying(weighed.unwrap_or(tray.started_at))?);
            writing.correct(&id, &tray)?;
            let mass = Argument::grams(tray.fresh_mass_g);
            Ok((say!("deed-tray-lost", herb, code = &code, mass), ()))
        })?;
        written(app, done, &id)
    }
}
