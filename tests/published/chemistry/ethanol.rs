//! Ethanol-water: density and conversions (OIML R 22, Perry, NBS, CRC, USP, pharmacopoeias, 27 CFR).

use super::{mass, strength};
use checks::{Verdict, table};
use physics::{
    mixture::ethanol,
    quantity::{celsius, kg_per_m3_of, millilitres},
};
use uom_free::*;

/// The few calls repeated below, in plain numbers.
mod uom_free {
    use super::*;

    pub fn rho(percent_mass: f64, t: f64) -> f64 {
        kg_per_m3_of(ethanol::density(mass(percent_mass), celsius(t)).expect("inside the formula"))
    }

    pub fn mass_percent(percent_vol: f64, t: f64) -> f64 {
        ethanol::mass_fraction_of(strength(percent_vol), celsius(t))
            .expect("inside the formula")
            .percent()
    }

    pub fn volume_percent(percent_mass: f64, t: f64) -> f64 {
        ethanol::strength_of(mass(percent_mass), celsius(t))
            .expect("inside the formula")
            .percent()
    }

    pub fn sg_in_air(percent_mass: f64, t: f64) -> f64 {
        // What a hydrometer table prints was weighed in air of 1.22 kg/m3 (27 CFR 30.66).
        const AIR: f64 = 1.22;
        (rho(percent_mass, t) - AIR) / (rho(0.0, t) - AIR)
    }
}

const SIXTY_F: f64 = 140.0 / 9.0;

#[test]
fn the_density_is_the_printed_one() {
    let mut verdict = Verdict::default();
    for row in table("oiml1975_ethanol_density") {
        let x = row.number("x_pct");
        let percent_mass = match row.text("x_basis") {
            "mass_pct" => x,
            "vol_pct_20C" => mass_percent(x, 20.0),
            other => panic!("basis {other}"),
        };
        let got = rho(percent_mass, row.number("temperature_C"));
        verdict.absolute(
            row.text("row_id"),
            got,
            row.number("density_kg_m3"),
            row.number("tolerance_kg_m3"),
        );
    }
    verdict.conclude(192);
}

#[test]
fn the_density_agrees_with_other_programs() {
    let mut verdict = Verdict::default();
    for row in table("coolprop_ethanol_density") {
        let id = row.text("row_id");
        let got = rho(
            100.0 * row.number("ethanol_mass_fraction"),
            row.number("temperature_C"),
        );
        // The same formula by other hands, printed to four decimals.
        verdict.absolute(id, got, row.number("oiml_formula_kg_m3"), 0.00006);
        if let Some(other) = row.number_or_blank("alcoholometry_core_kg_m3") {
            verdict.absolute(id, got, other, 0.00011);
        }
        if let (Some(other), Some(tolerance)) = (
            row.number_or_blank("coolprop_mea_kg_m3"),
            row.number_or_blank("tolerance_vs_mea_kg_m3"),
        ) {
            verdict.absolute(id, got, other, tolerance);
        }
        if let (Some(other), Some(tolerance)) = (
            row.number_or_blank("coolprop_heos_pure_kg_m3"),
            row.number_or_blank("tolerance_vs_heos_kg_m3"),
        ) {
            verdict.absolute(id, got, other, tolerance);
        }
    }
    verdict.conclude(205);
}

#[test]
fn strength_mass_and_gravity_convert_as_printed() {
    let mut verdict = Verdict::default();
    for row in table("usp2006_ethanol_conversion") {
        let x = row.number("input_value");
        let got = match row.text("direction") {
            "abv60F_to_mass" => mass_percent(x, SIXTY_F),
            "abv60F_to_sg15.56_air" => sg_in_air(mass_percent(x, SIXTY_F), SIXTY_F),
            "abv60F_to_sg25_air" => sg_in_air(mass_percent(x, SIXTY_F), 25.0),
            "abv60F_to_sg60F" => rho(mass_percent(x, SIXTY_F), SIXTY_F) / rho(0.0, SIXTY_F),
            "mass_to_abv60F" => volume_percent(x, SIXTY_F),
            "abv20C_to_mass" => mass_percent(x, 20.0),
            "abv20C_to_d20_20" => rho(mass_percent(x, 20.0), 20.0) / rho(0.0, 20.0),
            "abv20C_to_density20" => rho(mass_percent(x, 20.0), 20.0),
            "abv20C_to_abv60F" => volume_percent(mass_percent(x, 20.0), SIXTY_F),
            "abv20C_to_g_per_100mL" => {
                physics::quantity::grams_of(ethanol::ethanol_in(millilitres(100.0), strength(x)))
            }
            "usproof_to_sg60F_air" => sg_in_air(mass_percent(x / 2.0, SIXTY_F), SIXTY_F),
            "usproof_to_sg60F_vac" => {
                rho(mass_percent(x / 2.0, SIXTY_F), SIXTY_F) / rho(0.0, SIXTY_F)
            }
            "usproof_to_mass" => mass_percent(x / 2.0, SIXTY_F),
            other => panic!("direction {other}"),
        };
        verdict.absolute(
            row.text("row_id"),
            got,
            row.number("output_value"),
            row.number("tolerance"),
        );
        if row.text("direction") == "usproof_to_mass" {
            verdict.absolute(row.text("row_id"), ethanol::us_proof(mass(got)), x, 1e-6);
        }
    }
    verdict.conclude(133);
}
