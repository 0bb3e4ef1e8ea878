//! What can be poured, and what its label says about it.

use serde::{Deserialize, Serialize};

use crate::Refusal;
use crate::refusal::{number, text};

/// A liquid (or sugar) with the figures on its label.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Stock {
    /// Water.
    Water,
    /// Neutral or distilled spirit.
    Spirit {
        /// Strength at 20 C.
        strength_percent_vol: f64,
    },
    /// Vegetable glycerin.
    Glycerin {
        /// Glycerol by mass.
        purity_percent_mass: f64,
    },
    /// Vinegar.
    Vinegar {
        /// Titratable acidity as acetic acid.
        acidity_g_per_100ml: f64,
    },
    /// Wine.
    Wine {
        /// Strength at 20 C.
        strength_percent_vol: f64,
        /// Sugar.
        sugar_g_per_l: f64,
        /// Titratable acidity as acetic acid.
        #[serde(default)]
        acidity_g_per_100ml: f64,
    },
    /// Household sugar.
    Sugar,
    /// Sugar syrup.
    Syrup {
        /// Sugar by mass.
        sugar_percent_mass: f64,
    },
    /// Honey.
    Honey {
        /// Water by mass.
        water_percent_mass: f64,
    },
    /// Fruit juice.
    Juice {
        /// Sugar by mass.
        sugar_percent_mass: f64,
        /// Titratable acidity as acetic acid.
        acidity_g_per_100ml: f64,
    },
    /// Carrier oil.
    Oil {
        /// Which one, for instance olive.
        oil: String,
    },
}

impl Stock {
    /// Refuses figures that no label can carry.
    ///
    /// # Errors
    /// [`Refusal`] naming the field and the accepted range.
    pub fn check(&self) -> Result<(), Refusal> {
        let strength = |value| {
            number(
                "strength_percent_vol",
                "the strength",
                value,
                0.0,
                100.0,
                "between 0 and 100 % vol",
            )
        };
        let acidity = |value| {
            number(
                "acidity_g_per_100ml",
                "the acidity",
                value,
                0.0,
                100.0,
                "between 0 and 100 g per 100 mL",
            )
        };
        let sugar = |value| {
            number(
                "sugar_percent_mass",
                "the sugar",
                value,
                0.0,
                100.0,
                "between 0 and 100 % of the weight",
            )
        };
        match self {
            Self::Water | Self::Sugar => Ok(()),
            Self::Spirit {
                strength_percent_vol,
            } => strength(*strength_percent_vol),
            Self::Glycerin {
                purity_percent_mass,
            } => number(
                "purity_percent_mass",
                "the purity",
                *purity_percent_mass,
                0.0,
                100.0,
                "between 0 and 100 % of the weight",
            ),
            Self::Vinegar {
                acidity_g_per_100ml,
            } => acidity(*acidity_g_per_100ml),
            Self::Wine {
                strength_percent_vol,
                sugar_g_per_l,
                acidity_g_per_100ml,
            } => {
                strength(*strength_percent_vol)?;
                number(
                    "sugar_g_per_l",
                    "the sugar",
                    *sugar_g_per_l,
                    0.0,
                    1000.0,
                    "between 0 and 1000 g per litre",
                )?;
                acidity(*acidity_g_per_100ml)
            }
            Self::Syrup { sugar_percent_mass } => sugar(*sugar_percent_mass),
            Self::Honey { water_percent_mass } => number(
                "water_percent_mass",
                "the water",
                *water_percent_mass,
                0.0,
                100.0,
                "between 0 and 100 % of the weight",
            ),
            Self::Juice {
                sugar_percent_mass,
                acidity_g_per_100ml,
            } => {
                sugar(*sugar_percent_mass)?;
                acidity(*acidity_g_per_100ml)
            }
            Self::Oil { oil } => text("oil", "The oil", oil, 60),
        }
    }
}
