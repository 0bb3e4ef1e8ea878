//! Mass balance, thin-layer models, sorption isotherms, warmth and learning, row by row.

use checks::{Row, Verdict, table};
use physics::{
    WetBasis,
    drying::{
        Air, BatchHistory, RelativeHumidity,
        balance::fresh_per_dried,
        sorption::{HERB_LEAF, HERB_STEM, Isotherm, room_limit_wet_percent},
        temperature::rate_ratio,
        thin_layer::ThinLayer,
    },
    quantity::celsius,
};
use uom::si::{f64::Time, time::hour};

/// Strictly within an absolute tolerance.
fn near(verdict: &mut Verdict, row: &Row, what: &str, got: f64, expected: f64, tolerance: f64) {
    let says = format!("{what}: got {got}, expected {expected} within {tolerance}");
    verdict.holds(row.text("id"), (got - expected).abs() <= tolerance, &says);
}

#[test]
fn fresh_per_dried_follows_from_both_water_contents() {
    let mut verdict = Verdict::default();
    for row in table("usda2013_dry_down_ratio") {
        let moisture =
            |column: &str| WetBasis::from_percent(row.number(column)).expect("a water content");
        let ratio = fresh_per_dried(
            moisture("fresh_water_wb_pct"),
            moisture("dried_water_wb_pct"),
        );
        let expected = row.number("ratio_fresh_per_dried");
        // From the notes, 1e-4: absolute where the ratio was worked out of these water contents,
        // relative where these are dry-basis figures turned into wet basis with three decimals.
        let is_from_dry_basis = row.text("source").starts_with("from dry-basis");
        let tolerance = if is_from_dry_basis {
            1e-4 * expected
        } else {
            1e-4
        };
        near(&mut verdict, &row, "ratio", ratio, expected, tolerance);
    }
    verdict.conclude(36);
}

fn model(row: &Row) -> ThinLayer {
    let p = |n: u8| row.number(&format!("p{n}"));
    match row.text("model") {
        "lewis" => ThinLayer::Lewis { k: p(1) },
        "page" => ThinLayer::Page { k: p(1), n: p(2) },
        "henderson_pabis" => ThinLayer::HendersonPabis { a: p(1), k: p(2) },
        "logarithmic" => ThinLayer::Logarithmic {
            a: p(1),
            k: p(2),
            c: p(3),
        },
        "midilli" => ThinLayer::Midilli {
            a: p(1),
            k: p(2),
            n: p(3),
            b: p(4),
        },
        other => panic!("model {other}"),
    }
}

#[test]
fn thin_layer_models_give_their_moisture_ratios() {
    let mut verdict = Verdict::default();
    for row in table("doymaz2006_thin_layer") {
        let ratio = model(&row).moisture_ratio(Time::new::<hour>(row.number("t_h")));
        // Absolute, from the notes: the ratios are printed with ten decimals.
        near(
            &mut verdict,
            &row,
            "moisture ratio",
            ratio,
            row.number("MR"),
            1e-9,
        );
    }
    verdict.conclude(47);
}

#[test]
fn models_with_a_drifting_tail_may_not_extrapolate() {
    let drifting = [
        ThinLayer::Logarithmic {
            a: 1.04,
            k: 0.03,
            c: -0.03,
        },
        ThinLayer::Midilli {
            a: 1.0,
            k: 0.03,
            n: 0.95,
            b: -0.0001,
        },
    ];
    assert!(drifting.iter().all(|model| !model.may_extrapolate()));
    assert!(ThinLayer::Page { k: 0.035, n: 0.85 }.may_extrapolate());
}

fn isotherm(row: &Row) -> Isotherm {
    let [a, b, c] = ["A", "B", "C"].map(|column| row.number(column));
    match row.text("model") {
        "henderson" => Isotherm::Henderson { a, b, c },
        "chung-pfost" => Isotherm::ChungPfost { a, b, c },
        "halsey" => Isotherm::Halsey { a, b, c },
        "oswin" => Isotherm::Oswin { a, b, c },
        other => panic!("isotherm {other}"),
    }
}

