//! What a lot of plant will weigh dry, when it is dry, and when nobody can know.
//!
//! One file a concept: [`balance`] conserves dry matter, [`prior`] says what the
//! tables, an oven sample or the maker's own batches expect, [`estimate()`] joins
//! that with the weigh-ins, of which `sift` keeps those that count, and lays beside
//! it what `doubt` says they may mean as well. [`sorption`] says how dry the air
//! lets it become. Herbs by name, trays and screens live elsewhere.

mod ahead;
pub mod balance;
mod curve;
mod doubt;
pub mod estimate;
pub mod learning;
pub mod lot;
mod posterior;
pub mod prior;
mod reading;
pub mod reason;
mod rest;
pub mod sample;
mod sift;
pub mod sorption;
mod spread;

pub use curve::{CurvePoint, curve};
pub use estimate::{Estimate, estimate};
pub use learning::{BatchHistory, Predictive};
pub use lot::{Air, Basis, Lot, Pace, RelativeHumidity, Weighing};
pub use prior::DryMatterPrior;
pub use reason::Reason;
pub use sample::OvenSample;
