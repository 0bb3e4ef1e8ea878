//! From the figures on a label to an ingredient, and back.

use journal::Stock;
use physics::mixture::{Acidity, Ingredient, Oil};
use physics::quantity::kg_per_m3;
use physics::{MassFraction, Strength};

use super::wire::{IngredientKind as Kind, Pour, StockItem};
use crate::Failure;
use crate::failure::At;
use crate::words;

/// Purity of vegetable glycerin where the label states none.
const USUAL_PURITY: f64 = 99.5;
/// Water in honey where nothing is stated.
const USUAL_HONEY_WATER: f64 = 17.0;

/// The figures of a label as they come over the wire, whichever of them are there.
struct Label<'a> {
    kind: Kind,
    figures: [(&'static str, Option<f64>); 6],
    oil: Option<&'a str>,
}

impl Label<'_> {
    /// The figure `name`, which must be there unless there is a usual one.
    fn figure(&mut self, name: &'static str, usual: Option<f64>) -> Result<f64, Failure> {
        let found = self.figures.iter_mut().find(|(known, _)| *known == name);
        found
            .and_then(|(_, figure)| figure.take())
            .or(usual)
            .ok_or_else(|| {
                let message = format!("{} of {} is missing", words::field(name), word(self.kind));
                Failure::invalid(name, words::sentence(&message))
            })
    }

    fn stock(mut self) -> Result<Stock, Failure> {
        const STRENGTH: &str = "strength_percent_vol";
        const ACIDITY: &str = "acidity_g_per_100ml";
        const SUGAR: &str = "sugar_percent_mass";
        let stock = match self.kind {
            Kind::Water => Stock::Water,
            Kind::Sugar => Stock::Sugar,
            Kind::Spirit => Stock::Spirit {
                strength_percent_vol: self.figure(STRENGTH, None)?,
            },
            Kind::Glycerin => Stock::Glycerin {
                purity_percent_mass: self.figure("purity_percent_mass", Some(USUAL_PURITY))?,
            },
            Kind::Vinegar => Stock::Vinegar {
                acidity_g_per_100ml: self.figure(ACIDITY, None)?,
            },
            Kind::Wine => Stock::Wine {
                strength_percent_vol: self.figure(STRENGTH, None)?,
                sugar_g_per_l: self.figure("sugar_g_per_l", None)?,
                acidity_g_per_100ml: self.figure(ACIDITY, Some(0.0))?,
            },
            Kind::Syrup => Stock::Syrup {
                sugar_percent_mass: self.figure(SUGAR, None)?,
            },
            Kind::Honey => Stock::Honey {
                water_percent_mass: self.figure("water_percent_mass", Some(USUAL_HONEY_WATER))?,
            },
            Kind::Juice => Stock::Juice {
                sugar_percent_mass: self.figure(SUGAR, None)?,
                acidity_g_per_100ml: self.figure(ACIDITY, None)?,
            },
            Kind::Oil => Stock::Oil {
                oil: self
                    .oil
                    .take()
                    .ok_or_else(|| Failure::invalid("oil", "Say which oil it is, such as olive."))?
                    .to_owned(),
            },
        };
        let too_many = self.figures.iter().find(|(_, figure)| figure.is_some());
        let too_many = too_many.map(|(name, _)| *name).or(self.oil.map(|_| "oil"));
        match too_many {
            Some(name) => {
                let message = format!("{} is no figure of {}", words::field(name), word(self.kind));
                Err(Failure::invalid(name, words::sentence(&message)))
            }
            None => Ok(stock),
        }
    }
}

fn word(kind: Kind) -> &'static str {
    match kind {
        Kind::Water => "water",
        Kind::Spirit => "a spirit",
        Kind::Glycerin => "glycerin",
        Kind::Vinegar => "a vinegar",
        Kind::Wine => "a wine",
        Kind::Sugar => "sugar",
        Kind::Syrup => "a syrup",
        Kind::Honey => "honey",
        Kind::Juice => "a juice",
        Kind::Oil => "an oil",
    }
}

