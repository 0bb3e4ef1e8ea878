//! `harvest.show`: a harvest with everything that came of it.

use journal::{HarvestId, Place, PlantState, Source, Surface, TimeFrom};
use message::{Failure, Message};
use reckon::asked;
use reckon::drying::weight::{DryWeight, dry_weight};
use reckon::due::past_saving;
use reckon::herb::Known;
use reckon::tray::card::{self, TrayCard};
use serde::{Deserialize, Serialize};
use store::{JarUse, Reading};

use crate::discard::{Binned, binned};
use crate::harvest::card::{HarvestCard, card};
use crate::open::Open;
use crate::photo::PhotoCard;
use crate::request::Command;

/// One harvest.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowHarvest {
    pub id: String,
}

/// Grams of the harvest that went into a jar.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct IntoJar {
    pub jar: String,
    pub code: String,
    pub name: String,
    pub mass_g: f64,
    pub state: PlantState,
}

/// A harvest with everything that came of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestPage {
    #[serde(flatten)]
    pub card: HarvestCard,
    pub gross_g: f64,
    pub tare_g: f64,
    pub stage: Option<String>,
    pub surface: Surface,
    pub note: Option<String>,
    pub place: Option<Place>,
    pub time_from: TimeFrom,
    pub photos: Vec<PhotoCard>,
    pub estimate: DryWeight,
    pub trays: Vec<TrayCard>,
    pub jars: Vec<IntoJar>,
    pub binned: Vec<Binned>,
    /// What is asked of its fresh plant where that is past saving.
    pub past_saving: Option<Message>,
}

/// The answer to [`ShowHarvest`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct HarvestShown {
    pub harvest: HarvestPage,
}

impl Command for ShowHarvest {
    const NAME: &'static str = "harvest.show";
    type Reply = HarvestShown;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(HarvestShown {
                harvest: page(app, reading, &id)?,
            })
        })
    }
}

/// A harvest with everything that came of it.
fn page(app: &Open, reading: &Reading<'_>, id: &HarvestId) -> Result<HarvestPage, Failure> {
    let store::HarvestPage { row, trays, jars } = reading.harvest(id)?;
    let now = app.now();
    let harvest = row.harvest.clone();
    let known = Known::written(reading, &harvest.herb)?;
    let is_wet = harvest.surface != Surface::Dry;
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
        .map(|row| card::card(reading, &row, now))
        .collect();
    let picked_on = harvest.picked_at.with_timezone(now.offset()).date_naive();
    Ok(HarvestPage {
        past_saving: past_saving(picked_on, now.date_naive(), row.fresh_left_g),
        card: card(reading, row)?,
        gross_g: harvest.weighed.gross_g,
        tare_g: harvest.weighed.tare_g,
        stage: harvest.stage,
        surface: harvest.surface,
        note: harvest.note,
        place: harvest.place,
        time_from: harvest.time_from,
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
        state: usage.state,
    }
}
