//! `harvest.show`: a harvest with everything that came of it.

use journal::{HarvestId, Source, Surface as Outside};
use store::{HarvestRow, JarUse, Reading};

use super::estimate::dry_weight;
use super::wire::{
    HarvestCard, HarvestPage, HarvestShown, HarvestState, IntoJar, ShowHarvest, Surface, TimeFrom,
};
use crate::bed::Bed;
use crate::discard::binned;
use crate::herb::Known;
use crate::photo::PhotoCard;
use crate::tray;
use crate::wire::{Place, PlantState};
use crate::{App, Command, Failure, asked};

impl Command for ShowHarvest {
    const NAME: &'static str = "harvest.show";
    type Reply = HarvestShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(HarvestShown {
                harvest: page(app, reading, &id)?,
            })
        })
    }
}

/// A harvest in a list.
pub(super) fn card(reading: &Reading<'_>, row: HarvestRow) -> Result<HarvestCard, Failure> {
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
        common: known.common,
        latin: known.latin,
        fresh_mass_g: harvest.fresh().get(),
        part: harvest.part,
        picked_at: harvest.picked_at.to_rfc3339(),
        bed: bed.map(|(id, bed)| Bed::of(id, bed)),
        photo: harvest.photos.first().map(ToString::to_string),
        state: match state {
            journal::HarvestState::Fresh => HarvestState::Fresh,
            journal::HarvestState::OnTheRack => HarvestState::OnTheRack,
            journal::HarvestState::Dry => HarvestState::Dry,
            journal::HarvestState::UsedUp => HarvestState::UsedUp,
        },
        fresh_left_g,
    })
}

/// A harvest with everything that came of it.
fn page(app: &App, reading: &Reading<'_>, id: &HarvestId) -> Result<HarvestPage, Failure> {
    let store::HarvestPage { row, trays, jars } = reading.harvest(id)?;
    let harvest = row.harvest.clone();
    let known = Known::written(reading, &harvest.herb)?;
    let is_wet = harvest.surface != Outside::Dry;
    let estimate = dry_weight(
        reading,
        &known,
        &harvest.part,
        harvest.fresh().get(),
        is_wet,
    )?;
    let mut photos = Vec::new();
    for hash in &harvest.photos {
        if let Some(photo) = reading.find::<journal::Photo>(hash)? {
            photos.push(PhotoCard::of(hash, photo));
        }
    }
    let trays: Result<Vec<_>, Failure> = trays
        .into_iter()
        .map(|row| tray::card(app, reading, &row))
        .collect();
    Ok(HarvestPage {
        card: card(reading, row)?,
        gross_g: harvest.weighed.gross_g,
        tare_g: harvest.weighed.tare_g,
        stage: harvest.stage,
        surface: match harvest.surface {
            Outside::Dry => Surface::Dry,
            Outside::Dew => Surface::Dew,
            Outside::Rain => Surface::Rain,
            Outside::Washed => Surface::Washed,
        },
        note: harvest.note,
        place: harvest.place.map(|place| Place {
            lat: place.lat,
            lon: place.lon,
        }),
        time_from: match harvest.time_from {
            journal::TimeFrom::Typed => TimeFrom::Typed,
            journal::TimeFrom::Photo => TimeFrom::Photo,
            journal::TimeFrom::Clock => TimeFrom::Clock,
        },
        photos,
        estimate,
        trays: trays?,
        jars: jars.into_iter().map(into_jar).collect(),
        binned: binned(reading, Source::Harvest(*id))?,
    })
}

fn into_jar(usage: JarUse) -> IntoJar {
    IntoJar {
        jar: usage.jar_id.to_string(),
        code: usage.jar.code.to_string(),
        name: usage.jar.name,
        mass_g: usage.mass_g,
        state: PlantState::from(usage.state),
    }
}
