//! What a maker's own finished batches teach about one herb and part.
//!
//! Conjugate normal with inverse gamma: `theta | s2 ~ N(mu0, s2 / kappa0)`,
//! `s2 ~ IG(alpha0, beta0)`, observations `y = ln(dry-matter fraction)`. The next
//! batch then follows Student's t. Source: the textbook normal-inverse-gamma
//! update; the defaults are engineering defaults.

use super::prior::DryMatterPrior;
use crate::error::{OutOfRange, within};
use message::{Unit, say};
use statrs::distribution::{ContinuousCDF, StudentsT};

/// Expected SD between one maker's batches of one herb.
const BATCH_SD: f64 = 0.12;
/// Least SD between a maker's own mean and the table's.
const OFFSET_SD: f64 = 0.22;
/// Shape of the prior of the batch variance: worth five batches.
const SHAPE: f64 = 2.5;

/// Belief about one maker's batches of one herb and part, in ln(dry-matter fraction).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BatchHistory {
    mu: f64,
    kappa: f64,
    alpha: f64,
    beta: f64,
    batches: usize,
}

/// Student's t for the next batch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Predictive {
    /// Centre, ln(dry-matter fraction).
    pub centre: f64,
    /// Scale, ln(dry-matter fraction).
    pub scale: f64,
    /// Degrees of freedom, above 2.
    pub degrees_of_freedom: f64,
}

impl BatchHistory {
    /// Before the first batch: `offset_sd` is tau0, `batch_sd` sigma0, `shape` alpha0.
    ///
    /// # Errors
    /// [`OutOfRange`] unless both SDs are within 0.001-2 and the shape within 1.1-100.
    pub fn new(mean: f64, offset_sd: f64, batch_sd: f64, shape: f64) -> Result<Self, OutOfRange> {
        let sd = |name, value| within(name, value, 0.001, 2.0, Unit::None);
        let offset_sd = sd(say!("what-spread-of-own-means"), offset_sd)?;
        let batch_sd = sd(say!("what-spread-between-batches"), batch_sd)?;
        let alpha = within(say!("what-shape"), shape, 1.1, 100.0, Unit::None)?;
        let mu = within(
            say!("what-mean-of-log-dry-matter"),
            mean,
            -6.0,
            -0.01,
            Unit::None,
        )?;
        let ratio = batch_sd / offset_sd;
        Ok(Self {
            mu,
            kappa: ratio * ratio,
            alpha,
            beta: (alpha - 1.0) * batch_sd * batch_sd,
            batches: 0,
        })
    }

    /// Before the first batch, around what a table says.
    ///
    /// The own mean may differ from the table's by the table's own spread, and by 0.22 at least.
    pub fn around(table: DryMatterPrior) -> Self {
        let ratio = BATCH_SD / OFFSET_SD.max(table.sd);
        Self {
            mu: table.mean,
            kappa: ratio * ratio,
            alpha: SHAPE,
            beta: (SHAPE - 1.0) * BATCH_SD * BATCH_SD,
            batches: 0,
        }
    }

    /// With the dry-matter fractions of finished batches, each as ln.
    #[must_use]
    pub fn learn(self, ln_fractions: &[f64]) -> Self {
        if ln_fractions.is_empty() {
            return self;
        }
        let n = ln_fractions.len() as f64;
        let mean = ln_fractions.iter().sum::<f64>() / n;
        let squares: f64 = ln_fractions.iter().map(|y| (y - mean) * (y - mean)).sum();
        let kappa = self.kappa + n;
        let shift = mean - self.mu;
        Self {
            mu: (self.kappa * self.mu + n * mean) / kappa,
            kappa,
            alpha: self.alpha + n / 2.0,
            beta: self.beta + squares / 2.0 + self.kappa * n * shift * shift / (2.0 * kappa),
            batches: self.batches + ln_fractions.len(),
        }
    }

    /// Posterior mean, kappa, alpha and beta.
    pub fn parameters(self) -> [f64; 4] {
        [self.mu, self.kappa, self.alpha, self.beta]
    }

    /// How many batches were learned from.
    pub fn batches(self) -> usize {
        self.batches
    }

    /// What the next batch will be.
    pub fn next_batch(self) -> Predictive {
        Predictive {
            centre: self.mu,
            scale: libm::sqrt(self.beta * (self.kappa + 1.0) / (self.alpha * self.kappa)),
            degrees_of_freedom: 2.0 * self.alpha,
        }
    }
}

impl Predictive {
    /// The 90 % interval of ln(dry-matter fraction): low and high end.
    pub fn interval_90(self) -> (f64, f64) {
        let half = StudentsT::new(0.0, 1.0, self.degrees_of_freedom)
            .map_or(super::prior::Z90, |t| t.inverse_cdf(0.95))
            * self.scale;
        (self.centre - half, self.centre + half)
    }

    /// The normal prior with the same centre and SD, which takes the table's place.
    ///
    /// # Errors
    /// [`OutOfRange`] when the batches lie outside what [`DryMatterPrior::new`] takes.
    pub fn as_prior(self) -> Result<DryMatterPrior, OutOfRange> {
        let nu = self.degrees_of_freedom;
        DryMatterPrior::new(self.centre, self.scale * libm::sqrt(nu / (nu - 2.0)))
    }
}

impl DryMatterPrior {
    /// The prior for the next batch of a maker whose finished batches had these dry-matter
    /// fractions (each within 0-1, exclusive); the table's prior, widened, without any.
    ///
    /// # Errors
    /// [`OutOfRange`] for a fraction that no plant has.
    pub fn with_own_batches(self, dry_matter_fractions: &[f64]) -> Result<Self, OutOfRange> {
        if dry_matter_fractions.is_empty() {
            return Ok(self.widened_for_new_user());
        }
        let logs = dry_matter_fractions
            .iter()
            .map(|&fraction| {
                within(
                    say!("what-dry-matter-fraction-of-an-own-batch"),
                    fraction,
                    0.01,
                    0.99,
                    Unit::None,
                )
                .map(libm::log)
            })
            .collect::<Result<Vec<_>, _>>()?;
        BatchHistory::around(self)
            .learn(&logs)
            .next_batch()
            .as_prior()
    }
}