macro_rules! label {
    ($item:expr) => {
        Label {
            kind: $item.kind,
            figures: [
                ("strength_percent_vol", $item.strength_percent_vol),
                ("purity_percent_mass", $item.purity_percent_mass),
                ("acidity_g_per_100ml", $item.acidity_g_per_100ml),
                ("sugar_g_per_l", $item.sugar_g_per_l),
                ("sugar_percent_mass", $item.sugar_percent_mass),
                ("water_percent_mass", $item.water_percent_mass),
            ],
            oil: $item.oil.as_deref(),
        }
    };
}

/// What an item of the wire is.
pub(crate) fn stock(item: &StockItem) -> Result<Stock, Failure> {
    label!(item).stock()
}

/// What is poured.
pub(super) fn poured(pour: &Pour) -> Result<Stock, Failure> {
    label!(pour).stock()
}

/// The ingredient that a label stands for.
///
/// # Errors
/// A [`Failure`] naming the figure that no such liquid has.
pub(crate) fn ingredient(stock: &Stock) -> Result<Ingredient, Failure> {
    let strength = |percent| Strength::from_percent(percent).at("strength_percent_vol");
    let share = |field, percent| MassFraction::from_percent(percent).at(field);
    let acidity = |grams| Acidity::new(grams).at("acidity_g_per_100ml");
    Ok(match stock {
        Stock::Water => Ingredient::water(),
        Stock::Sugar => Ingredient::sugar(),
        Stock::Spirit {
            strength_percent_vol,
        } => Ingredient::spirit(strength(*strength_percent_vol)?),
        Stock::Glycerin {
            purity_percent_mass,
        } => Ingredient::glycerin(share("purity_percent_mass", *purity_percent_mass)?),
        Stock::Vinegar {
            acidity_g_per_100ml,
        } => Ingredient::vinegar(acidity(*acidity_g_per_100ml)?),
        Stock::Wine {
            strength_percent_vol,
            sugar_g_per_l,
            acidity_g_per_100ml,
        } => {
            // Checked here one by one, so that each refusal finds its own field.
            let (strength, acidity) = (
                strength(*strength_percent_vol)?,
                acidity(*acidity_g_per_100ml)?,
            );
            let none = Strength::from_percent(0.0).at("strength_percent_vol")?;
            let no_acid = Acidity::new(0.0).at("acidity_g_per_100ml")?;
            Ingredient::wine(none, kg_per_m3(*sugar_g_per_l), no_acid).at("sugar_g_per_l")?;
            Ingredient::wine(none, kg_per_m3(0.0), acidity).at("acidity_g_per_100ml")?;
            Ingredient::wine(strength, kg_per_m3(*sugar_g_per_l), acidity)
                .at("strength_percent_vol")?
        }
        Stock::Syrup { sugar_percent_mass } => {
            Ingredient::syrup(share("sugar_percent_mass", *sugar_percent_mass)?)
                .at("sugar_percent_mass")?
        }
        Stock::Honey { water_percent_mass } => {
            Ingredient::honey(share("water_percent_mass", *water_percent_mass)?)
                .at("water_percent_mass")?
        }
        Stock::Juice {
            sugar_percent_mass,
            acidity_g_per_100ml,
        } => {
            let sugar = share("sugar_percent_mass", *sugar_percent_mass)?;
            let acidity = acidity(*acidity_g_per_100ml)?;
            let no_acid = Acidity::new(0.0).at("acidity_g_per_100ml")?;
            Ingredient::juice(sugar, no_acid).at("sugar_percent_mass")?;
            Ingredient::juice(sugar, acidity).at("acidity_g_per_100ml")?
        }
        Stock::Oil { oil } => Ingredient::oil(Oil::from_key(oil).ok_or_else(|| {
            let known: Vec<&str> = Oil::ALL.into_iter().map(Oil::key).collect();
            let message = format!(
                "{oil:?} is no oil known here; known are {}.",
                known.join(", ")
            );
            Failure::invalid("oil", message)
        })?),
    })
}

