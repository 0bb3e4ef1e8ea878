//! `bottle.list`: what there is, and when it runs out.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use journal::{Jar, JarId, runs_out};
use store::{BottleRow, Reading};

use super::wire::{BottleCard, BottleState, Bottles, ListBottles, RunsOut, StockLine};
use crate::herb::Known;
use crate::jar::{herbs, preparation_of};
use crate::{App, Command, Failure};

/// Bottles that are gone are listed up to so many.
const MOST_ENDED: usize = 1000;
/// How far back use is counted.
const YEAR_DAYS: i64 = 365;

/// What a card shows of the jar behind a bottle.
pub(crate) struct Shown {
    pub name: String,
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
    pub keys: Vec<String>,
    strength: journal::Interval,
}

impl Shown {
    pub fn of(reading: &Reading<'_>, jar: &Jar) -> Result<Self, Failure> {
        Ok(Self {
            name: jar.name.clone(),
            preparation: jar.preparation.clone(),
            preparation_name: preparation_of(jar)
                .map_or(&jar.preparation, |known| &known.name)
                .clone(),
            herbs: herbs(reading, jar)?,
            keys: jar.plants.iter().map(|it| it.herb.to_string()).collect(),
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
            state: bottle.state(row.is_open, last, today).into(),
            best_before: bottle.best_before.map(|day| day.to_string()),
            check_on: bottle.next_check(last).map(|day| day.to_string()),
            bin_it: bottle.is_to_be_binned(last, today),
            only_the_date_counts: bottle.only_the_date_counts,
            place: bottle.place.clone(),
            strength_percent_vol: self.strength.into(),
        }
    }
}

/// The jars behind bottles, each looked up once.
#[derive(Default)]
pub(super) struct Jars(BTreeMap<JarId, Shown>);

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
pub(crate) fn cards_of(
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

impl Command for ListBottles {
    const NAME: &'static str = "bottle.list";
    type Reply = Bottles;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let today = now.date_naive();
        app.read(|reading| {
            let herb = self
                .herb
                .as_deref()
                .map(|herb| Known::asked(reading, herb))
                .transpose()?
                .map(|known| known.key.to_string());
            let mut jars = Jars::default();
            let wanted = |shown: &Shown| {
                herb.as_ref().is_none_or(|key| shown.keys.contains(key))
                    && self.preparation.as_ref().is_none_or(|asked| {
                        *asked == shown.preparation || *asked == shown.preparation_name
                    })
            };
            let standing = reading.bottles_standing()?;
            let ended = reading.bottles_ended(MOST_ENDED)?;
            let listed = match self.state {
                Some(BottleState::Finished | BottleState::Binned | BottleState::Given) => &ended,
                _ => &standing,
            };
            let mut bottles = Vec::new();
            for row in listed {
                let shown = jars.of(reading, &row.bottle.jar)?;
                let card = shown.card(row, today);
                if wanted(shown) && self.state.is_none_or(|state| state == card.state) {
                    bottles.push(card);
                }
            }
            bottles.sort_by(|a, b| {
                (!a.bin_it, a.state, &a.best_before, &a.code).cmp(&(
                    !b.bin_it,
                    b.state,
                    &b.best_before,
                    &b.code,
                ))
            });
            let mut stock = Stock::default();
            for row in &standing {
                let shown = jars.of(reading, &row.bottle.jar)?;
                if wanted(shown) {
                    stock.holds(shown, row, today);
                }
            }
            let since = now - Duration::days(YEAR_DAYS);
            for (jar, usage) in reading.used_since(since.timestamp_millis())? {
                stock.used(jars.of(reading, &jar)?, usage.ml, usage.at.date_naive());
            }
            for row in ended {
                // What was in it when it was finished was used too, though not spoon by spoon.
                if let Some(end) = &row.bottle.end
                    && end.kind == journal::EndKind::Finished
                    && end.at >= since
                    && row.left_ml > 0.0
                {
                    let shown = jars.of(reading, &row.bottle.jar)?;
                    stock.used(shown, row.left_ml, end.at.date_naive());
                }
            }
            Ok(Bottles {
                bottles,
                stock: stock.lines(today),
            })
        })
    }
}

#[derive(Default)]
struct Held {
    preparation_name: String,
    bottles: u32,
    left_ml: f64,
    used_ml: f64,
    uses: u32,
    first_use: Option<NaiveDate>,
}

/// What there is of each preparation of the same herbs, and how it was used.
#[derive(Default)]
struct Stock(BTreeMap<(String, Vec<String>), Held>);

impl Stock {
    fn holds(&mut self, shown: &Shown, row: &BottleRow, today: NaiveDate) {
        // What must be thrown away is no stock.
        if row.bottle.is_to_be_binned(row.last_check.as_ref(), today) {
            return;
        }
        let key = (shown.preparation.clone(), shown.herbs.clone());
        let held = self.0.entry(key).or_default();
        held.preparation_name.clone_from(&shown.preparation_name);
        held.bottles += 1;
        held.left_ml += row.left_ml.max(0.0);
    }

    fn used(&mut self, shown: &Shown, ml: f64, on: NaiveDate) {
        let key = (shown.preparation.clone(), shown.herbs.clone());
        if let Some(held) = self.0.get_mut(&key) {
            held.used_ml += ml;
            held.uses += 1;
            held.first_use = Some(held.first_use.map_or(on, |first| first.min(on)));
        }
    }

    fn lines(self, today: NaiveDate) -> Vec<StockLine> {
        let line = |((preparation, herbs), held): ((String, Vec<String>), Held)| {
            let days = held
                .first_use
                .map_or(0, |first| (today - first).num_days().max(0));
            let days = u32::try_from(days).unwrap_or_default();
            let runs_out = runs_out(held.left_ml, held.used_ml, held.uses, days, today);
            StockLine {
                preparation,
                preparation_name: held.preparation_name,
                herbs,
                bottles: held.bottles,
                left_ml: held.left_ml,
                runs_out: runs_out.map(|(low, high)| RunsOut {
                    low_on: low.to_string(),
                    high_on: high.to_string(),
                    because: format!(
                        "{} mL were used in {} times over {days} days.",
                        crate::words::figure(held.used_ml),
                        held.uses
                    ),
                }),
            }
        };
        self.0.into_iter().map(line).collect()
    }
}

impl From<journal::BottleState> for BottleState {
    fn from(state: journal::BottleState) -> Self {
        match state {
            journal::BottleState::OnTheShelf => Self::OnTheShelf,
            journal::BottleState::Open => Self::Open,
            journal::BottleState::ToCheck => Self::ToCheck,
            journal::BottleState::Finished => Self::Finished,
            journal::BottleState::Binned => Self::Binned,
            journal::BottleState::Given => Self::Given,
        }
    }
}
