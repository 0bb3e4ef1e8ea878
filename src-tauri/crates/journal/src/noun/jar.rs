//! Plants in liquid, as they were poured.

use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use message::{Message, Unit, say};
use physics::interval::Interval;
use serde::{Deserialize, Serialize};

use crate::log::worded;
use crate::refusal::{day, note, number, one_line, text};
use crate::{
    Amount, Draw, HerbKey, Item, JarId, Kept, Lot, LotCode, Noun, PlantState, Refusal, RowRef,
    Source, SupplyId,
};

const MOST_POURS: usize = 50;
const MOST_PLANTS: usize = 50;
/// Ten years.
const MOST_STEEP_DAYS: u32 = 3660;

worded!(
    /// How far a jar has got.
    JarState {
        /// It stands.
        Steeping = "steeping",
        /// It may be strained.
        Due = "due",
        /// It was strained.
        Strained = "strained",
        /// It was given up.
        Failed = "failed",
    }
);

/// One liquid as it was poured.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Pour {
    /// What it is.
    pub item: Item,
    /// What the maker calls it.
    pub name: String,
    /// Volume at 20 C.
    pub ml: f64,
    /// Mass.
    pub g: f64,
    /// The bottle it came from; the ledger takes the millilitres from it.
    #[serde(default)]
    pub supply: Option<SupplyId>,
    /// Set if it was added after the jar was poured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub added: Option<Added>,
}

/// A topping up.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Added {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Why.
    #[serde(default)]
    pub note: Option<String>,
}

/// Plant as it went into the jar.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Plant {
    /// The lot it came from; the ledger takes the grams from it.
    #[serde(default)]
    pub lot: Option<Lot>,
    /// What it is.
    pub herb: HerbKey,
    /// Which part of it.
    pub part: String,
    /// Fresh or dried.
    pub state: PlantState,
    /// How much.
    pub mass_g: f64,
    /// Its water, wet basis, as it was reckoned when it was poured.
    pub moisture_wet_percent: Interval,
}

/// How long a jar stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct SteepDays {
    /// At least.
    pub low: u32,
    /// At most.
    pub high: u32,
}

/// The end of a jar that came to nothing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Failed {
    /// When it was given up.
    pub at: DateTime<FixedOffset>,
    /// Why.
    pub reason: String,
}

/// A jar as it was poured.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Jar {
    /// What is written on the lid.
    pub code: LotCode,
    /// What the maker calls it.
    pub name: String,
    /// Key of the preparation.
    pub preparation: String,
    /// When.
    pub poured_at: DateTime<FixedOffset>,
    /// The liquids.
    pub pours: Vec<Pour>,
    /// The plants.
    pub plants: Vec<Plant>,
    /// Size of the jar.
    #[serde(default)]
    pub jar_ml: Option<f64>,
    /// How long it stands.
    pub steep_days: SteepDays,
    /// Strength of the liquid at the end, as it was predicted.
    pub strength_percent_vol: Interval,
    /// Glycerol in the liquid at the end, as it was predicted.
    pub glycerol_percent_mass: Interval,
    /// Whether the maker wants to be told to shake it.
    #[serde(default)]
    pub shake: bool,
    /// Where it stands.
    #[serde(default)]
    pub place: Option<String>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
    /// Set once it was given up.
    #[serde(default)]
    pub failed: Option<Failed>,
    /// The jar whose marc is in this one for a second maceration.
    #[serde(default)]
    pub marc_of: Option<JarId>,
}

impl Jar {
    /// The sum of what was measured out.
    pub fn poured_ml(&self) -> f64 {
        self.pours.iter().map(|pour| pour.ml).sum()
    }

    /// Liquid poured on each gram of plant; `None` without plant.
    pub fn ratio_ml_per_g(&self) -> Option<f64> {
        let mass: f64 = self.plants.iter().map(|plant| plant.mass_g).sum();
        (mass > 0.0).then(|| self.poured_ml() / mass)
    }

    /// The first and the last day on which it should be strained.
    pub fn due(&self) -> (NaiveDate, NaiveDate) {
        let poured = self.poured_at.date_naive();
        let later = |days: u32| {
            poured
                .checked_add_days(Days::new(days.into()))
                .unwrap_or(poured)
        };
        (later(self.steep_days.low), later(self.steep_days.high))
    }

