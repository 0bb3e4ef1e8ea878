//! What can be moved: the ratio, the strength, the glycerin, the alcohol for keeping.

use message::{Argument, Message, Refusal, Unit, say};
use physics::error::within;
use serde::Serialize;

use super::{
    Composition, PlantLine,
    pours::Poured,
    usual::{self, round_to},
};
use crate::{
    note::{Note, Status},
    preparations::{Aim, Preparation, Range},
};

/// A figure that can be moved.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
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
    pub because: Message,
    /// How sure that is.
    pub status: Status,
}

/// The figures that can be moved in a preparation.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
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
    let within = |field, value: Option<f64>, what, (low, high), unit| match value {
        Some(value) => within(what, value, low, high, unit)
            .map(Some)
            .map_err(|out| Refusal::new(field, out.message())),
        None => Ok(None),
    };
    let ratio = within(
        "ratio_ml_per_g",
        composition.ratio_ml_per_g,
        say!("what-ratio"),
        (0.5, 50.0),
        Unit::MillilitrePerGram,
    )?
    .unwrap_or(usual_ratio.usual);
    let asked = within(
        "strength_percent_vol",
        composition.strength_percent_vol,
        say!("what-strength-in-jar"),
        (0.0, 96.5),
        Unit::PercentVol,
    )?;
    let usual_strength =
        (preparation.aim == Aim::Strength).then(|| usual::strength(preparation, plants, ratio));
    let usual_glycerin = usual::glycerin(preparation, plants);
    let glycerin = within(
        "glycerin_percent_vol",
        composition.glycerin_percent_vol,
        say!("what-glycerin-share"),
        (0.0, 100.0),
        Unit::Percent,
    )?;
    let fortify = within(
        "fortify_percent_vol",
        composition.fortify_percent_vol,
        say!("what-alcohol-for-keeping"),
        (0.0, 40.0),
        Unit::PercentVol,
    )?;
    let preparation_name = || preparation.name();
    let takes_strength = matches!(preparation.aim, Aim::Strength | Aim::Strongest);
    if asked.is_some() && !takes_strength {
        let text = say!("takes-no-strength", preparation = preparation_name());
        return Err(Refusal::new("strength_percent_vol", text));
    }
    if glycerin.is_some() && preparation.aim != Aim::Glycerin {
        let text = say!("takes-no-glycerin", preparation = preparation_name());
        return Err(Refusal::new("glycerin_percent_vol", text));
    }
    if fortify.is_some() && preparation.fortify.is_none() {
        let text = say!("takes-no-fortify", preparation = preparation_name());
        return Err(Refusal::new("fortify_percent_vol", text));
    }
    let mut reasons = vec![Note::new(
        "ratio",
        say!(
            "ratio-usual",
            ratio = Argument::exact(usual_ratio.usual, Unit::None)
        ),
        &usual_ratio.source,
        usual_ratio.status,
    )];
    if let Some((_, note)) = &usual_strength {
        reasons.push(note.clone());
    }
    if let Some(range) = &usual_glycerin {
        let text = say!("glycerin-usual", parts = Argument::number(range.usual));
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
                    say!("strongest-spirit"),
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
            because: because(&range.source, say!("glycerin-by-practice")),
            status: range.status,
        });
    let fortify = preparation.fortify.as_ref().map(|range| Control {
        value: wishes.fortify,
        low: range.low,
        high: range.high.max(wishes.fortify),
        step: 1.0,
        usual: range.usual,
        because: because(&range.source, say!("fortify-by-practice")),
        status: range.status,
    });
    Ok(Controls {
        ratio_ml_per_g: Control {
            value: wishes.ratio,
            low: ratio.low.min(wishes.ratio),
            high: ratio.high.max(wishes.ratio),
            step: 0.1,
            usual: ratio.usual,
            because: because(&ratio.source, say!("ratio-by-practice")),
            status: ratio.status,
        },
        strength_percent_vol: strength,
        glycerin_percent_vol: glycerin,
        fortify_percent_vol: fortify,
    })
}

/// The source as it is cited, else that there is none but practice.
fn because(source: &str, otherwise: Message) -> Message {
    match source {
        "" | "source-practice" => otherwise,
        ours if ours.starts_with("source-") => Message::of_table(ours.to_owned()),
        source => Message::own(source),
    }
}
