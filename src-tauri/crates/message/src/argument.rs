//! What stands in the places of a message.

use chrono::{NaiveDate, NaiveTime};
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
    /// Avoirdupois ounces; pounds from 32 oz. Only where a reader chose US units.
    Ounce,
    /// US fluid ounces.
    FluidOunce,
    /// Millimetres.
    Millimetre,
    /// Percent of whatever the sentence says.
    Percent,
    /// Percent of alcohol by volume at 20 °C.
    PercentVol,
    /// Degrees Celsius.
    Celsius,
    /// Percent of the weight.
    PercentMass,
    /// Acid in a liquid.
    GramPer100Ml,
    /// Sugar in a wine.
    GramPerLitre,
    /// A ratio of liquid to herb.
    MillilitrePerGram,
    /// An area.
    SquareMetre,
    /// Degrees of an angle.
    Degrees,
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

/// The avoirdupois ounce by definition (Refinement of Values for the Yard and the Pound; US National Bureau of
/// Standards; 1959; from memory).
const GRAMS_IN_AN_OUNCE: f64 = 28.349_523_125;
/// The US fluid ounce by definition (Handbook 44, Appendix C; National Institute of Standards and Technology; 2020;
/// from memory).
const MILLILITRES_IN_A_FLUID_OUNCE: f64 = 29.573_529_562_5;

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
    /// A figure that was rounded already, with a point as its decimal mark.
    Figure(String),
    /// A whole number, by which the catalogue chooses between singular and plural.
    Count(u64),
    /// A number with its unit.
    Amount(Amount),
    /// A number with all its digits, as it was typed or as a rule states it.
    Exact(f64, Unit),
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

    /// A number with all its digits, as it was typed or as a rule states it; what is no number is said as "?".
    pub fn exact(value: f64, unit: Unit) -> Self {
        match value.is_finite() {
            true => Self::Exact(value, unit),
            false => Self::Own("?".to_owned()),
        }
    }

    /// A number to a tenth, as it stands beside the limit that it is held to.
    pub fn tenths(value: f64, unit: Unit) -> Self {
        Self::exact((value * 10.0).round() / 10.0, unit)
    }

    /// Digits that were rounded by whoever knows how many they deserve, such as "0.94".
    pub fn figure(digits: impl Into<String>) -> Self {
        Self::Figure(digits.into())
    }

    /// A day.
    pub fn day(day: NaiveDate) -> Self {
        Self::Day(day)
    }

    /// An hour and a minute of the day.
    pub fn time(time: NaiveTime) -> Self {
        Self::Own(time.format("%H:%M").to_string())
    }

    /// "a, b and c".
    pub fn all_of(items: impl IntoIterator<Item = Argument>) -> Self {
        Self::List(items.into_iter().collect(), Joint::And)
    }

    /// "a, b or c".
    pub fn one_of(items: impl IntoIterator<Item = Argument>) -> Self {
        Self::List(items.into_iter().collect(), Joint::Or)
    }

    /// Grams as ounces and millilitres as US fluid ounces, whatever it stands in.
    pub(crate) fn count_in_ounces(&mut self) {
        let ounce = |unit: Unit| match unit {
            Unit::Gram => Some((Unit::Ounce, GRAMS_IN_AN_OUNCE)),
            Unit::Millilitre => Some((Unit::FluidOunce, MILLILITRES_IN_A_FLUID_OUNCE)),
            _ => None,
        };
        match self {
            Self::Amount(amount) => {
                if let Some((unit, by)) = ounce(amount.unit) {
                    let [value, low, high] =
                        [amount.value, amount.low, amount.high].map(|figure| figure / by);
                    *amount = Amount {
                        value,
                        low,
                        high,
                        unit,
                    };
                }
            }
            // What was typed or ruled with all its digits is rounded once it is counted in something else.
            Self::Exact(value, unit) => {
                if let Some((unit, by)) = ounce(*unit) {
                    *self = Self::amount(*value / by, unit);
                }
            }
            Self::List(items, _) => items.iter_mut().for_each(Self::count_in_ounces),
            Self::Said(said) => said.count_in_ounces(),
            _ => {}
        }
    }

    pub(crate) fn keep_short(&mut self) {
        /// Longer than any name that is kept.
        const LONGEST: usize = 200;
        match self {
            Self::Own(text) if text.chars().count() > LONGEST => {
                *text = text.chars().take(LONGEST).chain(['…']).collect();
            }
            Self::List(items, _) => items.iter_mut().for_each(Self::keep_short),
            Self::Said(said) => said.keep_short(),
            _ => {}
        }
    }

    /// A message inside a message.
    pub fn message(message: Message) -> Self {
        let Message(said) = message;
        // So that a sentence that begins with it leaves its first letter as it was typed.
        match said.own() {
            Some(own) => Self::own(own),
            None => Self::Said(Box::new(said)),
        }
    }
}

impl From<u64> for Argument {
    fn from(count: u64) -> Self {
        Self::Count(count)
    }
}

impl From<usize> for Argument {
    fn from(count: usize) -> Self {
        // No program of ours counts beyond 64 bits.
        Self::Count(count as u64)
    }
}

impl From<u32> for Argument {
    fn from(count: u32) -> Self {
        Self::Count(count.into())
    }
}

impl From<NaiveDate> for Argument {
    fn from(day: NaiveDate) -> Self {
        Self::Day(day)
    }
}

impl From<Message> for Argument {
    fn from(message: Message) -> Self {
        Self::message(message)
    }
}
