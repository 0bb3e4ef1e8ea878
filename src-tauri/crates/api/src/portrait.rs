//! Photos of a jar, a bottle, a bed or an own herb on a day of its life: `portrait.*`. Those of a harvest belong to it from the
//! start and are its own.

use std::str::FromStr;

use chrono::{DateTime, FixedOffset, NaiveDate, SubsecRound as _};
use journal::{Bed, Bottle, Herb, Jar, PhotoHash, Pictured, Portrait, PortraitId, Refusal};
use message::{Argument, Failure, Message, say};
use reckon::asked;
use serde::{Deserialize, Serialize};
use store::{Reading, Writing};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::Command;

/// As many as a harvest may have.
const MOST: usize = 100;

/// What a photo can be taken of.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum PicturedKind {
    Jar,
    Bottle,
    Bed,
    /// One of the maker's own.
    Herb,
}

/// Photos of one thing, by the hashes that their uploads gave.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecordPortrait {
    pub kind: PicturedKind,
    pub id: String,
    pub photos: Vec<String>,
}

/// Whether a photo stands in the place of the drawing; no other one of the same thing does then.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CorrectPortrait {
    pub id: String,
    pub shown: bool,
}

/// A photo does not belong to this thing. Its bytes stay in the album, as the entry can be undone.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrikePortrait {
    pub id: String,
}

/// A photo of a jar, a bottle, a bed or an own herb.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PortraitLine {
    pub id: String,
    pub hash: String,
    pub at: String,
    pub has_preview: bool,
    /// Whether it stands in the place of the drawing.
    pub shown: bool,
}

/// The photos of a thing were written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PortraitsWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub portraits: Vec<PortraitLine>,
}

impl Command for RecordPortrait {
    const NAME: &'static str = "portrait.record";
    type Reply = PortraitsWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let of = pictured(self.kind, &self.id)?;
        let hash = |(at, text): (usize, &String)| asked::id(&format!("photos[{at}]"), text);
        let photos: Vec<PhotoHash> = self
            .photos
            .iter()
            .enumerate()
            .map(hash)
            .collect::<Result<_, _>>()?;
        if photos.is_empty() {
            return Err(Failure::invalid("photos", say!("portrait-choose")));
        }
        let now = app.now();
        let (done, ()) = app.perform(|writing| {
            let Subject { name, since } = subject(writing, of)?;
            let mut there: Vec<PhotoHash> = writing
                .portraits(of)?
                .into_iter()
                .map(|(_, it)| it.photo)
                .collect();
            for (at, photo) in photos.iter().enumerate() {
                let field = format!("photos[{at}]");
                let known = writing.get::<journal::Photo>(photo);
                let known = known.map_err(|why| Failure::from(why).renamed(&field))?;
                if there.contains(photo) {
                    return Err(Failure::invalid(&field, say!("portrait-there-already")));
                }
                if there.len() >= MOST {
                    return Err(Failure::invalid(
                        &field,
                        say!("portrait-count", most = MOST),
                    ));
                }
                let portrait = Portrait {
                    of,
                    photo: photo.clone(),
                    at: taken(known.taken_at, since, now),
                    shown: false,
                };
                writing.record(&PortraitId(app.new_id()), &portrait)?;
                there.push(photo.clone());
            }
            Ok((
                say!("deed-portrait-taken", count = photos.len(), of = name),
                (),
            ))
        })?;
        written(app, done, of)
    }
}

impl Command for CorrectPortrait {
    const NAME: &'static str = "portrait.correct";
    type Reply = PortraitsWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        change(app, &self.id, |writing, id, of, name| {
            for (each, mut portrait) in writing.portraits(of)? {
                let shown = self.shown && each == *id;
                if portrait.shown != shown {
                    portrait.shown = shown;
                    writing.correct(&each, &portrait)?;
                }
            }
            Ok(match self.shown {
                true => say!("deed-portrait-shown", of = name),
                false => say!("deed-drawing-shown", of = name),
            })
        })
    }
}

