//! A look at a bottle.

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::{BottleId, CheckId, Kept, Noun, Refusal, RowRef};

worded!(
    /// What a look at a bottle told.
    Outcome {
        /// Nothing is wrong with it.
        Good = "good",
        /// Something may be wrong with it.
        Doubtful = "doubtful",
        /// It must not be used.
        Bad = "bad",
    }
);

/// A bottle was looked at, smelt or tasted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Check {
    /// Which bottle.
    pub bottle: BottleId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// What it told.
    pub outcome: Outcome,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Check {
    const NOUN: Noun = Noun::Check;
    type Id = CheckId;

    fn check(&self) -> Result<(), Refusal> {
        super::remark(self.note.as_deref())
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Bottle, self.bottle.to_string())]
    }
}
