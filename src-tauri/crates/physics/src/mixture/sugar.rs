//! Sucrose, glucose, fructose and water: density, solubility, honey.

use super::{
    composition::{Component, Composition},
    icumsa1986::SUCROSE,
    water,
};
use crate::{
    error::{OutOfRange, within},
    fraction::MassFraction,
    quantity::{MassDensity, ThermodynamicTemperature, degrees_celsius, kg_per_m3},
};
use message::{Unit, say};

/// Molar mass of sucrose, g/mol.
pub(crate) const SUCROSE_MOLAR_MASS: f64 = 342.297;
/// Molar mass of glucose and of fructose, g/mol.
pub(crate) const HEXOSE_MOLAR_MASS: f64 = 180.156;

/// Density of crystalline sucrose at 20 C, kg/m3 (from memory).
pub(crate) const CRYSTAL: f64 = 1587.9;

/// Granulated sugar as a measure holds it, kg/m3: a US cup of 236.6 mL is 200 g
/// (common practice, no source).
pub(crate) const GRANULATED: f64 = 845.0;

/// By how much glucose and fructose are lighter than sucrose at 82 % by mass, relative.
///
/// Honey of 15, 18, 19 and 20 % water has SG 20/20 1.435, 1.417, 1.4101 and 1.4027
/// (Snyder 1933; the 18 % figure read, the others from memory), 0.7 to 1.1 % below
/// sucrose of the same strength; dilute solutions show no difference.
const HEXOSE_SHORTFALL_AT_82: f64 = 0.0091;

/// How well that rule is known, relative, where all of the liquid is glucose and fructose.
pub(crate) const HEXOSE_DOUBT: f64 = 0.003;

/// Density of sucrose-water of sucrose mass fraction `w` (Brix is 100 w).
///
/// `rho = rho_w(t) + sum c_ik T^i w^k`, `T = (t - 20 C)/100`.
///
/// *Valid for* 0 to 100 C (from memory; tested from 10 to 30 C) and 0 to 85 % by mass:
/// within 0.35 kg/m3 to 60 %, 0.6 to 75 %, 1.2 to 85 %.
///
/// # Errors
/// [`OutOfRange`] outside those ranges.
///
/// *Source*: ICUMSA SPS-4.
///
/// ```
/// use physics::{MassFraction, mixture::sugar, quantity::{celsius, kg_per_m3_of}};
/// let printed = 1218.6; // CRC Handbook, 102nd ed., 48 % at 20 C
/// let rho = sugar::density(MassFraction::from_percent(48.0)?, celsius(20.0))?;
/// assert!((kg_per_m3_of(rho) - printed).abs() < 0.35);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn density(w: MassFraction, t: ThermodynamicTemperature) -> Result<MassDensity, OutOfRange> {
    let t = within(
        say!("what-temperature"),
        degrees_celsius(t),
        0.0,
        100.0,
        Unit::Celsius,
    )?;
    within(
        say!("what-sugar"),
        w.percent(),
        0.0,
        85.0,
        Unit::PercentMass,
    )?;
    Ok(kg_per_m3(rho(w.get(), t)))
}

/// Density of sucrose-water in kg/m3, `w` in 0..=1, `t` in C.
pub(crate) fn rho(w: f64, t: f64) -> f64 {
    let row = |c: &[f64]| w * c.iter().rev().fold(0.0, |sum, c| sum * w + c);
    let base = water::kell(t);
    if t == 20.0 {
        return base + row(SUCROSE[0]);
    }
    let warmth = (t - 20.0) / 100.0;
    base + SUCROSE
        .iter()
        .rev()
        .fold(0.0, |sum, c| sum * warmth + row(c))
}

/// Density of sugar-water in kg/m3 when the share `hexoses` of the sugar is glucose and fructose.
///
/// Glucose and fructose take the sucrose polynomial of the same mass fraction less
/// `0.91 % (w / 0.82)^3`: nothing in a dilute syrup, what the honey tables show in honey.
pub(crate) fn rho_of_mixed(w: f64, hexoses: f64, t: f64) -> f64 {
    let strong = w / 0.82;
    rho(w, t) * (1.0 - HEXOSE_SHORTFALL_AT_82 * hexoses * strong * strong * strong)
}

