//! Figures of a preparation with where they come from: ranges, spans, what is poured, what is kept back.

use physics::mixture::IngredientKind;
use serde::{Deserialize, Serialize};

use crate::note::Status;

/// A range with its usual figure and where it comes from.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Range {
    /// Lowest.
    pub low: f64,
    /// Usual.
    pub usual: f64,
    /// Highest.
    pub high: f64,
    /// Where it comes from; empty for none.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

/// A span of time with where it comes from.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Span {
    /// Shortest.
    pub low: f64,
    /// Longest.
    pub high: f64,
    /// Where it comes from; empty for none.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

/// Two ends.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ends {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// A span of days.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Days {
    /// At least.
    pub low: u32,
    /// At most.
    pub high: u32,
}

impl From<Ends> for Days {
    fn from(ends: Ends) -> Self {
        // Whole days: a steeping time of hours is today's.
        Self {
            low: ends.low.max(0.0).floor() as u32,
            high: ends.high.max(0.0).ceil() as u32,
        }
    }
}

/// What the marc keeps, mL for each gram of dry herb.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Retention {
    /// After a press.
    pub pressed: f64,
    /// Wrung by hand, lower figure.
    pub wrung_low: f64,
    /// Wrung by hand, upper figure.
    pub wrung_high: f64,
    /// Where it comes from.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

/// An acid bath before the oil.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Soak {
    /// Strength of the citric acid, % weight in volume.
    pub percent: f64,
    /// How long, h.
    pub hours: f64,
    /// Parts of solution to one of herb, by weight.
    pub parts: f64,
    /// Parts of solution to one of garlic, by weight.
    pub garlic_parts: f64,
    /// Where it comes from.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

/// By which measure a part is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum By {
    /// Volume as it is measured out.
    #[default]
    Volume,
    /// Weight.
    Mass,
}

/// One liquid of a preparation, with what it usually is where nothing else is at hand.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The kind of liquid.
    pub kind: IngredientKind,
    /// Its parts among all; none where the aim decides.
    #[serde(default)]
    pub share: Option<f64>,
    /// How the parts are counted.
    #[serde(default)]
    pub by: By,
    /// Left out unless it is at hand.
    #[serde(default)]
    pub if_at_hand: bool,
    /// Spirit or wine.
    #[serde(default)]
    pub strength_percent_vol: Option<f64>,
    /// Glycerin.
    #[serde(default)]
    pub purity_percent_mass: Option<f64>,
    /// Vinegar, wine or juice.
    #[serde(default)]
    pub acidity_g_per_100ml: Option<f64>,
    /// Wine.
    #[serde(default)]
    pub sugar_g_per_l: Option<f64>,
    /// Syrup or juice.
    #[serde(default)]
    pub sugar_percent_mass: Option<f64>,
    /// Honey.
    #[serde(default)]
    pub water_percent_mass: Option<f64>,
    /// Oil.
    #[serde(default)]
    pub oil: Option<String>,
}

/// The entries of the catalogue that name the kinds of liquid.
pub(crate) fn entries() -> impl Iterator<Item = String> {
    let kinds = IngredientKind::ALL.iter();
    kinds.map(|kind| format!("ingredient-{}", kind.key()))
}

impl Part {
    /// A figure of a label that is stated for it.
    pub(crate) fn figure(&self, name: &str) -> Option<f64> {
        match name {
            "strength_percent_vol" => self.strength_percent_vol,
            "purity_percent_mass" => self.purity_percent_mass,
            "acidity_g_per_100ml" => self.acidity_g_per_100ml,
            "sugar_g_per_l" => self.sugar_g_per_l,
            "sugar_percent_mass" => self.sugar_percent_mass,
            "water_percent_mass" => self.water_percent_mass,
            _ => None,
        }
    }

    /// A part with nothing stated but its kind.
    pub(crate) fn of(kind: IngredientKind) -> Self {
        Self {
            kind,
            share: None,
            by: By::Volume,
            if_at_hand: false,
            strength_percent_vol: None,
            purity_percent_mass: None,
            acidity_g_per_100ml: None,
            sugar_g_per_l: None,
            sugar_percent_mass: None,
            water_percent_mass: None,
            oil: None,
        }
    }
}
