//! What a measure holds: drops, grams of herb to a millilitre, and the child rules as history.

use checks::Verdict;
use formulary::arithmetic;
use physics::{MassFraction, mixture::Ingredient, quantity::kg_per_m3_of};

use super::Example;

/// Holds an example of a measure to its answer; false for what is none.
pub(super) fn hold(example: &Example, verdict: &mut Verdict) -> bool {
    let printed = &example.printed;
    match example.id.as_str() {
        "W47" => {
            let per_ml = arithmetic::dried_equivalent_g_per_ml(example.input("r")).unwrap();
            example.is(verdict, example.input("V") * per_ml, 0);
        }
        "W48" => {
            verdict.absolute(
                "W48 10 g",
                1.0 / arithmetic::dried_equivalent_g_per_ml(printed[1]).unwrap(),
                100.0 / 10.0,
                1e-12,
            );
            verdict.absolute(
                "W48 20 g",
                1.0 / arithmetic::dried_equivalent_g_per_ml(printed[3]).unwrap(),
                100.0 / 20.0,
                1e-12,
            );
        }
        "W58" => {
            verdict.absolute(
                "W58 large drops",
                (1000.0_f64 / 55.0).round(),
                printed[0],
                0.0,
            );
            verdict.absolute(
                "W58 small drops",
                (1000.0_f64 / 45.0).round(),
                printed[1],
                0.0,
            );
            let counted = arithmetic::drops_per_ml(&[18.0, 20.0, 22.0]).unwrap();
            verdict.holds(
                &example.id,
                counted.low >= printed[0] && counted.high <= printed[1],
                "a dropper of water inside the limits",
            );
        }
        "W59" => {
            // 50 drops each: what a gram of one takes in drops says nothing of the other.
            let per_ml = |grams_of_50: f64, density: f64| density / (grams_of_50 / 50.0);
            let glycerin = Ingredient::glycerin(MassFraction::from_percent(100.0).unwrap());
            let density = |one: &Ingredient| kg_per_m3_of(one.density()) / 1000.0;
            let water = per_ml(printed[0], density(&Ingredient::water()));
            let other = per_ml(printed[1], density(&glycerin));
            verdict.holds(
                &example.id,
                other > 1.5 * water,
                &format!("{water} and {other} drops in a millilitre"),
            );
        }
        // History only: computed here and nowhere in the program.
        "W60" => example.is(verdict, 30.0 / 150.0 * 30.0, 0),
        "W61" => example.is(verdict, 50.0 / 150.0 * 30.0, 0),
        "W62" => example.is(verdict, 11.0 / (11.0 + 12.0) * 500.0, 0),
        _ => return false,
    }
    true
}
