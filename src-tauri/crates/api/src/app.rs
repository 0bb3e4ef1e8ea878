//! What a command can reach.

use std::collections::BTreeMap;
use std::fs::File;
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use chrono::{DateTime, FixedOffset};
use disk::Disk;
use journal::{DeedId, DeviceId};
use photo::{Album, Upload};
use store::{Reading, Store, Writing};
use uuid::{NoContext, Timestamp, Uuid};

use crate::bottle::Summed;
use crate::claim::{claim, say_begun};
use crate::demo;
use crate::safe::{self, Keep};
use crate::wire::{Changed, Noun};
use crate::{Clock, Code, Failure};

/// The journal, the photos and the clock.
pub struct App {
    /// What long jobs work on, too.
    pub(crate) keep: Keep,
    pub(crate) photos: Album,
    pub(crate) clock: Arc<dyn Clock>,
    /// The demo season that lies over this journal while it is open.
    pub(crate) demo: demo::Shown,
    /// Whether this is that season.
    pub(crate) is_demo: bool,
    uploads: Mutex<BTreeMap<String, Upload>>,
    /// What was summed up last, for as long as it holds.
    pub(crate) summed: Mutex<Option<Summed>>,
    /// Says that no other program may open this journal; the demo season's is held by its maker's.
    _claim: Option<File>,
}

impl App {
    /// Opens the journal in `folder`, or begins one there.
    ///
    /// # Errors
    /// [`Failure`] of code `storage` when the folder cannot be used.
    pub fn open(folder: &Path, clock: Box<dyn Clock>) -> Result<Self, Failure> {
        Self::open_on(folder, clock, Disk::default())
    }

    /// As [`App::open`], writing all files but the journal itself by way of `disk`.
    ///
    /// # Errors
    /// As [`App::open`].
    pub fn open_on(folder: &Path, clock: Box<dyn Clock>, disk: Disk) -> Result<Self, Failure> {
        made(folder)?;
        let app = Self {
            _claim: claim(folder)?,
            ..Self::opened_as(folder, Arc::from(clock), disk, false)?
        };
        if app.keep.lost().is_none() {
            say_begun(app._claim.as_ref());
            app.reopen_demo();
        }
        Ok(app)
    }

    /// Opens the maker's own journal, or the demo season's.
    pub(crate) fn opened_as(
        folder: &Path,
        clock: Arc<dyn Clock>,
        disk: Disk,
        is_demo: bool,
    ) -> Result<Self, Failure> {
        made(folder)?;
        let now = clock.now();
        let album = folder.join("photos");
        let photos = Album::open_on(album.clone(), disk.clone())
            .map_err(|error| unusable(&album, &error))?;
        // The writer comes first: it makes the file and brings it up to date.
        let (writer, lost) = safe::opened(folder, &disk, DeviceId(id_at(now)), now)?;
        let reader = match lost {
            None => Store::open(&folder.join(safe::JOURNAL), writer.device())?,
            Some(_) => Store::closed(writer.device())?,
        };
        Ok(Self {
            keep: Keep {
                folder: folder.to_owned(),
                reader: Arc::new(Mutex::new(reader)),
                writer: Arc::new(Mutex::new(writer)),
                photos: photos.clone(),
                disk,
                jobs: Arc::default(),
                lost: Arc::new(Mutex::new(lost)),
            },
            photos,
            clock,
            demo: demo::Shown::default(),
            is_demo,
            uploads: Mutex::default(),
            summed: Mutex::default(),
            _claim: None,
        })
    }

    /// The present moment.
    pub(crate) fn now(&self) -> DateTime<FixedOffset> {
        self.clock.now()
    }

    /// An id that sorts by the time it was made.
    pub(crate) fn new_id(&self) -> Uuid {
        id_at(self.now())
    }

