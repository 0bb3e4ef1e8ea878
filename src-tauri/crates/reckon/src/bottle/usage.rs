//! What is used in a year, by what was written down.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::{DateTime, Duration, FixedOffset};
use formulary::{Note, Status};
use journal::{EndKind, Jar, JarId};
use message::{Argument, Failure, say};
use store::Reading;

use crate::bottle::card::YEAR_DAYS;

/// More bottles than end in a year.
const MOST_ENDED: usize = 1000;
/// Of a shorter time nobody can say what a year takes (proposal, no source).
const LEAST_DAYS: i64 = 60;

/// What is used in a year.
pub struct YearlyUse {
    pub ml: f64,
    used_ml: f64,
    days: i64,
}

impl YearlyUse {
    /// What the figure rests on.
    pub fn note(&self) -> Note {
        Note {
            code: "yearly-use".to_owned(),
            text: say!(
                "yearly-use",
                used = Argument::millilitres(self.used_ml),
                days = self.days.unsigned_abs()
            ),
            source: None,
            status: Status::Own,
        }
    }
}

/// What is used in a year out of the bottles of such jars; `None` before it was used for two months.
pub fn yearly_use(
    reading: &Reading<'_>,
    now: DateTime<FixedOffset>,
    is_such: impl Fn(&Jar) -> bool,
) -> Result<Option<YearlyUse>, Failure> {
    let since = now - Duration::days(YEAR_DAYS);
    let mut such: BTreeMap<JarId, bool> = BTreeMap::new();
    let (mut used_ml, mut first) = (0.0, now);
    let mut count = |jar: JarId, ml: f64, at: DateTime<FixedOffset>| -> Result<(), Failure> {
        if let Entry::Vacant(place) = such.entry(jar) {
            place.insert(is_such(&reading.get::<Jar>(&jar)?));
        }
        if such[&jar] {
            used_ml += ml;
            first = first.min(at);
        }
        Ok(())
    };
    for (jar, usage) in reading.used_since(since.timestamp_millis())? {
        count(jar, usage.ml, usage.at)?;
    }
    for row in reading.bottles_ended(MOST_ENDED)? {
        if let Some(end) = &row.bottle.end
            && end.kind == EndKind::Finished
            && end.at >= since
        {
            // What was in it when it was finished was used too, though not spoon by spoon.
            count(row.bottle.jar, row.left_ml.max(0.0), end.at)?;
        }
    }
    let days = (now - first).num_days();
    Ok((days >= LEAST_DAYS).then(|| YearlyUse {
        ml: used_ml / days as f64 * YEAR_DAYS as f64,
        used_ml,
        days,
    }))
}
