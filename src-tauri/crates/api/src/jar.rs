//! What is poured on what: `lot.list`, `preparation.list`, `jar.*`.

mod proposal;
mod wire;

pub use proposal::*;
pub use wire::*;
