//! What the reader of a liquid's figures should know about them.

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
    pub fn text(self) -> &'static str {
        match self {
            Self::VolumeIsEstimated => {
                "More than one thing is dissolved here: volume and density are estimates good to about 1 %, and water activity, the higher of two rules, to about 0.03."
            }
            Self::AcidPhIsAFloor => {
                "The pH is that of the plain acid; herbs and salts raise it, and only a measurement tells the real one."
            }
            Self::NoAcid => "No acid was poured, so there is no pH to give.",
            Self::SugarUndissolved => {
                "There is more sugar than this much water dissolves; what stays at the bottom preserves nothing."
            }
            Self::GlycerolOutsideFit => {
                "The glycerin density formula was fitted from 15 to 30 C; outside that it may be off by 2.5 kg per cubic metre."
            }
            Self::MayFreeze => {
                "Below 0 C these figures hold only as long as the liquid has not begun to freeze."
            }
            Self::OilLeftOut => "Oil floats apart and is no part of these figures.",
            Self::SugarsOfHoneyOrFruit => {
                "The sugars of honey, wine and juice are taken as glucose and fructose with the density that honey tables show."
            }
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
