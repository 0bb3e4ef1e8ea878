//! Glycerol-water: density and volumes mixed.

use super::mass;
use checks::{Verdict, table};
use physics::{
    mixture::{Ingredient, Pour, describe, glycerol},
    quantity::{celsius, kg_per_m3_of, millilitres},
};

#[test]
fn the_density_is_the_printed_one() {
    let mut verdict = Verdict::default();
    for row in table("bosart1928_glycerol_density") {
        let w = mass(row.number("glycerol_mass_pct"));
        let at = celsius(row.number("temperature_C"));
        let (expected, tolerance) = (
            row.number("density_kg_m3"),
            row.number("tolerance_vs_volk_kg_m3"),
        );
        let got = kg_per_m3_of(glycerol::density(w, at).unwrap());
        verdict.absolute(row.text("row_id"), got, expected, tolerance);
        // The same through the whole engine: glycerin of that purity, alone. Without any glycerol the
        // engine takes its water from OIML R 22, 0.15 kg/m3 above this formula's own.
        if w.get() > 0.0 {
            let pour = Pour::measured(Ingredient::glycerin(w), millilitres(100.0)).unwrap();
            let liquid = describe(&[pour], &[], at).unwrap();
            verdict.absolute(
                row.text("row_id"),
                liquid.density_kg_m3.value,
                expected,
                tolerance,
            );
        }
    }
    verdict.conclude(92 + 90);
}

#[test]
fn glycerin_and_water_contract_as_computed() {
    let mut verdict = Verdict::default();
    for row in table("volk2018_glycerol_mixing") {
        let id = row.text("row_id");
        let tolerance = row.number("tolerance_mL");
        let pour = |ingredient, column| {
            Pour::measured(ingredient, millilitres(row.number(column))).unwrap()
        };
        let pours = [
            pour(Ingredient::glycerin(mass(100.0)), "glycerol_mL"),
            pour(Ingredient::water(), "water_mL"),
        ];
        let liquid = describe(&pours, &[], celsius(row.number("temperature_C"))).unwrap();
        // Printed to two decimals.
        verdict.absolute(
            id,
            liquid.glycerol_percent_mass.value,
            row.number("mass_pct_glycerol"),
            0.01,
        );
        verdict.absolute(
            id,
            liquid.volume_ml.value,
            row.number("final_volume_mL"),
            tolerance,
        );
        verdict.absolute(
            id,
            liquid.contraction_ml.value,
            row.number("contraction_mL"),
            tolerance,
        );
    }
    verdict.conclude(3 * 4);
}
