//! The one way in which a noun is refused.

use chrono::Datelike;
use message::{Argument, Message};
use physics::error::within;

/// Why something cannot be written down.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{message}")]
pub struct Refusal {
    /// The field of the request that is at fault.
    pub field: &'static str,
    /// A finished sentence that names the accepted range.
    pub message: String,
}

impl Refusal {
    /// A refusal of `field` with a finished sentence.
    pub fn new(field: &'static str, message: impl Into<String>) -> Self {
        Self {
            field,
            message: message.into(),
        }
    }
}

pub(crate) fn number(
    field: &'static str,
    quantity: &'static str,
    value: f64,
    low: f64,
    high: f64,
    allowed: &'static str,
) -> Result<(), Refusal> {
    within(quantity, value, low, high, allowed)
        .map(|_| ())
        .map_err(|out| Refusal::new(field, sentence(&out.to_string())))
}

pub(crate) fn text(
    field: &'static str,
    words: &str,
    value: &str,
    longest: usize,
) -> Result<(), Refusal> {
    if value.trim().is_empty() {
        return Err(Refusal::new(field, format!("{words} must not be empty.")));
    }
    at_most(field, words, value, longest)
}

/// A name stands on a line of a list, of a label and of the log, so it is one line itself.
pub(crate) fn one_line(field: &'static str, value: &str) -> Result<(), Refusal> {
    let breaks = [
        '\n', '\r', '\u{b}', '\u{c}', '\u{85}', '\u{2028}', '\u{2029}',
    ];
    if value.contains(breaks) {
        return Err(Refusal::new(field, Message::new("name-one-line")));
    }
    Ok(())
}

pub(crate) fn note(
    field: &'static str,
    words: &str,
    value: Option<&str>,
    longest: usize,
) -> Result<(), Refusal> {
    value.map_or(Ok(()), |value| at_most(field, words, value, longest))
}

/// Any day that a date with four digits for the year can name, as every version demanded it.
pub(crate) fn day(field: &'static str, day: impl Datelike) -> Result<(), Refusal> {
    let year = day.year();
    if (0..=9999).contains(&year) {
        return Ok(());
    }
    let message = Message::new("refused-year").with("year", Argument::figure(year.to_string()));
    Err(Refusal::new(field, message))
}

fn at_most(field: &'static str, words: &str, value: &str, longest: usize) -> Result<(), Refusal> {
    let count = value.chars().count();
    if count > longest {
        return Err(Refusal::new(
            field,
            format!("{words} may have at most {longest} characters; this has {count}."),
        ));
    }
    Ok(())
}

fn sentence(phrase: &str) -> String {
    let mut letters = phrase.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).chain(['.']).collect()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_refused_number_is_a_finished_sentence() {
        let refusal =
            number("gross_g", "the weight", -1.0, 0.0, 5.0, "between 0 and 5 g").unwrap_err();
        assert_eq!(
            refusal.message,
            "The weight must be between 0 and 5 g; -1 is not."
        );
        assert_eq!(refusal.field, "gross_g");
    }

    #[test]
    fn blank_text_is_refused() {
        assert!(text("name", "The name", " \t", 10).is_err());
        assert!(text("name", "The name", "12345678901", 10).is_err());
        assert!(text("name", "The name", "Ölberg", 6).is_ok());
    }
}
