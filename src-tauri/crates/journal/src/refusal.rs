//! The one way in which a noun is refused.

use chrono::Datelike;
use message::{Argument, Message, Refusal, Unit, say};
use physics::error::within;

pub(crate) fn number(
    field: &'static str,
    what: Message,
    value: f64,
    low: f64,
    high: f64,
    unit: Unit,
) -> Result<(), Refusal> {
    within(what, value, low, high, unit)
        .map(|_| ())
        .map_err(|out| Refusal::new(field, out.message()))
}

pub(crate) fn text(
    field: &'static str,
    what: Message,
    value: &str,
    longest: usize,
) -> Result<(), Refusal> {
    if value.trim().is_empty() {
        return Err(Refusal::new(field, say!("refused-empty", what)));
    }
    at_most(field, what, value, longest)
}

/// A name stands on a line of a list, of a label and of the log, so it is one line itself.
pub(crate) fn one_line(field: &'static str, value: &str) -> Result<(), Refusal> {
    let breaks = [
        '\n', '\r', '\u{b}', '\u{c}', '\u{85}', '\u{2028}', '\u{2029}',
    ];
    if value.contains(breaks) {
        return Err(Refusal::new(field, say!("name-one-line")));
    }
    Ok(())
}

pub(crate) fn note(
    field: &'static str,
    what: Message,
    value: Option<&str>,
    longest: usize,
) -> Result<(), Refusal> {
    value.map_or(Ok(()), |value| at_most(field, what, value, longest))
}

/// Any day that a date with four digits for the year can name, as every version demanded it.
pub(crate) fn day(field: &'static str, day: impl Datelike) -> Result<(), Refusal> {
    let year = day.year();
    if (0..=9999).contains(&year) {
        return Ok(());
    }
    let message = say!("refused-year", year = Argument::figure(year.to_string()));
    Err(Refusal::new(field, message))
}

fn at_most(field: &'static str, what: Message, value: &str, longest: usize) -> Result<(), Refusal> {
    let count = value.chars().count();
    if count > longest {
        return Err(Refusal::new(
            field,
            say!("refused-too-long", what, longest, count),
        ));
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_refused_number_names_its_field_and_its_range() {
        let refusal =
            number("gross_g", say!("what-weight"), -1.0, 0.0, 5.0, Unit::Gram).unwrap_err();
        let range = say!(
            "range-between",
            low = Argument::exact(0.0, Unit::None),
            high = Argument::exact(5.0, Unit::Gram),
        );
        assert_eq!(
            refusal.message,
            say!(
                "refused-range",
                what = say!("what-weight"),
                range,
                given = Argument::exact(-1.0, Unit::None),
            )
        );
        assert_eq!(refusal.field, "gross_g");
    }

    #[test]
    fn blank_text_is_refused() {
        assert!(text("name", say!("what-name"), " \t", 10).is_err());
        assert!(text("name", say!("what-name"), "12345678901", 10).is_err());
        assert!(text("name", say!("what-name"), "Ölberg", 6).is_ok());
    }
}
