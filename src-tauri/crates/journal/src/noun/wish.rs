//! Bottles that the maker wants to have one day.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::refusal::{day, number, text};
use crate::{HerbKey, Kept, Noun, PlantState, Refusal, RowRef, WishId};

/// Bottles wanted by a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Wish {
    /// What is in them.
    pub herb: HerbKey,
    /// Which part of it.
    pub part: String,
    /// Key of the preparation.
    pub preparation: String,
    /// Fresh or dried.
    pub state: PlantState,
    /// How many.
    pub bottles: u32,
    /// Of which size.
    pub bottle_ml: f64,
    /// By when.
    pub ready_on: NaiveDate,
    /// Whether they are meant as gifts.
    #[serde(default)]
    pub gifts: bool,
}

impl Kept for Wish {
    const NOUN: Noun = Noun::Plan;
    type Id = WishId;

    fn check(&self) -> Result<(), Refusal> {
        text("part", "The part", &self.part, 40)?;
        text("preparation", "The preparation", &self.preparation, 80)?;
        day("ready_on", self.ready_on)?;
        number(
            "bottles",
            "the number of bottles",
            f64::from(self.bottles),
            1.0,
            10_000.0,
            "between 1 and 10000",
        )?;
        number(
            "bottle_ml",
            "the size of a bottle",
            self.bottle_ml,
            1.0,
            10_000.0,
            "between 1 and 10000 mL",
        )
    }

    fn needs(&self) -> Vec<RowRef> {
        let own = self.herb.as_own();
        own.map(|id| (Noun::Herb, id.to_string()))
            .into_iter()
            .collect()
    }
}
