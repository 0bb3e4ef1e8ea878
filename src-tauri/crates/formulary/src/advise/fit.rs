//! How well a liquid takes up what a herb holds.

use message::{Argument, Message, Unit, say};
use physics::Interval;

use super::weights;
use crate::{
    compose::{self, Draft, PlantLine},
    constituents::{Class, Grade},
    herbs::Herb,
    note::{Reason, Speaks, Status},
    preparations::{Preparation, Solvent},
};

/// How well the liquid takes up what the herb holds, 0 to 1, with the reasons.
pub(super) fn fit(
    preparation: &Preparation,
    plant: &PlantLine,
    draft: &Draft,
) -> (f64, Vec<Reason>) {
    let Some(herb) = plant.known.filter(|herb| herb.is_described()) else {
        return (weights::UNKNOWN_FIT, Vec::new());
    };
    if preparation.grade == Solvent::Ethanol {
        return fit_of_spirit(herb, plant, draft);
    }
    let (grade, status) = match herb.grade_in(preparation.grade) {
        Some(grade) => (grade, Status::Memory),
        None => return (weights::UNKNOWN_FIT, Vec::new()),
    };
    let speaks = if grade >= Grade::Fair {
        Speaks::For
    } else {
        Speaks::Against
    };
    let text = say!(
        "takes-up",
        liquid = liquid(preparation.grade),
        share = grade.how_much(),
        herb = plant.name()
    );
    (grade.score(), vec![Reason::new(speaks, text, "", status)])
}

/// The liquid of a preparation inside a sentence.
pub(super) fn liquid(solvent: Solvent) -> Message {
    match solvent {
        Solvent::Ethanol => say!("ingredient-spirit"),
        Solvent::Glycerite => say!("ingredient-glycerin"),
        Solvent::Oil => say!("ingredient-oil"),
        Solvent::Vinegar => say!("ingredient-vinegar"),
        Solvent::Wine => say!("ingredient-wine"),
        Solvent::Water => say!("ingredient-water"),
    }
}

fn fit_of_spirit(herb: &Herb, plant: &PlantLine, draft: &Draft) -> (f64, Vec<Reason>) {
    let strength = draft.liquid.strength_percent_vol;
    let mut reasons = Vec::new();
    let classes = herb.classes();
    let mut score = if classes.is_empty() {
        weights::UNKNOWN_FIT
    } else {
        mean(&classes, strength.value)
    };
    let Interval { low, value, high } = strength;
    let at = Argument::range(low, value, high, Unit::PercentVol);
    let published = compose::published(plant, draft.controls.ratio_ml_per_g.value);
    if let Some(published) = published {
        let (low, high) = published.percent_vol;
        let away = (low - strength.value).max(strength.value - high).max(0.0);
        let meets = (1.0 - away / weights::FURTHEST).max(0.0);
        score = (1.0 - weights::PUBLISHED) * score + weights::PUBLISHED * meets;
        let (ends, published_) = (at, published.in_words());
        let (herb, form) = (plant.name(), published.of.in_words());
        let (speaks, text) = if away <= weights::MET {
            let text = say!("strength-meets", ends, published = published_, herb, form);
            (Speaks::For, text)
        } else {
            let text = say!("strength-misses", ends, published = published_, herb, form);
            (Speaks::Against, text)
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
        let text = say!(
            "spirit-takes-up",
            strength = at,
            share = grade.how_much(),
            class = first.name(),
            herb = plant.name()
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
