//! Shapes that several nouns share on the wire.

use formulary::cautions;
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

/// How grave a caution is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Severity {
    /// Nobody may make, take or do it.
    #[serde(rename = "stop")]
    Stop,
    /// Some people may not; it forbids no jar.
    #[serde(rename = "not for")]
    NotFor,
    #[serde(rename = "warn")]
    Warn,
    #[serde(rename = "note")]
    Note,
}

/// Where a caution is said: where one picks, where one makes, to whoever holds the bottle, on the herb's page alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Moment {
    Pick,
    Make,
    Use,
    Read,
}

/// A note of what to beware of.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Caution {
    pub code: String,
    pub severity: Severity,
    /// The common name of the herb that it belongs to; none where it is the jar's own or the page is the herb's.
    pub herb: Option<String>,
    pub at: Vec<Moment>,
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

/// Whether the plant goes in as it was picked, after drying, or simmered and strained.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum PlantState {
    Fresh,
    Dried,
    Cooked,
}

/// Fresh grams come from a harvest, dried and cooked grams from a tray or a pot.
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

impl From<cautions::Severity> for Severity {
    fn from(severity: cautions::Severity) -> Self {
        match severity {
            cautions::Severity::Stop => Self::Stop,
            cautions::Severity::NotFor => Self::NotFor,
            cautions::Severity::Warn => Self::Warn,
            cautions::Severity::Note => Self::Note,
        }
    }
}

impl From<cautions::Moment> for Moment {
    fn from(moment: cautions::Moment) -> Self {
        match moment {
            cautions::Moment::Pick => Self::Pick,
            cautions::Moment::Make => Self::Make,
            cautions::Moment::Use => Self::Use,
            cautions::Moment::Read => Self::Read,
        }
    }
}

impl From<cautions::Caution> for Caution {
    fn from(caution: cautions::Caution) -> Self {
        Self {
            code: caution.code,
            severity: caution.severity.into(),
            herb: caution.herb,
            at: caution.at.into_iter().map(Moment::from).collect(),
            text: caution.text,
            source: caution.source,
            status: caution.status.into(),
        }
    }
}

impl From<journal::PlantState> for PlantState {
    fn from(state: journal::PlantState) -> Self {
        match state {
            journal::PlantState::Fresh => Self::Fresh,
            journal::PlantState::Dried => Self::Dried,
            journal::PlantState::Cooked => Self::Cooked,
        }
    }
}

impl From<PlantState> for journal::PlantState {
    fn from(state: PlantState) -> Self {
        match state {
            PlantState::Fresh => Self::Fresh,
            PlantState::Dried => Self::Dried,
            PlantState::Cooked => Self::Cooked,
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
