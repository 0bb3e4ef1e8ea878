//! A composition in, a proposal out: the shapes of `jar.compose`.

use serde::{Deserialize, Serialize};

use crate::mixture::{IngredientKind, Liquid, Shortfall, StockItem};
use crate::wire::{Caution, Interval, Lot, Note, PlantState, Status};

/// A little of the lot, dried to constant weight; unless named, the scale shows what the figures show.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PlantSample {
    pub fresh_g: f64,
    pub dry_g: f64,
    pub scale_step_g: Option<f64>,
}

/// A plant that goes into the jar. Its water is what is stated, what a sample shows, or what is usual.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Plant {
    pub lot: Option<Lot>,
    pub herb: String,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Option<Interval>,
    pub sample: Option<PlantSample>,
}

/// What the maker has chosen so far.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Composition {
    pub preparation: String,
    pub plants: Vec<Plant>,
    pub stock: Vec<StockItem>,
    pub ratio_ml_per_g: Option<f64>,
    pub jar_ml: Option<f64>,
    pub strength_percent_vol: Option<f64>,
    pub glycerin_percent_vol: Option<f64>,
    pub fortify_percent_vol: Option<f64>,
    pub temperature_c: Option<f64>,
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

/// A figure that can be moved: where it stands, how far it goes, what is usual and why.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Control {
    pub value: f64,
    pub low: f64,
    pub high: f64,
    pub step: f64,
    pub usual: f64,
    pub because: String,
    pub status: Status,
}

/// What can be moved in this preparation.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Controls {
    pub ratio_ml_per_g: Control,
    pub strength_percent_vol: Option<Control>,
    pub glycerin_percent_vol: Option<Control>,
    pub fortify_percent_vol: Option<Control>,
}

/// One liquid of the recipe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PourLine {
    pub kind: IngredientKind,
    pub name: String,
    pub ml: f64,
    pub g: f64,
    pub supply: Option<String>,
}

/// A plant of the recipe with the water it brings.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PlantLine {
    pub lot: Option<Lot>,
    pub herb: String,
    pub common: String,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Interval,
    pub basis: String,
}

/// Whether it keeps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Verdict {
    #[serde(rename = "keeps")]
    Keeps,
    #[serde(rename = "keeps cold")]
    KeepsCold,
    #[serde(rename = "use now")]
    UseNow,
    #[serde(rename = "do not make")]
    DoNotMake,
}

/// A limit that the liquid was held against.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct GateLine {
    pub gate: String,
    pub limit: f64,
    pub predicted: Interval,
    pub unit: String,
    pub margin: f64,
    pub decided: bool,
    pub source: Option<String>,
    pub status: Status,
}

/// The keeping verdict with its reasons.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Keeping {
    pub verdict: Verdict,
    pub text: String,
    pub gates: Vec<GateLine>,
    /// Whether it must never be swallowed, however well it keeps.
    pub outside_only: bool,
}

/// Whether it fits the jar.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarRoom {
    pub needed_ml: Interval,
    pub jar_ml: Option<f64>,
    pub fits: Option<bool>,
    pub largest_mass_g: Option<f64>,
}

/// What comes out when it is strained, and what that rests on.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ComesOut {
    pub ml: Interval,
    pub because: Option<Note>,
}

/// How long it keeps once strained, and what that rests on.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShelfLife {
    pub days: Option<Interval>,
    pub notes: Vec<Note>,
}

/// A span of days.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Days {
    pub low: u32,
    pub high: u32,
}

/// What to pour and what the liquid will be.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Proposal {
    pub controls: Controls,
    pub pours: Vec<PourLine>,
    pub poured_ml: f64,
    pub plants: Vec<PlantLine>,
    pub liquid: Liquid,
    pub reached: bool,
    pub short_of: Vec<Shortfall>,
    pub would_help: Vec<Note>,
    pub keeping: Keeping,
    pub shelf_life: ShelfLife,
    pub jar: JarRoom,
    pub comes_out: ComesOut,
    pub steep_days: Days,
    pub cautions: Vec<Caution>,
    pub reasons: Vec<Note>,
}
