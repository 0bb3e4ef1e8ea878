//! What is known of a lot on its tray.

use super::{prior::DryMatterPrior, sample::OvenSample};
use crate::{
    error::{OutOfRange, within},
    fraction::WetBasis,
    quantity::{Mass, ThermodynamicTemperature, Time},
};
use message::{Unit, say};
use uom::si::{mass::gram, thermodynamic_temperature::kelvin, time::hour};

/// Relative humidity of the air.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct RelativeHumidity(f64);

impl RelativeHumidity {
    /// From a fraction (1.0 is saturated).
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0-1.
    pub fn new(fraction: f64) -> Result<Self, OutOfRange> {
        Self::from_percent(100.0 * fraction)
    }

    /// From a percentage.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0-100 %.
    pub fn from_percent(percent: f64) -> Result<Self, OutOfRange> {
        within(
            say!("what-relative-humidity"),
            percent,
            0.0,
            100.0,
            Unit::Percent,
        )
        .map(|percent| Self(percent / 100.0))
    }

    /// The fraction, 1.0 being saturated.
    pub fn get(self) -> f64 {
        self.0
    }
}

/// The air around the rack, its mean over the run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// Air temperature.
    pub temperature: ThermodynamicTemperature,
    /// Relative humidity.
    pub humidity: RelativeHumidity,
}

impl Air {
    /// Hours over which the air near the end of a run tells where the weight comes to rest.
    const RECENT_HOURS: f64 = 48.0;

    /// The air of a run by what was noted of it, as hours and air: its mean, or the mean of the last two
    /// days where that is damper, since a herb that was nearly dry comes to rest in the air that it has now.
    ///
    /// `None` where nothing was noted.
    pub fn of_run(noted: &[(f64, Self)]) -> Option<Self> {
        let last = noted.iter().map(|it| it.0).fold(f64::MIN, f64::max);
        let mean = |from: f64| {
            let of = noted.iter().filter(|it| it.0 >= from).map(|it| it.1);
            let count = of.clone().count() as f64;
            let humidity = of.clone().map(|it| it.humidity.get()).sum::<f64>() / count;
            let kelvins = of.map(|it| it.temperature.get::<kelvin>()).sum::<f64>() / count;
            Self {
                temperature: ThermodynamicTemperature::new::<kelvin>(kelvins),
                humidity: RelativeHumidity(humidity),
            }
        };
        let (whole, recent) = (mean(f64::MIN), mean(last - Self::RECENT_HOURS));
        let is_damper = recent.humidity > whole.humidity;
        (!noted.is_empty()).then_some(if is_damper { recent } else { whole })
    }
}

/// How fast a part of a plant is expected to dry before it was ever weighed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Pace {
    /// Leaf, herb or flower: 1/K about 28 hours, from half to twice (engineering default).
    #[default]
    Leafy,
    /// Root, fruit or bark: 1/K about 70 hours, from half to twice (engineering default).
    Dense,
}

/// One weigh-in: hours since the lot was weighed fresh, and its net mass then.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighing {
    pub(crate) hours: f64,
    pub(crate) mass_g: f64,
    pub(crate) snaps: bool,
    pub(crate) is_confirmed: bool,
}

impl Weighing {
    /// From the time since the fresh weighing and the net mass.
    ///
    /// # Errors
    /// [`OutOfRange`] for a time outside 0 to two years or a mass outside 0-1000 kg.
    pub fn new(since_fresh: Time, mass: Mass) -> Result<Self, OutOfRange> {
        Ok(Self {
            hours: within(
                say!("what-time-since-the-fresh-weighing"),
                since_fresh.get::<hour>(),
                0.0,
                17_520.0,
                Unit::Hours,
            )?,
            mass_g: within(say!("what-mass"), mass.get::<gram>(), 0.0, 1e6, Unit::Gram)?,
            snaps: false,
            is_confirmed: false,
        })
    }

    /// With a snap test that it passed: the thickest part breaks, a leaf crumbles.
    #[must_use]
    pub fn snapped(mut self) -> Self {
        self.snaps = true;
        self
    }

