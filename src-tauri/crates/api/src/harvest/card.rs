//! A harvest in a list, and how it is told after a write.

use journal::{HarvestId, HarvestState};
use message::{Failure, Message};
use reckon::herb::Known;
use reckon::told;
use serde::Serialize;
use store::{HarvestRow, Reading};

use crate::bed::Bed;
use crate::changed::Changed;
use crate::open::Open;

/// A harvest in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestCard {
    pub id: String,
    pub code: String,
    pub herb: String,
    pub common: Message,
    pub latin: Option<String>,
    pub part: String,
    pub picked_at: String,
    pub fresh_mass_g: f64,
    pub bed: Option<Bed>,
    pub photo: Option<String>,
    pub state: HarvestState,
    pub fresh_left_g: f64,
}

/// A harvest was written. What came of it, and what it will weigh dry, is told by [`ShowHarvest`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub harvest: HarvestCard,
}

/// A harvest in a list.
pub(crate) fn card(reading: &Reading<'_>, row: HarvestRow) -> Result<HarvestCard, Failure> {
    let HarvestRow {
        id,
        harvest,
        bed,
        fresh_left_g,
        state,
        ..
    } = row;
    let known = Known::written(reading, &harvest.herb)?;
    Ok(HarvestCard {
        id: id.to_string(),
        code: harvest.code.to_string(),
        herb: harvest.herb.to_string(),
        common: told::title(&known),
        latin: known.latin,
        fresh_mass_g: harvest.fresh().get(),
        part: harvest.part,
        picked_at: harvest.picked_at.to_rfc3339(),
        bed: bed.map(|(id, bed)| Bed::of(id, bed)),
        photo: harvest.photos.first().map(ToString::to_string),
        state,
        fresh_left_g,
    })
}

pub(crate) fn written(
    app: &Open,
    done: Changed,
    id: &HarvestId,
) -> Result<HarvestWritten, Failure> {
    let harvest = app.read_back(|reading| card(reading, reading.harvest_row(id)?))?;
    Ok(HarvestWritten { done, harvest })
}
