//! Facts of the trade: common practice, no source, unless a row names one.

use super::{mass, strength};
use physics::{
    WetBasis,
    mixture::{Ingredient, Liquid, Plant, Pour, describe, flash},
    quantity::{celsius, grams, millilitres},
};

fn jar(pours: &[(Ingredient, f64)], herb_g: f64, moisture_percent: f64) -> Liquid {
    let pours: Vec<Pour> = pours
        .iter()
        .map(|&(ingredient, ml)| Pour::measured(ingredient, millilitres(ml)).unwrap())
        .collect();
    let plant = Plant::new(
        grams(herb_g),
        WetBasis::from_percent(moisture_percent).unwrap(),
    )
    .unwrap();
    describe(&pours, &[plant], celsius(20.0)).unwrap()
}

/// Common practice, no source: fresh herb at 1:2 in 80:20 glycerin and water by volume, dried herb at 1:5
/// in 60:40; the water that drying took out is what the larger share of water puts back.
#[test]
fn fresh_and_dried_glycerites_end_at_about_the_same_glycerol() {
    let glycerin = Ingredient::glycerin(mass(99.5));
    let fresh = jar(
        &[(glycerin, 160.0), (Ingredient::water(), 40.0)],
        100.0,
        80.0,
    );
    let dried = jar(
        &[(glycerin, 300.0), (Ingredient::water(), 200.0)],
        100.0,
        10.0,
    );
    let (fresh, dried) = (
        fresh.glycerol_percent_mass.value,
        dried.glycerol_percent_mass.value,
    );
    assert!(
        (fresh - dried).abs() < 5.0,
        "fresh ends at {fresh:.1} %, dried at {dried:.1} % by mass"
    );
}

/// Common practice, no source.
#[test]
fn mint_in_strong_spirit_ends_near_69_and_a_half() {
    let liquid = jar(&[(Ingredient::spirit(strength(95.0)), 200.0)], 100.0, 80.0);
    let ends = liquid.strength_percent_vol.value;
    assert!((ends - 69.5).abs() <= 0.05, "{ends}");
}

/// Common practice, no source.
#[test]
fn mint_in_vodka_ends_near_28_6() {
    let liquid = jar(&[(Ingredient::spirit(strength(40.0)), 200.0)], 100.0, 80.0);
    let ends = liquid.strength_percent_vol.value;
    assert!((ends - 28.6).abs() <= 0.05, "{ends}");
}

/// USP/NF sweet orange peel tincture: 500 g of fresh peel in 900 mL of alcohol, 62 to 72 % vol.
#[test]
fn orange_peel_tincture_lies_in_the_pharmacopoeial_window() {
    for moisture in 65..=85 {
        let liquid = jar(
            &[(Ingredient::spirit(strength(94.9)), 900.0)],
            500.0,
            f64::from(moisture),
        );
        let ends = liquid.strength_percent_vol.value;
        assert!(
            (62.0..=72.0).contains(&ends),
            "{moisture} % water gives {ends} % vol"
        );
    }
}

/// Flash points circulated on DCHAS-L 2015 (confirmed in part): 26 C at 40 % vol, 24 at 50.
#[test]
fn strong_spirit_gives_off_vapour_that_burns_at_room_temperature() {
    let at = |percent: f64| flash::flash_point_c(strength(percent));
    assert_eq!(at(45.0).expect("inside the table").value, 25.0);
    assert_eq!(at(19.9), None, "the table ends at 20 %");
    let bands: Vec<_> = (20..=100)
        .map(|percent| at(percent.into()).expect("inside the table"))
        .collect();
    for pair in bands.windows(2) {
        assert!(pair[1].value <= pair[0].value, "stronger burns sooner");
        assert!(pair[0].low < pair[0].value, "closed-cup figures lie lower");
    }
}

/// An uncertain moisture reaches every figure, and the ends of the interval are what the ends of the moisture give.
#[test]
fn the_interval_is_what_the_moisture_leaves_open() {
    let spirit = Pour::measured(Ingredient::spirit(strength(95.0)), millilitres(200.0)).unwrap();
    let wet = |percent| WetBasis::from_percent(percent).unwrap();
    let plant = Plant::between(grams(100.0), wet(70.0), wet(80.0), wet(86.0)).unwrap();
    let open = describe(&[spirit], &[plant], celsius(20.0)).unwrap();
    let at = |percent| {
        let plant = Plant::new(grams(100.0), wet(percent)).unwrap();
        describe(&[spirit], &[plant], celsius(20.0)).unwrap()
    };
    let same = |a: f64, b: f64| (a - b).abs() < 1e-9;
    assert!(same(
        open.strength_percent_vol.low,
        at(86.0).strength_percent_vol.value
    ));
    assert!(same(
        open.strength_percent_vol.value,
        at(80.0).strength_percent_vol.value
    ));
    assert!(same(
        open.strength_percent_vol.high,
        at(70.0).strength_percent_vol.value
    ));
    assert!(same(open.volume_ml.low, at(70.0).volume_ml.value));
    assert!(same(open.volume_ml.high, at(86.0).volume_ml.value));
}
