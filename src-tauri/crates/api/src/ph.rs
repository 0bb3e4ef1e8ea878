//! A pH that was read with a strip or a meter: how it is asked for, and how it is shown.

use formulary::keep;
use formulary::preparations::Preparation;
use journal::{BottleId, PhRead};
use physics::mixture::ph::{self, PhReading};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::Failure;
use crate::failure::At as _;
use crate::wire::{Interval, Note};

/// What a pH was read with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum ReadWith {
    Strip,
    Meter,
}

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
            Some(_) => Err(Failure::invalid(
                "ph",
                "Say which pH was read, between 0 and 14.",
            )),
        };
    };
    if !preparation.is_some_and(Preparation::is_kept_by_acid) {
        let message = "A pH is written down of vinegars, shrubs and oxymels only: nothing else is kept by acid here.";
        return Err(Failure::invalid("ph", message));
    }
    PhReading::new(value, read_with.map(Into::into))
        .at("ph")
        .map(Some)
}

/// What a deed adds about a pH: ", pH 3.2".
pub(crate) fn added(ph: Option<PhReading>) -> String {
    // A meter shows hundredths.
    ph.map_or_else(String::new, |ph| {
        format!(", pH {}", (ph.value * 100.0).round() / 100.0)
    })
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
        ph: read.ph.interval().into(),
        read_with: read.ph.read_with.map(Into::into),
        at: read.at.to_rfc3339(),
        read_in,
        is_acid_enough: read.ph.is_acid_enough(),
        told: keep::told(read.ph, read.at.date_naive()).into(),
    }))
}

impl From<ReadWith> for ph::ReadWith {
    fn from(with: ReadWith) -> Self {
        match with {
            ReadWith::Strip => Self::Strip,
            ReadWith::Meter => Self::Meter,
        }
    }
}

impl From<ph::ReadWith> for ReadWith {
    fn from(with: ph::ReadWith) -> Self {
        match with {
            ph::ReadWith::Strip => Self::Strip,
            ph::ReadWith::Meter => Self::Meter,
        }
    }
}
