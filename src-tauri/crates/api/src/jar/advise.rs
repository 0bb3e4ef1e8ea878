//! `jar.advise`: what a herb can become, best first, each with its reasons.

use formulary::Note;
use formulary::advise::{self, Candidate, Without};
use formulary::preparations::Purpose;
use journal::{OvenSample, PlantState};
use message::Failure;
use physics::Interval;
use reckon::item::StockItem;
use reckon::jar::proposal::Plant;
use reckon::jar::sample::wet;
use reckon::jar::shelf::shelf;
use serde::{Deserialize, Serialize};

use crate::mixture::describe::Moisture;
use crate::open::Open;
use crate::request::Command;

/// What can this herb become?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AdviseJar {
    pub herb: String,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Option<Moisture>,
    /// A little of it dried to constant weight, instead of its water.
    pub sample: Option<OvenSample>,
    pub purpose: Purpose,
    pub without: Option<Vec<Without>>,
    pub jar_ml: Option<f64>,
    pub stock: Option<Vec<StockItem>>,
    /// Other plants that go into the same jar.
    pub also: Option<Vec<Plant>>,
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

/// The answer to [`AdviseJar`], best first.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Advice {
    pub candidates: Vec<Candidate>,
    /// What the list of poisonous plants asks; `confirmed: true` is the answer.
    pub asks: Option<Note>,
}

impl Command for AdviseJar {
    const NAME: &'static str = "jar.advise";
    type Reply = Advice;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let stated = self.moisture_wet_percent.map(|moisture| match moisture {
            Moisture::Number(value) => Interval {
                low: value,
                value,
                high: value,
            },
            Moisture::Interval(interval) => interval,
        });
        let first = Plant {
            lot: None,
            herb: self.herb,
            part: self.part,
            state: self.state,
            mass_g: self.mass_g,
            moisture_wet_percent: stated,
            sample: self.sample,
        };
        let is_confirmed = self.confirmed.unwrap_or(false);
        let request = app.read(|reading| {
            let mut also = Vec::new();
            for (at, plant) in self.also.iter().flatten().enumerate() {
                let plant = wet(reading, plant, is_confirmed);
                also.push(plant.map_err(|why| why.within(&format!("also[{at}]")))?);
            }
            Ok(advise::Request {
                plant: wet(reading, &first, is_confirmed)?,
                also,
                purpose: self.purpose,
                without: self.without.unwrap_or_default(),
                jar_ml: self.jar_ml,
                stock: self.stock.map(|stock| shelf(reading, &stock)).transpose()?,
            })
        })?;
        let candidates = advise::advise(&request).map_err(|refusal| {
            let failure = Failure::from(refusal);
            // The formulary speaks of the plants of a jar; this request is one plant.
            let field = failure.field.clone().unwrap_or_default();
            if let Some(field) = field.strip_prefix("plants[0].") {
                return failure.renamed(field);
            }
            let other = field
                .strip_prefix("plants[")
                .and_then(|rest| rest.split_once(']'))
                .and_then(|(at, rest)| Some((at.parse::<usize>().ok()?, rest)));
            match other {
                Some((at, rest)) => {
                    failure.renamed(&format!("also[{}]{rest}", at.saturating_sub(1)))
                }
                None => failure,
            }
        })?;
        Ok(Advice {
            asks: advise::asks(&request),
            candidates,
        })
    }
}
