//! What a liquid is made of, by mass.

use crate::{
    error::{OutOfRange, within},
    quantity::{Mass, grams, grams_of},
};
use message::{Unit, say};

/// Everything that the engine conserves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Component {
    /// Water.
    Water,
    /// Ethanol.
    Ethanol,
    /// Glycerol.
    Glycerol,
    /// Sucrose.
    Sucrose,
    /// Glucose.
    Glucose,
    /// Fructose.
    Fructose,
    /// Acetic acid, and any other acid counted as acetic.
    AceticAcid,
    /// Carrier oil, a phase of its own.
    Oil,
    /// What is left of a plant without its water.
    DryMatter,
}

impl Component {
    /// Every component.
    pub const ALL: [Self; 9] = [
        Self::Water,
        Self::Ethanol,
        Self::Glycerol,
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::AceticAcid,
        Self::Oil,
        Self::DryMatter,
    ];

    /// Those that make up the liquid.
    pub(crate) const LIQUID: [Self; 7] = [
        Self::Water,
        Self::Ethanol,
        Self::Glycerol,
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::AceticAcid,
    ];
}

/// A mass of each component.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Composition {
    grams: [f64; 9],
}

impl Composition {
    /// Nothing of anything.
    pub fn none() -> Self {
        Self::default()
    }

    /// The same with `mass` more of `component`.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g.
    pub fn with(self, component: Component, mass: Mass) -> Result<Self, OutOfRange> {
        let mass = within(say!("what-mass"), grams_of(mass), 0.0, 1e6, Unit::Gram)?;
        Ok(self.plus(component, mass))
    }

    /// The mass of one component.
    pub fn of(&self, component: Component) -> Mass {
        grams(self.grams(component))
    }

    /// The mass of the liquid: everything but oil and dry matter.
    pub fn liquid(&self) -> Mass {
        grams(self.liquid_g())
    }

    /// The mass of everything.
    pub fn total(&self) -> Mass {
        grams(self.grams.iter().sum())
    }

    pub(crate) fn grams(&self, component: Component) -> f64 {
        self.grams[component as usize]
    }

    pub(crate) fn plus(mut self, component: Component, grams: f64) -> Self {
        self.grams[component as usize] += grams;
        self
    }

    pub(crate) fn add_scaled(&mut self, other: &Self, factor: f64) {
        for (mine, theirs) in self.grams.iter_mut().zip(other.grams) {
            *mine += factor * theirs;
        }
    }

    pub(crate) fn scaled(mut self, factor: f64) -> Self {
        self.grams.iter_mut().for_each(|mass| *mass *= factor);
        self
    }

    pub(crate) fn liquid_g(&self) -> f64 {
        Component::LIQUID
            .iter()
            .map(|&component| self.grams(component))
            .sum()
    }

    pub(crate) fn sugars_g(&self) -> f64 {
        self.grams(Component::Sucrose) + self.hexoses_g()
    }

    pub(crate) fn hexoses_g(&self) -> f64 {
        self.grams(Component::Glucose) + self.grams(Component::Fructose)
    }
}

impl core::ops::Add for Composition {
    type Output = Self;

    fn add(mut self, other: Self) -> Self {
        self.add_scaled(&other, 1.0);
        self
    }
}
