//! An herb that the built-in list does not have.

use message::{Unit, say};
use physics::drying::DryMatterPrior;
use physics::interval::Interval;
use serde::{Deserialize, Serialize};

use crate::refusal::{note, number, one_line, text};
use crate::{HerbId, Kept, Refusal};

const MOST_PARTS: usize = 20;

/// An herb of the maker's own.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Herb {
    /// What the maker calls it.
    pub common: String,
    /// Binomial.
    #[serde(default)]
    pub latin: Option<String>,
    /// The parts that are picked.
    pub parts: Vec<String>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
    /// Water in the fresh plant by the maker's own weighing, % of its weight.
    #[serde(default)]
    pub water_wet_percent: Option<Interval>,
    /// The strength that it wants by the maker's own jars, % vol.
    #[serde(default)]
    pub strength_percent_vol: Option<f64>,
    /// What the maker wants to be warned of.
    #[serde(default)]
    pub caution: Option<String>,
    /// What it is mistaken for, and how to tell.
    #[serde(default)]
    pub look_alikes: Option<String>,
}

impl Kept for Herb {
    type Id = HerbId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("common", &self.common)
    }

    fn check(&self) -> Result<(), Refusal> {
        text("common", say!("what-name"), &self.common, 80)?;
        note("latin", say!("what-binomial"), self.latin.as_deref(), 120)?;
        if self.parts.is_empty() || self.parts.len() > MOST_PARTS {
            return Err(Refusal::new(
                "parts",
                say!("refused-part-count", most = MOST_PARTS),
            ));
        }
        for part in &self.parts {
            text("parts", say!("what-part"), part, 40)?;
        }
        if let Some(water) = self.water_wet_percent {
            DryMatterPrior::of_own_water(water)
                .map_err(|out| Refusal::new("water_wet_percent", out.message()))?;
        }
        if let Some(strength) = self.strength_percent_vol {
            let what = say!("what-strength");
            number(
                "strength_percent_vol",
                what,
                strength,
                5.0,
                96.0,
                Unit::PercentVol,
            )?;
        }
        note(
            "caution",
            say!("what-own-caution"),
            self.caution.as_deref(),
            400,
        )?;
        note(
            "look_alikes",
            say!("what-own-look-alikes"),
            self.look_alikes.as_deref(),
            400,
        )?;
        super::remark(self.note.as_deref())
    }
}
