//! Keeping the journal safe: `backup.*`, `restore.*`, `merge.*`, `export.*`, `import.*`, and the
//! jobs that they are. What a ZIP is, is known to `archive`; what a journal is, to `store`.

mod aside;
mod backup;
mod check;
mod csv;
mod export;
mod file;
mod import;
mod incoming;
mod job;
mod lost;
mod merge;
mod opening;
mod readme;
mod restore;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use ::disk::Disk;
use ::photo::Album;
use chrono::{DateTime, FixedOffset, SecondsFormat};
use journal::HybridTime;
use message::Message;
use serde::{Deserialize, Serialize};
use store::{Contents, Store};

use crate::{Code, Failure};

pub use backup::{AboutBackup, MakeBackup, TakeBackup};
pub use check::{BeginCheck, CheckJournal};
pub use export::MakeExport;
pub use file::{MadeFile, TakeFileChunk};
pub use import::{ApplyImport, LookAtImport};
pub use job::{CancelJob, RunningJob, ShowJob};
pub(crate) use lost::answers;
pub use lost::{BeginAnew, ListRestorePoints};
pub use merge::{ApplyMerge, LookAtMerge};
pub use opening::MakeRescue;
pub(crate) use opening::opened;
pub use restore::{ApplyRestore, GoBack, LookAtRestore, UndoRestore};

/// The journal in its folder.
pub(crate) const JOURNAL: &str = "journal.trugbook";
/// What a job needs while it runs; whatever lies there is gone at the next opening.
const WORK: &str = "work";
/// Files that a page brought to be read.
const BROUGHT: &str = "brought";
/// Files that were made to be taken away.
const MADE: &str = "made";

/// What a long job works on: shared with the commands that go on meanwhile.
#[derive(Clone)]
pub(crate) struct Keep {
    pub folder: PathBuf,
    /// Two doors to one file: a list is read while a write waits for the disk.
    pub reader: Arc<Mutex<Store>>,
    pub writer: Arc<Mutex<Store>>,
    pub photos: Album,
    pub disk: Disk,
    pub jobs: Arc<job::Jobs>,
    /// Set while the journal is missing or empty and the maker has not said what shall be done.
    pub lost: Arc<Mutex<Option<lost::LostHow>>>,
}

impl Keep {
    /// A folder of ours beside the journal.
    fn beside(&self, name: &str) -> Result<PathBuf, Failure> {
        let folder = self.folder.join(name);
        self.disk
            .create_folders(&folder)
            .map_err(unwritable_at(&folder))?;
        Ok(folder)
    }

    /// What became of the journal, if it is not there.
    pub fn lost(&self) -> Option<lost::LostHow> {
        *crate::app::held(&self.lost)
    }

    /// A door of its own to the journal, so that a long reading holds up nobody.
    fn door(&self) -> Result<Store, Failure> {
        let device = crate::app::held(&self.reader).device();
        if self.lost().is_some() {
            // Opening would begin one.
            return Ok(Store::closed(device)?);
        }
        Ok(Store::open(&self.folder.join(JOURNAL), device)?)
    }
}

/// A file that is gone when this is dropped, with the log that SQLite may have put beside it.
struct Scrap(PathBuf);

impl Drop for Scrap {
    fn drop(&mut self) {
        remove_journal(&self.0);
    }
}

/// Removes a journal file and what SQLite keeps beside it; what cannot be removed now is removed
/// at the next opening.
fn remove_journal(path: &Path) {
    for suffix in ["", "-wal", "-shm", "-journal"] {
        let _ = fs::remove_file(with_suffix(path, suffix));
    }
}

fn with_suffix(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(suffix);
    PathBuf::from(name)
}

/// A new, empty file that nobody else may read, for SQLite to fill: it asks no leave of its own.
fn private(disk: &Disk, path: &Path) -> Result<(), Failure> {
    disk.create(path).map(drop).map_err(unwritable_at(path))
}

/// Copies a file to a new one that nobody else may read.
fn copy(disk: &Disk, from: &Path, to: &Path) -> Result<(), Failure> {
    let mut file = fs::File::open(from).map_err(unwritable_at(from))?;
    let mut draft = disk.create(to).map_err(unwritable_at(to))?;
    std::io::copy(&mut file, &mut draft).map_err(unwritable_at(to))?;
    Ok(())
}

/// A failure of the file system as a sentence that names the file.
fn unwritable_at(path: &Path) -> impl Fn(std::io::Error) -> Failure {
    let path = path.to_owned();
    move |error| match error.kind() {
        std::io::ErrorKind::StorageFull | std::io::ErrorKind::QuotaExceeded => unwritable(error),
        _ => unwritable(std::io::Error::other(format!(
            "{}: {error}",
            path.display()
        ))),
    }
}

