//! What was picked: `harvest.*`.

mod estimate;
mod list;
mod page;
mod record;
mod wire;

pub(crate) use estimate::{OwnBatches, own_fractions, target_percent};
pub use wire::*;
