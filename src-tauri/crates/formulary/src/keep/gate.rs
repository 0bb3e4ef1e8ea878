//! The rows of `gates.tsv`.

use std::sync::LazyLock;

use message::{Argument, Message};
use physics::{Interval, mixture::Liquid};
use serde::Deserialize;

use super::{Gate, Prospect};
use crate::{
    note::{Status, source_of},
    preparations::Verdict,
    table,
};

/// How much of the water sugar, glycerin and alcohol keep together.
const WATER_KEPT: &str = "water_kept_percent";

/// On which side of the limit it is safe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
enum Sense {
    #[serde(rename = "at least")]
    AtLeast,
    #[serde(rename = "at most")]
    AtMost,
    /// No figure of the liquid can pass it.
    #[serde(rename = "always")]
    Always,
}

#[derive(Debug, Deserialize)]
pub(super) struct Row {
    key: String,
    gate: String,
    quantity: String,
    unit: String,
    sense: Sense,
    pub(super) keeps: f64,
    keeps_cold: f64,
    otherwise: Verdict,
    text: String,
    source: String,
    status: Status,
}

static GATES: LazyLock<Vec<Row>> =
    LazyLock::new(|| table::rows("gates.tsv", include_str!("../../data/gates.tsv")));

pub(super) fn row(key: &str) -> Option<&'static Row> {
    GATES.iter().find(|row| row.key == key)
}

impl Row {
    /// The figure this gate looks at; none where the prospect does not hold it.
    pub(super) fn predict(&self, prospect: &Prospect<'_>) -> Option<Interval> {
        let none = Interval::exact(0.0);
        match self.quantity.as_str() {
            "vinegar_acidity_g_per_100ml" => prospect
                .vinegar_acidity_g_per_100ml
                .map(Interval::exact)
                .or(Some(none)),
            "herb_water_percent" => prospect.herb_water_percent,
            // It stands beside the floor that is computed, so it can only worsen the verdict.
            "measured_ph" => prospect.measured_ph,
            "days" | "soak_hours" => Some(Interval::exact(self.keeps)),
            quantity => {
                let liquid = prospect.liquid?;
                match quantity {
                    "alcohol_in_free_water_percent" => Some(liquid.alcohol_in_free_water_percent),
                    WATER_KEPT => Some(liquid.water_kept_percent),
                    "acidity_g_per_100ml" => Some(liquid.acidity_g_per_100ml),
                    "water_activity" => Some(liquid.water_activity.judged),
                    "acid_ph" => liquid.acid_ph.or(Some(Interval::exact(7.0))),
                    _ => None,
                }
            }
        }
    }

    /// Whether it looks at what was bought rather than at what comes of it; such a gate is worth naming only when it fails.
    pub(super) fn is_of_the_shop(&self) -> bool {
        self.quantity == "vinegar_acidity_g_per_100ml"
    }

    /// What it looks at, in words. Alcohol beside sugar or glycerin is looked at in the water that those leave free.
    fn looks_at(&self, prospect: &Prospect<'_>) -> String {
        let kept_otherwise = |liquid: &Liquid| {
            liquid.sugar_percent_mass.value > 0.0 || liquid.glycerol_percent_mass.value > 0.0
        };
        match self.quantity.as_str() {
            WATER_KEPT => Message::new("gate-water-kept").into(),
            "days" if self.gate.is_empty() => Message::new("gate-days").into(),
            "alcohol_in_free_water_percent" if prospect.liquid.is_some_and(kept_otherwise) => {
                Message::new("gate-alcohol-in-free-water").into()
            }
            _ => self.gate.clone(),
        }
    }

    /// The reason it gives for its verdict.
    pub(super) fn reason(&self, predicted: Interval, prospect: &Prospect<'_>) -> String {
        if self.sense == Sense::Always {
            return match self.text.strip_prefix('@') {
                Some(id) => Message::of_table(id.to_owned()).into(),
                None => self.text.clone(),
            };
        }
        if self.quantity == WATER_KEPT {
            return if self.verdict(predicted) == Verdict::Keeps {
                Message::new("gate-all-water-kept").into()
            } else {
                Message::new("gate-water-left-free")
                    .with("share", Argument::percent(predicted.low))
                    .into()
            };
        }
        let figure = crate::words::interval(predicted, &self.unit);
        format!("{} {figure}; {}", self.looks_at(prospect), self.text)
    }

    fn bad_end(&self, predicted: Interval) -> f64 {
        if self.sense == Sense::AtMost {
            predicted.high
        } else {
            predicted.low
        }
    }

    pub(super) fn margin(&self, predicted: Interval) -> f64 {
        let bad = self.bad_end(predicted);
        if self.sense == Sense::AtMost {
            self.keeps - bad
        } else {
            bad - self.keeps
        }
    }

    pub(super) fn verdict(&self, predicted: Interval) -> Verdict {
        // The strength of a spirit read back from its composition differs from its label in the
        // sixth digit, which must not push a liquid that sits on the limit over it.
        const GRACE: f64 = 1e-5;
        let bad = self.bad_end(predicted);
        let passes = |limit: f64| match self.sense {
            Sense::AtLeast => bad >= limit * (1.0 - GRACE),
            Sense::AtMost => bad <= limit * (1.0 + GRACE),
            Sense::Always => false,
        };
        if passes(self.keeps) {
            Verdict::Keeps
        } else if passes(self.keeps_cold) {
            Verdict::KeepsCold
        } else {
            self.otherwise
        }
    }

    pub(super) fn gate(&self, predicted: Interval, prospect: &Prospect<'_>, decided: bool) -> Gate {
        Gate {
            gate: self.looks_at(prospect),
            limit: self.keeps,
            predicted,
            unit: self.unit.clone(),
            margin: self.margin(predicted),
            decided,
            source: source_of(&self.source),
            status: self.status,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::preparations;

    #[test]
    fn every_gate_that_is_named_exists_and_says_where_it_is_from() {
        for preparation in preparations::all() {
            for key in &preparation.gates {
                assert!(row(key).is_some(), "{}: {key}", preparation.key);
            }
        }
        for row in GATES.iter() {
            assert!(
                !row.source.is_empty() || row.status > Status::PartlyConfirmed,
                "{}",
                row.key
            );
        }
    }

    #[test]
    fn verdicts_only_worsen_along_each_gate() {
        for row in GATES.iter() {
            let at = |step: u32| row.verdict(Interval::exact(row.keeps * f64::from(step) / 20.0));
            for step in 0..60 {
                match row.sense {
                    Sense::AtLeast => assert!(at(step + 1) <= at(step), "{}", row.key),
                    Sense::AtMost => assert!(at(step + 1) >= at(step), "{}", row.key),
                    Sense::Always => assert_eq!(at(step), row.otherwise),
                }
            }
        }
    }
}
