//! A value with the range it may lie in.

/// A central value and the 90 % interval around it; equal ends where nothing is uncertain.
///
/// Invariant: `low <= value <= high`, all finite.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize, serde::Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Interval {
    /// Lower end of the 90 % interval.
    pub low: f64,
    /// The best single figure.
    pub value: f64,
    /// Upper end of the 90 % interval.
    pub high: f64,
}

impl Interval {
    /// A value without uncertainty.
    pub fn exact(value: f64) -> Self {
        Self {
            low: value,
            value,
            high: value,
        }
    }

    /// The interval that holds `value` and both ends, in whatever order the ends come.
    pub fn spanning(value: f64, one_end: f64, other_end: f64) -> Self {
        Self {
            low: value.min(one_end).min(other_end),
            value,
            high: value.max(one_end).max(other_end),
        }
    }

    /// The image under a monotone function, rising or falling.
    pub fn map_monotone(self, f: impl Fn(f64) -> f64) -> Self {
        Self::spanning(f(self.value), f(self.low), f(self.high))
    }

    /// Whether both ends are the value itself.
    pub fn is_exact(self) -> bool {
        self.low == self.high
    }
}