/// A label as it goes over the wire.
pub(crate) fn as_item(stock: &Stock) -> StockItem {
    let mut item = StockItem {
        kind: Kind::Water,
        strength_percent_vol: None,
        purity_percent_mass: None,
        acidity_g_per_100ml: None,
        sugar_g_per_l: None,
        sugar_percent_mass: None,
        water_percent_mass: None,
        oil: None,
        available_ml: None,
        exactly_ml: None,
        supply: None,
    };
    item.kind = match stock {
        Stock::Water => Kind::Water,
        Stock::Sugar => Kind::Sugar,
        Stock::Spirit {
            strength_percent_vol,
        } => {
            item.strength_percent_vol = Some(*strength_percent_vol);
            Kind::Spirit
        }
        Stock::Glycerin {
            purity_percent_mass,
        } => {
            item.purity_percent_mass = Some(*purity_percent_mass);
            Kind::Glycerin
        }
        Stock::Vinegar {
            acidity_g_per_100ml,
        } => {
            item.acidity_g_per_100ml = Some(*acidity_g_per_100ml);
            Kind::Vinegar
        }
        Stock::Wine {
            strength_percent_vol,
            sugar_g_per_l,
            acidity_g_per_100ml,
        } => {
            item.strength_percent_vol = Some(*strength_percent_vol);
            item.sugar_g_per_l = Some(*sugar_g_per_l);
            item.acidity_g_per_100ml = Some(*acidity_g_per_100ml);
            Kind::Wine
        }
        Stock::Syrup { sugar_percent_mass } => {
            item.sugar_percent_mass = Some(*sugar_percent_mass);
            Kind::Syrup
        }
        Stock::Honey { water_percent_mass } => {
            item.water_percent_mass = Some(*water_percent_mass);
            Kind::Honey
        }
        Stock::Juice {
            sugar_percent_mass,
            acidity_g_per_100ml,
        } => {
            item.sugar_percent_mass = Some(*sugar_percent_mass);
            item.acidity_g_per_100ml = Some(*acidity_g_per_100ml);
            Kind::Juice
        }
        Stock::Oil { oil } => {
            item.oil = Some(oil.clone());
            Kind::Oil
        }
    };
    item
}

/// The label that stands for an ingredient.
pub(crate) fn label_of(ingredient: &Ingredient) -> Stock {
    use physics::mixture::Kind as Known;
    use physics::quantity::kg_per_m3_of;
    match ingredient.kind() {
        Known::Water => Stock::Water,
        Known::Sugar => Stock::Sugar,
        Known::Spirit { strength } => Stock::Spirit {
            strength_percent_vol: strength.percent(),
        },
        Known::Glycerin { purity } => Stock::Glycerin {
            purity_percent_mass: purity.percent(),
        },
        Known::Vinegar { acidity } => Stock::Vinegar {
            acidity_g_per_100ml: acidity.grams_per_100_ml(),
        },
        Known::Wine {
            strength,
            sugar,
            acidity,
        } => Stock::Wine {
            strength_percent_vol: strength.percent(),
            sugar_g_per_l: kg_per_m3_of(sugar),
            acidity_g_per_100ml: acidity.grams_per_100_ml(),
        },
        Known::Syrup { sugar } => Stock::Syrup {
            sugar_percent_mass: sugar.percent(),
        },
        Known::Honey { water } => Stock::Honey {
            water_percent_mass: water.percent(),
        },
        Known::Juice { sugar, acidity } => Stock::Juice {
            sugar_percent_mass: sugar.percent(),
            acidity_g_per_100ml: acidity.grams_per_100_ml(),
        },
        Known::Oil(oil) => Stock::Oil {
            oil: oil.key().to_owned(),
        },
    }
}
