//! `tray.weigh`, `weighing.correct` and `weighing.strike`.

use chrono::{DateTime, FixedOffset};
use journal::{Air, TrayId, Weighing, WeighingId, days_since, weighings_fit};
use message::{Argument, Failure, say};
use reckon::asked;
use reckon::tray::run::{Run, refuse_if_ended};
use serde::Deserialize;
use store::{Reading, TrayRow};
use uuid::Uuid;

use crate::open::Open;
use crate::request::Command;
use crate::tray::page::{TrayWritten, written};
use crate::tray::write::measured;

/// A tray was weighed as it stands.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct WeighTray {
    pub tray: String,
    pub gross_g: f64,
    pub at: Option<String>,
    pub air: Option<Air>,
    /// The weight was asked about and is right.
    pub confirm_odd: Option<bool>,
    /// It was tried by hand and is dry: the thickest part breaks, a leaf crumbles.
    pub snap_test: Option<bool>,
}

impl Command for WeighTray {
    const NAME: &'static str = "tray.weigh";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
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
            let line = say!(
                "deed-tray-weighed",
                name = Argument::own(&row.tray.name),
                code = &row.tray.code,
                mass = Argument::grams(gross_g - row.tray.tare_g)
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

/// What to ask about a weigh-in that the forecast had to set aside; nothing where it counts.
pub(crate) fn question(
    reading: &Reading<'_>,
    row: TrayRow,
    id: &WeighingId,
) -> Result<Option<Failure>, Failure> {
    Ok(asked_of(&Run::of(reading, row)?, id))
}

/// What to ask about the weight of a tray that comes down; nothing where it fits, or is no weight at all.
pub(crate) fn question_at_end(
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
            say!("weighing-heavier-than-fresh", mass, fresh)
        }
        Some(before) => {
            let days = u64::try_from(days_since(before.at, asked.at)).unwrap_or(0);
            let before = Argument::grams(before.gross_g);
            say!("weighing-off-its-course", mass, before, days)
        }
        None => say!("weighing-too-light", mass, fresh),
    };
    Some(Failure::odd("gross_g", message))
}
