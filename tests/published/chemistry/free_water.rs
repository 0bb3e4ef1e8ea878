//! The free-water rule: how much alcohol keeps a syrup.

use checks::{Verdict, table};
use physics::{
    MassFraction,
    mixture::{Ingredient, Liquid, Pour, describe},
    quantity::{celsius, grams, millilitres},
};

/// Sugar and glycerin, and water until the whole measures the row's volume.
fn made_up(total_ml: f64, sugar_g: f64, glycerin_ml: f64) -> Liquid {
    let pure = Ingredient::glycerin(MassFraction::from_percent(100.0).unwrap());
    let with = |water_g: f64| {
        let pours = [
            Pour::weighed(Ingredient::sugar(), grams(sugar_g)).unwrap(),
            Pour::measured(pure, millilitres(glycerin_ml)).unwrap(),
            Pour::weighed(Ingredient::water(), grams(water_g)).unwrap(),
        ];
        describe(&pours, &[], celsius(20.0)).unwrap()
    };
    let mut water_g = total_ml - 0.62 * sugar_g - glycerin_ml;
    for _ in 0..40 {
        water_g += total_ml - with(water_g).volume_ml.value;
    }
    with(water_g)
}

/// Printed to whole millilitres in the first row and to tenths in the others; fw3 to fw5 say that nothing is left,
/// where the rounded factors leave a trace.
#[test]
fn the_free_water_of_syrups_is_what_the_rule_prints() {
    let mut verdict = Verdict::default();
    for row in table("unc_free_water") {
        let id = row.text("id");
        let liquid = made_up(
            row.number("total_ml"),
            row.number("sugar_g"),
            row.number("glycerin_ml"),
        );
        let tolerance = if id == "fw1" { 0.55 } else { 0.1 };
        // The alcohol is printed to whole millilitres in the first row, to tenths in the others.
        let rounding = if id == "fw1" { 0.5 } else { 0.05 };
        verdict.absolute(
            id,
            liquid.free_water_ml.value,
            row.number("free_water_ml"),
            tolerance,
        );
        verdict.absolute(
            id,
            liquid.alcohol_to_keep_ml.value,
            row.number("absolute_alcohol_ml"),
            rounding,
        );
    }
    verdict.conclude(16);
}
