//! Densities, conversions, dilutions, water activities and the rest of the chemistry.
//!
//! Every table keeps its `source` and `status` columns; a row marked "do not test" is a misprint in
//! the copy that was read. Tolerances are the rows' own.

mod activity;
mod dilution;
mod ethanol;
mod free_water;
mod gauging;
mod glycerol;
mod honey;
mod oils;
mod sugar;
mod trade;
mod units;
mod vinegar;
mod water;

use physics::{MassFraction, Strength};

/// A mass fraction from a table's percentage.
fn mass(percent: f64) -> MassFraction {
    MassFraction::from_percent(percent).expect("a percentage by mass")
}

/// A strength from a table's percentage by volume.
fn strength(percent: f64) -> Strength {
    Strength::from_percent(percent).expect("a percentage by volume")
}
