//! Carrier oils: density ranges, how fast they age.

use checks::{Verdict, table};
use physics::{
    mixture::{Oil, oil, water},
    quantity::{celsius, kg_per_m3_of},
};

/// Iodine, peroxide and stability figures of that table are facts about an oil, not computed here.
#[test]
fn the_density_of_each_oil_is_its_published_range() {
    let mut verdict = Verdict::default();
    let mut covered = Vec::new();
    for row in table("codex1999_oils") {
        if ![
            "relative density",
            "specific gravity USP",
            "specific gravity",
            "density",
        ]
        .contains(&row.text("property"))
        {
            continue;
        }
        let oil = match row.text("oil") {
            // The same oil at 25 C, checked as overlapping below.
            "olive (virgin)" if row.text("property") == "specific gravity" => {
                let ours = Oil::Olive.density_kg_m3();
                let (low, high) = (997.043 * row.number("low"), 997.043 * row.number("high"));
                verdict.holds(
                    row.text("row_id"),
                    low < ours.value && ours.value < high,
                    "the ranges overlap",
                );
                continue;
            }
            "olive (virgin)" => Oil::Olive,
            "sunflower (regular, linoleic)" => Oil::Sunflower,
            "sunflower (high oleic)" => Oil::HighOleicSunflower,
            "sweet almond" => Oil::SweetAlmond,
            "sesame" => Oil::Sesame,
            "coconut, fractionated (MCT)" => Oil::FractionatedCoconut,
            "jojoba (liquid wax)" => Oil::Jojoba,
            "grapeseed" => Oil::Grapeseed,
            "apricot kernel" => Oil::ApricotKernel,
            other => panic!("oil {other}"),
        };
        covered.push(oil);
        let at = if row.text("condition").starts_with("25") {
            25.0
        } else {
            20.0
        };
        let reference = match row.text("property") {
            "density" => 1000.0,
            _ if row.text("condition").contains("water 20") => {
                kg_per_m3_of(water::density(celsius(20.0)).unwrap())
            }
            _ => kg_per_m3_of(water::density(celsius(at)).unwrap()),
        };
        let ours = oil.density_kg_m3();
        verdict.absolute(
            row.text("row_id"),
            ours.low,
            reference * row.number("low"),
            0.01,
        );
        verdict.absolute(
            row.text("row_id"),
            ours.high,
            reference * row.number("high"),
            0.01,
        );
    }
    assert_eq!(covered.len(), Oil::ALL.len(), "every oil has its row");
    verdict.conclude(2 * 9 + 1);
}

#[test]
fn an_oil_ages_twice_as_fast_for_every_ten_degrees() {
    let mut verdict = Verdict::default();
    for row in table("tan2001_oil_oxidation") {
        // The rows hold months at `to_C` for 12 months at 20 C.
        let got = oil::months_at(12.0, celsius(row.number("to_C"))).unwrap();
        verdict.absolute(
            row.text("row_id"),
            got,
            row.number("Q10"),
            row.number("tolerance"),
        );
    }
    verdict.conclude(5);
}

#[test]
fn the_word_for_an_oil_leads_back_to_it() {
    for oil in Oil::ALL {
        assert_eq!(Oil::from_key(oil.key()), Some(oil));
    }
    assert_eq!(Oil::from_key("motor"), None);
}
