//! The rules of a jar: what to beware of by its preparation, its liquids and its use.

use std::sync::LazyLock;

use message::Message;
use physics::mixture::{IngredientKind, Without};
use serde::Deserialize;

use super::{Caution, Moment, Severity, Subject};
use crate::{
    herbs::Limit,
    note::{Status, source_of},
    preparations::{PlantState, Purpose},
    table,
};

#[derive(Debug, Deserialize)]
pub(super) struct Rule {
    pub(super) code: String,
    severity: Severity,
    pub(super) herbs: String,
    pub(super) preparations: String,
    states: String,
    purposes: String,
    holds: String,
    at: String,
    says: String,
    pub(super) source: String,
    pub(super) status: Status,
}

static RULES: LazyLock<Vec<Rule>> = LazyLock::new(|| table::rows("cautions.tsv"));

/// From this strength on, vapour catches fire near room warmth, % vol.
const FLAMMABLE: f64 = 20.0;

impl Subject<'_> {
    pub(super) fn holds(&self, what: &str) -> bool {
        let held = |what| self.kinds.iter().any(|kind| kind.holds(what));
        match what {
            "*" | "" => true,
            "ethanol" => self.strength_percent_vol > 0.5,
            "strong" => {
                self.strength_percent_vol >= FLAMMABLE
                    || self.kinds.contains(&IngredientKind::Spirit)
            }
            "honey" => held(Without::Honey),
            "raw" => self
                .plants
                .iter()
                .any(|plant| plant.state != PlantState::Cooked),
            "sugar" => held(Without::Sugar),
            _ => false,
        }
    }

    /// Whether what becomes of the herbs must never be swallowed.
    fn is_for_the_skin(&self) -> bool {
        let limits = self
            .plants
            .iter()
            .filter_map(|plant| plant.known?.limit_of(&plant.part));
        limits.into_iter().any(|(limit, _)| limit == Limit::Outside)
    }

    fn may_be_for(&self, purposes: &str) -> bool {
        match self.purpose {
            None if self.is_for_the_skin() => table::names(purposes, Purpose::Outside.word()),
            Some(purpose) => table::names(purposes, purpose.word()),
            None => {
                let mut uses = self.preparation.uses.iter();
                uses.any(|purpose| table::names(purposes, purpose.word()))
            }
        }
    }

    fn is_touched_by(&self, rule: &Rule) -> bool {
        let states = |state: PlantState| table::names(&rule.states, state.word());
        (rule.herbs == "*"
            || self
                .plants
                .iter()
                .any(|plant| table::names(&rule.herbs, &plant.herb)))
            && (table::names(&rule.preparations, &self.preparation.key)
                || table::names(&rule.preparations, &self.preparation.family))
            && (rule.states == "*" || self.plants.iter().any(|plant| states(plant.state)))
            && self.may_be_for(&rule.purposes)
            && self.holds(&rule.holds)
    }
}

/// The rules that touch a jar, in the order of the table, which keeps standing notes together at its end.
pub(super) fn of(subject: &Subject<'_>) -> Vec<Caution> {
    RULES
        .iter()
        .filter(|rule| subject.is_touched_by(rule))
        .map(|rule| Caution {
            code: rule.code.clone(),
            severity: rule.severity,
            herb: None,
            at: table::items(&rule.at).filter_map(Moment::of).collect(),
            text: Message::of_table(rule.says.clone()),
            source: source_of(&rule.source),
            status: rule.status,
        })
        .collect()
}

#[cfg(test)]
pub(super) fn all() -> &'static [Rule] {
    &RULES
}
