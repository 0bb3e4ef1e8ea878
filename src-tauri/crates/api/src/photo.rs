//! Pictures of what was picked: `photo.*`. Bytes come through the host, not through a command,
//! except where a platform carries only text (`photo.chunk`).

use std::fs::File;
use std::io::{Read, Seek};

use ::photo::{Intake, Kind, Taken};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD as BASE64;
use chrono::{DateTime, FixedOffset};
use journal::{PhotoHash, Place};
use message::{Argument, Failure, Message, say};
use reckon::asked;
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::reply::written_down;
use crate::request::Command;

/// What is known of one photo.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoCard {
    pub hash: String,
    pub name: Option<String>,
    pub width: Option<u32>,
    pub height: Option<u32>,
    pub has_preview: bool,
    pub taken_at: Option<String>,
    pub zone_known: bool,
    pub place: Option<Place>,
    pub bytes: u64,
    pub note: Option<Message>,
}

impl PhotoCard {
    pub(crate) fn of(hash: &PhotoHash, photo: journal::Photo) -> Self {
        Self {
            hash: hash.to_string(),
            name: photo.name,
            width: photo.width,
            height: photo.height,
            has_preview: photo.has_preview,
            taken_at: photo.taken_at.map(|at| at.to_rfc3339()),
            zone_known: photo.zone_known,
            place: photo.place,
            bytes: photo.bytes,
            note: photo.note.as_deref().map(::photo::told),
        }
    }
}

/// A photo was kept.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoTaken {
    pub photo: PhotoCard,
    pub duplicate: bool,
    pub used_in: Vec<String>,
}

/// A piece of a photo, at most 1 MiB, where the platform carries only text.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TakePhotoChunk {
    pub upload: String,
    pub base64: String,
    pub last: bool,
    pub name: Option<String>,
}

/// The answer to [`TakePhotoChunk`]: the photo once the last piece came.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoChunkTaken {
    pub taken: Option<PhotoTaken>,
}

/// Makes the preview of a photo, and tells anew what is known of it: only unpacking shows whether
/// the picture is whole.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PreviewPhoto {
    pub hash: String,
}

/// A picture as a host sends it on.
#[derive(Debug)]
pub struct Picture {
    /// Its bytes.
    pub file: File,
    /// Its media type.
    pub media_type: &'static str,
}

impl Open {
    /// Keeps a photo that a host streams in; the reply is that of an upload, as JSON.
    pub(crate) fn take_photo(
        &self,
        from: impl Read,
        name: Option<&str>,
    ) -> Result<String, Failure> {
        let intake = self.photos.take_in(from)?;
        written_down(&self.photo_taken(intake, name)?)
    }

    /// The original of a photo; `None` when there is none of this name.
    pub(crate) fn original(&self, hash: &str) -> Result<Option<Picture>, Failure> {
        let Some(mut file) = self.photos.original(&hash.parse()?)? else {
            return Ok(None);
        };
        let mut head = [0; 64];
        let length = file
            .read(&mut head)
            .and_then(|length| file.rewind().map(|()| length));
        let length = length.map_err(::photo::Failure::from)?;
        let media_type =
            Kind::of(&head[..length]).map_or("application/octet-stream", Kind::media_type);
        Ok(Some(Picture { file, media_type }))
    }

    /// The upright preview of a photo; `None` when there is none.
    pub(crate) fn thumb(&self, hash: &str) -> Result<Option<Picture>, Failure> {
        let hash = hash.parse()?;
        let mut file = self.photos.thumb(&hash)?;
        // A restored photo comes without its preview, and one just kept may not have it yet.
        if file.is_none() && self.has_preview(&hash)? {
            file = self.photos.shown(&hash)?;
        }
        Ok(file.map(|file| Picture {
            file,
            media_type: "image/jpeg",
        }))
    }

    fn has_preview(&self, hash: &::photo::Hash) -> Result<bool, Failure> {
        let hash: PhotoHash = hash.to_string().parse()?;
        let known = self.read(|reading| Ok(reading.find::<journal::Photo>(&hash)?))?;
        Ok(known.is_some_and(|photo| photo.has_preview))
    }

