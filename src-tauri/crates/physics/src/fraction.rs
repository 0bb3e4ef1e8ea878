//! Fractions that must never be taken for one another.

use crate::error::{OutOfRange, within};
use message::{Unit, say};

macro_rules! fraction {
    ($(#[$doc:meta])* $name:ident, $what:literal, $low:literal ..= $high:literal, $unit:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// From a fraction (1.0 is the whole).
            ///
            /// # Errors
            /// [`OutOfRange`] when the value is not finite or outside the range.
            pub fn new(fraction: f64) -> Result<Self, OutOfRange> {
                within(say!($what), 100.0 * fraction, 100.0 * $low, 100.0 * $high, Unit::$unit)
                    .map(|_| Self(fraction))
            }

            /// From a percentage (100.0 is the whole).
            ///
            /// # Errors
            /// [`OutOfRange`] when the value is not finite or outside the range.
            pub fn from_percent(percent: f64) -> Result<Self, OutOfRange> {
                within(say!($what), percent, 100.0 * $low, 100.0 * $high, Unit::$unit)
                    .map(|percent| Self(percent / 100.0))
            }

            /// The fraction, 1.0 being the whole.
            pub fn get(self) -> f64 {
                self.0
            }

            /// The percentage, 100.0 being the whole.
            pub fn percent(self) -> f64 {
                100.0 * self.0
            }
        }
    };
}

fraction!(
    /// Mass of one component over the mass of the whole.
    MassFraction, "what-share-by-mass", 0.0..=1.0, Percent
);
fraction!(
    /// Volume of pure ethanol at the reference temperature over the volume of
    /// the liquid at the same temperature, as on a label (% vol).
    Strength, "what-strength", 0.0..=1.0, PercentVol
);
fraction!(
    /// Water over the whole plant (wet basis, w.b.).
    WetBasis, "what-moisture", 0.0..=0.999, PercentMass
);
fraction!(
    /// Water over dry matter (dry basis, d.b.).
    DryBasis, "what-moisture-on-dry-basis", 0.0..=999.0, PercentMass
);

impl WetBasis {
    /// The same moisture on dry basis: `M = m / (1 - m)`.
    pub fn dry_basis(self) -> DryBasis {
        DryBasis(self.0 / (1.0 - self.0))
    }
}
