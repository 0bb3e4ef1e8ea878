//! What lies in the garden's boxes: `lot.*`.

pub(crate) mod cook;
pub(crate) mod find;
pub(crate) mod list;