    /// Tells the journal of a photo whose bytes are safe; one that it knows stays as it is known.
    fn photo_taken(&self, intake: Intake, name: Option<&str>) -> Result<PhotoTaken, Failure> {
        let Intake { photo, duplicate } = intake;
        let hash: PhotoHash = photo.hash.to_string().parse()?;
        let row = journal::Photo {
            name: asked::text(name.map(str::to_owned)),
            bytes: photo.bytes,
            width: photo.width,
            height: photo.height,
            taken_at: photo.taken.map(|taken| self.moment(taken)),
            zone_known: photo.taken.is_some_and(|taken| taken.offset.is_some()),
            place: photo.place.map(|place| journal::Place {
                lat: place.lat,
                lon: place.lon,
            }),
            orientation: None,
            has_preview: photo.preview.exists(),
            note: photo.note(),
        };
        let (known, uses) = self.read(|reading| {
            Ok((
                reading.find::<journal::Photo>(&hash)?,
                reading.photo_uses(&hash)?,
            ))
        })?;
        let row = match known {
            Some(known) => known,
            None => {
                let line = say!("deed-photo-kept", name = named(&row));
                self.perform(|writing| {
                    writing.record(&hash, &row)?;
                    Ok((line, ()))
                })?;
                row
            }
        };
        Ok(PhotoTaken {
            photo: PhotoCard::of(&hash, row),
            duplicate,
            used_in: uses.iter().map(ToString::to_string).collect(),
        })
    }

    /// A photo without a zone was taken where the phone is now, as far as anyone knows.
    fn moment(&self, taken: Taken) -> DateTime<FixedOffset> {
        let offset = taken.offset.unwrap_or_else(|| *self.clock.now().offset());
        taken
            .local
            .and_local_timezone(offset)
            .single()
            .unwrap_or_else(|| self.clock.now())
    }
}

/// What its file was called, in one line.
fn named(photo: &journal::Photo) -> Argument {
    match &photo.name {
        Some(name) => Argument::own(name.replace(['\n', '\r'], " ")),
        None => say!("photo-without-a-name").into(),
    }
}

impl Command for PreviewPhoto {
    const NAME: &'static str = "photo.preview";
    type Reply = PhotoCard;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let hash: PhotoHash = self.hash.parse()?;
        let missing = || Failure::not_found("hash", say!("photo-nowhere"));
        let known = app.read(|reading| Ok(reading.find::<journal::Photo>(&hash)?))?;
        let mut row = known.ok_or_else(missing)?;
        if !row.has_preview {
            return Ok(PhotoCard::of(&hash, row));
        }
        let seen = app.photos.look(&self.hash.parse()?)?.ok_or_else(missing)?;
        if (seen.preview.exists(), seen.note()) != (row.has_preview, row.note.clone()) {
            (row.has_preview, row.note) = (seen.preview.exists(), seen.note());
            let line = say!("deed-photo-looked-at", name = named(&row));
            app.perform(|writing| {
                writing.correct(&hash, &row)?;
                Ok((line, ()))
            })?;
        }
        Ok(PhotoCard::of(&hash, row))
    }
}

/// A chunk carries at most 1 MiB, which is this long in base64.
pub(crate) const LONGEST_CHUNK: usize = 1024 * 1024 / 3 * 4 + 4;
/// More uploads under way than any page begins are left over from pages that are gone.
const MOST_UPLOADS: usize = 8;

impl Command for TakePhotoChunk {
    const NAME: &'static str = "photo.chunk";
    type Reply = PhotoChunkTaken;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        if self.upload.is_empty() || self.upload.len() > 64 {
            return Err(Failure::invalid("upload", say!("upload-name-length")));
        }
        if self.base64.len() > LONGEST_CHUNK {
            return Err(Failure::invalid("base64", say!("upload-piece-of-photo")));
        }
        let bytes = BASE64
            .decode(&self.base64)
            .map_err(|_| Failure::invalid("base64", say!("upload-no-base64")))?;
        // Taken out while it is written to, so that a slow disk holds up no other upload.
        let begun = app.uploads().remove(&self.upload);
        let mut upload = match begun {
            Some(upload) => upload,
            None => app.photos.begin()?,
        };
        upload.write(&bytes)?;
        if self.last {
            let taken = app.photo_taken(upload.finish()?, self.name.as_deref())?;
            return Ok(PhotoChunkTaken { taken: Some(taken) });
        }
        let mut uploads = app.uploads();
        uploads.insert(self.upload, upload);
        if uploads.len() > MOST_UPLOADS {
            uploads.pop_first();
        }
        Ok(PhotoChunkTaken { taken: None })
    }
}
