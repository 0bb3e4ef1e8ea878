//! The album: a folder of originals under their hash, each with its preview.

use std::fs::File;
use std::io::{BufReader, Read, Seek, Write};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use ::disk::Disk;

use crate::disk::{self, Draft, Tree};
use crate::exif::{self, Facts, Place, Taken};
use crate::kind::HEAD;
use crate::maker;
use crate::preview::{self, Preview};
use crate::{Failure, Hash, Kind};

/// The largest file that is taken in: 64 MB.
pub const MAX_BYTES: u64 = 64_000_000;

/// A folder of photos.
///
/// One process at a time owns the folder. Everything that [`Upload::keep`] has acknowledged survives
/// a kill and a power cut.
#[derive(Clone, Debug)]
pub struct Album {
    disk: Disk,
    root: PathBuf,
}

/// Held while a preview is looked for and made, so that none is made twice.
static MAKING: Mutex<()> = Mutex::new(());

/// What came of an upload.
#[derive(Clone, Debug)]
pub struct Intake {
    /// The photo as it now lies in the album.
    pub photo: Photo,
    /// The album held these bytes already.
    pub duplicate: bool,
}

/// An original that is safe on the disk.
#[derive(Clone, Copy, Debug)]
pub struct Original {
    /// Its name.
    pub hash: Hash,
    /// The album held these bytes already.
    pub duplicate: bool,
}

/// A photo and what it says about itself.
#[derive(Clone, Debug)]
pub struct Photo {
    /// Its name in the album.
    pub hash: Hash,
    /// The size of the original in bytes.
    pub bytes: u64,
    /// What it is by its content.
    pub kind: Kind,
    /// Pixels across, seen upright.
    pub width: Option<u32>,
    /// Pixels down, seen upright.
    pub height: Option<u32>,
    /// When it was taken, if it says so.
    pub taken: Option<Taken>,
    /// Where it was taken, if it says so.
    pub place: Option<Place>,
    /// Whether there is a preview; unless it was made, as far as the file tells without being unpacked.
    pub preview: Preview,
}

impl Photo {
    /// What is wrong with its picture, as the word that the journal keeps; [`crate::told`] says it.
    pub fn note(&self) -> Option<String> {
        self.preview.note(self.kind)
    }
}

impl Album {
    /// Opens the album in `folder`, making it if need be, and clears what an interrupted upload left.
    ///
    /// # Errors
    /// [`Failure::Disk`] or [`Failure::DiskFull`] if the folder cannot be made, listed or cleared.
    pub fn open(folder: impl Into<PathBuf>) -> Result<Self, Failure> {
        Self::open_on(folder, Disk::default())
    }

    /// As [`Album::open`], writing by way of `disk`.
    ///
    /// # Errors
    /// As [`Album::open`].
    pub fn open_on(folder: impl Into<PathBuf>, disk: Disk) -> Result<Self, Failure> {
        let root = folder.into();
        disk::prepare(&disk, &root)?;
        Ok(Self { disk, root })
    }

    /// Where the album lies.
    pub fn folder(&self) -> &Path {
        &self.root
    }

    /// Takes in a whole photo from a stream.
    ///
    /// # Errors
    /// As [`Upload::write`] and [`Upload::finish`], or [`Failure::Disk`] if `from` fails.
    pub fn take_in(&self, mut from: impl Read) -> Result<Intake, Failure> {
        let mut upload = self.begin()?;
        let mut buffer = vec![0; 64 * 1024];
        loop {
            match from.read(&mut buffer) {
                Ok(0) => return upload.finish(),
                Ok(count) => upload.write(&buffer[..count])?,
                Err(error) if error.kind() == std::io::ErrorKind::Interrupted => {}
                Err(error) => return Err(error.into()),
            }
        }
    }