    /// How far it has got on a day.
    pub fn state(&self, is_strained: bool, today: NaiveDate) -> JarState {
        if self.failed.is_some() {
            JarState::Failed
        } else if is_strained {
            JarState::Strained
        } else if today >= self.due().0 {
            JarState::Due
        } else {
            JarState::Steeping
        }
    }
}

impl Kept for Jar {
    type Id = JarId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)
    }

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        text(
            "preparation",
            say!("what-preparation"),
            &self.preparation,
            80,
        )?;
        day("poured_at", self.poured_at)?;
        if self.pours.is_empty() || self.pours.len() > MOST_POURS {
            return Err(Refusal::new(
                "stock",
                say!("refused-pour-count", most = MOST_POURS),
            ));
        }
        for pour in &self.pours {
            super::item(&pour.item)?;
            text("stock", say!("what-name-of-a-liquid"), &pour.name, 120)?;
            super::volume("stock", say!("what-volume-of-a-liquid"), pour.ml)?;
            super::mass("stock", say!("what-mass-of-a-liquid"), pour.g)?;
            let added = pour.added.as_ref().and_then(|added| added.note.as_deref());
            super::remark(added)?;
            let at = pour.added.as_ref().map(|added| added.at);
            at.map_or(Ok(()), |at| day("at", at))?;
        }
        if self.plants.len() > MOST_PLANTS {
            return Err(Refusal::new(
                "plants",
                say!("refused-plant-count", most = MOST_PLANTS),
            ));
        }
        for plant in &self.plants {
            text("part", say!("what-part"), &plant.part, 40)?;
            super::mass("mass_g", say!("what-weight-of-a-plant"), plant.mass_g)?;
            percent(
                "moisture_wet_percent",
                say!("what-moisture"),
                plant.moisture_wet_percent,
            )?;
            if plant.lot.is_some_and(|lot| !lot.may_be(plant.state)) {
                return Err(Refusal::new("state", say!("refused-plant-state")));
            }
        }
        if let Some(size) = self.jar_ml {
            super::volume("jar_ml", say!("what-size-of-the-jar"), size)?;
        }
        if self.steep_days.low > self.steep_days.high || self.steep_days.high > MOST_STEEP_DAYS {
            return Err(Refusal::new(
                "steep_days",
                say!("refused-steep-days", most = MOST_STEEP_DAYS),
            ));
        }
        percent(
            "strength_percent_vol",
            say!("what-strength"),
            self.strength_percent_vol,
        )?;
        percent(
            "glycerol_percent_mass",
            say!("what-glycerol"),
            self.glycerol_percent_mass,
        )?;
        note("place", say!("what-place"), self.place.as_deref(), 120)?;
        if let Some(failed) = &self.failed {
            text("reason", say!("what-reason"), &failed.reason, 1000)?;
            day("at", failed.at)?;
        }
        super::remark(self.note.as_deref())
    }

    fn draws(&self) -> Vec<Draw> {
        let plants = self.plants.iter().filter_map(|plant| {
            let from = Source::from(plant.lot?);
            Some(Draw {
                from,
                amount: Amount::of(plant.mass_g),
            })
        });
        let liquids = self.pours.iter().filter_map(|pour| {
            let from = Source::Supply(pour.supply?);
            Some(Draw {
                from,
                amount: Amount::of(pour.ml),
            })
        });
        plants.chain(liquids).collect()
    }

    fn needs(&self) -> Vec<RowRef> {
        let herbs = self.plants.iter().filter_map(|plant| plant.herb.as_own());
        let lots = self.draws().into_iter().map(|draw| draw.from.row());
        herbs
            .map(|id| (Noun::Herb, id.to_string()))
            .chain(lots)
            .chain(self.marc_of.map(|jar| (Noun::Jar, jar.to_string())))
            .collect()
    }
}

fn percent(field: &'static str, what: Message, value: Interval) -> Result<(), Refusal> {
    for end in [value.low, value.value, value.high] {
        number(field, what.clone(), end, 0.0, 100.0, Unit::Percent)?;
    }
    if value.low > value.value || value.value > value.high {
        return Err(Refusal::new(field, say!("refused-interval")));
    }
    Ok(())
}

#[cfg(test)]
mod tests;
