//! The journal's folder: its files, what is made and brought beside it, and the two doors to the journal.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use ::disk::Disk;
use ::photo::Album;
use chrono::{DateTime, FixedOffset};
use message::{Argument, Code, Failure, say};
use serde::Serialize;
use store::Store;
use uuid::{NoContext, Timestamp, Uuid};

/// The journal in its folder.
pub const JOURNAL: &str = "journal.trugbook";
/// What a job needs while it runs; whatever lies there is gone at the next opening.
pub const WORK: &str = "work";
/// Files that a page brought to be read.
pub const BROUGHT: &str = "brought";
/// Files that were made to be taken away.
pub const MADE: &str = "made";

/// What a long job works on: shared with the commands that go on meanwhile.
#[derive(Clone)]
pub struct Keep {
    pub folder: PathBuf,
    /// Two doors to one file: a list is read while a write waits for the disk.
    pub reader: Arc<Mutex<Store>>,
    pub writer: Arc<Mutex<Store>>,
    pub photos: Album,
    pub disk: Disk,
    /// Set while the journal is missing or empty and the maker has not said what shall be done.
    pub lost: Arc<Mutex<Option<LostHow>>>,
}

impl Keep {
    /// A folder of ours beside the journal.
    pub fn beside(&self, name: &str) -> Result<PathBuf, Failure> {
        let folder = self.folder.join(name);
        self.disk
            .create_folders(&folder)
            .map_err(unwritable_at(&folder))?;
        Ok(folder)
    }

    /// What became of the journal, if it is not there.
    pub fn lost(&self) -> Option<LostHow> {
        *self::held(&self.lost)
    }

    /// A door of its own to the journal, so that a long reading holds up nobody.
    pub fn door(&self) -> Result<Store, Failure> {
        let device = self::held(&self.reader).device();
        if self.lost().is_some() {
            // Opening would begin one.
            return Ok(Store::closed(device)?);
        }
        Ok(Store::open(&self.folder.join(JOURNAL), device)?)
    }
}

/// A file that is gone when this is dropped, with the log that SQLite may have put beside it.
pub struct Scrap(pub PathBuf);

impl Drop for Scrap {
    fn drop(&mut self) {
        remove_journal(&self.0);
    }
}

/// Removes a journal file and what SQLite keeps beside it; what cannot be removed now is removed
/// at the next opening.
pub fn remove_journal(path: &Path) {
    for suffix in ["", "-wal", "-shm", "-journal"] {
        let _ = fs::remove_file(with_suffix(path, suffix));
    }
}

pub fn with_suffix(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(suffix);
    PathBuf::from(name)
}

/// A new, empty file that nobody else may read, for SQLite to fill: it asks no leave of its own.
pub fn private(disk: &Disk, path: &Path) -> Result<(), Failure> {
    disk.create(path).map(drop).map_err(unwritable_at(path))
}

/// Copies a file to a new one that nobody else may read.
pub fn copy(disk: &Disk, from: &Path, to: &Path) -> Result<(), Failure> {
    let mut file = fs::File::open(from).map_err(unwritable_at(from))?;
    let mut draft = disk.create(to).map_err(unwritable_at(to))?;
    std::io::copy(&mut file, &mut draft).map_err(unwritable_at(to))?;
    Ok(())
}

/// A failure of the file system as a sentence that names the file.
pub fn unwritable_at(path: &Path) -> impl Fn(std::io::Error) -> Failure {
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
pub fn unwritable(error: std::io::Error) -> Failure {
    archive::Failure::from(error).into()
}

/// The file that a request names: where the maker said, or a new one among those we made.
pub fn target(keep: &Keep, asked: Option<&str>, made: &str) -> Result<PathBuf, Failure> {
    let Some(asked) = asked else {
        return Ok(keep.beside(MADE)?.join(made));
    };
    let path = PathBuf::from(asked);
    let is_in_a_folder = path.parent().is_some_and(Path::is_dir);
    if !path.is_absolute() || path.file_name().is_none() || !is_in_a_folder || path.is_dir() {
        let message = say!("folder-not-there", path = Argument::own(asked));
        return Err(Failure::invalid("file", message));
    }
    if lies_in(&path, &keep.folder) {
        return Err(Failure::invalid("file", say!("copy-outside")));
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
pub fn forget_made(keep: &Keep, newest: &str, is_such: impl Fn(&str) -> bool) {
    let made = fs::read_dir(keep.folder.join(MADE)).into_iter().flatten();
    for entry in made.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if name != newest && is_such(&name) {
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// The file that a request names to be read.
pub fn source(keep: &Keep, asked: &str) -> Result<PathBuf, Failure> {
    if let Some(name) = asked.strip_prefix("brought:") {
        let path = keep.folder.join(BROUGHT).join(name);
        if is_name(name) && path.is_file() {
            return Ok(path);
        }
        return Err(Failure::not_found("file", say!("file-not-arrived")));
    }
    if let Some(name) = asked.strip_prefix("made:") {
        let path = keep.folder.join(MADE).join(name);
        if is_made(name) && path.is_file() {
            return Ok(path);
        }
        return Err(Failure::not_found("file", say!("made-file-gone")));
    }
    let path = PathBuf::from(asked);
    if path.is_absolute() && path.is_file() {
        return Ok(path);
    }
    let message = say!("file-not-there", path = Argument::own(asked));
    Err(Failure::not_found("file", message))
}

/// A passphrase that is worth the name, if there is one.
pub fn passphrase(asked: Option<&str>) -> Result<Option<&str>, Failure> {
    match asked {
        Some(text) if text.chars().count() < 8 => {
            Err(Failure::invalid("passphrase", say!("passphrase-too-short")))
        }
        other => Ok(other),
    }
}

pub fn stopped() -> Failure {
    Failure::new(Code::Storage, say!("stopped"))
}

/// A thread that panicked left no half-written deed behind: the store rolls it back.
pub fn held<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

pub fn id_at(now: DateTime<FixedOffset>) -> Uuid {
    let seconds = u64::try_from(now.timestamp()).unwrap_or_default();
    Uuid::new_v7(Timestamp::from_unix(
        NoContext,
        seconds,
        now.timestamp_subsec_nanos(),
    ))
}

pub fn is_name(name: &str) -> bool {
    (1..=64).contains(&name.len())
        && name
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-')
}

/// Whether a made file may have this name: none leads out of its folder.
pub fn is_made(name: &str) -> bool {
    name.starts_with(|first: char| first.is_ascii_alphanumeric())
        && name
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || b".-".contains(&byte))
}

/// What became of the journal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum LostHow {
    /// Its file is not there.
    Missing,
    /// Its file is there and holds nothing.
    Empty,
}

pub fn is_backup(name: &str) -> bool {
    !name.starts_with(PREFIX) && (name.ends_with(".zip") || name.ends_with(".zip.age"))
}
/// What the names of exports begin with.
pub const PREFIX: &str = "trugbook-export-";

/// The kind that the manifest of a backup names.
pub const KIND: &str = "trugbook backup";