/// A failure of the file system as a sentence.
fn unwritable(error: std::io::Error) -> Failure {
    archive::Trouble::from(error).into()
}

/// How many rows a noun has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct NounCount {
    pub noun: String,
    pub count: u64,
}

fn counts(contents: &Contents) -> Vec<NounCount> {
    let rows = contents.rows.iter().filter(|(_, count)| *count > 0);
    rows.map(|(noun, count)| NounCount {
        noun: noun.as_str().to_owned(),
        count: *count,
    })
    .collect()
}

fn told_time(at: DateTime<FixedOffset>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Secs, false)
}

fn hybrid_time(at: HybridTime, zone: DateTime<FixedOffset>) -> String {
    let at = DateTime::from_timestamp_millis(at.milliseconds).unwrap_or_default();
    told_time(at.with_timezone(zone.offset()))
}

/// The file that a request names: where the maker said, or a new one among those we made.
fn target(keep: &Keep, asked: Option<&str>, made: &str) -> Result<PathBuf, Failure> {
    let Some(asked) = asked else {
        return Ok(keep.beside(MADE)?.join(made));
    };
    let path = PathBuf::from(asked);
    let is_in_a_folder = path.parent().is_some_and(Path::is_dir);
    if !path.is_absolute() || path.file_name().is_none() || !is_in_a_folder || path.is_dir() {
        let message = format!("The file must lie in a folder that is there; {asked:?} does not.");
        return Err(Failure::invalid("file", message));
    }
    if lies_in(&path, &keep.folder) {
        let message = "A copy must lie outside the folder of the journal itself.";
        return Err(Failure::invalid("file", message));
    }
    Ok(path)
}

/// Whether a file would lie in a folder or below it, however its path is spelled: by links, by `..`,
/// in capitals where the system does not tell them apart.
fn lies_in(path: &Path, folder: &Path) -> bool {
    let found = path.parent().and_then(|parent| parent.canonicalize().ok());
    let (Some(parent), Ok(folder)) = (found, folder.canonicalize()) else {
        return path.starts_with(folder);
    };
    parent.ancestors().any(|above| is_same(above, &folder))
}

/// Whether two paths lead to the same folder.
fn is_same(one: &Path, other: &Path) -> bool {
    #[cfg(unix)]
    {
        use std::os::unix::fs::MetadataExt as _;
        let mark = |path: &Path| fs::metadata(path).map(|meta| (meta.dev(), meta.ino()));
        if let (Ok(one), Ok(other)) = (mark(one), mark(other)) {
            return one == other;
        }
    }
    one == other
}

/// Lets go of earlier made files of the kind that `is_such` knows by their names: each is as large as
/// the journal, and `newest` is whole.
fn forget_made(keep: &Keep, newest: &str, is_such: impl Fn(&str) -> bool) {
    let made = fs::read_dir(keep.folder.join(MADE)).into_iter().flatten();
    for entry in made.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if name != newest && is_such(&name) {
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// The file that a request names to be read.
fn source(keep: &Keep, asked: &str) -> Result<PathBuf, Failure> {
    if let Some(name) = asked.strip_prefix("brought:") {
        let path = keep.folder.join(BROUGHT).join(name);
        if file::is_name(name) && path.is_file() {
            return Ok(path);
        }
        let message = "The file did not arrive, or the app was restarted since; choose it again.";
        return Err(Failure::not_found("file", message));
    }
    if let Some(name) = asked.strip_prefix("made:") {
        let path = keep.folder.join(MADE).join(name);
        if file::is_made(name) && path.is_file() {
            return Ok(path);
        }
        return Err(Failure::not_found("file", Message::new("made-file-gone")));
    }
    let path = PathBuf::from(asked);
    if path.is_absolute() && path.is_file() {
        return Ok(path);
    }
    let message = format!("There is no file {asked:?}.");
    Err(Failure::not_found("file", message))
}

/// A passphrase that is worth the name, if there is one.
fn passphrase(asked: Option<&str>) -> Result<Option<&str>, Failure> {
    match asked {
        Some(text) if text.chars().count() < 8 => Err(Failure::invalid(
            "passphrase",
            "The passphrase must have at least 8 characters; without it nobody can open the file again, so write it down.",
        )),
        other => Ok(other),
    }
}

fn stopped() -> Failure {
    Failure::new(Code::Storage, "This was stopped; nothing was changed.")
}
