//! Opening the journal: what an interrupted run left is finished or cleared, and a damaged
//! journal is set aside and what can be read of it saved. `rescue.make` does the same when
//! damage shows later.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use ::disk::Disk;
use chrono::{DateTime, FixedOffset};
use journal::{DeedId, DeviceId};
use message::Message;
use serde::{Deserialize, Serialize};
use store::{Failure as Stored, Store};

use super::backup::{LAST, LastBackup};
use super::lost::{self, LostHow};
use super::{
    BROUGHT, JOURNAL, MADE, NounCount, WORK, private, remove_journal, told_time, unwritable,
    unwritable_at, with_suffix,
};
use crate::app::{held, id_at};
use crate::wire::bare_request;
use crate::{App, Command, Failure};

/// Under this key the journal remembers that it was saved from a damaged one.
pub(super) const RESCUE: &str = "rescue";
/// The saved journal when it is whole but not yet in its place.
const SAVED: &str = "journal.trugbook.saved";

/// What was saved of a damaged journal and what was not.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RescueReport {
    pub at: String,
    /// The damaged file, which is kept.
    pub damaged_file: String,
    /// Finished sentences: what was saved, what was not, what to do.
    pub sentences: Vec<String>,
    pub deeds: u64,
    pub deeds_lost: u64,
    /// Entries that were saved as they stood although what was written about them is lost.
    pub entries_as_they_stood: Vec<NounCount>,
}

bare_request!(
    /// Saves what can be read of a journal that shows damage, and sets the damaged file aside.
    MakeRescue
);

impl Command for MakeRescue {
    const NAME: &'static str = "rescue.make";
    type Reply = RescueReport;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.no_job_runs()?;
        let keep = &app.keep;
        let (mut writer, mut reader) = (held(&keep.writer), held(&keep.reader));
        let device = writer.device();
        // Both doors are closed while the file changes places; should it not open again, nothing is
        // taken that would be lost.
        *writer = Store::closed(device)?;
        *reader = Store::closed(device)?;
        let mut lost = held(&keep.lost);
        let from = match *lost {
            None => keep.folder.join(JOURNAL),
            // A journal that is missing or empty gives nothing; one that was damaged before it may.
            Some(_) => damaged_files(&keep.folder)
                .pop()
                .ok_or_else(|| Failure::not_found("rescue", Message::new("no-damaged-file")))?,
        };
        let saved = save(&keep.folder, &from, &keep.disk, device, app.now())
            .and_then(|report| put_in_place(&keep.folder, &keep.disk).map(|()| report));
        if lost.is_none() || saved.is_ok() {
            *writer = Store::open(&keep.folder.join(JOURNAL), device)?;
            *reader = Store::open(&keep.folder.join(JOURNAL), device)?;
            *lost = None;
        }
        saved
    }
}

/// Opens the journal of a folder, and begins one where there never was any. Where it is missing or
/// empty although there was one, a journal that takes nothing stands in, and what became of it is
/// told.
pub(crate) fn opened(
    folder: &Path,
    disk: &Disk,
    device: DeviceId,
    now: DateTime<FixedOffset>,
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
            save(folder, &path, disk, device, now)?;
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
        let is_ours = name.contains(".trugbook") || name == crate::claim::LOCK;
        if is_ours && entry.file_type().is_ok_and(|kind| kind.is_file()) {
            ::disk::keep_private(&entry.path());
        }
    }
}

/// Damaged journals that were set aside and hold something, the latest last.
pub(super) fn damaged_files(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let mut damaged: Vec<(u64, PathBuf)> = entries
        .filter_map(|entry| {
            let name = entry.file_name().to_string_lossy().into_owned();
            let number = name.strip_prefix("damaged-")?.strip_suffix(".trugbook")?;
            let holds_bytes = entry.metadata().is_ok_and(|meta| meta.len() > 0);
            Some((number.parse().ok()?, entry.path())).filter(|_| holds_bytes)
        })
        .collect();
    damaged.sort_unstable();
    damaged.into_iter().map(|(_, path)| path).collect()
}

