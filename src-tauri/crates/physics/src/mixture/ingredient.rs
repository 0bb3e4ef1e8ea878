//! What can be poured, and the plant it is poured on.

use super::{
    acid::{self, Acidity},
    composition::{Component, Composition},
    ethanol, glycerol,
    oil::Oil,
    sugar, volume, water,
};
use crate::{
    error::{OutOfRange, within},
    fraction::{MassFraction, Strength, WetBasis},
    quantity::{
        Mass, MassDensity, Volume, grams, grams_of, kg_per_m3, kg_per_m3_of, millilitres,
        millilitres_of,
    },
};

/// The most of one thing that is ever weighed or measured, g or mL.
const MOST: f64 = 1e6;

/// Share of fructose in the solids of honey, the rest counted as glucose.
///
/// *Source*: the 54:46 split that the published honey activities were computed with.
const HONEY_FRUCTOSE: f64 = 0.54;

/// Share of fructose in the sugars of wine and juice, the rest counted as glucose
/// (common practice, no source).
const FRUIT_FRUCTOSE: f64 = 0.5;

/// The kind of an ingredient and the figures on its label.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Kind {
    /// Water.
    Water,
    /// Ethanol and water.
    Spirit {
        /// Strength at 20 C.
        strength: Strength,
    },
    /// Glycerol and water.
    Glycerin {
        /// Glycerol by mass.
        purity: MassFraction,
    },
    /// Acetic acid and water.
    Vinegar {
        /// Acidity at 20 C.
        acidity: Acidity,
    },
    /// Ethanol, glucose, fructose, acid and water.
    Wine {
        /// Strength at 20 C.
        strength: Strength,
        /// Residual sugar per volume at 20 C.
        sugar: MassDensity,
        /// Acidity as acetic acid.
        acidity: Acidity,
    },
    /// Granulated sucrose.
    Sugar,
    /// Sucrose and water.
    Syrup {
        /// Sucrose by mass (Brix).
        sugar: MassFraction,
    },
    /// Fructose, glucose and water.
    Honey {
        /// Water by mass.
        water: MassFraction,
    },
    /// Glucose, fructose, acid and water.
    Juice {
        /// Sugars by mass (Brix).
        sugar: MassFraction,
        /// Acidity as acetic acid.
        acidity: Acidity,
    },
    /// A carrier oil.
    Oil(Oil),
}

/// Something that can be poured: its composition and how a volume of it is weighed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ingredient {
    kind: Kind,
    /// Composition of 1 g.
    unit: Composition,
    /// Grams in a millilitre as it is measured out at 20 C.
    grams_per_ml: f64,
}

impl Ingredient {
    /// Water.
    pub fn water() -> Self {
        let unit = Composition::none().plus(Component::Water, 1.0);
        Self::liquid(Kind::Water, unit)
    }

    /// A spirit of the strength on its label, % vol at 20 C.
    pub fn spirit(strength: Strength) -> Self {
        let p = ethanol::p_of_strength(strength.get(), 20.0);
        let unit = Composition::none()
            .plus(Component::Ethanol, p)
            .plus(Component::Water, 1.0 - p);
        Self::liquid(Kind::Spirit { strength }, unit)
    }

    /// Glycerin of the stated purity by mass; the rest is water.
    pub fn glycerin(purity: MassFraction) -> Self {
        let w = purity.get();
        let unit = Composition::none()
            .plus(Component::Glycerol, w)
            .plus(Component::Water, 1.0 - w);
        Self::liquid(Kind::Glycerin { purity }, unit)
    }

    /// Vinegar of the stated acidity: acetic acid and water.
    pub fn vinegar(acidity: Acidity) -> Self {
        let w = acid::w_of_acidity(acidity.grams_per_100_ml());
        let unit = Composition::none()
            .plus(Component::AceticAcid, w)
            .plus(Component::Water, 1.0 - w);
        Self::liquid(Kind::Vinegar { acidity }, unit)
    }

