//! What was done, and taking it back: `deed.*`.

use serde::{Deserialize, Serialize};

use crate::wire::Changed;

/// Takes a deed back; taking back an undo does it again.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct UndoDeed {
    pub deed: String,
}

/// A deed was taken back.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DeedUndone {
    #[serde(flatten)]
    pub done: Changed,
    pub undone: String,
}

/// The latest deeds, newest first.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListDeeds {
    pub limit: Option<u32>,
}

/// One deed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DeedLine {
    pub deed: String,
    pub at: String,
    pub text: String,
    pub undone: bool,
}

/// The answer to [`ListDeeds`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Deeds {
    pub deeds: Vec<DeedLine>,
}
