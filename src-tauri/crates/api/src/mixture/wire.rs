//! Requests and replies of `mixture.*`.

use serde::{Deserialize, Serialize};

use crate::wire::{Interval, Note};

/// The kinds of liquid (and sugar) that are poured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum IngredientKind {
    Water,
    Spirit,
    Glycerin,
    Vinegar,
    Wine,
    Sugar,
    Syrup,
    Honey,
    Juice,
    Oil,
}

/// A measured ingredient: exactly one of `g` and `ml` (at 20 °C), and what its kind needs.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Pour {
    pub kind: IngredientKind,
    pub g: Option<f64>,
    pub ml: Option<f64>,
    pub strength_percent_vol: Option<f64>,
    pub purity_percent_mass: Option<f64>,
    pub acidity_g_per_100ml: Option<f64>,
    pub sugar_g_per_l: Option<f64>,
    pub sugar_percent_mass: Option<f64>,
    pub water_percent_mass: Option<f64>,
    pub oil: Option<String>,
}

/// A liquid at hand, and how much of it may or must be used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct StockItem {
    pub kind: IngredientKind,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub strength_percent_vol: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub purity_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub acidity_g_per_100ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sugar_g_per_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sugar_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub water_percent_mass: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub oil: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub available_ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub exactly_ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supply: Option<String>,
}

/// A moisture as one figure or as an interval.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(untagged, expecting = "a number or an object with low, value and high")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Moisture {
    Number(f64),
    Interval(Interval),
}

/// A plant as the liquid meets it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WetPlant {
    pub mass_g: f64,
    pub moisture_wet_percent: Moisture,
}

/// What is this liquid?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct DescribeMixture {
    pub pours: Vec<Pour>,
    pub plants: Option<Vec<WetPlant>>,
    pub temperature_c: Option<f64>,
}

/// A liquid with the plants' water in it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Liquid {
    pub mass_g: Interval,
    pub volume_ml: Interval,
    pub density_kg_m3: Interval,
    pub contraction_ml: Interval,
    pub strength_percent_vol: Interval,
    pub us_proof: Interval,
    pub ethanol_percent_mass: Interval,
    pub ethanol_g: Interval,
    pub glycerol_percent_mass: Interval,
    pub glycerol_percent_vol: Interval,
    pub sugar_percent_mass: Interval,
    pub acidity_g_per_100ml: Interval,
    pub acid_ph: Option<Interval>,
    /// Where its vapour can catch fire; none where there is no table.
    pub flash_point_c: Option<Interval>,
    pub water_activity: WaterActivity,
    /// What neither sugar nor glycerin keeps, by the free-water rule; its alcohol counts in.
    pub free_water_ml: Interval,
    /// Absolute ethanol that this needs to keep; 0 where nothing is left over.
    pub alcohol_to_keep_ml: Interval,
}

/// Water activity by two mixing rules; keeping goes by the higher.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WaterActivity {
    pub highest: Interval,
    pub by_ross: Interval,
    pub by_norrish: Interval,
}

/// The answer to [`DescribeMixture`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MixtureDescribed {
    pub liquid: Liquid,
    pub notes: Vec<Note>,
}

/// How much of each, to end there?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ReachMixture {
    pub stock: Vec<StockItem>,
    pub plants: Option<Vec<WetPlant>>,
    pub targets: Targets,
}

/// Where the liquid should end.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Targets {
    pub strength_percent_vol: Option<f64>,
    pub glycerol_percent_mass: Option<f64>,
    pub sugar_percent_mass: Option<f64>,
    pub acidity_g_per_100ml: Option<f64>,
    pub volume_ml: Option<f64>,
    pub poured_ml: Option<f64>,
}

/// How much of one item of the stock.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Measure {
    pub index: usize,
    pub ml: f64,
    pub g: f64,
}

/// A target that was missed.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Shortfall {
    pub target: String,
    pub wanted: f64,
    pub got: f64,
}

/// The answer to [`ReachMixture`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MixtureReached {
    pub reached: bool,
    pub pours: Vec<Measure>,
    pub liquid: Liquid,
    pub short_of: Vec<Shortfall>,
    pub notes: Vec<Note>,
}
