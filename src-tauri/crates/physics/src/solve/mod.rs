//! How much of each thing on the shelf, to end at a target.
//!
//! Mass fractions are linear in the amounts, so the choice is a linear programme. Strength and volume
//! go through the density; it is put in by the partial volumes at the last answer, and the programme is
//! solved again until they agree.

mod programme;
mod reach;
mod stock;
mod target;

pub use reach::{Amount, Reached, reach};
pub use stock::StockItem;
pub use target::{Shortfall, Target, Targets};
