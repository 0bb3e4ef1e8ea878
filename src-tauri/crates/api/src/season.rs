//! `season.show`: what a year gave, what was made of it and what is left.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use journal::{Amount, BottleState as Standing};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::bottle::Shown;
use crate::herb::Known;
use crate::trace::midnight;
use crate::{App, Command, Failure};

/// One year of the garden.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowSeason {
    pub year: i32,
}

/// The yield of an herb's part in a bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct YieldRow {
    pub herb: String,
    pub common: String,
    pub part: String,
    pub bed: Option<String>,
    pub fresh_g: f64,
    /// What was taken down dry of it.
    pub dry_g: f64,
    pub harvests: u32,
    pub photo: Option<String>,
}

/// What was made of one preparation and the same herbs.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MadeRow {
    pub preparation: String,
    pub preparation_name: String,
    pub herbs: Vec<String>,
    pub jars: u32,
    pub failed: u32,
    pub came_out_ml: f64,
    pub bottles: u32,
    pub bottled_ml: f64,
    pub given: u32,
    /// What is in its bottles now.
    pub left_ml: f64,
}

/// What is left of the year's plants.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LeftOver {
    pub fresh_g: f64,
    pub dry_g: f64,
    pub bottled_ml: f64,
    pub unbottled_ml: f64,
}

/// The answer to [`ShowSeason`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Season {
    pub year: i32,
    pub rows: Vec<YieldRow>,
    pub made: Vec<MadeRow>,
    pub left: LeftOver,
}

impl Command for ShowSeason {
    const NAME: &'static str = "season.show";
    type Reply = Season;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let span = span(app, self.year)?;
        app.read(|reading| {
            let (rows, mut left) = yields(reading, span)?;
            let made = made(reading, span, now.date_naive(), &mut left)?;
            Ok(Season {
                year: self.year,
                rows,
                made,
                left,
            })
        })
    }
}

/// The first moment of a year where the clock stands, and the first after it.
pub(crate) fn span(app: &App, year: i32) -> Result<(i64, i64), Failure> {
    let new_year =
        |year: i32| NaiveDate::from_ymd_opt(year, 1, 1).filter(|_| (1900..=2200).contains(&year));
    let next = year.saturating_add(1);
    let (Some(first), Some(after)) = (new_year(year), new_year(next)) else {
        let message = format!("The year must be between 1900 and 2199; {year} is not.");
        return Err(Failure::invalid("year", message));
    };
    let offset = *app.now().offset();
    Ok((midnight(first, offset), midnight(after, offset)))
}

/// The yields of harvests picked in the span, and what is left of them.
fn yields(reading: &Reading<'_>, span: (i64, i64)) -> Result<(Vec<YieldRow>, LeftOver), Failure> {
    let mut rows: BTreeMap<(String, String, Option<String>), YieldRow> = BTreeMap::new();
    let mut left = LeftOver {
        fresh_g: 0.0,
        dry_g: 0.0,
        bottled_ml: 0.0,
        unbottled_ml: 0.0,
    };
    for row in reading.harvests_picked(span.0, span.1)? {
        let known = Known::written(reading, &row.harvest.herb)?;
        let bed = row.bed.map(|(_, bed)| bed.name);
        let key = (known.common.clone(), row.harvest.part.clone(), bed.clone());
        let dried: Amount = reading
            .trays_of(&row.id)?
            .iter()
            .map(|tray| tray.tray.dried())
            .sum();
        let line = rows.entry(key).or_insert_with(|| YieldRow {
            herb: row.harvest.herb.to_string(),
            common: known.common,
            part: row.harvest.part.clone(),
            bed,
            fresh_g: 0.0,
            dry_g: 0.0,
            harvests: 0,
            photo: None,
        });
        line.fresh_g += row.harvest.fresh().get();
        line.dry_g += dried.get();
        line.harvests += 1;
        if line.photo.is_none() {
            line.photo = row.harvest.photos.first().map(ToString::to_string);
        }
        left.fresh_g += row.fresh_left_g.max(0.0);
        left.dry_g += row.dried_left_g;
    }
    Ok((rows.into_values().collect(), left))
}

/// The jars poured in the span with their bottles.
fn made(
    reading: &Reading<'_>,
    span: (i64, i64),
    today: NaiveDate,
    left: &mut LeftOver,
) -> Result<Vec<MadeRow>, Failure> {
    let mut made: BTreeMap<(String, Vec<String>), MadeRow> = BTreeMap::new();
    for row in reading.jars_poured(span.0, span.1)? {
        let shown = Shown::of(reading, &row.jar)?;
        let key = (shown.preparation.clone(), shown.herbs.clone());
        let line = made.entry(key).or_insert_with(|| MadeRow {
            preparation: shown.preparation,
            preparation_name: shown.preparation_name,
            herbs: shown.herbs,
            jars: 0,
            failed: 0,
            came_out_ml: 0.0,
            bottles: 0,
            bottled_ml: 0.0,
            given: 0,
            left_ml: 0.0,
        });
        line.jars += 1;
        line.failed += u32::from(row.jar.failed.is_some());
        for (_, straining) in reading.strainings(&row.id)? {
            line.came_out_ml += straining.came_out_ml;
        }
        let rest = reading.left(journal::Source::Jar(row.id))?.get();
        if row.jar.failed.is_none() {
            left.unbottled_ml += rest.max(0.0);
        }
        for bottle in reading.bottles_of(&row.id)? {
            line.bottles += 1;
            line.bottled_ml += bottle.bottle.size_ml;
            let state = bottle
                .bottle
                .state(bottle.is_open, bottle.last_check.as_ref(), today);
            match state {
                Standing::Given => line.given += 1,
                Standing::Finished | Standing::Binned => {}
                Standing::OnTheShelf | Standing::Open | Standing::ToCheck => {
                    line.left_ml += bottle.left_ml.max(0.0);
                }
            }
        }
    }
    left.bottled_ml = made.values().map(|line| line.left_ml).sum();
    Ok(made.into_values().collect())
}
