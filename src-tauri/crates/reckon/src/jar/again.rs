//! What a jar was made to, and a recipe on this year's plants.

use journal::{Item, Jar, Recipe, RecipePlant};
use message::Failure;
use store::Reading;

use crate::herb::Known;
use crate::item::{self, StockItem};
use crate::jar::judged::Judged;
use crate::jar::proposal::{Composition, Plant};

/// What a jar was made to: ratio and strengths, as far as its preparation is made to them.
pub fn aims(reading: &Reading<'_>, jar: &Jar) -> Result<Recipe, Failure> {
    use formulary::preparations::Aim;
    let judged = Judged::of(reading, jar)?;
    let glycerin_ml: f64 = jar
        .pours
        .iter()
        .filter(|pour| matches!(pour.item, Item::Glycerin { .. }))
        .map(|pour| pour.ml)
        .sum();
    let tenths = |value: f64| (value * 10.0).round() / 10.0;
    let strength = tenths(judged.poured.liquid.strength_percent_vol.value);
    let aim = judged.preparation.aim;
    let mut stock: Vec<Item> = Vec::new();
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
pub fn composed(
    reading: &Reading<'_>,
    recipe: Recipe,
    plants: Option<Vec<Plant>>,
) -> Result<Composition, Failure> {
    let plants = plants.unwrap_or_else(|| {
        let plants = recipe.plants.iter().map(|plant| Plant {
            lot: None,
            herb: plant.herb.to_string(),
            part: plant.part.clone(),
            state: plant.state,
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
            ..item::as_item(item)
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
