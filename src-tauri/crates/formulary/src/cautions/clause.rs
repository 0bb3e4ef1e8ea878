//! The table of clauses: one caution a row, each with its own severity, source and status.

use std::sync::LazyLock;

use message::Message;
use serde::Deserialize;

use super::{Caution, Moment, Severity};
use crate::{
    herbs::{Herb, Limit, part, part::PartClass},
    note::{Status, source_of},
    table,
};

/// One caution of a herb, or of a class of herbs where the key begins with `*`.
#[derive(Debug, Deserialize)]
pub(super) struct Clause {
    pub(super) key: String,
    /// The parts it was read for; empty for all.
    part: String,
    pub(super) clause: String,
    pub(super) severity: Severity,
    at: String,
    /// What the jar must hold for it, as in the rules of a jar; empty for anything.
    pub(super) holds: String,
    /// What may not be made of these parts: `all`, or `inside` for what is swallowed.
    forbids: String,
    /// The entry of the catalogue.
    says: String,
    source: String,
    status: Status,
}

static CLAUSES: LazyLock<Vec<Clause>> = LazyLock::new(|| table::rows("clauses.tsv"));

/// Herbs that hold pyrrolizidine alkaloids themselves (BfR opinion 018/2013 names their families).
const PYRROLIZIDINE: [&str; 3] = ["borage", "coltsfoot", "comfrey"];

/// What is said of weeds that are cut along; the word of the table.
const WEEDS: &str = "weeds_in_the_cut";

impl Clause {
    pub(super) fn moments(&self) -> Vec<Moment> {
        table::items(&self.at).filter_map(Moment::of).collect()
    }

    /// Whether it concerns a part: the parts named, and those that lie near enough not to leave it out.
    pub(super) fn touches(&self, part_name: &str) -> bool {
        self.part.is_empty()
            || self.names(part_name)
            // What must not be used is said beside what may.
            || !self.forbids.is_empty()
            || table::items(&self.part).any(|named| are_near(named, part_name))
    }

    fn names(&self, part_name: &str) -> bool {
        self.part.is_empty() || table::items(&self.part).any(|one| one == part_name)
    }

    pub(super) fn says(&self) -> Message {
        Message::of_table(self.says.clone())
    }

    pub(super) fn caution(&self, herb: Option<Message>) -> Caution {
        Caution {
            code: self.clause.replace('_', "-"),
            severity: self.severity,
            herb,
            at: self.moments(),
            text: self.says(),
            source: source_of(&self.source),
            status: self.status,
        }
    }
}

/// Two parts above the ground, or two of one class, share their cautions.
fn are_near(one: &str, other: &str) -> bool {
    use PartClass::{Flower, Herb, Leaf, Other};
    let above = |class| matches!(class, Leaf | Flower | Herb | Other);
    let (one, other) = (part::class_of(one), part::class_of(other));
    one == other || (above(one) && above(other))
}

/// The clauses of a herb, and those of the classes that it belongs to and says nothing of itself.
pub(super) fn of(herb: &Herb) -> Vec<&'static Clause> {
    let own: Vec<&Clause> = CLAUSES.iter().filter(|row| row.key == herb.key).collect();
    let says = |clause: &str| own.iter().any(|row| row.clause == clause);
    let is_cut = herb.parts().iter().any(|part| {
        let class = part::class_of(part);
        matches!(class, PartClass::Leaf | PartClass::Flower | PartClass::Herb)
    });
    let joins = |row: &Clause| match row.key.as_str() {
        "*pyrrolizidine" => {
            PYRROLIZIDINE.contains(&herb.key.as_str())
                && !own.iter().any(|row| row.forbids == "all")
        }
        "*cut-herb" => is_cut && !says(WEEDS),
        _ => false,
    };
    let classes = CLAUSES.iter().filter(|row| joins(row));
    own.iter().copied().chain(classes).collect()
}

/// Whether a text was looked up for what the herb does to people.
pub(super) fn is_read(herb: &str) -> bool {
    let handling = ["gloves", WEEDS];
    CLAUSES
        .iter()
        .any(|row| row.key == herb && !handling.contains(&row.clause.as_str()))
}

/// What the clauses of a herb forbid to make of a part of it, with the row that says so.
pub(crate) fn limit_of(herb: &str, part_name: &str) -> Option<(Limit, Caution)> {
    let row = CLAUSES
        .iter()
        .find(|row| row.key == herb && !row.forbids.is_empty() && row.names(part_name))?;
    let limit = if row.forbids == "inside" {
        Limit::Outside
    } else {
        Limit::No
    };
    Some((limit, row.caution(None)))
}

#[cfg(test)]
pub(super) fn all() -> &'static [Clause] {
    &CLAUSES
}
