//! The nouns, one file each.

pub(crate) mod bed;
pub(crate) mod bottle;
pub(crate) mod discard;
pub(crate) mod dropper;
pub(crate) mod harvest;
pub(crate) mod herb;
pub(crate) mod jar;
pub(crate) mod look;
pub(crate) mod photo;
pub(crate) mod portrait;
pub(crate) mod recipe;
pub(crate) mod setting;
pub(crate) mod shake;
pub(crate) mod straining;
pub(crate) mod supply;
pub(crate) mod tray;
pub(crate) mod usage;
pub(crate) mod weighing;
pub(crate) mod wish;

use message::{Message, Unit, say};
use physics::mixture::ph::PhReading;

use crate::refusal::{note, number, text};
use crate::{Item, Refusal};

const LONGEST_NAME: usize = 120;
const LONGEST_NOTE: usize = 10_000;

pub(crate) fn name(value: &str) -> Result<(), Refusal> {
    text("name", say!("what-name"), value, LONGEST_NAME)
}

pub(crate) fn remark(value: Option<&str>) -> Result<(), Refusal> {
    note("note", say!("what-note"), value, LONGEST_NOTE)
}

/// What a label says.
pub(crate) fn item(item: &Item) -> Result<(), Refusal> {
    item.check()?;
    item.oil()
        .map_or(Ok(()), |oil| text("oil", say!("what-oil"), oil, 60))
}

/// A pH on its scale.
pub(crate) fn ph(read: Option<PhReading>) -> Result<(), Refusal> {
    read.map_or(Ok(()), |ph| {
        number("ph", say!("what-ph"), ph.value, 0.0, 14.0, Unit::None)
    })
}

/// Any weight a kitchen scale can show. The tenth of a gram is the finest step
/// that is common; a hundredth leaves room for a jeweller's scale.
pub(crate) fn mass(field: &'static str, what: Message, value: f64) -> Result<(), Refusal> {
    number(field, what, value, 0.01, 100_000.0, Unit::Gram)
}

/// The weight of an empty basket, tray or bowl.
pub(crate) fn tare(value: f64) -> Result<(), Refusal> {
    number(
        "tare_g",
        say!("what-tare"),
        value,
        0.0,
        50_000.0,
        Unit::Gram,
    )
}

pub(crate) fn volume(field: &'static str, what: Message, value: f64) -> Result<(), Refusal> {
    number(field, what, value, 0.01, 1_000_000.0, Unit::Millilitre)
}
