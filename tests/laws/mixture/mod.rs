//! Laws of the mixture engine.

mod dilution;
mod keeping;
mod liquid;
mod reach;
mod stock;
