//! Glycerol and water: density.

use crate::{
    error::{OutOfRange, within},
    fraction::MassFraction,
    quantity::{MassDensity, ThermodynamicTemperature, degrees_celsius, kg_per_m3},
};
use core::f64::consts::PI;
use libm::{pow, sin};
use message::{Unit, say};

/// Molar mass of glycerol, g/mol.
pub(crate) const MOLAR_MASS: f64 = 92.094;

/// Where the formula was fitted, C.
pub(crate) const FITTED: core::ops::RangeInclusive<f64> = 15.0..=30.0;

/// How far the formula may be off between 0 and 40 C but outside 15 to 30 C, relative:
/// 2.5 kg/m3 against Melinder's glycerol.
pub(crate) const OFF_OUTSIDE_FITTED: f64 = 0.0025;

/// Density of glycerol-water of glycerol mass fraction `w`.
///
/// `rho = kappa [rho_w + w (rho_g - rho_w) / (w + (rho_g / rho_w)(1 - w))]`,
/// `kappa = 1 + (1.78e-6 t^2 - 1.82e-4 t + 1.41e-2) sin(pi w^1.31)^0.81`,
/// `rho_g = 1273 - 0.612 t`, `rho_w = 1000 (1 - |(t - 3.98)/615|^1.71)`.
///
/// *Valid for* 15 to 30 C within 0.9 kg/m3; from 0 to 40 C within 2.5 kg/m3.
///
/// # Errors
/// [`OutOfRange`] outside 0 to 40 C.
///
/// *Source*: Volk and Kähler 2018.
///
/// ```
/// use physics::{MassFraction, mixture::glycerol, quantity::{celsius, kg_per_m3_of}};
/// let printed = 1066.4; // CRC Handbook, 102nd ed., 28 % at 20 C
/// let rho = glycerol::density(MassFraction::from_percent(28.0)?, celsius(20.0))?;
/// assert!((kg_per_m3_of(rho) - printed).abs() < 0.9);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn density(w: MassFraction, t: ThermodynamicTemperature) -> Result<MassDensity, OutOfRange> {
    let t = within(
        say!("what-temperature"),
        degrees_celsius(t),
        0.0,
        40.0,
        Unit::Celsius,
    )?;
    Ok(kg_per_m3(rho(w.get(), t)))
}

/// Density in kg/m3, `w` in 0..=1, `t` in C.
pub(crate) fn rho(w: f64, t: f64) -> f64 {
    let glycerol = 1273.0 - 0.612 * t;
    let water = 1000.0 * (1.0 - pow(((t - 3.98) / 615.0).abs(), 1.71));
    let ideal = water + w * (glycerol - water) / (w + (glycerol / water) * (1.0 - w));
    // sin(pi) is a hair below zero in doubles, and a negative base has no real power.
    let bulge = pow(sin(PI * pow(w, 1.31)).max(0.0), 0.81);
    ideal * (1.0 + (1.78e-6 * t * t - 1.82e-4 * t + 1.41e-2) * bulge)
}
