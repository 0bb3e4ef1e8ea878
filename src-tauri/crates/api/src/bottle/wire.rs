//! Requests and replies of `bottle.*`.

use serde::{Deserialize, Serialize};

use crate::jar::Keeping;
use crate::mixture::Liquid;
use crate::ph::{PhShown, ReadWith};
use crate::trace::Chain;
use crate::wire::{Caution, Changed, Interval, Note};

/// So many bottles of one size.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleSize {
    pub ml: f64,
    pub count: u32,
}

/// Bottles were filled from a strained jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FillBottles {
    pub jar: String,
    pub bottles: Vec<BottleSize>,
    pub place: Option<String>,
    pub filled_at: Option<String>,
    pub note: Option<String>,
    /// How warm an oil stands, for the date by which it is used up.
    pub stored_at_c: Option<f64>,
}

/// Bottles, those to look at first; without a state those that are still here. Those that are gone
/// come the latest filled first. `after` is the id of the last one seen.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ListBottles {
    pub state: Option<BottleState>,
    pub herb: Option<String>,
    pub preparation: Option<String>,
    pub after: Option<String>,
    pub limit: Option<u32>,
}

/// One bottle, by its id or by the code on its label.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ShowBottle {
    pub id: Option<String>,
    pub code: Option<String>,
}

/// Some was used: exactly one of the measures. A dropper is one that was counted.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct UseBottle {
    pub bottle: String,
    pub ml: Option<f64>,
    pub teaspoons: Option<f64>,
    pub tablespoons: Option<f64>,
    pub droppers: Option<f64>,
    pub drops: Option<f64>,
    pub dropper: Option<String>,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// Somebody was given it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct GiveBottle {
    pub bottle: String,
    pub to: String,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// It was looked at. A pH is taken of what acid keeps; `read_with` is what it was read with.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CheckBottle {
    pub bottle: String,
    pub outcome: Outcome,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
    pub at: Option<String>,
}

/// The rest was thrown away.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BinBottle {
    pub bottle: String,
    pub reason: String,
    pub at: Option<String>,
}

/// The rest was used up.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FinishBottle {
    pub bottle: String,
    pub at: Option<String>,
}

/// A change to a bottle; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectBottle {
    pub id: String,
    pub place: Option<String>,
    pub note: Option<String>,
    pub size_ml: Option<f64>,
}

/// What a look told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Outcome {
    Good,
    Doubtful,
    Bad,
}

/// Where a bottle is in its life.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum BottleState {
    #[serde(rename = "to check")]
    ToCheck,
    #[serde(rename = "open")]
    Open,
    #[serde(rename = "on the shelf")]
    OnTheShelf,
    #[serde(rename = "finished")]
    Finished,
    #[serde(rename = "binned")]
    Binned,
    #[serde(rename = "given")]
    Given,
}

/// A bottle in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
    pub jar: String,
    pub filled_at: String,
    pub size_ml: f64,
    pub left_ml: f64,
    pub state: BottleState,
    pub best_before: Option<String>,
    pub check_on: Option<String>,
    /// Whether it must not be used any more.
    pub bin_it: bool,
    /// Whether a pH was read at which acid may not protect it.
    pub not_acid: bool,
    pub only_the_date_counts: bool,
    pub place: Option<String>,
    pub strength_percent_vol: Interval,
}

/// The days between which what is left runs out.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RunsOut {
    pub low_on: String,
    pub high_on: String,
    pub because: String,
}

/// What there is of one preparation of the same herbs.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StockLine {
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
    pub bottles: u32,
    pub left_ml: f64,
    pub runs_out: Option<RunsOut>,
}

/// The answer to [`ListBottles`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Bottles {
    pub bottles: Vec<BottleCard>,
    pub more: bool,
    /// Of all that is on the shelf and was asked for, not only of the bottles listed here.
    pub stock: Vec<StockLine>,
}

/// Bottles were filled.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottlesFilled {
    #[serde(flatten)]
    pub done: Changed,
    pub bottles: Vec<BottleCard>,
    pub rest_ml: f64,
}

/// The trade's small sums about a bottle. No dose is among them.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleSums {
    /// Dried herb (of fresh herb: dry matter) that a millilitre stands for, by what was poured.
    pub dried_equivalent_g_per_ml: Option<Interval>,
    /// The same with the water that the plants brought counted in.
    pub dried_equivalent_with_plant_water_g_per_ml: Option<Interval>,
    pub ethanol_g_per_ml: Interval,
    pub ethanol_g_bottle: Interval,
    pub drops_per_ml: Option<Interval>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    pub notes: Vec<Note>,
}

/// One use.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct UseLine {
    pub id: String,
    pub at: String,
    pub ml: f64,
    pub note: Option<String>,
}

/// One look.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CheckLine {
    pub id: String,
    pub at: String,
    pub outcome: Outcome,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
}

/// Who was given it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct GivenTo {
    pub to: String,
    pub at: String,
}

/// A bottle with everything about it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottlePage {
    #[serde(flatten)]
    pub card: BottleCard,
    pub strained_on: Option<String>,
    pub liquid: Liquid,
    pub keeping: Keeping,
    pub storage: Vec<Note>,
    pub signs: Vec<Note>,
    pub cautions: Vec<Caution>,
    /// Whether its pH is worth reading, for acid keeps it.
    pub takes_ph: bool,
    pub ph: Option<PhShown>,
    pub arithmetic: BottleSums,
    pub uses: Vec<UseLine>,
    pub checks: Vec<CheckLine>,
    pub given_to: Option<GivenTo>,
    pub ended_at: Option<String>,
    pub binned_because: Option<String>,
    /// That more was taken from it than it held, as two phones may do; what may be true of it, `due.list` tells.
    pub put_right: Option<String>,
    pub chain: Chain,
    pub note: Option<String>,
}

/// The answer to [`ShowBottle`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleShown {
    pub bottle: BottlePage,
}

/// A bottle was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub bottle: BottlePage,
}
