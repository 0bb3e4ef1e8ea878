//! What was taken from a bottle, and how long what is left will last.

use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use message::say;
use serde::{Deserialize, Serialize};

use crate::refusal::day;
use crate::{Amount, BottleId, Draw, Kept, Noun, Refusal, RowRef, Source, UseId};

/// Some of a bottle was used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Use {
    /// Which bottle; the ledger takes the millilitres from it.
    pub bottle: BottleId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// How much.
    pub ml: f64,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Use {
    type Id = UseId;

    fn check(&self) -> Result<(), Refusal> {
        super::volume("ml", say!("what-volume"), self.ml)?;
        day("at", self.at)?;
        super::remark(self.note.as_deref())
    }

    fn draws(&self) -> Vec<Draw> {
        vec![Draw {
            from: Source::Bottle(self.bottle),
            amount: Amount::of(self.ml),
        }]
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Bottle, self.bottle.to_string())]
    }
}

/// The days between which what is left runs out, if it goes on being used as it was: `n` times in
/// `days` for `used_ml` in all.
///
/// The count of uses is taken to scatter as its own square root, so the rate is known to within
/// `1.645/sqrt(n)` either way (90 %). `None` before three uses over a week, when nothing can be said.
pub fn runs_out(
    left_ml: f64,
    used_ml: f64,
    uses: u32,
    days: u32,
    today: NaiveDate,
) -> Option<(NaiveDate, NaiveDate)> {
    if uses < 3 || days < 7 || used_ml <= 0.0 {
        return None;
    }
    let spread = 1.645 / f64::from(uses).sqrt();
    let per_day = used_ml / f64::from(days);
    let after = |rate: f64| {
        let days = (left_ml / rate).min(36_600.0);
        today.checked_add_days(Days::new(days as u64))
    };
    Some((
        after(per_day * (1.0 + spread))?,
        after(per_day * (1.0 - spread).max(0.05))?,
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_left_lasts_as_it_was_used() {
        let today: NaiveDate = "2026-10-01".parse().unwrap();
        assert_eq!(runs_out(60.0, 10.0, 2, 30, today), None, "too few uses");
        assert_eq!(runs_out(60.0, 10.0, 9, 3, today), None, "too short a time");
        let (low, high) = runs_out(60.0, 30.0, 25, 30, today).unwrap();
        // 1 mL a day, known to within 32.9 %: 45 to 89 days.
        assert_eq!(low.to_string(), "2026-11-15");
        assert_eq!(high.to_string(), "2026-12-29");
    }
}
