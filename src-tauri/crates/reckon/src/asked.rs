//! Reads the fields that many requests have: times, limits, texts that may be cleared.

use std::str::FromStr;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate, SubsecRound as _};
use journal::HerbKey;
use message::{Argument, At as _, Failure, Unit, say};
use physics::error::within;
use store::Reading;

use crate::herb::Known;
use crate::wire::{Lot, LotKind};

/// The most rows that one list carries.
const MOST: u32 = 1000;

/// How many rows a list may have.
pub fn limit(asked: Option<u32>, usual: u32) -> Result<usize, Failure> {
    let limit = asked.unwrap_or(usual);
    within(
        say!("what-limit"),
        f64::from(limit),
        1.0,
        f64::from(MOST),
        Unit::None,
    )
    .at("limit")?;
    Ok(limit as usize)
}

/// More grams than a home picks of one plant at a time; common practice, no source.
const FAR_FROM_A_HOME_G: f64 = 20_000.0;

/// Asks about a mass that no home picks, unless it was asked about before: it is mostly a slip of the finger
/// or another unit.
pub fn about_mass(field: &str, mass_g: f64, confirmed: Option<bool>) -> Result<(), Failure> {
    if mass_g <= FAR_FROM_A_HOME_G || confirmed.unwrap_or(false) {
        return Ok(());
    }
    let message = say!("home-seldom-picks-so-much", mass = Argument::grams(mass_g));
    Err(Failure::odd(field, message))
}

/// A time with its offset.
pub fn time(field: &str, text: &str) -> Result<DateTime<FixedOffset>, Failure> {
    DateTime::parse_from_rfc3339(text)
        .map_err(|_| Failure::invalid(field, say!("time-spelling", text = Argument::own(text))))
}

/// The time of something that has happened, `now` unless it was typed.
pub fn past(
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
        let message = say!(
            "time-in-future",
            day = now.date_naive(),
            time = Argument::own(now.format("%H:%M").to_string()),
            text = Argument::own(text)
        );
        return Err(Failure::invalid(field, message));
    }
    Ok(time)
}

/// A day of the calendar.
pub fn date(field: &str, text: &str) -> Result<NaiveDate, Failure> {
    text.parse()
        .map_err(|_| Failure::invalid(field, say!("day-spelling", text = Argument::own(text))))
}

/// A text without outer spaces; nothing when nothing is left of it.
pub fn text(text: Option<String>) -> Option<String> {
    text.map(|text| text.trim().to_owned())
        .filter(|text| !text.is_empty())
}

/// A correction of a field: left out it stays.
pub fn set<T>(field: &mut T, asked: Option<T>) {
    if let Some(asked) = asked {
        *field = asked;
    }
}

/// A correction of a name: left out it stays.
pub fn renamed(name: &mut String, asked: Option<String>) {
    set(name, asked.map(|asked| asked.trim().to_owned()));
}

/// A correction of a text: left out it stays, empty it is cleared.
pub fn corrected(field: &mut Option<String>, asked: Option<String>) {
    if asked.is_some() {
        *field = text(asked);
    }
}

/// The lot in a field.
pub fn lot(field: &str, lot: &Lot) -> Result<journal::Lot, Failure> {
    Ok(match lot.kind {
        LotKind::Harvest => journal::Lot::Harvest(id(field, &lot.id)?),
        LotKind::Tray => journal::Lot::Tray(id(field, &lot.id)?),
    })
}

/// The id in a field.
pub fn id<T: FromStr<Err = journal::Refusal>>(field: &str, text: &str) -> Result<T, Failure> {
    text.parse()
        .map_err(|refusal| Failure::from(refusal).renamed(field))
}

/// The id in a field that may be left out.
pub fn id_if_any<T: FromStr<Err = journal::Refusal>>(
    field: &str,
    text: Option<&str>,
) -> Result<Option<T>, Failure> {
    text.map(|text| id(field, text)).transpose()
}

/// The herb that a list is to name alone.
pub fn herb_if_any(reading: &Reading<'_>, asked: Option<&str>) -> Result<Option<HerbKey>, Failure> {
    let known = asked.map(|herb| Known::asked(reading, herb)).transpose()?;
    Ok(known.map(|known| known.key))
}
