//! What was done with a jar, line by line.

use journal::{How, JarId, Source};
use message::Failure;
use physics::Interval;
use physics::mixture::ph::ReadWith;
use serde::Serialize;
use store::Reading;

use crate::discard::WentTo;

/// One shaking.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShakeLine {
    pub id: String,
    pub at: String,
}

/// What came out, and what the marc kept after it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrainingLine {
    pub id: String,
    pub at: String,
    pub how: How,
    pub came_out_ml: f64,
    pub came_out_g: Option<f64>,
    pub retained_ml: Interval,
    pub retained_ml_per_g_dry: Option<Interval>,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
}

/// The shakes of a jar.
pub(crate) fn shakes(reading: &Reading<'_>, id: &JarId) -> Result<Vec<ShakeLine>, Failure> {
    let shakes = reading.shakes(id)?.into_iter().map(|(id, it)| ShakeLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
    });
    Ok(shakes.collect())
}

/// The strainings of a jar, each with what the marc kept after it.
pub(crate) fn strainings(reading: &Reading<'_>, id: &JarId) -> Result<Vec<StrainingLine>, Failure> {
    let mut out = 0.0;
    let lines = reading.strainings(id)?.into_iter().map(|(id, it)| {
        out += it.came_out_ml;
        StrainingLine {
            id: id.to_string(),
            at: it.at.to_rfc3339(),
            how: it.how,
            came_out_ml: it.came_out_ml,
            came_out_g: it.came_out_g,
            retained_ml: it.retained_ml(out),
            retained_ml_per_g_dry: it.retained_ml_per_g_dry(out),
            ph: it.ph.map(|ph| ph.value),
            read_with: it.ph.and_then(|ph| ph.read_with),
            note: it.note,
        }
    });
    Ok(lines.collect())
}

/// A part of the strained liquid that no bottle took.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RestLine {
    pub id: String,
    pub at: String,
    pub ml: f64,
    pub went_to: WentTo,
    pub reason: Option<String>,
}

/// What of the strained liquid no bottle took.
pub(crate) fn rests(reading: &Reading<'_>, id: &JarId) -> Result<Vec<RestLine>, Failure> {
    let discards = reading.discards(Source::Jar(*id))?.into_iter();
    let lines = discards.map(|(id, it)| RestLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
        ml: it.amount,
        went_to: WentTo::of(&it),
        reason: it.reason,
    });
    Ok(lines.collect())
}

/// The jar whose marc is in this one, with its own ratio.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MarcOf {
    pub jar: String,
    pub code: String,
    pub name: String,
    pub ratio_ml_per_g: Option<f64>,
}
