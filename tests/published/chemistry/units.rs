//! Kitchen and apothecary measures, proof, drops.

use super::strength;
use checks::{Verdict, table};
use physics::{
    mixture::ethanol,
    quantity::{celsius, degrees_celsius, grams_of, kg_per_m3_of, millilitres},
    units::{MassUnit, VolumeUnit},
};

fn factor(from: &str, to: &str) -> Option<f64> {
    let ml = |unit: VolumeUnit| Some(unit.millilitres());
    let g = |unit: MassUnit| Some(unit.grams());
    match (from, to) {
        ("1 US fluid ounce", _) => ml(VolumeUnit::UsFluidOunce),
        ("1 US teaspoon", _) => ml(VolumeUnit::UsTeaspoon),
        ("1 US tablespoon", _) => ml(VolumeUnit::UsTablespoon),
        ("1 US cup", _) => ml(VolumeUnit::UsCup),
        ("1 US liquid pint", _) => ml(VolumeUnit::UsPint),
        ("1 US liquid quart", _) => ml(VolumeUnit::UsQuart),
        ("1 US gallon", _) => ml(VolumeUnit::UsGallon),
        ("1 US fluid dram", _) => ml(VolumeUnit::UsFluidDram),
        ("1 US minim", _) => ml(VolumeUnit::UsMinim),
        ("1 US food-label fluid ounce", _) => ml(VolumeUnit::UsLabelFluidOunce),
        ("1 UK fluid ounce", _) => ml(VolumeUnit::UkFluidOunce),
        ("1 UK pint", _) => ml(VolumeUnit::UkPint),
        ("1 UK gallon", _) => ml(VolumeUnit::UkGallon),
        ("1 UK minim", _) => ml(VolumeUnit::UkMinim),
        ("1 UK fluid drachm", _) => ml(VolumeUnit::UkFluidDrachm),
        ("1 avoirdupois ounce", _) => g(MassUnit::Ounce),
        ("1 pound" | "1 lb", _) => g(MassUnit::Pound),
        ("1 grain", _) => g(MassUnit::Grain),
        ("1 apothecary scruple", _) => g(MassUnit::Scruple),
        ("1 apothecary dram", _) => g(MassUnit::ApothecaryDram),
        ("1 troy/apothecary ounce", _) => g(MassUnit::TroyOunce),
        ("1 fluid dram", "minim") => {
            Some(VolumeUnit::UsFluidDram.millilitres() / VolumeUnit::UsMinim.millilitres())
        }
        ("1 fluid ounce", "minim") => {
            Some(VolumeUnit::UsFluidOunce.millilitres() / VolumeUnit::UsMinim.millilitres())
        }
        ("1 fluid ounce", "fluid dram") => {
            Some(VolumeUnit::UsFluidOunce.millilitres() / VolumeUnit::UsFluidDram.millilitres())
        }
        ("% ABV", "US proof") => Some(proof_of_half() / 50.0),
        ("US proof", "% ABV") => Some(50.0 / proof_of_half()),
        ("1 mL ethanol", "g at 20 C") => Some(grams_of(ethanol::ethanol_in(
            millilitres(1.0),
            strength(100.0),
        ))),
        ("1 mL ethanol", "g at 60 F") => Some(
            kg_per_m3_of(
                ethanol::density(super::mass(100.0), ethanol::sixty_fahrenheit()).unwrap(),
            ) / 1000.0,
        ),
        ("1 US standard drink", "mL ethanol") => Some(0.6 * VolumeUnit::UsFluidOunce.millilitres()),
        ("60 F", "C") => Some(degrees_celsius(ethanol::sixty_fahrenheit())),
        _ => None,
    }
}

fn proof_of_half() -> f64 {
    let p = ethanol::mass_fraction_of(strength(50.0), ethanol::sixty_fahrenheit()).unwrap();
    ethanol::us_proof(p)
}

/// Left out: UK proof (superseded conventions), the UK unit and the national "drinks" (conventions in
/// grams), the size of a drop and rows that hold a sentence. A row is held to its last printed digit.
#[test]
fn measures_convert_as_defined() {
    let mut verdict = Verdict::default();
    for row in table("pint_conversions") {
        let Some(got) = factor(row.text("from_unit"), row.text("to_unit")) else {
            continue;
        };
        let printed = row.text("factor");
        let decimals = printed
            .split_once('.')
            .map_or(0, |(_, digits)| digits.len() as i32);
        verdict.absolute(
            row.text("row_id"),
            got,
            row.number("factor"),
            0.5 * 10f64.powi(-decimals),
        );
    }
    verdict.conclude(35);
}

#[test]
fn drops_are_counted_against_the_minim() {
    let mut verdict = Verdict::default();
    for row in table("gorgas_drops") {
        // The dropper of the pharmacopoeia is defined by its drop alone.
        let Some(drops) = row.number_or_blank("drops_per_60_minims") else {
            continue;
        };
        let per_ml = drops / (60.0 * VolumeUnit::UsMinim.millilitres());
        // The count decides; only the printed two decimals are at stake, far inside the row's 10 %.
        verdict.absolute(
            row.text("row_id"),
            per_ml,
            row.number("drops_per_mL"),
            0.005,
        );
    }
    verdict.conclude(10);
}

#[test]
fn a_temperature_survives_the_way_through_kelvin() {
    for t in [-20.0, 0.0, 15.0, 20.0, 25.0, 40.0] {
        assert_eq!(degrees_celsius(celsius(t)), t);
    }
}
