//! Acetic acid and water: density, acidity, and the pH of the plain acid.

use super::water;
use crate::{
    error::{OutOfRange, within},
    fraction::MassFraction,
    quantity::{MassDensity, kg_per_m3},
};
use libm::{log10, pow, sqrt};
use message::{Unit, say};

/// Molar mass of acetic acid, g/mol.
pub(crate) const MOLAR_MASS: f64 = 60.052;

/// Negative logarithm of the acid constant of acetic acid at 25 C.
const PKA: f64 = 4.756;

/// Expansion of pure acetic acid, per kelvin (from memory): what the 20 C table leaves
/// unknown at another temperature, in proportion to the acid.
pub(crate) const EXPANSION: f64 = 1.1e-3;

/// Density of acetic acid-water at 20 C less that of water, kg/m3, in powers of the mass fraction:
/// least squares through the CRC cells (102nd ed., Concentrative Properties), worst 0.06 kg/m3.
const ABOVE_WATER: [f64; 4] = [142.84776, -43.00864, 2.96011, -45.09142];

/// Titratable acidity, counted as acetic acid, in grams per 100 mL at 20 C.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Acidity(f64);

impl Acidity {
    /// From grams per 100 mL, as on a vinegar label.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 30 g per 100 mL.
    pub fn new(grams_per_100_ml: f64) -> Result<Self, OutOfRange> {
        within(
            say!("what-acidity"),
            grams_per_100_ml,
            0.0,
            30.0,
            Unit::GramPer100Ml,
        )
        .map(Self)
    }

    /// Grams per 100 mL at 20 C.
    pub fn grams_per_100_ml(self) -> f64 {
        self.0
    }
}

/// Density at 20 C of acetic acid-water of acid mass fraction `w`.
///
/// *Valid for* 0 to 80 % by mass, within 0.2 kg/m3.
///
/// # Errors
/// [`OutOfRange`] above 80 %.
///
/// *Source*: a polynomial through CRC Handbook, 102nd ed., Concentrative Properties, above OIML water.
pub fn density_at_20(w: MassFraction) -> Result<MassDensity, OutOfRange> {
    within(say!("what-acid"), w.percent(), 0.0, 80.0, Unit::PercentMass)?;
    Ok(kg_per_m3(rho(w.get(), 20.0)))
}

/// pH at 25 C of acetic acid in plain water: a floor, since salts and herbs buffer any real vinegar upwards.
///
/// `[H+] = (-Ka + sqrt(Ka^2 + 4 Ka C)) / 2`, `C = 10 a / 60.052`, `Ka = 10^-4.756`; none at zero acid.
///
/// *Source*: the exact quadratic for a weak acid, activity taken as concentration.
///
/// ```
/// use physics::mixture::{Acidity, acid};
/// // 5 g per 100 mL, computed: 2.419
/// assert!((acid::plain_ph(Acidity::new(5.0)?).unwrap() - 2.419).abs() < 0.001);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn plain_ph(acidity: Acidity) -> Option<f64> {
    ph(acidity.0)
}

/// pH from grams per 100 mL.
pub(crate) fn ph(grams_per_100_ml: f64) -> Option<f64> {
    let molar = 10.0 * grams_per_100_ml / MOLAR_MASS;
    let ka = pow(10.0, -PKA);
    // Below this the water's own ions outweigh the acid's and the quadratic no longer holds.
    (molar > 1e-6).then(|| -log10(0.5 * (-ka + sqrt(ka * ka + 4.0 * ka * molar))))
}

/// Density in kg/m3, `w` in 0..=1, `t` in C; the acid's effect is that at 20 C.
pub(crate) fn rho(w: f64, t: f64) -> f64 {
    water::rho(t) + w * ABOVE_WATER.iter().rev().fold(0.0, |sum, c| sum * w + c)
}

/// Mass fraction of vinegar that holds `grams_per_100_ml` of acid in water.
pub(crate) fn w_of_acidity(grams_per_100_ml: f64) -> f64 {
    let mut w = grams_per_100_ml / 100.0;
    // The density changes by 4 % at most, so each round gains more than a digit.
    for _ in 0..14 {
        w = 10.0 * grams_per_100_ml / rho(w, 20.0);
    }
    w
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn acidity_and_mass_fraction_return_to_each_other() {
        for tenth in 0..=300 {
            let acidity = f64::from(tenth) / 10.0;
            let w = w_of_acidity(acidity);
            assert!(
                (w * rho(w, 20.0) / 10.0 - acidity).abs() < 1e-9,
                "{acidity}"
            );
        }
    }

    #[test]
    fn plain_water_has_no_acid_floor() {
        assert_eq!(plain_ph(Acidity::new(0.0).unwrap()), None);
        assert!(Acidity::new(30.1).is_err());
        assert!(Acidity::new(f64::NAN).is_err());
    }
}
