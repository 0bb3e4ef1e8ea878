//! A part of a lot that was thrown away, or used in another way than the app keeps account of.

use chrono::{DateTime, FixedOffset};
use message::say;
use serde::{Deserialize, Serialize};

use crate::refusal::{day, note};
use crate::{Amount, DiscardId, Draw, Kept, Refusal, RowRef, Source, Unit};

/// A part of a lot that is gone without having become anything else here.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Discard {
    /// Out of which lot.
    pub from: Source,
    /// Grams or millilitres, as the lot is measured.
    pub amount: f64,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Why.
    #[serde(default)]
    pub reason: Option<String>,
    /// Whether it was used rather than thrown away; a journal of an earlier version knows only the latter.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub used: bool,
}

impl Kept for Discard {
    type Id = DiscardId;

    fn check(&self) -> Result<(), Refusal> {
        match self.from.unit() {
            Unit::Gram => super::mass("mass_g", say!("what-weight"), self.amount)?,
            Unit::Millilitre => super::volume("ml", say!("what-volume"), self.amount)?,
        }
        day("at", self.at)?;
        note("reason", say!("what-reason"), self.reason.as_deref(), 1000)
    }

    fn draws(&self) -> Vec<Draw> {
        vec![Draw {
            from: self.from,
            amount: Amount::of(self.amount),
        }]
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![self.from.row()]
    }
}
