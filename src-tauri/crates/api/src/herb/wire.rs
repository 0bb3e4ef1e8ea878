//! Requests and replies of `herb.*`.

use serde::{Deserialize, Serialize};

use crate::wire::{Caution, Changed, Interval, Status, bare_request};

bare_request!(
    /// Every herb, the maker's recent ones first.
    ListHerbs
);

/// A herb in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbLine {
    pub key: String,
    pub common: String,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub own: bool,
    pub last_picked_at: Option<String>,
    pub look_alike: bool,
}

/// The answer to [`ListHerbs`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Herbs {
    pub herbs: Vec<HerbLine>,
}

/// Which herb is meant by a name, in either language, number and with one slip in the typing.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FindHerb {
    pub text: String,
    pub limit: Option<u32>,
}

/// A herb that a name may mean; one that is not `known` has a name and nothing else in the book.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FoundHerb {
    pub key: String,
    pub common: String,
    pub latin: Option<String>,
    pub known: bool,
}

/// How far the list of poisonous plants goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum StopKind {
    All,
    Inside,
    UnlessLicensed,
    Ask,
}

impl From<formulary::poison::Kind> for StopKind {
    fn from(kind: formulary::poison::Kind) -> Self {
        use formulary::poison::Kind;
        match kind {
            Kind::All => Self::All,
            Kind::Inside => Self::Inside,
            Kind::UnlessLicensed => Self::UnlessLicensed,
            Kind::Ask => Self::Ask,
        }
    }
}

/// What the list of poisonous plants says of a name.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbStop {
    pub kind: StopKind,
    pub text: String,
    pub source: Option<String>,
    pub status: Status,
}

/// The answer to [`FindHerb`], the herb meant first.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FoundHerbs {
    pub herbs: Vec<FoundHerb>,
    pub stop: Option<HerbStop>,
}

/// One herb with what is published and what the maker found.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowHerb {
    pub key: String,
}

/// One labelled statement about a herb.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Fact {
    pub label: String,
    pub value: String,
    pub source: Option<String>,
    pub status: Status,
}

/// A poisonous plant that is taken for the herb.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LookAlike {
    pub name: String,
    pub why: String,
    pub tell_apart: String,
    pub source: Option<String>,
    pub status: Status,
}

/// The published water content of one part.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PartWater {
    pub part: String,
    pub water_wet_percent: Interval,
    pub ratio_fresh_per_dry: Interval,
    pub source: String,
    pub status: Status,
}

/// A fresh to dry ratio of one finished tray.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct OwnRatio {
    pub harvest: String,
    pub picked_at: String,
    pub bed: Option<String>,
    pub part: String,
    pub fresh_mass_g: f64,
    pub dry_mass_g: f64,
    pub ratio_fresh_per_dry: f64,
}

/// The answer to [`ShowHerb`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbPage {
    pub herb: HerbLine,
    pub facts: Vec<Fact>,
    pub cautions: Vec<Caution>,
    pub look_alikes: Vec<LookAlike>,
    pub water: Vec<PartWater>,
    pub own_ratios: Vec<OwnRatio>,
}

/// A herb that the book does not have.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AddHerb {
    pub common: String,
    pub latin: Option<String>,
    pub parts: Vec<String>,
    pub note: Option<String>,
}

/// A change to a herb of the maker's own.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectHerb {
    pub key: String,
    pub common: Option<String>,
    pub latin: Option<String>,
    pub parts: Option<Vec<String>>,
    pub note: Option<String>,
}

/// A herb was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HerbWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub herb: HerbLine,
}
