//! The rows of the trade's table of label items, and which kind of label carries which.

use message::{Message, say};

use crate::record::Kind;

/// A row of the trade's table of label items, and three things of our own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Row {
    /// B01: common and Latin name, part.
    Names,
    /// B02: ratio, fresh or dried, menstruum and strength.
    Liquid,
    /// B03: the day it was begun and the day it is due.
    Begun,
    /// B04: the day it was bottled and its best before.
    Dates,
    /// B05: lot code, harvest and bed.
    Lot,
    /// B06: how to keep it.
    Keeping,
    /// B07: inside, or outside only.
    Use,
    /// B08: warnings.
    Warnings,
    /// B09: alcohol, children and flame.
    Alcohol,
    /// B10: the poison line.
    PoisonLine,
    /// B11: who made it.
    Maker,
    /// B12: contents, ingredients, allergens.
    Contents,
    /// Grams of ethanol in the bottle, where the maker chose it.
    Ethanol,
    /// Lines that are filled in by hand.
    ByHand,
    /// Ways to use it, where there is room for more than must be said.
    Ways,
    /// The maker's own note.
    Note,
    /// The code that opens the lot.
    Code,
}

/// Whether a kind of label carries a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Carries {
    /// Always.
    Yes,
    /// Where the maker gave it.
    Maybe,
    /// Never.
    No,
}

impl Row {
    /// The row's name in the trade's table, where it has one.
    #[must_use]
    pub const fn id(self) -> Option<&'static str> {
        Some(match self {
            Self::Names => "B01",
            Self::Liquid => "B02",
            Self::Begun => "B03",
            Self::Dates => "B04",
            Self::Lot => "B05",
            Self::Keeping => "B06",
            Self::Use => "B07",
            Self::Warnings => "B08",
            Self::Alcohol => "B09",
            Self::PoisonLine => "B10",
            Self::Maker => "B11",
            Self::Contents => "B12",
            Self::Ethanol | Self::ByHand | Self::Ways | Self::Note | Self::Code => return None,
        })
    }

    /// Whether a kind of label carries it.
    #[must_use]
    pub const fn on(self, kind: Kind) -> Carries {
        use Carries::{Maybe, No, Yes};
        let [jar, bottle, gift] = match self {
            Self::Names | Self::Liquid | Self::Lot => [Yes, Yes, Yes],
            Self::Begun => [Yes, No, No],
            Self::Dates
            | Self::Keeping
            | Self::Use
            | Self::Warnings
            | Self::Alcohol
            | Self::PoisonLine => [No, Yes, Yes],
            Self::Maker => [No, Maybe, Yes],
            Self::Contents | Self::ByHand | Self::Ways => [No, No, Maybe],
            Self::Ethanol => [No, Maybe, Maybe],
            Self::Note => [Maybe, Maybe, No],
            Self::Code => [Yes, Yes, Yes],
        };
        match kind {
            Kind::Jar => jar,
            Kind::Bottle => bottle,
            Kind::Gift => gift,
        }
    }

    /// What the item is called where it had no room or is not known.
    pub(crate) fn said(self) -> Message {
        match self {
            Self::Names => say!("item-plants"),
            Self::Liquid => say!("item-liquid"),
            Self::Begun => say!("item-begun"),
            Self::Dates => say!("item-dates"),
            Self::Lot => say!("item-origins"),
            Self::Keeping => say!("item-keeping"),
            Self::Use => say!("item-use"),
            Self::Warnings => say!("item-cautions"),
            Self::Alcohol => say!("item-alcohol"),
            Self::PoisonLine => say!("item-poison-centre"),
            Self::Maker => say!("item-maker"),
            Self::Contents => say!("item-contents"),
            Self::Ethanol => say!("item-ethanol"),
            Self::ByHand => say!("item-by-hand"),
            Self::Ways => say!("item-ways"),
            Self::Note => say!("item-note"),
            Self::Code => say!("item-code"),
        }
    }
}
