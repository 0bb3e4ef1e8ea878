//! The volume of a liquid of any composition.

use super::{
    acid,
    composition::{Component, Composition},
    ethanol, glycerol, sugar, water,
};

/// Half-width of the relative doubt about the volume of a liquid with two or more kinds of solute.
pub(crate) const TERNARY_DOUBT: f64 = 0.01;

/// From this share of the second kind among everything dissolved the whole doubt is stated; below,
/// it fades in proportion (our own choice, no source: a trace cannot move a volume by 1 %).
const SECOND_KIND_COUNTS_FULLY: f64 = 0.1;

/// Volume in mL of the liquid part at `t` in C.
///
/// With one kind of solute this is that solute's own formula. With several the water is shared
/// among them in proportion to their mass, each takes its own formula with its share, and the
/// volumes add up: an estimate, good to 1 %.
pub(crate) fn millilitres(liquid: &Composition, t: f64) -> f64 {
    let water = liquid.grams(Component::Water);
    let parts = kinds(liquid);
    let solutes: f64 = parts.iter().sum();
    if solutes <= 0.0 {
        return 1000.0 * water / water::rho(t);
    }
    let hexoses = liquid.hexoses_g();
    let mut volume = 0.0;
    for (kind, &mass) in parts.iter().enumerate() {
        if mass <= 0.0 {
            continue;
        }
        let part = mass + water * mass / solutes;
        let w = mass / part;
        let rho = match kind {
            0 => ethanol::rho(w, t),
            1 => glycerol::rho(w, t),
            2 => sugar::rho_of_mixed(w, hexoses / mass, t),
            _ => acid::rho(w, t),
        };
        volume += 1000.0 * part / rho;
    }
    volume
}

/// Relative doubt about [`millilitres`]: none for a single kind of solute at a temperature its formula covers.
pub(crate) fn doubt(liquid: &Composition, t: f64) -> f64 {
    let parts = kinds(liquid);
    let solutes: f64 = parts.iter().sum();
    if solutes <= 0.0 {
        return 0.0;
    }
    let largest = parts.iter().copied().fold(0.0, f64::max);
    let second = (solutes - largest) / solutes;
    let mut doubt = TERNARY_DOUBT * (second / SECOND_KIND_COUNTS_FULLY).min(1.0);
    let mass = liquid.liquid_g();
    doubt += sugar::HEXOSE_DOUBT * liquid.hexoses_g() / mass;
    if t != 20.0 {
        doubt += acid::EXPANSION * (t - 20.0).abs() * parts[3] / mass;
    }
    if parts[1] > 0.0 && !glycerol::FITTED.contains(&t) {
        doubt += glycerol::OFF_OUTSIDE_FITTED * (parts[1] / solutes);
    }
    doubt
}

/// Volume that 1 g of each component takes in this liquid at 20 C, mL, such that their sum over
/// the liquid is its volume exactly; none without any liquid.
pub(crate) fn partial_millilitres(liquid: &Composition) -> Option<[f64; 7]> {
    if liquid.liquid_g() <= 0.0 {
        return None;
    }
    let volume = millilitres(liquid, 20.0);
    let step = 1e-6 * liquid.liquid_g();
    let mut partial = Component::LIQUID
        .map(|component| (millilitres(&liquid.plus(component, step), 20.0) - volume) / step);
    let sum: f64 = Component::LIQUID
        .iter()
        .zip(partial)
        .map(|(&component, each)| each * liquid.grams(component))
        .sum();
    partial.iter_mut().for_each(|each| *each *= volume / sum);
    Some(partial)
}

/// Masses of the kinds of solute in grams: ethanol, glycerol, sugars, acid.
fn kinds(liquid: &Composition) -> [f64; 4] {
    [
        liquid.grams(Component::Ethanol),
        liquid.grams(Component::Glycerol),
        liquid.sugars_g(),
        liquid.grams(Component::AceticAcid),
    ]
}
