//! What can be moved: the ratio, the strength, the glycerin, the alcohol for keeping.

use serde::Serialize;

use super::{Composition, PlantLine, Refusal, pours::Poured};
use crate::{
    constituents,
    note::{Note, Status},
    preparations::{Aim, PlantState, Preparation, Range, Solvent},
    words,
};

/// A figure that can be moved.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Control {
    /// Where it stands.
    pub value: f64,
    /// How low it goes.
    pub low: f64,
    /// How high it goes.
    pub high: f64,
    /// The step of a slider.
    pub step: f64,
    /// What is usual.
    pub usual: f64,
    /// Why that is usual.
    pub because: String,
    /// How sure that is.
    pub status: Status,
}

/// The figures that can be moved in a preparation.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Controls {
    /// mL to a gram of herb.
    pub ratio_ml_per_g: Control,
    /// Strength in the jar at the end, % vol.
    pub strength_percent_vol: Option<Control>,
    /// Glycerin in what is poured, % by volume.
    pub glycerin_percent_vol: Option<Control>,
    /// Alcohol added for keeping, % vol at the end.
    pub fortify_percent_vol: Option<Control>,
}

/// Where the figures stand, with the usual ones and their reasons.
#[derive(Debug, Clone)]
pub(super) struct Wishes {
    pub(super) ratio: f64,
    pub(super) strength: Option<f64>,
    pub(super) glycerin: Option<f64>,
    pub(super) fortify: f64,
    usual_ratio: Range,
    usual_strength: Option<(f64, Note)>,
    usual_glycerin: Option<Range>,
    pub(super) reasons: Vec<Note>,
}

pub(super) fn wishes(
    preparation: &Preparation,
    composition: &Composition,
    plants: &[PlantLine],
) -> Result<Wishes, Refusal> {
    let usual_ratio = usual_ratio(preparation, plants);
    let ratio = within(
        "ratio_ml_per_g",
        "The ratio",
        composition.ratio_ml_per_g,
        0.5,
        50.0,
        "mL to a gram",
    )?
    .unwrap_or(usual_ratio.usual);
    let asked = within(
        "strength_percent_vol",
        "The strength in the jar",
        composition.strength_percent_vol,
        0.0,
        96.5,
        "% vol",
    )?;
    let usual_strength =
        (preparation.aim == Aim::Strength).then(|| usual_strength(preparation, plants));
    let usual_glycerin = usual_glycerin(preparation, plants);
    let glycerin = within(
        "glycerin_percent_vol",
        "The glycerin",
        composition.glycerin_percent_vol,
        0.0,
        100.0,
        "% of what is poured",
    )?;
    let fortify = within(
        "fortify_percent_vol",
        "The alcohol for keeping",
        composition.fortify_percent_vol,
        0.0,
        40.0,
        "% vol",
    )?;
    for (given, takes, field, what) in [
        (
            asked,
            matches!(preparation.aim, Aim::Strength | Aim::Strongest),
            "strength_percent_vol",
            "a strength",
        ),
        (
            glycerin,
            preparation.aim == Aim::Glycerin,
            "glycerin_percent_vol",
            "a share of glycerin",
        ),
        (
            fortify,
            preparation.fortify.is_some(),
            "fortify_percent_vol",
            "alcohol for keeping",
        ),
    ] {
        if given.is_some() && !takes {
            return Err(Refusal::new(
                field,
                format!("{} is not made to {what}; leave it out.", preparation.name),
            ));
        }
    }
    let mut reasons = vec![Note::new(
        "ratio",
        format!(
            "{} mL to a gram is usual.",
            words::number(usual_ratio.usual, 1)
        ),
        &usual_ratio.source,
        usual_ratio.status,
    )];
    if let Some((_, note)) = &usual_strength {
        reasons.push(note.clone());
    }
    if let Some(range) = &usual_glycerin {
        let text = format!(
            "{} parts glycerin in 100 poured are usual.",
            words::number(range.usual, 0)
        );
        reasons.push(Note::new(
            "glycerin-share",
            text,
            &range.source,
            range.status,
        ));
    }
    Ok(Wishes {
        ratio,
        strength: asked.or(usual_strength.as_ref().map(|(strength, _)| *strength)),
        glycerin: glycerin.or(usual_glycerin.as_ref().map(|range| range.usual)),
        fortify: fortify
            .or(preparation.fortify.as_ref().map(|range| range.usual))
            .unwrap_or(0.0),
        usual_ratio,
        usual_strength,
        usual_glycerin,
        reasons,
    })
}

