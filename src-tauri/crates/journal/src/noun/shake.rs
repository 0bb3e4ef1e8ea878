//! One shaking of a jar.

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};

use crate::refusal::day;
use crate::{JarId, Kept, Noun, Refusal, RowRef, ShakeId};

/// A jar was shaken. One a day counts; more are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Shake {
    /// Which jar.
    pub jar: JarId,
    /// When.
    pub at: DateTime<FixedOffset>,
}

impl Kept for Shake {
    type Id = ShakeId;

    fn check(&self) -> Result<(), Refusal> {
        day("at", self.at)
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Jar, self.jar.to_string())]
    }
}