/// Reads what can be read of the journal `from` into a new one beside the one in the folder.
fn save(
    folder: &Path,
    from: &Path,
    disk: &Disk,
    device: DeviceId,
    now: DateTime<FixedOffset>,
) -> Result<RescueReport, Failure> {
    let work = folder.join(WORK);
    disk.create_folders(&work).map_err(unwritable)?;
    let fresh = work.join("saved");
    remove_journal(&fresh);
    private(disk, &fresh)?;
    let rescued = store::rescue(from, &fresh, &[LAST], device, DeedId(id_at(now)), now)?;
    let report = RescueReport {
        at: told_time(now),
        damaged_file: match from.file_name() {
            Some(name) if name != JOURNAL => name.to_string_lossy().into_owned(),
            _ => free_name(folder),
        },
        sentences: sentences(&rescued),
        deeds: rescued.deeds,
        deeds_lost: rescued.lost,
        entries_as_they_stood: rescued
            .rows
            .iter()
            .map(|(noun, count)| NounCount {
                noun: noun.as_str().to_owned(),
                count: *count,
            })
            .collect::<Vec<_>>(),
    };
    let mut store = Store::open(&fresh, device)?;
    let text = serde_json::to_string(&report)
        .map_err(|error| Failure::new(crate::Code::Storage, format!("{error}.")))?;
    store.note(RESCUE, &text)?;
    let last = store.noted(LAST)?;
    if let Some(mut last) = last.and_then(|text| serde_json::from_str::<LastBackup>(&text).ok()) {
        // Deeds that are lost count no more. Were they of after the backup, one is reminded sooner.
        last.deeds = last.deeds.saturating_sub(rescued.lost).min(rescued.deeds);
        let text = serde_json::to_string(&last)
            .map_err(|error| Failure::new(crate::Code::Storage, format!("{error}.")))?;
        store.note(LAST, &text)?;
    }
    drop(store);
    // The database has synced the file itself; its name becomes durable with the rename.
    disk.rename(&fresh, &folder.join(SAVED))
        .map_err(unwritable)?;
    Ok(report)
}

/// Sets the damaged journal aside and gives the saved one its name. Whatever moment a kill comes,
/// the saved file is whole under one of its names, and this goes on where it stopped.
fn put_in_place(folder: &Path, disk: &Disk) -> Result<(), Failure> {
    let saved = folder.join(SAVED);
    if !saved.is_file() {
        return Ok(());
    }
    set_aside(folder, disk)?;
    disk.rename(&saved, &folder.join(JOURNAL))
        .map_err(unwritable)
}

/// Gives the journal that lies in the folder, and what SQLite keeps beside it, the name of a
/// damaged one.
pub(super) fn set_aside(folder: &Path, disk: &Disk) -> Result<(), Failure> {
    let (path, damaged) = (folder.join(JOURNAL), folder.join(free_name(folder)));
    let mut found = false;
    // The file itself goes last: while it is here, the name of the damaged one is still free.
    for suffix in ["-wal", "-shm", ""] {
        let from = with_suffix(&path, suffix);
        if from.exists() {
            disk.rename(&from, &with_suffix(&damaged, suffix))
                .map_err(unwritable)?;
            found = true;
        }
    }
    if found && !damaged.exists() {
        // A log without its journal: the name is taken all the same.
        private(disk, &damaged)?;
    }
    Ok(())
}

fn free_name(folder: &Path) -> String {
    let names = (1..).map(|number| format!("damaged-{number}.trugbook"));
    let free = |name: &String| !PathBuf::from(folder).join(name).exists();
    names.into_iter().find(free).unwrap_or_default()
}

pub(super) fn sentences(rescued: &store::Rescued) -> Vec<String> {
    let mut sentences = vec![format!(
        "The journal was damaged. {} of its entries in the log could be read and are in the new journal.",
        rescued.deeds
    )];
    let stood: BTreeMap<_, _> = rescued.rows.iter().collect();
    let count: u64 = rescued.rows.values().sum();
    if count > 0 {
        let told: Vec<String> = stood
            .iter()
            .map(|(noun, count)| format!("{} ({count})", noun.as_str()))
            .collect();
        sentences.push(format!(
            "{count} things were saved as they stood, without their history: {}.",
            told.join(", ")
        ));
    }
    sentences.push(match (rescued.lost, rescued.end_found) {
        (0, true) => "Nothing else was found missing.".to_owned(),
        (lost, true) => format!("{lost} entries in the log could not be read."),
        (_, false) => {
            "How much could not be read cannot be said, because the list itself is damaged."
                .to_owned()
        }
    });
    sentences.push(
        "The photos are not touched by this, and the damaged file is kept; if something is missing, restore or merge your latest backup."
            .to_owned(),
    );
    sentences
}
