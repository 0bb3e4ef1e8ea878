//! What can be poured, and the plant it is poured on.

use super::{
    acid::{self, Acidity},
    composition::{Component, Composition},
    ethanol,
    item::Kind,
    oil::Oil,
    pour::amount,
    sugar, volume, water,
};
use crate::{
    error::{OutOfRange, within},
    fraction::{MassFraction, Strength},
    quantity::{Mass, MassDensity, grams_of, kg_per_m3, kg_per_m3_of},
};
use message::{Unit, say};

/// Share of fructose in the solids of honey, the rest counted as glucose.
///
/// *Source*: the 54:46 split that the published honey activities were computed with.
const HONEY_FRUCTOSE: f64 = 0.54;

/// Share of fructose in the sugars of wine and juice, the rest counted as glucose
/// (common practice, no source).
const FRUIT_FRUCTOSE: f64 = 0.5;

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
        Self::liquid(Kind::Water {}, unit)
    }

    /// A spirit of the strength on its label, % vol at 20 C.
    pub fn spirit(strength: Strength) -> Self {
        let p = ethanol::p_of_strength(strength.get(), 20.0);
        let unit = Composition::none()
            .plus(Component::Ethanol, p)
            .plus(Component::Water, 1.0 - p);
        let kind = Kind::Spirit {
            strength_percent_vol: strength.percent(),
        };
        Self::liquid(kind, unit)
    }

    /// Glycerin of the stated purity by mass; the rest is water.
    pub fn glycerin(purity: MassFraction) -> Self {
        let w = purity.get();
        let unit = Composition::none()
            .plus(Component::Glycerol, w)
            .plus(Component::Water, 1.0 - w);
        let kind = Kind::Glycerin {
            purity_percent_mass: purity.percent(),
        };
        Self::liquid(kind, unit)
    }

    /// Vinegar of the stated acidity: acetic acid and water.
    pub fn vinegar(acidity: Acidity) -> Self {
        let w = acid::w_of_acidity(acidity.grams_per_100_ml());
        let unit = Composition::none()
            .plus(Component::AceticAcid, w)
            .plus(Component::Water, 1.0 - w);
        let kind = Kind::Vinegar {
            acidity_g_per_100ml: acidity.grams_per_100_ml(),
        };
        Self::liquid(kind, unit)
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
            say!("what-strength-of-the-wine"),
            strength.percent(),
            0.0,
            25.0,
            Unit::PercentVol,
        )?;
        let per_l = within(
            say!("what-sugar-in-the-wine"),
            kg_per_m3_of(sugar),
            0.0,
            400.0,
            Unit::GramPerLitre,
        )?;
        let acid = within(
            say!("what-acidity-of-the-wine"),
            acidity.grams_per_100_ml(),
            0.0,
            3.0,
            Unit::GramPer100Ml,
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
                strength_percent_vol: strength.percent(),
                sugar_g_per_l: kg_per_m3_of(sugar),
                acidity_g_per_100ml: acidity.grams_per_100_ml(),
            },
            solutes,
        ))
    }

    /// Granulated sugar (sucrose). A millilitre of it is a millilitre in the measuring cup, air
    /// and all: 0.845 g (common practice, no source); weigh it where it matters.
    pub fn sugar() -> Self {
        Self {
            kind: Kind::Sugar {},
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
            say!("what-sugar-in-the-syrup"),
            sugar.percent(),
            0.0,
            85.0,
            Unit::PercentMass,
        )?;
        let w = w / 100.0;
        let unit = Composition::none()
            .plus(Component::Sucrose, w)
            .plus(Component::Water, 1.0 - w);
        let kind = Kind::Syrup {
            sugar_percent_mass: sugar.percent(),
        };
        Ok(Self::liquid(kind, unit))
    }

    /// Honey of the stated water content; its solids are taken as 54 parts fructose to 46 glucose.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 10 to 25 % water.
    pub fn honey(water: MassFraction) -> Result<Self, OutOfRange> {
        within(
            say!("what-water-in-the-honey"),
            water.percent(),
            10.0,
            25.0,
            Unit::PercentMass,
        )?;
        let solids = 1.0 - water.get();
        let unit = Composition::none()
            .plus(Component::Water, water.get())
            .plus(Component::Fructose, HONEY_FRUCTOSE * solids)
            .plus(Component::Glucose, (1.0 - HONEY_FRUCTOSE) * solids);
        let kind = Kind::Honey {
            water_percent_mass: water.percent(),
        };
        Ok(Self::liquid(kind, unit))
    }

    /// Juice of the stated sugars by mass and acidity; its sugars are taken as half glucose, half
    /// fructose, its acids as acetic.
    ///
    /// # Errors
    /// [`OutOfRange`] above 75 % sugar or 10 g of acid per 100 mL.
    pub fn juice(sugar: MassFraction, acidity: Acidity) -> Result<Self, OutOfRange> {
        let w = within(
            say!("what-sugar-in-the-juice"),
            sugar.percent(),
            0.0,
            75.0,
            Unit::PercentMass,
        )?;
        let acid = within(
            say!("what-acidity-of-the-juice"),
            acidity.grams_per_100_ml(),
            0.0,
            10.0,
            Unit::GramPer100Ml,
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
            Kind::Juice {
                sugar_percent_mass: sugar.percent(),
                acidity_g_per_100ml: acidity.grams_per_100_ml(),
            },
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
        Ok(self
            .unit
            .scaled(amount(say!("what-mass"), grams_of(mass), Unit::Gram)?))
    }

    pub(crate) fn unit(&self) -> &Composition {
        &self.unit
    }

    pub(crate) fn grams_per_ml(&self) -> f64 {
        self.grams_per_ml
    }

    /// A liquid of which 1 g is `unit`.
    pub(super) fn liquid(kind: Kind, unit: Composition) -> Self {
        Self {
            kind,
            unit,
            grams_per_ml: 1.0 / volume::millilitres(&unit, 20.0),
        }
    }

    /// The liquid of which 1 mL at 20 C holds `solutes` (g) and is otherwise water.
    pub(super) fn filled_up(kind: Kind, solutes: Composition) -> Self {
        let mut water_g = 1.0 - solutes.liquid_g();
        for _ in 0..30 {
            let short = 1.0 - volume::millilitres(&solutes.plus(Component::Water, water_g), 20.0);
            water_g += short * water::rho(20.0) / 1000.0;
        }
        let millilitre = solutes.plus(Component::Water, water_g);
        Self::liquid(kind, millilitre.scaled(1.0 / millilitre.liquid_g()))
    }
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
}
