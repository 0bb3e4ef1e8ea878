//! What to beware of, in one plain line each, where the decision is made.

mod clause;
mod label;
mod rules;

use std::sync::LazyLock;

use message::{Argument, Message, say};
use physics::mixture::IngredientKind;
use serde::{Deserialize, Serialize, Serializer};

use crate::{
    compose::PlantLine,
    herbs::{Herb, Limit, LookAlike},
    note::{Note, Status},
    preparations::{PlantState, Preparation, Purpose},
    table,
};

pub(crate) use clause::limit_of;
pub use label::{for_a_card, for_a_label};

/// How grave a caution is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Severity {
    /// Nobody may make it, take it or do it.
    Stop,
    /// Some people may not: those who are pregnant, allergic, too young. It forbids no jar.
    #[serde(rename = "not for")]
    NotFor,
    /// Take care.
    Warn,
    /// Good to know.
    Note,
}

/// Where a caution is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Moment {
    /// Where the plant is picked.
    Pick,
    /// Where the jar is made.
    Make,
    /// To whoever holds the bottle.
    Use,
    /// On the page of the herb alone: what the text itself covers.
    Read,
}

impl Moment {
    fn of(word: &str) -> Option<Self> {
        Some(match word {
            "pick" => Self::Pick,
            "make" => Self::Make,
            "use" => Self::Use,
            "read" => Self::Read,
            _ => return None,
        })
    }
}

/// One caution with how grave it is, for whom it is said, where it comes from and how sure it is.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Caution {
    /// A stable word for programs: the clause of a herb, or the rule of a jar.
    pub code: String,
    /// How grave it is.
    pub severity: Severity,
    /// The herb that it belongs to, as inside a sentence; none where it is the jar's.
    #[serde(serialize_with = "alone")]
    pub herb: Option<Message>,
    /// Where it is said.
    pub at: Vec<Moment>,
    /// The sentence.
    pub text: Message,
    /// Where it comes from; none where no source was found.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

/// The name of a herb where it stands alone, as at the wire.
fn alone<S: Serializer>(herb: &Option<Message>, serializer: S) -> Result<S::Ok, S::Error> {
    let herb = herb.clone();
    herb.map(|name| say!("title", name)).serialize(serializer)
}

impl Caution {
    /// Whether it belongs on a label: said to whoever holds the bottle, and more than a note.
    pub fn is_for_a_label(&self) -> bool {
        self.severity != Severity::Note && self.is_said_at(Moment::Use)
    }

    /// Whether it is said there.
    pub fn is_said_at(&self, moment: Moment) -> bool {
        self.at.contains(&moment)
    }

    /// What the reading of a bottle's own pH tells: it comes before everything else that is said of the bottle.
    pub fn of_reading(told: Note) -> Self {
        Self::of_note(told, Severity::Stop, &[Moment::Make, Moment::Use])
    }

    fn of_note(note: Note, severity: Severity, at: &[Moment]) -> Self {
        Self {
            code: note.code,
            severity,
            herb: None,
            at: at.to_vec(),
            text: note.text,
            source: note.source,
            status: note.status,
        }
    }
}

/// What the cautions are about.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// The preparation.
    pub preparation: &'a Preparation,
    /// The herbs.
    pub plants: &'a [PlantLine],
    /// What it is for; none for every use of the preparation.
    pub purpose: Option<Purpose>,
    /// The kinds of liquid poured.
    pub kinds: &'a [IngredientKind],
    /// The highest strength it may have at the end, % vol.
    pub strength_percent_vol: f64,
}

/// The cautions of a jar, the gravest first; standing notes stand together at the end.
pub fn for_jar(subject: &Subject<'_>) -> Vec<Caution> {
    let here =
        |caution: &Caution| caution.is_said_at(Moment::Make) || caution.is_said_at(Moment::Use);
    let mut cautions = Vec::new();
    for plant in subject.plants {
        let Some(herb) = plant.known else {
            let own = plant.own.caution().into_iter().filter(here);
            cautions.extend(own.map(|caution| Caution {
                herb: Some(Message::own(&plant.common)),
                ..caution
            }));
            cautions.push(not_looked_up(Argument::own(&plant.common)));
            continue;
        };
        // What was cooked is no longer told to be cooked first.
        let cooked = plant.state == PlantState::Cooked && herb.limit() == Some(Limit::Cook);
        cautions.extend(limit(herb).filter(|_| !cooked));
        let clauses = clause::of(herb).into_iter();
        let cook_it =
            |row: &&clause::Clause| row.severity == Severity::Stop && row.clause == "handling";
        let touching = clauses
            .filter(|row| row.touches(&plant.part) && subject.holds(&row.holds))
            .filter(|row| !(cooked && cook_it(row)));
        cautions.extend(
            touching
                .map(|row| row.caution(Some(herb.name())))
                .filter(here),
        );
        if !clause::is_read(&herb.key) {
            cautions.push(not_looked_up(Argument::message(herb.name())));
        }
    }
    let rules = rules::of(subject);
    let is_said = |code: &str| cautions.iter().any(|one| one.code == code);
    // The general line says less than what a herb says of nursing itself.
    let is_general = |one: &Caution| one.code == "no-data-nursing" && is_said("nursing");
    let rules: Vec<Caution> = rules.into_iter().filter(|one| !is_general(one)).collect();
    cautions.extend(rules);
    in_order(cautions)
}