    /// Begins an upload that arrives in pieces.
    ///
    /// # Errors
    /// [`Failure::Disk`] or [`Failure::DiskFull`].
    pub fn begin(&self) -> Result<Upload, Failure> {
        Ok(Upload {
            album: self.clone(),
            draft: Draft::new(&self.disk, &self.root)?,
            hasher: blake3::Hasher::new(),
            head: Vec::with_capacity(HEAD),
            bytes: 0,
        })
    }

    /// Reads what a kept photo says about itself. A picture is unpacked only where its header or its
    /// end leaves it open whether there will be a preview.
    ///
    /// # Errors
    /// [`Failure::Disk`] or [`Failure::DiskFull`]; `None` if the album has no such photo.
    pub fn describe(&self, hash: &Hash) -> Result<Option<Photo>, Failure> {
        self.read(hash, |kind, size, facts, file| {
            if preview::seems_whole(kind, size, file) {
                return Ok(Preview::Whole);
            }
            let made = maker::make(kind, size, facts.orientation, file);
            Ok(made.map_or_else(Preview::No, |(_, damaged)| seen(damaged)))
        })
    }

    /// As [`Album::describe`], and makes the preview anew, which tells whether the picture is whole.
    ///
    /// # Errors
    /// As [`Album::describe`]. That a picture cannot be unpacked is no error: [`Photo::preview`] says so.
    pub fn look(&self, hash: &Hash) -> Result<Option<Photo>, Failure> {
        let _turn = turn();
        self.look_in_turn(hash)
    }

    /// The preview, made now if it is not there yet; `None` if none can be made.
    ///
    /// # Errors
    /// As [`Album::look`].
    pub fn shown(&self, hash: &Hash) -> Result<Option<File>, Failure> {
        if let Some(thumb) = self.thumb(hash)? {
            return Ok(Some(thumb));
        }
        let _turn = turn();
        // Whoever had the turn before may have made it.
        if self.thumb(hash)?.is_none() {
            self.look_in_turn(hash)?;
        }
        self.thumb(hash)
    }

    fn look_in_turn(&self, hash: &Hash) -> Result<Option<Photo>, Failure> {
        self.read(hash, |kind, size, facts, file| {
            Ok(match maker::make(kind, size, facts.orientation, file) {
                Ok((jpeg, damaged)) => {
                    disk::write_whole(&self.disk, &self.root, Tree::Thumbs, hash, &jpeg)?;
                    seen(damaged)
                }
                Err(reason) => Preview::No(reason),
            })
        })
    }

    fn read(
        &self,
        hash: &Hash,
        preview: impl FnOnce(Kind, Option<(u32, u32)>, &Facts, &File) -> Result<Preview, Failure>,
    ) -> Result<Option<Photo>, Failure> {
        let Some(mut file) = self.original(hash)? else {
            return Ok(None);
        };
        let bytes = file.metadata()?.len();
        let mut head = Vec::with_capacity(HEAD);
        (&mut file).take(HEAD as u64).read_to_end(&mut head)?;
        let Some(kind) = Kind::of(&head) else {
            return Err(Failure::NotAPicture);
        };
        file.rewind()?;
        let facts = exif::read(&mut BufReader::new(&file));
        let size = preview::size(kind, &file);
        let preview = preview(kind, size, &facts, &file)?;
        let size = size.or(facts.width.zip(facts.height));
        let size = size.map(|(width, height)| {
            if facts.lies_sideways() {
                (height, width)
            } else {
                (width, height)
            }
        });
        Ok(Some(Photo {
            hash: *hash,
            bytes,
            kind,
            width: size.map(|(width, _)| width),
            height: size.map(|(_, height)| height),
            taken: facts.taken,
            place: facts.place,
            preview,
        }))
    }

    /// The original, byte for byte; `None` if the album has no such photo.
    ///
    /// # Errors
    /// [`Failure::Disk`].
    pub fn original(&self, hash: &Hash) -> Result<Option<File>, Failure> {
        Ok(disk::open(&Tree::Originals.path(&self.root, hash))?)
    }

