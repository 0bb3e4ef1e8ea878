//! What a marc keeps: the maker's own figure once there is one, the printed one until then.

use formulary::Status;
use journal::{HerbKey, How, Jar, expected_retention};
use message::{Failure, Message, say};
use physics::Interval;
use serde::Serialize;
use store::{MarcKept, Reading};

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

/// What the maker's own marcs kept, strained this way, and how many those were; `None` where none was.
fn own(marcs: &[MarcKept], how: How) -> Option<(journal::Interval, usize)> {
    let strained_so = marcs.iter().filter(|kept| kept.how == how);
    let kept: Vec<_> = strained_so.map(|kept| kept.retained_ml_per_g_dry).collect();
    expected_retention(&kept).map(|expected| (expected, kept.len()))
}

/// The way the maker strained this herb last, with what is expected of it.
pub fn latest(
    reading: &Reading<'_>,
    herb: &HerbKey,
    preparation: &str,
) -> Result<Option<journal::Interval>, Failure> {
    let marcs = reading.marcs(herb, preparation, OWN)?;
    let last = marcs.first().and_then(|last| own(&marcs, last.how));
    Ok(last.map(|(expected, _)| expected))
}

/// What is expected to come out of a jar, for each way of straining that anything is known of.
pub fn expected(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
) -> Result<Vec<ExpectedOut>, Failure> {
    let mut expected = Vec::new();
    let printed = formulary::retention::of(judged.preparation);
    let marcs = match jar.plants.as_slice() {
        [plant] if jar.marc_of.is_none() => reading.marcs(&plant.herb, &jar.preparation, OWN)?,
        _ => Vec::new(),
    };
    for how in [How::Dripped, How::Wrung, How::Pressed] {
        let (per_g, basis, source, status) = match own(&marcs, how) {
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
