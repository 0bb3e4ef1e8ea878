//! Open curves of real plants whose true dry mass is known.

use checks::{Row, table};
use physics::{
    drying::{DryMatterPrior, Lot, Pace, Reason, Weighing, estimate},
    quantity::grams,
};
use uom::si::{f64::Time, time::hour};

fn weighing(hours: f64, mass_g: f64) -> Weighing {
    Weighing::new(Time::new::<hour>(hours), grams(mass_g)).expect("a weighing")
}

/// Apple slices at 50 C (public repository named in the file), as lots of 20 and 60 g dry matter
/// on a 1 g scale, against the prior of apple with skin (USDA 9003, CIQUAL 13039).
#[test]
fn the_interval_of_the_apple_slices_holds_the_truth_at_every_stage() {
    let rows = table("open_apple_drying");
    assert_eq!(rows.len(), 49);
    let moisture = |row: &Row| row.number("moisture_db_kg_per_kg");
    let start_h = rows[0].number("t_min") / 60.0;
    let mut stages = 0;
    for dry_g in [20.0, 60.0] {
        let fresh_g: f64 = dry_g * (1.0 + moisture(&rows[0]));
        for upto in 1..rows.len() {
            let lot = Lot::new(grams(fresh_g), DryMatterPrior::new(-1.9352, 0.2).unwrap())
                .unwrap()
                .pace(Pace::Dense)
                .weighings(
                    rows[1..=upto]
                        .iter()
                        .map(|row| {
                            let mass_g: f64 = dry_g * (1.0 + moisture(row));
                            weighing(row.number("t_min") / 60.0 - start_h, mass_g.round())
                        })
                        .collect(),
                );
            let now = estimate(&lot);
            let held = now.dry_matter_g;
            assert!(
                (held.low..=held.high).contains(&dry_g),
                "{dry_g} g is not within {held:?} at {upto} weigh-ins"
            );
            stages += 1;
        }
    }
    assert_eq!(stages, 96);
}

/// Eight cut kohlrabi leaves, soaked overnight (R package pvldcurve): they close their stomata and
/// stall while four fifths of their water are still there. Nothing may be promised of them.
#[test]
fn the_soaked_leaves_are_not_forecast_and_the_reason_is_given() {
    let rows = table("open_leaf_drying");
    assert_eq!(rows.len(), 120);
    let mut leaves = 0;
    for leaf in [1, 2, 3, 5, 6, 8, 9, 11] {
        let id = leaf.to_string();
        let curve: Vec<&Row> = rows
            .iter()
            .filter(|row| row.text("leaf_id") == id)
            .collect();
        // A hundred leaves on a 1 g scale; the prior is the part default of leaf.
        let mass_g = |row: &Row| (100.0 * row.number("weight_g")).round();
        let lot = Lot::new(
            grams(mass_g(curve[0])),
            DryMatterPrior::new(-1.7373, 0.35).unwrap(),
        )
        .unwrap()
        .weighings(
            curve
                .iter()
                .map(|row| weighing(row.number("t_h"), mass_g(row)))
                .collect(),
        );
        let now = estimate(&lot);
        assert!(
            now.hours_left.is_none() && !now.is_dry,
            "leaf {leaf} was forecast: {now:?}"
        );
        assert!(
            now.reasons.contains(&Reason::CannotSayYet)
                && now.reasons.contains(&Reason::StillTooHeavy),
            "leaf {leaf}: {:?}",
            now.reasons
        );
        assert_eq!(
            now.basis.name(),
            "table",
            "weigh-ins of leaf {leaf} taught what they do not know"
        );
        leaves += 1;
    }
    assert_eq!(leaves, 8);
}
