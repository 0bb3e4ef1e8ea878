//! Whether herb and liquid fit the jar.

use message::{Argument, Refusal, Unit, say};
use physics::{Interval, error::within, mixture::IngredientKind};
use serde::Serialize;

use super::Draft;
use crate::note::{Note, Status};

/// Share of the jar left empty at the top (practice, no source).
const HEADSPACE: f64 = 0.10;

/// What a gram of dry herb takes up under the liquid, mL (an assumption: fill a jar with water to learn it).
const DISPLACEMENT: Interval = Interval {
    low: 0.8,
    value: 0.9,
    high: 1.0,
};

/// What the jar must hold.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "JarRoom"))]
pub struct Room {
    /// Size of the jar that is needed, mL.
    pub needed_ml: Interval,
    /// Size of the jar there is, mL.
    pub jar_ml: Option<f64>,
    /// Whether it fits.
    pub fits: Option<bool>,
    /// The most herb that fits this jar in this recipe, g.
    pub largest_mass_g: Option<f64>,
}

/// `needed = (V + m d) / (1 - h)`: the liquid with the plant's water, what the dry matter displaces, a head of air.
pub(crate) fn room(draft: &Draft, jar_ml: Option<f64>) -> Result<Room, Refusal> {
    if let Some(jar) = jar_ml {
        within(
            say!("what-size-of-the-jar"),
            jar,
            1.0,
            1e6,
            Unit::Millilitre,
        )
        .map_err(|out| Refusal::new("jar_ml", out.message()))?;
    }
    let dry = draft
        .plants
        .iter()
        .map(|plant| plant.dry_matter_g().value)
        .sum::<f64>();
    let herb_g = draft.plants.iter().map(|plant| plant.mass_g).sum::<f64>();
    let oil = draft
        .pours
        .iter()
        .filter(|pour| pour.kind == IngredientKind::Oil)
        .map(|pour| pour.ml)
        .sum::<f64>();
    let water = herb_g - dry;
    let wet = |end: fn(&Interval) -> f64| {
        if oil > 0.0 {
            oil + water
        } else {
            end(&draft.liquid.volume_ml)
        }
    };
    let jar_of = |volume: f64, displaced: f64| (volume + dry * displaced) / (1.0 - HEADSPACE);
    let needed_ml = Interval {
        low: jar_of(wet(|v| v.low), DISPLACEMENT.low),
        value: jar_of(wet(|v| v.value), DISPLACEMENT.value),
        high: jar_of(wet(|v| v.high), DISPLACEMENT.high),
    };
    let Some(jar) = jar_ml else {
        return Ok(Room {
            needed_ml,
            jar_ml,
            fits: None,
            largest_mass_g: None,
        });
    };
    let largest = herb_g * jar / needed_ml.value;
    if herb_g > 0.0 && dry * DISPLACEMENT.low + water >= jar {
        let text = say!(
            "jar-too-small",
            jar = Argument::millilitres(jar),
            herb = Argument::grams(largest)
        );
        return Err(Refusal::new("jar_ml", text));
    }
    let largest_mass_g = (herb_g > 0.0).then_some(largest);
    Ok(Room {
        needed_ml,
        jar_ml,
        fits: Some(needed_ml.value <= jar * (1.0 + 1e-9)),
        largest_mass_g,
    })
}

pub(super) fn assumption() -> Note {
    Note::new("jar-room", say!("jar-room-assumed"), "", Status::Proposal)
}
