//! What there is of each preparation of the same herbs, and when it runs out.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use journal::runs_out;
use store::{Kind, KindSum, Reading};

use super::list::YEAR_DAYS;
use super::wire::{RunsOut, StockLine};
use crate::app::held;
use crate::herb::Known;
use crate::jar::preparation_named;
use crate::{App, Failure};

/// The sums of the whole shelf, and the state of the journal and the day that they are of.
pub(crate) struct Summed {
    of: (String, NaiveDate),
    lines: Vec<(Kind, StockLine)>,
}

impl App {
    /// What there is of each kind. A year of use is summed up once for each state of the journal.
    pub(super) fn stock(
        &self,
        reading: &Reading<'_>,
        now: DateTime<FixedOffset>,
    ) -> Result<Vec<(Kind, StockLine)>, Failure> {
        let of = (reading.state()?, now.date_naive());
        if let Some(summed) = held(&self.summed).as_ref().filter(|summed| summed.of == of) {
            return Ok(summed.lines.clone());
        }
        let lines = lines(reading, now)?;
        *held(&self.summed) = Some(Summed {
            of,
            lines: lines.clone(),
        });
        Ok(lines)
    }
}

#[derive(Default)]
struct Used {
    ml: f64,
    times: u32,
    first_on: Option<NaiveDate>,
}

fn lines(
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
    lines.sort_by(|(_, a), (_, b)| (&a.preparation, &a.herbs).cmp(&(&b.preparation, &b.herbs)));
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
        herbs.push(Known::written(reading, herb)?.common);
    }
    let days = used
        .first_on
        .map_or(0, |first| (today - first).num_days().max(0));
    let days = u32::try_from(days).unwrap_or_default();
    let runs_out = runs_out(ml, used.ml, used.times, days, today);
    let name = preparation_named(&kind.preparation, kind.is_fresh);
    Ok(StockLine {
        preparation_name: name.map_or(&kind.preparation, |known| &known.name).clone(),
        preparation: kind.preparation,
        herbs,
        bottles: count,
        left_ml: ml,
        runs_out: runs_out.map(|(low, high)| RunsOut {
            low_on: low.to_string(),
            high_on: high.to_string(),
            because: format!(
                "{} mL were used in {} times over {days} days.",
                crate::words::figure(used.ml),
                used.times
            ),
        }),
    })
}