impl Command for StrikePortrait {
    const NAME: &'static str = "portrait.strike";
    type Reply = PortraitsWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        change(app, &self.id, |writing, id, _, name| {
            writing.strike::<Portrait>(id)?;
            Ok(say!("deed-portrait-removed", of = name))
        })
    }
}

/// Changes one photo in a deed of its own: `by` is told what it shows and how that is called, and gives the line.
fn change(
    app: &Open,
    id: &str,
    by: impl FnOnce(&mut Writing<'_>, &PortraitId, Pictured, Message) -> Result<Message, Failure>,
) -> Result<PortraitsWritten, Failure> {
    let id: PortraitId = asked::id("id", id)?;
    let (done, of) = app.perform(|writing| {
        let of = writing.get::<Portrait>(&id)?.of;
        let Subject { name, .. } = subject(writing, of)?;
        Ok((by(writing, &id, of, name)?, of))
    })?;
    written(app, done, of)
}

/// The photos of a thing, the earliest first.
pub(crate) fn lines(reading: &Reading<'_>, of: Pictured) -> Result<Vec<PortraitLine>, Failure> {
    let face = reading.face(of)?;
    let mut lines = Vec::new();
    for (id, portrait) in reading.portraits(of)? {
        let photo = reading.find::<journal::Photo>(&portrait.photo)?;
        lines.push(PortraitLine {
            id: id.to_string(),
            shown: portrait.shown && face.as_ref() == Some(&portrait.photo),
            hash: portrait.photo.to_string(),
            at: portrait.at.to_rfc3339(),
            has_preview: photo.is_some_and(|photo| photo.has_preview),
        });
    }
    Ok(lines)
}

/// What was photographed, as a deed names it, and the day before which no photo shows it.
struct Subject {
    name: Message,
    since: Option<NaiveDate>,
}

fn subject(writing: &Writing<'_>, of: Pictured) -> Result<Subject, Failure> {
    Ok(match of {
        Pictured::Jar(id) => {
            let jar = writing.get::<Jar>(&id)?;
            Subject {
                name: say!("row-jar", name = Argument::own(jar.name), code = &jar.code),
                since: Some(jar.poured_at.date_naive()),
            }
        }
        Pictured::Bottle(id) => {
            let bottle = writing.get::<Bottle>(&id)?;
            Subject {
                name: say!("row-bottle", code = &bottle.code),
                since: Some(bottle.filled_at.date_naive()),
            }
        }
        Pictured::Bed(id) => Subject {
            name: say!(
                "row-bed",
                name = Argument::own(writing.get::<Bed>(&id)?.name)
            ),
            since: None,
        },
        Pictured::Herb(id) => Subject {
            name: say!(
                "row-named",
                name = Argument::own(writing.get::<Herb>(&id)?.common)
            ),
            since: None,
        },
    })
}

/// When the camera says it was, unless that is still to come or lies before the thing was there: a camera whose clock
/// is wrong must not put a photo where it cannot belong.
fn taken(
    camera: Option<DateTime<FixedOffset>>,
    since: Option<NaiveDate>,
    now: DateTime<FixedOffset>,
) -> DateTime<FixedOffset> {
    camera
        .filter(|at| *at <= now && since.is_none_or(|day| at.date_naive() >= day))
        .unwrap_or_else(|| now.trunc_subsecs(0))
}

fn pictured(kind: PicturedKind, id: &str) -> Result<Pictured, Failure> {
    fn read<I: FromStr<Err = Refusal>>(id: &str) -> Result<I, Failure> {
        asked::id("id", id)
    }
    Ok(match kind {
        PicturedKind::Jar => Pictured::Jar(read(id)?),
        PicturedKind::Bottle => Pictured::Bottle(read(id)?),
        PicturedKind::Bed => Pictured::Bed(read(id)?),
        PicturedKind::Herb => Pictured::Herb(read(id)?),
    })
}

fn written(app: &Open, done: Changed, of: Pictured) -> Result<PortraitsWritten, Failure> {
    let portraits = app.read_back(|reading| lines(reading, of))?;
    Ok(PortraitsWritten { done, portraits })
}
