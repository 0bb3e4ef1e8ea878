//! What is answered: the liquids to pour and what they become.

use std::ops::Deref;

use message::{Argument, Message, Unit, say};
use physics::{
    mixture::{Ingredient, IngredientKind, Liquid},
    solve::Target,
};
use serde::Serialize;

use super::{Controls, PlantLine, Room};
use crate::{cautions::Caution, keep::Keeping, note::Note, preparations::Days};

/// One liquid of the recipe.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PourLine {
    /// Its kind.
    pub kind: IngredientKind,
    /// Its name with the figure on its label.
    pub name: Message,
    /// How much, mL at 20 C as it is measured out.
    pub ml: f64,
    /// How much, g.
    pub g: f64,
    /// The supply it comes from.
    pub supply: Option<String>,
}

/// A line of the recipe with what is poured by it.
#[derive(Debug, Clone, PartialEq)]
pub struct Portion {
    /// As the recipe says it.
    pub line: PourLine,
    /// What it is.
    pub ingredient: Ingredient,
}

impl Deref for Portion {
    type Target = PourLine;

    fn deref(&self) -> &PourLine {
        &self.line
    }
}

/// What of a recipe can be missed.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Missed {
    /// The share of glycerin in what is poured.
    #[serde(rename = "glycerin_percent_vol")]
    GlycerinPoured,
    /// The alcohol added for keeping.
    #[serde(rename = "fortify_percent_vol")]
    Fortified,
    /// A target of the mixture.
    #[serde(untagged)]
    Mixture(Target),
    /// There is less of a kind than it takes: what it is called.
    #[serde(untagged)]
    OnTheShelf(Message),
}

impl Missed {
    /// What it is called.
    pub fn name(&self) -> Message {
        match self {
            Self::Mixture(Target::Strength) => say!("target-strength"),
            Self::Mixture(Target::Glycerol) => say!("target-glycerol"),
            Self::Mixture(Target::Sugar) => say!("target-sugar"),
            Self::Mixture(Target::Acidity) => say!("target-acidity"),
            Self::Mixture(Target::Volume) => say!("target-volume"),
            Self::Mixture(Target::Poured) => say!("target-poured"),
            Self::GlycerinPoured => say!("target-glycerin-poured"),
            Self::Fortified => say!("target-fortified"),
            Self::OnTheShelf(called) => called.clone(),
        }
    }

    fn unit(&self) -> Unit {
        match self {
            Self::Mixture(Target::Strength) | Self::Fortified => Unit::PercentVol,
            Self::Mixture(Target::Glycerol | Target::Sugar) | Self::GlycerinPoured => Unit::Percent,
            Self::Mixture(Target::Acidity) => Unit::GramPer100Ml,
            Self::Mixture(Target::Volume | Target::Poured) | Self::OnTheShelf(_) => {
                Unit::Millilitre
            }
        }
    }
}

/// A target that was missed.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Shortfall {
    /// Which.
    pub target: Missed,
    /// What was wanted, in its unit.
    pub wanted: f64,
    /// What comes nearest.
    pub got: f64,
}

impl Shortfall {
    /// It as a sentence.
    pub fn text(&self) -> Message {
        let unit = self.target.unit();
        let wanted = Argument::amount(self.wanted, unit);
        let got = Argument::amount(self.got, unit);
        match self.target {
            Missed::Mixture(Target::Strength) => say!("strength-not-reached", wanted, got),
            _ => say!("short-of", target = self.target.name(), wanted, got),
        }
    }
}

/// What to pour and what it becomes.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// The preparation.
    pub preparation: &'static str,
    /// What can be moved and where it stands.
    pub controls: Controls,
    /// The liquids to pour.
    pub pours: Vec<Portion>,
    /// Their sum, mL.
    pub poured_ml: f64,
    /// The herbs with their water.
    pub plants: Vec<PlantLine>,
    /// What the liquid is at the end.
    pub liquid: Liquid,
    /// Whether every target is met.
    pub reached: bool,
    /// What is missed.
    pub short_of: Vec<Shortfall>,
    /// What would meet it, or would keep longer.
    pub would_help: Vec<Note>,
    /// Whether it keeps.
    pub keeping: Keeping,
    /// Whether it fits the jar.
    pub jar: Room,
    /// Days from pouring to straining.
    pub steep_days: Days,
    /// What to beware of, the gravest first.
    pub cautions: Vec<Caution>,
    /// Why the figures are what they are.
    pub reasons: Vec<Note>,
}
