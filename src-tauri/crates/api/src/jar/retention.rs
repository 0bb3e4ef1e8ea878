//! What a marc keeps: the maker's own figure once there is one, the published one until then.

use formulary::preparations::Preparation;
use journal::{HerbKey, How as Way, Jar, expected_retention};
use serde::Serialize;
use store::Reading;

use super::judged::Judged;
use super::life::How;
use crate::Failure;
use crate::wire::{Interval, Status};

/// How many of the maker's own strainings count.
const OWN: usize = 20;

/// What is expected to come out when it is strained this way.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ExpectedOut {
    pub how: How,
    pub came_out_ml: Interval,
    pub retained_ml_per_g_dry: Interval,
    pub basis: String,
    pub source: Option<String>,
    pub status: Status,
}

/// What the maker's own marcs of a herb kept, strained this way; `None` where none was.
pub(super) fn own(
    reading: &Reading<'_>,
    herb: &HerbKey,
    preparation: &str,
    how: Way,
) -> Result<Option<(journal::Interval, usize)>, Failure> {
    let kept: Vec<_> = reading
        .marcs(herb, preparation, OWN)?
        .into_iter()
        .filter(|kept| kept.how == how)
        .map(|kept| kept.retained_ml_per_g_dry)
        .collect();
    Ok(expected_retention(&kept).map(|expected| (expected, kept.len())))
}

/// The way the maker strained this herb last, with what is expected of it.
pub(super) fn latest(
    reading: &Reading<'_>,
    herb: &HerbKey,
    preparation: &str,
) -> Result<Option<journal::Interval>, Failure> {
    let Some(last) = reading.marcs(herb, preparation, 1)?.into_iter().next() else {
        return Ok(None);
    };
    Ok(own(reading, herb, preparation, last.how)?.map(|(expected, _)| expected))
}

fn published(preparation: &Preparation, how: Way) -> Option<(journal::Interval, String, Status)> {
    let known = preparation.retention.as_ref()?;
    let interval = match how {
        Way::Dripped => return None,
        Way::Pressed => journal::Interval::exact(known.pressed),
        Way::Wrung => journal::Interval {
            low: known.wrung_low,
            value: 0.5 * (known.wrung_low + known.wrung_high),
            high: known.wrung_high,
        },
    };
    Some((interval, known.source.clone(), known.status.into()))
}

/// What is expected to come out of a jar, for each way of straining that anything is known of.
pub(super) fn expected(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
) -> Result<Vec<ExpectedOut>, Failure> {
    let mut expected = Vec::new();
    let only = match jar.plants.as_slice() {
        [plant] if jar.marc_of.is_none() => Some(&plant.herb),
        _ => None,
    };
    for how in [Way::Dripped, Way::Wrung, Way::Pressed] {
        let own = match only {
            Some(herb) => own(reading, herb, &jar.preparation, how)?,
            None => None,
        };
        let (per_g, basis, source, status) = match own {
            Some((per_g, count)) => {
                let basis = match count {
                    1 => "your own last jar".to_owned(),
                    _ => format!("your own last {count} jars"),
                };
                (per_g, basis, None, Status::Own)
            }
            None => match published(judged.preparation, how) {
                Some((per_g, source, status)) => {
                    (per_g, "published".to_owned(), Some(source), status)
                }
                None => continue,
            },
        };
        let out = |liquid: f64, kept: f64, dry: f64| (liquid - kept * dry).max(0.0);
        let (liquid, dry) = (judged.liquid_ml, judged.dry_matter_g);
        expected.push(ExpectedOut {
            how: how.into(),
            came_out_ml: Interval {
                low: out(liquid.low, per_g.high, dry.high),
                value: out(liquid.value, per_g.value, dry.value),
                high: out(liquid.high, per_g.low, dry.low),
            },
            retained_ml_per_g_dry: per_g.into(),
            basis,
            source,
            status,
        });
    }
    Ok(expected)
}