    /// Wine, of which 1 mL holds exactly the stated ethanol, sugar and acid at 20 C.
    ///
    /// # Errors
    /// [`OutOfRange`] above 25 % vol, 400 g of sugar per litre or 3 g of acid per 100 mL.
    pub fn wine(
        strength: Strength,
        sugar: MassDensity,
        acidity: Acidity,
    ) -> Result<Self, OutOfRange> {
        within(
            "the strength of the wine",
            strength.percent(),
            0.0,
            25.0,
            "between 0 and 25 % vol",
        )?;
        let per_l = within(
            "the sugar in the wine",
            kg_per_m3_of(sugar),
            0.0,
            400.0,
            "between 0 and 400 g per litre",
        )?;
        let acid = within(
            "the acidity of the wine",
            acidity.grams_per_100_ml(),
            0.0,
            3.0,
            "between 0 and 3 g per 100 mL",
        )?;
        let solutes = Composition::none()
            .plus(
                Component::Ethanol,
                strength.get() * ethanol::PURE_AT_20 / 1000.0,
            )
            .plus(Component::Fructose, FRUIT_FRUCTOSE * per_l / 1000.0)
            .plus(Component::Glucose, (1.0 - FRUIT_FRUCTOSE) * per_l / 1000.0)
            .plus(Component::AceticAcid, acid / 100.0);
        Ok(Self::filled_up(
            Kind::Wine {
                strength,
                sugar,
                acidity,
            },
            solutes,
        ))
    }

    /// Granulated sugar (sucrose). A millilitre of it is a millilitre in the measuring cup, air
    /// and all: 0.845 g (common practice, no source); weigh it where it matters.
    pub fn sugar() -> Self {
        Self {
            kind: Kind::Sugar,
            unit: Composition::none().plus(Component::Sucrose, 1.0),
            grams_per_ml: sugar::GRANULATED / 1000.0,
        }
    }

    /// Sugar syrup of the stated sucrose by mass (Brix).
    ///
    /// # Errors
    /// [`OutOfRange`] above 85 %, where the density formula ends.
    pub fn syrup(sugar: MassFraction) -> Result<Self, OutOfRange> {
        let w = within(
            "the sugar in the syrup",
            sugar.percent(),
            0.0,
            85.0,
            "between 0 and 85 % by mass",
        )?;
        let w = w / 100.0;
        let unit = Composition::none()
            .plus(Component::Sucrose, w)
            .plus(Component::Water, 1.0 - w);
        Ok(Self::liquid(Kind::Syrup { sugar }, unit))
    }

    /// Honey of the stated water content; its solids are taken as 54 parts fructose to 46 glucose.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 10 to 25 % water.
    pub fn honey(water: MassFraction) -> Result<Self, OutOfRange> {
        within(
            "the water in the honey",
            water.percent(),
            10.0,
            25.0,
            "between 10 and 25 % by mass",
        )?;
        let solids = 1.0 - water.get();
        let unit = Composition::none()
            .plus(Component::Water, water.get())
            .plus(Component::Fructose, HONEY_FRUCTOSE * solids)
            .plus(Component::Glucose, (1.0 - HONEY_FRUCTOSE) * solids);
        Ok(Self::liquid(Kind::Honey { water }, unit))
    }

