//! What a marc keeps: the maker's own figure once there is one, the printed one until then.

use formulary::Status;
use journal::{HerbKey, How, Jar, expected_retention};
use message::{Failure, Message, say};
use physics::Interval;
use serde::Serialize;
use store::Reading;

use crate::jar::judged::Judged;

/// How many of the maker's own strainings count.
const OWN: usize = 20;

/// What is expected to come out when it is strained this way.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ExpectedOut {
    pub how: How,
    pub came_out_ml: Interval,
    pub retained_ml_per_g_dry: Interval,
    pub basis: Message,
    pub source: Option<String>,
    pub status: Status,
}

/// What the maker's own marcs of a herb kept, strained this way; `None` where none was.
pub fn own(
    reading: &Reading<'_>,
    herb: &HerbKey,
    preparation: &str,
    how: How,
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
pub fn latest(
    reading: &Reading<'_>,
    herb: &HerbKey,
    preparation: &str,
) -> Result<Option<journal::Interval>, Failure> {
    let Some(last) = reading.marcs(herb, preparation, 1)?.into_iter().next() else {
        return Ok(None);
    };
    Ok(own(reading, herb, preparation, last.how)?.map(|(expected, _)| expected))
}

/// What is expected to come out of a jar, for each way of straining that anything is known of.
pub fn expected(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
) -> Result<Vec<ExpectedOut>, Failure> {
    let mut expected = Vec::new();
    let printed = formulary::retention::of(judged.preparation);
    let only = match jar.plants.as_slice() {
        [plant] if jar.marc_of.is_none() => Some(&plant.herb),
        _ => None,
    };
    for how in [How::Dripped, How::Wrung, How::Pressed] {
        let own = match only {
            Some(herb) => own(reading, herb, &jar.preparation, how)?,
            None => None,
        };
        let (per_g, basis, source, status) = match own {
            Some((per_g, count)) => {
                let basis = say!("retention-own-jars", count);
                (per_g, basis, None, Status::Own)
            }
            None => {
                let per_g = match how {
                    How::Dripped => continue,
                    How::Wrung => printed.wrung,
                    How::Pressed => printed.pressed,
                };
                let note = printed.note.as_ref();
                let source = note.and_then(|note| note.source.clone());
                let status = note.map_or(Status::Computed, |note| note.status);
                (per_g, printed.basis.clone(), source, status)
            }
        };
        let out = |liquid: f64, kept: f64, dry: f64| (liquid - kept * dry).max(0.0);
        let (liquid, dry) = (judged.liquid_ml, judged.dry_matter_g);
        expected.push(ExpectedOut {
            how,
            came_out_ml: Interval {
                low: out(liquid.low, per_g.high, dry.high),
                value: out(liquid.value, per_g.value, dry.value),
                high: out(liquid.high, per_g.low, dry.low),
            },
            retained_ml_per_g_dry: per_g,
            basis,
            source,
            status,
        });
    }
    Ok(expected)
}
