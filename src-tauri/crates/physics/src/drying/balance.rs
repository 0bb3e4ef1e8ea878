//! Mass balance: water leaves, dry matter stays.

use crate::{
    fraction::WetBasis,
    interval::Interval,
    quantity::{Mass, grams},
};
use uom::si::mass::gram;

/// How many grams of fresh plant make one gram dried: `r = (1 - m_dry) / (1 - m_fresh)`,
/// `m` being the moisture on wet basis.
///
/// Valid for any pair; below 1 when the "dried" plant is the wetter one.
/// Source: conservation of dry matter.
///
/// ```
/// use physics::{WetBasis, drying::balance::fresh_per_dried};
/// // Basil: 92.06 % water fresh and 10.35 % dried (USDA 2044 and 2003).
/// let ratio = fresh_per_dried(WetBasis::from_percent(92.06)?, WetBasis::from_percent(10.35)?);
/// assert!((ratio - 11.2909).abs() < 1e-4);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn fresh_per_dried(fresh: WetBasis, dried: WetBasis) -> f64 {
    (1.0 - dried.get()) / (1.0 - fresh.get())
}

/// The dry matter in `mass` of plant at `moisture`: `D = W (1 - m)`.
pub fn dry_matter(mass: Mass, moisture: WetBasis) -> Mass {
    grams(mass.get::<gram>() * (1.0 - moisture.get()))
}

/// Moisture on wet basis, in per cent, of `mass` that holds `dry_matter_g`: `m = 1 - D / W`.
///
/// Never below zero: a scale's rounding may put the mass under its dry matter.
pub(crate) fn moisture_wet_percent(mass_g: f64, dry_matter_g: Interval) -> Interval {
    dry_matter_g.map_monotone(|dry_g| 100.0 * (1.0 - dry_g / mass_g).max(0.0))
}
