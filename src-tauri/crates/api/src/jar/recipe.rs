//! A jar worth making again: `jar.keep_recipe`, `recipe.*`, `jar.repeat`.

use journal::{Jar, JarId, Recipe, RecipeId, RecipePlant, Stock};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::judged::Judged;
use super::proposal::{Composition, Plant};
use crate::herb::Known;
use crate::mixture::{self, StockItem};
use crate::wire::{Changed, PlantState, bare_request};
use crate::{App, Command, Failure, asked};

/// The recipe of a jar is to be kept.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct KeepRecipe {
    pub jar: String,
    pub name: String,
    pub note: Option<String>,
    pub stars: Option<u8>,
}

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

/// A jar once more with this year's plants.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct RepeatJar {
    pub jar: String,
    pub plants: Option<Vec<Plant>>,
}

/// A plant of a recipe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecipePlantLine {
    pub herb: String,
    pub common: String,
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
    pub preparation_name: String,
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
    fn of(reading: &Reading<'_>, id: &RecipeId, recipe: Recipe) -> Result<Self, Failure> {
        let mut plants = Vec::new();
        for plant in recipe.plants {
            plants.push(RecipePlantLine {
                common: Known::written(reading, &plant.herb)?.common,
                herb: plant.herb.to_string(),
                part: plant.part,
                state: plant.state.into(),
                mass_g: plant.mass_g,
            });
        }
        let name = formulary::preparations::all()
            .iter()
            .find(|known| known.key == recipe.preparation)
            .map_or(&recipe.preparation, |known| &known.name);
        Ok(Self {
            id: id.to_string(),
            preparation_name: name.clone(),
            name: recipe.name,
            jar: recipe.jar.map(|jar| jar.to_string()),
            preparation: recipe.preparation,
            plants,
            stock: recipe.stock.iter().map(mixture::as_item).collect(),
            ratio_ml_per_g: recipe.ratio_ml_per_g,
            strength_percent_vol: recipe.strength_percent_vol,
            glycerin_percent_vol: recipe.glycerin_percent_vol,
            fortify_percent_vol: recipe.fortify_percent_vol,
            stars: recipe.stars,
            note: recipe.note,
        })
    }
}

impl Command for KeepRecipe {
    const NAME: &'static str = "jar.keep_recipe";
    type Reply = RecipeWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let id = RecipeId(app.new_id());
        let (done, line) = app.perform(|writing| {
            let jar = writing
                .get::<Jar>(&jar_id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let recipe = Recipe {
                name: self.name.trim().to_owned(),
                jar: Some(jar_id),
                note: asked::text(self.note),
                stars: self.stars.filter(|stars| *stars > 0),
                ..aims(writing, &jar)?
            };
            writing.record(&id, &recipe)?;
            let line = RecipeLine::of(writing, &id, recipe)?;
            Ok((format!("Kept the recipe {}", line.name), line))
        })?;
        Ok(RecipeWritten { done, recipe: line })
    }
}

impl Command for ListRecipes {
    const NAME: &'static str = "recipe.list";
    type Reply = Recipes;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: RecipeId = asked::id("id", &self.id)?;
        let (done, line) = app.perform(|writing| {
            let mut recipe = writing.get::<Recipe>(&id)?;
            if let Some(name) = self.name {
                recipe.name = name.trim().to_owned();
            }
            asked::corrected(&mut recipe.note, self.note);
            recipe.stars = self.stars.or(recipe.stars).filter(|stars| *stars > 0);
            writing.correct(&id, &recipe)?;
            let line = RecipeLine::of(writing, &id, recipe)?;
            Ok((format!("Corrected the recipe {}", line.name), line))
        })?;
        Ok(RecipeWritten { done, recipe: line })
    }
}

impl Command for ComposeRecipe {
    const NAME: &'static str = "recipe.compose";
    type Reply = Composition;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: RecipeId = asked::id("recipe", &self.recipe)?;
        app.read(|reading| {
            let recipe = reading
                .get::<Recipe>(&id)
                .map_err(|why| Failure::from(why).renamed("recipe"))?;
            composed(reading, recipe, self.plants)
        })
    }
}

