//! An herb that the built-in list does not have.

use serde::{Deserialize, Serialize};

use crate::refusal::{note, one_line, text};
use crate::{HerbId, Kept, Noun, Refusal};

/// An herb of the maker's own.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Herb {
    /// What the maker calls it.
    pub common: String,
    /// Binomial.
    #[serde(default)]
    pub latin: Option<String>,
    /// The parts that are picked.
    pub parts: Vec<String>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Herb {
    const NOUN: Noun = Noun::Herb;
    type Id = HerbId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("common", &self.common)
    }

    fn check(&self) -> Result<(), Refusal> {
        text("common", "The name", &self.common, 80)?;
        note("latin", "The binomial", self.latin.as_deref(), 120)?;
        if self.parts.is_empty() || self.parts.len() > 20 {
            return Err(Refusal::new(
                "parts",
                "An herb has between 1 and 20 parts that are picked.",
            ));
        }
        for part in &self.parts {
            text("parts", "A part", part, 40)?;
        }
        super::remark(self.note.as_deref())
    }
}