/// The stops of a jar alone: what must not be made, and what is dangerous to make or keep.
pub fn stops_for_jar(subject: &Subject<'_>) -> Vec<Note> {
    for_jar(subject)
        .into_iter()
        .filter(|caution| caution.severity == Severity::Stop)
        .map(|caution| Note {
            code: caution.code,
            text: caution.text,
            source: caution.source,
            status: caution.status,
        })
        .collect()
}

/// The gravest first, a herb's own before the jar's, and each sentence once.
fn in_order(mut cautions: Vec<Caution>) -> Vec<Caution> {
    cautions.sort_by_key(|caution| (caution.severity, caution.herb.is_none()));
    let mut seen: Vec<(Option<Message>, Message)> = Vec::new();
    cautions.retain(|caution| {
        let key = (caution.herb.clone(), caution.text.clone());
        let is_first = !seen.contains(&key);
        seen.push(key);
        is_first
    });
    cautions
}

/// The limit that stands in the table of herbs, where no clause says it.
fn limit(herb: &Herb) -> Option<Caution> {
    let clauses = clause::of(herb);
    if clauses.iter().any(|row| row.severity == Severity::Stop) {
        return None;
    }
    let (code, note) = herb.own_limit()?;
    let note = Note {
        code: code.to_owned(),
        ..note
    };
    Some(Caution {
        herb: Some(herb.name()),
        ..Caution::of_note(note, Severity::Stop, &[Moment::Pick, Moment::Make])
    })
}

/// Silence is said as what it is: no text was looked up.
fn not_looked_up(herb: Argument) -> Caution {
    let text = say!("caution-not-looked-up", herb);
    let note = Note::new("not-looked-up", text, "", Status::Memory);
    Caution::of_note(note, Severity::Warn, &[Moment::Make])
}

/// The cautions of a herb itself, for its own page: limits and every clause, the gravest first.
pub fn of_herb(herb: &Herb) -> Vec<Caution> {
    let mut cautions: Vec<Caution> = limit(herb).into_iter().collect();
    cautions.extend(clause::of(herb).into_iter().map(|row| row.caution(None)));
    if !clause::is_read(&herb.key) {
        cautions.push(not_looked_up(Argument::message(herb.name())));
    }
    in_order(cautions)
}

/// Whether a text was looked up for what the herb does to people.
pub fn is_read(herb: &Herb) -> bool {
    clause::is_read(&herb.key)
}

/// What to beware of when a herb is picked: weeds in the cut, gloves, and its dangerous look-alikes.
pub fn for_picking(herb: &Herb) -> Vec<Caution> {
    let own = of_herb(herb).into_iter();
    let picked = own.filter(|caution| caution.is_said_at(Moment::Pick));
    picked.chain(herb.look_alikes().map(mistaken)).collect()
}

fn mistaken(row: &LookAlike) -> Caution {
    let text = say!(
        "look-alike-in-words",
        name = row.name(),
        why = row.why(),
        tell = row.tell_apart()
    );
    let note = Note::new("look-alike", text, &row.source, row.status);
    Caution::of_note(note, Severity::Stop, &[Moment::Pick])
}

#[derive(Debug, Deserialize)]
struct Text {
    code: String,
    source: String,
    status: Status,
}

static TEXTS: LazyLock<Vec<Text>> = LazyLock::new(|| table::rows("texts.tsv"));

/// The general wording: not medical advice, no dose, interactions, poison, oil, alcohol, selling.
pub fn general() -> Vec<Note> {
    TEXTS
        .iter()
        .map(|row| {
            let text = Message::of_table(row.entry());
            Note::new(&row.code, text, &row.source, row.status)
        })
        .collect()
}

impl Text {
    fn entry(&self) -> String {
        format!("general-{}", self.code)
    }
}

/// The entries of the catalogue that the general wording implies.
pub(crate) fn general_entries() -> impl Iterator<Item = String> {
    TEXTS.iter().map(Text::entry)
}

#[cfg(test)]
mod tests;
