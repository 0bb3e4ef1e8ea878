//! From the strained jar to the empty bottle: `bottle.*`, `dropper.*`.

mod dropper;
mod fill;
mod list;
mod page;
mod wire;
mod write;

pub use dropper::*;
pub(crate) use list::{Shown, cards_of};
pub use wire::*;
