//! Bottles filled from strained jars.

use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use message::say;
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::refusal::{day, note, one_line, text};
use crate::{
    Amount, BottleId, Check, Draw, JarId, Kept, LotCode, Noun, Outcome, PhRead, Refusal, RowRef,
    Source,
};

worded!(
    /// Where a bottle is in its life.
    BottleState {
        /// Nothing was taken yet.
        OnTheShelf = "on the shelf",
        /// Some was taken.
        Open = "open",
        /// It is to be looked at.
        ToCheck = "to check",
        /// It is empty.
        Finished = "finished",
        /// It was thrown away.
        Binned = "binned",
        /// Somebody was given it.
        Given = "given",
    }
);

worded!(
    /// How a bottle came to its end.
    EndKind {
        /// The rest was used.
        Finished = "finished",
        /// The rest was thrown away.
        Binned = "binned",
        /// Somebody was given it.
        Given = "given",
    }
);

/// The end of a bottle on this shelf.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct End {
    /// Which end.
    pub kind: EndKind,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Who was given it.
    #[serde(default)]
    pub to: Option<String>,
    /// Why it was thrown away, or a remark on the gift.
    #[serde(default)]
    pub reason: Option<String>,
}

/// A bottle.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Bottle {
    /// What is written on it.
    pub code: LotCode,
    /// The jar it was filled from; the ledger takes the millilitres from it.
    pub jar: JarId,
    /// When.
    pub filled_at: DateTime<FixedOffset>,
    /// What was filled in.
    pub size_ml: f64,
    /// The last day on which it should be used, as it stands on its label.
    #[serde(default)]
    pub best_before: Option<NaiveDate>,
    /// The day on which it should first be looked at.
    #[serde(default)]
    pub check_on: Option<NaiveDate>,
    /// Whether no look, smell or taste can tell that it went bad, so that only the date counts.
    #[serde(default)]
    pub only_the_date_counts: bool,
    /// Where it stands.
    #[serde(default)]
    pub place: Option<String>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
    /// Set once it left the shelf.
    #[serde(default)]
    pub end: Option<End>,
}

/// Until a doubtful bottle is looked at again (common practice, no source).
const DOUBTFUL_DAYS: u64 = 7;
/// Between two looks at a bottle without a last day, such as an oil of which no shelf life is known
/// (common practice, no source).
const MONTHLY_DAYS: u64 = 30;

impl Bottle {
    /// What was filled in.
    pub fn size(&self) -> Amount {
        Amount::of(self.size_ml)
    }

    /// The last day on which it should be used. It stands no more once acid may not protect it.
    pub fn last_day(&self, ph: Option<&PhRead>) -> Option<NaiveDate> {
        self.best_before.filter(|_| is_acid_enough(ph))
    }

    /// The day on which it should next be looked at, after the last look at it.
    ///
    /// The first day was set when it was filled. A good bottle is looked at again half way to its
    /// last day, or in a month if it has none, a doubtful one in a week (common practice, no source);
    /// where only the date counts nobody is asked to look.
    pub fn next_check(&self, last: Option<&Check>) -> Option<NaiveDate> {
        if self.end.is_some() || self.only_the_date_counts {
            return None;
        }
        let Some(last) = last else {
            return self.check_on;
        };
        let looked = last.at.date_naive();
        match last.outcome {
            Outcome::Bad => None,
            Outcome::Doubtful => looked.checked_add_days(Days::new(DOUBTFUL_DAYS)),
            Outcome::Good => {
                let Some(last_day) = self.best_before else {
                    return looked.checked_add_days(Days::new(MONTHLY_DAYS));
                };
                let left = (last_day - looked).num_days();
                // In the last fortnight the date itself comes soon enough.
                (left > 14)
                    .then(|| looked.checked_add_days(Days::new(left.unsigned_abs() / 2)))
                    .flatten()
            }
        }
    }

    /// Whether it must not be used any more: it was found bad, or only its date counts and that is past.
    pub fn is_to_be_binned(&self, last: Option<&Check>, today: NaiveDate) -> bool {
        let bad = last.is_some_and(|check| check.outcome == Outcome::Bad);
        let past = self.best_before.is_some_and(|day| day < today);
        self.end.is_none() && (bad || (self.only_the_date_counts && past))
    }

    /// Where it is in its life on a day.
    pub fn state(
        &self,
        is_open: bool,
        last: Option<&Check>,
        ph: Option<&PhRead>,
        today: NaiveDate,
    ) -> BottleState {
        match self.end.as_ref().map(|end| end.kind) {
            Some(EndKind::Finished) => return BottleState::Finished,
            Some(EndKind::Binned) => return BottleState::Binned,
            Some(EndKind::Given) => return BottleState::Given,
            None => {}
        }
        let is_due = self.next_check(last).is_some_and(|day| day <= today);
        if is_due || self.is_to_be_binned(last, today) || !is_acid_enough(ph) {
            BottleState::ToCheck
        } else if is_open {
            BottleState::Open
        } else {
            BottleState::OnTheShelf
        }
    }
}

