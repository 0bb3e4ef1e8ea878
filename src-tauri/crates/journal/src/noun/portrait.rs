//! A photo of a jar, a bottle, a bed or a herb of the maker's own on one day of its life.

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};

use crate::refusal::day;
use crate::{BedId, BottleId, HerbId, JarId, Kept, Noun, PhotoHash, PortraitId, Refusal, RowRef};

/// What a portrait shows. A harvest carries its photos itself: they are taken when it is written down.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(tag = "kind", content = "id", rename_all = "snake_case")]
pub enum Pictured {
    /// A jar.
    Jar(JarId),
    /// A bottle.
    Bottle(BottleId),
    /// A bed.
    Bed(BedId),
    /// A herb of the maker's own.
    Herb(HerbId),
}

impl Pictured {
    /// Its row.
    pub fn row(self) -> RowRef {
        match self {
            Self::Jar(id) => (Noun::Jar, id.to_string()),
            Self::Bottle(id) => (Noun::Bottle, id.to_string()),
            Self::Bed(id) => (Noun::Bed, id.to_string()),
            Self::Herb(id) => (Noun::Herb, id.to_string()),
        }
    }
}

/// A photo of one of them. Each is a row of its own, so that two phones that each
/// photograph one jar keep both pictures when they meet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Portrait {
    /// What it shows.
    pub of: Pictured,
    /// The picture.
    pub photo: PhotoHash,
    /// When it was taken.
    pub at: DateTime<FixedOffset>,
    /// Whether it stands in the place of the drawing; of several the one taken last does.
    #[serde(default)]
    pub shown: bool,
}

impl Kept for Portrait {
    type Id = PortraitId;

    fn check(&self) -> Result<(), Refusal> {
        day("at", self.at)
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![self.of.row(), (Noun::Photo, self.photo.to_string())]
    }
}
