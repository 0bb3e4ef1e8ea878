//! How the maker likes it shown: `setting.*`.

use serde::{Deserialize, Serialize};

use crate::wire::{Changed, bare_request};

bare_request!(
    /// The settings as they stand.
    ShowSettings
);

/// Units on the screens; the journal is metric throughout.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Units {
    Metric,
    Us,
}

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Scheme {
    System,
    Light,
    Dark,
}

/// The settings.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Settings {
    pub units: Units,
    pub scheme: Scheme,
    pub cautions_seen: bool,
}

/// A change to the settings; what is left out stays.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ChangeSettings {
    pub units: Option<Units>,
    pub scheme: Option<Scheme>,
    pub cautions_seen: Option<bool>,
}

/// The settings were changed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct SettingsWritten {
    #[serde(flatten)]
    pub done: Changed,
    #[serde(flatten)]
    pub settings: Settings,
}
