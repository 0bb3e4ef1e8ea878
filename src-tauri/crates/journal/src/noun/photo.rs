//! What is known about a picture; its bytes are kept elsewhere, under its hash.

use chrono::{DateTime, FixedOffset};
use message::{Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{day, note, number};
use crate::{Kept, PhotoHash, Refusal};

/// A point on the globe (WGS 84).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Place {
    /// Latitude in degrees, north positive.
    pub lat: f64,
    /// Longitude in degrees, east positive.
    pub lon: f64,
}

impl Place {
    pub(crate) fn check(self) -> Result<(), Refusal> {
        number(
            "place",
            say!("what-latitude"),
            self.lat,
            -90.0,
            90.0,
            Unit::Degrees,
        )?;
        number(
            "place",
            say!("what-longitude"),
            self.lon,
            -180.0,
            180.0,
            Unit::Degrees,
        )
    }
}

/// More than any picture has; the sizes of all of them are added up in whole numbers.
const MOST_BYTES: u64 = 1_000_000_000_000;

/// What is known about a picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Photo {
    /// The name of its file where it came from.
    #[serde(default)]
    pub name: Option<String>,
    /// Size of the original in bytes.
    pub bytes: u64,
    /// Upright width in pixels.
    #[serde(default)]
    pub width: Option<u32>,
    /// Upright height in pixels.
    #[serde(default)]
    pub height: Option<u32>,
    /// When it was taken.
    #[serde(default)]
    pub taken_at: Option<DateTime<FixedOffset>>,
    /// Whether the picture itself names its time zone.
    #[serde(default)]
    pub zone_known: bool,
    /// Where it was taken.
    #[serde(default)]
    pub place: Option<Place>,
    /// EXIF orientation of the original, 1 to 8.
    #[serde(default)]
    pub orientation: Option<u8>,
    /// Whether it could be decoded.
    pub has_preview: bool,
    /// Why there is no preview, in a sentence.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Photo {
    type Id = PhotoHash;

    fn check(&self) -> Result<(), Refusal> {
        note("name", say!("what-name"), self.name.as_deref(), 255)?;
        if self.bytes == 0 {
            return Err(Refusal::new("photo", say!("refused-photo-empty")));
        }
        if self.bytes > MOST_BYTES {
            return Err(Refusal::new(
                "photo",
                say!("refused-photo-size", most = MOST_BYTES, bytes = self.bytes),
            ));
        }
        self.taken_at.map_or(Ok(()), |at| day("taken_at", at))?;
        if let Some(orientation) = self.orientation {
            number(
                "photo",
                say!("what-orientation"),
                f64::from(orientation),
                1.0,
                8.0,
                Unit::None,
            )?;
        }
        if let Some(place) = self.place {
            place.check()?;
        }
        super::remark(self.note.as_deref())
    }
}