impl Command for RepeatJar {
    const NAME: &'static str = "jar.repeat";
    type Reply = Composition;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        app.read(|reading| {
            let jar = reading
                .get::<Jar>(&id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let recipe = aims(reading, &jar)?;
            composed(reading, recipe, self.plants)
        })
    }
}

/// What a jar was made to: ratio and strengths, as far as its preparation is made to them.
fn aims(reading: &Reading<'_>, jar: &Jar) -> Result<Recipe, Failure> {
    use formulary::preparations::Aim;
    let judged = Judged::of(reading, jar)?;
    let glycerin_ml: f64 = jar
        .pours
        .iter()
        .filter(|pour| matches!(pour.item, Stock::Glycerin { .. }))
        .map(|pour| pour.ml)
        .sum();
    let tenths = |value: f64| (value * 10.0).round() / 10.0;
    let strength = tenths(judged.poured.liquid.strength_percent_vol.value);
    let aim = judged.preparation.aim;
    let mut stock: Vec<Stock> = Vec::new();
    for pour in &jar.pours {
        if !stock.contains(&pour.item) {
            stock.push(pour.item.clone());
        }
    }
    let plants = jar.plants.iter().map(|plant| RecipePlant {
        herb: plant.herb.clone(),
        part: plant.part.clone(),
        state: plant.state,
        mass_g: plant.mass_g,
    });
    Ok(Recipe {
        name: jar.name.clone(),
        jar: None,
        preparation: jar.preparation.clone(),
        plants: plants.collect(),
        stock,
        ratio_ml_per_g: jar
            .ratio_ml_per_g()
            .map(|ratio| (ratio * 100.0).round() / 100.0)
            .filter(|ratio| (0.5..=50.0).contains(ratio)),
        strength_percent_vol: (aim == Aim::Strength).then_some(strength),
        glycerin_percent_vol: (aim == Aim::Glycerin)
            .then(|| tenths(100.0 * glycerin_ml / jar.poured_ml())),
        fortify_percent_vol: judged
            .preparation
            .fortify
            .is_some()
            .then_some(strength.min(40.0)),
        stars: None,
        note: None,
    })
}

/// The recipe on this year's plants. Their water is left open, so that this year's lots and batches
/// tell it; a liquid is taken from the shelf where its like stands there.
fn composed(
    reading: &Reading<'_>,
    recipe: Recipe,
    plants: Option<Vec<Plant>>,
) -> Result<Composition, Failure> {
    let plants = plants.unwrap_or_else(|| {
        let plants = recipe.plants.iter().map(|plant| Plant {
            lot: None,
            herb: plant.herb.to_string(),
            part: plant.part.clone(),
            state: plant.state.into(),
            mass_g: plant.mass_g,
            moisture_wet_percent: None,
            sample: None,
        });
        plants.collect()
    });
    for (at, plant) in plants.iter().enumerate() {
        Known::asked(reading, &plant.herb)
            .and_then(|known| known.refuse_poison(&plant.part, &recipe.preparation, true))
            .map_err(|why| why.within(&format!("plants[{at}]")))?;
    }
    let shelf = reading.supplies()?;
    let stock = recipe.stock.iter().map(|item| {
        let like = shelf
            .iter()
            .find(|row| row.left_ml > 0.0 && row.supply.item == *item);
        StockItem {
            supply: like.map(|row| row.id.to_string()),
            ..mixture::as_item(item)
        }
    });
    Ok(Composition {
        stock: stock.collect(),
        preparation: recipe.preparation,
        plants,
        ratio_ml_per_g: recipe.ratio_ml_per_g,
        jar_ml: None,
        strength_percent_vol: recipe.strength_percent_vol,
        glycerin_percent_vol: recipe.glycerin_percent_vol,
        fortify_percent_vol: recipe.fortify_percent_vol,
        temperature_c: None,
        confirmed: None,
    })
}
