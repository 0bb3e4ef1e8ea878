//! `tray.bin`: part of a dried lot was used, as tea say, or thrown away; or a whole tray was, while it was drying.

use journal::{Source, TrayId};
use serde::Deserialize;

use super::wire::TrayWritten;
use super::write::{refuse_if_lost, written};
use crate::discard::{Bin, WentTo};
use crate::herb::Known;
use crate::{App, Command, Failure, asked, words};

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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
            let name = Known::written(writing, &row.harvest.herb)?.common;
            if let Some(down) = tray.down() {
                let done = bin.of(writing, Source::Tray(id), down.at)?;
                return Ok((format!("{done} of dried {name} ({})", tray.code), ()));
            }
            let weighed = row.last_weighing.map(|(_, weighing)| weighing.at);
            tray.lost = Some(bin.of_drying(weighed.unwrap_or(tray.started_at))?);
            writing.correct(&id, &tray)?;
            let (code, fresh) = (&tray.code, words::figure(tray.fresh_mass_g));
            let line = format!(
                "Threw away {name} ({code}) while it was drying, {fresh} g as laid out fresh"
            );
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}
