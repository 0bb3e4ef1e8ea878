//! Pure water.

use super::{ethanol, icumsa1986};
use crate::{
    error::{OutOfRange, within},
    quantity::{MassDensity, ThermodynamicTemperature, degrees_celsius, kg_per_m3},
};
use message::{Unit, say};

/// Molar mass of water, g/mol.
pub(crate) const MOLAR_MASS: f64 = 18.015;

/// Density of liquid water at atmospheric pressure.
///
/// *Valid for* 0 to 100 C; within 0.01 kg/m3 of IAPWS-95 from 5 to 40 C.
///
/// # Errors
/// [`OutOfRange`] outside 0 to 100 C.
///
/// *Source*: OIML R 22 (1975) with no ethanol, to 40 C; the Kell-type equation used with ICUMSA SPS-4 above.
///
/// ```
/// use physics::{mixture::water, quantity::{celsius, kg_per_m3_of}};
/// let iapws95 = 998.2072; // computed at 20 C and 101.325 kPa
/// assert!((kg_per_m3_of(water::density(celsius(20.0))?) - iapws95).abs() < 0.01);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn density(t: ThermodynamicTemperature) -> Result<MassDensity, OutOfRange> {
    let t = within(
        say!("what-temperature"),
        degrees_celsius(t),
        0.0,
        100.0,
        Unit::Celsius,
    )?;
    Ok(kg_per_m3(rho(t)))
}

/// Density in kg/m3, `t` in C.
pub(crate) fn rho(t: f64) -> f64 {
    if t <= 40.0 {
        ethanol::rho(0.0, t)
    } else {
        kell(t)
    }
}

/// Water as the sucrose polynomial takes it, kg/m3.
pub(crate) fn kell(t: f64) -> f64 {
    icumsa1986::WATER
        .iter()
        .rev()
        .fold(0.0, |sum, c| sum * t + c)
        / (1.0 + 0.016887236 * t)
}
