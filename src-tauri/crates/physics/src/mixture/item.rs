//! What is poured, as its label describes it: each kind of liquid or sugar with the figures that its label bears.
//!
//! A kind is stated here once, and here alone: its word, its label, what it is made of, what it is called.

use message::{Argument, At, Failure, Message, Refusal, Unit, say};
use serde::{Deserialize, Serialize};

use super::{
    acid::Acidity,
    ingredient::Ingredient,
    oil::{self, Oil},
};
use crate::{
    error::within,
    fraction::{MassFraction, Strength},
    quantity::kg_per_m3,
};

/// What a maker may want to do without.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Without {
    /// Spirit and wine, and any liquid of more than half a per cent.
    Alcohol,
    /// Honey.
    Honey,
    /// Sugar, syrup, honey and sweet wine.
    Sugar,
    /// As sugar, and glycerin.
    Sweet,
    /// Vinegar.
    Vinegar,
    /// Oil.
    Oil,
    /// Glycerin.
    Glycerin,
    /// Wine.
    Wine,
}

/// A kind in a line: its word, who does without it, then each figure with what is meant where a label leaves it out, and
/// what is usually bought (common practice, no source).
macro_rules! items {
    ($($(#[$doc:meta])* $kind:ident = $word:literal, [$($held:ident),*] {
        $($(#[doc = $figure_doc:literal])* $(#[serde($lenient:ident)])? $figure:ident: $unsaid:expr, $bought:literal;)*
    })*) => {
        /// The kinds of liquid (and sugar) that are poured.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        #[cfg_attr(feature = "ts", derive(ts_rs::TS))]
        pub enum IngredientKind {
            $($(#[$doc])* $kind,)*
            /// Carrier oil.
            Oil,
        }

        /// A kind with the figures of its label, each known to be possible.
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub enum Kind {
            $($(#[$doc])* $kind {
                $($(#[doc = $figure_doc])* $figure: f64,)*
            },)*
            /// Carrier oil.
            Oil(Oil),
        }

        impl From<Kind> for IngredientKind {
            fn from(kind: Kind) -> Self {
                match kind {
                    $(Kind::$kind { .. } => Self::$kind,)*
                    Kind::Oil(_) => Self::Oil,
                }
            }
        }

        impl IngredientKind {
            /// Every kind.
            pub const ALL: &[Self] = &[$(Self::$kind,)* Self::Oil];

            /// The word that stands for it in tables and on the wire.
            pub fn key(self) -> &'static str {
                match self {
                    $(Self::$kind => $word,)*
                    Self::Oil => "oil",
                }
            }

            /// Whether who wants to do without `what` does without it.
            pub fn holds(self, what: Without) -> bool {
                let held: &[Without] = match self {
                    $(Self::$kind => &[$(Without::$held),*],)*
                    Self::Oil => &[Without::Oil],
                };
                held.contains(&what)
            }
        }

        /// A liquid or a sugar as its label describes it.
        #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
        #[serde(tag = "kind", rename_all = "snake_case")]
        pub enum Item {
            $($(#[$doc])* $kind {
                $($(#[doc = $figure_doc])* $(#[serde($lenient)])? $figure: f64,)*
            },)*
            /// Carrier oil.
            Oil {
                /// Which one, for instance olive.
                oil: String,
            },
        }

        impl Item {
            /// Which kind it is.
            pub fn kind(&self) -> IngredientKind {
                match self {
                    $(Self::$kind { .. } => IngredientKind::$kind,)*
                    Self::Oil { .. } => IngredientKind::Oil,
                }
            }

            /// The label that stands for an ingredient.
            pub fn of(ingredient: &Ingredient) -> Self {
                match ingredient.kind() {
                    $(Kind::$kind { $($figure),* } => Self::$kind { $($figure),* },)*
                    Kind::Oil(oil) => Self::Oil { oil: oil.key().to_owned() },
                }
            }

            /// The figures of its label, by the names they have on the wire.
            pub fn figures(&self) -> Vec<(&'static str, f64)> {
                match self {
                    $(Self::$kind { $($figure),* } => vec![$((stringify!($figure), *$figure)),*],)*
                    Self::Oil { .. } => Vec::new(),
                }
            }

            /// Reads a label: `figure` is asked for each figure by its name, with what is meant where the label leaves
            /// it out; `oil` for the oil.
            ///
            /// # Errors
            /// Those of `figure` and `oil`.
            pub fn read<E>(
                kind: IngredientKind,
                mut figure: impl FnMut(&'static str, Option<f64>) -> Result<f64, E>,
                oil: impl FnOnce() -> Result<String, E>,
            ) -> Result<Self, E> {
                Ok(match kind {
                    $(IngredientKind::$kind => Self::$kind {
                        $($figure: figure(stringify!($figure), $unsaid)?,)*
                    },)*
                    IngredientKind::Oil => Self::Oil { oil: oil()? },
                })
            }

            /// What is usually bought of a kind where no figure, or only some, are `stated`.
            pub fn bought(
                kind: IngredientKind,
                stated: impl Fn(&'static str) -> Option<f64>,
                oil: Option<&str>,
            ) -> Self {
                match kind {
                    $(IngredientKind::$kind => Self::$kind {
                        $($figure: stated(stringify!($figure)).unwrap_or($bought),)*
                    },)*
                    IngredientKind::Oil => Self::Oil {
                        oil: oil.unwrap_or("olive").to_owned(),
                    },
                }
            }
        }
    };
}

items! {
    /// Water.
    Water = "water", [] {}
    /// Neutral or distilled spirit.
    Spirit = "spirit", [Alcohol] {
        /// Strength at 20 C.
        strength_percent_vol: None, 95.0;
    }
    /// Vegetable glycerin.
    Glycerin = "glycerin", [Sweet, Glycerin] {
        /// Glycerol by mass.
        purity_percent_mass: Some(99.5), 99.5;
    }
    /// Vinegar.
    Vinegar = "vinegar", [Vinegar] {
        /// Titratable acidity as acetic acid.
        acidity_g_per_100ml: None, 5.0;
    }
    /// Wine.
    Wine = "wine", [Alcohol, Wine] {
        /// Strength at 20 C.
        strength_percent_vol: None, 12.0;
        /// Sugar.
        sugar_g_per_l: None, 0.0;
        /// Titratable acidity as acetic acid.
        #[serde(default)]
        acidity_g_per_100ml: Some(0.0), 0.0;
    }
    /// Household sugar.
    Sugar = "sugar", [Sugar, Sweet] {}
    /// Sugar syrup.
    Syrup = "syrup", [Sugar, Sweet] {
        /// Sugar by mass.
        sugar_percent_mass: None, 65.0;
    }
    /// Honey.
    Honey = "honey", [Honey, Sugar, Sweet] {
        /// Water by mass.
        water_percent_mass: Some(17.0), 17.0;
    }
    /// Fruit juice.
    Juice = "juice", [] {
        /// Sugar by mass.
        sugar_percent_mass: None, 11.0;
        /// Titratable acidity as acetic acid.
        acidity_g_per_100ml: None, 0.0;
    }
}

/// What a figure of a label is called; none where a label has no such figure.
pub fn figure_name(name: &str) -> Option<Message> {
    Some(match name {
        "strength_percent_vol" => say!("what-strength"),
        "purity_percent_mass" => say!("what-purity"),
        "acidity_g_per_100ml" => say!("what-acidity"),
        "sugar_g_per_l" | "sugar_percent_mass" => say!("what-sugar"),
        "water_percent_mass" => say!("what-water"),
        "oil" => say!("what-oil"),
        _ => return None,
    })
}

impl IngredientKind {
    /// The kind that `key` stands for.
    pub fn of(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.key() == key)
    }

    /// The kind inside a sentence.
    pub fn name(self) -> Message {
        Message::of_table(format!("ingredient-{}", self.key()))
    }
}

impl Item {
    /// Which oil it is; none where it is something else.
    pub fn oil(&self) -> Option<&str> {
        match self {
            Self::Oil { oil } => Some(oil),
            _ => None,
        }
    }

    /// Refuses figures that no label can carry.
    ///
    /// # Errors
    /// [`Refusal`] naming the figure and the accepted range.
    pub fn check(&self) -> Result<(), Refusal> {
        for (name, value) in self.figures() {
            let (most, unit) = match name {
                "strength_percent_vol" => (100.0, Unit::PercentVol),
                "acidity_g_per_100ml" => (100.0, Unit::GramPer100Ml),
                "sugar_g_per_l" => (1000.0, Unit::GramPerLitre),
                _ => (100.0, Unit::PercentMass),
            };
            let what = figure_name(name).unwrap_or_else(|| Message::own(name));
            within(what, value, 0.0, most, unit)
                .map_err(|out| Refusal::new(name, out.message()))?;
        }
        Ok(())
    }

    /// What it stands for.
    ///
    /// # Errors
    /// A [`Failure`] naming the figure that no such liquid has.
    pub fn ingredient(&self) -> Result<Ingredient, Failure> {
        let strength = |percent: &f64| Strength::from_percent(*percent).at("strength_percent_vol");
        let share = |field: &str, percent: &f64| MassFraction::from_percent(*percent).at(field);
        let acidity = |grams: &f64| Acidity::new(*grams).at("acidity_g_per_100ml");
        Ok(match self {
            Self::Water {} => Ingredient::water(),
            Self::Sugar {} => Ingredient::sugar(),
            Self::Spirit {
                strength_percent_vol,
            } => Ingredient::spirit(strength(strength_percent_vol)?),
            Self::Glycerin {
                purity_percent_mass,
            } => Ingredient::glycerin(share("purity_percent_mass", purity_percent_mass)?),
            Self::Vinegar {
                acidity_g_per_100ml,
            } => Ingredient::vinegar(acidity(acidity_g_per_100ml)?),
            Self::Wine {
                strength_percent_vol,
                sugar_g_per_l,
                acidity_g_per_100ml,
            } => {
                // Checked here one by one, so that each refusal finds its own field.
                let (strength, acidity) = (
                    strength(strength_percent_vol)?,
                    acidity(acidity_g_per_100ml)?,
                );
                let none = Strength::from_percent(0.0).at("strength_percent_vol")?;
                let no_acid = Acidity::new(0.0).at("acidity_g_per_100ml")?;
                Ingredient::wine(none, kg_per_m3(*sugar_g_per_l), no_acid).at("sugar_g_per_l")?;
                Ingredient::wine(none, kg_per_m3(0.0), acidity).at("acidity_g_per_100ml")?;
                Ingredient::wine(strength, kg_per_m3(*sugar_g_per_l), acidity)
                    .at("strength_percent_vol")?
            }
            Self::Syrup { sugar_percent_mass } => {
                Ingredient::syrup(share("sugar_percent_mass", sugar_percent_mass)?)
                    .at("sugar_percent_mass")?
            }
            Self::Honey { water_percent_mass } => {
                Ingredient::honey(share("water_percent_mass", water_percent_mass)?)
                    .at("water_percent_mass")?
            }
            Self::Juice {
                sugar_percent_mass,
                acidity_g_per_100ml,
            } => {
                let sugar = share("sugar_percent_mass", sugar_percent_mass)?;
                let acidity = acidity(acidity_g_per_100ml)?;
                let no_acid = Acidity::new(0.0).at("acidity_g_per_100ml")?;
                Ingredient::juice(sugar, no_acid).at("sugar_percent_mass")?;
                Ingredient::juice(sugar, acidity).at("acidity_g_per_100ml")?
            }
            Self::Oil { oil } => Ingredient::oil(
                Oil::from_key(oil).ok_or_else(|| Failure::invalid("oil", oil::unknown(oil)))?,
            ),
        })
    }
}

impl Ingredient {
    /// What it is called in a recipe: two that differ on their labels differ in this.
    pub fn name(&self) -> Message {
        let percent = Argument::percent;
        match self.kind() {
            Kind::Spirit {
                strength_percent_vol,
            } => say!(
                "spirit-of",
                strength = Argument::strength(strength_percent_vol)
            ),
            Kind::Glycerin {
                purity_percent_mass,
            } => say!("glycerin-of", purity = percent(purity_percent_mass)),
            Kind::Vinegar {
                acidity_g_per_100ml,
            } => say!("vinegar-of", acidity = percent(acidity_g_per_100ml)),
            Kind::Wine {
                strength_percent_vol,
                ..
            } => say!(
                "wine-of",
                strength = Argument::strength(strength_percent_vol)
            ),
            Kind::Syrup { sugar_percent_mass } => {
                say!("syrup-of", sugar = percent(sugar_percent_mass))
            }
            Kind::Honey { water_percent_mass } => {
                say!("honey-of", water = percent(water_percent_mass))
            }
            Kind::Juice {
                sugar_percent_mass, ..
            } => say!("juice-of", sugar = percent(sugar_percent_mass)),
            Kind::Oil(oil) => oil.name(),
            Kind::Water {} | Kind::Sugar {} => IngredientKind::from(self.kind()).name(),
        }
    }
}

#[cfg(test)]
mod tests;
