//! Equilibrium moisture: where drying stops in a given air.
//!
//! ASAE D245 convention: moisture in per cent on dry basis, relative humidity as
//! a fraction, temperature in degrees Celsius.

use super::lot::{Air, RelativeHumidity};
use crate::{
    error::{OutOfRange, within},
    fraction::DryBasis,
    interval::Interval,
    quantity::ThermodynamicTemperature,
};
use message::{Unit, say};
use uom::si::thermodynamic_temperature::degree_celsius;

/// The modified Oswin isotherm with its coefficients: `M = (A + B T) / (1/RH - 1)^(1/C)`.
///
/// Source: ASAE D245.5 (2001) as restated in a public code file that cites it (secondary).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oswin {
    /// Coefficient A.
    pub a: f64,
    /// Coefficient B, 1/C.
    pub b: f64,
    /// Coefficient C.
    pub c: f64,
}

/// Herb leaf, an engineering default that was not published: tied to lemon balm leaf,
/// 12.4 % on dry basis at 25 C (Argyropoulos et al. 2012, abstract), at RH 0.60 (from memory).
pub const HERB_LEAF: Oswin = Oswin {
    a: 11.43,
    b: -0.05,
    c: 2.06,
};

/// SD of ln(equilibrium moisture) from lot to lot; assumed, no source.
pub(crate) const LOT_SD: f64 = 0.12;

/// Above this humidity the herb default is contradicted by measured chamomile
/// (51.78 % on dry basis at 90 %), so it says nothing there.
pub const HERB_HIGHEST_HUMIDITY: f64 = 0.80;

impl Oswin {
    /// The moisture, in the unit of the coefficients (mostly per cent on dry basis), at which
    /// the plant neither gains nor loses water.
    ///
    /// Valid for the range over which the coefficients were fitted, which the caller knows.
    ///
    /// # Errors
    /// [`OutOfRange`] for humidity outside 0.01-0.99, where the equations run to zero or infinity.
    ///
    /// ```
    /// use physics::{drying::{RelativeHumidity, sorption::Oswin}, quantity::celsius};
    /// // Shelled corn at 15 C and 50 %: 13.7754 % on dry basis.
    /// let corn = Oswin { a: 15.303, b: -0.10184, c: 3.0358 };
    /// let moisture = corn.moisture(RelativeHumidity::new(0.5)?, celsius(15.0))?;
    /// assert!((moisture / 13.7754 - 1.0).abs() < 1e-5);
    /// # Ok::<(), physics::OutOfRange>(())
    /// ```
    pub fn moisture(
        self,
        humidity: RelativeHumidity,
        temperature: ThermodynamicTemperature,
    ) -> Result<f64, OutOfRange> {
        let rh = within(
            say!("what-relative-humidity"),
            100.0 * humidity.get(),
            1.0,
            99.0,
            Unit::Percent,
        )? / 100.0;
        let t = temperature.get::<degree_celsius>();
        Ok((self.a + self.b * t) * libm::pow(rh / (1.0 - rh), 1.0 / self.c))
    }
}

/// The moisture that a herb can reach in this air: the herb-leaf default with its spread
/// from lot to lot; `None` above 80 % humidity or outside 5-60 C, where the default says nothing.
pub fn room_limit(air: Air) -> Option<(DryBasis, f64)> {
    let celsius = air.temperature.get::<degree_celsius>();
    if air.humidity.get() > HERB_HIGHEST_HUMIDITY || !(5.0..=60.0).contains(&celsius) {
        return None;
    }
    let percent = HERB_LEAF.moisture(air.humidity, air.temperature).ok()?;
    let dry_basis = DryBasis::from_percent(percent).ok()?;
    Some((dry_basis, LOT_SD * dry_basis.get()))
}

/// [`room_limit`] on wet basis, in per cent, as a 90 % interval.
pub fn room_limit_wet_percent(air: Air) -> Option<Interval> {
    let (centre, sd) = room_limit(air)?;
    let half = super::prior::Z90 * sd;
    let wet = |m: f64| 100.0 * m / (1.0 + m);
    Some(Interval::spanning(
        wet(centre.get()),
        wet((centre.get() - half).max(0.0)),
        wet(centre.get() + half),
    ))
}
