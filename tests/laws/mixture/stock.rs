//! Any ingredient, any amount, any plant.

use physics::{
    MassFraction, Strength, WetBasis,
    mixture::{Acidity, Ingredient, Oil, Plant, Pour},
    quantity::{grams, kg_per_m3},
};
use proptest::prelude::*;

pub fn mass(percent: f64) -> MassFraction {
    MassFraction::from_percent(percent).unwrap()
}

pub fn strength(percent: f64) -> Strength {
    Strength::from_percent(percent).unwrap()
}

pub fn any_ingredient() -> impl Strategy<Value = Ingredient> {
    let acid = |a: f64| Acidity::new(a).unwrap();
    prop_oneof![
        Just(Ingredient::water()),
        (0.0..=100.0).prop_map(|q| Ingredient::spirit(strength(q))),
        (0.0..=100.0).prop_map(|w| Ingredient::glycerin(mass(w))),
        (0.0..=30.0).prop_map(move |a| Ingredient::vinegar(acid(a))),
        (5.0..=25.0, 0.0..=200.0, 0.0..=1.5).prop_map(move |(q, s, a): (f64, f64, f64)| {
            Ingredient::wine(strength(q), kg_per_m3(s), acid(a)).unwrap()
        }),
        Just(Ingredient::sugar()),
        (0.0..=85.0).prop_map(|w| Ingredient::syrup(mass(w)).unwrap()),
        (10.0..=25.0).prop_map(|w| Ingredient::honey(mass(w)).unwrap()),
        (0.0..=75.0, 0.0..=10.0)
            .prop_map(move |(w, a)| Ingredient::juice(mass(w), acid(a)).unwrap()),
        prop::sample::select(Oil::ALL.to_vec()).prop_map(Ingredient::oil),
    ]
}

pub fn any_pours() -> impl Strategy<Value = Vec<Pour>> {
    // At least some water, so that there is always a liquid.
    let poured = prop::collection::vec((any_ingredient(), 0.0..=1000.0), 0..6);
    (poured, 1.0..=1000.0).prop_map(|(poured, water_g)| {
        let mut pours: Vec<Pour> = poured
            .into_iter()
            .map(|(ingredient, g)| Pour::weighed(ingredient, grams(g)).unwrap())
            .collect();
        pours.push(Pour::weighed(Ingredient::water(), grams(water_g)).unwrap());
        pours
    })
}

pub fn any_plants() -> impl Strategy<Value = Vec<Plant>> {
    let plant =
        (0.0..=500.0, 5.0..=95.0, 0.0..=8.0, 0.0..=4.0).prop_map(|(g, moisture, below, above)| {
            let wet = |percent: f64| WetBasis::from_percent(percent.clamp(0.0, 99.0)).unwrap();
            Plant::between(
                grams(g),
                wet(moisture - below),
                wet(moisture),
                wet(moisture + above),
            )
            .unwrap()
        });
    prop::collection::vec(plant, 0..4)
}