    /// With the maker's word that the scale really showed this.
    #[must_use]
    pub fn confirmed(mut self) -> Self {
        self.is_confirmed = true;
        self
    }

    /// Hours since the fresh weighing.
    pub fn hours(self) -> f64 {
        self.hours
    }

    /// Net mass in grams.
    pub fn mass_g(self) -> f64 {
        self.mass_g
    }
}

/// What an estimate rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Basis {
    /// Published tables, or a stated prior.
    #[serde(rename = "table")]
    Table,
    /// The maker's own finished batches.
    #[serde(rename = "own batches")]
    OwnBatches,
    /// The weigh-ins of this lot.
    #[serde(rename = "weigh-ins")]
    WeighIns,
    /// An oven sample of this lot.
    #[serde(rename = "sample")]
    Sample,
}

impl Basis {
    /// As the wire names it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Table => "table",
            Self::OwnBatches => "own batches",
            Self::WeighIns => "weigh-ins",
            Self::Sample => "sample",
        }
    }
}

/// A lot and everything measured on it; [`super::estimate()`] takes it.
#[derive(Debug, Clone, PartialEq)]
pub struct Lot {
    pub(crate) fresh_g: f64,
    pub(crate) scale_step_g: f64,
    pub(crate) target: WetBasis,
    pub(crate) prior: DryMatterPrior,
    pub(crate) prior_basis: Basis,
    pub(crate) pace: Pace,
    pub(crate) weighings: Vec<Weighing>,
    pub(crate) air: Option<Air>,
}

impl Lot {
    /// A lot weighed fresh, with what is believed of its dry matter.
    ///
    /// The scale step is 1 g and the target 10 % moisture until set otherwise.
    ///
    /// # Errors
    /// [`OutOfRange`] for a fresh mass outside 1 g to 1000 kg.
    pub fn new(fresh: Mass, prior: DryMatterPrior) -> Result<Self, OutOfRange> {
        Ok(Self {
            fresh_g: within(
                say!("what-fresh-mass"),
                fresh.get::<gram>(),
                1.0,
                1e6,
                Unit::Gram,
            )?,
            scale_step_g: 1.0,
            target: WetBasis::from_percent(10.0)?,
            prior,
            prior_basis: Basis::Table,
            pace: Pace::default(),
            weighings: Vec::new(),
            air: None,
        })
    }

    /// With the step of the scale that weighs it.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0.001 g to 1 kg.
    pub fn scale_step(mut self, step: Mass) -> Result<Self, OutOfRange> {
        self.scale_step_g = within(
            say!("what-scale-step"),
            step.get::<gram>(),
            0.001,
            1000.0,
            Unit::Gram,
        )?;
        Ok(self)
    }

    /// With the moisture to dry down to.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 2-30 % on wet basis.
    pub fn target(mut self, moisture: WetBasis) -> Result<Self, OutOfRange> {
        within(
            say!("what-target-moisture"),
            moisture.percent(),
            2.0,
            30.0,
            Unit::Percent,
        )?;
        self.target = moisture;
        Ok(self)
    }

    /// With the pace of its part.
    #[must_use]
    pub fn pace(mut self, pace: Pace) -> Self {
        self.pace = pace;
        self
    }

    /// With weigh-ins, in any order.
    #[must_use]
    pub fn weighings(mut self, weighings: Vec<Weighing>) -> Self {
        self.weighings = weighings;
        self
    }

    /// With the air around the rack.
    #[must_use]
    pub fn air(mut self, air: Option<Air>) -> Self {
        self.air = air;
        self
    }

    /// With a prior that came from the maker's own batches.
    #[must_use]
    pub fn from_own_batches(mut self) -> Self {
        self.prior_basis = Basis::OwnBatches;
        self
    }

    /// With an oven sample: the prior is narrowed by the measurement.
    #[must_use]
    pub fn sample(mut self, sample: OvenSample) -> Self {
        self.prior = self.prior.with_sample(sample);
        self.prior_basis = Basis::Sample;
        self
    }
}
