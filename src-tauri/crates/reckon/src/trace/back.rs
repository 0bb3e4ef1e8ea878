//! From a bottle or a jar back to its beds.

use chrono::{DateTime, FixedOffset};
use formulary::compose::PourLine;
use journal::{JarId, Lot, PlantState};
use message::{Failure, Message};
use serde::Serialize;
use store::{JarRow, Reading};

use crate::bottle::card::BottleCard;
use crate::herb::Known;
use crate::jar::card::{JarCard, card};
use crate::jar::proposal::pours;
use crate::told;

/// A weigh-in of the chain.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainWeighing {
    pub at: String,
    pub gross_g: f64,
}

/// The tray on which a plant dried.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainTray {
    pub id: String,
    pub code: String,
    pub name: String,
    pub started_at: String,
    pub taken_down_at: Option<String>,
    pub weighings: Vec<ChainWeighing>,
}

/// A plant of the jar, back to its bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainPlant {
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub code: Option<String>,
    pub harvest: Option<String>,
    pub bed: Option<String>,
    pub bed_id: Option<String>,
    pub picked_at: Option<String>,
    pub photo: Option<String>,
    pub tray: Option<ChainTray>,
}

/// The chain from a bottle back to its beds.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Chain {
    pub bottle: Option<BottleCard>,
    pub jar: JarCard,
    pub pours: Vec<PourLine>,
    pub plants: Vec<ChainPlant>,
    /// Where the marc comes from, if it was covered a second time.
    pub marc_of: Option<Box<Chain>>,
}

/// The chain from a jar, and a bottle of it, back to its beds.
pub fn chain(
    reading: &Reading<'_>,
    id: &JarId,
    bottle: Option<BottleCard>,
    now: DateTime<FixedOffset>,
) -> Result<Chain, Failure> {
    let row: JarRow = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    let jar = &row.jar;
    let mut plants = Vec::new();
    for plant in &jar.plants {
        plants.push(chained(reading, plant)?);
    }
    let marc_of = match jar.marc_of {
        Some(first) => Some(Box::new(chain(reading, &first, None, now)?)),
        None => None,
    };
    Ok(Chain {
        bottle,
        jar: card(reading, &row, now)?,
        pours: pours(jar),
        plants,
        marc_of,
    })
}

fn chained(reading: &Reading<'_>, plant: &journal::Plant) -> Result<ChainPlant, Failure> {
    let known = Known::written(reading, &plant.herb)?;
    let mut chained = ChainPlant {
        herb: plant.herb.to_string(),
        common: told::title(&known),
        part: plant.part.clone(),
        state: plant.state,
        mass_g: plant.mass_g,
        code: None,
        harvest: None,
        bed: None,
        bed_id: None,
        picked_at: None,
        photo: None,
        tray: None,
    };
    let Some(lot) = plant.lot else {
        return Ok(chained);
    };
    let row = reading.lot(lot)?;
    chained.code = Some(row.harvest.code.to_string());
    chained.harvest = Some(row.harvest_id.to_string());
    chained.bed_id = row.harvest.bed.map(|id| id.to_string());
    chained.bed = row.bed.map(|bed| bed.name);
    chained.picked_at = Some(row.harvest.picked_at.to_rfc3339());
    chained.photo = row.harvest.photos.first().map(ToString::to_string);
    if let (Lot::Tray(id), Some(tray)) = (lot, row.tray) {
        let weighings = reading
            .weighings(&id)?
            .into_iter()
            .map(|(_, it)| ChainWeighing {
                at: it.at.to_rfc3339(),
                gross_g: it.gross_g,
            });
        chained.tray = Some(ChainTray {
            id: id.to_string(),
            taken_down_at: tray.down().map(|end| end.at.to_rfc3339()),
            code: tray.code.to_string(),
            name: tray.name,
            started_at: tray.started_at.to_rfc3339(),
            weighings: weighings.collect(),
        });
    }
    Ok(chained)
}
