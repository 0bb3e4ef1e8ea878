//! What is expected of a plant's dry matter before its lot is weighed again.

use formulary::herbs::{self, WaterPrior};
use formulary::{Note, Status};
use message::{At, Failure, Message, say};
use physics::OutOfRange;
use physics::drying::{self, Air, Basis, DryMatterPrior, Pace, RelativeHumidity};
use physics::quantity::celsius;

/// The belief, what it rests on and why.
pub struct Expected {
    pub prior: DryMatterPrior,
    pub basis: Basis,
    pub pace: Pace,
    /// Why, as it stands inside a sentence.
    pub reason: Message,
    pub source: Option<String>,
    pub status: Status,
}

impl Expected {
    /// From what is known beforehand of a part's water, and the maker's own finished batches where there are any.
    ///
    /// # Errors
    /// [`OutOfRange`] for an own fraction that no plant has.
    pub fn of(table: WaterPrior, part: &str, own_fractions: &[f64]) -> Result<Self, OutOfRange> {
        let prior = DryMatterPrior::new(table.ln_mean, table.ln_sd)?;
        let pace = pace_of(part);
        if own_fractions.is_empty() {
            return Ok(Self {
                prior: match table.status {
                    // A maker's own figure is of their own garden.
                    Status::Own => prior,
                    _ => prior.widened_for_new_user(),
                },
                basis: Basis::Table,
                pace,
                reason: table.reason,
                source: table.source,
                status: table.status,
            });
        }
        Ok(Self {
            prior: prior.with_own_batches(own_fractions)?,
            basis: Basis::OwnBatches,
            pace,
            reason: say!(
                "water-by-own-batches",
                batches = own_fractions.len(),
                table = table.reason
            ),
            source: table.source,
            status: Status::Own,
        })
    }

    /// The reason as a whole sentence.
    pub fn sentence(&self) -> Message {
        say!("water-basis", basis = self.reason.clone())
    }

    /// The reason as a note.
    pub fn note(&self) -> Note {
        Note {
            code: "basis".to_owned(),
            text: self.sentence(),
            source: self.source.clone(),
            status: self.status,
        }
    }
}

/// Roots, fruit and bark take their time.
pub fn pace_of(part: &str) -> Pace {
    if herbs::part::class_of(part).is_dense() {
        Pace::Dense
    } else {
        Pace::Leafy
    }
}

/// The air of a drying room.
pub fn air(air: &journal::Air) -> Result<Air, Failure> {
    Ok(Air {
        temperature: celsius(
            physics::error::within(
                message::say!("what-temperature"),
                air.temperature_c,
                -20.0,
                90.0,
                message::Unit::Celsius,
            )
            .at("temperature_c")?,
        ),
        humidity: RelativeHumidity::from_percent(air.relative_humidity_percent)
            .at("relative_humidity_percent")?,
    })
}

/// Why an estimate is no better than it is.
pub fn noted(estimate: &drying::Estimate) -> impl Iterator<Item = Note> {
    estimate.reasons.iter().map(|reason| Note {
        code: reason.code().to_owned(),
        text: crate::drying::reason::said(*reason),
        source: None,
        status: Status::Computed,
    })
}
