//! A composition in, a proposal out: the shapes of `jar.compose`.

use formulary::Note;
use formulary::cautions::Caution;
use formulary::compose::{Controls, PourLine, Room, Shortfall};
use formulary::keep::{Keeping, ShelfLife};
use formulary::preparations::Days;
use journal::{Jar, OvenSample, PlantState};
use message::Message;
use physics::Interval;
use physics::mixture::Liquid;
use serde::{Deserialize, Serialize};

use crate::item::StockItem;
use crate::told;
use crate::wire::Lot;

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
    pub sample: Option<OvenSample>,
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

/// A plant of the recipe with the water it brings.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PlantLine {
    pub lot: Option<Lot>,
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Interval,
    pub basis: Message,
}

/// What comes out when it is strained, and what that rests on.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ComesOut {
    pub ml: Interval,
    pub because: Option<Note>,
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
    pub jar: Room,
    pub comes_out: ComesOut,
    pub steep_days: Days,
    pub cautions: Vec<Caution>,
    pub reasons: Vec<Note>,
}

/// What was poured, the toppings up among it.
pub fn pours(jar: &Jar) -> Vec<PourLine> {
    let lines = jar.pours.iter().map(|pour| PourLine {
        kind: pour.item.kind(),
        name: told::poured(pour),
        ml: pour.ml,
        g: pour.g,
        supply: pour.supply.map(|id| id.to_string()),
    });
    lines.collect()
}
