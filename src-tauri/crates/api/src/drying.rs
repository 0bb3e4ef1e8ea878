//! How dry a lot is and when to take it down: `drying.estimate`, and what it shares with the rack.

pub(crate) mod estimate;
pub(crate) mod request;
