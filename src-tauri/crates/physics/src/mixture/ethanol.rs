//! Ethanol and water: density, strength, proof.
//!
//! Everything rests on one formula, OIML R 22 (1975), valid from -20 to 40 C.

use super::oiml1975::{A, B, C};
use crate::{
    error::{OutOfRange, within},
    fraction::{MassFraction, Strength},
    quantity::{
        Mass, MassDensity, ThermodynamicTemperature, Volume, celsius, degrees_celsius, grams,
        kg_per_m3, millilitres_of,
    },
};
use message::{Unit, say};

/// Density of pure ethanol at 20 C, kg/m3 (the OIML table value; the formula gives the same).
pub(crate) const PURE_AT_20: f64 = 789.24;

/// 60 F in C, where US proof is defined.
pub(crate) const SIXTY_FAHRENHEIT: f64 = 140.0 / 9.0;

/// The metric reference temperature of strength, 20 C.
pub fn twenty_celsius() -> ThermodynamicTemperature {
    celsius(20.0)
}

/// The US reference temperature of proof, 60 F.
pub fn sixty_fahrenheit() -> ThermodynamicTemperature {
    celsius(SIXTY_FAHRENHEIT)
}

/// Density of ethanol-water of ethanol mass fraction `p` at temperature `t`.
///
/// `rho = sum A_k p^(k-1) + sum B_k d^k + sum C_ik p^k d^i`, `d = t - 20 C`.
///
/// *Valid for* -20 to 40 C, as long as the mixture is liquid.
///
/// # Errors
/// [`OutOfRange`] outside that temperature range.
///
/// *Source*: OIML R 22 (1975).
///
/// ```
/// use physics::{MassFraction, mixture::ethanol, quantity::{celsius, kg_per_m3_of}};
/// let printed = 851.93; // OIML R 22, Table I, 80 % at 10 C
/// let rho = ethanol::density(MassFraction::from_percent(80.0)?, celsius(10.0))?;
/// assert!((kg_per_m3_of(rho) - printed).abs() < 0.006);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn density(p: MassFraction, t: ThermodynamicTemperature) -> Result<MassDensity, OutOfRange> {
    let t = formula_temperature(t)?;
    Ok(kg_per_m3(rho(p.get(), t)))
}

/// Mass fraction of a spirit labelled `strength` at the reference temperature (20 C, or 60 F for US labels).
///
/// `q = p rho(p, t) / rho(1, t)`.
///
/// # Errors
/// [`OutOfRange`] when the reference temperature is outside -20 to 40 C.
///
/// *Source*: OIML R 22 (1975).
///
/// ```
/// use physics::{Strength, mixture::ethanol};
/// // 40 % vol is 33.3 % by mass, the commonest slip of the trade.
/// let p = ethanol::mass_fraction_of(Strength::from_percent(40.0)?, ethanol::twenty_celsius())?;
/// assert!((p.percent() - 33.30).abs() < 0.005);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn mass_fraction_of(
    strength: Strength,
    reference: ThermodynamicTemperature,
) -> Result<MassFraction, OutOfRange> {
    let t = formula_temperature(reference)?;
    MassFraction::new(p_of_strength(strength.get(), t))
}

/// Strength, at the reference temperature, of ethanol-water of mass fraction `p`.
///
/// # Errors
/// [`OutOfRange`] when the reference temperature is outside -20 to 40 C.
///
/// *Source*: OIML R 22 (1975).
pub fn strength_of(
    p: MassFraction,
    reference: ThermodynamicTemperature,
) -> Result<Strength, OutOfRange> {
    let t = formula_temperature(reference)?;
    Strength::new((p.get() * rho(p.get(), t) / rho(1.0, t)).min(1.0))
}

/// US proof of ethanol-water: twice the percentage by volume at 60 F (200 for pure ethanol).
///
/// *Source*: 27 CFR 30.11 with OIML R 22 (1975).
pub fn us_proof(p: MassFraction) -> f64 {
    200.0 * p.get() * rho(p.get(), SIXTY_FAHRENHEIT) / rho(1.0, SIXTY_FAHRENHEIT)
}

/// Ethanol in a volume of liquid measured at 20 C: `m = V q 0.78924 g/mL`.
///
/// *Source*: density of ethanol at 20 C, OIML R 22 (1975).
pub fn ethanol_in(volume: Volume, strength: Strength) -> Mass {
    grams(millilitres_of(volume) * strength.get() * PURE_AT_20 / 1000.0)
}

fn formula_temperature(t: ThermodynamicTemperature) -> Result<f64, OutOfRange> {
    within(
        say!("what-temperature"),
        degrees_celsius(t),
        -20.0,
        40.0,
        Unit::Celsius,
    )
}

