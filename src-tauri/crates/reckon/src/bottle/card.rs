//! A bottle in a list.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use formulary::preparations::Preparation;
use journal::{BottleState, Jar, JarId};
use message::{Failure, Message};
use physics::Interval;
use serde::Serialize;
use store::{BottleRow, Reading};

use crate::jar::card::herbs;
use crate::jar::judged::preparation_of;

/// A bottle in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub preparation: String,
    pub preparation_name: Message,
    pub herbs: Vec<Message>,
    pub jar: String,
    pub filled_at: String,
    pub size_ml: f64,
    pub left_ml: f64,
    pub state: BottleState,
    pub best_before: Option<String>,
    pub check_on: Option<String>,
    /// Whether it must not be used any more.
    pub bin_it: bool,
    /// Whether a pH was read at which acid may not protect it.
    pub not_acid: bool,
    pub only_the_date_counts: bool,
    pub place: Option<String>,
    pub strength_percent_vol: Interval,
}

/// How far back use is counted.
pub const YEAR_DAYS: i64 = 365;

/// What a card shows of the jar behind a bottle.
pub struct Shown {
    pub name: String,
    pub preparation: String,
    pub preparation_name: Message,
    pub herbs: Vec<Message>,
    strength: journal::Interval,
}

impl Shown {
    pub fn of(reading: &Reading<'_>, jar: &Jar) -> Result<Self, Failure> {
        Ok(Self {
            name: jar.name.clone(),
            preparation: jar.preparation.clone(),
            preparation_name: preparation_of(jar)
                .map_or_else(|| Message::own(&jar.preparation), Preparation::title),
            herbs: herbs(reading, jar)?,
            strength: jar.strength_percent_vol,
        })
    }

    pub fn card(&self, row: &BottleRow, today: NaiveDate) -> BottleCard {
        let bottle = &row.bottle;
        let last = row.last_check.as_ref();
        BottleCard {
            id: row.id.to_string(),
            code: bottle.code.to_string(),
            name: self.name.clone(),
            preparation: self.preparation.clone(),
            preparation_name: self.preparation_name.clone(),
            herbs: self.herbs.clone(),
            jar: bottle.jar.to_string(),
            filled_at: bottle.filled_at.to_rfc3339(),
            size_ml: bottle.size_ml,
            left_ml: if bottle.end.is_some() {
                0.0
            } else {
                row.left_ml.max(0.0)
            },
            state: row.state(today),
            best_before: row.last_day().map(|day| day.to_string()),
            check_on: bottle
                .next_check(last)
                .filter(|_| !row.is_not_acid())
                .map(|day| day.to_string()),
            bin_it: bottle.is_to_be_binned(last, today),
            not_acid: bottle.end.is_none() && row.is_not_acid(),
            only_the_date_counts: bottle.only_the_date_counts,
            place: bottle.place.clone(),
            strength_percent_vol: self.strength,
        }
    }
}

/// The jars behind bottles, each looked up once.
#[derive(Default)]
pub struct Jars(BTreeMap<JarId, Shown>);

impl Jars {
    pub fn of(&mut self, reading: &Reading<'_>, id: &JarId) -> Result<&Shown, Failure> {
        if !self.0.contains_key(id) {
            let shown = Shown::of(reading, &reading.get::<Jar>(id)?)?;
            self.0.insert(*id, shown);
        }
        Ok(&self.0[id])
    }
}

/// The bottles of a jar.
pub fn cards_of(
    reading: &Reading<'_>,
    id: &JarId,
    jar: &Jar,
    now: DateTime<FixedOffset>,
) -> Result<Vec<BottleCard>, Failure> {
    let shown = Shown::of(reading, jar)?;
    let rows = reading.bottles_of(id)?;
    let today = now.date_naive();
    Ok(rows.iter().map(|row| shown.card(row, today)).collect())
}
