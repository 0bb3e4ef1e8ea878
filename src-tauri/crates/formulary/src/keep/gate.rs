//! The rows of `gates.tsv`.

use std::sync::LazyLock;

use message::{Argument, Message, Unit, say};
use physics::{Interval, mixture::Liquid};
use serde::Deserialize;

use super::{Gate, Prospect};
use crate::{
    note::{Status, source_of},
    preparations::Verdict,
    table,
};

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

/// The figure that a limit looks at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Quantity {
    AlcoholInFreeWaterPercent,
    /// How much of the water sugar, glycerin and alcohol keep together.
    WaterKeptPercent,
    WaterActivity,
    #[serde(rename = "vinegar_acidity_g_per_100ml")]
    VinegarAcidity,
    #[serde(rename = "acidity_g_per_100ml")]
    Acidity,
    AcidPh,
    MeasuredPh,
    HerbWaterPercent,
    ColdDays,
    Days,
    SoakHours,
}

impl Quantity {
    fn unit(self) -> Unit {
        match self {
            Self::AlcoholInFreeWaterPercent => Unit::PercentVol,
            Self::WaterKeptPercent | Self::HerbWaterPercent => Unit::Percent,
            Self::WaterActivity | Self::AcidPh | Self::MeasuredPh => Unit::None,
            Self::VinegarAcidity | Self::Acidity => Unit::GramPer100Ml,
            Self::ColdDays | Self::Days => Unit::Days,
            Self::SoakHours => Unit::Hours,
        }
    }

    /// The unit as a sign that is the same in every language.
    fn sign(self) -> &'static str {
        match self.unit() {
            Unit::PercentVol => "% vol",
            Unit::Percent => "%",
            Unit::GramPer100Ml => "g/100 mL",
            Unit::Days => "d",
            Unit::Hours => "h",
            _ => "",
        }
    }
}

#[derive(Debug, Deserialize)]
pub(super) struct Row {
    key: String,
    quantity: Quantity,
    sense: Sense,
    pub(super) keeps: f64,
    keeps_cold: f64,
    otherwise: Verdict,
    rule: String,
    source: String,
    status: Status,
}

static GATES: LazyLock<Vec<Row>> = LazyLock::new(|| table::rows("gates.tsv"));

pub(super) fn row(key: &str) -> Option<&'static Row> {
    GATES.iter().find(|row| row.key == key)
}

impl Row {
    /// The figure this gate looks at; none where the prospect does not hold it.
    pub(super) fn predict(&self, prospect: &Prospect<'_>) -> Option<Interval> {
        let of_liquid = |figure: fn(&Liquid) -> Interval| prospect.liquid.map(figure);
        match self.quantity {
            Quantity::VinegarAcidity => Some(Interval::exact(
                prospect.vinegar_acidity_g_per_100ml.unwrap_or(0.0),
            )),
            Quantity::HerbWaterPercent => prospect.herb_water_percent,
            // It stands beside the floor that is computed, so it can only worsen the verdict.
            Quantity::MeasuredPh => prospect.measured_ph,
            Quantity::ColdDays | Quantity::Days | Quantity::SoakHours => {
                Some(Interval::exact(self.keeps))
            }
            Quantity::AlcoholInFreeWaterPercent => {
                of_liquid(|liquid| liquid.alcohol_in_free_water_percent)
            }
            Quantity::WaterKeptPercent => of_liquid(|liquid| liquid.water_kept_percent),
            Quantity::Acidity => of_liquid(|liquid| liquid.acidity_g_per_100ml),
            Quantity::WaterActivity => of_liquid(|liquid| liquid.water_activity.judged),
            Quantity::AcidPh => of_liquid(|liquid| liquid.acid_ph.unwrap_or(Interval::exact(7.0))),
        }
    }

    /// Whether it looks at what was bought rather than at what comes of it; such a gate is worth naming only when it fails.
    pub(super) fn is_of_the_shop(&self) -> bool {
        self.quantity == Quantity::VinegarAcidity
    }

    /// What it looks at. Alcohol beside sugar or glycerin is looked at in the water that those leave free.
    fn looks_at(&self, prospect: &Prospect<'_>) -> Message {
        let kept_otherwise = |liquid: &Liquid| {
            liquid.sugar_percent_mass.value > 0.0 || liquid.glycerol_percent_mass.value > 0.0
        };
        match self.quantity {
            Quantity::AlcoholInFreeWaterPercent => match prospect.liquid {
                Some(liquid) if kept_otherwise(liquid) => say!("gate-alcohol-in-free-water"),
                _ => say!("gate-alcohol"),
            },
            Quantity::WaterKeptPercent => say!("gate-water-kept"),
            Quantity::WaterActivity => say!("gate-water-activity"),
            Quantity::VinegarAcidity => say!("gate-vinegar-bought"),
            Quantity::Acidity => say!("gate-acidity"),
            Quantity::AcidPh => say!("gate-acid-ph"),
            Quantity::MeasuredPh => say!("gate-measured-ph"),
            Quantity::HerbWaterPercent => say!("gate-herb-water"),
            Quantity::ColdDays => say!("gate-cold-days"),
            Quantity::Days => say!("gate-days"),
            Quantity::SoakHours => say!("gate-soak-hours"),
        }
    }

    /// The reason it gives for its verdict.
    pub(super) fn reason(&self, predicted: Interval, prospect: &Prospect<'_>) -> Message {
        if self.quantity == Quantity::WaterKeptPercent {
            return if self.verdict(predicted) == Verdict::Keeps {
                say!("gate-all-water-kept")
            } else {
                say!(
                    "gate-water-left-free",
                    share = Argument::percent(predicted.low)
                )
            };
        }
        let rule = Message::of_table(self.rule.clone());
        if self.sense == Sense::Always {
            return rule;
        }
        let Interval { low, value, high } = predicted;
        say!(
            "gate-found",
            what = self.looks_at(prospect),
            figure = Argument::range(low, value, high, self.quantity.unit()),
            rule
        )
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
            unit: self.quantity.sign(),
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
