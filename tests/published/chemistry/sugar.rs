//! Sucrose-water: density, syrups, solubility.

use super::mass;
use checks::{Verdict, table};
use physics::{
    mixture::{Component, Ingredient, Pour, describe, sugar},
    quantity::{celsius, grams, grams_of, kg_per_m3_of, millilitres},
};

#[test]
fn the_density_is_the_printed_one() {
    let mut verdict = Verdict::default();
    for row in table("nbs1946_sucrose_density") {
        let w = mass(row.number("brix_mass_pct"));
        let at = celsius(row.number("temperature_C"));
        let (expected, tolerance) = (row.number("density_kg_m3"), row.number("tolerance_kg_m3"));
        let got = kg_per_m3_of(sugar::density(w, at).unwrap());
        verdict.absolute(row.text("row_id"), got, expected, tolerance);
        // The same through the whole engine, where Brix must be what was poured.
        let pour = Pour::weighed(Ingredient::syrup(w).unwrap(), grams(100.0)).unwrap();
        let liquid = describe(&[pour], &[], at).unwrap();
        verdict.absolute(
            row.text("row_id"),
            liquid.density_kg_m3.value,
            expected,
            tolerance,
        );
        verdict.absolute(
            row.text("row_id"),
            liquid.sugar_percent_mass.value,
            w.percent(),
            1e-9,
        );
    }
    verdict.conclude(3 * 116);
}

#[test]
fn the_official_syrups_come_out() {
    let rows = table("usp2005_syrups");
    assert_eq!(rows.len(), SYRUP_ROWS);
    let mut verdict = Verdict::default();
    // USP syrup: 850 g of sucrose and water to 1000 mL at 25 C.
    let usp = mass(100.0 * usp_mass_fraction());
    let usp_syrup = Ingredient::syrup(usp).unwrap();
    for row in &rows {
        let id = row.text("row_id");
        let activity = |ingredient| {
            let pour = Pour::weighed(ingredient, grams(100.0)).unwrap();
            describe(&[pour], &[], celsius(25.0))
                .unwrap()
                .water_activity
                .highest
                .value
        };
        let at_25 = kg_per_m3_of(sugar::density(usp, celsius(25.0)).unwrap());
        let got = match (row.text("syrup"), row.text("quantity")) {
            ("USP/NF Syrup", "mass fraction sucrose") => usp.get(),
            ("USP/NF Syrup", "specific gravity 25/25") => {
                at_25 / kg_per_m3_of(physics::mixture::water::density(celsius(25.0)).unwrap())
            }
            ("USP/NF Syrup", "water in 100 mL") => {
                let composition = usp_syrup.composition(grams(at_25 / 10.0)).unwrap();
                grams_of(composition.of(Component::Water))
            }
            ("USP/NF Syrup", "density 25 C") => at_25,
            (_, "density 20 C") => kg_per_m3_of(sugar::density(mass(66.7), celsius(20.0)).unwrap()),
            ("USP/NF Syrup", "water activity (Norrish 6.47)") => activity(usp_syrup),
            ("1:1 by weight", _) => activity(Ingredient::syrup(mass(50.0)).unwrap()),
            ("2:1 by weight", _) => activity(Ingredient::syrup(mass(200.0 / 3.0)).unwrap()),
            ("saturation", _) => {
                let temperatures = [0.0, 10.0, 20.0, 25.0, 30.0, 40.0, 50.0];
                for (t, printed) in temperatures.into_iter().zip(row.text("value").split('/')) {
                    let got = sugar::solubility(celsius(t)).unwrap().percent();
                    verdict.absolute(id, got, printed.parse().unwrap(), row.number("tolerance"));
                }
                continue;
            }
            other => panic!("{other:?}"),
        };
        verdict.absolute(id, got, row.number("value"), row.number("tolerance"));
    }
    verdict.conclude(SYRUP_ROWS - 1 + 7);
}

const SYRUP_ROWS: usize = 9;

/// 850 g in 1000 mL: the mass fraction at which `w rho(w, 25 C)` is 850 kg/m3.
fn usp_mass_fraction() -> f64 {
    let mut w = 0.65;
    for _ in 0..60 {
        w = 850.0 / kg_per_m3_of(sugar::density(mass(100.0 * w), celsius(25.0)).unwrap());
    }
    w
}

#[test]
fn granulated_sugar_is_measured_with_its_air_but_dissolves_without_it() {
    // A US cup of 236.6 mL is 200 g: common practice, no source.
    let cup = Pour::measured(Ingredient::sugar(), millilitres(236.6)).unwrap();
    assert!((grams_of(cup.mass()) - 200.0).abs() < 1.0);
    let water = Pour::weighed(Ingredient::water(), grams(200.0)).unwrap();
    let liquid = describe(&[cup, water], &[], celsius(20.0)).unwrap();
    // 1:1 by weight is 50 Brix: 1229.6 kg/m3 by the polynomial, so about 325 mL in the jug.
    assert!((liquid.sugar_percent_mass.value - 50.0).abs() < 0.1);
    assert!(
        (liquid.volume_ml.value - 325.3).abs() < 1.0,
        "{:?}",
        liquid.volume_ml
    );
}
