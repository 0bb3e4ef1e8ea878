//! Bottles that the maker wants to have one day.

use chrono::NaiveDate;
use message::{Unit, say};
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
    type Id = WishId;

    fn check(&self) -> Result<(), Refusal> {
        text("part", say!("what-part"), &self.part, 40)?;
        text(
            "preparation",
            say!("what-preparation"),
            &self.preparation,
            80,
        )?;
        day("ready_on", self.ready_on)?;
        number(
            "bottles",
            say!("what-number-of-bottles"),
            f64::from(self.bottles),
            1.0,
            10_000.0,
            Unit::None,
        )?;
        number(
            "bottle_ml",
            say!("what-size-of-a-bottle"),
            self.bottle_ml,
            1.0,
            10_000.0,
            Unit::Millilitre,
        )
    }

    fn needs(&self) -> Vec<RowRef> {
        let own = self.herb.as_own();
        own.map(|id| (Noun::Herb, id.to_string()))
            .into_iter()
            .collect()
    }
}
