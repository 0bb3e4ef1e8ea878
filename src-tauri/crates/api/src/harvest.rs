//! What was picked: `harvest.*`.

pub(crate) mod bin;
pub(crate) mod card;
pub(crate) mod estimate;
pub(crate) mod list;
pub(crate) mod page;
pub(crate) mod record;
