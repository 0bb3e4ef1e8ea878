//! Opening the journal: what an interrupted run left is finished or cleared, and a damaged journal is set aside and what can be read of it saved.

use std::fs;
use std::path::Path;

use ::disk::Disk;
use chrono::{DateTime, FixedOffset};
use journal::DeviceId;
use message::{Failure, Voice};
use store::{Failure as Stored, Store};

use crate::folder::{BROUGHT, JOURNAL, LostHow, MADE, WORK, private, unwritable_at};
use crate::lost;
use crate::rescue::{put_in_place, save};

/// Opens the journal of a folder, and begins one where there never was any. Where it is missing or
/// empty although there was one, a journal that takes nothing stands in, and what became of it is
/// told.
pub fn opened(
    folder: &Path,
    disk: &Disk,
    device: DeviceId,
    now: DateTime<FixedOffset>,
    voice: Voice,
) -> Result<(Store, Option<LostHow>), Failure> {
    put_in_place(folder, disk)?;
    for scratch in [WORK, BROUGHT] {
        clear(&folder.join(scratch));
    }
    // What was being made when a run was cut off is of no use to anyone.
    for entry in fs::read_dir(folder.join(MADE))
        .into_iter()
        .flatten()
        .flatten()
    {
        if entry
            .path()
            .extension()
            .is_some_and(|ending| ending == "part")
        {
            let _ = fs::remove_file(entry.path());
        }
    }
    if let Some(how) = lost::look(folder) {
        return Ok((Store::closed(device)?, Some(how)));
    }
    let path = folder.join(JOURNAL);
    if !path.exists() {
        begin(folder, disk, device)?;
    }
    let opened = Store::open(&path, device).and_then(|store| store.glance().map(|()| store));
    let store = match opened {
        Err(Stored::Damaged(_) | Stored::NotAJournal) => {
            save(folder, &path, disk, device, now, voice)?;
            put_in_place(folder, disk)?;
            Store::open(&path, device)?
        }
        Err(Stored::Storage(why)) => return Err(unwritable_at(&path)(std::io::Error::other(why))),
        other => other?,
    };
    keep_private(folder);
    Ok((store, None))
}

/// Begins a journal: whole before it bears its name, so that an empty file of this name is never
/// one that was just being begun.
fn begin(folder: &Path, disk: &Disk, device: DeviceId) -> Result<(), Failure> {
    let work = folder.join(WORK);
    disk.create_folders(&work).map_err(unwritable_at(&work))?;
    let fresh = work.join("begun");
    private(disk, &fresh)?;
    drop(Store::open(&fresh, device)?);
    let path = folder.join(JOURNAL);
    disk.rename(&fresh, &path).map_err(unwritable_at(&path))
}

/// Clears a folder of scratch. What cannot be removed is in nobody's way: every job names its files
/// anew.
fn clear(folder: &Path) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        // A link is removed, never what it leads to.
        let is_folder = entry.file_type().is_ok_and(|kind| kind.is_dir());
        let _ = if is_folder {
            fs::remove_dir_all(path)
        } else {
            fs::remove_file(path)
        };
    }
}

/// Lets nobody else read what an earlier version, or another program, left open to others.
fn keep_private(folder: &Path) {
    ::disk::keep_private(folder);
    for name in [WORK, BROUGHT, MADE, "photos", "demo"] {
        ::disk::keep_private(&folder.join(name));
    }
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        let is_ours = name.contains(".trugbook") || name == crate::lock::LOCK;
        if is_ours && entry.file_type().is_ok_and(|kind| kind.is_file()) {
            ::disk::keep_private(&entry.path());
        }
    }
}
