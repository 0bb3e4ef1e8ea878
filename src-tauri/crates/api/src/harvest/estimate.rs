//! `harvest.estimate`: what will this weigh dry?

use message::{At, Failure, Unit, say};
use physics::error::within;
use reckon::drying::weight::{DryWeight, dry_weight};
use reckon::herb::Known;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// What will this weigh dry?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct EstimateHarvest {
    pub herb: String,
    pub part: String,
    pub fresh_mass_g: f64,
    pub surface_wet: Option<bool>,
}

impl Command for EstimateHarvest {
    const NAME: &'static str = "harvest.estimate";
    type Reply = DryWeight;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        within(
            say!("what-fresh-weight"),
            self.fresh_mass_g,
            0.01,
            100_000.0,
            Unit::Gram,
        )
        .at("fresh_mass_g")?;
        app.read(|reading| {
            let known = Known::asked(reading, &self.herb)?;
            let is_wet = self.surface_wet.unwrap_or(false);
            dry_weight(reading, &known, &self.part, self.fresh_mass_g, is_wet)
        })
    }
}
