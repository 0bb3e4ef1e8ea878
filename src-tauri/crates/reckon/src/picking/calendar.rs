//! The calendar of picking: a row for each part of a herb.

use std::collections::BTreeMap;

use chrono::{Datelike, Days, NaiveDate};
use formulary::Status;
use formulary::herbs::part;
use journal::{Hemisphere, HerbKey};
use message::{Failure, Message};
use serde::Serialize;
use store::{PickingDay, Reading};

use super::shift::{Shift, after_the_middle, learned};
use super::{Span, around, day_of_year, joined};
use crate::herb::Known;
use crate::told;

/// How far ahead it looks.
const AHEAD: u64 = 21;

/// Whole months on the ring of the year, by the first and the last from 1 to 12.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MonthSpan {
    pub from_month: u32,
    pub to_month: u32,
}

impl From<Span> for MonthSpan {
    fn from(Span { from, to }: Span) -> Self {
        Self {
            from_month: from,
            to_month: to,
        }
    }
}

/// What one calendar prints, its months turned to the maker's half of the globe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PublishedMonths {
    pub stage: Message,
    /// Empty where it names none.
    pub months: Vec<MonthSpan>,
    pub source: Option<String>,
    pub status: Status,
}

/// The days on which a part was picked in one year.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct OwnYear {
    pub year: i32,
    pub days: Vec<String>,
}

/// Why a part may be ready within three weeks.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Ready {
    /// Whether its months are on, moved by a clear shift.
    pub is_now: bool,
    /// The month in which they begin within the three weeks; none where they are on, or where only own years speak for it.
    pub begins_in: Option<u32>,
    /// The days of earlier years that fall into these three weeks.
    pub picked_on: Vec<String>,
}

/// When to pick one part of a herb.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PickingRow {
    pub herb: String,
    pub common: Message,
    pub part: String,
    /// As each calendar prints it; empty where none does.
    pub published: Vec<PublishedMonths>,
    /// The same joined.
    pub months: Vec<MonthSpan>,
    /// The latest year first.
    pub own: Vec<OwnYear>,
    pub ready: Option<Ready>,
}

/// When to pick, and how far this place lies from the calendars.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Calendar {
    pub hemisphere: Hemisphere,
    /// None before two years and two plants can tell.
    pub shift: Option<Shift>,
    /// Whether the months are moved by it.
    pub is_shifted: bool,
    /// By what comes first in the year.
    pub rows: Vec<PickingRow>,
}

/// The picks of one part: the days of each year.
type Picks = BTreeMap<i32, Vec<NaiveDate>>;

impl Calendar {
    /// The calendar of every part that was ever picked, or of the parts of one herb.
    pub fn of(
        reading: &Reading<'_>,
        only: Option<&Known>,
        today: NaiveDate,
    ) -> Result<Self, Failure> {
        let hemisphere = reading.setting()?.hemisphere;
        let mut picks: BTreeMap<(HerbKey, String), Picks> = BTreeMap::new();
        for PickingDay { herb, part, on } in reading.picking_days(None)? {
            let years = picks.entry((herb, part)).or_default();
            years.entry(on.year()).or_default().push(on);
        }
        let shift = shift(&picks, hemisphere);
        if let Some(known) = only {
            let named = |part: &String| (known.key.clone(), part.clone());
            picks.retain(|(herb, _), _| *herb == known.key);
            for part in &known.parts {
                picks.entry(named(part)).or_default();
            }
        }
        let moved = shift.map_or(0.0, |shift| shift.days());
        let mut rows = Vec::new();
        for ((herb, part), years) in picks {
            let known = Known::written(reading, &herb)?;
            let row = row(&known, part, &years, (hemisphere, moved), today);
            if !row.published.is_empty() || !row.own.is_empty() {
                rows.push(row);
            }
        }
        rows.sort_by(|one, other| begins(one).total_cmp(&begins(other)));
        Ok(Self {
            hemisphere,
            shift,
            is_shifted: shift.is_some_and(|shift| shift.is_clear()),
            rows,
        })
    }
}

fn begins(row: &PickingRow) -> f64 {
    let month = row.months.iter().map(|span| f64::from(span.from_month));
    let own = row.own.iter().flat_map(|year| year.days.first());
    let own = own.filter_map(|day| Some(f64::from(day.parse::<NaiveDate>().ok()?.month())));
    month.chain(own).fold(f64::INFINITY, f64::min)
}

/// What calendars print for a part: for that very part, else for one of its kind.
fn published(herb: &HerbKey, part: &str, hemisphere: Hemisphere) -> Vec<PublishedMonths> {
    let Some(entry) = formulary::herbs::find(herb.as_str()) else {
        return Vec::new();
    };
    let all = entry.picking();
    let kind = |of: &str| part::class_of(of);
    let is_own = all.iter().any(|one| one.part == part);
    let fits = |of: &str| {
        if is_own {
            of == part
        } else {
            kind(of) == kind(part)
        }
    };
    let fitting = all.into_iter().filter(|one| fits(one.part));
    let turned = |(from, to): &(u32, u32)| {
        let (from, to) = (*from, *to);
        MonthSpan::from(Span { from, to }.in_half(hemisphere))
    };
    fitting
        .map(|one| PublishedMonths {
            months: one.months.iter().map(turned).collect(),
            stage: one.stage,
            source: one.source,
            status: one.status,
        })
        .collect()
}

