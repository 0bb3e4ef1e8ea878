//! What a fresh weight comes to when it is dry.

use formulary::{Note, Status, herbs};
use message::{Argument, At, Failure, Message, say};
use physics::Interval;
use physics::drying::Basis;
use physics::quantity::grams;
use serde::Serialize;
use store::Reading;

use crate::drying::batches::own_fractions;
use crate::drying::expected::Expected;
use crate::herb::Known;

/// The dry weight to expect, with its reason.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DryWeight {
    pub dry_mass_g: Interval,
    pub water_wet_percent: Interval,
    pub basis: Basis,
    pub reason: Message,
    pub status: Status,
    pub notes: Vec<Note>,
}

/// The moisture that a dried herb is taken down at, % of its weight: 10, or its published limit
/// where that is lower.
pub fn target_percent(known: &Known, part: &str) -> f64 {
    herbs::moisture_limit(known.table_name(), part)
        .limit_wet_percent
        .min(10.0)
}

/// What this much of a herb's part will weigh dry, and why.
pub fn dry_weight(
    reading: &Reading<'_>,
    known: &Known,
    part: &str,
    fresh_g: f64,
    is_wet: bool,
) -> Result<DryWeight, Failure> {
    let own = own_fractions(reading, &known.key, part, None)?;
    let expected = Expected::of(known.water(part), part, &own).at("part")?;
    let target = target_percent(known, part);
    let dry = expected
        .prior
        .dry_matter_g(grams(fresh_g))
        .map_monotone(|dry_matter| dry_matter / (1.0 - target / 100.0));
    let mut notes = vec![expected.note()];
    notes.push(Note {
        code: "dried_to".to_owned(),
        text: say!("dried-to", moisture = Argument::percent(target)),
        source: None,
        status: Status::Practice,
    });
    if is_wet {
        notes.push(Note {
            code: "surface_wet".to_owned(),
            text: say!("wet-weighs-less"),
            source: None,
            status: Status::Practice,
        });
    }
    Ok(DryWeight {
        dry_mass_g: dry,
        water_wet_percent: expected.prior.fresh_water_wet_percent(),
        basis: expected.basis,
        reason: expected.sentence(),
        status: expected.status,
        notes,
    })
}
