//! Where a thing came from, and what became of it.

pub mod back;
pub mod forward;
