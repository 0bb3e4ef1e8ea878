//! What to beware of, in one plain line each, where the decision is made.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::{
    compose::PlantLine,
    herbs::{Herb, Limit},
    note::{Note, Status, source_of},
    preparations::{PlantState, Preparation, Purpose, sentence},
    table, words,
};

#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Severity {
    Stop,
    Warn,
    Info,
}

#[derive(Debug, Deserialize)]
struct Row {
    code: String,
    severity: Severity,
    herbs: String,
    preparations: String,
    states: String,
    purposes: String,
    holds: String,
    text: String,
    source: String,
    status: Status,
}

static CAUTIONS: LazyLock<Vec<Row>> =
    LazyLock::new(|| table::rows("cautions.tsv", include_str!("../data/cautions.tsv")));

#[derive(Debug, Deserialize)]
struct Text {
    code: String,
    text: String,
    source: String,
    status: Status,
}

static TEXTS: LazyLock<Vec<Text>> =
    LazyLock::new(|| table::rows("texts.tsv", include_str!("../data/texts.tsv")));

/// What the cautions are about.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// The preparation.
    pub preparation: &'a Preparation,
    /// The herbs.
    pub plants: &'a [PlantLine],
    /// What it is for; none for every use.
    pub purpose: Option<Purpose>,
    /// The kinds of liquid poured, in the words of the wire.
    pub kinds: &'a [&'a str],
    /// The highest strength it may have at the end, % vol.
    pub strength_percent_vol: f64,
}

/// From this strength on, vapour catches fire near room warmth, % vol.
const FLAMMABLE: f64 = 20.0;

impl Subject<'_> {
    fn holds(&self, what: &str) -> bool {
        let kinds = |names: &[&str]| self.kinds.iter().any(|kind| names.contains(kind));
        match what {
            "*" => true,
            "ethanol" => self.strength_percent_vol > 0.5,
            "strong" => self.strength_percent_vol >= FLAMMABLE || kinds(&["spirit"]),
            "honey" => kinds(&["honey"]),
            "sugar" => kinds(&["sugar", "syrup", "honey"]),
            _ => false,
        }
    }

    fn touched_by(&self, row: &Row) -> bool {
        let states = |state: PlantState| table::names(&row.states, state.word());
        (row.herbs == "*"
            || self
                .plants
                .iter()
                .any(|plant| table::names(&row.herbs, &plant.herb)))
            && (table::names(&row.preparations, &self.preparation.key)
                || table::names(&row.preparations, &self.preparation.family))
            && (row.states == "*" || self.plants.iter().any(|plant| states(plant.state)))
            && self
                .purpose
                .is_none_or(|purpose| table::names(&row.purposes, purpose.word()))
            && self.holds(&row.holds)
    }
}

/// The cautions of a jar: hard stops first, the herbs' own next, the rest after.
pub fn for_jar(subject: &Subject<'_>) -> Vec<Note> {
    let rows = |severity: Severity| {
        CAUTIONS
            .iter()
            .filter(move |row| row.severity == severity && subject.touched_by(row))
            .map(|row| Note {
                code: row.code.clone(),
                text: row.text.clone(),
                source: source_of(&row.source),
                status: row.status,
            })
    };
    let herbs = || subject.plants.iter().filter_map(|plant| plant.known);
    let mut notes: Vec<Note> = herbs().filter_map(limit).collect();
    notes.extend(rows(Severity::Stop));
    notes.extend(herbs().filter_map(own));
    notes.extend(
        subject
            .plants
            .iter()
            .filter(|plant| plant.known.is_none_or(|herb| !herb.is_described()))
            .map(|plant| {
                Note::new(
                    "not-looked-up",
                    format!(
                        "No cautions were looked up for {}: make sure yourself.",
                        words::herb(&plant.common)
                    ),
                    "",
                    Status::Memory,
                )
            }),
    );
    notes.extend(rows(Severity::Warn));
    notes.extend(rows(Severity::Info));
    let mut seen: Vec<String> = Vec::new();
    notes.retain(|note| {
        let first = !seen.contains(&note.text);
        seen.push(note.text.clone());
        first
    });
    notes
}

fn limit(herb: &Herb) -> Option<Note> {
    let code = match herb.limit()? {
        Limit::Poisonous => "poisonous",
        Limit::No => "not-a-medicine",
        Limit::Outside => "outside-only",
        Limit::Cook => "cook-first",
    };
    Some(Note::new(
        code,
        sentence(&herb.use_text),
        &herb.use_source,
        herb.limit_status(),
    ))
}

fn own(herb: &Herb) -> Option<Note> {
    let unsure = if herb.caution_status() == Status::Memory {
        " (from memory, not checked)"
    } else {
        ""
    };
    (!herb.cautions.is_empty()).then(|| {
        let text = format!(
            "{}: {}{unsure}.",
            herb.common,
            herb.cautions.trim_end_matches('.')
        );
        Note::new("herb", text, &herb.caution_source, herb.caution_status())
    })
}

/// The cautions of a herb itself, for its own page: limits, its own, and what is mistaken for it.
pub fn of_herb(herb: &Herb) -> Vec<Note> {
    let mut notes: Vec<Note> = limit(herb).into_iter().chain(own(herb)).collect();
    notes.extend(for_picking(herb));
    notes
}

/// What to beware of when a herb is picked wild: its dangerous look-alikes.
pub fn for_picking(herb: &Herb) -> Vec<Note> {
    let mut notes: Vec<Note> = herb
        .look_alikes()
        .map(|row| {
            let text = format!(
                "Mistaken for it: {} ({}). Tell them apart: {}.",
                row.name,
                row.why,
                row.tell_apart.trim_end_matches('.')
            );
            Note::new("look-alike", text, &row.source, row.status)
        })
        .collect();
    if !herb.foraging.is_empty() {
        notes.push(Note::new(
            "foraging",
            sentence(&herb.foraging),
            "",
            Status::Memory,
        ));
    }
    notes
}

/// The general wording: not medical advice, no dose, interactions, poison, oil, alcohol, selling.
pub fn general() -> Vec<Note> {
    TEXTS
        .iter()
        .map(|row| Note::new(&row.code, &row.text, &row.source, row.status))
        .collect()
}

#[cfg(test)]
mod tests;
