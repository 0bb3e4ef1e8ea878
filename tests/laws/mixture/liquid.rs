//! What holds for any liquid described.

use super::stock::{any_plants, any_pours, strength};
use physics::{
    Interval, WetBasis,
    mixture::{Component, Composition, Ingredient, Liquid, Plant, Pour, describe, water_activity},
    quantity::{celsius, grams, grams_of},
};
use proptest::prelude::*;

fn at_20(pours: &[Pour], plants: &[Plant]) -> Liquid {
    describe(pours, plants, celsius(20.0)).unwrap()
}

fn intervals(liquid: &Liquid) -> Vec<Interval> {
    let mut each = vec![
        liquid.mass_g,
        liquid.volume_ml,
        liquid.density_kg_m3,
        liquid.contraction_ml,
        liquid.strength_percent_vol,
        liquid.us_proof,
        liquid.ethanol_percent_mass,
        liquid.ethanol_g,
        liquid.ethanol_g_per_ml,
        liquid.glycerol_percent_mass,
        liquid.glycerol_percent_vol,
        liquid.sugar_percent_mass,
        liquid.acidity_g_per_100ml,
        liquid.water_activity.highest,
        liquid.water_activity.by_ross,
        liquid.water_activity.by_norrish,
    ];
    each.extend(liquid.acid_ph);
    each.extend(liquid.flash_point_c);
    each
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs()).max(1.0)
}

