//! What is poured on what: `lot.list`, `preparation.list`, `jar.*`, `plan.bottles`.

mod advise;
mod compose;
mod correct;
mod equivalent;
mod judged;
mod life;
mod lots;
mod marc;
mod merged;
mod page;
mod plan;
mod pour;
mod proposal;
mod recipe;
mod rest;
mod retention;
mod said;
mod sample;
mod wire;
mod wishes;

pub use advise::*;
pub(crate) use equivalent::DriedEquivalent;
pub(crate) use judged::{Judged, preparation_named, preparation_of};
pub(crate) use life::refuse_failed;
pub use life::*;
pub use marc::*;
pub use merged::*;
pub(crate) use page::{card, herbs, pours};
pub use plan::*;
pub use proposal::*;
pub use recipe::*;
pub use rest::*;
pub use wire::*;
pub use wishes::*;
