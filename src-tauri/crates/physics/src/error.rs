//! The one way in which a number is refused.

/// A value outside the range in which it means something.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{quantity} must be {allowed}; {} is not", plain(*value))]
pub struct OutOfRange {
    /// What was measured or typed, in the maker's words.
    pub quantity: &'static str,
    /// The refused value, in the unit that `allowed` names.
    pub value: f64,
    /// The accepted range with its unit, as a phrase that follows "must be".
    pub allowed: &'static str,
}

/// A number as a sentence can carry it: 1e308 would be written with 309 digits.
fn plain(value: f64) -> String {
    if value != 0.0 && value.is_finite() && !(1e-6..1e12).contains(&value.abs()) {
        format!("{value:e}")
    } else {
        value.to_string()
    }
}

/// Returns `value` when it is finite and `low <= value <= high`.
///
/// # Errors
/// [`OutOfRange`] with the given words otherwise.
pub fn within(
    quantity: &'static str,
    value: f64,
    low: f64,
    high: f64,
    allowed: &'static str,
) -> Result<f64, OutOfRange> {
    if value.is_finite() && (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange {
            quantity,
            value,
            allowed,
        })
    }
}
