//! Dilute, make up, blend: ethanol and water alone, where the strength decides everything.

use super::{Unmixable, ethanol, water};
use crate::{
    error::within,
    fraction::Strength,
    quantity::{ThermodynamicTemperature, Volume, degrees_celsius, millilitres, millilitres_of},
};
use message::{Unit, say};

/// A spirit brought down with water. All volumes are at the reference temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dilution {
    /// Spirit taken.
    pub spirit: Volume,
    /// Water added.
    pub water: Volume,
    /// What comes of it.
    pub total: Volume,
    /// Spirit and water less what comes of them.
    pub contraction: Volume,
}

/// Water that brings a volume of spirit down to a strength.
///
/// `m1 = V1 rho(p1)`, `m_w = m1 (p1/p2 - 1)`, `V2 = (m1 + m_w)/rho(p2)`; strengths and volumes at
/// the reference temperature.
///
/// # Errors
/// [`Unmixable`] when the target is above the spirit's strength or nothing, or outside -20 to 40 C.
///
/// *Source*: conservation of mass with OIML R 22 (1975); the rule of 27 CFR 30.66.
///
/// ```
/// use physics::{Strength, mixture::{dilution, ethanol}, quantity::{millilitres, millilitres_of}};
/// let (from, to) = (Strength::from_percent(95.0)?, Strength::from_percent(70.0)?);
/// let made = dilution::dilute(from, millilitres(100.0), to, ethanol::twenty_celsius())?;
/// // Computed from the formula elsewhere: 39.116 mL.
/// assert!((millilitres_of(made.water) - 39.116).abs() < 0.02);
/// # Ok::<(), physics::mixture::Unmixable>(())
/// ```
pub fn dilute(
    spirit: Strength,
    volume: Volume,
    to: Strength,
    reference: ThermodynamicTemperature,
) -> Result<Dilution, Unmixable> {
    let t = reference_temperature(reference)?;
    let v1 = measured(volume)?;
    downwards(spirit, to)?;
    let (p1, p2) = (
        ethanol::p_of_strength(spirit.get(), t),
        ethanol::p_of_strength(to.get(), t),
    );
    let m1 = v1 * ethanol::rho(p1, t);
    let added = m1 * (p1 / p2 - 1.0);
    let v_w = added / water::rho(t);
    let v2 = (m1 + added) / ethanol::rho(p2, t);
    Ok(Dilution {
        spirit: millilitres(v1),
        water: millilitres(v_w),
        total: millilitres(v2),
        contraction: millilitres(v1 + v_w - v2),
    })
}

/// Spirit and water that make up a volume of a strength: `V1 = V2 q2 / q1`.
///
/// # Errors
/// [`Unmixable`] when the target is above the spirit's strength or nothing, or outside -20 to 40 C.
///
/// *Source*: conservation of ethanol; volumes at the reference temperature.
pub fn make_up(
    spirit: Strength,
    to: Strength,
    total: Volume,
    reference: ThermodynamicTemperature,
) -> Result<Dilution, Unmixable> {
    let v2 = measured(total)?;
    downwards(spirit, to)?;
    dilute(
        spirit,
        millilitres(v2 * to.get() / spirit.get()),
        to,
        reference,
    )
}

/// Strength and volume of what comes of pouring spirits (water is 0 %) together at the reference temperature.
///
/// # Errors
/// [`Unmixable`] when nothing is poured, or outside -20 to 40 C.
///
/// *Source*: conservation of mass with OIML R 22 (1975).
pub fn blend(
    spirits: &[(Strength, Volume)],
    reference: ThermodynamicTemperature,
) -> Result<(Strength, Volume), Unmixable> {
    let t = reference_temperature(reference)?;
    let (mut mass, mut ethanol_mass) = (0.0, 0.0);
    for &(strength, volume) in spirits {
        let p = ethanol::p_of_strength(strength.get(), t);
        let part = measured(volume)? * ethanol::rho(p, t);
        mass += part;
        ethanol_mass += part * p;
    }
    if mass <= 0.0 {
        return Err(Unmixable::NoLiquid);
    }
    let p = (ethanol_mass / mass).min(1.0);
    let volume = mass / ethanol::rho(p, t);
    let strength = (ethanol_mass / ethanol::rho(1.0, t) / volume).min(1.0);
    Ok((Strength::new(strength)?, millilitres(volume)))
}

fn reference_temperature(t: ThermodynamicTemperature) -> Result<f64, Unmixable> {
    Ok(within(
        say!("what-temperature"),
        degrees_celsius(t),
        -20.0,
        40.0,
        Unit::Celsius,
    )?)
}

fn measured(volume: Volume) -> Result<f64, Unmixable> {
    Ok(within(
        say!("what-volume"),
        millilitres_of(volume),
        0.0,
        1e6,
        Unit::Millilitre,
    )?)
}

fn downwards(from: Strength, to: Strength) -> Result<(), Unmixable> {
    within(
        say!("what-wanted-strength"),
        to.percent(),
        f64::MIN_POSITIVE,
        from.percent(),
        Unit::PercentVol,
    )?;
    Ok(())
}
