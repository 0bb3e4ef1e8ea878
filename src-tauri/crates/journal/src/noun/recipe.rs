//! A jar worth making again.

use message::{Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{number, one_line, text};
use crate::{HerbKey, Item, JarId, Kept, Noun, PlantState, RecipeId, Refusal, RowRef};

/// A plant of a recipe, without the lot of any one year.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RecipePlant {
    /// What it is.
    pub herb: HerbKey,
    /// Which part of it.
    pub part: String,
    /// Fresh or dried.
    pub state: PlantState,
    /// How much the jar held.
    pub mass_g: f64,
}

/// What a maker wants to pour again: the aims of a jar, not its millilitres, for the plant brings
/// other water every year.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Recipe {
    /// What the maker calls it.
    pub name: String,
    /// The jar it was kept from.
    #[serde(default)]
    pub jar: Option<JarId>,
    /// Key of the preparation.
    pub preparation: String,
    /// The plants.
    pub plants: Vec<RecipePlant>,
    /// The liquids by their labels.
    pub stock: Vec<Item>,
    /// Liquid poured on each gram of plant.
    #[serde(default)]
    pub ratio_ml_per_g: Option<f64>,
    /// Strength wanted in the jar at the end.
    #[serde(default)]
    pub strength_percent_vol: Option<f64>,
    /// Share of glycerin in what is poured.
    #[serde(default)]
    pub glycerin_percent_vol: Option<f64>,
    /// Alcohol that a glycerite is fortified to.
    #[serde(default)]
    pub fortify_percent_vol: Option<f64>,
    /// How well it was liked, 1 to 5.
    #[serde(default)]
    pub stars: Option<u8>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Recipe {
    type Id = RecipeId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)
    }

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        text(
            "preparation",
            say!("what-preparation"),
            &self.preparation,
            80,
        )?;
        for plant in &self.plants {
            text("part", say!("what-part"), &plant.part, 40)?;
            super::mass("mass_g", say!("what-weight-of-a-plant"), plant.mass_g)?;
        }
        for stock in &self.stock {
            stock.check()?;
        }
        if let Some(stars) = self.stars {
            number(
                "stars",
                say!("what-stars"),
                f64::from(stars),
                1.0,
                5.0,
                Unit::None,
            )?;
        }
        super::remark(self.note.as_deref())
    }

    fn needs(&self) -> Vec<RowRef> {
        let herbs = self.plants.iter().filter_map(|plant| plant.herb.as_own());
        herbs
            .map(|id| (Noun::Herb, id.to_string()))
            .chain(self.jar.map(|jar| (Noun::Jar, jar.to_string())))
            .collect()
    }
}
