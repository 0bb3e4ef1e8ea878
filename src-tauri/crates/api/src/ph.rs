//! A pH that was read with a strip or a meter: how it is asked for, and how it is shown.

use formulary::preparations::Preparation;
use formulary::{Note, keep};
use journal::{BottleId, PhRead};
use message::{Argument, At as _, Failure, Unit, say};
use physics::Interval;
use physics::mixture::ph::{PhReading, ReadWith};
use serde::Serialize;
use store::Reading;

/// The last pH that counts for a liquid, with the range in which the real one lies.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhShown {
    pub ph: Interval,
    pub read_with: Option<ReadWith>,
    pub at: String,
    /// The code of the bottle it was read in, where that is another one.
    pub read_in: Option<String>,
    /// Whether acid protects it wherever in the range it lies.
    pub is_acid_enough: bool,
    pub told: Note,
}

/// The pH of a request, if one was read.
///
/// # Errors
/// A failure that names `ph` for a pH outside 0 to 14, for one of a liquid that acid does not keep,
/// and for a strip or a meter that showed nothing.
pub(crate) fn asked(
    ph: Option<f64>,
    read_with: Option<ReadWith>,
    preparation: Option<&Preparation>,
) -> Result<Option<PhReading>, Failure> {
    let Some(value) = ph else {
        return match read_with {
            None => Ok(None),
            Some(_) => Err(Failure::invalid("ph", say!("ph-which"))),
        };
    };
    if !preparation.is_some_and(Preparation::is_kept_by_acid) {
        return Err(Failure::invalid("ph", say!("ph-not-kept-by-acid")));
    }
    PhReading::new(value, read_with).at("ph").map(Some)
}

/// A pH as the line of a deed tells it; a meter shows hundredths.
pub(crate) fn told(ph: PhReading) -> Argument {
    Argument::exact((ph.value * 100.0).round() / 100.0, Unit::None)
}

/// The reading that counts, as `own` shows it: a bottle, or the jar where none is named.
pub(crate) fn shown(
    reading: &Reading<'_>,
    read: Option<PhRead>,
    own: Option<&BottleId>,
) -> Result<Option<PhShown>, Failure> {
    let Some(read) = read else { return Ok(None) };
    let read_in = match read.bottle.filter(|bottle| Some(bottle) != own) {
        Some(bottle) => Some(reading.bottle(&bottle)?.bottle.code.to_string()),
        None => None,
    };
    Ok(Some(PhShown {
        ph: read.ph.interval(),
        read_with: read.ph.read_with,
        at: read.at.to_rfc3339(),
        read_in,
        is_acid_enough: read.ph.is_acid_enough(),
        told: keep::told(read.ph, read.at.date_naive()),
    }))
}
