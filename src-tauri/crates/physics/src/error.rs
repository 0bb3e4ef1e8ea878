//! The one way in which a number is refused.

use std::fmt;

use message::{Argument, Message, Unit, say};

/// A value outside the range in which it means something.
#[derive(Debug, Clone, PartialEq)]
pub struct OutOfRange {
    /// What was measured or typed, inside a sentence.
    pub what: Message,
    /// The refused value.
    pub value: f64,
    /// The least that is accepted.
    pub low: f64,
    /// The most that is accepted; infinite where there is no end.
    pub high: f64,
    /// What all three are counted in.
    pub unit: Unit,
}

impl OutOfRange {
    /// A finished sentence that names the accepted range.
    pub fn message(&self) -> Message {
        say!(
            "refused-range",
            what = self.what.clone(),
            range = range(self.low, self.high, self.unit),
            given = given(self.value),
        )
    }
}

/// A range as it follows "must be".
fn range(low: f64, high: f64, unit: Unit) -> Message {
    if high.is_infinite() {
        return say!("range-at-least", low = Argument::exact(low, unit));
    }
    // Grams and millilitres change their sign on the way up, so both ends bear one.
    let is_said_once = !matches!(unit, Unit::Gram | Unit::Millilitre) || high < 10_000.0;
    let of_low = if is_said_once { Unit::None } else { unit };
    let high = Argument::exact(high, unit);
    if low == f64::MIN_POSITIVE {
        return say!("range-above", high);
    }
    say!("range-between", low = Argument::exact(low, of_low), high)
}

/// What was given, with all its digits; a word where it is no number.
fn given(value: f64) -> Argument {
    match value.is_finite() {
        true => Argument::exact(value, Unit::None),
        false => Argument::from(say!("no-number")),
    }
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(out)
    }
}

impl std::error::Error for OutOfRange {}

/// Returns `value` when it is finite and `low <= value <= high`; all three in `unit`.
///
/// # Errors
/// [`OutOfRange`] with the given words otherwise.
pub fn within(
    what: Message,
    value: f64,
    low: f64,
    high: f64,
    unit: Unit,
) -> Result<f64, OutOfRange> {
    if value.is_finite() && (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange {
            what,
            value,
            low,
            high,
            unit,
        })
    }
}

impl From<OutOfRange> for message::Failure {
    fn from(error: OutOfRange) -> Self {
        Self::new(message::Code::Invalid, error.message())
    }
}
