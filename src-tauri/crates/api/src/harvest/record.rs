//! `harvest.record` and `harvest.correct`.

use chrono::{DateTime, Duration, FixedOffset};
use journal::{BedId, Harvest, HarvestId, Kept as _, PhotoHash, Surface, TimeFrom, Weighed};
use message::{Argument, Code, Failure, say};
use reckon::herb::Known;
use reckon::{asked, told};
use serde::Deserialize;
use store::{Reading, Writing};

use crate::harvest::card::{HarvestWritten, written};
use crate::open::Open;
use crate::request::Command;

/// Something was picked and weighed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct RecordHarvest {
    pub herb: String,
    pub part: String,
    pub gross_g: f64,
    pub tare_g: Option<f64>,
    pub picked_at: Option<String>,
    pub bed: Option<String>,
    pub bed_name: Option<String>,
    /// Nobody planted what stands in the new bed.
    pub bed_wild: Option<bool>,
    pub stage: Option<String>,
    pub surface: Surface,
    pub note: Option<String>,
    pub photos: Option<Vec<String>>,
    pub look_alike_ruled_out: Option<bool>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

/// A change to a harvest; what is left out stays, an empty text is cleared.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectHarvest {
    pub id: String,
    pub herb: Option<String>,
    pub part: Option<String>,
    pub gross_g: Option<f64>,
    pub tare_g: Option<f64>,
    pub picked_at: Option<String>,
    pub bed: Option<String>,
    pub bed_name: Option<String>,
    /// Nobody planted what stands in the new bed.
    pub bed_wild: Option<bool>,
    pub stage: Option<String>,
    pub surface: Option<Surface>,
    pub note: Option<String>,
    pub photos: Option<Vec<String>>,
    pub look_alike_ruled_out: Option<bool>,
    /// The mass was asked about and is right.
    pub confirm_odd: Option<bool>,
}

impl Command for RecordHarvest {
    const NAME: &'static str = "harvest.record";
    type Reply = HarvestWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = HarvestId(app.new_id());
        let now = app.now();
        let photos = hashes(self.photos.unwrap_or_default())?;
        let new_bed = (self.bed_name.as_deref(), self.bed_wild);
        let typed = asked::text(self.picked_at);
        let (done, ()) = app.perform(|writing| {
            let known = Known::asked(writing, &self.herb)?;
            let (picked_at, time_from) = picked(writing, typed.as_deref(), &photos, now)?;
            let bed = bed(app, writing, self.bed.as_deref(), new_bed)?;
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
                surface: self.surface,
                note: asked::text(self.note),
                place: place(writing, &photos)?,
                photos,
                look_alike_ruled_out: self.look_alike_ruled_out.unwrap_or(false),
            };
            look_alike_is_ruled_out(writing, &known, &harvest)?;
            writing.record(&id, &harvest)?;
            asked::about_mass("gross_g", harvest.weighed.net_g(), self.confirm_odd)?;
            let (mass, plant) = what(&harvest, &known);
            let line = say!("deed-harvest-recorded", mass, plant, code = &harvest.code);
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}

impl Command for CorrectHarvest {
    const NAME: &'static str = "harvest.correct";
    type Reply = HarvestWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: HarvestId = asked::id("id", &self.id)?;
        let now = app.now();
        let photos = self.photos.map(hashes).transpose()?;
        let new_bed = (self.bed_name.as_deref(), self.bed_wild);
        let (done, _) = app.correct::<Harvest>("id", &id, |writing, harvest| {
            if let Some(herb) = &self.herb {
                harvest.herb = Known::asked(writing, herb)?.key;
            }
            asked::renamed(&mut harvest.part, self.part);
            asked::set(&mut harvest.weighed.gross_g, self.gross_g);
            asked::set(&mut harvest.weighed.tare_g, self.tare_g);
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
                harvest.bed = bed(app, writing, self.bed.as_deref(), new_bed)?;
            }
            asked::corrected(&mut harvest.stage, self.stage);
            asked::corrected(&mut harvest.note, self.note);
            asked::set(&mut harvest.surface, self.surface);
            asked::set(&mut harvest.look_alike_ruled_out, self.look_alike_ruled_out);
            let known = Known::written(writing, &harvest.herb)?;
            if self.herb.is_some() || self.bed.is_some() || self.bed_name.is_some() {
                look_alike_is_ruled_out(writing, &known, harvest)?;
            }
            // Nonsense is refused before a mass that could be is asked about.
            harvest.check()?;
            if self.gross_g.is_some() {
                asked::about_mass("gross_g", harvest.weighed.net_g(), self.confirm_odd)?;
            }
            let (mass, plant) = what(harvest, &known);
            Ok(say!(
                "deed-harvest-edited",
                mass,
                plant,
                code = &harvest.code
            ))
        })?;
        written(app, done, &id)
    }
}

/// How much of which plant it is.
fn what(harvest: &Harvest, known: &Known) -> (Argument, Argument) {
    let mass = Argument::grams(harvest.weighed.net_g());
    (mass, told::plant(known, &harvest.part))
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

/// The bed of a request: by its id, or by a name that is there or is added, as a wild one where that is said.
fn bed(
    app: &Open,
    writing: &mut Writing<'_>,
    id: Option<&str>,
    (name, wild): (Option<&str>, Option<bool>),
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
    let wild = wild.unwrap_or(false);
    match writing.bed_named(name)? {
        // Nobody can tell whether the planted bed of that name was meant.
        Some((_, bed)) if wild && !bed.wild => {
            let name = Argument::own(bed.name);
            return Err(Failure::invalid("bed_name", say!("bed-called-so", name)));
        }
        Some((id, _)) => return Ok(Some(id)),
        None => {}
    }
    let id = BedId(app.new_id());
    let bed = journal::Bed {
        name: name.to_owned(),
        wild,
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
    let herb = told::herb(known);
    let message = if !names.is_empty() {
        say!(
            "look-alike-to-rule-out",
            names = Argument::one_of(names),
            herb
        )
    } else if known.own.look_alikes.is_some() {
        say!("look-alike-noted-to-rule-out", herb)
    } else if is_wild {
        say!("wild-to-be-certain", herb)
    } else {
        return Ok(());
    };
    Err(Failure {
        field: Some("look_alike_ruled_out".to_owned()),
        ..Failure::new(Code::ConfirmLookAlike, message)
    })
}
