//! The US gauging rules (27 CFR part 30, TTB Table 6).

use super::strength;
use checks::{Verdict, table};
use physics::{
    Strength,
    mixture::{dilution, ethanol},
    quantity::{kg_per_m3_of, millilitres, millilitres_of},
    units::{MassUnit, VolumeUnit},
};

#[test]
fn table_6_gives_the_water_in_a_hundred_parts() {
    let mut verdict = Verdict::default();
    for row in table("ttb_proof_parts") {
        let q = strength(row.number("abv_60F_pct"));
        let t = ethanol::sixty_fahrenheit();
        let p = ethanol::mass_fraction_of(q, t).unwrap();
        let rho = kg_per_m3_of(ethanol::density(p, t).unwrap());
        let water = kg_per_m3_of(ethanol::density(super::mass(0.0), t).unwrap());
        let parts = 100.0 * rho * (1.0 - p.get()) / water;
        verdict.absolute(
            row.text("row_id"),
            parts,
            row.number("water_parts_per_100"),
            row.number("tolerance_parts"),
        );
    }
    verdict.conclude(69);
}

/// The examples carry no tolerance: each is held to the rounding of what it prints, or to the
/// tolerance that the specific gravities of the same table have in the conversion rows.
#[test]
fn the_worked_examples_come_out() {
    let rows = table("cfr_gauging_examples");
    assert_eq!(rows.len(), 7);
    let expected = |id: &str| {
        let row = rows
            .iter()
            .find(|row| row.text("row_id").ends_with(id))
            .expect("the example");
        let text = row.text("expected");
        text.split([' ', ';'])
            .next()
            .unwrap()
            .parse::<f64>()
            .unwrap_or_else(|_| panic!("{text}"))
    };
    let mut verdict = Verdict::default();

    // Specific gravities of the same table are held to 0.00012 in the conversion rows.
    let per_gallon_190 = pounds_per_gallon(190.0);
    let relative = 0.00012 * 8.32823 / per_gallon_190;
    let gallons = 81000.0 / per_gallon_190;
    verdict.absolute("001", gallons, expected("001"), gallons * relative);
    verdict.absolute(
        "002",
        gallons * 1.9,
        expected("002"),
        gallons * 1.9 * relative,
    );

    let t = ethanol::sixty_fahrenheit();
    let p = |proof: f64| ethanol::mass_fraction_of(of_proof(proof), t).unwrap().get();
    let reduced = 1000.0 * p(200.0) / p(190.0);
    verdict.absolute(
        "003",
        reduced,
        expected("003"),
        1000.0 * (0.000005 / 0.30258 + 0.000005 / 0.27964),
    );

    verdict.absolute(
        "004",
        pounds_per_gallon(141.0),
        expected("004"),
        0.00008 * 8.32823,
    );
    verdict.absolute(
        "004, wine gallons",
        400.0 / pounds_per_gallon(141.0),
        54.05,
        0.01,
    );
    verdict.absolute(
        "004, proof gallons",
        400.0 / pounds_per_gallon(141.0) * 1.41,
        76.2,
        0.05,
    );
    verdict.absolute(
        "005",
        321.5 / pounds_per_gallon(86.0) * 0.86,
        expected("005"),
        0.05,
    );

    let made = dilution::dilute(of_proof(112.0), millilitres(100.0), of_proof(100.0), t).unwrap();
    // 12.4276 before the regulation rounds it; the two table figures are good to 0.02 parts each.
    verdict.absolute(
        "006",
        millilitres_of(made.water),
        12.4276,
        0.02 * 1.12 + 0.02,
    );
    verdict.absolute("007", pounds_per_gallon(0.0), expected("007"), 0.0001);
    verdict.conclude(9);
}

fn of_proof(proof: f64) -> Strength {
    strength(proof / 2.0)
}

/// Weight in air of a US gallon at 60 F against brass weights of 8400 kg/m3, as the regulation weighs.
fn pounds_per_gallon(proof: f64) -> f64 {
    const AIR: f64 = 1.22;
    let t = ethanol::sixty_fahrenheit();
    let p = ethanol::mass_fraction_of(of_proof(proof), t).unwrap();
    let rho = kg_per_m3_of(ethanol::density(p, t).unwrap());
    let apparent = (rho - AIR) / (1.0 - AIR / 8400.0) / 1000.0;
    apparent * VolumeUnit::UsGallon.millilitres() / MassUnit::Pound.grams()
}
