//! `bottle.list`: what there is.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use journal::{Jar, JarId};
use store::{BottleFilter, BottleRow, Reading};

use super::wire::{BottleCard, BottleState, Bottles, ListBottles};
use crate::herb::Known;
use crate::jar::{herbs, preparation_named, preparation_of};
use crate::{App, Command, Failure, asked};

/// How far back use is counted.
pub(super) const YEAR_DAYS: i64 = 365;

/// What a card shows of the jar behind a bottle.
pub(crate) struct Shown {
    pub name: String,
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
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
            state: row.state(today).into(),
            best_before: row.last_day().map(|day| day.to_string()),
            check_on: bottle
                .next_check(last)
                .filter(|_| !row.is_not_acid())
                .map(|day| day.to_string()),
            bin_it: bottle.is_to_be_binned(last, today),
            not_acid: bottle.end.is_none() && row.is_not_acid(),
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
        let after = self
            .after
            .as_deref()
            .map(|id| asked::id("after", id))
            .transpose()?;
        let limit = asked::limit(self.limit, 50)?;
        app.read(|reading| {
            let herb = self
                .herb
                .as_deref()
                .map(|herb| Known::asked(reading, herb))
                .transpose()?
                .map(|known| known.key);
            let preparations = match &self.preparation {
                None => None,
                Some(asked) => Some(poured_as(reading, asked)?),
            };
            let filter = BottleFilter {
                state: self.state.map(Into::into),
                herb: herb.clone(),
                preparations: preparations.clone(),
                after,
                limit,
            };
            let page = reading.bottles(&filter, today)?;
            let mut jars = Jars::default();
            let mut bottles = Vec::new();
            for row in &page.rows {
                let shown = jars.of(reading, &row.bottle.jar)?;
                bottles.push(shown.card(row, today));
            }
            let mut stock = app.stock(reading, now)?;
            stock.retain(|(kind, _)| {
                let made_as = (kind.preparation.clone(), kind.is_fresh);
                herb.as_ref().is_none_or(|herb| kind.herbs.contains(herb))
                    && preparations.as_ref().is_none_or(|it| it.contains(&made_as))
            });
            Ok(Bottles {
                bottles,
                more: page.more,
                stock: stock.into_iter().map(|(_, line)| line).collect(),
            })
        })
    }
}

/// What jars of a preparation were poured as, given its key or its name.
fn poured_as(reading: &Reading<'_>, asked: &str) -> Result<Vec<(String, bool)>, Failure> {
    let mut poured = reading.preparations_poured()?;
    poured.retain(|(preparation, is_fresh)| {
        preparation == asked
            || preparation_named(preparation, *is_fresh).is_some_and(|known| known.name == asked)
    });
    Ok(poured)
}

impl From<BottleState> for journal::BottleState {
    fn from(state: BottleState) -> Self {
        match state {
            BottleState::ToCheck => Self::ToCheck,
            BottleState::Open => Self::Open,
            BottleState::OnTheShelf => Self::OnTheShelf,
            BottleState::Finished => Self::Finished,
            BottleState::Binned => Self::Binned,
            BottleState::Given => Self::Given,
        }
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
