//! What a bottle holds of everything, what it cost, and how it is kept.

use formulary::arithmetic;
use formulary::{Note, Status};
use journal::Jar;
use message::{Failure, Message, say};
use physics::Interval;
use serde::Serialize;
use store::Reading;

use crate::jar::cost::Cost;
use crate::jar::equivalent::DriedEquivalent;
use crate::jar::judged::Judged;

/// The trade's small sums about a bottle. No dose is among them.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BottleSums {
    /// Dried herb (of fresh herb: dry matter) that a millilitre stands for, by what was poured.
    pub dried_equivalent_g_per_ml: Option<Interval>,
    /// The same with the water that the plants brought counted in.
    pub dried_equivalent_with_plant_water_g_per_ml: Option<Interval>,
    pub ethanol_g_per_ml: Interval,
    pub ethanol_g_bottle: Interval,
    pub drops_per_ml: Option<Interval>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    pub notes: Vec<Note>,
}

pub fn came_out(strainings: &[(journal::StrainingId, journal::Straining)]) -> f64 {
    strainings.iter().map(|(_, it)| it.came_out_ml).sum()
}

fn note(code: &str, text: Message, source: &str, status: Status) -> Note {
    Note {
        code: code.to_owned(),
        text,
        source: Some(source.to_owned()).filter(|source| !source.is_empty()),
        status,
    }
}

pub fn storage(judged: &Judged) -> Vec<Note> {
    let known = judged.preparation;
    let text = known.storage(judged.poured.keeping.verdict);
    let ends = known.ended_by().map(|ends| ("ends", ends));
    std::iter::once(("storage", text))
        .chain(ends)
        .map(|(code, text)| note(code, text, "", Status::Practice))
        .collect()
}

/// What shows that it went bad; never for what cannot show it.
pub fn signs(judged: &Judged, best_before: Option<chrono::NaiveDate>) -> Vec<Note> {
    if judged.only_the_date_counts {
        let text = match best_before {
            Some(day) => say!("only-the-date", day),
            None => say!("only-its-date"),
        };
        let source = judged
            .preparation
            .use_within_days
            .as_ref()
            .map_or("", |days| days.source.as_str());
        return vec![note("only-the-date", text, source, Status::Confirmed)];
    }
    let signs = judged.preparation.spoilage().into_iter();
    signs
        .map(|text| note("spoilage", text, "", Status::Practice))
        .collect()
}

/// The trade's sums: what a millilitre stands for, the alcohol in it, what it cost.
pub fn sums(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
    size_ml: f64,
    came_out_ml: f64,
) -> Result<BottleSums, Failure> {
    let liquid = &judged.poured.liquid;
    let equivalent = DriedEquivalent::of(jar, judged)?;
    let share = if came_out_ml > 0.0 {
        size_ml / came_out_ml
    } else {
        0.0
    };
    let Cost {
        amount: cost,
        currency,
        mut notes,
    } = Cost::of(reading, jar)?.of_share(share);
    let droppers = reading.droppers()?;
    let dropper = droppers
        .iter()
        .find(|(_, dropper)| dropper.liquid.as_deref() == Some(jar.name.as_str()));
    let drops_per_ml = dropper
        .map(|(_, dropper)| arithmetic::drops_per_ml(&dropper.drops_in_1_ml))
        .transpose()?;
    if drops_per_ml.is_none() {
        let text = say!("drops-differ");
        notes.push(note("drops", text, "Eschbaum 1895", Status::Confirmed));
    }
    let per_ml = liquid.ethanol_g_per_ml;
    Ok(BottleSums {
        dried_equivalent_g_per_ml: equivalent.map(|it| it.alone_g_per_ml),
        dried_equivalent_with_plant_water_g_per_ml: equivalent
            .map(|it| it.with_plant_water_g_per_ml),
        ethanol_g_per_ml: per_ml,
        ethanol_g_bottle: per_ml.map_monotone(|g| g * size_ml),
        drops_per_ml,
        cost,
        currency,
        notes,
    })
}