pub(super) fn controls(
    preparation: &Preparation,
    composition: &Composition,
    plants: &[PlantLine],
    wishes: &Wishes,
    poured: &Poured,
) -> Result<Controls, Refusal> {
    let ratio = &wishes.usual_ratio;
    let strength = match (preparation.strength, preparation.aim) {
        (Some(ends), Aim::Strength | Aim::Strongest) => {
            let most = poured.strongest(preparation, composition, plants, wishes)?;
            let value = wishes
                .strength
                .unwrap_or(poured.liquid.strength_percent_vol.value);
            let (usual, because, status) = match &wishes.usual_strength {
                Some((usual, note)) => (*usual, note.text.clone(), note.status),
                None => (
                    round_to(most, 0.5),
                    "The strongest spirit at hand, undiluted.".to_owned(),
                    Status::Computed,
                ),
            };
            let high = round_to(most, 0.5).max(value);
            Some(Control {
                value,
                low: ends.low.min(value).min(high),
                high,
                step: 0.5,
                usual,
                because,
                status,
            })
        }
        _ => None,
    };
    let glycerin = wishes
        .usual_glycerin
        .as_ref()
        .zip(wishes.glycerin)
        .map(|(range, value)| Control {
            value,
            low: range.low.min(value),
            high: range.high.max(value),
            step: 1.0,
            usual: range.usual,
            because: because(&range.source, "Usual share of what is poured"),
            status: range.status,
        });
    let fortify = preparation.fortify.as_ref().map(|range| Control {
        value: wishes.fortify,
        low: range.low,
        high: range.high.max(wishes.fortify),
        step: 1.0,
        usual: range.usual,
        because: because(&range.source, "Alcohol against moulds"),
        status: range.status,
    });
    Ok(Controls {
        ratio_ml_per_g: Control {
            value: wishes.ratio,
            low: ratio.low.min(wishes.ratio),
            high: ratio.high.max(wishes.ratio),
            step: 0.1,
            usual: ratio.usual,
            because: because(&ratio.source, "Usual ratio"),
            status: ratio.status,
        },
        strength_percent_vol: strength,
        glycerin_percent_vol: glycerin,
        fortify_percent_vol: fortify,
    })
}

fn because(source: &str, otherwise: &str) -> String {
    let text = if source.is_empty() {
        format!("{otherwise}, common practice, no source")
    } else {
        source.to_owned()
    };
    crate::preparations::sentence(&text)
}

fn within(
    field: &'static str,
    what: &str,
    value: Option<f64>,
    low: f64,
    high: f64,
    unit: &str,
) -> Result<Option<f64>, Refusal> {
    match value {
        Some(value) if !value.is_finite() || !(low..=high).contains(&value) => Err(Refusal::new(
            field,
            format!("{what} must be between {low} and {high} {unit}; {value} is not."),
        )),
        value => Ok(value),
    }
}

/// The range by state, weighed by mass where the states are mixed; a published ratio of the one dried herb comes first.
fn usual_ratio(preparation: &Preparation, plants: &[PlantLine]) -> Range {
    let published = match plants {
        [one]
            if one.state == PlantState::Dried
                && preparation.grade == Solvent::Ethanol
                && preparation.aim == Aim::Strength =>
        {
            one.known.and_then(|herb| herb.tincture())
        }
        _ => None,
    };
    let by_state = |state| {
        preparation
            .ratio(state)
            .or(preparation.ratio_fresh.as_ref())
            .or(preparation.ratio_dried.as_ref())
    };
    if let Some((tincture, own)) = published.zip(by_state(PlantState::Dried))
        && let Some((low, usual, high)) = tincture.dried_ratio_ml_per_g
        && preparation.wants.is_empty()
    {
        return Range {
            low: low.min(own.low),
            usual,
            high: high.max(own.high),
            source: tincture.source.to_owned(),
            status: tincture.status,
        };
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
fn usual_glycerin(preparation: &Preparation, plants: &[PlantLine]) -> Option<Range> {
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
fn usual_strength(preparation: &Preparation, plants: &[PlantLine]) -> (f64, Note) {
    let wants: Vec<(f64, f64, Note)> = plants
        .iter()
        .map(|plant| {
            let (strength, note) = wanted_by(plant);
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
        [] => Note::new("strength", GENERAL_TEXT, "", Status::Practice),
        several => {
            let status = several
                .iter()
                .fold(Status::Confirmed, |status, (_, _, note)| {
                    status.weaker(note.status)
                });
            Note::new(
                "strength",
                format!(
                    "{usual:.0} % vol lies between what the herbs want, counted by their dry weight."
                ),
                "",
                status,
            )
        }
    };
    if (usual - mean).abs() > 2.5 {
        note.text = format!(
            "{} It is held to {usual:.0} % vol, the range of this preparation.",
            note.text
        );
    }
    (usual, note)
}

const GENERAL_STRENGTH: f64 = 45.0;
const GENERAL_TEXT: &str =
    "45 % vol is the middle of the trade's ladder; nothing was found for this herb.";

/// The strength a herb wants with the reason: a published range, inside it the best for its classes.
pub(crate) fn wanted_by(plant: &PlantLine) -> (f64, Note) {
    let Some(herb) = plant.known else {
        return (
            GENERAL_STRENGTH,
            Note::new("strength", GENERAL_TEXT, "", Status::Practice),
        );
    };
    let by_class = constituents::strength_for(&herb.class_keys());
    let published = herb
        .tincture()
        .and_then(|tincture| Some((tincture.strength_percent_vol?, tincture)));
    match (published, by_class) {
        (Some(((low, high), tincture)), by_class) => {
            let strength = by_class.map_or((low + high) / 2.0, |(best, _)| best.clamp(low, high));
            let range = if low == high {
                format!("{low} % vol")
            } else {
                format!("{low} to {high} % vol")
            };
            let known = match tincture.status {
                Status::Confirmed => "is published",
                Status::PartlyConfirmed => "is published in part",
                _ => "is remembered, not checked,",
            };
            let text = format!("{range} {known} for {}.", words::herb(&herb.common));
            (
                strength,
                Note::new("strength", text, tincture.source, tincture.status),
            )
        }
        (None, Some((best, note))) => (
            best,
            Note {
                text: format!("{}.", note.text),
                code: "strength".to_owned(),
                ..note
            },
        ),
        (None, None) => (
            GENERAL_STRENGTH,
            Note::new("strength", GENERAL_TEXT, "", Status::Practice),
        ),
    }
}

pub(crate) fn round_to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}
