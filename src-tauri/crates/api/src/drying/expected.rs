//! What is expected of a plant's dry matter before its lot is weighed again.

use formulary::herbs::{self, WaterPrior};
use physics::OutOfRange;
use physics::drying::{DryMatterPrior, Pace};

use super::wire::Basis;
use crate::wire::{Note, Status};

/// The belief, what it rests on and why.
pub(crate) struct Expected {
    pub prior: DryMatterPrior,
    pub basis: Basis,
    pub pace: Pace,
    /// A sentence without its full stop.
    pub reason: String,
    pub source: Option<String>,
    pub status: Status,
}

impl Expected {
    /// From the published tables, and the maker's own finished batches where there are any.
    ///
    /// # Errors
    /// [`OutOfRange`] for an own fraction that no plant has.
    pub fn of(herb: &str, part: &str, own_fractions: &[f64]) -> Result<Self, OutOfRange> {
        let table: WaterPrior = herbs::water(herb, part);
        let prior = DryMatterPrior::new(table.ln_mean, table.ln_sd)?;
        let pace = pace_of(part);
        if own_fractions.is_empty() {
            return Ok(Self {
                prior: prior.widened_for_new_user(),
                basis: Basis::Table,
                pace,
                reason: table.reason,
                source: table.source,
                status: table.status.into(),
            });
        }
        let batches = match own_fractions.len() {
            1 => "one finished batch".to_owned(),
            count => format!("{count} finished batches"),
        };
        Ok(Self {
            prior: prior.with_own_batches(own_fractions)?,
            basis: Basis::OwnBatches,
            pace,
            reason: format!("{batches} of your own, beside the {}", table.reason),
            source: table.source,
            status: Status::Own,
        })
    }

    /// The reason as a note.
    pub fn note(&self) -> Note {
        Note {
            code: "basis".to_owned(),
            text: crate::words::sentence(&self.reason),
            source: self.source.clone(),
            status: self.status,
        }
    }
}

/// Roots, fruit and bark take their time.
pub(crate) fn pace_of(part: &str) -> Pace {
    if herbs::part::class_of(part).is_dense() {
        Pace::Dense
    } else {
        Pace::Leafy
    }
}
