//! A book that is not where it was. Where the journal is missing or empty although the folder shows
//! that there was one, nothing is begun: until the maker chose what takes its place, only what helps
//! to choose is answered.

use std::fs;
use std::path::Path;

use journal::DeviceId;
use message::Failure;

use crate::aside;
use crate::damaged::{damaged_files, set_aside};
use crate::folder::{
    JOURNAL, Keep, LostHow, MADE, WORK, held, is_backup, private, remove_journal, unwritable,
    with_suffix,
};
use crate::report::LAST;

/// Whether a journal was in this folder that is not there any more.
pub fn look(folder: &Path) -> Option<LostHow> {
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
        || crate::lock::says_begun(folder)
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
pub fn made(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder.join(MADE)).into_iter().flatten();
    let names = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned());
    let mut made: Vec<String> = names
        .filter(|name| crate::folder::is_made(name) && is_backup(name))
        .collect();
    made.sort_unstable();
    made
}

/// Puts a journal in the place of the missing one, or begins a new one, under the name `device`.
/// Whatever moment a kill comes, there is either still none or the whole of it.
pub fn settle(keep: &Keep, with: Option<&Path>, device: DeviceId) -> Result<(), Failure> {
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
