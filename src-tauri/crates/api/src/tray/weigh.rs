//! `tray.weigh`, `weighing.correct` and `weighing.strike`.

use journal::{TrayId, Weighing, WeighingId, weighings_fit};
use store::{Reading, TrayRow};

use super::run::Run;
use super::wire::{CorrectWeighing, StrikeWeighing, TrayWritten, WeighTray};
use super::write::{measured, refuse_if_ended, written};
use crate::{App, Code, Command, Failure, asked, words};

impl Command for WeighTray {
    const NAME: &'static str = "tray.weigh";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let tray: TrayId = asked::id("tray", &self.tray)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = WeighingId(app.new_id());
        let air = self.air.map(measured).transpose()?;
        let is_confirmed = self.confirm_odd.unwrap_or(false);
        let (done, ()) = app.perform(|writing| {
            let row = writing
                .tray(&tray)
                .map_err(|why| Failure::from(why).renamed("tray"))?;
            refuse_if_ended(&row.tray)?;
            weighings_fit(&row.tray, self.gross_g, at)?;
            let gross_g = self.gross_g;
            let mut weighing = Weighing {
                tray,
                at,
                gross_g,
                air,
                odd: false,
            };
            // First into the journal, which refuses what no scale shows, then a look at the sense of it.
            writing.record(&id, &weighing)?;
            let line = format!(
                "Weighed {} ({}): {} g",
                row.tray.name,
                row.tray.code,
                words::figure(gross_g - row.tray.tare_g)
            );
            if is_odd(writing, row, &id)? {
                if !is_confirmed {
                    return Err(odd(gross_g));
                }
                weighing.odd = true;
                writing.correct(&id, &weighing)?;
            }
            Ok((line, ()))
        })?;
        written(app, done, &tray)
    }
}

impl Command for CorrectWeighing {
    const NAME: &'static str = "weighing.correct";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: WeighingId = asked::id("id", &self.id)?;
        let at = self
            .at
            .as_deref()
            .map(|at| asked::past("at", Some(at), app.now()))
            .transpose()?;
        let air = self.air.map(measured).transpose()?;
        let (done, tray) = app.perform(|writing| {
            let mut weighing = writing.get::<Weighing>(&id)?;
            weighing.gross_g = self.gross_g.unwrap_or(weighing.gross_g);
            weighing.at = at.unwrap_or(weighing.at);
            weighing.air = air.or(weighing.air);
            let row = writing.tray(&weighing.tray)?;
            weighings_fit(&row.tray, weighing.gross_g, weighing.at)?;
            writing.correct(&id, &weighing)?;
            let line = format!(
                "Corrected a weigh-in of {} ({})",
                row.tray.name, row.tray.code
            );
            // Whoever corrects a weigh-in has looked at it: it is marked, not asked for again.
            let is_odd = is_odd(writing, row, &id)?;
            if is_odd != weighing.odd {
                weighing.odd = is_odd;
                writing.correct(&id, &weighing)?;
            }
            Ok((line, weighing.tray))
        })?;
        written(app, done, &tray)
    }
}

impl Command for StrikeWeighing {
    const NAME: &'static str = "weighing.strike";
    type Reply = TrayWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: WeighingId = asked::id("id", &self.id)?;
        let (done, tray) = app.perform(|writing| {
            let weighing = writing.get::<Weighing>(&id)?;
            let row = writing.tray(&weighing.tray)?;
            writing.strike::<Weighing>(&id)?;
            let line = format!("Struck a weigh-in of {} ({})", row.tray.name, row.tray.code);
            Ok((line, weighing.tray))
        })?;
        written(app, done, &tray)
    }
}

/// Whether the forecast had to leave this weigh-in out: heavier than fresh or lighter than dry.
fn is_odd(reading: &Reading<'_>, row: TrayRow, id: &WeighingId) -> Result<bool, Failure> {
    let run = Run::of(reading, row)?;
    let place = run
        .weighings
        .iter()
        .position(|(weighing, _)| weighing == id);
    Ok(place.is_some_and(|place| run.estimate.odd.contains(&place)))
}

fn odd(gross_g: f64) -> Failure {
    let message = format!(
        "{} g is heavier than the fresh herb or lighter than its dry matter could be: look at the scale again, or confirm it.",
        words::figure(gross_g)
    );
    Failure {
        field: Some("gross_g".to_owned()),
        ..Failure::new(Code::ConfirmOdd, message)
    }
}
