//! Thin-layer models: how the moisture ratio falls with time.
//!
//! `MR = (M - Me) / (M0 - Me)` on dry basis. A logarithmic model with a negative
//! `c` and the `b t` of Midilli leave the range 0-1 after the data end, so
//! neither may be used to say what comes later: [`ThinLayer::may_extrapolate`].

use crate::quantity::Time;
use uom::si::time::hour;

/// A thin-layer drying model with its parameters; rates are per hour.
///
/// Source: forms as named in the abstracts listed in `thin_layer_studies` of the
/// reference data (Doymaz 2006 and others); the two-term form is from memory.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ThinLayer {
    /// Newton, or Lewis: `exp(-k t)`.
    Lewis {
        /// Rate, 1/h.
        k: f64,
    },
    /// Page: `exp(-k t^n)`.
    Page {
        /// Rate, 1/h^n: re-express it with [`page_rate_per_hour`] before comparing runs.
        k: f64,
        /// Exponent.
        n: f64,
    },
    /// Henderson and Pabis: `a exp(-k t)`.
    HendersonPabis {
        /// Moisture ratio at the start.
        a: f64,
        /// Rate, 1/h.
        k: f64,
    },
    /// Logarithmic, or asymptotic: `a exp(-k t) + c`.
    Logarithmic {
        /// Span of the exponential part.
        a: f64,
        /// Rate, 1/h.
        k: f64,
        /// Asymptote.
        c: f64,
    },
    /// Midilli and Kucuk: `a exp(-k t^n) + b t`.
    Midilli {
        /// Moisture ratio at the start.
        a: f64,
        /// Rate, 1/h^n.
        k: f64,
        /// Exponent.
        n: f64,
        /// Linear term, 1/h.
        b: f64,
    },
    /// Two-term: `a exp(-k0 t) + b exp(-k1 t)`.
    TwoTerm {
        /// Share of the first part (leaf).
        a: f64,
        /// Rate of the first part, 1/h.
        k0: f64,
        /// Share of the second part (stem).
        b: f64,
        /// Rate of the second part, 1/h.
        k1: f64,
    },
}

impl ThinLayer {
    /// The moisture ratio after `time` in the drying air.
    ///
    /// ```
    /// use physics::drying::thin_layer::ThinLayer;
    /// use uom::si::{f64::Time, time::hour};
    /// let page = ThinLayer::Page { k: 0.035, n: 0.85 };
    /// let ratio = page.moisture_ratio(Time::new::<hour>(24.0));
    /// assert!((ratio - 0.593_634_220_8).abs() < 1e-9);
    /// ```
    pub fn moisture_ratio(self, time: Time) -> f64 {
        let t = time.get::<hour>();
        match self {
            Self::Lewis { k } => libm::exp(-k * t),
            Self::Page { k, n } => libm::exp(-k * libm::pow(t, n)),
            Self::HendersonPabis { a, k } => a * libm::exp(-k * t),
            Self::Logarithmic { a, k, c } => a * libm::exp(-k * t) + c,
            Self::Midilli { a, k, n, b } => a * libm::exp(-k * libm::pow(t, n)) + b * t,
            Self::TwoTerm { a, k0, b, k1 } => a * libm::exp(-k0 * t) + b * libm::exp(-k1 * t),
        }
    }

    /// Whether the model stays within 0 and its start after the data end.
    pub fn may_extrapolate(self) -> bool {
        match self {
            Self::Logarithmic { c, .. } => c >= 0.0,
            Self::Midilli { b, .. } => b == 0.0,
            _ => true,
        }
    }
}

/// Page's rate in 1/h, whatever the exponent: `K = k^(1/n)`, so that `MR = exp(-(K t)^n)`.
pub fn page_rate_per_hour(k: f64, n: f64) -> f64 {
    libm::pow(k, 1.0 / n)
}
