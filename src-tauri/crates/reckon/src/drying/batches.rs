//! The maker's own batches of an herb's part, and what was dry of each.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use formulary::herbs;
use journal::{HerbKey, TrayId};
use message::Failure;
use store::{OwnDry, Reading};

/// Older batches than these say little about this year's plants.
const MOST_BATCHES: usize = 50;

/// Dry matter over fresh mass of the maker's own finished batches of this herb and part, without
/// the one that is asked about: it cannot bear witness for itself.
pub fn own_fractions(
    reading: &Reading<'_>,
    herb: &HerbKey,
    part: &str,
    without: Option<TrayId>,
) -> Result<Vec<f64>, Failure> {
    OwnBatches::default().fractions(reading, herb, part, without)
}

/// The maker's own finished batches, each herb's part looked up once.
#[derive(Default)]
pub struct OwnBatches(BTreeMap<(HerbKey, String), Vec<OwnDry>>);

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