#[test]
fn isotherms_give_their_equilibrium_moistures() {
    let coefficients = table("asae2001_emc_coefficients");
    let mut verdict = Verdict::default();
    for row in table("asae2001_emc") {
        let humidity = RelativeHumidity::new(row.number("RH_fraction")).expect("a humidity");
        let temperature = celsius(row.number("T_C"));
        let expected = row.number("EMC");
        let of = |isotherm: Isotherm| isotherm.moisture(humidity, temperature).expect("in range");
        match (row.text("material"), row.text("model")) {
            ("lemon balm stem", "measured") => {
                // Relative, from the notes: 5 % for measured lemon balm.
                let got = of(HERB_STEM);
                near(&mut verdict, &row, "stem", got, expected, 0.05 * expected);
            }
            ("chamomile flower", _) => {
                let limit = room_limit_wet_percent(Air {
                    temperature,
                    humidity,
                });
                verdict.holds(
                    row.text("id"),
                    limit.is_none(),
                    "the default must be silent above 80 %",
                );
            }
            (material, name) => {
                let material = material.trim_end_matches(" at 60 F");
                let line = coefficients
                    .iter()
                    .find(|line| line.text("material") == material && line.text("model") == name)
                    .unwrap_or_else(|| panic!("no coefficients of {material}"));
                // Relative, from the notes; the row of the independent test has three digits.
                let share = if row.text("confirmed") == "computed here" {
                    1e-4
                } else {
                    5e-4
                };
                let got = of(isotherm(line));
                near(
                    &mut verdict,
                    &row,
                    "moisture",
                    got,
                    expected,
                    share * expected,
                );
            }
        }
    }
    verdict.conclude(143);
}

#[test]
fn the_herb_defaults_are_the_rows_that_say_they_were_not_published() {
    let rows = table("asae2001_emc_coefficients");
    assert_eq!(rows.len(), 14);
    for (name, default) in [
        ("GENERIC HERB LEAF (default)", HERB_LEAF),
        ("GENERIC HERB STEM", HERB_STEM),
    ] {
        let row = rows
            .iter()
            .find(|row| row.text("material") == name)
            .expect("the default's row");
        assert_eq!(isotherm(row), default);
        assert!(row.text("confirmed").contains("not published"));
    }
}

#[test]
fn warmth_changes_the_rate_as_arrhenius_says() {
    let mut verdict = Verdict::default();
    for row in table("doymaz2006_arrhenius") {
        let ratio = rate_ratio(
            row.number("Ea_kJ_mol"),
            celsius(row.number("T1_C")),
            celsius(row.number("T2_C")),
        )
        .expect("in range");
        // Absolute: the ratios are printed with six decimals; the rest allows for the digits of R.
        near(
            &mut verdict,
            &row,
            "rate ratio",
            ratio,
            row.number("rate_ratio"),
            2e-6,
        );
    }
    verdict.conclude(24);
}

#[test]
fn own_batches_teach_exactly_what_the_conjugate_update_says() {
    let mut verdict = Verdict::default();
    for row in table("conjugate_batch_learning") {
        let observed: Vec<f64> = row
            .text("observed_ln_dm")
            .split_whitespace()
            .map(|y| y.parse().expect("a number"))
            .collect();
        let history = BatchHistory::new(
            row.number("mu0"),
            row.number("tau0"),
            row.number("sigma0"),
            row.number("alpha0"),
        )
        .expect("a prior")
        .learn(&observed);
        let next = history.next_batch();
        let [mu, kappa, alpha, beta] = history.parameters();
        let (low, high) = next.interval_90();
        for (column, got) in [
            ("post_mu", mu),
            ("post_kappa", kappa),
            ("post_alpha", alpha),
            ("post_beta", beta),
            ("pred_df", next.degrees_of_freedom),
            ("pred_scale", next.scale),
            ("pred_lo90", low),
            ("pred_hi90", high),
        ] {
            // Absolute, from the notes: printed with eight decimals.
            near(&mut verdict, &row, column, got, row.number(column), 1e-7);
        }
    }
    verdict.conclude(10 * 8);
}
