//! What a year gave, what was made of it and what is left.

use std::collections::BTreeMap;

use chrono::{FixedOffset, NaiveDate};
use message::{At as _, Failure, Message, Unit, say};
use serde::Serialize;
use store::{Kind, Reading};

use crate::day::midnight;
use crate::herb::Known;
use crate::jar::judged::preparation_title;
use crate::told;

/// The yield of an herb's part in a bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct YieldRow {
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub bed: Option<String>,
    pub fresh_g: f64,
    /// What was taken down dry of it.
    pub dry_g: f64,
    /// Grams of fresh that became one dried, over the trays taken down.
    pub ratio_fresh_per_dry: Option<f64>,
    pub harvests: u32,
    pub photo: Option<String>,
}

/// What was made of one preparation and the same herbs.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MadeRow {
    pub preparation: String,
    pub preparation_name: Message,
    pub herbs: Vec<Message>,
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

/// What plants were thrown away in the year, whenever they were picked; a tray thrown away while it
/// was drying counts as what was laid out on it fresh.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ThrownAway {
    pub fresh_g: f64,
    pub dry_g: f64,
}

/// The answer to [`ShowSeason`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Season {
    pub year: i32,
    pub rows: Vec<YieldRow>,
    pub made: Vec<MadeRow>,
    pub binned: ThrownAway,
    pub left: LeftOver,
}

impl Season {
    /// A year of the garden where the clock stands.
    pub fn of(reading: &Reading<'_>, year: i32, offset: FixedOffset) -> Result<Self, Failure> {
        let span = span(year, offset)?;
        let (rows, mut left) = yields(reading, span)?;
        let made = made(reading, span, &mut left)?;
        let (fresh, dried) = reading.binned(span.0, span.1)?;
        Ok(Self {
            year,
            rows,
            made,
            binned: ThrownAway {
                fresh_g: fresh.get(),
                dry_g: dried.get(),
            },
            left,
        })
    }
}

/// The first moment of a year where the clock stands, and the first after it.
pub fn span(year: i32, offset: FixedOffset) -> Result<(i64, i64), Failure> {
    physics::error::within(
        say!("what-year"),
        f64::from(year),
        1900.0,
        2199.0,
        Unit::None,
    )
    .at("year")?;
    let new_year = |year: i32| NaiveDate::from_ymd_opt(year, 1, 1).unwrap_or(NaiveDate::MAX);
    let [first, after] = [year, year + 1].map(new_year);
    Ok((midnight(first, offset), midnight(after, offset)))
}

/// The yields of harvests picked in the span, and what is left of them.
pub fn yields(
    reading: &Reading<'_>,
    span: (i64, i64),
) -> Result<(Vec<YieldRow>, LeftOver), Failure> {
    #[derive(Default)]
    struct Beside {
        photo_ms: Option<i64>,
        fresh_of_dried_g: f64,
    }
    let mut rows: BTreeMap<(String, String, Option<String>), (Beside, YieldRow)> = BTreeMap::new();
    for sum in reading.yields(span.0, span.1)? {
        let known = Known::written(reading, &sum.herb)?;
        let bed = sum.bed.map(|bed| bed.name);
        let key = (known.common.clone(), sum.part.clone(), bed.clone());
        let (beside, line) = rows.entry(key).or_insert_with(|| {
            let line = YieldRow {
                herb: sum.herb.to_string(),
                common: told::title(&known),
                part: sum.part,
                bed,
                fresh_g: 0.0,
                dry_g: 0.0,
                ratio_fresh_per_dry: None,
                harvests: 0,
                photo: None,
            };
            (Beside::default(), line)
        });
        line.fresh_g += sum.fresh.get();
        line.dry_g += sum.dried.get();
        line.harvests += sum.harvests;
        beside.fresh_of_dried_g += sum.fresh_of_dried_g;
        line.ratio_fresh_per_dry = (line.dry_g > 0.0).then(|| beside.fresh_of_dried_g / line.dry_g);
        if sum.photo_ms.is_some() && beside.photo_ms.is_none_or(|ms| Some(ms) > sum.photo_ms) {
            (beside.photo_ms, line.photo) = (sum.photo_ms, sum.photo);
        }
    }
    let (fresh, dried) = reading.left_of_picked(span.0, span.1)?;
    let left = LeftOver {
        fresh_g: fresh.get(),
        dry_g: dried.get(),
        bottled_ml: 0.0,
        unbottled_ml: 0.0,
    };
    Ok((rows.into_values().map(|(_, row)| row).collect(), left))
}

/// The jars poured in the span with their bottles.
pub fn made(
    reading: &Reading<'_>,
    span: (i64, i64),
    left: &mut LeftOver,
) -> Result<Vec<MadeRow>, Failure> {
    let mut made: BTreeMap<(String, Vec<String>), MadeRow> = BTreeMap::new();
    for sum in reading.poured_sums(span.0, span.1)? {
        let (mut names, mut herbs) = (Vec::new(), Vec::new());
        for herb in &sum.kind.herbs {
            let known = Known::written(reading, herb)?;
            herbs.push(told::title(&known));
            names.push(known.common);
        }
        let Kind {
            preparation,
            is_fresh,
            ..
        } = sum.kind;
        let key = (preparation.clone(), names);
        let line = made.entry(key).or_insert_with(|| MadeRow {
            preparation_name: preparation_title(&preparation, is_fresh),
            preparation,
            herbs,
            jars: 0,
            failed: 0,
            came_out_ml: 0.0,
            bottles: 0,
            bottled_ml: 0.0,
            given: 0,
            left_ml: 0.0,
        });
        line.jars += sum.jars;
        line.failed += sum.failed;
        line.came_out_ml += sum.out.get();
        line.bottles += sum.bottles;
        line.bottled_ml += sum.bottled.get();
        line.given += sum.given;
        line.left_ml += sum.shelved.get();
        left.unbottled_ml += sum.unbottled.get();
    }
    left.bottled_ml = made.values().map(|line| line.left_ml).sum();
    Ok(made.into_values().collect())
}
