//! Requests and replies of `tray.*` and `weighing.*`.

use serde::{Deserialize, Serialize};

use crate::discard::Binned;
use crate::drying::OvenSample;
use crate::wire::{Air, Changed, Interval, Note};

/// Part of a harvest goes onto a tray.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct StartTray {
    pub harvest: String,
    pub mass_g: f64,
    pub name: Option<String>,
    pub tare_g: Option<f64>,
    pub started_at: Option<String>,
    pub air: Option<Air>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// A tray was weighed as it stands.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct WeighTray {
    pub tray: String,
    pub gross_g: f64,
    pub at: Option<String>,
    pub air: Option<Air>,
    /// The weight was asked about and is right.
    pub confirm_odd: Option<bool>,
    /// It was tried by hand and is dry: the thickest part breaks, a leaf crumbles.
    pub snap_test: Option<bool>,
}

/// The run ends; what lies on the tray becomes a dried lot.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TakeDownTray {
    pub tray: String,
    pub gross_g: Option<f64>,
    pub at: Option<String>,
    /// It was tried by hand and is dry.
    pub snap_test: Option<bool>,
    /// The weight was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// A change to a tray; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectTray {
    pub tray: String,
    pub name: Option<String>,
    pub tare_g: Option<f64>,
    pub note: Option<String>,
    pub air: Option<Air>,
}

/// A change to a weigh-in; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectWeighing {
    pub id: String,
    pub gross_g: Option<f64>,
    pub at: Option<String>,
    pub air: Option<Air>,
    pub snap_test: Option<bool>,
}

/// A weigh-in was a mistake.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrikeWeighing {
    pub id: String,
}

/// A sample of the lot was dried to constant weight.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct SampleTray {
    pub tray: String,
    pub fresh_g: f64,
    pub dry_g: f64,
    pub scale_step_g: Option<f64>,
}

/// Trays on the rack, forgotten ones first, then dried lots with grams left; `after` is the id of
/// the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListTrays {
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// One tray.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowTray {
    pub id: String,
}

/// Whether the run goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum TrayState {
    Drying,
    Dry,
    /// No drying: plant that was simmered and strained.
    Cooked,
    /// Thrown away while it was drying.
    Lost,
}

/// A tray in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub harvest: String,
    pub herb: String,
    pub common: String,
    pub part: String,
    pub photo: Option<String>,
    pub started_at: String,
    pub days: u32,
    pub fresh_mass_g: f64,
    pub tare_g: f64,
    pub mass_now_g: f64,
    pub last_weighed_at: Option<String>,
    pub state: TrayState,
    pub taken_down_at: Option<String>,
    pub dried_left_g: Option<f64>,
    pub moisture_now_wet_percent: Option<Interval>,
    pub target_mass_g: Interval,
    pub stop_gross_g: Interval,
    pub hours_left: Option<Interval>,
    /// When the next weigh-in is worth the walk; none once the tray is dry.
    pub weigh_at: Option<String>,
    /// The code of what most stands in the way of a time left.
    pub why: Option<String>,
    pub is_dry: bool,
    /// It rests at its stop weight, and only the hand can tell that it is dry.
    pub probably_dry: bool,
    pub forgotten: bool,
    pub says: String,
}

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
    pub basis: String,
    /// Why the forecast says no more than it does.
    pub reasons: Vec<Note>,
    /// How the hand tells that it is dry.
    pub feel: Note,
    pub notes: Vec<Note>,
    /// What the scale shows when weigh-ins begin to tell of the end; none once they do.
    pub telling_gross_g: Option<f64>,
    /// When it will be dry enough, in hours on the rack.
    pub ends_hours: Option<Interval>,
    pub weighings: Vec<WeighingLine>,
    pub curve: Vec<CurvePoint>,
    pub note: Option<String>,
    pub sample: Option<OvenSample>,
    /// The air where the tray was laid out.
    pub air: Option<Air>,
    pub air_limit_wet_percent: Option<Interval>,
    /// What of the dried lot was used in another way than in a jar, or thrown away.
    pub binned: Vec<Binned>,
    pub lost: Option<LostLine>,
}

/// The answer to [`ListTrays`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Trays {
    pub trays: Vec<TrayCard>,
    pub more: bool,
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
