//! How well a liquid takes up what a herb holds.

use message::{Argument, Message, Unit};

use crate::{
    compose::{self, Draft, PlantLine},
    constituents::{Class, Grade},
    herbs::Herb,
    note::{Reason, Speaks, Status},
    preparations::{Preparation, Solvent},
    words,
};

/// How well the liquid takes up what the herb holds, 0 to 1, with the reasons.
pub(super) fn fit(
    preparation: &Preparation,
    plant: &PlantLine,
    draft: &Draft,
) -> (f64, Vec<Reason>) {
    let Some(herb) = plant.known.filter(|herb| herb.is_described()) else {
        return (0.5, Vec::new());
    };
    if preparation.grade == Solvent::Ethanol {
        return fit_of_spirit(herb, plant, draft);
    }
    let (grade, status) = match herb.grade_in(preparation.grade) {
        Some(grade) => (grade, Status::Memory),
        None => return (0.5, Vec::new()),
    };
    let liquid = preparation.grade.name();
    let speaks = if grade >= Grade::Fair {
        Speaks::For
    } else {
        Speaks::Against
    };
    let text = format!(
        "{liquid} takes up {} of what {} holds.",
        grade.how_much(),
        words::herb(&herb.common)
    );
    (grade.score(), vec![Reason::new(speaks, text, "", status)])
}

fn fit_of_spirit(herb: &Herb, plant: &PlantLine, draft: &Draft) -> (f64, Vec<Reason>) {
    let strength = draft.liquid.strength_percent_vol;
    let mut reasons = Vec::new();
    let classes = herb.classes();
    let mut score = if classes.is_empty() {
        0.5
    } else {
        mean(&classes, strength.value)
    };
    let at = words::interval(strength, "% vol");
    let published = compose::published(plant, draft.controls.ratio_ml_per_g.value);
    if let Some(published) = published {
        let (low, high) = published.percent_vol;
        let away = (low - strength.value).max(strength.value - high).max(0.0);
        score = 0.5 * score + 0.5 * (1.0 - away / 25.0).max(0.0);
        let ends = Argument::range(
            strength.low,
            strength.value,
            strength.high,
            Unit::PercentVol,
        );
        let (speaks, text) = if away <= 2.0 {
            (
                Speaks::For,
                Message::new("strength-meets")
                    .with("ends", ends)
                    .with("published", Argument::message(published.in_words()))
                    .with("herb", Argument::herb(&herb.common))
                    .with("form", Argument::message(published.of.in_words())),
            )
        } else {
            (
                Speaks::Against,
                Message::new("strength-misses")
                    .with("ends", ends)
                    .with("published", Argument::message(published.in_words()))
                    .with("herb", Argument::herb(&herb.common))
                    .with("form", Argument::message(published.of.in_words())),
            )
        };
        reasons.push(Reason::new(
            speaks,
            text,
            &published.source,
            published.status,
        ));
    } else if let Some(first) = classes.first() {
        let grade = first.in_spirit(strength.value);
        let speaks = if grade >= Grade::Fair {
            Speaks::For
        } else {
            Speaks::Against
        };
        let text = format!(
            "At {at} it takes up {} of the {} of {}.",
            grade.how_much(),
            first.name.to_lowercase(),
            words::herb(&herb.common)
        );
        reasons.push(Reason::new(speaks, text, "", Status::Practice));
    }
    (score, reasons)
}

fn mean(classes: &[&Class], strength: f64) -> f64 {
    classes
        .iter()
        .map(|class| class.in_spirit(strength).score())
        .sum::<f64>()
        / classes.len() as f64
}
