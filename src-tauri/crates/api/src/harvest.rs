//! What was picked: `harvest.*`.

mod wire;

pub use wire::*;