    /// Reads from one state of the journal.
    pub(crate) fn read<T>(
        &self,
        body: impl FnOnce(&Reading<'_>) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        held(&self.keep.reader).read(body)
    }

    /// Reads what was just written, through the connection that wrote it: the other one has to fetch
    /// anew whatever it held.
    pub(crate) fn read_back<T>(
        &self,
        body: impl FnOnce(&Reading<'_>) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        held(&self.keep.writer).read(body)
    }

    /// Writes one deed: what `body` writes, under the line that it returns.
    pub(crate) fn perform<T>(
        &self,
        body: impl FnOnce(&mut Writing<'_>) -> Result<(String, T), Failure>,
    ) -> Result<(Changed, T), Failure> {
        let deed = DeedId(self.new_id());
        let (done, value) = held(&self.keep.writer).perform(deed, self.now(), body)?;
        Ok((done.into(), value))
    }

    /// Takes a deed back; also says in one line what it was.
    pub(crate) fn undo(&self, target: DeedId) -> Result<(Changed, String), Failure> {
        let deed = DeedId(self.new_id());
        let (done, undone) = held(&self.keep.writer).undo(deed, self.now(), target)?;
        Ok((done.into(), undone))
    }

    /// What is wrong with the journal and its photos, a sentence for each; nothing when all is well.
    ///
    /// # Errors
    /// A [`Failure`] when they cannot be read.
    pub fn faults(&self) -> Result<Vec<String>, Failure> {
        let mut faults = held(&self.keep.reader).audit()?;
        for (hash, photo) in self.read(|reading| Ok(reading.photos()?))? {
            if self.photos.original(&hash.as_str().parse()?)?.is_none() {
                let name = photo.name.unwrap_or_else(|| hash.to_string());
                faults.push(format!("The original of the photo {name} is missing."));
            }
        }
        Ok(faults)
    }

    /// The uploads that came in part.
    pub(crate) fn uploads(&self) -> MutexGuard<'_, BTreeMap<String, Upload>> {
        held(&self.uploads)
    }
}

fn made(folder: &Path) -> Result<(), Failure> {
    Disk::default()
        .create_folders(folder)
        .map_err(|error| unusable(folder, &error))
}

fn unusable(folder: &Path, error: &dyn std::fmt::Display) -> Failure {
    let why = error.to_string();
    let why = why.trim_end_matches('.');
    let message = format!("The folder {} cannot be used: {why}.", folder.display());
    Failure::new(Code::Storage, message)
}

/// A thread that panicked left no half-written deed behind: the store rolls it back.
pub(crate) fn held<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

pub(crate) fn id_at(now: DateTime<FixedOffset>) -> Uuid {
    let seconds = u64::try_from(now.timestamp()).unwrap_or_default();
    Uuid::new_v7(Timestamp::from_unix(
        NoContext,
        seconds,
        now.timestamp_subsec_nanos(),
    ))
}

impl From<store::Done> for Changed {
    fn from(done: store::Done) -> Self {
        let changed = done.changed.into_iter().filter_map(|noun| {
            Some(match noun {
                journal::Noun::Herb => Noun::Herb,
                journal::Noun::Bed => Noun::Bed,
                journal::Noun::Harvest => Noun::Harvest,
                journal::Noun::Photo => Noun::Photo,
                journal::Noun::Tray => Noun::Tray,
                journal::Noun::Weighing => Noun::Weighing,
                journal::Noun::Supply => Noun::Supply,
                journal::Noun::Jar => Noun::Jar,
                journal::Noun::Setting => Noun::Setting,
                journal::Noun::Shake => Noun::Shake,
                journal::Noun::Straining => Noun::Straining,
                journal::Noun::Bottle => Noun::Bottle,
                journal::Noun::Use => Noun::Use,
                journal::Noun::Check => Noun::Check,
                journal::Noun::Recipe => Noun::Recipe,
                journal::Noun::Dropper => Noun::Dropper,
                journal::Noun::Plan => Noun::Plan,
                // The store tells of what was thrown away as a change of what it came from.
                journal::Noun::Discard => return None,
            })
        });
        Self {
            deed: done.deed.to_string(),
            changed: changed.collect(),
        }
    }
}
