//! Numbers and models only: what a liquid is, what a plant weighs dry.
//!
//! Nothing here asks the time, the disk or the random generator, and nothing
//! knows of herbs by name, of jars or of screens.

pub mod drying;
pub mod error;
pub mod fraction;
pub mod interval;
pub mod mixture;
mod plant_state;
pub mod quantity;
pub mod solve;
pub mod units;

pub use error::OutOfRange;
pub use fraction::{DryBasis, MassFraction, Strength, WetBasis};
pub use interval::Interval;
pub use plant_state::PlantState;
