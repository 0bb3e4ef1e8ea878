//! When to pick: the published months of a herb's parts, turned to the maker's half of the globe, beside the days on which
//! the maker picked, and how far the one lies from the other.

mod calendar;
mod shift;

pub use calendar::{Calendar, MonthSpan, OwnYear, PickingRow, PublishedMonths, Ready};
pub use shift::Shift;

use chrono::{Datelike, NaiveDate};
use journal::Hemisphere;

/// Days of a year, leap days apart: a calendar of months is no finer.
const YEAR: f64 = 365.0;
/// The day of the year on which each month begins, from 0.
const BEGINS: [u32; 13] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/// A span of whole months on the ring of the year, by its first and last month from 1 to 12.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Span {
    from: u32,
    to: u32,
}

impl Span {
    /// As it is in that half of the globe: south of the equator half a year later.
    fn in_half(self, hemisphere: Hemisphere) -> Self {
        let turned = |month: u32| match hemisphere {
            Hemisphere::North => month,
            Hemisphere::South => (month + 5) % 12 + 1,
        };
        Self {
            from: turned(self.from),
            to: turned(self.to),
        }
    }

    fn months(self) -> impl Iterator<Item = u32> {
        let count = (self.to + 12 - self.from) % 12 + 1;
        (0..count).map(move |at| (self.from - 1 + at) % 12 + 1)
    }

    /// The day of the year on which it begins, and how many days it lasts.
    fn days(self) -> (f64, f64) {
        let begins = BEGINS[(self.from - 1) as usize];
        let ends = BEGINS[self.to as usize];
        let long = (ends + 365 - begins - 1) % 365 + 1;
        (f64::from(begins), f64::from(long))
    }
}

/// Months that several calendars print, each once, as spans that do not touch.
fn joined(spans: impl IntoIterator<Item = Span>) -> Vec<Span> {
    let mut is_in = [false; 12];
    for month in spans.into_iter().flat_map(Span::months) {
        is_in[(month - 1) as usize] = true;
    }
    if is_in.iter().all(|there| *there) {
        return vec![Span { from: 1, to: 12 }];
    }
    let there = |month: u32| is_in[((month + 11) % 12) as usize];
    let begins = (1..=12).filter(|month| there(*month) && !there(month + 11));
    begins
        .map(|from| {
            let long = (0..12).take_while(|more| there(from + more)).count() as u32;
            Span {
                from,
                to: (from + long - 2) % 12 + 1,
            }
        })
        .collect()
}

/// The day of the year from 0; 29 February is the day before 1 March.
fn day_of_year(day: NaiveDate) -> f64 {
    let begins = BEGINS[day.month0() as usize];
    let last = BEGINS[day.month() as usize] - 1;
    f64::from((begins + day.day0()).min(last))
}

/// So many days on the ring of the year, from just above -182.5 to 182.5.
fn around(days: f64) -> f64 {
    let turned = days.rem_euclid(YEAR);
    if turned > YEAR / 2.0 {
        turned - YEAR
    } else {
        turned
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn span(from: u32, to: u32) -> Span {
        Span { from, to }
    }

    #[test]
    fn months_of_several_calendars_are_joined_over_the_new_year_too() {
        assert_eq!(joined([span(6, 8), span(5, 6)]), [span(5, 8)]);
        assert_eq!(joined([span(8, 9), span(4, 4)]), [span(4, 4), span(8, 9)]);
        assert_eq!(joined([span(10, 4), span(3, 5)]), [span(10, 5)]);
        assert_eq!(joined([span(7, 12), span(1, 6)]), [span(1, 12)]);
        assert_eq!(joined([span(12, 12), span(1, 1)]), [span(12, 1)]);
        assert_eq!(joined([]), []);
    }

    #[test]
    fn south_of_the_equator_june_is_december() {
        let turned = |from, to| span(from, to).in_half(Hemisphere::South);
        assert_eq!(turned(6, 8), span(12, 2));
        assert_eq!(turned(10, 4), span(4, 10));
        assert_eq!(turned(1, 12), span(7, 6));
        assert_eq!(span(6, 8).in_half(Hemisphere::North), span(6, 8));
    }

    #[test]
    fn a_span_lasts_from_its_first_day_to_its_last() {
        assert_eq!(span(6, 8).days(), (151.0, 92.0));
        assert_eq!(span(12, 2).days(), (334.0, 90.0));
        assert_eq!(span(1, 12).days(), (0.0, 365.0));
        assert_eq!(span(7, 6).days(), (181.0, 365.0));
        assert_eq!(span(7, 7).days(), (181.0, 31.0));
    }

    #[test]
    fn the_way_around_the_year_is_the_short_one() {
        assert_eq!(around(-3.0), -3.0);
        assert_eq!(around(360.0), -5.0);
        assert_eq!(around(-200.0), 165.0);
        let day = |text: &str| day_of_year(text.parse().unwrap());
        assert_eq!(day("2026-01-01"), 0.0);
        assert_eq!(day("2024-02-29"), day("2025-02-28"));
        assert_eq!((day("2024-03-01"), day("2026-12-31")), (59.0, 364.0));
    }
}
