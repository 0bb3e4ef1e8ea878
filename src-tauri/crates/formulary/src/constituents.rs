//! Classes of constituents and what dissolves them.
//!
//! The grades are professional judgement, not measurements; they are `practice`
//! wherever they speak, whatever the status of the sentence that supports a class.

use std::sync::LazyLock;

use message::{Argument, Message, say};
use serde::Deserialize;

use crate::{
    note::{Note, Status},
    table,
};

/// How well a liquid takes a class up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Grade {
    /// Not at all.
    No,
    /// Poorly.
    Poor,
    /// Fairly.
    Fair,
    /// Well.
    Good,
    /// Very well.
    #[serde(rename = "very good")]
    VeryGood,
}

impl Grade {
    /// How much of something it takes up, inside a sentence.
    pub fn how_much(self) -> Message {
        match self {
            Self::No => say!("takes-nothing"),
            Self::Poor => say!("takes-little"),
            Self::Fair => say!("takes-some"),
            Self::Good => say!("takes-much"),
            Self::VeryGood => say!("takes-most"),
        }
    }

    /// From 0 (not at all) to 1 (very well).
    pub fn score(self) -> f64 {
        match self {
            Self::No => 0.0,
            Self::Poor => 0.25,
            Self::Fair => 0.5,
            Self::Good => 0.85,
            Self::VeryGood => 1.0,
        }
    }
}

/// One class: tannins, mucilage, volatile oils ...
#[derive(Debug, Clone, Deserialize)]
pub struct Class {
    /// Stable key.
    pub key: String,
    /// Its entry in the catalogue.
    name: String,
    /// What the table it was taken from calls it.
    pub printed: String,
    /// In water.
    pub water: Grade,
    /// In spirit near 25 % vol.
    pub ethanol_25: Grade,
    /// In spirit near 45 % vol.
    pub ethanol_45: Grade,
    /// In spirit near 65 % vol.
    pub ethanol_65: Grade,
    /// In spirit near 95 % vol.
    pub ethanol_95: Grade,
    /// In glycerin of 60 to 80 %.
    pub glycerin: Grade,
    /// In vinegar of 5 %.
    pub vinegar: Grade,
    /// In fixed oil.
    pub oil: Grade,
    /// Lower end of the suggested strength, % vol.
    pub ethanol_low: f64,
    /// Upper end of the suggested strength, % vol.
    pub ethanol_high: f64,
    /// A remark of the trade.
    pub note: String,
    /// What supports the class.
    pub source: String,
    /// How sure that support is.
    pub status: Status,
}

impl Class {
    /// Its name inside a sentence.
    pub fn name(&self) -> Message {
        Message::of_table(self.name.clone())
    }

    /// The grade in spirit of a strength, by the nearest rung of the ladder 0, 25, 45, 65, 95 % vol.
    pub fn in_spirit(&self, strength_percent_vol: f64) -> Grade {
        match strength_percent_vol {
            s if s < 12.5 => self.water,
            s if s < 35.0 => self.ethanol_25,
            s if s < 55.0 => self.ethanol_45,
            s if s < 80.0 => self.ethanol_65,
            _ => self.ethanol_95,
        }
    }
}

static CLASSES: LazyLock<Vec<Class>> = LazyLock::new(|| table::rows("constituents.tsv"));

/// All classes in the order of the table.
pub fn all() -> &'static [Class] {
    &CLASSES
}

/// The class with this key.
pub fn class(key: &str) -> Option<&'static Class> {
    CLASSES.iter().find(|class| class.key == key)
}

/// The strength in which the classes dissolve best together, in steps of 5 % vol
/// inside the range their rows suggest, with the sentence that says so; none for no class.
///
/// The first class named counts double: it is what the herb is known for.
pub fn strength_for(keys: &[&str]) -> Option<(f64, Note)> {
    let classes: Vec<&Class> = keys.iter().filter_map(|key| class(key)).collect();
    let first = classes.first()?;
    let fit = |strength: f64| -> f64 {
        classes
            .iter()
            .enumerate()
            .map(|(at, class)| {
                let weight = if at == 0 { 2.0 } else { 1.0 };
                let away = (class.ethanol_low - strength)
                    .max(strength - class.ethanol_high)
                    .max(0.0);
                weight * (class.in_spirit(strength).score() - away / 50.0)
            })
            .sum()
    };
    let middle = (first.ethanol_low + first.ethanol_high) / 2.0;
    let best = (5..=19).map(|step| 5.0 * f64::from(step)).max_by(|a, b| {
        fit(*a)
            .total_cmp(&fit(*b))
            .then((b - middle).abs().total_cmp(&(a - middle).abs()))
    })?;
    let text = say!(
        "class-strength",
        strength = Argument::strength(best),
        classes = Argument::all_of(classes.iter().map(|class| class.name().into()))
    );
    Some((
        best,
        Note::new("class-strength", text, "", Status::Practice),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_has_a_strength_range_in_order() {
        assert_eq!(all().len(), 16);
        for class in all() {
            assert!(class.ethanol_low <= class.ethanol_high, "{}", class.key);
        }
    }

    #[test]
    fn mucilage_wants_weak_spirit_and_resin_strong() {
        let (weak, _) = strength_for(&["mucilage"]).unwrap();
        let (strong, note) = strength_for(&["resins"]).unwrap();
        assert!(weak <= 25.0 && strong >= 80.0, "{weak} {strong}");
        assert_eq!(note.status, Status::Practice);
        assert!(strength_for(&[]).is_none());
    }
}
