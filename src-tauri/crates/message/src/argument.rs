//! What stands in the places of a message.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::{Message, Said};

/// What an amount is counted in; its sign and its plural stand in the catalogue (`units.ftl`).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// A bare number, such as a pH.
    None,
    /// Grams; kilograms from 10,000 g.
    Gram,
    /// Millilitres; litres from 10,000 mL.
    Millilitre,
    /// Millimetres.
    Millimetre,
    /// Percent of whatever the sentence says.
    Percent,
    /// Percent of alcohol by volume at 20 °C.
    PercentVol,
    /// Degrees Celsius.
    Celsius,
    /// Acid or sugar in a liquid.
    GramPer100Ml,
    /// Hours.
    Hours,
    /// Days.
    Days,
    /// Weeks.
    Weeks,
    /// Months.
    Months,
    /// Years.
    Years,
}

/// A number with its unit and, where it is not certain, its interval.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Amount {
    /// The figure.
    pub value: f64,
    /// The lower end of its interval; equal to `value` where nothing is uncertain.
    pub low: f64,
    /// The upper end.
    pub high: f64,
    /// What it is counted in.
    pub unit: Unit,
}

/// The word before the last of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Joint {
    /// "a, b and c".
    And,
    /// "a, b or c".
    Or,
}

/// An argument of a message.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Argument {
    /// The maker's own words, and what is cited: never translated.
    Own(String),
    /// A name or a phrase that the tables hold, in English as it stands inside a sentence.
    Name(String),
    /// A figure that was rounded already, with a point as its decimal mark.
    Figure(String),
    /// A whole number, by which the catalogue chooses between singular and plural.
    Count(u64),
    /// A number with its unit.
    Amount(Amount),
    /// A day of the calendar.
    Day(NaiveDate),
    /// Several joined by commas and a word.
    List(Vec<Argument>, Joint),
    /// A message inside a message.
    Said(Box<Said>),
}

impl Argument {
    /// What the maker wrote, or a Latin name or a citation: it passes unchanged.
    pub fn own(text: impl Into<String>) -> Self {
        Self::Own(text.into())
    }

    /// A herb of the tables by its English common name; one that the maker named is [`Argument::own`].
    pub fn herb(common: &str) -> Self {
        Self::Name(crate::in_sentence(common))
    }

    /// A part, preparation, state or field as the core's tables name it in English.
    pub fn name(english: impl Into<String>) -> Self {
        Self::Name(english.into())
    }

    /// A whole number.
    pub fn count(count: u64) -> Self {
        Self::Count(count)
    }

    /// A certain number with its unit.
    pub fn amount(value: f64, unit: Unit) -> Self {
        Self::range(value, value, value, unit)
    }

    /// A number with its interval and its unit; what is no number is said as "?".
    pub fn range(low: f64, value: f64, high: f64, unit: Unit) -> Self {
        // JSON knows no infinity, and no sentence of ours can say one.
        if ![low, value, high].into_iter().all(f64::is_finite) {
            return Self::Own("?".to_owned());
        }
        Self::Amount(Amount {
            value,
            low,
            high,
            unit,
        })
    }

    /// Grams.
    pub fn grams(value: f64) -> Self {
        Self::amount(value, Unit::Gram)
    }

    /// Millilitres.
    pub fn millilitres(value: f64) -> Self {
        Self::amount(value, Unit::Millilitre)
    }

    /// Percent.
    pub fn percent(value: f64) -> Self {
        Self::amount(value, Unit::Percent)
    }

    /// Percent of alcohol by volume at 20 °C.
    pub fn strength(value: f64) -> Self {
        Self::amount(value, Unit::PercentVol)
    }

    /// A number without a unit, such as a pH.
    pub fn number(value: f64) -> Self {
        Self::amount(value, Unit::None)
    }

    /// Digits that were rounded by whoever knows how many they deserve, such as "0.94".
    pub fn figure(digits: impl Into<String>) -> Self {
        Self::Figure(digits.into())
    }

    /// A day.
    pub fn day(day: NaiveDate) -> Self {
        Self::Day(day)
    }

    /// "a, b and c".
    pub fn all_of(items: impl IntoIterator<Item = Argument>) -> Self {
        Self::List(items.into_iter().collect(), Joint::And)
    }

    /// "a, b or c".
    pub fn one_of(items: impl IntoIterator<Item = Argument>) -> Self {
        Self::List(items.into_iter().collect(), Joint::Or)
    }

    /// A message inside a message.
    pub fn message(message: Message) -> Self {
        match message {
            Message::Plain(text) => Self::Name(text),
            Message::Said(said) => Self::Said(Box::new(said)),
        }
    }
}
