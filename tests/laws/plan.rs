//! What a plan says, composed and strained with the same retention, fills the bottles asked for.

use formulary::compose::{self, Composition, Plant};
use formulary::herbs;
use formulary::plan::{self, Wish};
use formulary::preparations::{self, PlantState, Preparation};
use physics::Interval;
use proptest::prelude::*;

/// Lost in trimming, as the plan adds it (practice).
const TRIM_LOSS: f64 = 0.10;
/// Relative: the planned amounts are the unit recipe times one number, so only rounding is left.
const ROUNDING: f64 = 1e-6;

fn wish() -> impl Strategy<Value = (&'static Preparation, Wish)> {
    let plants: Vec<(String, String)> = herbs::all()
        .iter()
        .flat_map(|herb| {
            let parts = herb.parts().into_iter();
            parts.map(|part| (herb.key.clone(), part.to_owned()))
        })
        .collect();
    let own = prop_oneof![
        Just(None),
        (0.3..2.0_f64, 0.0..0.4_f64).prop_map(|(value, off)| Some(Interval {
            low: value * (1.0 - off),
            value,
            high: value * (1.0 + off),
        })),
    ];
    (
        prop::sample::select(plants),
        prop::sample::select(preparations::all().iter().collect::<Vec<_>>()),
        any::<bool>(),
        1..200_u32,
        prop_oneof![Just(30.0), Just(60.0), Just(100.0), 1.0..5000.0_f64],
        own,
    )
        .prop_filter_map(
            "is made of such herb",
            |((herb, part), preparation, is_fresh, bottles, bottle_ml, own)| {
                let state = if is_fresh {
                    PlantState::Fresh
                } else {
                    PlantState::Dried
                };
                let wish = Wish {
                    herb,
                    part,
                    preparation: preparation.key.clone(),
                    identity: Default::default(),
                    state,
                    bottles,
                    bottle_ml,
                    ready_on: "2026-12-01".parse().expect("a day"),
                    own_retention_ml_per_g: own,
                    stock: Vec::new(),
                    yearly_use_ml: None,
                    gifts: true,
                };
                let found = preparations::find(&preparation.key, state)?;
                plan::plan(&wish).is_ok().then_some((found, wish))
            },
        )
}

proptest! {
    #![proptest_config(ProptestConfig { max_local_rejects: 1_000_000, ..ProptestConfig::with_cases(400) })]

    #[test]
    fn a_plan_composed_and_strained_fills_the_bottles_asked_for((preparation, wish) in wish()) {
        let plan = plan::plan(&wish).expect("it was planned before");
        let wanted = f64::from(wish.bottles) * wish.bottle_ml;
        let herb_g = plan
            .dry_g
            .unwrap_or_else(|| plan.pick_fresh_g.map_monotone(|g| g * (1.0 - TRIM_LOSS)));
        let (retention, _) = plan::retention(preparation, wish.own_retention_ml_per_g);
        let strained = |mass_g: f64| {
            let plant = Plant {
                herb: wish.herb.clone(),
                part: wish.part.clone(),
                state: wish.state,
                mass_g,
                moisture_wet_percent: None,
                told: None,
                identity: Default::default(),
            };
            let jar = compose::compose(&Composition::of(&wish.preparation, plant)).expect("it was planned");
            (plan::strained_ml(&jar, retention), jar)
        };
        let near = |out: f64| (out - wanted).abs() <= ROUNDING * wanted;
        let (out, jar) = strained(herb_g.value);
        prop_assert!(near(out.value), "{} mL come out of {wanted}", out.value);
        prop_assert!(out.low <= wanted * (1.0 + ROUNDING) && wanted * (1.0 - ROUNDING) <= out.high, "{out:?}");
        // The most herb is what the worst jar needs, the least what the best one does.
        let (most, _) = strained(herb_g.high);
        prop_assert!(near(most.low), "{most:?} for {wanted} mL");
        let (least, _) = strained(herb_g.low);
        prop_assert!(near(least.high), "{least:?} for {wanted} mL");
        prop_assert_eq!(plan.pours.len(), jar.pours.len());
        for (planned, poured) in plan.pours.iter().zip(&jar.pours) {
            prop_assert_eq!(&planned.name, &poured.name);
            prop_assert!((planned.ml - poured.ml).abs() <= ROUNDING * poured.ml.max(1.0));
        }
    }
}