fn spans(published: &[PublishedMonths]) -> Vec<Span> {
    let printed = published.iter().flat_map(|one| &one.months);
    joined(printed.map(|span| Span {
        from: span.from_month,
        to: span.to_month,
    }))
}

fn shift(picks: &BTreeMap<(HerbKey, String), Picks>, hemisphere: Hemisphere) -> Option<Shift> {
    let mut found = BTreeMap::new();
    for ((herb, part), years) in picks {
        let spans = spans(&published(herb, part, hemisphere));
        for (year, days) in years {
            let days: Vec<f64> = days.iter().copied().map(day_of_year).collect();
            if let Some(after) = after_the_middle(&spans, &days) {
                found.insert((format!("{herb} {part}"), *year), after);
            }
        }
    }
    learned(&found)
}

fn row(
    known: &Known,
    part: String,
    years: &Picks,
    (hemisphere, moved): (Hemisphere, f64),
    today: NaiveDate,
) -> PickingRow {
    let published = published(&known.key, &part, hemisphere);
    let spans = spans(&published);
    let own = years.iter().rev().map(|(year, days)| OwnYear {
        year: *year,
        days: days.iter().map(ToString::to_string).collect(),
    });
    PickingRow {
        herb: known.key.to_string(),
        common: told::title(known),
        months: spans.iter().copied().map(MonthSpan::from).collect(),
        own: own.collect(),
        ready: ready(&spans, years, moved, today),
        published,
        part,
    }
}

/// What speaks for a part within three weeks: its months, moved by a clear shift, or the days of the maker's earlier years.
fn ready(spans: &[Span], years: &Picks, moved: f64, today: NaiveDate) -> Option<Ready> {
    let day = day_of_year(today);
    let ahead = AHEAD as f64;
    // Whether a span is on, or will be within the time ahead. One that lasts all year is news on no day.
    let on = |span: &Span| {
        let (begins, long) = span.days();
        if long >= super::YEAR {
            return None;
        }
        let since = (day - begins - moved).rem_euclid(super::YEAR);
        let until = super::YEAR - since;
        match since < long {
            true => Some(true),
            false if until <= ahead => Some(false),
            false => None,
        }
    };
    let is_now = spans.iter().any(|span| on(span) == Some(true));
    let next = spans.iter().find(|span| on(span) == Some(false));
    let begins_in = next.filter(|_| !is_now).and_then(|span| {
        let until = (span.days().0 + moved - day).rem_euclid(super::YEAR);
        let begins = today.checked_add_days(Days::new(until.round() as u64))?;
        Some(begins.month())
    });
    let earlier = years.iter().rev().filter(|(year, _)| **year < today.year());
    let is_near = |on: &&NaiveDate| (0.0..=ahead).contains(&around(day_of_year(**on) - day));
    let picked_on: Vec<String> = earlier
        .flat_map(|(_, days)| days.iter().filter(is_near))
        .map(ToString::to_string)
        .collect();
    (is_now || begins_in.is_some() || !picked_on.is_empty()).then_some(Ready {
        is_now,
        begins_in,
        picked_on,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn at(today: &str, moved: f64) -> Option<Ready> {
        let picks = [(2025, vec![day("2025-06-20"), day("2025-09-02")])];
        let spans = [Span { from: 6, to: 8 }];
        ready(&spans, &picks.into_iter().collect(), moved, day(today))
    }

    #[test]
    fn months_are_on_from_their_first_day_to_their_last_and_are_told_three_weeks_ahead() {
        assert_eq!(at("2026-05-10", 0.0), None);
        let ahead = at("2026-05-11", 0.0).unwrap();
        assert_eq!((ahead.is_now, ahead.begins_in), (false, Some(6)));
        assert!(ahead.picked_on.is_empty(), "20 June is further off");
        let first = at("2026-06-01", 0.0).unwrap();
        assert_eq!((first.is_now, first.begins_in), (true, None));
        assert_eq!(first.picked_on, ["2025-06-20"]);
        assert!(at("2026-08-31", 0.0).unwrap().is_now);
        let after = at("2026-09-01", 0.0).unwrap();
        assert_eq!((after.is_now, after.begins_in), (false, None));
        assert_eq!(
            after.picked_on,
            ["2025-09-02"],
            "one's own year speaks for it alone"
        );
        assert_eq!(at("2026-09-03", 0.0), None);
    }

    #[test]
    fn what_is_picked_all_year_is_no_news() {
        let spans = [Span { from: 1, to: 12 }];
        assert_eq!(ready(&spans, &Picks::new(), 0.0, day("2026-06-01")), None);
    }

    #[test]
    fn a_shift_moves_the_months_and_a_year_does_not_speak_for_itself() {
        assert_eq!(at("2026-05-11", 14.0), None);
        assert_eq!(at("2026-05-25", 14.0).unwrap().begins_in, Some(6));
        assert!(at("2026-09-14", 14.0).unwrap().is_now);
        assert_eq!(
            at("2025-09-01", 0.0),
            None,
            "the picks of this year are no earlier ones"
        );
    }
}
