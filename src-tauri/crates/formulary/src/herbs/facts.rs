//! A herb as a list of facts, each with its source and status.

use message::{Argument, Message};
use serde::Serialize;

use super::{Herb, strength::between};
use crate::{
    constituents,
    note::{Status, source_of},
};

/// One fact of a herb as it stands on its page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Fact {
    /// What it is a fact of.
    pub label: String,
    /// The fact in words.
    pub value: String,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Fact {
    fn new(
        label: impl Into<String>,
        value: impl Into<String>,
        source: &str,
        status: Status,
    ) -> Self {
        Self {
            label: label.into(),
            value: value.into(),
            source: source_of(source),
            status,
        }
    }
}

impl Herb {
    /// Everything that was looked up, cautions apart (see [`crate::cautions`]).
    pub fn facts(&self) -> Vec<Fact> {
        let mut facts = Vec::new();
        let mut judged = |label: &str, value: &str| {
            if !value.is_empty() {
                facts.push(Fact::new(label, value, "", Status::Memory));
            }
        };
        judged("Family", &self.family);
        judged("Holds", &self.constituents);
        let several = self.parts().len() > 1;
        for (part, row) in self.harvests() {
            let when = if several {
                Message::new("harvest-of-part")
                    .with("part", Argument::name(part))
                    .with("when", Argument::message(row.in_words()))
            } else {
                row.in_words()
            };
            facts.push(Fact::new("Harvest", when, &row.source, row.status));
        }
        for row in self.published() {
            let strength = row.strength_percent_vol();
            let strength = strength.map_or_else(
                || Message::new("strength-not-printed"),
                |(low, high)| between(low, high),
            );
            let value = Message::new("strength-of-part")
                .with("part", Argument::name(&row.part))
                .with("strength", Argument::message(strength));
            facts.push(Fact::new(row.as_label(), value, &row.source, row.status));
        }
        if let Some(ratio) = self.fresh_ratio {
            let text = format!("1 g to {ratio} mL of strong spirit");
            let label = "Tincture of the fresh herb";
            facts.push(Fact::new(label, text, GENERAL_FRESH, Status::Practice));
        }
        if let Some((_, note)) = constituents::strength_for(&self.class_keys()) {
            facts.push(Fact::new("By its constituents", note.text, "", note.status));
        }
        let mut judged = |label: &str, value: &str| {
            if !value.is_empty() {
                facts.push(Fact::new(label, value, "", Status::Memory));
            }
        };
        judged("In glycerin", &self.glycerite);
        judged("In oil", &self.oil);
        judged("In vinegar", &self.vinegar);
        judged("In wine", &self.wine);
        facts
    }
}

const GENERAL_FRESH: &str = "general method: USP 1890 in King's American Dispensatory, 1898";

#[cfg(test)]
mod tests {
    use crate::{Status, herbs};

    #[test]
    fn what_is_confirmed_names_its_text() {
        for herb in herbs::all() {
            for fact in herb.facts() {
                assert!(
                    fact.source.is_some() || fact.status != Status::Confirmed,
                    "{}: {}",
                    herb.key,
                    fact.label
                );
            }
        }
    }

    #[test]
    fn peppermint_shows_each_published_strength_with_its_form() {
        let facts = herbs::find("peppermint").unwrap().facts();
        let of_form = facts
            .iter()
            .filter(|fact| fact.label.contains("published-tincture"));
        assert_eq!(of_form.clone().count(), 2, "1:5 at 45 and at 70 % vol");
        assert!(of_form.clone().all(|fact| fact.label.contains("1:5")));
        assert!(
            of_form
                .into_iter()
                .all(|fact| fact.status == Status::Confirmed)
        );
    }
}
