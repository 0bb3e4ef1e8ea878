//! The water that neither sugar nor glycerin keeps, and the alcohol that this needs.
//!
//! A rule of compounding beside water activity: each solute takes up its share of the volume and keeps its share of
//! the water; what is left over is free, and alcohol must be so strong in it.

use super::{
    composition::{Component, Composition},
    ethanol, glycerol,
};

/// Volume that a gram of dissolved sugar takes up, mL.
const SUGAR_TAKES_UP: f64 = 0.647;
/// Water that a gram of sugar keeps, mL.
const SUGAR_KEEPS: f64 = 0.53;
/// Water that a millilitre of glycerin keeps, mL; it takes up its own volume.
const GLYCERIN_KEEPS: f64 = 1.0;
/// Share of the free water that must be absolute alcohol in a neutral liquid.
const NEUTRAL: f64 = 0.18;
/// The same in a sour one. Printed for plain liquids of pH 5; its use on free water is our step.
const SOUR: f64 = 0.15;
/// From so much acid in 100 g of water a liquid counts as sour: about a mild wine (our own choice, no source). The
/// plain acid then lies near pH 3, which leaves room below 5 for what plants raise.
const SOUR_FROM_G: f64 = 0.3;

/// What the rule says of a liquid of known composition and volume.
///
/// *Source*: Preserving syrups, and Preservation (nonaqueous solutions), Pharmaceutics and Compounding Laboratory,
/// University of North Carolina.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct FreeWater {
    /// Volume that is neither sugar, glycerin nor water that they keep, the alcohol in it included, mL.
    pub free_ml: f64,
    /// Absolute ethanol that it needs, mL.
    pub alcohol_to_keep_ml: f64,
    /// Absolute ethanol in it, % of its volume; 100 where nothing is free.
    pub alcohol_in_free_water_percent: f64,
    /// How much of the water sugar, glycerin and alcohol keep together, %; [`MORE_THAN_ENOUGH`] at the most.
    pub water_kept_percent: f64,
}

/// Beyond this it no longer matters by how much the water is kept.
const MORE_THAN_ENOUGH: f64 = 200.0;

/// The rule on a liquid whose dissolved part takes `volume_ml` at 20 C.
///
/// `free = V - (0.647 + 0.53) sugar_g - 2 glycerin_mL`, needed `= 0.18 free`, 0.15 in a sour liquid. What else is
/// dissolved is not known, so its volume counts as water, on the safe side.
pub(crate) fn of(liquid: &Composition, volume_ml: f64) -> FreeWater {
    let sugar_g = liquid.sugars_g();
    let pure_ml = |grams: f64, rho: f64| 1000.0 * grams / rho;
    let glycerin_ml = pure_ml(liquid.grams(Component::Glycerol), glycerol::rho(1.0, 20.0));
    let alcohol_ml = pure_ml(liquid.grams(Component::Ethanol), ethanol::PURE_AT_20);
    let water_g = liquid.grams(Component::Water);
    let needed = if 100.0 * liquid.grams(Component::AceticAcid) >= SOUR_FROM_G * water_g {
        SOUR
    } else {
        NEUTRAL
    };
    let room_ml = volume_ml - SUGAR_TAKES_UP * sugar_g - glycerin_ml;
    let kept_ml = SUGAR_KEEPS * sugar_g + GLYCERIN_KEEPS * glycerin_ml;
    // Sums of large volumes leave a trace where nothing is left.
    let free_ml = Some(room_ml - kept_ml)
        .filter(|free| *free > 1e-9 * volume_ml)
        .unwrap_or(0.0);
    FreeWater {
        free_ml,
        alcohol_to_keep_ml: needed * free_ml,
        alcohol_in_free_water_percent: if free_ml > alcohol_ml {
            100.0 * alcohol_ml / free_ml
        } else {
            100.0
        },
        water_kept_percent: if room_ml > 0.0 {
            (100.0 * (kept_ml + alcohol_ml / needed) / room_ml).min(MORE_THAN_ENOUGH)
        } else {
            MORE_THAN_ENOUGH
        },
    }
}
