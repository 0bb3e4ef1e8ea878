//! Amounts that move from lot to lot and must balance.
//!
//! No amount that is left is ever stored: what is left is what came in less
//! what was drawn. Draws follow from the nouns (a tray draws fresh plant from
//! its harvest, a jar draws from lots and supplies), so there is no second
//! record that could disagree with the first.

use std::iter::Sum;
use std::ops::{Add, Sub};

use serde::{Deserialize, Serialize};

use crate::{BottleId, HarvestId, JarId, Noun, PlantState, RowRef, SupplyId, TrayId};

/// Grams or millilitres, counted in whole thousandths so that sums are exact
/// and do not depend on the order of their terms.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Amount(i64);

impl Amount {
    /// Nothing.
    pub const ZERO: Self = Self(0);

    /// The nearest whole number of thousandths.
    pub fn of(units: f64) -> Self {
        Self((units * 1000.0).round() as i64)
    }

    /// From thousandths.
    pub fn from_thousandths(thousandths: i64) -> Self {
        Self(thousandths)
    }

    /// In thousandths.
    pub fn thousandths(self) -> i64 {
        self.0
    }

    /// In grams or millilitres.
    pub fn get(self) -> f64 {
        self.0 as f64 / 1000.0
    }
}

impl Add for Amount {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Amount {
    type Output = Self;

    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Sum for Amount {
    fn sum<I: Iterator<Item = Self>>(amounts: I) -> Self {
        amounts.fold(Self::ZERO, Add::add)
    }
}

/// What is left of `came_in` after draws; below zero if the ledger is broken.
pub fn left(came_in: Amount, draws: impl IntoIterator<Item = Amount>) -> Amount {
    came_in - draws.into_iter().sum()
}

/// How a lot is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// Grams.
    Gram,
    /// Millilitres.
    Millilitre,
}

impl Unit {
    /// Its symbol.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Gram => "g",
            Self::Millilitre => "mL",
        }
    }
}

/// A lot of plant: fresh from a harvest, or dried from a tray taken down.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(tag = "kind", content = "id", rename_all = "snake_case")]
pub enum Lot {
    /// Fresh grams.
    Harvest(HarvestId),
    /// Dried grams.
    Tray(TrayId),
}

impl Lot {
    /// Whether plant of it may be in this state; which of two a tray holds, the tray itself says.
    pub fn may_be(self, state: PlantState) -> bool {
        match self {
            Self::Harvest(_) => state == PlantState::Fresh,
            Self::Tray(_) => state != PlantState::Fresh,
        }
    }
}

/// Anything that can be drawn from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(tag = "kind", content = "id", rename_all = "snake_case")]
pub enum Source {
    /// Fresh grams of a harvest.
    Harvest(HarvestId),
    /// Dried grams of a tray.
    Tray(TrayId),
    /// Millilitres of a supply.
    Supply(SupplyId),
    /// Millilitres strained off a jar.
    Jar(JarId),
    /// Millilitres of a bottle.
    Bottle(BottleId),
}

/// What is read off a jug is out by up to this share (common practice, no source), so the bottles
/// of a jar may hold that much more than came out of it by the record.
const READING_ERROR: f64 = 0.02;

impl Source {
    /// How far below nothing what is left may be without the ledger being broken.
    pub fn allowance(self, came_in: Amount) -> Amount {
        match self {
            Self::Jar(_) => Amount::of(came_in.get() * READING_ERROR),
            _ => Amount::ZERO,
        }
    }

    /// How it is measured.
    pub fn unit(self) -> Unit {
        match self {
            Self::Harvest(_) | Self::Tray(_) => Unit::Gram,
            Self::Supply(_) | Self::Jar(_) | Self::Bottle(_) => Unit::Millilitre,
        }
    }

    /// The row that it is.
    pub fn row(self) -> RowRef {
        match self {
            Self::Harvest(id) => (Noun::Harvest, id.to_string()),
            Self::Tray(id) => (Noun::Tray, id.to_string()),
            Self::Supply(id) => (Noun::Supply, id.to_string()),
            Self::Jar(id) => (Noun::Jar, id.to_string()),
            Self::Bottle(id) => (Noun::Bottle, id.to_string()),
        }
    }

    /// The source that a row is, if it can be drawn from.
    pub fn of(noun: Noun, row: &str) -> Option<Self> {
        match noun {
            Noun::Harvest => row.parse().ok().map(Self::Harvest),
            Noun::Tray => row.parse().ok().map(Self::Tray),
            Noun::Supply => row.parse().ok().map(Self::Supply),
            Noun::Jar => row.parse().ok().map(Self::Jar),
            Noun::Bottle => row.parse().ok().map(Self::Bottle),
            _ => None,
        }
    }
}

impl From<Lot> for Source {
    fn from(lot: Lot) -> Self {
        match lot {
            Lot::Harvest(id) => Self::Harvest(id),
            Lot::Tray(id) => Self::Tray(id),
        }
    }
}

/// One ledger entry: so much taken from there, by the row that tells of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Draw {
    /// What it is taken from.
    pub from: Source,
    /// How much.
    pub amount: Amount,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tenths_of_a_gram_add_up_exactly() {
        let draws = [0.1, 0.2].map(Amount::of);
        assert_eq!(
            left(Amount::of(0.3), draws),
            Amount::ZERO,
            "binary fractions would leave 5e-17 g"
        );
    }

    #[test]
    fn a_lot_is_written_as_on_the_wire() {
        let lot = Lot::Harvest(HarvestId(uuid::Uuid::nil()));
        let text = serde_json::to_string(&lot).unwrap();
        assert_eq!(
            text,
            r#"{"kind":"harvest","id":"00000000-0000-0000-0000-000000000000"}"#
        );
        assert_eq!(serde_json::from_str::<Lot>(&text).unwrap(), lot);
    }
}
