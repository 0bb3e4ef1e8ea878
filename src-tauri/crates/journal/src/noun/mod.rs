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
pub(crate) mod recipe;
pub(crate) mod setting;
pub(crate) mod shake;
pub(crate) mod straining;
pub(crate) mod supply;
pub(crate) mod tray;
pub(crate) mod usage;
pub(crate) mod weighing;
pub(crate) mod wish;

use physics::mixture::ph::PhReading;

use crate::Refusal;
use crate::refusal::{note, number, text};

const LONGEST_NAME: usize = 120;
const LONGEST_NOTE: usize = 10_000;

pub(crate) fn name(value: &str) -> Result<(), Refusal> {
    text("name", "The name", value, LONGEST_NAME)
}

pub(crate) fn remark(value: Option<&str>) -> Result<(), Refusal> {
    note("note", "The note", value, LONGEST_NOTE)
}

/// A pH on its scale.
pub(crate) fn ph(read: Option<PhReading>) -> Result<(), Refusal> {
    read.map_or(Ok(()), |ph| {
        number("ph", "the pH", ph.value, 0.0, 14.0, "between 0 and 14")
    })
}

/// Any weight a kitchen scale can show. The tenth of a gram is the finest step
/// that is common; a hundredth leaves room for a jeweller's scale.
pub(crate) fn mass(field: &'static str, quantity: &'static str, value: f64) -> Result<(), Refusal> {
    number(
        field,
        quantity,
        value,
        0.01,
        100_000.0,
        "between 0.01 g and 100 kg (100000 g)",
    )
}

/// The weight of an empty basket, tray or bowl.
pub(crate) fn tare(value: f64) -> Result<(), Refusal> {
    number(
        "tare_g",
        "the tare",
        value,
        0.0,
        50_000.0,
        "between 0 g and 50 kg (50000 g)",
    )
}

pub(crate) fn volume(
    field: &'static str,
    quantity: &'static str,
    value: f64,
) -> Result<(), Refusal> {
    number(
        field,
        quantity,
        value,
        0.01,
        1_000_000.0,
        "between 0.01 mL and 1000 L (1000000 mL)",
    )
}
