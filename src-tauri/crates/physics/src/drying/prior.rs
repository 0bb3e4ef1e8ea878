//! What is believed of a lot's dry matter before it is weighed again.

use super::sample::OvenSample;
use crate::{
    error::{OutOfRange, within},
    interval::Interval,
    quantity::Mass,
};
use message::{Unit, say};
use uom::si::mass::gram;

/// The 95th percentile of the standard normal distribution: both ends of a 90 % interval.
pub(crate) const Z90: f64 = 1.644_853_626_951_472_7;

/// SD of ln(dry-matter fraction) between one maker's plants and the table's, engineering default.
const NEW_USER_SD: f64 = 0.12;

/// The least SD of ln(dry-matter fraction) that a maker's own figures are believed to have, engineering default.
const OWN_SD: f64 = 0.02;

/// A normal distribution of ln(dry-matter fraction), the fraction being dry matter over fresh mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DryMatterPrior {
    pub(crate) mean: f64,
    pub(crate) sd: f64,
}

impl DryMatterPrior {
    /// From the mean and the SD of ln(dry-matter fraction).
    ///
    /// # Errors
    /// [`OutOfRange`] for a mean outside -6 to -0.01 (0.25 to 99 % dry matter) or an
    /// SD outside 0.001 to 1.5.
    pub fn new(mean: f64, sd: f64) -> Result<Self, OutOfRange> {
        Ok(Self {
            mean: within(
                say!("what-mean-of-log-dry-matter"),
                mean,
                -6.0,
                -0.01,
                Unit::None,
            )?,
            sd: within(
                say!("what-spread-of-log-dry-matter"),
                sd,
                0.001,
                1.5,
                Unit::None,
            )?,
        })
    }

    /// From the water that a maker found in their own plants, per cent on wet basis: the usual figure, and the least
    /// and the most as a 90 % interval.
    ///
    /// # Errors
    /// [`OutOfRange`] for figures that do not rise or lie outside 1 to 99 %.
    pub fn of_own_water(percent: Interval) -> Result<Self, OutOfRange> {
        let ln_dry = |what, percent, least, most| {
            let inside = within(what, percent, least, most, Unit::Percent)?;
            Ok::<f64, OutOfRange>(libm::log(1.0 - inside / 100.0))
        };
        let mean = ln_dry(say!("what-usual-water"), percent.value, 1.0, 99.0)?;
        let driest = ln_dry(say!("what-least-water"), percent.low, 1.0, percent.value)?;
        let wettest = ln_dry(say!("what-most-water"), percent.high, percent.value, 99.0)?;
        let sd = (driest - wettest) / (2.0 * Z90);
        Self::new(mean, sd.max(OWN_SD))
    }

    /// The mean of ln(dry-matter fraction).
    pub fn mean(self) -> f64 {
        self.mean
    }

    /// The SD of ln(dry-matter fraction).
    pub fn sd(self) -> f64 {
        self.sd
    }

    /// The same prior for a maker whose plants were never measured: variance + 0.12 squared.
    ///
    /// Source: engineering default; tables tell how herbs differ, not how gardens do.
    #[must_use]
    pub fn widened_for_new_user(self) -> Self {
        Self {
            mean: self.mean,
            sd: libm::sqrt(self.sd * self.sd + NEW_USER_SD * NEW_USER_SD),
        }
    }

    /// The prior and an oven sample of the same lot taken together.
    ///
    /// Both are normal in ln(dry-matter fraction), so the precisions add.
    #[must_use]
    pub fn with_sample(self, sample: OvenSample) -> Self {
        let (measured, measured_sd) = sample.ln_dry_matter_fraction();
        let (a, b) = (1.0 / (self.sd * self.sd), 1.0 / (measured_sd * measured_sd));
        Self {
            mean: (a * self.mean + b * measured) / (a + b),
            sd: libm::sqrt(1.0 / (a + b)),
        }
    }

    /// Dry matter over fresh mass: the median and the 90 % interval, never above 1.
    pub fn dry_matter_fraction(self) -> Interval {
        let at = |z: f64| libm::exp(self.mean + z * self.sd).min(1.0);
        Interval::spanning(at(0.0), at(-Z90), at(Z90))
    }

    /// Dry matter in grams of a lot of this fresh mass.
    pub fn dry_matter_g(self, fresh: Mass) -> Interval {
        self.dry_matter_fraction()
            .map_monotone(|fraction| fraction * fresh.get::<gram>())
    }

    /// Water of the fresh plant, per cent on wet basis.
    pub fn fresh_water_wet_percent(self) -> Interval {
        self.dry_matter_fraction()
            .map_monotone(|fraction| 100.0 * (1.0 - fraction))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn own_water_comes_back_as_it_was_given() {
        // Worked by hand: 75 % water is 25 % dry matter, 70 and 80 % are 30 and 20 %; ln(30/20) / (2 x 1.644854) is 0.12325.
        let own = Interval {
            low: 70.0,
            value: 75.0,
            high: 80.0,
        };
        let prior = DryMatterPrior::of_own_water(own).unwrap();
        assert!((prior.mean() - -1.386_294).abs() < 1e-6);
        assert!((prior.sd() - 0.123_25).abs() < 1e-4);
        assert!((prior.fresh_water_wet_percent().value - 75.0).abs() < 1e-9);
        for (low, value, high) in [
            (0.5, 75.0, 80.0),
            (70.0, 75.0, 99.5),
            (76.0, 75.0, 80.0),
            (70.0, 75.0, 74.0),
        ] {
            assert!(DryMatterPrior::of_own_water(Interval { low, value, high }).is_err());
        }
        assert!(
            DryMatterPrior::of_own_water(Interval {
                low: f64::NAN,
                ..own
            })
            .is_err()
        );
    }

    #[test]
    fn a_new_user_knows_less_than_the_table() {
        let table = DryMatterPrior::new(-1.6, 0.2).unwrap();
        let wide = table.widened_for_new_user();
        assert!(
            (wide.sd() - 0.233_238_075_793_812).abs() < 1e-12,
            "sqrt(0.2^2 + 0.12^2)"
        );
        assert_eq!(wide.mean(), table.mean());
    }
}