    /// Juice of the stated sugars by mass and acidity; its sugars are taken as half glucose, half
    /// fructose, its acids as acetic.
    ///
    /// # Errors
    /// [`OutOfRange`] above 75 % sugar or 10 g of acid per 100 mL.
    pub fn juice(sugar: MassFraction, acidity: Acidity) -> Result<Self, OutOfRange> {
        let w = within(
            "the sugar in the juice",
            sugar.percent(),
            0.0,
            75.0,
            "between 0 and 75 % by mass",
        )?;
        let acid = within(
            "the acidity of the juice",
            acidity.grams_per_100_ml(),
            0.0,
            10.0,
            "between 0 and 10 g per 100 mL",
        )?;
        let mut share = acid / 100.0;
        let composed = |share: f64| {
            Composition::none()
                .plus(Component::Fructose, FRUIT_FRUCTOSE * w / 100.0)
                .plus(Component::Glucose, (1.0 - FRUIT_FRUCTOSE) * w / 100.0)
                .plus(Component::AceticAcid, share)
                .plus(Component::Water, 1.0 - w / 100.0 - share)
        };
        // The acid is stated by volume, so its share depends on the density, weakly.
        for _ in 0..14 {
            share = acid / 100.0 * volume::millilitres(&composed(share), 20.0);
        }
        Ok(Self::liquid(
            Kind::Juice { sugar, acidity },
            composed(share),
        ))
    }

    /// A carrier oil, at the middle of its published densities.
    pub fn oil(oil: Oil) -> Self {
        Self {
            kind: Kind::Oil(oil),
            unit: Composition::none().plus(Component::Oil, 1.0),
            grams_per_ml: oil.density_kg_m3().value / 1000.0,
        }
    }

    /// What it is, with the figures on its label.
    pub fn kind(&self) -> Kind {
        self.kind
    }

    /// Density at 20 C as it is measured out.
    pub fn density(&self) -> MassDensity {
        kg_per_m3(1000.0 * self.grams_per_ml)
    }

    /// Composition of a mass of it.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g.
    pub fn composition(&self, mass: Mass) -> Result<Composition, OutOfRange> {
        Ok(self.unit.scaled(amount(
            "the mass",
            grams_of(mass),
            "between 0 and 1 000 000 g",
        )?))
    }

    pub(crate) fn unit(&self) -> &Composition {
        &self.unit
    }

    pub(crate) fn grams_per_ml(&self) -> f64 {
        self.grams_per_ml
    }

    fn liquid(kind: Kind, unit: Composition) -> Self {
        Self {
            kind,
            unit,
            grams_per_ml: 1.0 / volume::millilitres(&unit, 20.0),
        }
    }

    /// The liquid of which 1 mL at 20 C holds `solutes` (g) and is otherwise water.
    fn filled_up(kind: Kind, solutes: Composition) -> Self {
        let mut water_g = 1.0 - solutes.liquid_g();
        for _ in 0..30 {
            let short = 1.0 - volume::millilitres(&solutes.plus(Component::Water, water_g), 20.0);
            water_g += short * water::rho(20.0) / 1000.0;
        }
        let millilitre = solutes.plus(Component::Water, water_g);
        Self::liquid(kind, millilitre.scaled(1.0 / millilitre.liquid_g()))
    }
}

/// An amount of an ingredient.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pour {
    ingredient: Ingredient,
    grams: f64,
}

impl Pour {
    /// Weighed out.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g.
    pub fn weighed(ingredient: Ingredient, mass: Mass) -> Result<Self, OutOfRange> {
        let grams = amount(
            "the mass poured",
            grams_of(mass),
            "between 0 and 1 000 000 g",
        )?;
        Ok(Self { ingredient, grams })
    }

    /// Measured out at 20 C.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 mL.
    pub fn measured(ingredient: Ingredient, volume: Volume) -> Result<Self, OutOfRange> {
        let ml = amount(
            "the volume poured",
            millilitres_of(volume),
            "between 0 and 1 000 000 mL",
        )?;
        Ok(Self {
            ingredient,
            grams: ml * ingredient.grams_per_ml,
        })
    }

    /// What is poured.
    pub fn ingredient(&self) -> &Ingredient {
        &self.ingredient
    }

    /// How much of it by mass.
    pub fn mass(&self) -> Mass {
        grams(self.grams)
    }

    /// How much of it by volume as measured out at 20 C.
    pub fn volume(&self) -> Volume {
        millilitres(self.grams / self.ingredient.grams_per_ml)
    }

    pub(crate) fn grams(&self) -> f64 {
        self.grams
    }

