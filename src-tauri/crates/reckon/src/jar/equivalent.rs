//! Dried herb to a millilitre: the trade's way to compare what stands in two bottles. It is no dose.

use formulary::arithmetic;
use journal::{Jar, PlantState};
use message::Failure;
use physics::{Interval, WetBasis};

use crate::jar::judged::Judged;

/// Dried herb (of fresh herb: dry matter) to a millilitre, added up over the plants.
#[derive(Debug, Clone, Copy)]
pub struct DriedEquivalent {
    /// To a millilitre of what was poured.
    pub alone_g_per_ml: Interval,
    /// To a millilitre of what there is once the plants' own water has joined it.
    pub with_plant_water_g_per_ml: Interval,
}

impl DriedEquivalent {
    /// None where there is no plant, a marc that gave the most of it away before, or a juice whose plant nobody counts.
    pub fn of(jar: &Jar, judged: &Judged) -> Result<Option<Self>, Failure> {
        let cooked = jar
            .plants
            .iter()
            .any(|plant| plant.state == PlantState::Cooked);
        if jar.plants.is_empty() || jar.marc_of.is_some() || cooked {
            return Ok(None);
        }
        let poured = jar.poured_ml();
        let mut sum = Interval {
            low: 0.0,
            value: 0.0,
            high: 0.0,
        };
        for plant in &jar.plants {
            let ratio = poured / plant.mass_g;
            let moisture = plant.moisture_wet_percent;
            let at = |percent: f64| -> Result<f64, Failure> {
                Ok(match plant.state {
                    PlantState::Dried | PlantState::Cooked => {
                        arithmetic::dried_equivalent_g_per_ml(ratio)?
                    }
                    PlantState::Fresh => arithmetic::fresh_equivalent_g_per_ml(
                        ratio,
                        WetBasis::from_percent(percent)?,
                        false,
                    )?,
                })
            };
            sum.low += at(moisture.high)?;
            sum.value += at(moisture.value)?;
            sum.high += at(moisture.low)?;
        }
        // A damp plant has little dry matter and much water: both pull the same way.
        let liquid = judged.liquid_ml;
        Ok(Some(Self {
            alone_g_per_ml: sum,
            with_plant_water_g_per_ml: Interval {
                low: sum.low * poured / liquid.high,
                value: sum.value * poured / liquid.value,
                high: sum.high * poured / liquid.low,
            },
        }))
    }
}
