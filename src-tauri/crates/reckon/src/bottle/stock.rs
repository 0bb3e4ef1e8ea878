//! What there is of each preparation of the same herbs, and when it runs out.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use journal::runs_out;
use message::{Argument, Failure, Message, say};
use serde::Serialize;
use store::{Kind, KindSum, Reading};

use crate::bottle::card::YEAR_DAYS;
use crate::herb::Known;
use crate::jar::judged::preparation_title;
use crate::told;

/// The days between which what is left runs out.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RunsOut {
    pub low_on: String,
    pub high_on: String,
    pub because: Message,
}

/// What there is of one preparation of the same herbs.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StockLine {
    pub preparation: String,
    pub preparation_name: Message,
    pub herbs: Vec<Message>,
    pub bottles: u32,
    pub left_ml: f64,
    pub runs_out: Option<RunsOut>,
}

/// The sums of the whole shelf, and the state of the journal and the day that they are of.
pub struct Summed {
    pub of: (String, NaiveDate),
    pub lines: Vec<(Kind, StockLine)>,
}

#[derive(Default)]
struct Used {
    ml: f64,
    times: u32,
    first_on: Option<NaiveDate>,
}

pub fn lines(
    reading: &Reading<'_>,
    now: DateTime<FixedOffset>,
) -> Result<Vec<(Kind, StockLine)>, Failure> {
    let today = now.date_naive();
    let since = now - Duration::days(YEAR_DAYS);
    let mut used: BTreeMap<Kind, Used> = BTreeMap::new();
    for sum in reading.used_of_kinds(since.timestamp_millis())? {
        let used = used.entry(sum.kind).or_default();
        used.ml += sum.ml;
        used.times += sum.count;
        used.first_on = used.first_on.into_iter().chain(sum.first_on).min();
    }
    let mut lines = Vec::new();
    for sum in reading.shelved(today)? {
        let used = used.remove(&sum.kind).unwrap_or_default();
        lines.push((sum.kind.clone(), line(reading, sum, &used, today)?));
    }
    lines.sort_by_cached_key(|(_, line)| {
        let herbs: Vec<String> = line.herbs.iter().map(ToString::to_string).collect();
        (line.preparation.clone(), herbs)
    });
    Ok(lines)
}

fn line(
    reading: &Reading<'_>,
    sum: KindSum,
    used: &Used,
    today: NaiveDate,
) -> Result<StockLine, Failure> {
    let KindSum {
        kind, count, ml, ..
    } = sum;
    let mut herbs = Vec::new();
    for herb in &kind.herbs {
        herbs.push(told::title(&Known::written(reading, herb)?));
    }
    let days = used
        .first_on
        .map_or(0, |first| (today - first).num_days().max(0));
    let days = u32::try_from(days).unwrap_or_default();
    let runs_out = runs_out(ml, used.ml, used.times, days, today);
    Ok(StockLine {
        preparation_name: preparation_title(&kind.preparation, kind.is_fresh),
        preparation: kind.preparation,
        herbs,
        bottles: count,
        left_ml: ml,
        runs_out: runs_out.map(|(low, high)| RunsOut {
            low_on: low.to_string(),
            high_on: high.to_string(),
            because: say!(
                "used-in-times",
                used = Argument::millilitres(used.ml),
                times = used.times,
                days
            ),
        }),
    })
}
