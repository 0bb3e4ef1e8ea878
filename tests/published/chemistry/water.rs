//! Pure water, and where the formulas end.

use checks::{Verdict, table};
use physics::{
    mixture::{Ingredient, Pour, Remark, Unmixable, describe, ethanol, water},
    quantity::{celsius, grams, kg_per_m3_of},
};

#[test]
fn water_is_as_dense_as_printed() {
    let mut verdict = Verdict::default();
    for row in table("iapws1995_water_density") {
        let id = row.text("row_id");
        let got = kg_per_m3_of(water::density(celsius(row.number("temperature_C"))).unwrap());
        verdict.absolute(
            id,
            got,
            row.number("iapws95_kg_m3"),
            row.number("tolerance"),
        );
        // Printed to four decimals from the formula used here; 60 F is printed as 15.5556 C.
        verdict.absolute(id, got, row.number("oiml_p0_kg_m3"), 0.0001);
    }
    verdict.conclude(10);
}

/// The other limits of that table are for the keeping rules.
#[test]
fn formulas_say_where_they_end() {
    let rows = table("fda_limits");
    let limit = |words: &str| {
        let row = rows
            .iter()
            .find(|row| row.text("limit").contains(words))
            .expect("the limit");
        let (low, high) = row.text("value").split_once(" to ").unwrap();
        (low.parse::<f64>().unwrap(), high.parse::<f64>().unwrap())
    };
    let (low, high) = limit("OIML R 22");
    let p = super::mass(40.0);
    for (t, holds) in [
        (low, true),
        (high, true),
        (low - 0.1, false),
        (high + 0.1, false),
    ] {
        assert_eq!(ethanol::density(p, celsius(t)).is_ok(), holds, "{t} C");
    }
    let (low, high) = limit("Volk");
    let glycerin = Pour::weighed(Ingredient::glycerin(p), grams(100.0)).unwrap();
    for (t, inside) in [
        (low, true),
        (high, true),
        (low - 0.1, false),
        (high + 0.1, false),
    ] {
        let liquid = describe(&[glycerin], &[], celsius(t)).unwrap();
        assert_eq!(
            !liquid.remarks.contains(&Remark::GlycerolOutsideFit),
            inside,
            "{t} C"
        );
        assert_eq!(
            liquid.density_kg_m3.is_exact(),
            inside,
            "{t} C: outside the fit the doubt is shown"
        );
    }
    let spirit = Pour::weighed(Ingredient::spirit(super::strength(40.0)), grams(100.0)).unwrap();
    let refused = describe(&[spirit], &[], celsius(41.0)).unwrap_err();
    assert!(matches!(refused, Unmixable::TooColdOrHot { .. }));
    assert_eq!(
        api::Language::English.tell(&refused.message()),
        "For this liquid the temperature must be between -20 and 40 °C. You entered 41."
    );
}