/// Mass fraction of sucrose in its saturated solution.
///
/// *Valid for* 0 to 50 C, linear between the table's temperatures.
///
/// # Errors
/// [`OutOfRange`] outside 0 to 50 C.
///
/// *Source*: sucrose solubility table, 64.4, 65.6, 67.1, 67.9, 68.7, 70.4 and 72.3 % at
/// 0, 10, 20, 25, 30, 40 and 50 C.
pub fn solubility(t: ThermodynamicTemperature) -> Result<MassFraction, OutOfRange> {
    let t = within(
        say!("what-temperature"),
        degrees_celsius(t),
        0.0,
        50.0,
        Unit::Celsius,
    )?;
    MassFraction::new(saturation(t))
}

/// Mass fraction of sucrose at saturation; the ends of the table hold beyond it, `t` in C.
pub(crate) fn saturation(t: f64) -> f64 {
    const TABLE: [(f64, f64); 7] = [
        (0.0, 0.644),
        (10.0, 0.656),
        (20.0, 0.671),
        (25.0, 0.679),
        (30.0, 0.687),
        (40.0, 0.704),
        (50.0, 0.723),
    ];
    let t = t.clamp(0.0, 50.0);
    TABLE
        .windows(2)
        .find(|pair| t <= pair[1].0)
        .map_or(0.723, |pair| {
            let ((t0, w0), (t1, w1)) = (pair[0], pair[1]);
            w0 + (w1 - w0) * (t - t0) / (t1 - t0)
        })
}

/// How much less sucrose 100 g of water and ethanol dissolve than 100 g of water, by the mass fraction of ethanol
/// in the two: 0 to 90 % vol in steps of ten.
///
/// *Source*: solubility of cane sugar in aqueous alcohol at 14 C, Seidell, Solubilities (from memory): 87.5, 81.5,
/// 74.5, 67.9, 58.0, 47.1, 33.9, 18.8, 6.6 and 0.9 g in 100 mL of solution, turned into masses of solvent by the
/// densities printed beside them (from memory).
const IN_SPIRIT: [(f64, f64); 11] = [
    (0.0, 1.0),
    (0.0801, 0.866),
    (0.1625, 0.737),
    (0.2470, 0.632),
    (0.3330, 0.494),
    (0.4244, 0.368),
    (0.5209, 0.243),
    (0.6239, 0.124),
    (0.7346, 0.041),
    (0.8566, 0.006),
    (1.0, 0.0),
];

/// Sucrose that stays at the bottom of this liquid at `t` in C, g, where `crystals` of it were poured as sugar.
///
/// Water dissolves it by [`solubility`], spirit the less the stronger it is; glycerin and the other sugars are taken
/// neither to help nor to hinder. What a syrup holds above saturation stays dissolved, as in the density tables.
pub(crate) fn undissolved(liquid: &Composition, crystals: f64, t: f64) -> f64 {
    let sucrose = liquid.grams(Component::Sucrose);
    if sucrose <= 0.0 {
        return 0.0;
    }
    let (ethanol, water) = (
        liquid.grams(Component::Ethanol),
        liquid.grams(Component::Water),
    );
    let solvent = ethanol + water;
    if solvent <= 0.0 {
        return crystals;
    }
    let saturated = saturation(t);
    let per_gram = saturated / (1.0 - saturated);
    let share = ethanol / solvent;
    let less = IN_SPIRIT
        .windows(2)
        .find(|pair| share <= pair[1].0)
        .map_or(0.0, |pair| {
            let ((e0, s0), (e1, s1)) = (pair[0], pair[1]);
            s0 + (s1 - s0) * (share - e0) / (e1 - e0)
        });
    let held = (sucrose - crystals - water * per_gram).max(0.0);
    (sucrose - held - solvent * less * per_gram).max(0.0)
}
