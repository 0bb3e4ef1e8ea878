//! The preparations: each a block of `data/preparations.toml`, none a page of code.
//!
//! Composing, keeping and advising read nothing but these blocks, so that a new
//! preparation is a new block.

mod figures;
mod steps;
mod words;

use std::sync::LazyLock;

use message::{Message, say};
pub use physics::PlantState;
use physics::mixture::IngredientKind;
use serde::Deserialize;

pub(crate) use figures::entries as ingredient_entries;
pub use figures::{By, Days, Ends, Part, Range, Retention, Soak, Span};
pub use steps::{Amounts, Step};
pub(crate) use steps::{PLACES as STEP_PLACES, entries as step_entries};
pub use words::{Aim, Measure, Purpose, Solvent, Verdict};

use crate::{note::Status, table};

/// One kind of preparation; its texts are entries of the catalogue.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Preparation {
    /// Stable key.
    pub key: String,
    /// The name that stands for several: tincture, glycerite, oil ...
    pub family: String,
    /// Whether the adviser offers it.
    pub advised: bool,
    /// What ratio and method rest on.
    pub method_source: String,
    /// How sure they are.
    pub method_status: Status,
    /// What the amounts are solved for.
    pub aim: Aim,
    /// How the ratio is meant.
    pub measure: Measure,
    /// What dissolves the herb.
    pub grade: Solvent,
    /// Ratio for fresh herb, mL to a gram; none where it is not made of fresh herb.
    pub ratio_fresh: Option<Range>,
    /// Ratio for dried herb, mL to a gram; none where it is not made of dried herb.
    pub ratio_dried: Option<Range>,
    /// Strengths the trade uses for it, % vol.
    pub strength: Option<Ends>,
    /// Ratio for what was cooked and strained, mL to a gram of it; none where it is not made of that.
    #[serde(default)]
    pub ratio_cooked: Option<Range>,
    /// Share of glycerin in what is poured on fresh herb, % by volume.
    pub glycerin_fresh: Option<Range>,
    /// Share of glycerin in what is poured on dried herb, % by volume.
    pub glycerin_dried: Option<Range>,
    /// Alcohol added for keeping, % vol at the end.
    pub fortify: Option<Range>,
    /// Keys of the gates that judge it.
    pub gates: Vec<String>,
    /// What it is made for.
    pub uses: Vec<Purpose>,
    /// The best verdict it can have.
    #[serde(default)]
    pub best: Option<Verdict>,
    /// The best verdict with fresh or cooked herb.
    #[serde(default)]
    pub best_fresh: Option<Verdict>,
    /// The only herbs it may be made of; none for any.
    #[serde(default)]
    pub only: Option<Vec<String>>,
    /// Classes of constituents that it does not suit.
    #[serde(default)]
    pub avoid: Vec<String>,
    /// Classes of constituents that it is made for.
    #[serde(default)]
    pub wants: Vec<String>,
    #[serde(default)]
    notes: Vec<String>,
    /// What the plant must lie in before the oil goes on.
    #[serde(default)]
    pub soak: Option<Soak>,
    /// Days from pouring to straining.
    pub steep_days: Ends,
    /// Months it keeps.
    pub shelf_months: Option<Span>,
    /// Days within which it is used where it does not keep.
    pub use_within_days: Option<Span>,
    /// What the marc keeps.
    pub retention: Option<Retention>,
    storage: String,
    #[serde(default)]
    spoilage: Option<String>,
    #[serde(default)]
    ended_by: Option<String>,
    /// What the parts rest on.
    pub parts_source: String,
    /// How sure they are.
    pub parts_status: Status,
    /// The liquids.
    pub parts: Vec<Part>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    preparation: Vec<Preparation>,
}

/// Reads preparations from the JSON that `build.rs` makes of the table.
///
/// # Errors
/// What the reader says of a block that has an unknown or a missing field.
pub fn read(text: &str) -> Result<Vec<Preparation>, String> {
    let file = serde_json::from_str::<File>(text).map_err(|error| error.to_string())?;
    Ok(file.preparation)
}

static PREPARATIONS: LazyLock<Vec<Preparation>> = LazyLock::new(|| {
    read(table::text("preparations.json"))
        .unwrap_or_else(|error| panic!("preparations.toml cannot be read: {error}"))
});

/// All preparations in the order of the table.
pub fn all() -> &'static [Preparation] {
    &PREPARATIONS
}

