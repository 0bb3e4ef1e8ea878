//! How warmth changes the rate of drying.

use crate::{
    error::{OutOfRange, within},
    quantity::ThermodynamicTemperature,
};
use uom::si::thermodynamic_temperature::kelvin;

/// The molar gas constant, J/(mol K); exact since the 2019 definition of the SI.
const GAS_CONSTANT: f64 = 8.314_462_618;

/// Rate at `to` over the rate at `from`: `exp(-Ea / R (1 / T_to - 1 / T_from))`.
///
/// Valid for the temperatures the activation energy was measured over, mostly 35-70 C;
/// herbs lie between 35 and 74 kJ/mol.
///
/// # Errors
/// [`OutOfRange`] for an activation energy outside 0-200 kJ/mol.
///
/// Source: Arrhenius; activation energies in the abstracts of Doymaz 2006 (mint), 2011 (thyme) and others.
///
/// ```
/// use physics::{drying::temperature::rate_ratio, quantity::celsius};
/// // Thyme, 73.84 kJ/mol (Doymaz 2011): from 40 to 20 C the rate falls to a seventh.
/// assert!((rate_ratio(73.84, celsius(40.0), celsius(20.0))? - 0.144447).abs() < 1e-5);
/// # Ok::<(), physics::OutOfRange>(())
/// ```
pub fn rate_ratio(
    activation_energy_kj_per_mol: f64,
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> Result<f64, OutOfRange> {
    let energy = within(
        "the activation energy",
        activation_energy_kj_per_mol,
        0.0,
        200.0,
        "between 0 and 200 kJ/mol",
    )?;
    let inverse = 1.0 / to.get::<kelvin>() - 1.0 / from.get::<kelvin>();
    Ok(libm::exp(-1000.0 * energy / GAS_CONSTANT * inverse))
}
