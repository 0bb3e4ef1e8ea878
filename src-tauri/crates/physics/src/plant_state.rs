//! What a plant is when it is weighed or poured on.

use message::{Message, say};
use serde::{Deserialize, Serialize};

/// Whether plant still holds the water it grew with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum PlantState {
    /// As picked.
    Fresh,
    /// Taken down from the rack.
    Dried,
    /// Simmered in water or as its own juice, and strained: a liquid of its own.
    Cooked,
}

impl PlantState {
    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Fresh => "fresh",
            Self::Dried => "dried",
            Self::Cooked => "cooked",
        }
    }

    /// Its name inside a sentence.
    pub fn name(self) -> Message {
        match self {
            Self::Fresh => say!("state-fresh"),
            Self::Dried => say!("state-dried"),
            Self::Cooked => say!("state-cooked"),
        }
    }
}
