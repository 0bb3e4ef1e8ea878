//! What a mixture should come to.

use crate::{
    error::{OutOfRange, within},
    fraction::{MassFraction, Strength},
    mixture::{Acidity, Liquid},
    quantity::{Volume, millilitres_of},
};
use message::{Unit, say};

/// What is wanted; what is left out is free.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Targets {
    /// Strength of the liquid at the end.
    pub strength: Option<Strength>,
    /// Glycerol by mass in the liquid at the end.
    pub glycerol: Option<MassFraction>,
    /// All sugars by mass in the liquid at the end.
    pub sugar: Option<MassFraction>,
    /// Acidity of the liquid at the end.
    pub acidity: Option<Acidity>,
    /// Volume of the liquid at the end, at 20 C.
    pub volume: Option<Volume>,
    /// Sum of what is measured out, at 20 C.
    pub poured: Option<Volume>,
}

/// One of the [`Targets`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Target {
    /// Strength, % vol.
    #[serde(rename = "strength_percent_vol")]
    Strength,
    /// Glycerol, % by mass.
    #[serde(rename = "glycerol_percent_mass")]
    Glycerol,
    /// Sugars, % by mass.
    #[serde(rename = "sugar_percent_mass")]
    Sugar,
    /// Acidity, g per 100 mL.
    #[serde(rename = "acidity_g_per_100ml")]
    Acidity,
    /// Volume at the end, mL.
    #[serde(rename = "volume_ml")]
    Volume,
    /// Volume measured out, mL.
    #[serde(rename = "poured_ml")]
    Poured,
}

impl Target {
    /// How near counts as reached, in the target's unit: what a measuring jug can tell.
    fn tolerance(self, wanted: f64) -> f64 {
        match self {
            Self::Strength => 0.01,
            Self::Glycerol | Self::Sugar => 0.02,
            Self::Acidity => 0.005,
            Self::Volume | Self::Poured => 0.001 * wanted,
        }
    }
}

/// A target that was missed.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "MixtureShortfall"))]
pub struct Shortfall {
    /// Which one.
    pub target: Target,
    /// What was wanted, in the unit its name ends in.
    pub wanted: f64,
    /// What the nearest mixture gives.
    pub got: f64,
}

impl Targets {
    /// Refuses sizes that no jar has.
    pub(crate) fn refuse_sizes(&self) -> Result<(), OutOfRange> {
        for (what, size) in [
            (say!("what-volume-wanted-at-the-end"), self.volume),
            (say!("what-volume-to-pour"), self.poured),
        ] {
            if let Some(size) = size {
                within(what, millilitres_of(size), 0.1, 1e6, Unit::Millilitre)?;
            }
        }
        Ok(())
    }

    /// Those that the liquid, of which `poured_ml` was measured out, does not meet.
    pub(crate) fn missed_by(&self, liquid: &Liquid, poured_ml: f64) -> Vec<Shortfall> {
        let wanted = [
            (
                Target::Strength,
                self.strength.map(Strength::percent),
                liquid.strength_percent_vol.value,
            ),
            (
                Target::Glycerol,
                self.glycerol.map(MassFraction::percent),
                liquid.glycerol_percent_mass.value,
            ),
            (
                Target::Sugar,
                self.sugar.map(MassFraction::percent),
                liquid.sugar_percent_mass.value,
            ),
            (
                Target::Acidity,
                self.acidity.map(Acidity::grams_per_100_ml),
                liquid.acidity_g_per_100ml.value,
            ),
            (
                Target::Volume,
                self.volume.map(millilitres_of),
                liquid.volume_ml.value,
            ),
            (Target::Poured, self.poured.map(millilitres_of), poured_ml),
        ];
        wanted
            .into_iter()
            .filter_map(|(target, wanted, got)| {
                let wanted = wanted?;
                let missed = (got - wanted).abs() > target.tolerance(wanted);
                missed.then_some(Shortfall {
                    target,
                    wanted,
                    got,
                })
            })
            .collect()
    }
}
