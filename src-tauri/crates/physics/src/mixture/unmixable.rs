//! Why a mixture was refused.

use std::fmt;

use message::{Argument, Message, Unit, say};

use crate::error::OutOfRange;

/// A mixture that cannot be answered for.
#[derive(Debug, Clone, PartialEq)]
pub enum Unmixable {
    /// A figure outside its range.
    OutOfRange(OutOfRange),
    /// Neither a liquid nor a plant that brings water.
    NoLiquid,
    /// A temperature at which one of the formulas says nothing; all in °C.
    TooColdOrHot {
        /// The refused temperature.
        celsius: f64,
        /// The least that this liquid's formulas cover.
        low: f64,
        /// The most.
        high: f64,
    },
    /// Nothing on the shelf to reach a target with.
    NoStock,
    /// Plants to be covered, but no size.
    NoSize,
    /// More of an item asked for than there is.
    MoreThanAvailable {
        /// Position of the item in the stock.
        index: usize,
        /// What was asked for, mL.
        exactly_ml: f64,
        /// What there is, mL.
        available_ml: f64,
    },
    /// The solver gave up, which no input is known to cause.
    Unsolved,
}

impl Unmixable {
    /// A finished sentence.
    pub fn message(&self) -> Message {
        match self {
            Self::OutOfRange(out) => out.message(),
            Self::NoLiquid => say!("unmixable-no-liquid"),
            Self::TooColdOrHot { celsius, low, high } => say!(
                "unmixable-temperature",
                low = Argument::exact(*low, Unit::None),
                high = Argument::exact(*high, Unit::Celsius),
                given = Argument::exact(*celsius, Unit::None),
            ),
            Self::NoStock => say!("unmixable-no-stock"),
            Self::NoSize => say!("unmixable-no-size"),
            Self::MoreThanAvailable {
                exactly_ml,
                available_ml,
                ..
            } => say!(
                "unmixable-more-than-available",
                wanted = Argument::exact(*exactly_ml, Unit::Millilitre),
                there = Argument::exact(*available_ml, Unit::Millilitre),
            ),
            Self::Unsolved => say!("unmixable-unsolved"),
        }
    }
}

impl fmt::Display for Unmixable {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(out)
    }
}

impl std::error::Error for Unmixable {}

impl From<OutOfRange> for Unmixable {
    fn from(out: OutOfRange) -> Self {
        Self::OutOfRange(out)
    }
}

impl From<Unmixable> for message::Failure {
    fn from(error: Unmixable) -> Self {
        let failure = Self::new(message::Code::Invalid, error.message());
        match error {
            Unmixable::TooColdOrHot { .. } => failure.at("temperature_c"),
            Unmixable::NoStock => failure.at("stock"),
            Unmixable::NoSize => failure.at("targets"),
            Unmixable::MoreThanAvailable { index, .. } => {
                failure.at(&format!("stock[{index}].exactly_ml"))
            }
            Unmixable::OutOfRange(_) | Unmixable::NoLiquid | Unmixable::Unsolved => failure,
        }
    }
}
