//! Whether a liquid keeps: gates with their limits, judged at the bad end of the interval.

mod dates;
mod gate;
mod ph;

use message::{Message, say};
use physics::{Interval, mixture::Liquid};
use serde::Serialize;

pub use dates::{
    Dates, ShelfLife, best_before_days, dates, modifiers, oil_ageing, oil_lasts_until, shelf_life,
};

pub use ph::{IS_MEASURED, told};

use crate::{
    note::{Note, Status},
    preparations::{PlantState, Preparation, Solvent, Verdict},
};

/// What is judged.
#[derive(Debug, Clone, Copy)]
pub struct Prospect<'a> {
    /// The liquid at the end; none where there is none but oil.
    pub liquid: Option<&'a Liquid>,
    /// Acidity of the weakest vinegar poured, g per 100 mL.
    pub vinegar_acidity_g_per_100ml: Option<f64>,
    /// Water in the herb, % of its weight; for several herbs the dampest.
    pub herb_water_percent: Option<Interval>,
    /// Where the pH lies by a strip or a meter; none where nobody measured it.
    pub measured_ph: Option<Interval>,
    /// Fresh if any herb is, else cooked if any is.
    pub state: PlantState,
}

/// A limit the liquid was held against.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "GateLine"))]
pub struct Gate {
    /// What was judged.
    pub gate: Message,
    /// The limit above (or below) which it keeps on the shelf.
    pub limit: f64,
    /// The predicted figure.
    pub predicted: Interval,
    /// The unit of both, as a sign of every language.
    pub unit: &'static str,
    /// How far the bad end is on the right side of the limit; negative on the wrong side.
    pub margin: f64,
    /// Whether this gate decided.
    pub decided: bool,
    /// What the limit rests on.
    pub source: Option<String>,
    /// How sure the limit is.
    pub status: Status,
}

/// The verdict with everything that led to it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Keeping {
    /// The verdict.
    pub verdict: Verdict,
    /// One finished sentence.
    pub text: Message,
    /// The gates.
    pub gates: Vec<Gate>,
    /// Whether it must never be swallowed, however well it keeps.
    pub outside_only: bool,
}

impl Keeping {
    /// The gate that decided.
    pub fn decided_by(&self) -> Option<&Gate> {
        self.gates.iter().find(|gate| gate.decided)
    }

    /// The same liquid where it must not be made, with a whole sentence that says why.
    pub(crate) fn refused(self, why: Message) -> Self {
        Self {
            verdict: Verdict::DoNotMake,
            text: say!("do-not-make", why),
            ..self
        }
    }
}

/// Judges a liquid by the gates of its preparation.
///
/// The worst gate decides; a preparation may be capped by its kind. More water in the liquid or the herb never
/// improves the verdict, and absolute alcohol, pure glycerin or sugar that dissolves never worsens it, except where
/// they thin an acid: every gate is monotone in them.
pub fn judge(preparation: &Preparation, prospect: &Prospect<'_>) -> Keeping {
    let judged: Vec<_> = preparation
        .gates
        .iter()
        .filter_map(|key| gate::row(key))
        .filter_map(|row| Some((row, row.predict(prospect)?)))
        .map(|(row, predicted)| (row, predicted, row.verdict(predicted)))
        .collect();
    let verdicts = judged.iter().map(|(_, _, verdict)| *verdict);
    // A gate that cannot be predicted cannot be passed.
    let by_gates = verdicts.max().unwrap_or(Verdict::UseNow);
    let cap = match prospect.state {
        PlantState::Fresh | PlantState::Cooked => preparation.best_fresh.or(preparation.best),
        PlantState::Dried => preparation.best,
    };
    let verdict = cap.map_or(by_gates, |cap| cap.max(by_gates));

    let capped = verdict > by_gates;
    let share = |(row, predicted, _): &(&gate::Row, Interval, Verdict)| {
        let margin = row.margin(*predicted);
        if row.is_of_the_shop() && margin >= 0.0 {
            f64::INFINITY
        } else {
            margin / row.keeps.abs()
        }
    };
    let decider = judged
        .iter()
        .enumerate()
        .filter(|(_, (_, _, gate))| *gate == by_gates && !capped)
        .min_by(|(_, a), (_, b)| share(a).total_cmp(&share(b)))
        .map(|(at, _)| at);
    let gates: Vec<Gate> = judged
        .iter()
        .enumerate()
        .map(|(at, (row, predicted, _))| row.gate(*predicted, prospect, Some(at) == decider))
        .collect();
    let why = match decider {
        _ if capped && loads_acid(preparation, prospect.state) => say!("keep-loaded-acid"),
        _ if capped => say!("keep-by-its-kind"),
        Some(at) => judged[at].0.reason(judged[at].1, prospect),
        None => say!("keep-by-nothing"),
    };
    let text = match verdict {
        Verdict::Keeps => say!("keeping-keeps", why),
        Verdict::KeepsCold => say!("keeping-keeps-cold", why),
        Verdict::UseNow => say!("keeping-use-now", why),
        Verdict::DoNotMake => say!("keeping-do-not-make", why),
    };
    Keeping {
        verdict,
        text,
        gates,
        outside_only: false,
    }
}

/// Whether much fresh plant may have left the acid too weak, so that only a strip tells.
fn loads_acid(preparation: &Preparation, state: PlantState) -> bool {
    preparation.is_kept_by_acid() && state != PlantState::Dried
}

/// What should be said of a liquid beside its verdict.
pub fn remarks(preparation: &Preparation, liquid: &Liquid, verdict: Verdict) -> Vec<Note> {
    let thin = liquid.glycerol_percent_mass.low < GLYCERITE_SHOWN_FROM;
    if preparation.grade == Solvent::Glycerite && thin && verdict == Verdict::Keeps {
        let text = say!("glycerite-below-70");
        return vec![Note::new("glycerite-cold", text, "", Status::Memory)];
    }
    Vec::new()
}

/// Below this share of glycerol, % by mass, nobody has shown that a glycerite keeps: a remark, no gate.
const GLYCERITE_SHOWN_FROM: f64 = 70.0;

#[cfg(test)]
mod tests;
