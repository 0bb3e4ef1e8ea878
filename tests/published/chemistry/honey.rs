//! Honey: gravity, water activity.

use super::mass;
use checks::{Verdict, table};
use physics::{
    mixture::{Ingredient, Pour, describe, water},
    quantity::{celsius, grams, kg_per_m3_of},
};

/// Three rows give ranges measured on real honeys and one the legal limit; they carry no tolerance
/// and are not the model's to meet.
#[test]
fn honey_by_its_water_content() {
    let mut verdict = Verdict::default();
    let mut ranges = 0;
    for row in table("chataway1932_honey") {
        let id = row.text("row_id");
        let quantity = row.text("quantity");
        if quantity.contains("range") || quantity.contains("Codex") {
            ranges += 1;
            continue;
        }
        let printed = row.number("value");
        let percent = row.number("water_pct");
        let honey = Ingredient::honey(mass(percent)).unwrap();
        let tolerance = || {
            row.text("tolerance_in_water_pct")
                .split(' ')
                .next()
                .unwrap()
                .parse()
                .unwrap()
        };
        match quantity {
            "SG 20/20" => {
                let water = kg_per_m3_of(water::density(celsius(20.0)).unwrap());
                verdict.absolute(
                    id,
                    kg_per_m3_of(honey.density()) / water,
                    printed,
                    tolerance(),
                );
            }
            _ if quantity.contains("activity") => {
                let pour = Pour::weighed(honey, grams(100.0)).unwrap();
                let got = describe(&[pour], &[], celsius(25.0))
                    .unwrap()
                    .water_activity
                    .highest
                    .value;
                verdict.absolute(id, got, printed, tolerance());
            }
            other => panic!("quantity {other}"),
        }
    }
    assert_eq!(ranges, 4);
    verdict.conclude(10);
}

/// The line stands for floral honeys, 0.03 about it; each range that was measured on real honeys is met by it.
#[test]
fn measured_honeys_lie_about_the_line() {
    let mut verdict = Verdict::default();
    for row in table("chataway1932_honey") {
        if row.text("quantity") != "water activity range" {
            continue;
        }
        let ends = |column| {
            let (low, high) = row.text(column).split_once('-').unwrap();
            (low.parse::<f64>().unwrap(), high.parse::<f64>().unwrap())
        };
        let (water, measured) = (ends("water_pct"), ends("value"));
        let of = |percent| activity(Ingredient::honey(mass(percent)).unwrap());
        let (driest, wettest) = (of(water.0), of(water.1));
        let reaches = driest.low <= measured.1 && measured.0 <= wettest.high;
        verdict.holds(row.text("row_id"), reaches, "no honey of this range is met");
        verdict.holds(row.text("row_id"), wettest.value < 0.63, "wetter than any");
    }
    verdict.conclude(6);
}

#[test]
fn honey_is_never_said_to_be_wetter_than_its_line() {
    for water in 10..=25 {
        let percent = f64::from(water);
        let pour = Pour::weighed(Ingredient::honey(mass(percent)).unwrap(), grams(100.0)).unwrap();
        let all = describe(&[pour], &[], celsius(25.0))
            .unwrap()
            .water_activity;
        // Computed from the printed coefficients; digits of the line itself.
        assert!(
            (all.highest.value - (0.267 + 0.0177 * percent)).abs() < 1e-9,
            "{water} %: {all:?}"
        );
        assert!(
            all.highest.value >= all.by_ross.value && all.highest.value >= all.by_norrish.value
        );
    }
}

fn activity(honey: Ingredient) -> physics::Interval {
    let pour = Pour::weighed(honey, grams(100.0)).unwrap();
    describe(&[pour], &[], celsius(25.0))
        .unwrap()
        .water_activity
        .highest
}
