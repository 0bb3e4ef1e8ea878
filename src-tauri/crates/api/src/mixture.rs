//! What a liquid is, and how to reach one: `mixture.describe`, `mixture.reach`.

mod describe;
mod help;
mod label;
mod reach;

mod wire;

pub(crate) use describe::noted;
pub(crate) use label::{as_item, ingredient, label_of, stock};
pub use wire::*;
