//! What is usual for these herbs in this preparation: published first, the state and the classes second.

use message::{Argument, say};

use super::PlantLine;
use crate::{
    constituents,
    herbs::Strength,
    note::{Note, Status},
    preparations::{Aim, PlantState, Preparation, Range, Solvent},
};

/// The range by state, weighed by mass where the states are mixed; a published ratio of the one dried herb comes first.
pub(super) fn ratio(preparation: &Preparation, plants: &[PlantLine]) -> Range {
    let published = match plants {
        [one]
            if one.state == PlantState::Dried
                && preparation.grade == Solvent::Ethanol
                && preparation.aim == Aim::Strength
                && preparation.wants.is_empty() =>
        {
            one.known.and_then(|herb| herb.dried_ratio(&one.part))
        }
        _ => None,
    };
    let by_state = |state| {
        preparation
            .ratio(state)
            .or(preparation.ratio_fresh.as_ref())
            .or(preparation.ratio_dried.as_ref())
    };
    if let Some((published, own)) = published.zip(by_state(PlantState::Dried)) {
        return Range {
            low: published.low.min(own.low),
            usual: published.usual,
            high: published.high.max(own.high),
            source: published.source,
            status: published.status,
        };
    }
    let cooked = plants.iter().any(|plant| plant.state == PlantState::Cooked);
    if let Some(range) = by_state(PlantState::Cooked).filter(|_| cooked) {
        return range.clone();
    }
    let share = fresh_share(plants);
    let state = if share > 0.0 {
        PlantState::Fresh
    } else {
        PlantState::Dried
    };
    match (by_state(PlantState::Fresh), by_state(PlantState::Dried)) {
        (Some(wet), Some(dry)) if share > 0.0 && share < 1.0 => Range {
            low: wet.low.min(dry.low),
            usual: round_to(share * wet.usual + (1.0 - share) * dry.usual, 0.1),
            high: wet.high.max(dry.high),
            source: wet.source.clone(),
            status: wet.status.weaker(dry.status),
        },
        _ => by_state(state).cloned().unwrap_or(Range {
            low: 1.0,
            usual: 1.0,
            high: 1.0,
            source: String::new(),
            status: Status::Practice,
        }),
    }
}

/// The share by state; where the states are mixed, in proportion to their mass.
pub(super) fn glycerin(preparation: &Preparation, plants: &[PlantLine]) -> Option<Range> {
    let share = fresh_share(plants);
    let (wet, dry) = (
        preparation.glycerin(PlantState::Fresh),
        preparation.glycerin(PlantState::Dried),
    );
    match (wet, dry) {
        (Some(wet), Some(dry)) => Some(Range {
            low: wet.low.min(dry.low),
            usual: round_to(share * wet.usual + (1.0 - share) * dry.usual, 1.0),
            high: wet.high.max(dry.high),
            source: if share > 0.0 {
                wet.source.clone()
            } else {
                dry.source.clone()
            },
            status: wet.status.weaker(dry.status),
        }),
        (wet, dry) => wet.or(dry).cloned(),
    }
}

/// The share of the mass that is fresh.
fn fresh_share(plants: &[PlantLine]) -> f64 {
    let total: f64 = plants.iter().map(|plant| plant.mass_g).sum();
    let fresh = plants
        .iter()
        .filter(|plant| plant.state == PlantState::Fresh);
    let fresh: f64 = fresh.map(|plant| plant.mass_g).sum();
    if total > 0.0 { fresh / total } else { 0.0 }
}

/// The strength the herbs want: published first, the classes second; several herbs by their dry mass.
pub(super) fn strength(
    preparation: &Preparation,
    plants: &[PlantLine],
    ratio_ml_per_g: f64,
) -> (f64, Note) {
    let wants: Vec<(f64, f64, Note)> = plants
        .iter()
        .map(|plant| {
            let (strength, note) = wanted_by(plant, ratio_ml_per_g);
            (plant.dry_matter_g().value, strength, note)
        })
        .collect();
    let total: f64 = wants.iter().map(|(mass, ..)| mass).sum();
    let mean = if total > 0.0 {
        wants
            .iter()
            .map(|(mass, strength, _)| mass * strength)
            .sum::<f64>()
            / total
    } else {
        GENERAL_STRENGTH
    };
    let ends = preparation
        .strength
        .map_or((0.0, 95.0), |ends| (ends.low, ends.high));
    let usual = round_to(mean, if wants.len() == 1 { 0.5 } else { 5.0 }).clamp(ends.0, ends.1);
    let mut note = match wants.as_slice() {
        [(_, _, note)] => note.clone(),
        [] => general(),
        several => {
            let status = several
                .iter()
                .fold(Status::Confirmed, |status, (_, _, note)| {
                    status.weaker(note.status)
                });
            Note::new(
                "strength",
                say!(
                    "strength-between-herbs",
                    strength = Argument::strength(usual)
                ),
                "",
                status,
            )
        }
    };
    if (usual - mean).abs() > 2.5 {
        note.text = say!(
            "strength-held",
            why = note.text.clone(),
            strength = Argument::strength(usual)
        );
    }
    (usual, note)
}

const GENERAL_STRENGTH: f64 = 45.0;

fn general() -> Note {
    Note::new("strength", say!("strength-general"), "", Status::Practice)
}

/// The strength a herb wants with the reason: a published range, inside it the best for its classes.
fn wanted_by(plant: &PlantLine, ratio_ml_per_g: f64) -> (f64, Note) {
    let Some(herb) = plant.known else {
        return plant
            .own
            .strength()
            .unwrap_or((GENERAL_STRENGTH, general()));
    };
    let by_class = constituents::strength_for(&herb.class_keys());
    match (published(plant, ratio_ml_per_g), by_class) {
        (Some(found), by_class) => {
            let (low, high) = found.percent_vol;
            let strength = by_class.map_or((low + high) / 2.0, |(best, _)| best.clamp(low, high));
            let text = say!(
                "strength-published",
                strength = found.in_words(),
                herb = herb.name(),
                form = found.of.in_words()
            );
            (
                strength,
                Note::new("strength", text, &found.source, found.status),
            )
        }
        (None, Some((best, note))) => (
            best,
            Note {
                code: "strength".to_owned(),
                ..note
            },
        ),
        (None, None) => (GENERAL_STRENGTH, general()),
    }
}

/// What is published at the ratio of a jar of dried herb; fresh herb is judged by the usual ratio of the dried.
pub(crate) fn published(plant: &PlantLine, ratio_ml_per_g: f64) -> Option<Strength<'static>> {
    let herb = plant.known?;
    let ratio = match plant.state {
        PlantState::Dried | PlantState::Cooked => ratio_ml_per_g,
        PlantState::Fresh => herb
            .dried_ratio(&plant.part)
            .map_or(USUAL_RATIO, |ratio| ratio.usual),
    };
    herb.strength(&plant.part, ratio)
}

/// The ratio of most tinctures of dried herb, mL to a gram; common practice, no source.
const USUAL_RATIO: f64 = 5.0;

pub(super) fn round_to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}
