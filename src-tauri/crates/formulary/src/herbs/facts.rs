//! A herb as a list of facts, each with its source and status.

use message::{Argument, Message, say};
use serde::Serialize;

use super::{Herb, part_name, strength::between};
use crate::{
    constituents,
    note::{Status, source_of},
    preparations::Solvent,
};

/// One fact of a herb as it stands on its page.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Fact {
    /// What it is a fact of.
    pub label: Message,
    /// The fact in words.
    pub value: Message,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Fact {
    fn new(
        label: impl Into<Message>,
        value: impl Into<Message>,
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
        let judged = |label, value| Fact::new(label, value, "", Status::Memory);
        if !self.family.is_empty() {
            facts.push(judged(say!("fact-family"), Message::own(&self.family)));
        }
        facts.extend(self.holds().map(|holds| judged(say!("fact-holds"), holds)));
        let several = self.parts().len() > 1;
        for (part, row) in self.harvests() {
            let when = if several {
                say!(
                    "harvest-of-part",
                    part = part_name(part),
                    when = row.in_words()
                )
            } else {
                row.in_words()
            };
            facts.push(Fact::new(
                say!("fact-harvest"),
                when,
                &row.source,
                row.status,
            ));
        }
        for row in self.published() {
            let strength = row.strength_percent_vol();
            let strength = strength.map_or_else(
                || say!("strength-not-printed"),
                |(low, high)| between(low, high),
            );
            let value = say!("strength-of-part", part = part_name(&row.part), strength);
            facts.push(Fact::new(row.as_label(), value, &row.source, row.status));
        }
        if let Some(ratio) = self.fresh_ratio {
            let text = say!("fact-fresh-ratio", volume = Argument::millilitres(ratio));
            let label = say!("fact-fresh-tincture");
            facts.push(Fact::new(label, text, GENERAL_FRESH, Status::Practice));
        }
        if let Some((_, note)) = constituents::strength_for(&self.class_keys()) {
            facts.push(Fact::new(
                say!("fact-by-constituents"),
                note.text,
                "",
                note.status,
            ));
        }
        facts.extend(self.grades().into_iter().filter_map(|(solvent, grade)| {
            let label = match solvent {
                Solvent::Glycerite => say!("fact-in-glycerin"),
                Solvent::Oil => say!("fact-in-oil"),
                Solvent::Vinegar => say!("fact-in-vinegar"),
                Solvent::Wine => say!("fact-in-wine"),
                Solvent::Ethanol | Solvent::Water => return None,
            };
            Some(judged(label, Message::of_table(grade)))
        }));
        facts
    }
}

const GENERAL_FRESH: &str = "Tinctures of fresh herbs, US Pharmacopoeia, 1890";

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
            .filter(|fact| fact.label.to_string().contains("published-tincture"));
        assert_eq!(of_form.clone().count(), 2, "1:5 at 45 and at 70 % vol");
        assert!(
            of_form
                .clone()
                .all(|fact| fact.label.to_string().contains("ratio-one-to"))
        );
        assert!(
            of_form
                .into_iter()
                .all(|fact| fact.status == Status::Confirmed)
        );
    }
}
