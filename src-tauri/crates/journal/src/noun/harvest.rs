//! One picking of one part of one herb.

use chrono::{DateTime, FixedOffset};
use message::{Argument, Unit, say};
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::refusal::{day, note, text};
use crate::{
    Amount, BedId, HarvestId, HerbKey, Kept, LotCode, Noun, PhotoHash, Place, Refusal, RowRef,
};

const MOST_PHOTOS: usize = 100;

worded!(
    /// Water on the outside of the plant when it was weighed.
    Surface {
        /// None to speak of.
        Dry = "dry",
        /// Dew.
        Dew = "dew",
        /// Rain.
        Rain = "rain",
        /// Washed and not yet dry.
        Washed = "washed",
    }
);

worded!(
    /// Where the time of picking comes from.
    TimeFrom {
        /// The maker typed it.
        Typed = "typed",
        /// The first photo says so.
        Photo = "photo",
        /// It was recorded while picking.
        Clock = "clock",
    }
);

worded!(
    /// How far a harvest has got.
    HarvestState {
        /// Fresh grams wait for something to be done with them.
        Fresh = "fresh",
        /// A tray of it is drying.
        OnTheRack = "on the rack",
        /// Dried grams are left.
        Dry = "dry",
        /// Nothing is left.
        UsedUp = "used up",
    }
);

impl HarvestState {
    /// The state that follows from what is where: a running tray comes first,
    /// because it must be looked after, then what is still fresh, then what is dry.
    pub fn of(fresh_left: Amount, trays_drying: usize, dried_left: Amount) -> Self {
        if trays_drying > 0 {
            Self::OnTheRack
        } else if fresh_left > Amount::ZERO {
            Self::Fresh
        } else if dried_left > Amount::ZERO {
            Self::Dry
        } else {
            Self::UsedUp
        }
    }
}

/// A weight as the scale showed it, and what of it was not plant. One field, so
/// that two phones that correct it can never leave one's gross with the other's tare.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Weighed {
    /// With the basket.
    pub gross_g: f64,
    /// The basket.
    pub tare_g: f64,
}

impl Weighed {
    /// The plant alone.
    pub fn net_g(self) -> f64 {
        self.gross_g - self.tare_g
    }
}

/// One picking.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Harvest {
    /// What is written on the bag.
    pub code: LotCode,
    /// What was picked.
    pub herb: HerbKey,
    /// Which part of it.
    pub part: String,
    /// Fresh weight.
    pub weighed: Weighed,
    /// When.
    pub picked_at: DateTime<FixedOffset>,
    /// How we know when.
    pub time_from: TimeFrom,
    /// Where.
    #[serde(default)]
    pub bed: Option<BedId>,
    /// Stage of growth.
    #[serde(default)]
    pub stage: Option<String>,
    /// Water on the outside.
    pub surface: Surface,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
    /// Pictures, the first one being its face.
    #[serde(default)]
    pub photos: Vec<PhotoHash>,
    /// Where on the globe.
    #[serde(default)]
    pub place: Option<Place>,
    /// Whether the maker confirmed that it is no poisonous look-alike.
    #[serde(default)]
    pub look_alike_ruled_out: bool,
}

impl Harvest {
    /// Fresh weight of the plant alone.
    pub fn fresh(&self) -> Amount {
        Amount::of(self.weighed.net_g())
    }
}

impl Kept for Harvest {
    type Id = HarvestId;

    fn check(&self) -> Result<(), Refusal> {
        text("part", say!("what-part"), &self.part, 40)?;
        day("picked_at", self.picked_at)?;
        super::mass("gross_g", say!("what-weight"), self.weighed.gross_g)?;
        super::tare(self.weighed.tare_g)?;
        if self.fresh() <= Amount::ZERO {
            return Err(Refusal::new(
                "tare_g",
                say!(
                    "refused-tare",
                    gross = Argument::exact(self.weighed.gross_g, Unit::Gram),
                    given = Argument::exact(self.weighed.tare_g, Unit::Gram),
                ),
            ));
        }
        note("stage", say!("what-stage"), self.stage.as_deref(), 80)?;
        if self.photos.len() > MOST_PHOTOS {
            return Err(Refusal::new(
                "photos",
                say!("refused-photo-count", most = MOST_PHOTOS),
            ));
        }
        if let Some(place) = self.place {
            place.check()?;
        }
        super::remark(self.note.as_deref())
    }

    fn needs(&self) -> Vec<RowRef> {
        let herb = self.herb.as_own().map(|id| (Noun::Herb, id.to_string()));
        let bed = self.bed.map(|id| (Noun::Bed, id.to_string()));
        let photos = self
            .photos
            .iter()
            .map(|hash| (Noun::Photo, hash.to_string()));
        herb.into_iter().chain(bed).chain(photos).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_harvest_goes_from_fresh_over_the_rack_to_dry_and_used_up() {
        let (none, some) = (Amount::ZERO, Amount::of(0.1));
        assert_eq!(HarvestState::of(some, 0, none), HarvestState::Fresh);
        assert_eq!(HarvestState::of(some, 1, none), HarvestState::OnTheRack);
        assert_eq!(HarvestState::of(none, 2, some), HarvestState::OnTheRack);
        assert_eq!(HarvestState::of(none, 0, some), HarvestState::Dry);
        assert_eq!(HarvestState::of(none, 0, none), HarvestState::UsedUp);
    }
}
