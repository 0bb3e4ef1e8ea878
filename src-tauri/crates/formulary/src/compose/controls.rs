//! What can be moved: the ratio, the strength, the glycerin, the alcohol for keeping.

use serde::Serialize;

use super::{
    Composition, PlantLine, Refusal,
    pours::Poured,
    usual::{self, round_to},
};
use crate::{
    note::{Note, Status},
    preparations::{Aim, Preparation, Range, sentence},
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
    let usual_ratio = usual::ratio(preparation, plants);
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
        (preparation.aim == Aim::Strength).then(|| usual::strength(preparation, plants, ratio));
    let usual_glycerin = usual::glycerin(preparation, plants);
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
    sentence(&text)
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
