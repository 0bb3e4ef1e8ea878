//! From the strained jar to the empty bottle: `bottle.*`, `dropper.*`.

pub(crate) mod fill;
pub(crate) mod list;
pub(crate) mod page;
pub(crate) mod ways;
pub(crate) mod write;
