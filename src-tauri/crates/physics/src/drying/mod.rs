//! What a lot of plant will weigh dry, when it is dry, and when nobody can know.
//!
//! One file a concept: [`balance`] conserves dry matter, [`prior`] says what the
//! tables, an oven sample or the maker's own batches expect, [`estimate`] joins
//! that with the weigh-ins. [`thin_layer`], [`sorption`] and [`temperature`] are
//! the published equations. Herbs by name, trays and screens live elsewhere.

pub mod balance;
pub mod estimate;
pub mod learning;
pub mod lot;
pub mod prior;
pub mod reason;
pub mod sample;
pub mod sorption;
pub mod temperature;
pub mod thin_layer;

pub use estimate::{CurvePoint, Estimate, curve, estimate};
pub use learning::{BatchHistory, Predictive};
pub use lot::{Air, Basis, Lot, Pace, RelativeHumidity, Weighing};
pub use prior::DryMatterPrior;
pub use reason::Reason;
pub use sample::OvenSample;
