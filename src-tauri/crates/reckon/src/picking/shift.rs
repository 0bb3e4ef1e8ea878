//! How far a place lies from the calendars, learned from the maker's own picks.

use std::collections::{BTreeMap, BTreeSet};

use journal::student_90;
use serde::Serialize;

use super::{Span, around};

/// A span longer than half a year tells nothing of where its middle lies.
const LONGEST: f64 = 184.0;
/// Fewer years could all have been late, and fewer plants could all be ones that this maker picks late.
const FEWEST: usize = 2;

/// How much later one's own picks are than the published months; below nothing they are earlier. Each end holds nine times
/// out of ten.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Shift {
    pub weeks: f64,
    pub weeks_low: f64,
    pub weeks_high: f64,
    /// What it was learned from: years, and parts of herbs.
    pub years: usize,
    pub plants: usize,
}

impl Shift {
    /// Whether the whole range lies on one side, so that the months of a calendar may be moved by it.
    pub fn is_clear(&self) -> bool {
        self.weeks_low > 0.0 || self.weeks_high < 0.0
    }

    /// By how many days published months are moved: by nothing unless it is clear.
    pub(super) fn days(&self) -> f64 {
        match self.is_clear() {
            true => self.weeks * 7.0,
            false => 0.0,
        }
    }
}

/// The picks of one plant in one year: how many days their mean lies after the middle of the nearest published span.
pub(super) fn after_the_middle(spans: &[Span], days: &[f64]) -> Option<f64> {
    let middle = |span: &Span| {
        let (begins, long) = span.days();
        (long <= LONGEST).then_some(begins + (long - 1.0) / 2.0)
    };
    let middles: Option<Vec<f64>> = spans.iter().map(middle).collect();
    let middles = middles?;
    let nearest = |day: f64| {
        let away = middles.iter().map(|middle| around(day - middle));
        away.min_by(|one, other| one.abs().total_cmp(&other.abs()))
    };
    let away: Option<Vec<f64>> = days.iter().map(|day| nearest(*day)).collect();
    mean(&away?)
}

/// The shift of a place. `found` are days after the middle, by plant and year.
///
/// It is the mean over the plants of each plant's mean over its years. Its range is `t s / sqrt(n)` either way (90 %), over the
/// plants or over the years, whichever is wider: plants of one year share its weather, and years of one plant share a habit.
pub(super) fn learned(found: &BTreeMap<(String, i32), f64>) -> Option<Shift> {
    let of = |keep: &dyn Fn(&(String, i32)) -> bool| {
        let kept = found.iter().filter(|(key, _)| keep(key));
        mean(&kept.map(|(_, days)| *days).collect::<Vec<f64>>())
    };
    let plants: BTreeSet<&String> = found.keys().map(|(plant, _)| plant).collect();
    let years: BTreeSet<i32> = found.keys().map(|(_, year)| *year).collect();
    if plants.len() < FEWEST || years.len() < FEWEST {
        return None;
    }
    let by_plant: Vec<f64> = plants
        .iter()
        .filter_map(|plant| of(&|key| key.0 == **plant))
        .collect();
    // A plant that is always picked late must not make the one year late in which it was picked.
    let usual: BTreeMap<&String, f64> = plants
        .iter()
        .copied()
        .zip(by_plant.iter().copied())
        .collect();
    let by_year: Vec<f64> = years
        .iter()
        .filter_map(|year| {
            let of_year = found.iter().filter(|(key, _)| key.1 == *year);
            mean(
                &of_year
                    .map(|(key, days)| days - usual[&key.0])
                    .collect::<Vec<f64>>(),
            )
        })
        .collect();
    let value = mean(&by_plant)?;
    let half = half_width(&by_plant).max(half_width(&by_year));
    Some(Shift {
        weeks: value / 7.0,
        weeks_low: (value - half) / 7.0,
        weeks_high: (value + half) / 7.0,
        years: years.len(),
        plants: plants.len(),
    })
}

