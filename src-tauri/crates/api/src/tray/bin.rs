//! `tray.bin`: part of a dried lot was used, as tea say, or thrown away.

use journal::{Source, TrayId};
use serde::Deserialize;

use super::wire::TrayWritten;
use super::write::written;
use crate::discard::{Bin, WentTo};
use crate::herb::Known;
use crate::{App, Command, Failure, asked};

/// Dried plant was used in another way than in a jar, or thrown away: all that is left of it unless `mass_g` says less.
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
            let Some(down) = row.tray.taken_down else {
                let message =
                    "This tray is still drying: take it down first, and then say where it went.";
                return Err(Failure::invalid("id", message));
            };
            let known = Known::written(writing, &row.harvest.herb)?;
            let done = bin.of(writing, Source::Tray(id), down.at)?;
            let (name, code) = (known.common, row.tray.code);
            Ok((format!("{done} of dried {name} ({code})"), ()))
        })?;
        written(app, done, &id)
    }
}
