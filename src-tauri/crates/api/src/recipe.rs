//! `recipe.*`: what was kept to be made again, and how it goes from one book to another.

pub(crate) mod card;
mod carried;
pub(crate) mod class;
pub(crate) mod code;
mod tag;
mod told;
mod worked;

use formulary::preparations::Preparation;
use journal::{PlantState, Recipe, RecipeId};
use message::{Argument, Failure, Message, say};
use reckon::asked;
use reckon::herb::Known;
use reckon::item::{self, StockItem};
use reckon::jar::again::composed;
use reckon::jar::proposal::{Composition, Plant};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::changed::Changed;
use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// The recipes that were kept.
    ListRecipes
);

/// A change to a recipe; what is left out stays, and no stars at all take them back.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectRecipe {
    pub id: String,
    pub name: Option<String>,
    pub note: Option<String>,
    pub stars: Option<u8>,
}

/// A recipe with this year's plants.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ComposeRecipe {
    pub recipe: String,
    pub plants: Option<Vec<Plant>>,
}

/// A plant of a recipe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecipePlantLine {
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
}

/// A recipe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecipeLine {
    pub id: String,
    pub name: String,
    pub jar: Option<String>,
    pub preparation: String,
    pub preparation_name: Message,
    pub plants: Vec<RecipePlantLine>,
    pub stock: Vec<StockItem>,
    pub ratio_ml_per_g: Option<f64>,
    pub strength_percent_vol: Option<f64>,
    pub glycerin_percent_vol: Option<f64>,
    pub fortify_percent_vol: Option<f64>,
    pub stars: Option<u8>,
    pub note: Option<String>,
}

/// The answer to [`ListRecipes`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Recipes {
    pub recipes: Vec<RecipeLine>,
}

/// A recipe was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecipeWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub recipe: RecipeLine,
}

impl RecipeLine {
    pub(crate) fn of(
        reading: &Reading<'_>,
        id: &RecipeId,
        recipe: Recipe,
    ) -> Result<Self, Failure> {
        let mut plants = Vec::new();
        for plant in recipe.plants {
            plants.push(RecipePlantLine {
                common: reckon::told::title(&Known::written(reading, &plant.herb)?),
                herb: plant.herb.to_string(),
                part: plant.part,
                state: plant.state,
                mass_g: plant.mass_g,
            });
        }
        let name = formulary::preparations::of_key(&recipe.preparation)
            .map_or_else(|| Message::own(&recipe.preparation), Preparation::title);
        Ok(Self {
            id: id.to_string(),
            preparation_name: name,
            name: recipe.name,
            jar: recipe.jar.map(|jar| jar.to_string()),
            preparation: recipe.preparation,
            plants,
            stock: recipe.stock.iter().map(item::as_item).collect(),
            ratio_ml_per_g: recipe.ratio_ml_per_g,
            strength_percent_vol: recipe.strength_percent_vol,
            glycerin_percent_vol: recipe.glycerin_percent_vol,
            fortify_percent_vol: recipe.fortify_percent_vol,
            stars: recipe.stars,
            note: recipe.note,
        })
    }
}

impl Command for ListRecipes {
    const NAME: &'static str = "recipe.list";
    type Reply = Recipes;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let lines: Result<Vec<_>, Failure> = reading
                .recipes()?
                .into_iter()
                .map(|(id, recipe)| RecipeLine::of(reading, &id, recipe))
                .collect();
            Ok(Recipes { recipes: lines? })
        })
    }
}

impl Command for CorrectRecipe {
    const NAME: &'static str = "recipe.correct";
    type Reply = RecipeWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: RecipeId = asked::id("id", &self.id)?;
        let (done, recipe) = app.correct::<Recipe>("id", &id, |_, recipe| {
            asked::renamed(&mut recipe.name, self.name);
            asked::corrected(&mut recipe.note, self.note);
            recipe.stars = self.stars.or(recipe.stars).filter(|stars| *stars > 0);
            let name = Argument::own(&recipe.name);
            Ok(say!("deed-recipe-edited", name))
        })?;
        let recipe = app.read_back(|reading| RecipeLine::of(reading, &id, recipe))?;
        Ok(RecipeWritten { done, recipe })
    }
}

impl Command for ComposeRecipe {
    const NAME: &'static str = "recipe.compose";
    type Reply = Composition;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: RecipeId = asked::id("recipe", &self.recipe)?;
        app.read(|reading| {
            let recipe = reading
                .get::<Recipe>(&id)
                .map_err(|why| Failure::from(why).renamed("recipe"))?;
            composed(reading, recipe, self.plants)
        })
    }
}