    /// Volume in mL that it takes in the liquid before anything mixes, at `t` in C: oil none,
    /// sugar that of its crystals.
    pub(crate) fn own_millilitres(&self, t: f64) -> f64 {
        match self.ingredient.kind {
            Kind::Oil(_) => 0.0,
            Kind::Sugar => 1000.0 * self.grams / sugar::CRYSTAL,
            _ if t == 20.0 => self.grams / self.ingredient.grams_per_ml,
            _ => self.grams * volume::millilitres(&self.ingredient.unit, t),
        }
    }
}

/// Plant material with the water it brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plant {
    grams: f64,
    low: f64,
    value: f64,
    high: f64,
}

impl Plant {
    /// A plant whose moisture is known.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g.
    pub fn new(mass: Mass, moisture: WetBasis) -> Result<Self, OutOfRange> {
        Self::between(mass, moisture, moisture, moisture)
    }

    /// A plant whose moisture lies between `low` and `high` (90 %), most likely at `value`.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g, or when the three are not in rising order.
    pub fn between(
        mass: Mass,
        low: WetBasis,
        value: WetBasis,
        high: WetBasis,
    ) -> Result<Self, OutOfRange> {
        let grams = amount(
            "the mass of the plant",
            grams_of(mass),
            "between 0 and 1 000 000 g",
        )?;
        within(
            "the moisture",
            value.percent(),
            low.percent(),
            high.percent(),
            "between its own low and high ends, in % of the weight",
        )?;
        Ok(Self {
            grams,
            low: low.get(),
            value: value.get(),
            high: high.get(),
        })
    }

    /// Its mass.
    pub fn mass(&self) -> Mass {
        grams(self.grams)
    }

    /// Grams of water it brings: low, value, high.
    pub(crate) fn water(&self) -> [f64; 3] {
        [self.low, self.value, self.high].map(|moisture| moisture * self.grams)
    }

    pub(crate) fn dry_matter(&self) -> f64 {
        self.grams * (1.0 - self.value)
    }
}

fn amount(quantity: &'static str, value: f64, allowed: &'static str) -> Result<f64, OutOfRange> {
    within(quantity, value, 0.0, MOST, allowed)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_millilitre_of_wine_holds_what_its_label_says() {
        let wine = Ingredient::wine(
            Strength::from_percent(12.0).unwrap(),
            kg_per_m3(60.0),
            Acidity::new(0.6).unwrap(),
        )
        .unwrap();
        let millilitre = wine.unit.scaled(wine.grams_per_ml);
        assert!((millilitre.grams(Component::Ethanol) - 0.12 * 0.78924).abs() < 1e-12);
        assert!((millilitre.sugars_g() - 0.06).abs() < 1e-12);
        assert!((millilitre.grams(Component::AceticAcid) - 0.006).abs() < 1e-12);
        assert!((volume::millilitres(&millilitre, 20.0) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn nonsense_is_refused_in_a_sentence() {
        let says = |refusal: OutOfRange| refusal.to_string();
        assert_eq!(
            says(Strength::from_percent(200.0).unwrap_err()),
            "the strength must be between 0 and 100 % vol; 200 is not"
        );
        assert_eq!(
            says(Ingredient::honey(MassFraction::from_percent(30.0).unwrap()).unwrap_err()),
            "the water in the honey must be between 10 and 25 % by mass; 30 is not"
        );
        for bad in [-1.0, f64::NAN, 1e308, f64::INFINITY] {
            assert!(
                Pour::weighed(Ingredient::water(), grams(bad)).is_err(),
                "{bad} g"
            );
            assert!(
                Pour::measured(Ingredient::sugar(), millilitres(bad)).is_err(),
                "{bad} mL"
            );
            assert!(
                Plant::new(grams(bad), WetBasis::new(0.8).unwrap()).is_err(),
                "{bad} g of plant"
            );
        }
        assert!(
            MassFraction::from_percent(140.0).is_err(),
            "glycerin of 140 %"
        );
    }
}
