//! `tray.weigh`, `weighing.correct` and `weighing.strike`.

use chrono::{DateTime, FixedOffset};
use journal::{TrayId, Weighing, WeighingId, days_since, weighings_fit};
use message::{Argument, Message};
use store::{Reading, TrayRow};
use uuid::Uuid;

use super::run::Run;
use super::wire::{CorrectWeighing, StrikeWeighing, TrayWritten, WeighTray};
use super::write::{measured, refuse_if_ended, written};
use crate::{App, Command, Failure, asked, words};

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
                snap_test: self.snap_test.unwrap_or(false),
            };
            // First into the journal, which refuses what no scale shows, then a look at the sense of it.
            writing.record(&id, &weighing)?;
            let line = format!(
                "Weighed {} ({}): {} g",
                row.tray.name,
                row.tray.code,
                words::figure(gross_g - row.tray.tare_g)
            );
            if let Some(question) = question(writing, row, &id)? {
                if !is_confirmed {
                    return Err(question);
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
            weighing.snap_test = self.snap_test.unwrap_or(weighing.snap_test);
            weighing.odd = false;
            let row = writing.tray(&weighing.tray)?;
            weighings_fit(&row.tray, weighing.gross_g, weighing.at)?;
            writing.correct(&id, &weighing)?;
            let line = format!(
                "Corrected a weigh-in of {} ({})",
                row.tray.name, row.tray.code
            );
            // Whoever corrects a weigh-in has looked at it: it is marked, not asked for again.
            if question(writing, row, &id)?.is_some() {
                weighing.odd = true;
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

/// What to ask about a weigh-in that the forecast had to set aside; nothing where it counts.
fn question(
    reading: &Reading<'_>,
    row: TrayRow,
    id: &WeighingId,
) -> Result<Option<Failure>, Failure> {
    Ok(asked_of(&Run::of(reading, row)?, id))
}

/// What to ask about the weight of a tray that comes down; nothing where it fits, or is no weight at all.
pub(super) fn question_at_end(
    reading: &Reading<'_>,
    row: TrayRow,
    gross_g: f64,
    at: DateTime<FixedOffset>,
) -> Result<Option<Failure>, Failure> {
    if !(gross_g > row.tray.tare_g && at >= row.tray.started_at) {
        return Ok(None);
    }
    let id = WeighingId(Uuid::nil());
    let last = Weighing {
        tray: row.id,
        at,
        gross_g,
        air: None,
        odd: false,
        snap_test: false,
    };
    let mut weighings = reading.weighings(&row.id)?;
    weighings.push((id, last));
    Ok(asked_of(&Run::with(reading, row, weighings)?, &id))
}

fn asked_of(run: &Run, id: &WeighingId) -> Option<Failure> {
    let (tray, odd) = (&run.row.tray, &run.estimate.odd);
    let mut all = run.weighings.iter().enumerate();
    let (place, (_, asked)) = all.find(|(_, (weighing, _))| weighing == id)?;
    if !odd.contains(&place) {
        return None;
    }
    let mass = Argument::grams(asked.gross_g);
    let fresh = Argument::grams(tray.fresh_mass_g + tray.tare_g);
    let before = (0..place).rev().find(|before| !odd.contains(before));
    let message = match before.map(|before| &run.weighings[before].1) {
        _ if asked.gross_g > tray.fresh_mass_g + tray.tare_g => {
            Message::new("weighing-heavier-than-fresh")
                .with("mass", mass)
                .with("fresh", fresh)
        }
        Some(before) => {
            let days = days_since(before.at, asked.at);
            Message::new("weighing-off-its-course")
                .with("mass", mass)
                .with("before", Argument::grams(before.gross_g))
                .with("days", Argument::count(u64::try_from(days).unwrap_or(0)))
        }
        None => Message::new("weighing-too-light")
            .with("mass", mass)
            .with("fresh", fresh),
    };
    Some(Failure::odd("gross_g", message))
}
