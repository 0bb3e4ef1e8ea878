//! Water to add, volumes made, spirits mixed (Gay-Lussac's table at 15 C, BP, USP and others).

use super::strength;
use checks::{Verdict, table};
use physics::{
    mixture::{Ingredient, Pour, describe, dilution, ethanol},
    quantity::{celsius, grams, kg_per_m3_of, millilitres, millilitres_of},
};

#[test]
fn water_to_add_and_volumes_made_are_the_printed_ones() {
    let mut verdict = Verdict::default();
    for row in table("gaylussac1824_dilution") {
        let id = row.text("row_id");
        let from = strength(row.number("start_abv_pct"));
        let at = celsius(row.number("reference_temperature_C"));
        let to = || strength(row.number("target_abv_pct"));
        let hundred = millilitres(100.0);
        let diluted = || dilution::dilute(from, hundred, to(), at).expect("a dilution");
        // Equal volumes of spirit and water, as the rows' "500 + 500 water" says.
        let halves = || {
            let each: f64 = row
                .text("start_volume_mL")
                .split(' ')
                .next()
                .unwrap()
                .parse()
                .unwrap();
            let pours = [
                (from, millilitres(each)),
                (strength(0.0), millilitres(each)),
            ];
            dilution::blend(&pours, at).expect("a blend")
        };
        let got = match row.text("kind") {
            "water_to_add_per_100mL" => millilitres_of(diluted().water),
            "final_volume_per_100mL" => millilitres_of(diluted().total),
            "spirit_mL_to_make_1000mL" => millilitres_of(
                dilution::make_up(from, to(), millilitres(1000.0), at)
                    .expect("a dilution")
                    .spirit,
            ),
            "mix_final_volume" => millilitres_of(halves().1),
            "mix_final_abv" => halves().0.percent(),
            other => panic!("kind {other}"),
        };
        verdict.absolute(
            id,
            got,
            row.number("expected_value"),
            row.number("tolerance"),
        );
    }
    verdict.conclude(165);
}

/// The one row left out: the copy of Gay-Lussac's table that was read prints 20.47 for 60 to 50 %.
#[test]
fn the_misprinted_cell_needs_20_77() {
    let made = dilution::dilute(
        strength(60.0),
        millilitres(100.0),
        strength(50.0),
        celsius(15.0),
    )
    .unwrap();
    // Neighbouring cells require 20.77; tolerance of the table's own rows.
    assert!(
        (millilitres_of(made.water) - 20.77).abs() < 0.05,
        "{made:?}"
    );
}

/// USP 29, Diluted Alcohol: 500 mL of 94.9 % and 500 mL of water, measured at 25 C, give about 970 mL.
#[test]
fn a_liquid_described_contracts_as_the_pharmacopoeia_says() {
    // The engine takes millilitres at 20 C, so the masses of 500 mL at 25 C are weighed in.
    let weighed = |percent| {
        let p = ethanol::mass_fraction_of(strength(percent), ethanol::sixty_fahrenheit()).unwrap();
        let rho = kg_per_m3_of(ethanol::density(p, celsius(25.0)).unwrap());
        let spirit = ethanol::strength_of(p, ethanol::twenty_celsius()).unwrap();
        Pour::weighed(Ingredient::spirit(spirit), grams(0.5 * rho)).unwrap()
    };
    let liquid = describe(&[weighed(94.9), weighed(0.0)], &[], celsius(25.0)).unwrap();
    assert!(
        (liquid.volume_ml.value - 970.0).abs() < 4.0,
        "{:?}",
        liquid.volume_ml
    );
    assert!(
        (liquid.contraction_ml.value - 30.0).abs() < 4.0,
        "{:?}",
        liquid.contraction_ml
    );
    assert!(
        liquid.volume_ml.is_exact(),
        "one kind of solute leaves no doubt about the volume"
    );
    // The same monograph: 41.0 to 42.0 % by mass, 48.4 to 49.5 % by volume at 60 F.
    assert!((41.0..=42.0).contains(&liquid.ethanol_percent_mass.value));
    assert!((96.8..=99.0).contains(&liquid.us_proof.value));
}
