//! Shapes that several nouns share on the wire.

use serde::{Deserialize, Serialize};

/// A value with its 90 % interval; both ends are the value where nothing is uncertain.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Interval {
    pub low: f64,
    pub value: f64,
    pub high: f64,
}

impl From<physics::Interval> for Interval {
    fn from(interval: physics::Interval) -> Self {
        Self {
            low: interval.low,
            value: interval.value,
            high: interval.high,
        }
    }
}

/// How far a statement was checked against a published source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Status {
    #[serde(rename = "confirmed")]
    Confirmed,
    #[serde(rename = "partly confirmed")]
    PartlyConfirmed,
    #[serde(rename = "memory")]
    Memory,
    #[serde(rename = "practice")]
    Practice,
    #[serde(rename = "proposal")]
    Proposal,
    #[serde(rename = "computed")]
    Computed,
    #[serde(rename = "own")]
    Own,
}

/// One finished plain sentence with where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Note {
    pub code: String,
    pub text: String,
    pub source: Option<String>,
    pub status: Status,
}

/// A kind of thing whose lists and pages a write may have changed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Noun {
    Herb,
    Bed,
    Harvest,
    Photo,
    Tray,
    Weighing,
    Supply,
    Jar,
    Setting,
    Shake,
    Straining,
    Bottle,
    Use,
    Check,
    Recipe,
    Dropper,
    Plan,
}

/// What a write did: the deed that can be undone and the nouns to refresh.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Changed {
    pub deed: String,
    pub changed: Vec<Noun>,
}

/// Whether the plant goes in as it was picked or after drying.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum PlantState {
    Fresh,
    Dried,
}

/// Fresh grams come from a harvest, dried grams from a tray that was taken down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Lot {
    pub kind: LotKind,
    pub id: String,
}

/// Where a lot lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum LotKind {
    Harvest,
    Tray,
}

/// The air of a drying room.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Air {
    pub temperature_c: f64,
    pub relative_humidity_percent: f64,
}

/// A place on the map, in degrees.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Place {
    pub lat: f64,
    pub lon: f64,
}

/// A request without fields.
macro_rules! bare_request {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, serde::Deserialize)]
        #[serde(deny_unknown_fields)]
        #[cfg_attr(feature = "ts", derive(ts_rs::TS))]
        pub struct $name {}
    };
}
pub(crate) use bare_request;

impl From<formulary::Status> for Status {
    fn from(status: formulary::Status) -> Self {
        use formulary::Status as Known;
        match status {
            Known::Confirmed => Self::Confirmed,
            Known::PartlyConfirmed => Self::PartlyConfirmed,
            Known::Memory => Self::Memory,
            Known::Practice => Self::Practice,
            Known::Proposal => Self::Proposal,
            Known::Computed => Self::Computed,
            Known::Own => Self::Own,
        }
    }
}

impl From<formulary::Note> for Note {
    fn from(note: formulary::Note) -> Self {
        Self {
            code: note.code,
            text: note.text,
            source: note.source,
            status: note.status.into(),
        }
    }
}

impl From<journal::PlantState> for PlantState {
    fn from(state: journal::PlantState) -> Self {
        match state {
            journal::PlantState::Fresh => Self::Fresh,
            journal::PlantState::Dried => Self::Dried,
        }
    }
}

impl From<PlantState> for journal::PlantState {
    fn from(state: PlantState) -> Self {
        match state {
            PlantState::Fresh => Self::Fresh,
            PlantState::Dried => Self::Dried,
        }
    }
}

impl From<journal::Lot> for Lot {
    fn from(lot: journal::Lot) -> Self {
        match lot {
            journal::Lot::Harvest(id) => Self {
                kind: LotKind::Harvest,
                id: id.to_string(),
            },
            journal::Lot::Tray(id) => Self {
                kind: LotKind::Tray,
                id: id.to_string(),
            },
        }
    }
}
