//! What can be read of a damaged journal, in a new one.

use std::collections::BTreeMap;
use std::path::Path;

use ::disk::Disk;
use chrono::{DateTime, FixedOffset};
use journal::{DeedId, DeviceId};
use message::{Argument, Failure, Voice, carried, say};
use serde::{Deserialize, Serialize};
use store::Store;

use crate::damaged::{damaged_files, free_name, set_aside};
use crate::folder::{JOURNAL, Keep, WORK, held, id_at, private, remove_journal, unwritable};
use crate::report::{LAST, LastBackup, NounCount, told_time};

/// Under this key the journal remembers that it was saved from a damaged one.
pub const RESCUE: &str = "rescue";
/// The saved journal when it is whole but not yet in its place.
const SAVED: &str = "journal.trugbook.saved";

/// What was saved of a damaged journal and what was not.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RescueReport {
    pub at: String,
    /// The damaged file, which is kept.
    pub damaged_file: String,
    /// What was saved, what was not, what to do: messages, which the book keeps until they are read.
    pub sentences: Vec<String>,
    pub deeds: u64,
    pub deeds_lost: u64,
    /// Entries that were saved as they stood although what was written about them is lost.
    pub entries_as_they_stood: Vec<NounCount>,
}

/// Saves what can be read of a journal that shows damage, and sets the damaged file aside.
pub fn rescued(
    keep: &Keep,
    now: DateTime<FixedOffset>,
    voice: Voice,
) -> Result<RescueReport, Failure> {
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
            .ok_or_else(|| Failure::not_found("rescue", say!("no-damaged-file")))?,
    };
    let saved = save(&keep.folder, &from, &keep.disk, device, now, voice)
        .and_then(|report| put_in_place(&keep.folder, &keep.disk).map(|()| report));
    if lost.is_none() || saved.is_ok() {
        *writer = Store::open(&keep.folder.join(JOURNAL), device)?;
        *reader = Store::open(&keep.folder.join(JOURNAL), device)?;
        *lost = None;
    }
    saved
}

/// Reads what can be read of the journal `from` into a new one beside the one in the folder.
pub fn save(
    folder: &Path,
    from: &Path,
    disk: &Disk,
    device: DeviceId,
    now: DateTime<FixedOffset>,
    voice: Voice,
) -> Result<RescueReport, Failure> {
    let work = folder.join(WORK);
    disk.create_folders(&work).map_err(unwritable)?;
    let fresh = work.join("saved");
    remove_journal(&fresh);
    private(disk, &fresh)?;
    let rescued = store::rescue(
        from,
        &fresh,
        &[LAST],
        device,
        DeedId(id_at(now)),
        now,
        voice,
    )?;
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
                noun: *noun,
                count: *count,
            })
            .collect::<Vec<_>>(),
    };
    let mut store = Store::open(&fresh, device)?;
    let unwritten = |error: serde_json::Error| {
        let message = say!("file-disk", detail = Argument::own(error.to_string()));
        Failure::new(message::Code::Storage, message)
    };
    let text = serde_json::to_string(&report).map_err(unwritten)?;
    store.note(RESCUE, &carried::kept(&text))?;
    let last = store.noted(LAST)?;
    if let Some(mut last) = last.and_then(|text| serde_json::from_str::<LastBackup>(&text).ok()) {
        // Deeds that are lost count no more. Were they of after the backup, one is reminded sooner.
        last.deeds = last.deeds.saturating_sub(rescued.lost).min(rescued.deeds);
        store.note(LAST, &serde_json::to_string(&last).map_err(unwritten)?)?;
    }
    drop(store);
    // The database has synced the file itself; its name becomes durable with the rename.
    disk.rename(&fresh, &folder.join(SAVED))
        .map_err(unwritable)?;
    Ok(report)
}

/// Sets the damaged journal aside and gives the saved one its name. Whatever moment a kill comes,
/// the saved file is whole under one of its names, and this goes on where it stopped.
pub fn put_in_place(folder: &Path, disk: &Disk) -> Result<(), Failure> {
    let saved = folder.join(SAVED);
    if !saved.is_file() {
        return Ok(());
    }
    set_aside(folder, disk)?;
    disk.rename(&saved, &folder.join(JOURNAL))
        .map_err(unwritable)
}

/// What was saved, what was not, what to do, as texts carry it.
pub fn sentences(rescued: &store::Rescued) -> Vec<String> {
    let mut sentences = vec![say!("rescue-deeds", count = rescued.deeds)];
    let count: u64 = rescued.rows.values().sum();
    if count > 0 {
        let stood: BTreeMap<_, _> = rescued.rows.iter().collect();
        let stood = stood
            .into_iter()
            .map(|(noun, count)| store::counted(*noun, *count).into());
        let what = Argument::all_of(stood);
        sentences.push(say!("rescue-rows", count, what));
    }
    sentences.push(match (rescued.lost, rescued.end_found) {
        (0, true) => say!("rescue-all"),
        (count, true) => say!("rescue-lost", count),
        (_, false) => say!("rescue-end-unknown"),
    });
    sentences.push(say!("rescue-photos"));
    sentences.into_iter().map(String::from).collect()
}
