//! Plants of which nothing may be made, or nothing to swallow, found by whatever name they are typed.
//!
//! Whole names only: "marsh marigold" is no marigold and "wild ginger" no ginger. A name of a harmless herb, written
//! as the tables have it, is never taken for a slip in a poisonous one.

mod called;
mod part;

use std::sync::LazyLock;

use message::{Argument, Message, say};
use serde::Deserialize;

pub use called::{Called, of, of_herb};

use crate::{
    herbs,
    note::{Note, Status, source_of},
    table,
};
use part::Listed;

/// How far a stop goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, serde::Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "StopKind"))]
pub enum Kind {
    /// Nothing may be made of it.
    All,
    /// Nothing to swallow.
    Inside,
    /// Nothing without a licence.
    UnlessLicensed,
    /// Only after a deliberate yes.
    Ask,
}

impl Kind {
    /// The word of the wire.
    pub fn word(self) -> &'static str {
        match self {
            Self::All => "all",
            Self::Inside => "inside",
            Self::UnlessLicensed => "unless_licensed",
            Self::Ask => "ask",
        }
    }
}

/// A row of the list.
#[derive(Debug, Clone, Deserialize)]
pub struct Poison {
    /// Its key.
    pub key: String,
    /// Its Latin name.
    pub latin: String,
    synonyms: String,
    common_en: String,
    common_de: String,
    /// The parts that are named, in the words of the list.
    pub part: String,
    /// How far the stop goes.
    pub stop: Kind,
    mistaken_for: String,
    source: String,
    /// How sure it is.
    pub status: Status,
}

impl Poison {
    /// Its English names, the usual one first.
    pub fn english(&self) -> impl Iterator<Item = &str> {
        table::items(&self.common_en)
    }

    /// Its German names, the usual one first.
    pub fn german(&self) -> impl Iterator<Item = &str> {
        table::items(&self.common_de)
    }

    /// The Latin names it went by before, and names of a genus that it stands for ("Aconitum spp.").
    pub fn synonyms(&self) -> impl Iterator<Item = &str> {
        table::items(&self.synonyms)
    }

    /// Keys of herbs that it is taken for.
    pub fn mistaken_for(&self) -> impl Iterator<Item = &str> {
        table::items(&self.mistaken_for)
    }
}

static LIST: LazyLock<Vec<Poison>> = LazyLock::new(|| table::rows("poison_plants.tsv"));

/// The whole list.
pub fn all() -> &'static [Poison] {
    &LIST
}

/// The plant of the list that a herb is: by its Latin name first, for a common name may be anybody's.
pub fn called(herb: &str, latin: Option<&str>) -> Option<Called> {
    let by_latin = latin.and_then(of);
    by_latin.or_else(|| match herbs::find(herb) {
        Some(known) => of_herb(known).cloned(),
        None => of(herb),
    })
}

/// What is said against a plant, and whether a deliberate yes lets it pass.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// How far the list goes.
    pub kind: Kind,
    /// Whether `confirmed` lets it pass.
    pub asks: bool,
    /// Why, with its source.
    pub note: Note,
}

/// What the plant is wanted for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// To be swallowed, as a remedy or as food, or nobody knows.
    Inside,
    /// On the skin alone.
    Outside,
}

impl Called {
    /// What is said of the plant where its part and use are not known yet.
    pub fn told(&self) -> Stop {
        let which = self.which.as_ref().map(|name| self.asks_which(name));
        which.unwrap_or_else(|| self.listed())
    }

    /// What stops this part for this use; nothing where the list has nothing against it, or asks and was answered.
    pub fn stop(&self, part: &str, use_: Use, confirmed: bool) -> Option<Stop> {
        let row = self.plant;
        if row.stop == Kind::Inside && use_ == Use::Outside {
            return None;
        }
        let stop = match (&self.which, part::listed(&row.part, part)) {
            (Some(name), _) => self.asks_which(name),
            (None, Listed::Named) => self.listed(),
            (None, _) if self.is_deadly_throughout => self.listed(),
            (None, Listed::Food) => return None,
            (None, Listed::Other) if matches!(row.stop, Kind::All | Kind::Inside) => {
                let message = say!("poison-ask-part", plant = self.name(), why = self.why());
                self.said(message, true)
            }
            (None, Listed::Other) => return None,
        };
        (!(stop.asks && confirmed)).then_some(stop)
    }

    fn listed(&self) -> Stop {
        let (plant, why) = (self.name(), self.why());
        let message = match self.plant.stop {
            Kind::All => say!("poison-all", plant, why),
            Kind::Inside => say!("poison-inside", plant, why),
            Kind::UnlessLicensed => say!("poison-unless-licensed", plant, why),
            Kind::Ask => say!("poison-ask", plant, why),
        };
        self.said(message, self.plant.stop == Kind::Ask)
    }

    fn asks_which(&self, name: &str) -> Stop {
        let message = say!(
            "poison-ask-which",
            name = Argument::own(name),
            plant = self.name(),
            why = self.why()
        );
        self.said(message, true)
    }

    /// Its usual name, as a message says it.
    pub fn name(&self) -> Argument {
        Argument::message(Message::of_table(format!("plant-{}", self.plant.key)))
    }

    fn why(&self) -> Argument {
        Argument::message(Message::of_table(format!("poison-{}", self.plant.key)))
    }

    fn said(&self, message: Message, asks: bool) -> Stop {
        let row = self.plant;
        Stop {
            kind: if asks { Kind::Ask } else { row.stop },
            asks,
            note: Note {
                code: POISON.to_owned(),
                text: message,
                source: source_of(&row.source),
                status: row.status,
            },
        }
    }
}

/// The code of a note that says a stop.
pub const POISON: &str = "poison";

#[cfg(test)]
mod tests;
