//! One thing on the shelf.

use crate::{
    error::OutOfRange,
    mixture::{Ingredient, amount},
    quantity::{Volume, millilitres_of},
};
use message::{Unit, say};

/// An ingredient with how much of it there is, and how much of it must be used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockItem {
    ingredient: Ingredient,
    available_ml: Option<f64>,
    exactly_ml: Option<f64>,
}

impl StockItem {
    /// As much as is wanted.
    pub fn new(ingredient: Ingredient) -> Self {
        Self {
            ingredient,
            available_ml: None,
            exactly_ml: None,
        }
    }

    /// No more than `available`, measured at 20 C.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 mL.
    pub fn at_most(mut self, available: Volume) -> Result<Self, OutOfRange> {
        let ml = millilitres_of(available);
        self.available_ml = Some(amount(say!("what-available"), ml, Unit::Millilitre)?);
        Ok(self)
    }

    /// This much and no other amount, measured at 20 C.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 mL.
    pub fn exactly(mut self, wanted: Volume) -> Result<Self, OutOfRange> {
        let ml = millilitres_of(wanted);
        self.exactly_ml = Some(amount(say!("what-fixed-amount"), ml, Unit::Millilitre)?);
        Ok(self)
    }

    /// What it is.
    pub fn ingredient(&self) -> &Ingredient {
        &self.ingredient
    }

    pub(crate) fn available_ml(&self) -> Option<f64> {
        self.available_ml
    }

    pub(crate) fn exactly_ml(&self) -> Option<f64> {
        self.exactly_ml
    }
}
