//! `harvest.estimate`: what will this weigh dry?

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use formulary::herbs;
use journal::{HerbKey, TrayId};
use physics::error::within;
use physics::quantity::grams;
use store::{OwnDry, Reading};

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
    OwnBatches::default().fractions(reading, herb, part, without)
}

/// The maker's own finished batches, each herb's part looked up once.
#[derive(Default)]
pub(crate) struct OwnBatches(BTreeMap<(HerbKey, String), Vec<OwnDry>>);

impl OwnBatches {
    /// As [`own_fractions`].
    pub fn fractions(
        &mut self,
        reading: &Reading<'_>,
        herb: &HerbKey,
        part: &str,
        without: Option<TrayId>,
    ) -> Result<Vec<f64>, Failure> {
        let key = (herb.clone(), part.to_owned());
        let batches = match self.0.entry(key) {
            Entry::Occupied(known) => known.into_mut(),
            Entry::Vacant(place) => place.insert(reading.own_dry(herb, part, MOST_BATCHES)?),
        };
        Ok(batches
            .iter()
            .filter(|batch| Some(batch.tray) != without)
            .map(fraction)
            .filter(|it| (0.01..0.98).contains(it))
            .collect())
    }
}

fn fraction(batch: &OwnDry) -> f64 {
    match batch.sample_g {
        Some((fresh, dry)) => dry / fresh,
        // What was taken down holds the water of a dried herb, which nobody measured.
        None => {
            let dry = 1.0 - herbs::dried_moisture().value / 100.0;
            batch.dried_mass_g * dry / batch.fresh_mass_g
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
