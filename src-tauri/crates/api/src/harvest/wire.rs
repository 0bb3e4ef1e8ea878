//! Requests and replies of `harvest.*`.

use serde::{Deserialize, Serialize};

use crate::bed::Bed;
use crate::discard::Binned;
use crate::drying::Basis;
use crate::photo::PhotoCard;
use crate::tray::TrayCard;
use crate::wire::{Changed, Interval, Note, Place, PlantState, Status};

/// What will this weigh dry?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct EstimateHarvest {
    pub herb: String,
    pub part: String,
    pub fresh_mass_g: f64,
    pub surface_wet: Option<bool>,
}

/// The dry weight to expect, with its reason.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DryWeight {
    pub dry_mass_g: Interval,
    pub water_wet_percent: Interval,
    pub basis: Basis,
    pub reason: String,
    pub status: Status,
    pub notes: Vec<Note>,
}

/// Whether water clung to the plant when it was weighed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Surface {
    Dry,
    Dew,
    Rain,
    Washed,
}

/// Something was picked and weighed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct RecordHarvest {
    pub herb: String,
    pub part: String,
    pub gross_g: f64,
    pub tare_g: Option<f64>,
    pub picked_at: Option<String>,
    pub bed: Option<String>,
    pub bed_name: Option<String>,
    pub stage: Option<String>,
    pub surface: Surface,
    pub note: Option<String>,
    pub photos: Option<Vec<String>>,
    pub look_alike_ruled_out: Option<bool>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// A change to a harvest; what is left out stays, an empty text is cleared.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectHarvest {
    pub id: String,
    pub herb: Option<String>,
    pub part: Option<String>,
    pub gross_g: Option<f64>,
    pub tare_g: Option<f64>,
    pub picked_at: Option<String>,
    pub bed: Option<String>,
    pub bed_name: Option<String>,
    pub stage: Option<String>,
    pub surface: Option<Surface>,
    pub note: Option<String>,
    pub photos: Option<Vec<String>>,
    pub look_alike_ruled_out: Option<bool>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// Harvests, the latest first; `before` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListHarvests {
    pub before: Option<String>,
    pub limit: Option<u32>,
    pub herb: Option<String>,
    pub bed: Option<String>,
}

/// One harvest.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowHarvest {
    pub id: String,
}

/// Where a harvest stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum HarvestState {
    #[serde(rename = "fresh")]
    Fresh,
    #[serde(rename = "on the rack")]
    OnTheRack,
    #[serde(rename = "dry")]
    Dry,
    #[serde(rename = "used up")]
    UsedUp,
}

/// A harvest in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestCard {
    pub id: String,
    pub code: String,
    pub herb: String,
    pub common: String,
    pub latin: Option<String>,
    pub part: String,
    pub picked_at: String,
    pub fresh_mass_g: f64,
    pub bed: Option<Bed>,
    pub photo: Option<String>,
    pub state: HarvestState,
    pub fresh_left_g: f64,
}

/// Where the time of a harvest comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum TimeFrom {
    Typed,
    Photo,
    Clock,
}

/// Grams of the harvest that went into a jar.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct IntoJar {
    pub jar: String,
    pub code: String,
    pub name: String,
    pub mass_g: f64,
    pub state: PlantState,
}

/// A harvest with everything that came of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestPage {
    #[serde(flatten)]
    pub card: HarvestCard,
    pub gross_g: f64,
    pub tare_g: f64,
    pub stage: Option<String>,
    pub surface: Surface,
    pub note: Option<String>,
    pub place: Option<Place>,
    pub time_from: TimeFrom,
    pub photos: Vec<PhotoCard>,
    pub estimate: DryWeight,
    pub trays: Vec<TrayCard>,
    pub jars: Vec<IntoJar>,
    pub binned: Vec<Binned>,
}

/// The answer to [`ShowHarvest`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestShown {
    pub harvest: HarvestPage,
}

/// The answer to [`ListHarvests`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Harvests {
    pub harvests: Vec<HarvestCard>,
    pub more: bool,
}

/// A harvest was written. What came of it, and what it will weigh dry, is told by [`ShowHarvest`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub harvest: HarvestCard,
}
