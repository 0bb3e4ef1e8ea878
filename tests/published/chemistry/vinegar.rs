//! Acetic acid: density, pH floor, what plant water leaves of it.

use super::mass;
use checks::{Verdict, table};
use physics::{
    WetBasis,
    mixture::{Acidity, Ingredient, Plant, Pour, acid, describe},
    quantity::{celsius, grams, kg_per_m3_of, millilitres},
};

#[test]
fn acid_density_floor_and_dilution_by_the_plant() {
    let mut verdict = Verdict::default();
    let mut legal = 0;
    for row in table("crc2021_vinegar") {
        let id = row.text("row_id");
        let expected = || row.number("expected_value");
        let got = match row.text("quantity") {
            "pH_of_acetic_acid_w_v" => floor(row.number("input_value")),
            "pH_of_acetic_acid_molar" | "pH_of_acetic_acid_molar_published" => {
                floor(row.number("input_value") * 60.052 / 10.0)
            }
            "pH_of_white_vinegar_published" => {
                // Real vinegar lies at or above the plain acid of the same strength.
                let [weak, strong] = [4.0, 7.0].map(floor);
                verdict.holds(
                    id,
                    strong <= 2.4 && weak <= 2.6,
                    "the plain acid is a floor",
                );
                continue;
            }
            "density_of_acetic_acid_w_w" => {
                kg_per_m3_of(acid::density_at_20(mass(row.number("input_value"))).unwrap()) / 1000.0
            }
            "acidity_after_fresh_plant_water" => {
                let [acidity, ml, herb, moisture] = numbers(row.text("input_value"));
                let vinegar = Ingredient::vinegar(Acidity::new(acidity).unwrap());
                let pour = Pour::measured(vinegar, millilitres(ml)).unwrap();
                let plant = Plant::new(grams(herb), WetBasis::new(moisture).unwrap()).unwrap();
                describe(&[pour], &[plant], celsius(20.0))
                    .unwrap()
                    .acidity_g_per_100ml
                    .value
            }
            // What the law asks of a vinegar or a jar is no property of the acid.
            "legal_minimum_US" | "acidified_food_pH_limit" => {
                legal += 1;
                continue;
            }
            other => panic!("quantity {other}"),
        };
        verdict.absolute(id, got, expected(), row.number("tolerance"));
    }
    assert_eq!(legal, 2);
    verdict.conclude(31);
}

fn floor(grams_per_100_ml: f64) -> f64 {
    acid::plain_ph(Acidity::new(grams_per_100_ml).unwrap()).expect("an acid")
}

/// The four figures of "5 % w/v, 500 mL, 100 g herb, moisture 0.8".
fn numbers(text: &str) -> [f64; 4] {
    let found: Vec<f64> = text
        .split([' ', ','])
        .filter_map(|word| word.parse().ok())
        .collect();
    found
        .try_into()
        .unwrap_or_else(|_| panic!("four figures in {text}"))
}
