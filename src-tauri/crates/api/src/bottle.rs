//! From the strained jar to the empty bottle: `bottle.*`, `dropper.*`.

mod dropper;
mod fill;
mod list;
mod page;
mod stock;
mod wire;
mod write;
mod yearly;

pub use dropper::*;
pub(crate) use list::{Shown, cards_of};
pub(crate) use stock::Summed;
pub use wire::*;
pub(crate) use yearly::{YearlyUse, yearly_use};
