//! What a liquid is, and how to reach one: `mixture.describe`, `mixture.reach`.

mod describe;
mod label;
mod reach;

mod wire;

pub(crate) use describe::{noted, plants};
pub(crate) use label::{as_item, ingredient, stock};
pub use wire::*;
