//! A pH that was measured: how far out it may be, and whether acid still protects.
//!
//! What is computed of the plain acid lives in [`super::acid`]; it is a floor, and only this tells the real one.

use crate::{
    error::{OutOfRange, within},
    interval::Interval,
};
use message::{Unit, say};

/// The highest pH at which acid protects a food, at equilibrium.
///
/// *Source*: 21 CFR 114.3(b).
pub const ACID_PROTECTS_TO: f64 = 4.6;

/// What a pH was read with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum ReadWith {
    /// A strip of paper beside its colours.
    Strip,
    /// A meter, calibrated on the same day.
    Meter,
}

impl ReadWith {
    /// How far out a reading may be.
    ///
    /// *Source*: a strip by 0.6, for 21 CFR 114.80(a)(2) lets any method show that a food is at or below 4.6 as long
    /// as it reads no more than 4.0, and wants a meter above that; a meter by 0.1 (common practice, no source).
    fn out_by(self) -> f64 {
        match self {
            Self::Strip => 0.6,
            Self::Meter => 0.1,
        }
    }
}

/// A pH as it was read.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct PhReading {
    /// What the strip or the meter showed.
    pub value: f64,
    /// With which of them; the coarser is taken where nobody said.
    #[serde(default)]
    pub read_with: Option<ReadWith>,
}

impl PhReading {
    /// A reading.
    ///
    /// # Errors
    /// [`OutOfRange`] for a pH outside 0 to 14.
    pub fn new(value: f64, read_with: Option<ReadWith>) -> Result<Self, OutOfRange> {
        let value = within(say!("what-ph"), value, 0.0, 14.0, Unit::None)?;
        Ok(Self { value, read_with })
    }

    /// How far out it may be, either way.
    pub fn out_by(self) -> f64 {
        self.read_with.unwrap_or(ReadWith::Strip).out_by()
    }

    /// Where the real pH lies.
    ///
    /// ```
    /// use physics::mixture::ph::{PhReading, ReadWith};
    /// // 21 CFR 114.80(a)(2): at 4.0 a strip still shows that it is at or below 4.6.
    /// let strip = PhReading::new(4.0, Some(ReadWith::Strip))?;
    /// assert!((strip.interval().high - 4.6).abs() < 1e-9);
    /// # Ok::<(), physics::OutOfRange>(())
    /// ```
    pub fn interval(self) -> Interval {
        Interval {
            low: (self.value - self.out_by()).max(0.0),
            value: self.value,
            high: (self.value + self.out_by()).min(14.0),
        }
    }

    /// Whether acid protects wherever the real pH lies.
    pub fn is_acid_enough(self) -> bool {
        // The sum of two decimals may be off in the last digit.
        self.interval().high <= ACID_PROTECTS_TO + 1e-9
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(value: f64, read_with: Option<ReadWith>) -> PhReading {
        PhReading::new(value, read_with).unwrap()
    }

    #[test]
    fn a_strip_shows_it_up_to_4_and_a_meter_up_to_4_and_a_half() {
        for (with, last) in [(ReadWith::Strip, 4.0), (ReadWith::Meter, 4.5)] {
            assert!(read(last, Some(with)).is_acid_enough(), "{with:?}");
            assert!(!read(last + 0.05, Some(with)).is_acid_enough(), "{with:?}");
        }
        // Nobody said with what: then it may have been the coarser.
        assert!(read(4.0, None).is_acid_enough());
        assert!(!read(4.3, None).is_acid_enough());
    }

    #[test]
    fn no_reading_lies_outside_the_scale() {
        assert!(PhReading::new(14.1, None).is_err() && PhReading::new(-0.1, None).is_err());
        assert!(PhReading::new(f64::NAN, None).is_err());
        let (sour, base) = (read(0.2, None).interval(), read(14.0, None).interval());
        assert_eq!((sour.low, base.high), (0.0, 14.0));
    }
}
