//! Amounts: of what is poured, and of the plant it is poured on.

use super::{ingredient::Ingredient, item::Kind, sugar, volume};
use crate::{
    error::{OutOfRange, within},
    fraction::WetBasis,
    interval::Interval,
    quantity::{Mass, Volume, grams, grams_of, millilitres, millilitres_of},
};
use message::{Message, Unit, say};

/// The most of one thing that is ever weighed or measured, g or mL.
pub const MOST_POURED: f64 = 1e6;

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
        let grams = amount(say!("what-mass-poured"), grams_of(mass), Unit::Gram)?;
        Ok(Self { ingredient, grams })
    }

    /// Measured out at 20 C.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 mL.
    pub fn measured(ingredient: Ingredient, volume: Volume) -> Result<Self, OutOfRange> {
        let ml = amount(
            say!("what-volume-poured"),
            millilitres_of(volume),
            Unit::Millilitre,
        )?;
        Ok(Self {
            ingredient,
            grams: ml * ingredient.grams_per_ml(),
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
        millilitres(self.grams / self.ingredient.grams_per_ml())
    }

    pub(crate) fn grams(&self) -> f64 {
        self.grams
    }

    /// Volume in mL that it takes in the liquid before anything mixes, at `t` in C: oil none,
    /// sugar that of its crystals.
    pub(crate) fn own_millilitres(&self, t: f64) -> f64 {
        match self.ingredient.kind() {
            Kind::Oil(_) => 0.0,
            Kind::Sugar {} => 1000.0 * self.grams / sugar::CRYSTAL,
            _ if t == 20.0 => self.grams / self.ingredient.grams_per_ml(),
            _ => self.grams * volume::millilitres(self.ingredient.unit(), t),
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
    /// Whether what is no water is dissolved, as in a juice or a decoction.
    dissolved: bool,
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
        let grams = amount(say!("what-mass-of-the-plant"), grams_of(mass), Unit::Gram)?;
        within(
            say!("what-moisture"),
            value.percent(),
            low.percent(),
            high.percent(),
            Unit::PercentMass,
        )?;
        Ok(Self {
            grams,
            low: low.get(),
            value: value.get(),
            high: high.get(),
            dissolved: false,
        })
    }

    /// What was cooked and strained: a juice or a decoction whose water lies between `low` and `high`. What it surely
    /// holds beside water, at the wet end, is counted as dissolved sugar, half glucose and half fructose; its acid is
    /// not counted, since some berries have hardly any.
    ///
    /// # Errors
    /// As [`Plant::between`].
    pub fn strained(
        mass: Mass,
        low: WetBasis,
        value: WetBasis,
        high: WetBasis,
    ) -> Result<Self, OutOfRange> {
        Ok(Self {
            dissolved: true,
            ..Self::between(mass, low, value, high)?
        })
    }

    /// Its mass.
    pub fn mass(&self) -> Mass {
        grams(self.grams)
    }

    /// Its water, % of its weight.
    pub fn moisture_wet_percent(&self) -> Interval {
        Interval::spanning(self.value, self.low, self.high).map_monotone(|share| 100.0 * share)
    }

    /// Grams of water it brings: low, value, high.
    pub(crate) fn water(&self) -> [f64; 3] {
        [self.low, self.value, self.high].map(|moisture| moisture * self.grams)
    }

    /// Grams of sugar that it surely brings.
    pub(crate) fn sugar(&self) -> f64 {
        if self.dissolved {
            self.grams * (1.0 - self.high)
        } else {
            0.0
        }
    }

    pub(crate) fn dry_matter(&self) -> f64 {
        self.grams * (1.0 - self.value) - self.sugar()
    }
}

pub(crate) fn amount(what: Message, value: f64, unit: Unit) -> Result<f64, OutOfRange> {
    within(what, value, 0.0, MOST_POURED, unit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fraction::{MassFraction, Strength};

    #[test]
    fn nonsense_is_refused_with_its_range() {
        let range = |refused: OutOfRange| (refused.what, refused.low, refused.high, refused.unit);
        assert_eq!(
            range(Strength::from_percent(200.0).unwrap_err()),
            (say!("what-strength"), 0.0, 100.0, Unit::PercentVol)
        );
        assert_eq!(
            range(Ingredient::honey(MassFraction::from_percent(30.0).unwrap()).unwrap_err()),
            (
                say!("what-water-in-the-honey"),
                10.0,
                25.0,
                Unit::PercentMass
            )
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
