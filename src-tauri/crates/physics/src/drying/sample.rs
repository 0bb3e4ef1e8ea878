//! The oven sample: a little of the lot, dried to constant weight.

use crate::{
    error::{OutOfRange, within},
    quantity::Mass,
};
use message::{Unit, say};
use uom::si::mass::gram;

/// SD of one reading from play and drift, as a share of the scale step; engineering default.
const PLAY: f64 = 0.3;

/// Variance in g^2 of one reading on a scale of this step: rounding is uniform, play is added.
pub(crate) fn reading_variance(scale_step_g: f64) -> f64 {
    scale_step_g * scale_step_g * (1.0 / 12.0 + PLAY * PLAY)
}

/// Part of a lot weighed fresh, then weighed again when an oven had taken all of its water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OvenSample {
    fresh_g: f64,
    dry_g: f64,
    scale_step_g: f64,
}

impl OvenSample {
    /// From both masses and the step of the scale that weighed them.
    ///
    /// # Errors
    /// [`OutOfRange`] for a fresh mass outside 0.5 g to 5 kg, a step outside 0.001-100 g,
    /// or a dry mass that is not above the step and below the fresh mass.
    pub fn new(fresh: Mass, dry: Mass, scale_step: Mass) -> Result<Self, OutOfRange> {
        let fresh_g = within(
            say!("what-fresh-mass-of-the-sample"),
            fresh.get::<gram>(),
            0.5,
            5000.0,
            Unit::Gram,
        )?;
        let scale_step_g = within(
            say!("what-scale-step"),
            scale_step.get::<gram>(),
            0.001,
            100.0,
            Unit::Gram,
        )?;
        let dry_g = dry.get::<gram>();
        if !(dry_g.is_finite() && dry_g >= scale_step_g && dry_g < fresh_g) {
            return Err(OutOfRange {
                what: say!("what-dry-mass-of-the-sample"),
                value: dry_g,
                low: scale_step_g,
                high: fresh_g,
                unit: Unit::Gram,
            });
        }
        Ok(Self {
            fresh_g,
            dry_g,
            scale_step_g,
        })
    }

    /// Mean and SD of ln(dry-matter fraction) that this sample measures.
    ///
    /// `sd^2 = v (1/dry^2 + 1/fresh^2)` with `v = step^2 (1/12 + 0.3^2)`, to first order.
    pub fn ln_dry_matter_fraction(self) -> (f64, f64) {
        let variance = reading_variance(self.scale_step_g);
        let relative =
            variance / (self.dry_g * self.dry_g) + variance / (self.fresh_g * self.fresh_g);
        (libm::log(self.dry_g / self.fresh_g), libm::sqrt(relative))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::grams;

    #[test]
    fn the_interval_follows_from_the_scale_step() {
        let fine = OvenSample::new(grams(15.0), grams(2.5), grams(0.1)).unwrap();
        let coarse = OvenSample::new(grams(15.0), grams(2.5), grams(1.0)).unwrap();
        let (mean, sd) = fine.ln_dry_matter_fraction();
        assert!((libm::exp(mean) - 2.5 / 15.0).abs() < 1e-12);
        assert!(
            (coarse.ln_dry_matter_fraction().1 / sd - 10.0).abs() < 1e-9,
            "sd is linear in the step"
        );
    }

    #[test]
    fn a_sample_that_gained_mass_is_refused() {
        assert!(OvenSample::new(grams(15.0), grams(15.1), grams(0.1)).is_err());
    }
}
