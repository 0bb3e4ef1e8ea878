//! `mixture.describe`: what is this liquid?

use formulary::Note;
use message::{At, Failure, say};
use physics::mixture::{self, Liquid, Plant};
use physics::quantity::{celsius, grams, millilitres};
use physics::{Interval, WetBasis};
use reckon::item::{self, Pour};
use reckon::liquid::noted;
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::Command;

/// A moisture as one figure or as an interval.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(untagged, expecting = "a number or an object with low, value and high")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Moisture {
    Number(f64),
    Interval(Interval),
}

/// A plant as the liquid meets it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct WetPlant {
    pub mass_g: f64,
    pub moisture_wet_percent: Moisture,
}

/// What is this liquid?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct DescribeMixture {
    pub pours: Vec<Pour>,
    pub plants: Option<Vec<WetPlant>>,
    pub temperature_c: Option<f64>,
}

/// The answer to [`DescribeMixture`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MixtureDescribed {
    pub liquid: Liquid,
    pub notes: Vec<Note>,
}

impl Command for DescribeMixture {
    const NAME: &'static str = "mixture.describe";
    type Reply = MixtureDescribed;

    fn run(self, _: &Open) -> Result<Self::Reply, Failure> {
        let mut pours = Vec::with_capacity(self.pours.len());
        for (at, pour) in self.pours.iter().enumerate() {
            pours.push(measured(pour).map_err(|why| why.within(&format!("pours[{at}]")))?);
        }
        let plants = plants(self.plants.as_deref().unwrap_or_default())?;
        let temperature = celsius(self.temperature_c.unwrap_or(20.0));
        let liquid = mixture::describe(&pours, &plants, temperature).at("pours")?;
        Ok(MixtureDescribed {
            notes: noted(&liquid.remarks),
            liquid,
        })
    }
}

fn measured(pour: &Pour) -> Result<mixture::Pour, Failure> {
    let ingredient = item::poured(pour)?.ingredient()?;
    match (pour.g, pour.ml) {
        (Some(g), None) => mixture::Pour::weighed(ingredient, grams(g)).at("g"),
        (None, Some(ml)) => mixture::Pour::measured(ingredient, millilitres(ml)).at("ml"),
        _ => Err(Failure::invalid("ml", say!("mixture-weight-or-volume"))),
    }
}

/// The plants of a request as the mixture takes them.
pub(crate) fn plants(plants: &[WetPlant]) -> Result<Vec<Plant>, Failure> {
    let wet = |plant: &WetPlant| {
        let of = |percent| WetBasis::from_percent(percent).at("moisture_wet_percent");
        let (low, value, high) = match plant.moisture_wet_percent {
            Moisture::Number(value) => (value, value, value),
            Moisture::Interval(range) => (range.low, range.value, range.high),
        };
        let moisture = (of(low)?, of(value)?, of(high)?);
        // The mass is looked at first, so that the order of the moisture's ends is what is left.
        Plant::new(grams(plant.mass_g), moisture.1).at("mass_g")?;
        Plant::between(grams(plant.mass_g), moisture.0, moisture.1, moisture.2)
            .at("moisture_wet_percent")
    };
    let indexed = plants.iter().enumerate();
    indexed
        .map(|(at, plant)| wet(plant).map_err(|why| why.within(&format!("plants[{at}]"))))
        .collect()
}
