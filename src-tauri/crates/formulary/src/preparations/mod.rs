//! The preparations: each a block of `data/preparations.toml`, none a page of code.
//!
//! Composing, keeping and advising read nothing but these blocks, so that a new
//! preparation is a new block.

mod figures;
mod words;

use std::sync::LazyLock;

use message::Message;
use serde::{Deserialize, Serialize};

pub use figures::{By, Ends, Part, Range, Retention, Soak, Span};
pub use words::{Aim, Measure, PlantState, Purpose, Solvent, Verdict};

use crate::note::{Note, Status};

/// One kind of preparation. Empty texts mean that nothing was found.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Preparation {
    /// Stable key.
    pub key: String,
    /// The name that stands for several: tincture, glycerite, oil ...
    pub family: String,
    /// Its name.
    pub name: String,
    /// One line.
    pub summary: String,
    /// Whether the adviser offers it.
    pub advised: bool,
    /// What ratio and method rest on.
    pub method_source: String,
    /// How sure they are.
    pub method_status: Status,
    /// The liquid in the trade's words.
    pub recipe: String,
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
    /// Sentences to be read before pouring.
    #[serde(default)]
    pub notes: Vec<String>,
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
    /// What is said of that.
    #[serde(default)]
    pub retention_note: String,
    /// How full the jar.
    pub fill: String,
    /// How to shake it.
    pub agitation: String,
    /// Vessel and lid.
    pub vessel: String,
    /// How to strain.
    pub straining: String,
    /// How to store.
    pub storage: String,
    /// Signs of spoilage.
    pub spoilage: String,
    /// What ends it.
    pub ended_by: String,
    /// The gate in the trade's words.
    pub gate_text: String,
    /// Cautions in the trade's words.
    pub caution: String,
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

/// Reads preparations from TOML.
///
/// # Errors
/// What the TOML reader says of a block that has an unknown or a missing field.
pub fn read(text: &str) -> Result<Vec<Preparation>, String> {
    let mut file = toml::from_str::<File>(text).map_err(|error| error.to_string())?;
    for preparation in &mut file.preparation {
        preparation.texts().into_iter().for_each(said);
    }
    Ok(file.preparation)
}

/// A cell that begins with `@` names an entry of the catalogue.
fn said(cell: &mut String) {
    if let Some(id) = cell.strip_prefix('@') {
        *cell = Message::of_table(id.to_owned()).into();
    }
}

static PREPARATIONS: LazyLock<Vec<Preparation>> = LazyLock::new(|| {
    read(include_str!("../../data/preparations.toml"))
        .unwrap_or_else(|error| panic!("preparations.toml cannot be read: {error}"))
});

/// All preparations in the order of the table.
pub fn all() -> &'static [Preparation] {
    &PREPARATIONS
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
    let exact = PREPARATIONS
        .iter()
        .find(|preparation| preparation.key == name);
    let of_family =
        |preparation: &&Preparation| preparation.family == name && preparation.takes(state);
    if exact.is_some_and(|preparation| preparation.takes(state)) {
        exact
    } else {
        PREPARATIONS.iter().find(of_family).or(exact)
    }
}

/// A step of the work, for the page of a jar.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// Fill, shake, strain ...
    pub title: &'static str,
    /// What to do.
    pub text: String,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Preparation {
    fn texts(&mut self) -> Vec<&mut String> {
        let mut texts = vec![
            &mut self.name,
            &mut self.summary,
            &mut self.recipe,
            &mut self.retention_note,
            &mut self.fill,
            &mut self.agitation,
            &mut self.vessel,
            &mut self.straining,
            &mut self.storage,
            &mut self.spoilage,
            &mut self.ended_by,
            &mut self.gate_text,
            &mut self.caution,
        ];
        texts.extend(&mut self.notes);
        texts
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

    /// The state in which a herb goes into it where none is named: fresh before dried before cooked.
    pub fn usual_state(&self) -> Option<PlantState> {
        [PlantState::Fresh, PlantState::Dried, PlantState::Cooked]
            .into_iter()
            .find(|state| self.takes(*state))
    }

    /// Whether any herb goes into it; an elixir is mixed of liquids alone.
    pub fn takes_herb(&self) -> bool {
        self.ratio_fresh.is_some() || self.ratio_dried.is_some() || self.ratio_cooked.is_some()
    }

    /// Whether the plant's water joins the liquid; in an oil it stays apart.
    pub fn mixes_with_water(&self) -> bool {
        self.grade != Solvent::Oil
    }

    /// The kinds of liquid it is made of.
    pub fn liquids(&self) -> Vec<&str> {
        self.parts.iter().map(|part| part.kind.as_str()).collect()
    }

    /// The work from jar to shelf, in order.
    pub fn steps(&self) -> Vec<Step> {
        [
            ("Liquid", &self.recipe),
            ("Fill", &self.fill),
            ("Vessel", &self.vessel),
            ("Shake", &self.agitation),
            ("Strain", &self.straining),
            ("The marc", &self.retention_note),
            ("Store", &self.storage),
            ("Keeps if", &self.gate_text),
            ("Spoiled if", &self.spoilage),
            ("Ended by", &self.ended_by),
            ("Beware", &self.caution),
        ]
        .into_iter()
        .filter(|(_, text)| !text.is_empty())
        .map(|(title, text)| {
            // The method was read; housekeeping around it is the trade's habit.
            let housekeeping = matches!(
                title,
                "Fill" | "Vessel" | "Store" | "Keeps if" | "Spoiled if" | "Ended by" | "Beware"
            );
            let (source, status) = if housekeeping {
                ("", Status::Practice.weaker(self.method_status))
            } else {
                (self.method_source.as_str(), self.method_status)
            };
            let Note { source, status, .. } = Note::new("step", "", source, status);
            Step {
                title,
                text: sentence(text),
                source,
                status,
            }
        })
        .collect()
    }
}

/// With a capital at the head and a full stop at the end.
pub(crate) fn sentence(text: &str) -> String {
    if message::carried::is_in(text) {
        return text.to_owned();
    }
    let text = text.trim().trim_end_matches('.');
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        format!("{}{}.", first.to_uppercase(), chars.as_str())
    })
}

#[cfg(test)]
mod tests;
