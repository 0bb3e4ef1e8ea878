//! A bottle: its card, its sums, what is used in a year.

pub mod card;
pub mod stock;
pub mod sums;
pub mod usage;
