//! What a liquid is, and how to reach one: `mixture.describe`, `mixture.reach`.

pub(crate) mod describe;
pub(crate) mod help;
pub(crate) mod reach;
