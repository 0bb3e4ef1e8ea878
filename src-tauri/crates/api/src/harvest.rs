//! What was picked: `harvest.*`.

mod bin;
mod estimate;
mod list;
mod page;
mod record;
mod wire;

pub use bin::BinHarvest;
pub(crate) use estimate::{OwnBatches, own_fractions, target_percent};
pub use wire::*;
