//! What the reader of a liquid's figures should know about them.

use message::{Message, say};

use super::{
    composition::{Component, Composition},
    glycerol, volume,
};

/// A remark with its sentence and its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Remark {
    /// Several kinds of solute: the volume is an estimate.
    VolumeIsEstimated,
    /// The pH is that of the plain acid.
    AcidPhIsAFloor,
    /// No acid, so no pH.
    NoAcid,
    /// More sucrose than the water holds.
    SugarUndissolved,
    /// Glycerol outside the temperatures its density was fitted to.
    GlycerolOutsideFit,
    /// Ethanol-water below the freezing point of water.
    MayFreeze,
    /// Oil was given and is left out.
    OilLeftOut,
    /// Glucose and fructose are taken from the honey tables.
    SugarsOfHoneyOrFruit,
}

impl Remark {
    pub(crate) fn about(liquid: &Composition, undissolved_g: f64, t: f64) -> Vec<Self> {
        let has = |component| liquid.grams(component) > 0.0;
        let undissolved = undissolved_g > 1e-6 * liquid.grams(Component::Sucrose);
        [
            (
                volume::doubt(liquid, 20.0) >= 0.5 * volume::TERNARY_DOUBT,
                Self::VolumeIsEstimated,
            ),
            (has(Component::AceticAcid), Self::AcidPhIsAFloor),
            (!has(Component::AceticAcid), Self::NoAcid),
            (undissolved, Self::SugarUndissolved),
            (
                has(Component::Glycerol) && !glycerol::FITTED.contains(&t),
                Self::GlycerolOutsideFit,
            ),
            (t < 0.0, Self::MayFreeze),
            (has(Component::Oil), Self::OilLeftOut),
            (liquid.hexoses_g() > 0.0, Self::SugarsOfHoneyOrFruit),
        ]
        .into_iter()
        .filter_map(|(applies, remark)| applies.then_some(remark))
        .collect()
    }

    /// A short word for it at the wire.
    pub fn code(self) -> &'static str {
        match self {
            Self::VolumeIsEstimated => "volume_is_estimated",
            Self::AcidPhIsAFloor => "acid_ph_is_a_floor",
            Self::NoAcid => "no_acid",
            Self::SugarUndissolved => "sugar_undissolved",
            Self::GlycerolOutsideFit => "glycerol_outside_fit",
            Self::MayFreeze => "may_freeze",
            Self::OilLeftOut => "oil_left_out",
            Self::SugarsOfHoneyOrFruit => "sugars_of_honey_or_fruit",
        }
    }

    /// The remark as a finished sentence.
    pub fn text(self) -> Message {
        match self {
            Self::VolumeIsEstimated => say!("remark-volume-is-estimated"),
            Self::AcidPhIsAFloor => say!("remark-acid-ph"),
            Self::NoAcid => say!("remark-no-acid"),
            Self::SugarUndissolved => say!("remark-sugar-undissolved"),
            Self::GlycerolOutsideFit => say!("remark-glycerol-outside-fit"),
            Self::MayFreeze => say!("remark-may-freeze"),
            Self::OilLeftOut => say!("remark-oil-left-out"),
            Self::SugarsOfHoneyOrFruit => say!("remark-sugars-of-honey"),
        }
    }

    /// Where it comes from; none for what is our own choice or common practice.
    pub fn source(self) -> Option<&'static str> {
        match self {
            Self::SugarUndissolved => Some("sucrose solubility table"),
            Self::GlycerolOutsideFit => {
                Some("Volk and Kähler 2018; Melinder's glycerol as coded in CoolProp")
            }
            Self::MayFreeze => Some("OIML R 22 (1975)"),
            Self::SugarsOfHoneyOrFruit => Some("Snyder 1933 honey table"),
            Self::VolumeIsEstimated | Self::NoAcid | Self::AcidPhIsAFloor | Self::OilLeftOut => {
                None
            }
        }
    }
}
