//! Reaching a target from the shelf.

use super::stock::{any_ingredient, any_plants, mass, strength};
use physics::{
    WetBasis,
    mixture::{Acidity, Ingredient, Oil, Plant, Pour, Unmixable, describe},
    quantity::{celsius, grams, millilitres, millilitres_of},
    solve::{Reached, StockItem, Target, Targets, reach},
};
use proptest::prelude::*;

fn plant(g: f64, percent: f64) -> Plant {
    Plant::new(grams(g), WetBasis::from_percent(percent).unwrap()).unwrap()
}

fn item(ingredient: Ingredient) -> StockItem {
    StockItem::new(ingredient)
}

fn ml(answer: &Reached, index: usize) -> f64 {
    answer
        .amounts
        .iter()
        .find(|amount| amount.index == index)
        .map_or(0.0, |amount| millilitres_of(amount.volume))
}

/// The answer poured again by the millilitres that it names.
fn poured_again(
    stock: &[StockItem],
    plants: &[Plant],
    answer: &Reached,
) -> physics::mixture::Liquid {
    let pours: Vec<Pour> = answer
        .amounts
        .iter()
        .map(|amount| Pour::measured(*stock[amount.index].ingredient(), amount.volume).unwrap())
        .collect();
    describe(&pours, plants, celsius(20.0)).unwrap()
}

proptest! {
    #[test]
    fn reach_then_describe_returns_every_target(
        q in 5.0..=40.0, g in 5.0..=30.0, s in 2.0..=15.0, herb in 0.0..=100.0, volume in 500.0..=2000.0,
    ) {
        let stock = [
            item(Ingredient::spirit(strength(96.0))),
            item(Ingredient::glycerin(mass(99.5))),
            item(Ingredient::syrup(mass(66.0)).unwrap()),
            item(Ingredient::water()),
        ];
        let targets = Targets {
            strength: Some(strength(q)),
            glycerol: Some(mass(g)),
            sugar: Some(mass(s)),
            volume: Some(millilitres(volume)),
            ..Targets::default()
        };
        let plants = [plant(herb, 80.0)];
        let answer = reach(&stock, &plants, &targets).unwrap();
        let liquid = poured_again(&stock, &plants, &answer);
        prop_assert!(answer.reached, "{:?}", answer.short_of);
        prop_assert!((liquid.strength_percent_vol.value - q).abs() < 0.05);
        prop_assert!((liquid.glycerol_percent_mass.value - g).abs() < 0.1);
        prop_assert!((liquid.sugar_percent_mass.value - s).abs() < 0.1);
        prop_assert!((liquid.volume_ml.value / volume - 1.0).abs() < 1e-3);
    }

    #[test]
    fn a_target_that_some_mixture_meets_is_met(
        stock in prop::collection::vec((any_ingredient(), 0.0..=300.0), 1..6),
        water in 10.0..=500.0,
        plants in any_plants(),
    ) {
        // Whatever a mixture comes to, asking for that must be answered with a mixture that comes to it.
        let mut pours: Vec<Pour> = stock
            .iter()
            .map(|&(ingredient, ml)| Pour::measured(ingredient, millilitres(ml)).unwrap())
            .collect();
        pours.push(Pour::measured(Ingredient::water(), millilitres(water)).unwrap());
        let wanted = describe(&pours, &plants, celsius(20.0)).unwrap();
        prop_assume!(wanted.acidity_g_per_100ml.value <= 30.0);
        let targets = Targets {
            strength: Some(strength(wanted.strength_percent_vol.value)),
            glycerol: Some(mass(wanted.glycerol_percent_mass.value)),
            sugar: Some(mass(wanted.sugar_percent_mass.value)),
            acidity: Some(Acidity::new(wanted.acidity_g_per_100ml.value).unwrap()),
            volume: Some(millilitres(wanted.volume_ml.value)),
            poured: None,
        };
        let shelf: Vec<StockItem> = pours.iter().map(|pour| item(*pour.ingredient())).collect();
        let answer = reach(&shelf, &plants, &targets).unwrap();
        prop_assert!(answer.reached, "{:?}", answer.short_of);
    }

    #[test]
    fn no_more_is_used_than_there_is(
        shelf in prop::collection::vec((any_ingredient(), 0.0..=400.0), 1..6),
        plants in any_plants(),
        q in 0.0..=100.0, g in 0.0..=100.0, volume in 10.0..=3000.0,
    ) {
        let stock: Vec<StockItem> = shelf
            .iter()
            .map(|&(ingredient, available)| item(ingredient).at_most(millilitres(available)).unwrap())
            .collect();
        let targets = Targets {
            strength: Some(strength(q)),
            glycerol: Some(mass(g)),
            volume: Some(millilitres(volume)),
            ..Targets::default()
        };
        match reach(&stock, &plants, &targets) {
            Ok(answer) => {
                for amount in &answer.amounts {
                    let available = shelf[amount.index].1;
                    prop_assert!(millilitres_of(amount.volume) <= available * (1.0 + 1e-9));
                    prop_assert!(millilitres_of(amount.volume) >= 0.0);
                }
                prop_assert_eq!(answer.reached, answer.short_of.is_empty());
            }
            // Nothing but oil, or nothing at all, on the shelf.
            Err(refused) => prop_assert_eq!(refused, Unmixable::NoLiquid),
        }
    }

    #[test]
    fn a_fixed_amount_is_kept(exactly in 1.0..=500.0, q in 1.0..=90.0) {
        let stock = [
            item(Ingredient::spirit(strength(95.0))).exactly(millilitres(exactly)).unwrap(),
            item(Ingredient::water()),
        ];
        let targets = Targets { strength: Some(strength(q)), ..Targets::default() };
        let answer = reach(&stock, &[], &targets).unwrap();
        prop_assert!((ml(&answer, 0) - exactly).abs() < 1e-9 * exactly);
        // At most ten times what is fixed, so the weakest cannot be reached.
        prop_assert_eq!(answer.reached, q >= 9.5 - 1e-6 || answer.short_of.is_empty());
    }
}

