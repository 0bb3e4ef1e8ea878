//! The units at the doors: `uom` types and the few conversions the trade uses.

pub use uom::si::f64::{Mass, MassDensity, ThermodynamicTemperature, Time, Volume};

use uom::si::{
    mass::gram, mass_density::kilogram_per_cubic_meter, thermodynamic_temperature::degree_celsius,
    volume::milliliter,
};

/// A mass in grams.
pub fn grams(value: f64) -> Mass {
    Mass::new::<gram>(value)
}

/// A volume in millilitres.
pub fn millilitres(value: f64) -> Volume {
    Volume::new::<milliliter>(value)
}

/// A density in kilograms per cubic metre.
pub fn kg_per_m3(value: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(value)
}

/// A temperature in degrees Celsius.
pub fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}
