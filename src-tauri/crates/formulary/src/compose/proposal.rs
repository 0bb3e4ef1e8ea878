//! What is answered: the liquids to pour and what they become.

use physics::mixture::{Ingredient, Liquid};
use serde::Serialize;

use super::{Controls, PlantLine, Room};
use crate::{cautions::Caution, keep::Keeping, note::Note, preparations::Ends};

/// One liquid of the recipe.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PourLine {
    /// Its kind in the words of the wire.
    pub kind: &'static str,
    /// Its name with the figure on its label.
    pub name: String,
    /// How much, mL at 20 C as it is measured out.
    pub ml: f64,
    /// How much, g.
    pub g: f64,
    /// The supply it comes from.
    pub supply: Option<String>,
    /// What it is.
    #[serde(skip)]
    pub ingredient: Ingredient,
}

/// A target that was missed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Shortfall {
    /// Which.
    pub target: String,
    /// What was wanted.
    pub wanted: f64,
    /// What comes nearest.
    pub got: f64,
}

/// What to pour and what it becomes.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// The preparation.
    pub preparation: &'static str,
    /// What can be moved and where it stands.
    pub controls: Controls,
    /// The liquids to pour.
    pub pours: Vec<PourLine>,
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
    pub steep_days: Ends,
    /// What to beware of, the gravest first.
    pub cautions: Vec<Caution>,
    /// Why the figures are what they are.
    pub reasons: Vec<Note>,
}
