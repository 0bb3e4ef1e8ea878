//! `jar.advise`: what a herb can become, best first, each with its reasons.

use formulary::{Speaks, advise, compose, preparations};
use serde::{Deserialize, Serialize};
use store::Reading;

use super::compose::shelf;
use super::proposal::{Days, Keeping, Plant, PlantSample, PourLine, Verdict};
use super::said::state;
use super::sample;
use crate::herb::Known;
use crate::mixture::{Liquid, Moisture, StockItem};
use crate::wire::{Interval, Note, PlantState, Status};
use crate::{App, Command, Failure};

/// What is it for?
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Purpose {
    Inside,
    Outside,
    Food,
}

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
    pub sample: Option<PlantSample>,
    pub purpose: Purpose,
    pub without: Option<Vec<String>>,
    pub jar_ml: Option<f64>,
    pub stock: Option<Vec<StockItem>>,
    /// Other plants that go into the same jar.
    pub also: Option<Vec<Plant>>,
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

/// For or against.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Direction {
    For,
    Against,
}

/// A reason for or against a preparation.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct AdviceReason {
    pub speaks: Direction,
    pub text: String,
    pub source: Option<String>,
    pub status: Status,
}

/// One thing the herb can become.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Candidate {
    pub preparation: String,
    pub name: String,
    pub verdict: Verdict,
    pub keeping: Keeping,
    pub reasons: Vec<AdviceReason>,
    pub pours: Vec<PourLine>,
    pub liquid: Liquid,
    pub steep_days: Days,
    pub best_before_days: Option<Interval>,
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
                purpose: match self.purpose {
                    Purpose::Inside => preparations::Purpose::Inside,
                    Purpose::Outside => preparations::Purpose::Outside,
                    Purpose::Food => preparations::Purpose::Food,
                },
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
            asks: advise::asks(&request).map(Note::from),
            candidates: candidates.into_iter().map(candidate).collect(),
        })
    }
}

/// A plant with its water as it is stated or sampled; a herb that nobody looked up has no table to
/// take a sample together with.
fn wet(
    reading: &Reading<'_>,
    plant: &Plant,
    is_confirmed: bool,
) -> Result<compose::Plant, Failure> {
    let sampled = plant.sample.as_ref().map(|sample| {
        let known = Known::asked(reading, &plant.herb)?;
        sample::moisture(reading, &known, &plant.part, plant.state, sample)
    });
    let sampled = sampled.transpose()?.map(|(moisture, _)| moisture);
    let moisture = sampled.or(plant.moisture_wet_percent);
    Ok(compose::Plant {
        identity: identity(reading, &plant.herb, is_confirmed),
        herb: herb_name(reading, &plant.herb),
        part: plant.part.clone(),
        state: state(plant.state),
        mass_g: plant.mass_g,
        moisture_wet_percent: moisture.map(|Interval { low, value, high }| physics::Interval {
            low,
            value,
            high,
        }),
    })
}

/// A herb by any name; one that nobody looked up is asked about as it was typed.
pub(super) fn herb_name(reading: &Reading<'_>, text: &str) -> String {
    Known::asked(reading, text)
        .map_or_else(|_| text.to_owned(), |known| known.table_name().to_owned())
}

/// Which plant a herb of any name is.
pub(super) fn identity(reading: &Reading<'_>, text: &str, is_confirmed: bool) -> compose::Identity {
    let unknown = compose::Identity {
        latin: None,
        is_confirmed,
    };
    Known::asked(reading, text).map_or(unknown, |known| known.identity(is_confirmed))
}

fn candidate(candidate: advise::Candidate) -> Candidate {
    let reason = |reason: formulary::Reason| AdviceReason {
        speaks: match reason.speaks {
            Speaks::For => Direction::For,
            Speaks::Against => Direction::Against,
        },
        text: reason.text,
        source: reason.source,
        status: reason.status.into(),
    };
    Candidate {
        preparation: candidate.preparation,
        name: candidate.name,
        verdict: candidate.verdict.into(),
        keeping: candidate.keeping.into(),
        reasons: candidate.reasons.into_iter().map(reason).collect(),
        pours: candidate.pours.iter().map(PourLine::from).collect(),
        liquid: Liquid::from(&candidate.liquid),
        steep_days: candidate.steep_days.into(),
        best_before_days: candidate.best_before_days.map(Interval::from),
    }
}
