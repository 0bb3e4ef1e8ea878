//! What `drying.estimate` asks and answers.

use formulary::Note;
use journal::Air;
use physics::Interval;
use physics::drying::Basis;
use serde::{Deserialize, Serialize};

/// A drying run as figures.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct EstimateDrying {
    pub herb: Option<String>,
    pub part: Option<String>,
    pub prior: Option<DryMatterPrior>,
    pub fresh_mass_g: f64,
    pub scale_step_g: Option<f64>,
    pub target_moisture_wet_percent: Option<f64>,
    pub weighings: Option<Vec<WeighingFigure>>,
    pub own_dry_matter_fractions: Option<Vec<f64>>,
    pub sample: Option<OvenSample>,
    pub air: Option<Air>,
    /// The lot was tried by hand at the last weigh-in and is dry: it snaps, a leaf crumbles.
    pub snap_test: Option<bool>,
}

/// A sample of the lot dried to constant weight.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct OvenSample {
    pub fresh_g: f64,
    pub dry_g: f64,
}

/// What is known of the dry matter before anything was weighed: a log-normal.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DryMatterPrior {
    pub ln_dry_matter_fraction_mean: f64,
    pub ln_dry_matter_fraction_sd: f64,
}

/// One weigh-in.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WeighingFigure {
    pub hours: f64,
    pub mass_g: f64,
}

/// The answer to [`EstimateDrying`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct DryingEstimated {
    pub dry_matter_g: Interval,
    pub target_mass_g: Interval,
    pub moisture_now_wet_percent: Option<Interval>,
    pub hours_left: Option<Interval>,
    pub is_dry: bool,
    pub basis: Basis,
    pub notes: Vec<Note>,
}
