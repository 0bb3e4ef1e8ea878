//! A jar in a list.

use chrono::{DateTime, FixedOffset};
use formulary::compose::PourLine;
use formulary::preparations::Preparation;
use journal::{Jar, JarState, PlantState, Source, days_since};
use message::{Failure, Message};
use physics::Interval;
use physics::mixture::IngredientKind;
use serde::Serialize;
use store::{JarRow, Reading};

use crate::herb::Known;
use crate::jar::judged::preparation_of;
use crate::jar::proposal::pours;
use crate::told;

/// A jar in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub preparation: String,
    pub preparation_name: Message,
    pub herbs: Vec<Message>,
    pub poured_at: String,
    pub day: u32,
    pub due_from: String,
    pub due_to: String,
    pub state: JarState,
    pub strength_percent_vol: Interval,
    pub glycerol_percent_mass: Interval,
    pub poured_ml: f64,
    pub place: Option<String>,
    pub figures: JarFigures,
}

/// What a picture of a jar is drawn from.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarFigures {
    /// What it holds; none where that was not said.
    pub jar_ml: Option<f64>,
    pub pours: Vec<PouredFigure>,
    pub plants: Vec<PlantFigure>,
    /// Strained liquid that is still in it; none before it is strained.
    pub left_ml: Option<f64>,
}

/// A liquid that was poured.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PouredFigure {
    pub kind: IngredientKind,
    pub ml: f64,
}

/// A plant that was put in, with its water.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PlantFigure {
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Interval,
}

fn figures(reading: &Reading<'_>, row: &JarRow) -> Result<JarFigures, Failure> {
    let jar = &row.jar;
    let left_ml = if row.is_strained {
        Some(reading.left(Source::Jar(row.id))?.get().max(0.0))
    } else {
        None
    };
    Ok(JarFigures {
        jar_ml: jar.jar_ml,
        pours: pours(jar)
            .into_iter()
            .map(|PourLine { kind, ml, .. }| PouredFigure { kind, ml })
            .collect(),
        plants: jar
            .plants
            .iter()
            .map(|plant| PlantFigure {
                part: plant.part.clone(),
                state: plant.state,
                mass_g: plant.mass_g,
                moisture_wet_percent: plant.moisture_wet_percent,
            })
            .collect(),
        left_ml,
    })
}

/// The common names of what is in a jar, each once.
pub fn herbs(reading: &Reading<'_>, jar: &Jar) -> Result<Vec<Message>, Failure> {
    let mut herbs: Vec<Message> = Vec::new();
    for plant in &jar.plants {
        let common = told::title(&Known::written(reading, &plant.herb)?);
        if !herbs.contains(&common) {
            herbs.push(common);
        }
    }
    Ok(herbs)
}

/// A jar in a list.
pub fn card(
    reading: &Reading<'_>,
    row: &JarRow,
    now: DateTime<FixedOffset>,
) -> Result<JarCard, Failure> {
    let jar = &row.jar;
    let herbs = herbs(reading, jar)?;
    let preparation = preparation_of(jar);
    let (due_from, due_to) = jar.due();
    Ok(JarCard {
        id: row.id.to_string(),
        code: jar.code.to_string(),
        name: jar.name.clone(),
        preparation: jar.preparation.clone(),
        preparation_name: preparation
            .map_or_else(|| Message::own(&jar.preparation), Preparation::title),
        herbs,
        poured_at: jar.poured_at.to_rfc3339(),
        day: u32::try_from(days_since(jar.poured_at, now)).unwrap_or_default(),
        due_from: due_from.to_string(),
        due_to: due_to.to_string(),
        state: jar.state(row.is_strained, now.date_naive()),
        strength_percent_vol: jar.strength_percent_vol,
        glycerol_percent_mass: jar.glycerol_percent_mass,
        poured_ml: jar.poured_ml(),
        place: jar.place.clone(),
        figures: figures(reading, row)?,
    })
}