/// Density in kg/m3, `p` in 0..=1, `t` in C.
pub(crate) fn rho(p: f64, t: f64) -> f64 {
    let d = t - 20.0;
    let at_20 = A.iter().rev().fold(0.0, |sum, a| sum * p + a);
    if d == 0.0 {
        return at_20;
    }
    let mut expansion = 0.0;
    for i in (0..B.len()).rev() {
        let mixed = match C.get(i) {
            Some(row) => p * row.iter().rev().fold(0.0, |sum, c| sum * p + c),
            None => 0.0,
        };
        expansion = (expansion + B[i] + mixed) * d;
    }
    at_20 + expansion
}

/// Density and its slope against `p`.
fn rho_and_slope(p: f64, t: f64) -> (f64, f64) {
    fn horner(coefficients: &[f64], p: f64) -> (f64, f64) {
        coefficients
            .iter()
            .rev()
            .fold((0.0, 0.0), |(sum, slope), c| (sum * p + c, slope * p + sum))
    }
    let d = t - 20.0;
    let (at_20, slope_at_20) = horner(&A, p);
    if d == 0.0 {
        return (at_20, slope_at_20);
    }
    let (mut expansion, mut slope) = (0.0, 0.0);
    for i in (0..B.len()).rev() {
        let (inner, inner_slope) = C.get(i).map_or((0.0, 0.0), |row| horner(row, p));
        expansion = (expansion + B[i] + p * inner) * d;
        slope = (slope + inner + p * inner_slope) * d;
    }
    (at_20 + expansion, slope_at_20 + slope)
}

/// Mass fraction whose strength at `t` is `q`, both 0..=1.
pub(crate) fn p_of_strength(q: f64, t: f64) -> f64 {
    if q <= 0.0 {
        return 0.0;
    }
    let ethanol_per_volume = q * rho(1.0, t);
    let start = ethanol_per_volume / (1000.0 - 211.0 * q + 100.0 * q * (1.0 - q));
    root(
        t,
        |p, rho, slope| (p * rho - ethanol_per_volume, rho + p * slope),
        start,
    )
    .0
}

/// Root on 0..=1 of a rising function given as value and slope from `(p, rho, rho')`:
/// Newton's method, held inside a bracket that shrinks at each step. Returns the
/// root and how many densities it took.
fn root(t: f64, f: impl Fn(f64, f64, f64) -> (f64, f64), start: f64) -> (f64, usize) {
    const MOST_DENSITIES: usize = 12;
    // Newton's method squares its error: after a step this small the next would be lost in rounding.
    const LAST_STEP: f64 = 1e-8;
    let (mut low, mut high) = (0.0, 1.0);
    let mut p = start.clamp(0.0, 1.0);
    for densities in 1..=MOST_DENSITIES {
        let (rho, slope) = rho_and_slope(p, t);
        let (value, derivative) = f(p, rho, slope);
        if value > 0.0 {
            high = p;
        } else {
            low = p;
        }
        let step = value / derivative;
        let newton = p - step;
        let next = if newton.is_finite() {
            newton.clamp(low, high)
        } else {
            0.5 * (low + high)
        };
        if (next - p).abs() < LAST_STEP {
            return (next, densities);
        }
        p = next;
    }
    (p, MOST_DENSITIES)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_inverse_takes_at_most_twelve_densities_and_returns_to_the_strength() {
        for tenth in 0..=1000 {
            let p = f64::from(tenth) / 1000.0;
            for t in [-20.0, 0.0, 15.0, SIXTY_FAHRENHEIT, 20.0, 40.0] {
                let q = p * rho(p, t) / rho(1.0, t);
                assert!(
                    (p_of_strength(q, t) - p).abs() < 1e-12,
                    "strength, p {p} t {t}"
                );
                let start = (rho(0.0, t) - rho(p, t)) / (rho(0.0, t) - rho(1.0, t));
                let wanted = rho(p, t);
                let (back, densities) = root(t, |_, rho, slope| (wanted - rho, -slope), start);
                assert!((back - p).abs() < 1e-10, "density, p {p} t {t}: {back}");
                assert!(densities <= 12, "p {p} t {t} took {densities}");
            }
        }
    }

    #[test]
    fn the_density_falls_strictly_with_the_ethanol() {
        for t in -20..=40 {
            let mut last = f64::INFINITY;
            for step in 0..=2000 {
                let rho = rho(f64::from(step) / 2000.0, f64::from(t));
                assert!(rho < last, "step {step} at {t} C");
                last = rho;
            }
        }
    }

    #[test]
    fn temperatures_outside_the_formula_are_refused() {
        let p = MassFraction::from_percent(40.0).unwrap();
        for t in [-20.1, 40.1, f64::NAN, 1e308] {
            assert!(density(p, celsius(t)).is_err(), "{t} C");
        }
        assert!(density(p, celsius(-20.0)).is_ok());
        assert!(density(p, celsius(40.0)).is_ok());
    }
}
