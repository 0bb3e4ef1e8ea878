//! The steps of the work, from the plant to the shelf, with the amounts of a jar.

use std::sync::LazyLock;

use message::{Argument, Message, Unit};
use physics::mixture::IngredientKind;
use serde::{Deserialize, Serialize};

use super::Preparation;
use crate::{
    Interval,
    note::{Status, source_of},
    table,
};

#[derive(Debug, Deserialize)]
struct Row {
    preparation: String,
    /// The only herb that it is done with; empty for every other.
    herb: String,
    /// The only part of that herb; empty for all.
    part: String,
    /// The entry of the catalogue; its title and its reason are called by it too.
    says: String,
    /// `yes` where there is an entry for the reason.
    why: String,
    source: String,
    status: Status,
}

static STEPS: LazyLock<Vec<Row>> = LazyLock::new(|| table::rows("steps.tsv"));

/// What goes into a jar, as far as its steps say it.
#[derive(Debug, Clone)]
pub struct Amounts<'a> {
    /// The key of each plant with its part.
    pub plants: Vec<(&'a str, &'a str)>,
    /// All plants, g.
    pub herb_g: f64,
    /// Everything that is poured, mL.
    pub poured_ml: f64,
    /// The kinds that are poured.
    pub kinds: Vec<IngredientKind>,
    /// The strength at the end, % vol.
    pub strength_percent_vol: Interval,
}

/// A step of the work, for the page of a jar.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Step {
    /// What it is called.
    pub title: Message,
    /// What to do.
    pub text: Message,
    /// Why.
    pub why: Option<Message>,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Row {
    fn entry(&self, what: &str) -> String {
        format!("{}{what}", self.says)
    }

    fn has_a_reason(&self) -> bool {
        self.why == "yes"
    }

    fn is_for(&self, amounts: &Amounts<'_>) -> bool {
        let is_so = |one: &str, asked: &str| asked.is_empty() || one == asked;
        let mut plants = amounts.plants.iter();
        plants.any(|(herb, part)| is_so(herb, &self.herb) && is_so(part, &self.part))
    }
}

impl Preparation {
    /// The work from plant to shelf, in order, with the amounts of a jar.
    ///
    /// A herb that has steps of its own is not done by the usual ones.
    pub fn steps(&self, amounts: &Amounts<'_>) -> Vec<Step> {
        let rows = STEPS.iter().filter(|row| row.preparation == self.key);
        let (usual, own): (Vec<&Row>, Vec<&Row>) = rows.partition(|row| row.herb.is_empty());
        let own: Vec<&Row> = own.into_iter().filter(|row| row.is_for(amounts)).collect();
        let rows = if own.is_empty() { usual } else { own };
        rows.into_iter()
            .map(|row| self.step(row, amounts))
            .collect()
    }

    fn step(&self, row: &Row, amounts: &Amounts<'_>) -> Step {
        let Interval { low, value, high } = amounts.strength_percent_vol;
        let mut liquids: Vec<Argument> = Vec::new();
        for kind in &amounts.kinds {
            let name = Argument::message(kind.name());
            if !liquids.contains(&name) {
                liquids.push(name);
            }
        }
        let text = Message::of_table(row.says.clone())
            .with("grams", Argument::grams(amounts.herb_g))
            .with("volume", Argument::millilitres(amounts.poured_ml))
            .with("liquid", Argument::all_of(liquids))
            .with("from", Argument::number(self.steep_days.low))
            .with("to", Argument::number(self.steep_days.high))
            .with(
                "strength",
                Argument::range(low, value, high, Unit::PercentVol),
            );
        Step {
            title: Message::of_table(row.entry("-title")),
            text,
            why: row
                .has_a_reason()
                .then(|| Message::of_table(row.entry("-why"))),
            source: source_of(&row.source),
            status: row.status,
        }
    }
}

/// The places that a step may have for the amounts of a jar.
pub(crate) const PLACES: [&str; 6] = ["grams", "volume", "liquid", "from", "to", "strength"];

/// The entries of the catalogue that the steps name or imply.
pub(crate) fn entries() -> impl Iterator<Item = String> {
    STEPS.iter().flat_map(|row| {
        let why = row.has_a_reason().then(|| row.entry("-why"));
        [row.says.clone(), row.entry("-title")]
            .into_iter()
            .chain(why)
    })
}