#[test]
fn what_is_poured_on_covers_the_herb_and_ends_at_the_strength() {
    let stock = [
        item(Ingredient::spirit(strength(95.0))),
        item(Ingredient::water()),
    ];
    let targets = Targets {
        strength: Some(strength(60.0)),
        poured: Some(millilitres(200.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[plant(100.0, 80.0)], &targets).unwrap();
    assert!(answer.reached, "{answer:?}");
    assert!((ml(&answer, 0) + ml(&answer, 1) - 200.0).abs() < 0.01);
    assert!((answer.liquid.strength_percent_vol.value - 60.0).abs() < 0.01);
}

#[test]
fn vodka_cannot_carry_fresh_mint_to_sixty_and_says_how_far_it_comes() {
    let stock = [
        item(Ingredient::spirit(strength(40.0))),
        item(Ingredient::water()),
    ];
    let targets = Targets {
        strength: Some(strength(60.0)),
        poured: Some(millilitres(200.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[plant(100.0, 80.0)], &targets).unwrap();
    assert!(!answer.reached);
    // All of it vodka: 28.6 % vol (common practice, no source).
    assert!((ml(&answer, 0) - 200.0).abs() < 0.01, "{answer:?}");
    assert_eq!(answer.short_of.len(), 1);
    assert_eq!(answer.short_of[0].target, Target::Strength);
    assert!((answer.short_of[0].got - 28.6).abs() <= 0.05);
}

#[test]
fn a_short_shelf_makes_less_of_the_right_thing() {
    let spirit = item(Ingredient::spirit(strength(95.0)))
        .at_most(millilitres(200.0))
        .unwrap();
    let stock = [spirit, item(Ingredient::water())];
    let targets = Targets {
        strength: Some(strength(40.0)),
        volume: Some(millilitres(1000.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[], &targets).unwrap();
    assert!(
        (answer.liquid.strength_percent_vol.value - 40.0).abs() < 0.01,
        "{answer:?}"
    );
    assert_eq!(
        answer
            .short_of
            .iter()
            .map(|short| short.target)
            .collect::<Vec<_>>(),
        [Target::Volume]
    );
    assert!((answer.liquid.volume_ml.value - 475.0).abs() < 0.01);
}

#[test]
fn what_was_bought_is_spared_where_water_does() {
    let stock = [
        item(Ingredient::spirit(strength(40.0))),
        item(Ingredient::spirit(strength(95.0))),
        item(Ingredient::water()),
    ];
    let targets = Targets {
        strength: Some(strength(30.0)),
        volume: Some(millilitres(500.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[], &targets).unwrap();
    assert_eq!(
        ml(&answer, 0),
        0.0,
        "strong spirit and water pour less of what was bought: {answer:?}"
    );
    assert!((ml(&answer, 1) - 500.0 * 30.0 / 95.0).abs() < 0.01);
}

#[test]
fn vinegar_of_the_wanted_acidity_is_made_after_the_herb() {
    let stock = [
        item(Ingredient::vinegar(Acidity::new(7.0).unwrap())),
        item(Ingredient::honey(mass(17.0)).unwrap()),
        item(Ingredient::water()),
    ];
    let targets = Targets {
        acidity: Some(Acidity::new(3.0).unwrap()),
        sugar: Some(mass(30.0)),
        poured: Some(millilitres(400.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[plant(50.0, 75.0)], &targets).unwrap();
    assert!(answer.reached, "{answer:?}");
}

#[test]
fn one_thing_on_the_shelf_is_simply_measured_out() {
    let stock = [item(Ingredient::water())];
    let sized = Targets {
        volume: Some(millilitres(250.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[], &sized).unwrap();
    assert!((ml(&answer, 0) - 250.0).abs() < 1e-6);
    let unsized_answer = reach(&stock, &[], &Targets::default()).unwrap();
    assert!((unsized_answer.liquid.volume_ml.value - 100.0).abs() < 1e-6);
    let wanted = Targets {
        strength: Some(strength(40.0)),
        ..sized
    };
    let dry = reach(&stock, &[], &wanted).unwrap();
    assert!(
        !dry.reached && (dry.liquid.volume_ml.value - 250.0).abs() < 1e-6,
        "{dry:?}"
    );
}

#[test]
fn oil_covers_a_dried_herb() {
    let stock = [item(Ingredient::oil(Oil::Olive))];
    let targets = Targets {
        poured: Some(millilitres(500.0)),
        ..Targets::default()
    };
    let answer = reach(&stock, &[plant(100.0, 10.0)], &targets).unwrap();
    assert!(
        answer.reached && (ml(&answer, 0) - 500.0).abs() < 0.01,
        "{answer:?}"
    );
}

#[test]
fn what_cannot_be_asked_is_refused_in_a_sentence() {
    let refused = |stock: &[StockItem], plants: &[Plant]| {
        reach(stock, plants, &Targets::default()).unwrap_err()
    };
    assert_eq!(refused(&[], &[]), Unmixable::NoStock);
    let water = item(Ingredient::water());
    assert_eq!(refused(&[water], &[plant(100.0, 80.0)]), Unmixable::NoSize);
    let both = water
        .at_most(millilitres(100.0))
        .unwrap()
        .exactly(millilitres(200.0))
        .unwrap();
    assert_eq!(
        api::Language::English.tell(&refused(&[both], &[]).message()),
        "You asked for 200 mL, but you have only 100 mL."
    );
    for bad in [0.0, -1.0, f64::NAN, 1e308] {
        let sized = Targets {
            volume: Some(millilitres(bad)),
            ..Targets::default()
        };
        let refusal = reach(&[water], &[], &sized).unwrap_err().message();
        let refusal = api::Language::English.tell(&refusal);
        let begins = "The volume wanted at the end must be between 0.1 mL and 1000 L";
        assert!(refusal.starts_with(begins), "{refusal}");
    }
    assert_eq!(
        refused(&[item(Ingredient::oil(Oil::Olive))], &[]),
        Unmixable::NoLiquid
    );
    for bad in [-1.0, f64::NAN, 1e308] {
        assert!(
            water.at_most(millilitres(bad)).is_err() && water.exactly(millilitres(bad)).is_err()
        );
    }
}
