//! `tray.bin`: part of a dried lot was thrown away.

use journal::{Source, TrayId};
use serde::Deserialize;

use super::wire::TrayWritten;
use super::write::written;
use crate::discard::Bin;
use crate::herb::Known;
use crate::{App, Command, Failure, asked};

/// Dried plant was thrown away: all that is left of it unless `mass_g` says less.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BinTray {
    pub id: String,
    pub mass_g: Option<f64>,
    pub reason: String,
    pub at: Option<String>,
}

impl Command for BinTray {
    const NAME: &'static str = "tray.bin";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: TrayId = asked::id("id", &self.id)?;
        let bin = Bin::asked(app, self.mass_g, self.reason, self.at.as_deref())?;
        let (done, ()) = app.perform(|writing| {
            let row = writing.tray(&id)?;
            let Some(down) = row.tray.taken_down else {
                let message = "This tray is still drying: take it down first, and then throw away what lay on it.";
                return Err(Failure::invalid("id", message));
            };
            let known = Known::written(writing, &row.harvest.herb)?;
            let grams = bin.of(writing, Source::Tray(id), down.at)?;
            let (name, code) = (known.common, row.tray.code);
            Ok((format!("Threw away {grams} g of dried {name} ({code})"), ()))
        })?;
        written(app, done, &id)
    }
}
