//! Where things grow: `bed.*`.

use serde::{Deserialize, Serialize};

use crate::wire::{Changed, bare_request};

bare_request!(
    /// Every bed.
    ListBeds
);

/// A bed of the garden, or a wild place.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Bed {
    pub id: String,
    pub name: String,
    pub wild: bool,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// The answer to [`ListBeds`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Beds {
    pub beds: Vec<Bed>,
}

/// A new bed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AddBed {
    pub name: String,
    pub wild: Option<bool>,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// A change to a bed; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectBed {
    pub id: String,
    pub name: Option<String>,
    pub wild: Option<bool>,
    pub area_m2: Option<f64>,
    pub note: Option<String>,
}

/// A bed was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BedWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub bed: Bed,
}
