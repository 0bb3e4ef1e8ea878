//! Laws of the mixture engine.

mod dilution;
mod liquid;
mod reach;
mod stock;
