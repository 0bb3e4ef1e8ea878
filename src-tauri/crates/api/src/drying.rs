//! How dry a lot is and when to take it down: `drying.estimate`, and what it shares with the rack.

mod estimate;
mod expected;
mod reason;
mod wire;

pub(crate) use estimate::{air, noted};
pub(crate) use expected::Expected;
pub use wire::*;
