//! A book that is not where it was. Where the journal is missing or empty although the folder shows
//! that there was one, nothing is begun: until the maker chose what takes its place, only what helps
//! to choose is answered.

use std::fs;
use std::path::Path;

use journal::DeviceId;
use message::Message;
use serde::{Deserialize, Serialize};

use super::aside::{self, RestorePoint};
use super::backup::LAST;
use super::opening::{damaged_files, set_aside};
use super::{JOURNAL, Keep, MADE, WORK, private, remove_journal, unwritable, with_suffix};
use crate::app::held;
use crate::wire::bare_request;
use crate::{App, Code, Command, Failure};

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

/// A book that is not where it was, and what is still there of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LostBook {
    pub how: LostHow,
    /// Originals of photos in the folder.
    pub photos: u64,
    /// Whether there is a damaged file that `rescue.make` can read.
    pub can_rescue: bool,
    /// Backups that were made here and not taken away yet, as the field `file` calls them.
    pub backups: Vec<String>,
}

bare_request!(
    /// To which states can the journal go back, and is it there at all?
    ListRestorePoints
);

/// The answer to [`ListRestorePoints`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RestorePoints {
    /// Latest first.
    pub points: Vec<RestorePoint>,
    /// Set while the journal is missing or empty.
    pub lost: Option<LostBook>,
}

/// Begins a new, empty journal in the place of one that is missing. What is still there stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BeginAnew {
    /// Must be true: without it nothing is begun.
    pub sure: Option<bool>,
}

/// A new journal was begun.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BegunAnew {
    /// Restore points that are kept beside it.
    pub points: u64,
}

/// Nouns of commands that are answered although there is no journal.
const ANSWERED: [&str; 4] = ["restore", "rescue", "job", "file"];

/// Refuses what needs a journal while there is none.
pub(crate) fn answers(app: &App, name: &str) -> Result<(), Failure> {
    let noun = name.split('.').next().unwrap_or_default();
    if app.keep.lost().is_none() || ANSWERED.contains(&noun) || name == "setting.show" {
        return Ok(());
    }
    Err(Failure::new(Code::Lost, Message::new("book-lost")))
}

/// Whether a journal was in this folder that is not there any more.
pub(super) fn look(folder: &Path) -> Option<LostHow> {
    let path = folder.join(JOURNAL);
    match fs::metadata(&path) {
        Ok(meta) if meta.is_file() && meta.len() == 0 => Some(LostHow::Empty),
        Ok(meta) if meta.is_file() && has_no_name(&path) && store::is_blank(&path) => {
            Some(LostHow::Empty)
        }
        Ok(_) => None,
        Err(_) if has_traces(folder) => Some(LostHow::Missing),
        Err(_) => None,
    }
}

/// Whether the header of the database does not name this app, which one that SQLite is still to
/// bring up to date from its log may not do yet.
fn has_no_name(path: &Path) -> bool {
    let mut head = Vec::new();
    let read = fs::File::open(path)
        .and_then(|file| std::io::Read::read_to_end(&mut std::io::Read::take(file, 72), &mut head));
    // SQLite file format 1.3: the application id stands at 68.
    read.is_ok() && head.get(68..72) == Some(&[0; 4])
}

/// Whether anything in the folder says that a book was begun in it.
fn has_traces(folder: &Path) -> bool {
    let path = folder.join(JOURNAL);
    let holds_bytes = |path: &Path| fs::metadata(path).is_ok_and(|meta| meta.len() > 0);
    ["-wal", "-journal"]
        .iter()
        .any(|suffix| holds_bytes(&with_suffix(&path, suffix)))
        || crate::claim::says_begun(folder)
        || aside::any(folder)
        || !damaged_files(folder).is_empty()
        || !made(folder).is_empty()
        || has_originals(folder)
}

fn has_originals(folder: &Path) -> bool {
    let parts = fs::read_dir(folder.join("photos").join("originals"));
    parts.into_iter().flatten().flatten().any(|part| {
        let files = fs::read_dir(part.path()).into_iter().flatten();
        files.flatten().next().is_some()
    })
}

/// Backups that lie among the made files.
fn made(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder.join(MADE)).into_iter().flatten();
    let names = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned());
    let mut made: Vec<String> = names
        .filter(|name| super::file::is_made(name) && is_backup(name))
        .collect();
    made.sort_unstable();
    made
}

pub(super) fn is_backup(name: &str) -> bool {
    !name.starts_with(super::export::PREFIX)
        && (name.ends_with(".zip") || name.ends_with(".zip.age"))
}

/// Puts a journal in the place of the missing one, or begins a new one, under the name `device`.
/// Whatever moment a kill comes, there is either still none or the whole of it.
pub(super) fn settle(keep: &Keep, with: Option<&Path>, device: DeviceId) -> Result<(), Failure> {
    let path = keep.folder.join(JOURNAL);
    let fresh = keep.beside(WORK)?.join("begun");
    remove_journal(&fresh);
    begin(keep, &fresh, device)?;
    if let Some(with) = with {
        let mut begun = store::Store::open(&fresh, device)?;
        let last = store::Store::open(with, device)?.noted(LAST)?;
        // No state lies aside that this one could be taken back to.
        begun.replace(with, "")?;
        if let Some(last) = last.filter(|_| device != held(&keep.reader).device()) {
            begun.note(LAST, &last)?;
        }
    }
    let (mut writer, mut reader) = (held(&keep.writer), held(&keep.reader));
    set_aside(&keep.folder, &keep.disk)?;
    keep.disk.rename(&fresh, &path).map_err(unwritable)?;
    *writer = store::Store::open(&path, device)?;
    *reader = store::Store::open(&path, device)?;
    *held(&keep.lost) = None;
    Ok(())
}

/// A new journal in a file of its own, closed, so that all of it is in the one file.
fn begin(keep: &Keep, fresh: &Path, device: DeviceId) -> Result<(), Failure> {
    private(&keep.disk, fresh)?;
    drop(store::Store::open(fresh, device)?);
    Ok(())
}

impl Command for ListRestorePoints {
    const NAME: &'static str = "restore.points";
    type Reply = RestorePoints;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let keep = &app.keep;
        let lost = match keep.lost() {
            None => None,
            Some(how) => Some(LostBook {
                how,
                photos: keep.photos.hashes()?.len() as u64,
                can_rescue: !damaged_files(&keep.folder).is_empty(),
                backups: made(&keep.folder)
                    .into_iter()
                    .map(|name| format!("made:{name}"))
                    .collect(),
            }),
        };
        Ok(RestorePoints {
            points: aside::points(&keep.folder, app.now()),
            lost,
        })
    }
}

impl Command for BeginAnew {
    const NAME: &'static str = "restore.anew";
    type Reply = BegunAnew;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.no_job_runs()?;
        let keep = &app.keep;
        if keep.lost().is_none() {
            return Err(Failure::new(Code::Invalid, Message::new("book-there")));
        }
        if self.sure != Some(true) {
            return Err(Failure::invalid("sure", Message::new("book-anew-sure")));
        }
        let device = held(&keep.reader).device();
        settle(keep, None, device)?;
        Ok(BegunAnew {
            points: aside::points(&keep.folder, app.now()).len() as u64,
        })
    }
}
