//! A herb as a list of facts, each with its source and status.

use serde::Serialize;

use super::Herb;
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

impl Herb {
    /// Everything that was looked up, cautions apart (see [`crate::cautions`]).
    pub fn facts(&self) -> Vec<Fact> {
        let mut facts = Vec::new();
        let mut add = |label: &str, value: &str, source: &str, status| {
            if !value.is_empty() {
                let (label, value) = (label.to_owned(), value.to_owned());
                facts.push(Fact {
                    label,
                    value,
                    source: source_of(source),
                    status,
                });
            }
        };
        add("Family", &self.family, "", Status::Memory);
        add("Harvest", &self.harvest_stage, "", Status::Memory);
        add("Holds", &self.constituents, "", Status::Memory);
        if let Some(tincture) = self.tincture() {
            let (source, status) = (tincture.source, tincture.status);
            if let Some((low, usual, high)) = tincture.dried_ratio_ml_per_g {
                add(
                    "Tincture of the dried herb",
                    &ratio(low, usual, high),
                    source,
                    status,
                );
            }
            if let Some((low, high)) = tincture.strength_percent_vol {
                add("Strength", &range(low, high, "% vol"), source, status);
            }
            if let Some(ratio) = tincture.fresh_ratio_ml_per_g {
                let text = format!("1 g to {ratio} mL of strong spirit");
                add(
                    "Tincture of the fresh herb",
                    &text,
                    GENERAL_FRESH,
                    Status::Practice,
                );
            }
        }
        let strength = constituents::strength_for(&self.class_keys());
        if let Some((_, note)) = strength {
            add("By its constituents", &note.text, "", note.status);
        }
        for (label, grade) in [
            ("In glycerin", &self.glycerite),
            ("In oil", &self.oil),
            ("In vinegar", &self.vinegar),
            ("In wine", &self.wine),
        ] {
            add(label, grade, "", Status::Memory);
        }
        facts
    }
}

const GENERAL_FRESH: &str = "general method: USP 1890 in King's Dispensatory 1898; Moore 1995";

fn ratio(low: f64, usual: f64, high: f64) -> String {
    if low == high {
        format!("1 g to {usual} mL")
    } else {
        format!("1 g to {usual} mL ({low} to {high})")
    }
}

fn range(low: f64, high: f64, unit: &str) -> String {
    if low == high {
        format!("{low} {unit}")
    } else {
        format!("{low} to {high} {unit}")
    }
}

#[cfg(test)]
mod tests {
    use crate::{Status, herbs};

    #[test]
    fn judgement_is_never_shown_as_checked() {
        for herb in herbs::all() {
            for fact in herb.facts() {
                let judged = !matches!(
                    fact.label.as_str(),
                    "Tincture of the dried herb" | "Strength"
                );
                assert!(
                    !judged || fact.status > Status::PartlyConfirmed,
                    "{}: {}",
                    herb.key,
                    fact.label
                );
                assert!(
                    fact.source.is_some() || fact.status != Status::Confirmed,
                    "{}",
                    herb.key
                );
            }
        }
    }

    #[test]
    fn peppermint_shows_its_published_strength() {
        let facts = herbs::find("peppermint").unwrap().facts();
        let strength = facts.iter().find(|fact| fact.label == "Strength").unwrap();
        assert_eq!(strength.value, "45 to 70 % vol");
        assert_eq!(strength.status, Status::Confirmed);
    }
}