    /// Whether the original is there and every byte of it is as it was kept.
    ///
    /// # Errors
    /// [`Failure::Disk`].
    pub fn is_whole(&self, hash: &Hash) -> Result<bool, Failure> {
        let Some(file) = self.original(hash)? else {
            return Ok(false);
        };
        let mut hasher = blake3::Hasher::new();
        hasher.update_reader(file)?;
        Ok(Hash::from(hasher.finalize()) == *hash)
    }

    /// The upright preview, a JPEG; `None` if it was not made, or cannot be.
    ///
    /// # Errors
    /// [`Failure::Disk`].
    pub fn thumb(&self, hash: &Hash) -> Result<Option<File>, Failure> {
        Ok(disk::open(&Tree::Thumbs.path(&self.root, hash))?)
    }

    /// Every original in the album, in order of its hash: those the journal does not name included.
    ///
    /// # Errors
    /// [`Failure::Disk`].
    pub fn hashes(&self) -> Result<Vec<Hash>, Failure> {
        Ok(disk::hashes(&self.root)?)
    }
}

fn turn() -> MutexGuard<'static, ()> {
    MAKING.lock().unwrap_or_else(PoisonError::into_inner)
}

fn seen(damaged: bool) -> Preview {
    if damaged {
        Preview::Part
    } else {
        Preview::Whole
    }
}

/// A photo on its way in. Dropped before it is kept, it leaves nothing behind.
pub struct Upload {
    album: Album,
    draft: Draft,
    hasher: blake3::Hasher,
    head: Vec<u8>,
    bytes: u64,
}

impl Upload {
    /// Adds the next bytes.
    ///
    /// # Errors
    /// [`Failure::TooLarge`] beyond [`MAX_BYTES`]; [`Failure::NotAPicture`] as soon as the
    /// beginning shows it; [`Failure::Disk`] or [`Failure::DiskFull`].
    pub fn write(&mut self, bytes: &[u8]) -> Result<(), Failure> {
        self.bytes += bytes.len() as u64;
        if self.bytes > MAX_BYTES {
            return Err(Failure::TooLarge);
        }
        let missing = HEAD.saturating_sub(self.head.len()).min(bytes.len());
        self.head.extend_from_slice(&bytes[..missing]);
        if self.head.len() == HEAD && missing > 0 && Kind::of(&self.head).is_none() {
            return Err(Failure::NotAPicture);
        }
        self.hasher.update(bytes);
        self.draft.file.write_all(bytes)?;
        Ok(())
    }

    /// Keeps the original durably, without looking into it.
    ///
    /// # Errors
    /// [`Failure::Empty`], [`Failure::NotAPicture`], [`Failure::Disk`] or [`Failure::DiskFull`].
    pub fn keep(self) -> Result<Original, Failure> {
        if self.bytes == 0 {
            return Err(Failure::Empty);
        }
        if Kind::of(&self.head).is_none() {
            return Err(Failure::NotAPicture);
        }
        let root = &self.album.root;
        let hash = Hash::from(self.hasher.finalize());
        // Where the file of this name was damaged from outside the sound one replaces it.
        let duplicate = self.album.is_whole(&hash)?;
        if !duplicate {
            self.draft.publish(root, Tree::Originals, &hash)?;
        }
        Ok(Original { hash, duplicate })
    }

    /// Keeps the original durably and reads what it says about itself.
    ///
    /// # Errors
    /// As [`Upload::keep`] and [`Album::describe`].
    pub fn finish(self) -> Result<Intake, Failure> {
        let album = self.album.clone();
        let Original { hash, duplicate } = self.keep()?;
        let photo = album.describe(&hash)?.ok_or_else(|| {
            Failure::Disk(std::io::Error::new(
                std::io::ErrorKind::NotFound,
                "the photo just written is gone",
            ))
        })?;
        Ok(Intake { photo, duplicate })
    }
}
