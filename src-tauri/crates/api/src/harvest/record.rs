//! `harvest.record` and `harvest.correct`.

use chrono::{DateTime, Duration, FixedOffset};
use journal::{BedId, Harvest, HarvestId, PhotoHash, Surface as Outside, TimeFrom, Weighed};
use message::{Argument, Message};
use store::{Reading, Writing};

use super::page::card;
use super::wire::{CorrectHarvest, HarvestWritten, RecordHarvest, Surface};
use crate::herb::Known;
use crate::wire::Changed;
use crate::{App, Code, Command, Failure, asked, words};

impl Command for RecordHarvest {
    const NAME: &'static str = "harvest.record";
    type Reply = HarvestWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = HarvestId(app.new_id());
        let now = app.now();
        let photos = hashes(self.photos.unwrap_or_default())?;
        let typed = asked::text(self.picked_at);
        let (done, ()) = app.perform(|writing| {
            let known = Known::asked(writing, &self.herb)?;
            let (picked_at, time_from) = picked(writing, typed.as_deref(), &photos, now)?;
            let bed = bed(app, writing, self.bed.as_deref(), self.bed_name.as_deref())?;
            let harvest = Harvest {
                code: writing.free_code(id.0)?,
                herb: known.key.clone(),
                part: self.part.trim().to_owned(),
                weighed: Weighed {
                    gross_g: self.gross_g,
                    tare_g: self.tare_g.unwrap_or_default(),
                },
                picked_at,
                time_from,
                bed,
                stage: asked::text(self.stage),
                surface: self.surface.into(),
                note: asked::text(self.note),
                place: place(writing, &photos)?,
                photos,
                look_alike_ruled_out: self.look_alike_ruled_out.unwrap_or(false),
            };
            look_alike_is_ruled_out(writing, &known, &harvest)?;
            writing.record(&id, &harvest)?;
            asked::about_mass("gross_g", harvest.weighed.net_g(), self.confirm_odd)?;
            Ok((line("Recorded", &harvest, &known), ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for CorrectHarvest {
    const NAME: &'static str = "harvest.correct";
    type Reply = HarvestWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: HarvestId = asked::id("id", &self.id)?;
        let now = app.now();
        let photos = self.photos.map(hashes).transpose()?;
        let (done, ()) = app.perform(|writing| {
            let mut harvest = writing.get::<Harvest>(&id)?;
            if let Some(herb) = &self.herb {
                harvest.herb = Known::asked(writing, herb)?.key;
            }
            if let Some(part) = &self.part {
                harvest.part = part.trim().to_owned();
            }
            harvest.weighed.gross_g = self.gross_g.unwrap_or(harvest.weighed.gross_g);
            harvest.weighed.tare_g = self.tare_g.unwrap_or(harvest.weighed.tare_g);
            if let Some(photos) = photos {
                harvest.place = place(writing, &photos)?.or(harvest.place);
                harvest.photos = photos;
            }
            if let Some(text) = &self.picked_at {
                (harvest.picked_at, harvest.time_from) =
                    (asked::past("picked_at", Some(text), now)?, TimeFrom::Typed);
            }
            if self
                .bed_name
                .as_deref()
                .is_some_and(|name| name.trim().is_empty())
            {
                harvest.bed = None;
            } else if self.bed.is_some() || self.bed_name.is_some() {
                harvest.bed = bed(app, writing, self.bed.as_deref(), self.bed_name.as_deref())?;
            }
            asked::corrected(&mut harvest.stage, self.stage);
            asked::corrected(&mut harvest.note, self.note);
            harvest.surface = self.surface.map_or(harvest.surface, Outside::from);
            harvest.look_alike_ruled_out = self
                .look_alike_ruled_out
                .unwrap_or(harvest.look_alike_ruled_out);
            let known = Known::written(writing, &harvest.herb)?;
            if self.herb.is_some() || self.bed.is_some() || self.bed_name.is_some() {
                look_alike_is_ruled_out(writing, &known, &harvest)?;
            }
            writing.correct(&id, &harvest)?;
            if self.gross_g.is_some() {
                asked::about_mass("gross_g", harvest.weighed.net_g(), self.confirm_odd)?;
            }
            Ok((line("Corrected", &harvest, &known), ()))
        })?;
        written(app, done, &id)
    }
}

pub(super) fn written(app: &App, done: Changed, id: &HarvestId) -> Result<HarvestWritten, Failure> {
    let harvest = app.read_back(|reading| card(reading, reading.harvest_row(id)?))?;
    Ok(HarvestWritten { done, harvest })
}

fn line(did: &str, harvest: &Harvest, known: &Known) -> String {
    let grams = words::figure(harvest.weighed.net_g());
    format!(
        "{did} {grams} g of {} {} ({})",
        known.common, harvest.part, harvest.code
    )
}

fn hashes(photos: Vec<String>) -> Result<Vec<PhotoHash>, Failure> {
    let hash = |(at, text): (usize, &String)| asked::id(&format!("photos[{at}]"), text);
    photos.iter().enumerate().map(hash).collect()
}

/// What was typed wins, then the first photo that tells, then the clock. A camera that is ahead of
/// the clock by more than a day is not believed.
fn picked(
    reading: &Reading<'_>,
    typed: Option<&str>,
    photos: &[PhotoHash],
    now: DateTime<FixedOffset>,
) -> Result<(DateTime<FixedOffset>, TimeFrom), Failure> {
    if typed.is_some() {
        return Ok((asked::past("picked_at", typed, now)?, TimeFrom::Typed));
    }
    for hash in photos {
        let taken = reading
            .find::<journal::Photo>(hash)?
            .and_then(|photo| photo.taken_at);
        if let Some(taken) = taken.filter(|taken| *taken <= now + Duration::days(1)) {
            return Ok((taken, TimeFrom::Photo));
        }
    }
    Ok((asked::past("picked_at", None, now)?, TimeFrom::Clock))
}

/// Where the first photo that tells was taken; a photo that is not there is refused.
fn place(reading: &Reading<'_>, photos: &[PhotoHash]) -> Result<Option<journal::Place>, Failure> {
    let mut place = None;
    for (at, hash) in photos.iter().enumerate() {
        let photo = reading.get::<journal::Photo>(hash);
        let photo = photo.map_err(|why| Failure::from(why).renamed(&format!("photos[{at}]")))?;
        place = place.or(photo.place);
    }
    Ok(place)
}

/// The bed of a request: by its id, or by a name that is there or is added.
fn bed(
    app: &App,
    writing: &mut Writing<'_>,
    id: Option<&str>,
    name: Option<&str>,
) -> Result<Option<BedId>, Failure> {
    if let Some(id) = id.filter(|id| !id.is_empty()) {
        let id = asked::id("bed", id)?;
        writing
            .get::<journal::Bed>(&id)
            .map_err(|why| Failure::from(why).renamed("bed"))?;
        return Ok(Some(id));
    }
    let Some(name) = name.map(str::trim).filter(|name| !name.is_empty()) else {
        return Ok(None);
    };
    if let Some((id, _)) = writing.bed_named(name)? {
        return Ok(Some(id));
    }
    let id = BedId(app.new_id());
    let bed = journal::Bed {
        name: name.to_owned(),
        wild: false,
        area_m2: None,
        note: None,
    };
    writing
        .record(&id, &bed)
        .map_err(|why| Failure::from(why).renamed("bed_name"))?;
    Ok(Some(id))
}

/// A plant that harms may stand in any bed; where nobody planted it, every plant may be another.
fn look_alike_is_ruled_out(
    reading: &Reading<'_>,
    known: &Known,
    harvest: &Harvest,
) -> Result<(), Failure> {
    if harvest.look_alike_ruled_out {
        return Ok(());
    }
    let names: Vec<Argument> = known
        .entry
        .into_iter()
        .flat_map(|entry| entry.look_alikes())
        .map(|row| Argument::message(row.name()))
        .collect();
    let bed = harvest
        .bed
        .map(|id| reading.find::<journal::Bed>(&id))
        .transpose()?
        .flatten();
    let is_wild = bed.is_some_and(|bed| bed.wild);
    let herb = match known.entry {
        Some(entry) => Argument::herb(&entry.common),
        None => Argument::own(&known.common),
    };
    let message = if !names.is_empty() {
        Message::new("look-alike-to-rule-out")
            .with("names", Argument::one_of(names))
            .with("herb", herb)
    } else if is_wild {
        Message::new("wild-to-be-certain").with("herb", herb)
    } else {
        return Ok(());
    };
    Err(Failure {
        field: Some("look_alike_ruled_out".to_owned()),
        ..Failure::new(Code::ConfirmLookAlike, message)
    })
}

impl From<Surface> for Outside {
    fn from(surface: Surface) -> Self {
        match surface {
            Surface::Dry => Self::Dry,
            Surface::Dew => Self::Dew,
            Surface::Rain => Self::Rain,
            Surface::Washed => Self::Washed,
        }
    }
}
