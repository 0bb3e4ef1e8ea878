//! Plans: wishes, and what they ask for.

pub mod bottles;
pub mod class;
pub mod merged;
pub mod wish;