fn mean(of: &[f64]) -> Option<f64> {
    (!of.is_empty()).then(|| of.iter().sum::<f64>() / of.len() as f64)
}

/// `t s / sqrt(n)` of two or more.
fn half_width(of: &[f64]) -> f64 {
    let count = of.len() as f64;
    let Some(mean) = mean(of) else { return 0.0 };
    let squares: f64 = of.iter().map(|one| (one - mean).powi(2)).sum();
    student_90(of.len() - 1) * (squares / (count - 1.0)).sqrt() / count.sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(of: &[(&str, i32, f64)]) -> BTreeMap<(String, i32), f64> {
        let each = of.iter();
        each.map(|(plant, year, days)| (((*plant).to_owned(), *year), *days))
            .collect()
    }

    #[test]
    fn picks_are_counted_from_the_middle_of_the_nearest_span() {
        let june_to_august = [Span { from: 6, to: 8 }];
        // June to August lasts 92 days from day 151, so its middle is day 196.5; 20 and 30 July are days 200 and 210.
        assert_eq!(
            after_the_middle(&june_to_august, &[200.0, 210.0]),
            Some(8.5)
        );
        let twice = [Span { from: 4, to: 4 }, Span { from: 10, to: 10 }];
        // The middle of April is day 104.5, that of October day 288.
        assert_eq!(after_the_middle(&twice, &[100.5, 290.0]), Some(-1.0));
        // December to February: day 334 and 90 days, so the middle is day 378.5, which is 13.5.
        assert_eq!(
            after_the_middle(&[Span { from: 12, to: 2 }], &[360.0]),
            Some(-18.5)
        );
        assert_eq!(
            after_the_middle(&[Span { from: 1, to: 12 }], &[200.0]),
            None
        );
        assert_eq!(after_the_middle(&[], &[200.0]), None);
    }

    #[test]
    fn fewer_than_two_years_or_plants_claim_no_shift() {
        assert_eq!(
            learned(&found(&[("sage", 2025, 9.0), ("mint", 2025, 9.0)])),
            None
        );
        assert_eq!(
            learned(&found(&[("sage", 2025, 9.0), ("sage", 2026, 9.0)])),
            None
        );
    }

    #[test]
    fn a_shift_is_the_mean_over_the_plants_with_the_wider_of_two_ranges() {
        let shift = learned(&found(&[
            ("sage", 2025, 12.0),
            ("sage", 2026, 16.0),
            ("mint", 2025, 19.0),
            ("mint", 2026, 23.0),
            ("balm", 2026, 14.0),
        ]))
        .unwrap();
        // Plants: 14, 21, 14, mean 49/3; s = 7/sqrt(3), n = 3, t = 2.920: half = 2.920 x 7/3.
        // Years against each plant's usual: 2025 -2 and -2; 2026 2, 2 and 0, mean 4/3: d = 10/3, n = 2, t = 6.314, half = 6.314 x 10/6.
        let (value, half) = (49.0 / 3.0, 6.314 * 10.0 / 6.0);
        assert!((shift.weeks - value / 7.0).abs() < 1e-9);
        assert!(
            (shift.weeks_low - (value - half) / 7.0).abs() < 1e-9,
            "{shift:?}"
        );
        assert!((shift.weeks_high - (value + half) / 7.0).abs() < 1e-9);
        assert_eq!((shift.years, shift.plants), (2, 3));
        assert!(shift.is_clear());
    }

    #[test]
    fn months_are_not_moved_by_a_shift_that_may_be_none() {
        let shift = learned(&found(&[
            ("sage", 2025, -20.0),
            ("sage", 2026, 10.0),
            ("mint", 2025, 0.0),
            ("mint", 2026, 20.0),
        ]))
        .unwrap();
        assert!(!shift.is_clear() && shift.days() == 0.0, "{shift:?}");
    }
}