/// What nobody read stays with what was reckoned.
fn is_acid_enough(ph: Option<&PhRead>) -> bool {
    ph.is_none_or(|read| read.ph.is_acid_enough())
}

impl Kept for Bottle {
    type Id = BottleId;

    fn check_typed(&self) -> Result<(), Refusal> {
        let to = self.end.as_ref().and_then(|end| end.to.as_deref());
        to.map_or(Ok(()), |to| one_line("to", to))
    }

    fn check(&self) -> Result<(), Refusal> {
        super::volume("size_ml", say!("what-size"), self.size_ml)?;
        day("filled_at", self.filled_at)?;
        for (field, set) in [
            ("best_before", self.best_before),
            ("check_on", self.check_on),
        ] {
            set.map_or(Ok(()), |set| day(field, set))?;
        }
        note("place", say!("what-place"), self.place.as_deref(), 120)?;
        if let Some(end) = &self.end {
            note("reason", say!("what-reason"), end.reason.as_deref(), 1000)?;
            note("to", say!("what-name"), end.to.as_deref(), 120)?;
            day("at", end.at)?;
            if end.kind == EndKind::Given {
                text(
                    "to",
                    say!("what-name"),
                    end.to.as_deref().unwrap_or(""),
                    120,
                )?;
            }
        }
        super::remark(self.note.as_deref())
    }

    fn draws(&self) -> Vec<Draw> {
        vec![Draw {
            from: Source::Jar(self.jar),
            amount: self.size(),
        }]
    }

    fn needs(&self) -> Vec<RowRef> {
        vec![(Noun::Jar, self.jar.to_string())]
    }
}

#[cfg(test)]
mod tests {
    use uuid::Uuid;

    use super::*;

    fn at(day: &str) -> DateTime<FixedOffset> {
        DateTime::parse_from_rfc3339(&format!("{day}T10:00:00+02:00")).unwrap()
    }

    fn day(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn bottle() -> Bottle {
        Bottle {
            code: "tavo-472".parse().unwrap(),
            jar: JarId(Uuid::from_u128(1)),
            filled_at: at("2026-07-01"),
            size_ml: 60.0,
            best_before: Some(day("2027-07-01")),
            check_on: Some(day("2027-01-01")),
            only_the_date_counts: false,
            place: None,
            note: None,
            end: None,
        }
    }

    fn looked(on: &str, outcome: Outcome) -> Check {
        Check {
            bottle: BottleId(Uuid::from_u128(2)),
            at: at(on),
            outcome,
            ph: None,
            note: None,
        }
    }

    #[test]
    fn a_good_bottle_is_looked_at_again_half_way_to_its_last_day() {
        let bottle = bottle();
        assert_eq!(bottle.next_check(None), Some(day("2027-01-01")));
        let good = looked("2027-01-02", Outcome::Good);
        assert_eq!(bottle.next_check(Some(&good)), Some(day("2027-04-02")));
        let late = looked("2027-06-20", Outcome::Good);
        assert_eq!(bottle.next_check(Some(&late)), None);
        let undated = Bottle {
            best_before: None,
            ..bottle.clone()
        };
        let good = looked("2027-01-02", Outcome::Good);
        assert_eq!(undated.next_check(Some(&good)), Some(day("2027-02-01")));
        let doubtful = looked("2027-01-02", Outcome::Doubtful);
        assert_eq!(bottle.next_check(Some(&doubtful)), Some(day("2027-01-09")));
    }

    #[test]
    fn where_only_the_date_counts_nobody_is_asked_to_look() {
        let oil = Bottle {
            best_before: Some(day("2026-07-05")),
            check_on: Some(day("2026-07-03")),
            only_the_date_counts: true,
            ..bottle()
        };
        assert_eq!(oil.next_check(None), None);
        assert!(!oil.is_to_be_binned(None, day("2026-07-05")));
        assert!(oil.is_to_be_binned(None, day("2026-07-06")));
        let good = looked("2026-07-06", Outcome::Good);
        assert!(oil.is_to_be_binned(Some(&good), day("2026-07-06")));
    }

    #[test]
    fn a_bottle_goes_from_the_shelf_to_its_end() {
        let mut bottle = bottle();
        let state = |bottle: &Bottle, open, on: &str| bottle.state(open, None, None, day(on));
        assert_eq!(state(&bottle, false, "2026-08-01"), BottleState::OnTheShelf);
        assert_eq!(state(&bottle, true, "2026-08-01"), BottleState::Open);
        assert_eq!(state(&bottle, true, "2027-01-01"), BottleState::ToCheck);
        bottle.end = Some(End {
            kind: EndKind::Given,
            at: at("2027-01-02"),
            to: Some("the neighbour".into()),
            reason: None,
        });
        assert_eq!(state(&bottle, true, "2027-01-03"), BottleState::Given);
        assert_eq!(bottle.check(), Ok(()));
        bottle.end.as_mut().unwrap().to = None;
        assert_eq!(bottle.check().unwrap_err().field, "to");
    }
}
