//! What is poured on what: `lot.list`, `preparation.list`, `jar.*`, `plan.bottles`.

mod advise;
mod compose;
mod correct;
mod lots;
mod page;
mod plan;
mod pour;
mod proposal;
mod said;
mod wire;

pub use advise::*;
pub use plan::*;
pub use proposal::*;
pub use wire::*;
