//! The worked examples and formulas of the trade, and the published ratios the formulary carries.
//!
//! Examples that add volumes are held to the naive sum they print, and shown to miss the exact
//! answer by what the table says. Child rules are checked as history; nothing of them ships.

mod carried;
mod formulas;
mod readme;
mod water;
mod worked_examples;

use formulary::{
    Interval,
    compose::{Composition, Plant, Stock},
    preparations::PlantState,
};
use physics::{
    Strength, WetBasis,
    mixture::{self, Ingredient, Liquid, Pour, describe},
    quantity::{celsius, grams, millilitres},
};

fn spirit(percent: f64) -> Ingredient {
    Ingredient::spirit(strength(percent))
}

fn strength(percent: f64) -> Strength {
    Strength::from_percent(percent).expect("a strength of the table")
}

fn stock(ingredient: Ingredient) -> Stock {
    Stock {
        ingredient,
        available_ml: None,
        exactly_ml: None,
        supply: None,
    }
}

fn mixed(pours: &[(Ingredient, f64)], herb: Option<(f64, f64)>) -> Liquid {
    let pours: Vec<Pour> = pours
        .iter()
        .map(|(ingredient, ml)| {
            Pour::measured(*ingredient, millilitres(*ml)).expect("a volume of the table")
        })
        .collect();
    let plants: Vec<mixture::Plant> = herb
        .map(|(mass_g, moisture)| {
            let moisture = WetBasis::from_percent(moisture).expect("a moisture of the table");
            mixture::Plant::new(grams(mass_g), moisture).expect("a mass of the table")
        })
        .into_iter()
        .collect();
    describe(&pours, &plants, celsius(20.0)).expect("a liquid")
}

fn herb(name: &str, part: &str, state: PlantState, mass_g: f64, moisture: f64) -> Plant {
    Plant {
        herb: name.into(),
        part: part.into(),
        state,
        mass_g,
        moisture_wet_percent: Some(Interval::exact(moisture)),
        told: None,
        identity: Default::default(),
    }
}

fn wish(preparation: &str, plant: Plant) -> Composition {
    Composition::of(preparation, plant)
}