proptest! {
    #[test]
    fn mass_is_conserved_over_every_component(pours in any_pours(), plants in any_plants()) {
        let liquid = at_20(&pours, &plants);
        let poured: f64 = pours.iter().map(|pour| grams_of(pour.mass())).sum();
        let picked: f64 = plants.iter().map(|plant| grams_of(plant.mass())).sum();
        // Masses are read to 1e-12 of their size.
        prop_assert!(close(grams_of(liquid.composition.total()), poured + picked, 1e-11));
        for component in Component::ALL {
            if matches!(component, Component::Water | Component::DryMatter) {
                continue; // the plants bring both
            }
            let brought: f64 = pours
                .iter()
                .map(|pour| grams_of(pour.ingredient().composition(pour.mass()).unwrap().of(component)))
                .sum();
            prop_assert!(close(grams_of(liquid.composition.of(component)), brought, 1e-11), "{component:?}");
        }
        let apart = [Component::Oil, Component::DryMatter].map(|c| grams_of(liquid.composition.of(c)));
        let bottom = liquid.undissolved_sugar_g.value;
        prop_assert!(close(liquid.mass_g.value, poured + picked - apart[0] - apart[1] - bottom, 1e-11));
    }

    #[test]
    fn every_interval_holds_its_value(pours in any_pours(), plants in any_plants(), t in 15.0..=30.0) {
        let liquid = describe(&pours, &plants, celsius(t)).unwrap();
        for interval in intervals(&liquid) {
            prop_assert!(interval.low.is_finite() && interval.high.is_finite());
            prop_assert!(interval.low <= interval.value && interval.value <= interval.high, "{interval:?}");
        }
        prop_assert!((0.0..=100.0).contains(&liquid.strength_percent_vol.value));
        prop_assert!((0.0..=1.0).contains(&liquid.water_activity.highest.value));
        prop_assert!(close(liquid.density_kg_m3.value * liquid.volume_ml.value / 1000.0, liquid.mass_g.value, 1e-12));
    }

    #[test]
    fn the_interval_holds_what_any_moisture_inside_it_gives(
        pours in any_pours(), g in 1.0..=500.0, low in 10.0..=80.0, width in 0.0..=15.0, share in 0.0..=1.0,
    ) {
        let wet = |percent: f64| WetBasis::from_percent(percent).unwrap();
        let open = Plant::between(grams(g), wet(low), wet(low + 0.5 * width), wet(low + width)).unwrap();
        let fixed = Plant::new(grams(g), wet(low + share * width)).unwrap();
        let (open, fixed) = (at_20(&pours, &[open]), at_20(&pours, &[fixed]));
        for (range, one) in intervals(&open).into_iter().zip(intervals(&fixed)) {
            // Between the sampled moistures a figure that is not monotone may stand out by a trifle.
            let slack = 1e-3 * (range.high - range.low) + 1e-9 * (range.value.abs() + open.mass_g.value);
            prop_assert!(range.low - slack <= one.value && one.value <= range.high + slack, "{one:?} in {range:?}");
        }
    }

    #[test]
    fn the_order_of_pouring_does_not_matter(pours in any_pours(), plants in any_plants()) {
        let forwards = at_20(&pours, &plants);
        let backwards: Vec<Pour> = pours.iter().rev().copied().collect();
        let backwards = at_20(&backwards, &plants);
        for (a, b) in intervals(&forwards).into_iter().zip(intervals(&backwards)) {
            prop_assert!(close(a.value, b.value, 1e-9) && close(a.low, b.low, 1e-9) && close(a.high, b.high, 1e-9));
        }
    }

    #[test]
    fn scaling_is_linear(pours in any_pours(), g in 0.0..=300.0f64, factor in 0.01..=50.0f64) {
        let plant = |g: f64| Plant::new(grams(g), WetBasis::from_percent(80.0).unwrap()).unwrap();
        let scaled: Vec<Pour> = pours
            .iter()
            .map(|pour| Pour::weighed(*pour.ingredient(), pour.mass() * factor).unwrap())
            .collect();
        let (once, many) = (at_20(&pours, &[plant(g)]), at_20(&scaled, &[plant(g * factor)]));
        for (a, b) in [
            (once.mass_g, many.mass_g),
            (once.volume_ml, many.volume_ml),
            (once.contraction_ml, many.contraction_ml),
            (once.ethanol_g, many.ethanol_g),
        ] {
            prop_assert!((a.value * factor - b.value).abs() <= 1e-9 * many.mass_g.value);
        }
        for (a, b) in [
            (once.strength_percent_vol, many.strength_percent_vol),
            (once.density_kg_m3, many.density_kg_m3),
            (once.sugar_percent_mass, many.sugar_percent_mass),
            (once.acidity_g_per_100ml, many.acidity_g_per_100ml),
            (once.water_activity.highest, many.water_activity.highest),
        ] {
            prop_assert!(close(a.value, b.value, 1e-9));
        }
    }

    #[test]
    fn adding_water_never_raises_strength_nor_any_share(
        pours in any_pours(), plants in any_plants(), water_g in 0.1..=2000.0,
    ) {
        let before = at_20(&pours, &plants);
        let mut diluted = pours;
        diluted.push(Pour::weighed(Ingredient::water(), grams(water_g)).unwrap());
        let after = at_20(&diluted, &plants);
        for (a, b) in [
            (before.strength_percent_vol, after.strength_percent_vol),
            (before.us_proof, after.us_proof),
            (before.glycerol_percent_mass, after.glycerol_percent_mass),
            (before.sugar_percent_mass, after.sugar_percent_mass),
            (before.acidity_g_per_100ml, after.acidity_g_per_100ml),
        ] {
            prop_assert!(b.value <= a.value + 1e-9, "{} rose to {}", a.value, b.value);
        }
    }

    #[test]
    fn adding_water_never_lowers_the_water_activity(
        pours in any_pours(), plants in any_plants(), water_g in 0.1..=2000.0,
    ) {
        let before = at_20(&pours, &plants).water_activity;
        let mut diluted = pours;
        diluted.push(Pour::weighed(Ingredient::water(), grams(water_g)).unwrap());
        let after = at_20(&diluted, &plants).water_activity;
        prop_assert!(after.by_ross.value >= before.by_ross.value - 1e-9, "Ross");
        prop_assert!(after.highest.value >= before.highest.value - 1e-9, "highest {before:?} {after:?}");
    }

    // Of pure ethanol and water: a liquid of wine's strength has already contracted, and in the cold it
    // really does swell by 0.02 % when more water thins it, because ethanol takes least room at about a tenth.
    #[test]
    fn ethanol_and_water_end_in_no_more_than_their_sum(
        ethanol_g in 1.0..=2000.0, water_g in 0.0..=2000.0, t in -20.0..=40.0,
    ) {
        let pours = [
            Pour::weighed(Ingredient::spirit(strength(100.0)), grams(ethanol_g)).unwrap(),
            Pour::weighed(Ingredient::water(), grams(water_g)).unwrap(),
        ];
        let liquid = describe(&pours, &[], celsius(t)).unwrap();
        // The recommendation's cells are good to 0.006 kg/m3.
        let blur = 6e-6 * liquid.volume_ml.value;
        prop_assert!(liquid.contraction_ml.value >= -blur, "{:?}", liquid.contraction_ml);
    }
}

#[test]
fn no_solute_raises_the_activity_of_water_on_a_grid_of_every_pair() {
    let solutes = [
        Component::Ethanol,
        Component::Glycerol,
        Component::Sucrose,
        Component::Fructose,
        Component::AceticAcid,
    ];
    let mut last_of = 0;
    for a in solutes {
        for b in solutes {
            let mut last = f64::INFINITY;
            for step in 0..=95 {
                let water = f64::from(100 - step);
                let liquid = [(a, 0.7), (b, 0.3)].into_iter().fold(
                    Composition::none()
                        .with(Component::Water, grams(water))
                        .unwrap(),
                    |liquid, (solute, share)| {
                        liquid.with(solute, grams(share * f64::from(step))).unwrap()
                    },
                );
                let activity = water_activity(&liquid, celsius(20.0))
                    .unwrap()
                    .highest
                    .value;
                assert!(
                    activity <= last + 1e-9,
                    "{a:?} and {b:?} at {step} %: {activity} after {last}"
                );
                last = activity;
                last_of += 1;
            }
        }
    }
    assert_eq!(last_of, 25 * 96);
}