/// The preparation of exactly that key.
pub fn of_key(key: &str) -> Option<&'static Preparation> {
    PREPARATIONS.iter().find(|one| one.key == key)
}

/// The preparation of that key or, for the name of a family, its first member that takes the plant in this state.
///
/// ```
/// use formulary::preparations::{PlantState, find};
/// assert_eq!(find("glycerite", PlantState::Fresh).unwrap().key, "glycerite-fresh");
/// assert_eq!(find("tincture", PlantState::Fresh).unwrap().key, "tincture-fresh");
/// assert_eq!(find("bitters", PlantState::Dried).unwrap().key, "bitters");
/// ```
pub fn find(name: &str, state: PlantState) -> Option<&'static Preparation> {
    let name = crate::herbs::slug(name);
    let exact = of_key(&name);
    let of_family =
        |preparation: &&Preparation| preparation.family == name && preparation.takes(state);
    if exact.is_some_and(|preparation| preparation.takes(state)) {
        exact
    } else {
        PREPARATIONS.iter().find(of_family).or(exact)
    }
}

impl Preparation {
    /// What its family is called inside a sentence: a tincture, whatever the herb and the way.
    pub fn family_name(&self) -> Message {
        Message::of_table(format!("family-{}", self.family))
    }

    /// Its name inside a sentence.
    pub fn name(&self) -> Message {
        Message::of_table(self.entry())
    }

    /// Its name as a title.
    pub fn title(&self) -> Message {
        say!("title", name = self.name())
    }

    /// What it is, in a sentence.
    pub fn summary(&self) -> Message {
        Message::of_table(format!("{}-summary", self.entry()))
    }

    /// The entry of the catalogue that names it; the entries of its other texts begin so.
    pub(crate) fn entry(&self) -> String {
        format!("preparation-{}", self.key)
    }

    /// Sentences to be read before pouring.
    pub fn notes(&self) -> impl Iterator<Item = Message> {
        self.notes.iter().cloned().map(Message::of_table)
    }

    /// How to store what keeps as `verdict` says.
    pub fn storage(&self, verdict: Verdict) -> Message {
        let is_cold = self.storage.starts_with("storage-fridge");
        match verdict {
            Verdict::KeepsCold if !is_cold => say!("storage-fridge"),
            Verdict::UseNow => say!("keep-until-its-date"),
            _ => Message::of_table(self.storage.clone()),
        }
    }

    /// What shows that it spoiled; none where nothing was found.
    pub fn spoilage(&self) -> Option<Message> {
        self.spoilage.clone().map(Message::of_table)
    }

    /// What lets it spoil; none where nothing was found.
    pub fn ended_by(&self) -> Option<Message> {
        self.ended_by.clone().map(Message::of_table)
    }

    /// The entries of the catalogue that its block names or implies.
    pub(crate) fn entries(&self) -> Vec<String> {
        let entry = self.entry();
        let mut entries = vec![format!("{entry}-summary"), entry, self.storage.clone()];
        entries.extend(
            self.notes
                .iter()
                .chain(&self.spoilage)
                .chain(&self.ended_by)
                .cloned(),
        );
        entries
    }

    /// The ratio for a state; none where it is not made of it.
    pub fn ratio(&self, state: PlantState) -> Option<&Range> {
        match state {
            PlantState::Fresh => self.ratio_fresh.as_ref(),
            PlantState::Dried => self.ratio_dried.as_ref(),
            PlantState::Cooked => self.ratio_cooked.as_ref(),
        }
    }

    /// The share of glycerin for a state.
    pub fn glycerin(&self, state: PlantState) -> Option<&Range> {
        match state {
            PlantState::Fresh => self.glycerin_fresh.as_ref(),
            PlantState::Dried => self.glycerin_dried.as_ref(),
            PlantState::Cooked => None,
        }
    }

    /// Whether it is made of herb in this state.
    pub fn takes(&self, state: PlantState) -> bool {
        self.ratio(state).is_some()
    }

    /// Whether any herb goes into it; an elixir is mixed of liquids alone.
    pub fn takes_herb(&self) -> bool {
        self.ratio_fresh.is_some() || self.ratio_dried.is_some() || self.ratio_cooked.is_some()
    }

    /// The kinds of liquid it is made of.
    pub fn liquids(&self) -> Vec<IngredientKind> {
        self.parts.iter().map(|part| part.kind).collect()
    }
}

#[cfg(test)]
mod tests;
