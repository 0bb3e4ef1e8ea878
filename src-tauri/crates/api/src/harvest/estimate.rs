//! `harvest.estimate`: what will this weigh dry?

use formulary::herbs;
use journal::{HerbKey, TrayId};
use physics::error::within;
use physics::quantity::grams;
use store::{OwnBatch, Reading};

use super::wire::{DryWeight, EstimateHarvest};
use crate::drying::Expected;
use crate::failure::At;
use crate::herb::Known;
use crate::wire::{Interval, Note, Status};
use crate::{App, Command, Failure, words};

/// Older batches than these say little about this year's plants.
const MOST_BATCHES: usize = 50;

impl Command for EstimateHarvest {
    const NAME: &'static str = "harvest.estimate";
    type Reply = DryWeight;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        const ALLOWED: &str = "between 0.01 g and 100 kg (100000 g)";
        within(
            "the fresh weight",
            self.fresh_mass_g,
            0.01,
            100_000.0,
            ALLOWED,
        )
        .at("fresh_mass_g")?;
        app.read(|reading| {
            let known = Known::asked(reading, &self.herb)?;
            let is_wet = self.surface_wet.unwrap_or(false);
            dry_weight(reading, &known, &self.part, self.fresh_mass_g, is_wet)
        })
    }
}

/// The moisture that a dried herb is taken down at, % of its weight: 10, or its published limit
/// where that is lower.
pub(crate) fn target_percent(known: &Known, part: &str) -> f64 {
    herbs::moisture_limit(known.table_name(), part)
        .limit_wet_percent
        .min(10.0)
}

/// Dry matter over fresh mass of the maker's own finished batches of this herb and part, without
/// the one that is asked about: it cannot bear witness for itself.
pub(crate) fn own_fractions(
    reading: &Reading<'_>,
    herb: &HerbKey,
    part: &str,
    without: Option<TrayId>,
) -> Result<Vec<f64>, Failure> {
    let batches = reading.own_batches(herb, Some(part), MOST_BATCHES)?;
    let others = batches
        .iter()
        .filter(|batch| Some(batch.tray_id) != without);
    Ok(others
        .map(fraction)
        .filter(|it| (0.01..0.98).contains(it))
        .collect())
}

fn fraction(batch: &OwnBatch) -> f64 {
    match batch.tray.sample {
        Some(sample) => sample.dry_g / sample.fresh_g,
        // What was taken down holds the water of a dried herb, which nobody measured.
        None => {
            let dry = 1.0 - herbs::dried_moisture().value / 100.0;
            batch.dried_mass_g * dry / batch.tray.fresh_mass_g
        }
    }
}

/// What this much of a herb's part will weigh dry, and why.
pub(crate) fn dry_weight(
    reading: &Reading<'_>,
    known: &Known,
    part: &str,
    fresh_g: f64,
    is_wet: bool,
) -> Result<DryWeight, Failure> {
    let own = own_fractions(reading, &known.key, part, None)?;
    let expected = Expected::of(known.table_name(), part, &own).at("part")?;
    let target = target_percent(known, part);
    let dry = expected
        .prior
        .dry_matter_g(grams(fresh_g))
        .map_monotone(|dry_matter| dry_matter / (1.0 - target / 100.0));
    let mut notes = vec![expected.note()];
    notes.push(Note {
        code: "dried_to".to_owned(),
        text: format!("Dry means dried to {target} % moisture."),
        source: None,
        status: Status::Practice,
    });
    if is_wet {
        notes.push(Note {
            code: "surface_wet".to_owned(),
            text: "It was weighed wet: the water that clings to it counts as herb here, so it will weigh less dry than this says."
                .to_owned(),
            source: None,
            status: Status::Practice,
        });
    }
    Ok(DryWeight {
        dry_mass_g: Interval::from(dry),
        water_wet_percent: expected.prior.fresh_water_wet_percent().into(),
        basis: expected.basis,
        reason: words::sentence(&expected.reason),
        status: expected.status,
        notes,
    })
}
