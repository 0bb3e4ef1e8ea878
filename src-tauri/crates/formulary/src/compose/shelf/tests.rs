use physics::mixture::{Ingredient, IngredientKind};

use crate::{
    compose::{
        Composition, Proposal, Stock, compose,
        tests::{mint, plant, usual_state},
    },
    preparations::{self, PlantState},
};

fn asked(key: &str) -> Composition {
    let preparation = preparations::find(key, PlantState::Fresh).unwrap();
    let state = usual_state(preparation);
    let mut wish = Composition::of(key, plant("oregano", "flowering tops", state, 100.0));
    if !preparation.takes_herb() {
        wish.plants.clear();
        wish.jar_ml = Some(1000.0);
    }
    wish
}

fn bottle(ingredient: Ingredient, ml: f64, name: &str) -> Stock {
    Stock {
        ingredient,
        available_ml: Some(ml),
        exactly_ml: None,
        supply: Some(name.to_owned()),
    }
}

fn same_liquid(a: &Proposal, b: &Proposal, key: &str) {
    for (one, other) in [
        (a.liquid.strength_percent_vol, b.liquid.strength_percent_vol),
        (
            a.liquid.glycerol_percent_mass,
            b.liquid.glycerol_percent_mass,
        ),
        (a.liquid.sugar_percent_mass, b.liquid.sugar_percent_mass),
        (a.liquid.acidity_g_per_100ml, b.liquid.acidity_g_per_100ml),
    ] {
        // What a measuring jug can tell, as the solver itself counts it.
        assert!(
            (one.value - other.value).abs() < 0.05,
            "{key}: {one:?} {other:?}"
        );
    }
}

#[test]
fn two_bottles_too_small_make_what_one_large_one_makes_in_every_preparation() {
    for preparation in preparations::all() {
        let key = preparation.key.as_str();
        let plain = compose(&asked(key)).unwrap();
        let mut wish = asked(key);
        wish.stock = plain
            .pours
            .iter()
            .flat_map(|pour| {
                ["left", "right"].map(|name| bottle(pour.ingredient, 0.6 * pour.ml, name))
            })
            .collect();
        let shared = compose(&wish).unwrap();
        assert!(shared.reached, "{key}: {:?}", shared.short_of);
        assert!(
            (shared.poured_ml - plain.poured_ml).abs() < 0.002 * plain.poured_ml,
            "{key}"
        );
        same_liquid(&plain, &shared, key);
        for pour in &shared.pours {
            let there = wish
                .stock
                .iter()
                .find(|stock| stock.ingredient == pour.ingredient && stock.supply == pour.supply);
            let there = there.and_then(|stock| stock.available_ml).unwrap();
            assert!(pour.ml <= there + 1e-6, "{key}: {pour:?} of {there}");
        }
    }
}

#[test]
fn a_fixed_amount_stays_fixed_in_every_preparation() {
    for preparation in preparations::all() {
        let key = preparation.key.as_str();
        let plain = compose(&asked(key)).unwrap();
        let first = &plain.pours[0];
        let mut wish = asked(key);
        wish.stock = vec![Stock {
            exactly_ml: Some(0.5 * first.ml),
            available_ml: None,
            ..bottle(first.ingredient, 0.0, "opened")
        }];
        let jar = compose(&wish).unwrap();
        let opened = jar.pours.iter().find(|pour| pour.supply.is_some());
        let ml = opened.map_or(0.0, |pour| pour.ml);
        assert!((ml - 0.5 * first.ml).abs() < 1e-6, "{key}: {ml}");
        // A right mixture in a smaller amount comes before a wrong one in the full amount.
        let full = (jar.poured_ml - plain.poured_ml).abs() < 0.01 * plain.poured_ml;
        assert!(full || !jar.short_of.is_empty(), "{key}: {}", jar.poured_ml);
    }
}

#[test]
fn a_cordial_of_strong_spirit_is_let_down_to_the_recipe() {
    let plain = compose(&Composition::of("cordial", mint(80.0))).unwrap();
    let mut wish = Composition::of("cordial", mint(80.0));
    wish.stock = vec![super::super::tests::spirit(95.0)];
    let jar = compose(&wish).unwrap();
    same_liquid(&plain, &jar, "cordial");
    assert!(
        jar.pours
            .iter()
            .any(|pour| pour.kind == IngredientKind::Water)
    );
    assert!(jar.reasons.iter().any(|note| note.code == "let-down"));
}

#[test]
fn what_the_shelf_cannot_make_is_said_with_what_it_lacks() {
    let mut wish = asked("glycerite-fresh");
    let glycerin = compose(&wish).unwrap().pours[0].clone();
    wish.stock = vec![bottle(glycerin.ingredient, 30.0, "nearly empty")];
    let jar = compose(&wish).unwrap();
    assert!(!jar.reached);
    assert_eq!(jar.short_of[0].got, 30.0);
}
