//! `weighing.correct` and `weighing.strike`.

use journal::{Air, Weighing, WeighingId, weighings_fit};
use message::{Argument, Failure, say};
use reckon::asked;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;
use crate::tray::page::{TrayWritten, written};
use crate::tray::weigh::question;
use crate::tray::write::measured;

/// A change to a weigh-in; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectWeighing {
    pub id: String,
    pub gross_g: Option<f64>,
    pub at: Option<String>,
    pub air: Option<Air>,
    pub snap_test: Option<bool>,
}

/// A weigh-in was a mistake.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrikeWeighing {
    pub id: String,
}

impl Command for CorrectWeighing {
    const NAME: &'static str = "weighing.correct";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: WeighingId = asked::id("id", &self.id)?;
        let at = self
            .at
            .as_deref()
            .map(|at| asked::past("at", Some(at), app.now()))
            .transpose()?;
        let air = self.air.map(measured).transpose()?;
        let (done, weighing) = app.correct::<Weighing>("id", &id, |writing, weighing| {
            asked::set(&mut weighing.gross_g, self.gross_g);
            asked::set(&mut weighing.at, at);
            asked::set(&mut weighing.air, air.map(Some));
            asked::set(&mut weighing.snap_test, self.snap_test);
            weighing.odd = false;
            let row = writing.tray(&weighing.tray)?;
            weighings_fit(&row.tray, weighing.gross_g, weighing.at)?;
            let name = Argument::own(&row.tray.name);
            let line = say!("deed-weight-edited", name, code = &row.tray.code);
            // Whoever corrects a weigh-in has looked at it: it is marked, not asked for again. The forecast reads it as it
            // stands now.
            writing.correct(&id, weighing)?;
            weighing.odd = question(writing, row, &id)?.is_some();
            Ok(line)
        })?;
        written(app, done, &weighing.tray)
    }
}

impl Command for StrikeWeighing {
    const NAME: &'static str = "weighing.strike";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: WeighingId = asked::id("id", &self.id)?;
        let (done, tray) = app.perform(|writing| {
            let weighing = writing.get::<Weighing>(&id)?;
            let row = writing.tray(&weighing.tray)?;
            writing.strike::<Weighing>(&id)?;
            let name = Argument::own(&row.tray.name);
            let line = say!("deed-weight-deleted", name, code = &row.tray.code);
            Ok((line, weighing.tray))
        })?;
        written(app, done, &tray)
    }
}
