//! How a tray dries over its hours, as it is drawn: what was weighed and what is foretold.

use journal::Air;
use physics::{Interval, drying};
use serde::Serialize;

use crate::tray::run::{Run, hours_between};

/// A weigh-in of a tray.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WeighingLine {
    pub id: String,
    pub at: String,
    pub hours: f64,
    pub gross_g: f64,
    pub mass_g: f64,
    pub odd: bool,
    pub snap_test: bool,
    pub air: Option<Air>,
}

/// A point of the drying curve with its band.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CurvePoint {
    pub hours: f64,
    pub low_g: f64,
    pub value_g: f64,
    pub high_g: f64,
}

/// What was weighed of a tray and what is foretold.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Course {
    /// When it will be dry enough, in hours on the rack.
    pub ends_hours: Option<Interval>,
    pub weighings: Vec<WeighingLine>,
    pub curve: Vec<CurvePoint>,
}

/// How the tray of a run dries.
pub fn course(run: &Run) -> Course {
    let tray = &run.row.tray;
    let weighings = run.weighings.iter().enumerate();
    let weighings = weighings.map(|(at, (id, it))| WeighingLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
        hours: hours_between(tray.started_at, it.at),
        gross_g: it.gross_g,
        mass_g: it.gross_g - tray.tare_g,
        odd: it.odd || run.estimate.odd.contains(&at),
        snap_test: it.snap_test,
        air: it.air,
    });
    // Nothing is foretold of what is no more, and a pot does not dry.
    let ended = tray.lost.as_ref();
    let ended = ended.map_or(f64::INFINITY, |lost| {
        hours_between(tray.started_at, lost.at)
    });
    let curve = match tray.cooked {
        Some(_) => Vec::new(),
        None => drying::curve(&run.lot),
    };
    let curve = curve.into_iter().filter(|point| point.hours <= ended);
    Course {
        ends_hours: run.ends_hours(),
        weighings: weighings.collect(),
        curve: curve
            .map(|point| CurvePoint {
                hours: point.hours,
                low_g: point.mass_g.low,
                value_g: point.mass_g.value,
                high_g: point.mass_g.high,
            })
            .collect(),
    }
}
