//! `tray.show`: a tray with its curve, and how it is told after a write.

use formulary::herbs::part::class_of;
use formulary::{Note, Status};
use journal::{Air, Source, TrayId};
use message::Failure;
use physics::Interval;
use physics::drying::Basis;
use reckon::asked;
use reckon::tray::card::{TrayCard, card_of};
use reckon::tray::course::{Course, course};
use reckon::tray::reasons::{notes, reasons};
use reckon::tray::run::Run;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::changed::Changed;
use crate::discard::{Binned, binned};
use crate::drying::request::OvenSample;
use crate::open::Open;
use crate::request::Command;

/// One tray.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowTray {
    pub id: String,
}

/// Why a tray was thrown away while it was drying, and when.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LostLine {
    pub at: String,
    pub reason: String,
}

/// A tray with its weigh-ins and its forecast.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayPage {
    #[serde(flatten)]
    pub card: TrayCard,
    pub dry_matter_g: Interval,
    pub basis: Basis,
    /// Why the forecast says no more than it does.
    pub reasons: Vec<Note>,
    /// How the hand tells that it is dry.
    pub feel: Note,
    pub notes: Vec<Note>,
    /// What the scale shows when weigh-ins begin to tell of the end; none once they do.
    pub telling_gross_g: Option<f64>,
    #[serde(flatten)]
    pub course: Course,
    pub note: Option<String>,
    pub sample: Option<OvenSample>,
    /// The air where the tray was laid out.
    pub air: Option<Air>,
    pub air_limit_wet_percent: Option<Interval>,
    /// What of the dried lot was used in another way than in a jar, or thrown away.
    pub binned: Vec<Binned>,
    pub lost: Option<LostLine>,
}

/// The answer to [`ShowTray`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayShown {
    pub tray: TrayPage,
}

/// A tray was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub tray: TrayPage,
}

impl Command for ShowTray {
    const NAME: &'static str = "tray.show";
    type Reply = TrayShown;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(TrayShown {
                tray: page(app, reading, &id)?,
            })
        })
    }
}

/// A tray with its weigh-ins and its forecast.
pub(crate) fn page(
    app: &Open,
    reading: &Reading<'_>,
    id: &journal::TrayId,
) -> Result<TrayPage, Failure> {
    let run = Run::read(reading, id)?;
    let tray = &run.row.tray;
    Ok(TrayPage {
        card: card_of(&run, app.now()),
        dry_matter_g: run.estimate.dry_matter_g,
        basis: run.estimate.basis,
        reasons: reasons(&run),
        feel: Note {
            code: "feel".to_owned(),
            text: class_of(&run.row.harvest.part).feel_when_dry(),
            source: None,
            status: Status::Practice,
        },
        notes: notes(&run),
        telling_gross_g: run
            .estimate
            .telling_mass_g
            .filter(|_| tray.is_drying())
            .map(|mass_g| mass_g + tray.tare_g),
        course: course(&run),
        note: tray.note.clone(),
        sample: tray.sample.map(|it| OvenSample {
            fresh_g: it.fresh_g,
            dry_g: it.dry_g,
        }),
        air: tray.air,
        air_limit_wet_percent: run.estimate.air_limit_wet_percent,
        binned: binned(reading, Source::Tray(*id))?,
        lost: tray.lost.as_ref().map(|lost| LostLine {
            at: lost.at.to_rfc3339(),
            reason: lost.reason.clone(),
        }),
    })
}

pub(crate) fn written(app: &Open, done: Changed, id: &TrayId) -> Result<TrayWritten, Failure> {
    let tray = app.read_back(|reading| page(app, reading, id))?;
    Ok(TrayWritten { done, tray })
}
