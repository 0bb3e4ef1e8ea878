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
use uom::si::thermodynamic_temperature::degree_celsius;

/// A sorption isotherm with its coefficients.
///
/// Source: ASAE D245.5 (2001) as restated in a public code file that cites it (secondary).
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Isotherm {
    /// Modified Henderson: `M = (-ln(1 - RH) / (A (T + C)))^(1/B)`.
    Henderson {
        /// Coefficient A.
        a: f64,
        /// Coefficient B.
        b: f64,
        /// Coefficient C, C.
        c: f64,
    },
    /// Modified Chung and Pfost: `M = -(1/B) ln(-(T + C) ln(RH) / A)`.
    ChungPfost {
        /// Coefficient A.
        a: f64,
        /// Coefficient B.
        b: f64,
        /// Coefficient C, C.
        c: f64,
    },
    /// Modified Halsey: `M = (-exp(A + B T) / ln RH)^(1/C)`.
    Halsey {
        /// Coefficient A.
        a: f64,
        /// Coefficient B, 1/C.
        b: f64,
        /// Coefficient C.
        c: f64,
    },
    /// Modified Oswin: `M = (A + B T) / (1/RH - 1)^(1/C)`.
    Oswin {
        /// Coefficient A.
        a: f64,
        /// Coefficient B, 1/C.
        b: f64,
        /// Coefficient C.
        c: f64,
    },
    /// Guggenheim, Anderson and de Boer: `M = Mm C K aw / ((1 - K aw)(1 - K aw + C K aw))`; no temperature.
    Gab {
        /// Monolayer moisture Mm, in the unit of the result.
        monolayer: f64,
        /// Coefficient C.
        c: f64,
        /// Coefficient K.
        k: f64,
    },
}

/// Herb leaf, an engineering default that was not published: tied to lemon balm leaf,
/// 12.4 % on dry basis at 25 C (Argyropoulos et al. 2012, abstract), at RH 0.60 (from memory).
pub const HERB_LEAF: Isotherm = Isotherm::Oswin {
    a: 11.43,
    b: -0.05,
    c: 2.06,
};

/// Herb stem: [`HERB_LEAF`] times 11.3/12.4, lemon balm stem to leaf (same abstract).
pub const HERB_STEM: Isotherm = Isotherm::Oswin {
    a: 10.42,
    b: -0.0456,
    c: 2.06,
};

/// SD of ln(equilibrium moisture) from lot to lot; assumed, no source.
pub(crate) const LOT_SD: f64 = 0.12;

/// Above this humidity the herb default is contradicted by measured chamomile
/// (51.78 % on dry basis at 90 %), so it says nothing there.
pub const HERB_HIGHEST_HUMIDITY: f64 = 0.80;

impl Isotherm {
    /// The moisture, in the unit of the coefficients (mostly per cent on dry basis), at which
    /// the plant neither gains nor loses water.
    ///
    /// Valid for the range over which the coefficients were fitted, which the caller knows.
    ///
    /// # Errors
    /// [`OutOfRange`] for humidity outside 0.01-0.99, where the equations run to zero or infinity.
    ///
    /// ```
    /// use physics::{drying::{RelativeHumidity, sorption::Isotherm}, quantity::celsius};
    /// // Soybean at 60 F and 80 %: 22.33 % on dry basis.
    /// let soybean = Isotherm::Halsey { a: 2.87, b: -0.0054, c: 1.38 };
    /// let moisture = soybean.moisture(RelativeHumidity::new(0.8)?, celsius(15.56))?;
    /// assert!((moisture / 22.33 - 1.0).abs() < 1e-3);
    /// # Ok::<(), physics::OutOfRange>(())
    /// ```
    pub fn moisture(
        self,
        humidity: RelativeHumidity,
        temperature: ThermodynamicTemperature,
    ) -> Result<f64, OutOfRange> {
        let rh = within(
            "the relative humidity",
            100.0 * humidity.get(),
            1.0,
            99.0,
            "between 1 and 99 %",
        )? / 100.0;
        let t = temperature.get::<degree_celsius>();
        Ok(match self {
            Self::Henderson { a, b, c } => libm::pow(-libm::log1p(-rh) / (a * (t + c)), 1.0 / b),
            Self::ChungPfost { a, b, c } => -libm::log(-(t + c) * libm::log(rh) / a) / b,
            Self::Halsey { a, b, c } => libm::pow(-libm::exp(a + b * t) / libm::log(rh), 1.0 / c),
            Self::Oswin { a, b, c } => (a + b * t) * libm::pow(rh / (1.0 - rh), 1.0 / c),
            Self::Gab { monolayer, c, k } => {
                monolayer * c * k * rh / ((1.0 - k * rh) * (1.0 - k * rh + c * k * rh))
            }
        })
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
