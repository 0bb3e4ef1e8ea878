//! The herbs of a jar: checked, and each with the water it brings.

use message::{Argument, Message, Refusal, Unit, say};
use physics::{Interval, WetBasis, error::within, mixture, quantity::grams};
use serde::Serialize;

use super::Composition;
use crate::{
    herbs::{self, Herb, OwnHerb},
    note::{Note, Status, source_of},
    poison::{self, Called, Stop, Use},
    preparations::{PlantState, Preparation},
};

/// A herb of the recipe with the water it brings.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PlantLine {
    /// The key, or the maker's own word.
    pub herb: String,
    /// The name to show.
    pub common: String,
    /// The part.
    pub part: String,
    /// Fresh, dried or cooked.
    pub state: PlantState,
    /// Mass, g.
    pub mass_g: f64,
    /// Water, % of the weight.
    pub moisture_wet_percent: Interval,
    /// Why that much water, as it stands inside a sentence.
    pub basis: Message,
    /// Where it comes from.
    #[serde(skip)]
    pub basis_source: Option<String>,
    /// How sure it is.
    #[serde(skip)]
    pub basis_status: Status,
    #[serde(skip)]
    pub(crate) known: Option<&'static Herb>,
    /// The plant of the list of poisonous ones that it is, by any of its names.
    #[serde(skip)]
    pub(crate) called: Option<Called>,
    #[serde(skip)]
    pub(crate) is_confirmed: bool,
    #[serde(skip)]
    pub(crate) own: OwnHerb,
}

impl PartialEq for Herb {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}

impl PlantLine {
    /// What a strainer holds back: nothing of what was strained already.
    pub(crate) fn dry_matter_g(&self) -> Interval {
        if self.state == PlantState::Cooked {
            return Interval::exact(0.0);
        }
        self.moisture_wet_percent
            .map_monotone(|percent| self.mass_g * (1.0 - percent / 100.0))
    }

    /// What the list of poisonous plants has against it.
    pub(crate) fn stop(&self, use_: Use) -> Option<Stop> {
        self.called
            .as_ref()?
            .stop(&self.part, use_, self.is_confirmed)
    }

    /// What it is called inside a sentence; a herb of the maker's own stays as it was typed.
    pub(crate) fn name(&self) -> Argument {
        match self.known {
            Some(herb) => herb.name().into(),
            None => Argument::own(&self.common),
        }
    }

    pub(super) fn reason(&self) -> Note {
        let Interval { low, value, high } = self.moisture_wet_percent;
        Note {
            code: "plant-water".to_owned(),
            text: say!(
                "water-of-plant",
                plant = self.name(),
                water = Argument::range(low, value, high, Unit::Percent),
                basis = self.basis.clone()
            ),
            source: self.basis_source.clone(),
            status: self.basis_status,
        }
    }

    pub(crate) fn mixed(&self, exact: bool) -> Result<mixture::Plant, Refusal> {
        let wet = |percent: f64| {
            WetBasis::from_percent(percent)
                .map_err(|error| Refusal::new("plants[0].moisture_wet_percent", error.message()))
        };
        let Interval { low, value, high } = self.moisture_wet_percent;
        let plant = if self.state == PlantState::Cooked {
            let (low, high) = if exact { (value, value) } else { (low, high) };
            mixture::Plant::strained(grams(self.mass_g), wet(low)?, wet(value)?, wet(high)?)
        } else if exact {
            mixture::Plant::new(grams(self.mass_g), wet(value)?)
        } else {
            mixture::Plant::between(grams(self.mass_g), wet(low)?, wet(value)?, wet(high)?)
        };
        plant.map_err(|error| Refusal::new("plants", error.message()))
    }
}

/// Water of a strained juice or decoction that nobody measured, % of its weight (common practice, no source): a juice
/// boiled down at the driest, a thin decoction at the wettest.
pub fn cooked_moisture() -> Interval {
    Interval {
        low: 80.0,
        value: 92.0,
        high: 99.0,
    }
}

pub(crate) const LEAST_G: f64 = 0.1;
pub(crate) const MOST_G: f64 = 100_000.0;

pub(super) fn lines(
    preparation: &Preparation,
    composition: &Composition,
) -> Result<Vec<PlantLine>, Refusal> {
    let plants = &composition.plants;
    if !preparation.takes_herb() && !plants.is_empty() {
        let text = say!("takes-no-herb", preparation = preparation.name());
        return Err(Refusal::new("plants", text));
    }
    if preparation.takes_herb() && plants.is_empty() {
        return Err(Refusal::new("plants", say!("herb-missing")));
    }
    plants
        .iter()
        .enumerate()
        .map(|(at, plant)| {
            let mass = plant.mass_g;
            within(
                say!("what-mass-of-the-plant"),
                mass,
                LEAST_G,
                MOST_G,
                Unit::Gram,
            )
            .map_err(|out| Refusal::new(format!("plants[{at}].mass_g"), out.message()))?;
            if !preparation.takes(plant.state) {
                let preparation = preparation.name();
                let text = match plant.state {
                    PlantState::Fresh => say!("takes-no-fresh-herb", preparation),
                    PlantState::Dried => say!("takes-no-dried-herb", preparation),
                    PlantState::Cooked => say!("takes-no-cooked-herb", preparation),
                };
                return Err(Refusal::new(format!("plants[{at}].state"), text));
            }
            let known = herbs::find(&plant.herb);
            let common = known.map_or_else(|| plant.herb.clone(), |herb| herb.common.clone());
            let (moisture, basis, source, status) = match (plant.moisture_wet_percent, plant.state)
            {
                (Some(own), _) => {
                    let rising = own.low <= own.value && own.value <= own.high;
                    let inside =
                        (0.0..=99.0).contains(&own.low) && (0.0..=99.0).contains(&own.high);
                    if !rising || !inside {
                        let field = format!("plants[{at}].moisture_wet_percent");
                        return Err(Refusal::new(field, say!("herb-water-out-of-range")));
                    }
                    let told = plant.told.clone().unwrap_or_else(|| say!("water-told"));
                    (own, told, None, Status::Own)
                }
                (None, PlantState::Fresh) => {
                    let water = known.map_or_else(
                        || plant.identity.own.water(&plant.herb, &plant.part),
                        |herb| herbs::water_of(herb, &plant.part),
                    );
                    (
                        water.water_wet_percent,
                        water.reason,
                        water.source,
                        water.status,
                    )
                }
                (None, PlantState::Cooked) => (
                    cooked_moisture(),
                    say!("cooked-water-assumed"),
                    None,
                    Status::Practice,
                ),
                (None, PlantState::Dried) => (
                    herbs::dried_moisture(),
                    say!("water-dried-assumed"),
                    source_of("source-dried-herbs"),
                    Status::Practice,
                ),
            };
            Ok(PlantLine {
                herb: known.map_or_else(|| plant.herb.clone(), |herb| herb.key.clone()),
                common,
                part: plant.part.clone(),
                state: plant.state,
                mass_g: mass,
                moisture_wet_percent: moisture,
                basis,
                basis_source: source,
                basis_status: status,
                known,
                called: poison::called(&plant.herb, plant.identity.latin.as_deref()),
                is_confirmed: plant.identity.is_confirmed,
                own: plant.identity.own.clone(),
            })
        })
        .collect()
}
