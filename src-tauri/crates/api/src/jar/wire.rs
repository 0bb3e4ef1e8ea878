//! Requests and replies of `lot.list`, `preparation.list` and the jars on the shelf.

use serde::{Deserialize, Serialize};

use super::life::{ShakeLine, StrainingLine};
use super::marc::MarcOf;
use super::proposal::{Composition, Keeping, PourLine, ShelfLife};
use super::rest::RestLine;
use super::retention::ExpectedOut;
use crate::bottle::BottleCard;
use crate::mixture::Liquid;
use crate::ph::PhShown;
use crate::wire::{Caution, Changed, Interval, Lot, Note, PlantState, Status, bare_request};

/// Lots with grams left, fresh before dried, the latest picking first; `after` is the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListLots {
    pub herb: Option<String>,
    pub state: Option<PlantState>,
    pub after: Option<Lot>,
    pub limit: Option<u32>,
}

/// A lot that can go into a jar.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LotLine {
    pub lot: Lot,
    pub code: String,
    pub herb: String,
    pub common: String,
    pub part: String,
    pub state: PlantState,
    pub left_g: f64,
    pub moisture_wet_percent: Interval,
    pub picked_at: String,
    pub bed: Option<String>,
    pub photo: Option<String>,
}

/// The answer to [`ListLots`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Lots {
    pub lots: Vec<LotLine>,
    pub more: bool,
}

bare_request!(
    /// What a herb can become.
    ListPreparations
);

/// A kind of preparation.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PreparationLine {
    pub key: String,
    pub name: String,
    pub fresh: bool,
    pub dried: bool,
    pub cooked: bool,
    pub liquids: Vec<String>,
    pub summary: String,
}

/// The answer to [`ListPreparations`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Preparations {
    pub preparations: Vec<PreparationLine>,
}

/// The composition was poured.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PourJar {
    pub composition: Composition,
    pub name: Option<String>,
    pub poured_at: Option<String>,
    pub place: Option<String>,
    pub note: Option<String>,
    pub shake: Option<bool>,
    pub marc_of: Option<String>,
}

/// Jars, what is due first, then what steeps, then the strained and the failed, the latest poured
/// first; `after` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListJars {
    pub state: Option<JarState>,
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// One jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowJar {
    pub id: String,
}

/// A change to a jar's name, place or note; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectJar {
    pub id: String,
    pub name: Option<String>,
    pub place: Option<String>,
    pub note: Option<String>,
}

/// A batch failed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FailJar {
    pub id: String,
    pub reason: String,
}

/// Where a jar stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum JarState {
    Steeping,
    Due,
    Strained,
    Failed,
}

/// A jar in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
    pub poured_at: String,
    pub day: u32,
    pub due_from: String,
    pub due_to: String,
    pub state: JarState,
    pub strength_percent_vol: Interval,
    pub glycerol_percent_mass: Interval,
    pub poured_ml: f64,
    pub place: Option<String>,
}

/// A plant as it went into the jar, with the chain back to its bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarPlant {
    pub lot: Option<Lot>,
    pub herb: String,
    pub common: String,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Interval,
    pub code: Option<String>,
    pub harvest: Option<String>,
    pub bed: Option<String>,
    pub picked_at: Option<String>,
}

/// A step of the work that follows.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Step {
    pub title: String,
    pub text: String,
    pub source: Option<String>,
    pub status: Status,
}

/// A jar with its recipe as poured.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarPage {
    #[serde(flatten)]
    pub card: JarCard,
    pub pours: Vec<PourLine>,
    pub plants: Vec<JarPlant>,
    pub ratio_ml_per_g: Option<f64>,
    pub liquid: Liquid,
    pub keeping: Keeping,
    pub shelf_life: ShelfLife,
    /// Dried herb to a millilitre poured; none where no plant or a marc is in it.
    pub dried_equivalent_g_per_ml: Option<Interval>,
    /// The same to a millilitre of what there is with the plant's own water.
    pub dried_equivalent_with_plant_water_g_per_ml: Option<Interval>,
    pub cautions: Vec<Caution>,
    /// Whether its pH is worth reading, for acid keeps it.
    pub takes_ph: bool,
    pub ph: Option<PhShown>,
    pub reasons: Vec<Note>,
    pub steps: Vec<Step>,
    pub note: Option<String>,
    pub failed_because: Option<String>,
    pub shakes: Vec<ShakeLine>,
    pub strainings: Vec<StrainingLine>,
    pub expected_out: Vec<ExpectedOut>,
    pub bottles: Vec<BottleCard>,
    /// Strained liquid that no bottle holds yet; nothing before it is strained.
    pub left_ml: Option<f64>,
    /// The last day on which that should be used, and whether it must not be used any more.
    pub rest_best_before: Option<String>,
    pub bin_rest: bool,
    pub rests: Vec<RestLine>,
    pub marc_of: Option<MarcOf>,
    /// Whether its marc may be covered once more.
    pub second_maceration: bool,
    pub recipe: Option<String>,
    pub stars: Option<u8>,
}

/// The answer to [`ListJars`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Jars {
    pub jars: Vec<JarCard>,
    pub more: bool,
}

/// The answer to [`ShowJar`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarShown {
    pub jar: JarPage,
}

/// A jar was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub jar: JarPage,
}
