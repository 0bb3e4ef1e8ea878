//! Whatever keeps a liquid never counts against it.

use super::stock::any_pours;
use formulary::{
    keep::{Prospect, judge},
    preparations::{self, PlantState, Preparation, Verdict},
};
use physics::{
    MassFraction, Strength,
    mixture::{Ingredient, Pour, describe},
    quantity::{celsius, grams},
};
use proptest::prelude::*;

/// The verdict with the gates of acid left out, which any other liquid thins.
fn verdict(preparation: &Preparation, pours: &[Pour]) -> Option<Verdict> {
    let mut preparation = preparation.clone();
    preparation.gates.retain(|gate| {
        !["vinegar-start", "vinegar-end", "acid-ph", "measured-ph"].contains(&gate.as_str())
    });
    let liquid = describe(pours, &[], celsius(20.0)).ok()?;
    // Sugar that does not dissolve keeps nothing, and the law does not speak of it.
    if liquid.undissolved_sugar_g.value > 0.0 {
        return None;
    }
    let prospect = Prospect {
        liquid: Some(&liquid),
        vinegar_acidity_g_per_100ml: None,
        herb_water_percent: None,
        measured_ph: None,
        state: PlantState::Dried,
    };
    Some(judge(&preparation, &prospect).verdict)
}

fn added() -> impl Strategy<Value = Pour> {
    let kinds = [
        Ingredient::spirit(Strength::from_percent(100.0).unwrap()),
        Ingredient::glycerin(MassFraction::from_percent(100.0).unwrap()),
        Ingredient::sugar(),
    ];
    (0..3usize, 0.01..=400.0f64)
        .prop_map(move |(which, g)| Pour::weighed(kinds[which], grams(g)).unwrap())
}

/// Liquids near the limits: mostly water, with a little or much of what keeps.
fn weak() -> impl Strategy<Value = Vec<Pour>> {
    let mass = |ingredient: Ingredient, g: f64| Pour::weighed(ingredient, grams(g)).unwrap();
    (
        0.0..=120.0f64,
        0.0..=250.0f64,
        0.0..=200.0f64,
        0.0..=10.0f64,
    )
        .prop_map(move |(alcohol, glycerin, sugar, acid)| {
            vec![
                mass(Ingredient::water(), 100.0),
                mass(
                    Ingredient::spirit(Strength::from_percent(100.0).unwrap()),
                    0.25 * alcohol,
                ),
                mass(
                    Ingredient::glycerin(MassFraction::from_percent(100.0).unwrap()),
                    0.5 * glycerin,
                ),
                mass(Ingredient::sugar(), 0.9 * sugar),
                mass(
                    Ingredient::vinegar(physics::mixture::Acidity::new(10.0).unwrap()),
                    acid,
                ),
            ]
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]
    #[test]
    fn alcohol_glycerin_and_sugar_that_dissolves_never_worsen_a_verdict(
        mixed in any_pours(), near in weak(), more in added(),
    ) {
        for pours in [mixed, near] {
            for preparation in preparations::all() {
                let Some(before) = verdict(preparation, &pours) else { continue };
                let with: Vec<Pour> = pours.iter().copied().chain([more]).collect();
                let Some(after) = verdict(preparation, &with) else { continue };
                prop_assert!(after <= before, "{}: {before:?} became {after:?} with {more:?}", preparation.key);
            }
        }
    }

    #[test]
    fn the_highest_activity_is_never_below_either_rule(pours in any_pours(), near in weak()) {
        for pours in [pours, near] {
            let all = describe(&pours, &[], celsius(20.0)).unwrap().water_activity;
            for rule in [all.by_ross, all.by_norrish] {
                prop_assert!(all.highest.low >= rule.low && all.highest.value >= rule.value && all.highest.high >= rule.high);
            }
        }
    }
}
