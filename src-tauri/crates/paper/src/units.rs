//! Lengths on paper.

/// Millimetres in a point.
pub(crate) const MM_PER_PT: f64 = 25.4 / 72.0;
