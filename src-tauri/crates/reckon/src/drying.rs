//! How a plant dries: what is expected of it, the maker's own batches, what a weight comes to.

pub mod batches;
pub mod expected;
pub mod reason;
pub mod weight;
