//! A figure with its interval.

use message::{Argument, Unit};

/// A value with its 90 % interval; equal ends where nothing is uncertain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figure {
    /// The lower end.
    pub low: f64,
    /// The best single value.
    pub value: f64,
    /// The upper end.
    pub high: f64,
}

impl Figure {
    /// A figure that is known.
    #[must_use]
    pub const fn exact(value: f64) -> Self {
        Self {
            low: value,
            value,
            high: value,
        }
    }

    pub(crate) fn said(self, unit: Unit) -> Argument {
        Argument::range(self.low, self.value, self.high, unit)
    }
}
