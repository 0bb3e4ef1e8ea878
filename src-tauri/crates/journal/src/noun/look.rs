//! A look at a bottle.

use chrono::{DateTime, FixedOffset};
use physics::mixture::ph::PhReading;
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::refusal::day;
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
    /// The pH that was read.
    #[serde(default)]
    pub ph: Option<PhReading>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// A pH that was read of a jar's liquid, in the jar or in one of its bottles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PhRead {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// In which bottle; none for all that was strained.
    pub bottle: Option<BottleId>,
    /// What was read.
    pub ph: PhReading,
}

impl PhRead {
    /// The reading that counts for a bottle, or for the jar itself. `reads` are all of one jar, the
    /// earliest first.
    ///
    /// The bottles of a jar hold one liquid: the worst of what was last read of each counts for all,
    /// but of one that was read itself nothing from before that.
    pub fn that_counts(reads: &[Self], of: Option<BottleId>) -> Option<&Self> {
        let own = reads
            .iter()
            .rposition(|read| of.is_some() && read.bottle == of);
        let since = &reads[own.unwrap_or(0)..];
        let is_last = |at: usize| {
            let later = &since[at + 1..];
            later.iter().all(|read| read.bottle != since[at].bottle)
        };
        let worst = |(_, read): &(usize, &Self)| read.ph.interval().high;
        let last = since.iter().enumerate().filter(|(at, _)| is_last(*at));
        last.max_by(|a, b| worst(a).total_cmp(&worst(b)))
            .map(|(_, read)| read)
    }
}

impl Kept for Check {
    type Id = CheckId;

    fn check(&self) -> Result<(), Refusal> {
        day("at", self.at)?;
        super::ph(self.ph)?;
        super::remark(self.note.as_deref())
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Bottle, self.bottle.to_string())]
    }
}

#[cfg(test)]
mod tests {
    use physics::mixture::ph::ReadWith;
    use uuid::Uuid;

    use super::*;

    fn bottle(number: u128) -> Option<BottleId> {
        Some(BottleId(Uuid::from_u128(number)))
    }

    fn read(day: u32, bottle: Option<BottleId>, value: f64, with: ReadWith) -> PhRead {
        let at = format!("2026-07-{day:02}T10:00:00+02:00");
        PhRead {
            at: DateTime::parse_from_rfc3339(&at).unwrap(),
            bottle,
            ph: PhReading::new(value, Some(with)).unwrap(),
        }
    }

    fn counts(reads: &[PhRead], of: Option<BottleId>) -> Option<f64> {
        PhRead::that_counts(reads, of).map(|read| read.ph.value)
    }

    #[test]
    fn one_reading_counts_for_every_bottle_of_the_liquid() {
        assert_eq!(counts(&[], bottle(1)), None);
        let reads = [
            read(1, None, 3.0, ReadWith::Strip),
            read(2, bottle(1), 5.0, ReadWith::Strip),
        ];
        for of in [None, bottle(1), bottle(2)] {
            assert_eq!(counts(&reads, of), Some(5.0), "{of:?}");
        }
    }

    #[test]
    fn a_later_reading_of_the_same_bottle_takes_the_place_of_the_earlier() {
        let reads = [
            read(1, bottle(1), 4.5, ReadWith::Strip),
            read(2, bottle(1), 3.8, ReadWith::Meter),
        ];
        for of in [None, bottle(1), bottle(2)] {
            assert_eq!(counts(&reads, of), Some(3.8), "{of:?}");
        }
    }

    #[test]
    fn what_was_read_elsewhere_before_counts_no_more_and_what_comes_after_does() {
        let mut reads = vec![
            read(1, bottle(2), 5.0, ReadWith::Meter),
            read(2, bottle(1), 3.5, ReadWith::Meter),
        ];
        assert_eq!(counts(&reads, bottle(1)), Some(3.5));
        assert_eq!(counts(&reads, bottle(2)), Some(5.0));
        assert_eq!(counts(&reads, bottle(3)), Some(5.0));
        reads.push(read(3, bottle(3), 4.9, ReadWith::Meter));
        assert_eq!(counts(&reads, bottle(1)), Some(4.9));
    }
}
