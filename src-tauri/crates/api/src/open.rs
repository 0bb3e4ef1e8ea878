//! One open journal: what a command can reach.

use std::collections::BTreeMap;
use std::fs::File;
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard};

use chrono::{DateTime, FixedOffset};
use disk::Disk;
use journal::{DeedId, DeviceId, Line};
use message::{Argument, Code, Failure, Message, say};
use photo::{Album, Upload};
use reckon::bottle::stock::Summed;
use safe::folder::{self, Keep, held, id_at};
use safe::job::Jobs;
use safe::lock::{claim, say_begun};
use safe::open;
use safe::outcome::JobOutcome;
use store::{Reading, Store, Table, Writing};
use uuid::Uuid;

use crate::changed::Changed;
use crate::clock::Clock;
use crate::speech;

/// The journal, the photos and the clock.
pub struct Open {
    /// What long jobs work on, too.
    pub(crate) keep: Keep,
    /// The jobs of this run of the app.
    pub(crate) jobs: Arc<Jobs<JobOutcome>>,
    pub(crate) photos: Album,
    pub(crate) clock: Arc<dyn Clock>,
    /// Whether this is the demo season.
    pub(crate) is_demo: bool,
    uploads: Mutex<BTreeMap<String, Upload>>,
    /// What was summed up last, for as long as it holds.
    pub(crate) summed: Mutex<Option<Summed>>,
    /// Says that no other program may open this journal; the demo season's is held by its maker's.
    _claim: Option<File>,
}

impl Open {
    /// Opens the maker's own journal in `folder`, or begins one there, and keeps other programs from it; all files
    /// but the journal itself are written by way of `disk`.
    pub(crate) fn own(folder: &Path, clock: Box<dyn Clock>, disk: Disk) -> Result<Self, Failure> {
        made(folder)?;
        let own = Self {
            _claim: claim(folder)?,
            ..Self::opened_as(folder, Arc::from(clock), disk, false)?
        };
        if own.keep.lost().is_none() {
            say_begun(own._claim.as_ref());
        }
        Ok(own)
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
        let (writer, lost) = open::opened(folder, &disk, DeviceId(id_at(now)), now, speech::line)?;
        let reader = match lost {
            None => Store::open(&folder.join(folder::JOURNAL), writer.device())?,
            Some(_) => Store::closed(writer.device())?,
        };
        Ok(Self {
            keep: Keep {
                folder: folder.to_owned(),
                reader: Arc::new(Mutex::new(reader)),
                writer: Arc::new(Mutex::new(writer)),
                photos: photos.clone(),
                disk,
                lost: Arc::new(Mutex::new(lost)),
            },
            jobs: Arc::default(),
            photos,
            clock,
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
        body: impl FnOnce(&mut Writing<'_>) -> Result<(Message, T), Failure>,
    ) -> Result<(Changed, T), Failure> {
        let deed = DeedId(self.new_id());
        let body = |writing: &mut Writing<'_>| {
            let (message, value) = body(writing)?;
            Ok::<_, Failure>((Line::said(&message, speech::line), value))
        };
        let (done, value) = held(&self.keep.writer).perform(deed, self.now(), body)?;
        Ok((done.into(), value))
    }

    /// Writes one deed that puts the row `id` right, which the request calls `field`: `patch` sets what was asked for and
    /// returns the line; what differs then is written, and the whole row is given back.
    pub(crate) fn correct<N: Table>(
        &self,
        field: &str,
        id: &N::Id,
        patch: impl FnOnce(&mut Writing<'_>, &mut N) -> Result<Message, Failure>,
    ) -> Result<(Changed, N), Failure> {
        self.perform(|writing| {
            let row = writing.get::<N>(id);
            let mut row = row.map_err(|why| Failure::from(why).renamed(field))?;
            let line = patch(writing, &mut row)?;
            writing.correct(id, &row)?;
            Ok((line, row))
        })
    }

    /// Takes a deed back; also says in one line what it was.
    pub(crate) fn undo(&self, target: DeedId) -> Result<(Changed, Message), Failure> {
        let deed = DeedId(self.new_id());
        let (done, undone) =
            held(&self.keep.writer).undo(deed, self.now(), target, speech::line)?;
        Ok((done.into(), undone.told()))
    }

    /// What is wrong with the journal and its photos, a sentence for each; nothing when all is well.
    pub(crate) fn faults(&self) -> Result<Vec<Message>, Failure> {
        let mut faults = held(&self.keep.reader).audit()?;
        for (hash, photo) in self.read(|reading| Ok(reading.photos()?))? {
            if self.photos.original(&hash.as_str().parse()?)?.is_none() {
                let name = photo.name.unwrap_or_else(|| hash.to_string());
                faults.push(say!("photo-original-missing", name = Argument::own(name)));
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
    let message = say!(
        "folder-unusable",
        folder = Argument::own(folder.display().to_string()),
        why = Argument::own(why)
    );
    Failure::new(Code::Storage, message)
}
