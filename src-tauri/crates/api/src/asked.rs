//! Reads the fields that many requests have: times, limits, texts that may be cleared.

use std::str::FromStr;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate, SubsecRound as _};
use message::{Argument, Message};

use crate::Failure;
use crate::wire::{Lot, LotKind};

/// The most rows that one list carries.
const MOST: u32 = 1000;

/// How many rows a list may have.
pub(crate) fn limit(asked: Option<u32>, usual: u32) -> Result<usize, Failure> {
    match asked.unwrap_or(usual) {
        limit @ 1..=MOST => Ok(limit as usize),
        other => Err(Failure::invalid(
            "limit",
            format!("The limit must be between 1 and {MOST}; {other} is not."),
        )),
    }
}

/// More grams than a home picks of one plant at a time; common practice, no source.
const FAR_FROM_A_HOME_G: f64 = 20_000.0;

/// Asks about a mass that no home picks, unless it was asked about before: it is mostly a slip of the finger
/// or another unit.
pub(crate) fn about_mass(field: &str, mass_g: f64, confirmed: Option<bool>) -> Result<(), Failure> {
    if mass_g <= FAR_FROM_A_HOME_G || confirmed.unwrap_or(false) {
        return Ok(());
    }
    let message = Message::new("home-seldom-picks-so-much").with("mass", Argument::grams(mass_g));
    Err(Failure::odd(field, message))
}

/// A time with its offset.
pub(crate) fn time(field: &str, text: &str) -> Result<DateTime<FixedOffset>, Failure> {
    DateTime::parse_from_rfc3339(text).map_err(|_| {
        let message = format!(
            "The time must be a date and time with its offset, like 2026-07-14T09:30:00+02:00; {text:?} is not."
        );
        Failure::invalid(field, message)
    })
}

/// The time of something that has happened, `now` unless it was typed.
pub(crate) fn past(
    field: &str,
    typed: Option<&str>,
    now: DateTime<FixedOffset>,
) -> Result<DateTime<FixedOffset>, Failure> {
    // Nobody reads a clock finer than that.
    let Some(text) = typed else {
        return Ok(now.trunc_subsecs(0));
    };
    let time = time(field, text)?;
    // A day of grace: a phone that crossed a date line is not wrong.
    if time > now + Duration::days(1) {
        let now = now.format("%Y-%m-%d %H:%M");
        return Err(Failure::invalid(
            field,
            format!("The time must not lie in the future; it is {now} now and this says {text}."),
        ));
    }
    Ok(time)
}

/// A day of the calendar.
pub(crate) fn date(field: &str, text: &str) -> Result<NaiveDate, Failure> {
    text.parse().map_err(|_| {
        Failure::invalid(
            field,
            format!("The day must be like 2026-07-14; {text:?} is not."),
        )
    })
}

/// A text without outer spaces; nothing when nothing is left of it.
pub(crate) fn text(text: Option<String>) -> Option<String> {
    text.map(|text| text.trim().to_owned())
        .filter(|text| !text.is_empty())
}

/// A correction of a text: left out it stays, empty it is cleared.
pub(crate) fn corrected(field: &mut Option<String>, asked: Option<String>) {
    if asked.is_some() {
        *field = text(asked);
    }
}

/// The lot in a field.
pub(crate) fn lot(field: &str, lot: &Lot) -> Result<journal::Lot, Failure> {
    Ok(match lot.kind {
        LotKind::Harvest => journal::Lot::Harvest(id(field, &lot.id)?),
        LotKind::Tray => journal::Lot::Tray(id(field, &lot.id)?),
    })
}

/// The id in a field.
pub(crate) fn id<T: FromStr<Err = journal::Refusal>>(
    field: &str,
    text: &str,
) -> Result<T, Failure> {
    text.parse()
        .map_err(|refusal| Failure::from(refusal).renamed(field))
}
