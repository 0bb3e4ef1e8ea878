//! The words a preparation is described by: states, purposes, aims, verdicts.

use message::{Message, say};
use serde::{Deserialize, Serialize};

/// What it is meant for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Purpose {
    /// To be swallowed as a medicine.
    Inside,
    /// On the skin.
    Outside,
    /// In the kitchen.
    Food,
}

impl Purpose {
    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Inside => "inside",
            Self::Outside => "outside",
            Self::Food => "food",
        }
    }

    /// Its name inside a sentence.
    pub fn name(self) -> Message {
        match self {
            Self::Inside => say!("purpose-inside"),
            Self::Outside => say!("purpose-outside"),
            Self::Food => say!("purpose-food"),
        }
    }
}

/// What the amounts are solved for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Aim {
    /// A strength in the jar at the end.
    Strength,
    /// The strongest spirit at hand, undiluted, unless a strength is asked for.
    Strongest,
    /// A share of glycerin in what is poured.
    Glycerin,
    /// The parts as they stand.
    Parts,
}

/// How the ratio is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Measure {
    /// mL poured on each gram.
    #[serde(rename = "poured on")]
    PouredOn,
    /// mL of finished liquid for each gram.
    #[serde(rename = "made up to")]
    MadeUpTo,
}

/// Which column of a herb's grades speaks for a preparation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Solvent {
    /// Spirit.
    Ethanol,
    /// Glycerin.
    Glycerite,
    /// Fixed oil.
    Oil,
    /// Vinegar.
    Vinegar,
    /// Wine.
    Wine,
    /// Hot water.
    Water,
}

impl Solvent {
    /// The liquid at the head of a sentence.
    pub fn name(self) -> &'static str {
        match self {
            Self::Ethanol => "Spirit",
            Self::Glycerite => "Glycerin",
            Self::Oil => "Oil",
            Self::Vinegar => "Vinegar",
            Self::Wine => "Wine",
            Self::Water => "Water",
        }
    }
}

/// Whether it keeps, from best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Verdict {
    /// On the shelf.
    #[serde(rename = "keeps")]
    Keeps,
    /// In the refrigerator.
    #[serde(rename = "keeps cold")]
    KeepsCold,
    /// As fresh food.
    #[serde(rename = "use now")]
    UseNow,
    /// Not at all.
    #[serde(rename = "do not make")]
    DoNotMake,
}

impl Verdict {
    /// The words for it.
    pub fn words(self) -> &'static str {
        match self {
            Self::Keeps => "keeps",
            Self::KeepsCold => "keeps cold",
            Self::UseNow => "use now",
            Self::DoNotMake => "do not make",
        }
    }

    /// Its name inside a sentence.
    pub fn name(self) -> Message {
        match self {
            Self::Keeps => say!("verdict-keeps"),
            Self::KeepsCold => say!("verdict-keeps-cold"),
            Self::UseNow => say!("verdict-use-now"),
            Self::DoNotMake => say!("verdict-do-not-make"),
        }
    }
}
