//! The maker's own dropper, counted.

use message::{Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{note, number, one_line};
use crate::{DropperId, Kept, Refusal};

/// A dropper whose drops were counted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Dropper {
    /// What the maker calls it.
    pub name: String,
    /// Drops in one millilitre, each count by itself.
    pub drops_in_1_ml: Vec<f64>,
    /// What it holds when it is filled once.
    #[serde(default)]
    pub holds_ml: Option<f64>,
    /// What it was counted with: drops of one liquid say nothing of another's.
    #[serde(default)]
    pub liquid: Option<String>,
}

impl Kept for Dropper {
    type Id = DropperId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)
    }

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        if !(3..=100).contains(&self.drops_in_1_ml.len()) {
            return Err(Refusal::new("drops_in_1_ml", say!("refused-drop-counts")));
        }
        for count in &self.drops_in_1_ml {
            number(
                "drops_in_1_ml",
                say!("what-drops-in-a-millilitre"),
                *count,
                5.0,
                120.0,
                Unit::None,
            )?;
        }
        if let Some(holds) = self.holds_ml {
            number(
                "holds_ml",
                say!("what-what-the-dropper-holds"),
                holds,
                0.1,
                10.0,
                Unit::Millilitre,
            )?;
        }
        note("liquid", say!("what-liquid"), self.liquid.as_deref(), 120)
    }
}
