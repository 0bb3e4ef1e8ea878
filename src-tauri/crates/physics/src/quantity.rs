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

/// The number of grams in a mass.
pub fn grams_of(mass: Mass) -> f64 {
    typed(mass.get::<gram>())
}

/// The number of millilitres in a volume.
pub fn millilitres_of(volume: Volume) -> f64 {
    typed(volume.get::<milliliter>())
}

/// The number of kilograms per cubic metre in a density.
pub fn kg_per_m3_of(density: MassDensity) -> f64 {
    density.get::<kilogram_per_cubic_meter>()
}

/// The number as it was typed: the way through SI units and back must not turn 200 mL into
/// 199.99999999999997 mL, so the sixteenth digit is rounded away.
fn typed(value: f64) -> f64 {
    let scale = match value.abs() {
        size if size < 1e3 => 1e12,
        size if size < 1e6 => 1e9,
        size if size < 1e9 => 1e6,
        _ => return value,
    };
    (value * scale).round() / scale
}

/// The number of degrees Celsius in a temperature.
///
/// Rounded to a nanodegree: the way through kelvin and back must not turn 20 C
/// into 19.99999999999997 C, nor the end of a formula's range into one step beyond it.
pub fn degrees_celsius(temperature: ThermodynamicTemperature) -> f64 {
    let value = temperature.get::<degree_celsius>();
    (value * 1e9).round() / 1e9
}

/// A time in hours.
pub fn hours(value: f64) -> Time {
    Time::new::<uom::si::time::hour>(value)
}
