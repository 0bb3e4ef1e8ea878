//! `restore.look`, `restore.apply` and `restore.undo`.
//!
//! Photos are kept under their hash and never replaced, so restoring only adds to them; the
//! journal itself is replaced in one transaction of the database, which also notes where the
//! journal of before lies. A kill leaves the one or the other, each with its own note.

use std::path::Path;

use journal::Noun;
use message::{Failure, Message, say};
use serde::Serialize;
use store::Store;
use uuid::Uuid;

use crate::aside::{self, can_undo};
use crate::folder::{Keep, Scrap, WORK, held, unwritable};
use crate::incoming::{Carried, Incoming};
use crate::job::Task;
use crate::lost;
use crate::report::{NounCount, counts, hybrid_time};

/// Rows of one noun, here and in the backup.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct NounBoth {
    pub noun: Noun,
    pub here: u64,
    pub there: u64,
}

/// What a backup holds.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BackupLook {
    pub made_at: Option<String>,
    pub app_version: Option<String>,
    pub bytes: u64,
    pub rows: Vec<NounBoth>,
    pub latest_here: Option<String>,
    pub latest_there: Option<String>,
    /// Deeds that only this journal has: restoring takes them away (and can be undone).
    pub only_here: u64,
    /// Deeds that only the backup has.
    pub only_there: u64,
    pub photos: u64,
    pub with_photos: bool,
    /// Photos that the backup's journal names and that are nowhere.
    pub photos_missing: u64,
    /// Entries that are damaged, by name.
    pub damaged: Vec<String>,
    /// Something outside the entries is not as it was written.
    pub damaged_around: bool,
    /// What is wrong with the journal in the backup, a sentence for each.
    pub faults: Vec<Message>,
    /// Whether it can be restored, if need be without what is damaged.
    pub restorable: bool,
}

/// A journal was put in the place of another.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Restored {
    pub rows: Vec<NounCount>,
    pub photos_new: u64,
    pub photos_missing: u64,
    pub faults: Vec<Message>,
    /// Whether it can be taken back: not where there was no journal before.
    pub can_undo: bool,
}

/// Puts the journal in a file of this device in the place of the one that is here.
pub fn gone_back(
    keep: &Keep,
    id: Uuid,
    before: &Path,
    spent: Option<&Path>,
) -> Result<Restored, Failure> {
    // A copy is brought up to date and written to; the file stays as it is.
    let scrap = Scrap(keep.beside(WORK)?.join(format!("back-{id}")));
    crate::folder::copy(&keep.disk, before, &scrap.0)?;
    let damaged = |_| Failure::invalid("point", say!("point-damaged"));
    let device = {
        let store = Store::open(&scrap.0, held(&keep.reader).device()).map_err(damaged)?;
        store.glance().map_err(damaged)?;
        match store.unsound() {
            Ok(found) if found.is_empty() => store.device(),
            _ => return Err(damaged(store::Failure::NotAJournal)),
        }
    };
    if keep.lost().is_some() {
        lost::settle(keep, Some(&scrap.0), device)?;
    } else {
        replace(keep, &scrap.0, id, spent)?;
    }
    let store = held(&keep.writer);
    Ok(Restored {
        rows: counts(&store.contents()?),
        photos_new: 0,
        photos_missing: 0,
        faults: store.audit()?,
        can_undo: can_undo(keep, &store)?,
    })
}

pub fn look(task: &Task, path: &Path, passphrase: Option<&str>) -> Result<BackupLook, Failure> {
    let incoming = Incoming::open(task, path, passphrase)?;
    let manifest = incoming.file.manifest();
    let about = |name: &str| manifest.about.get(name);
    let text = |name: &str| {
        about(name)
            .and_then(|text| text.as_str())
            .map(str::to_owned)
    };
    let door = task.keep.door()?;
    let here = door.contents()?;
    let mut look = BackupLook {
        made_at: text("made_at"),
        app_version: text("app_version"),
        bytes: std::fs::metadata(path).map_err(unwritable)?.len(),
        rows: Vec::new(),
        latest_here: here.latest.map(|at| hybrid_time(at, task.now)),
        latest_there: None,
        only_here: 0,
        only_there: 0,
        photos: incoming.photos().len() as u64,
        with_photos: about("with_photos")
            .and_then(|with| with.as_bool())
            .unwrap_or(false),
        photos_missing: 0,
        damaged: incoming.damage.entries.clone(),
        damaged_around: incoming.damage.around,
        faults: Vec::new(),
        restorable: false,
    };
    if incoming.has_log() {
        let carried = incoming.carried(task)?;
        let there = carried.store.contents()?;
        look.restorable = true;
        look.latest_there = there.latest.map(|at| hybrid_time(at, task.now));
        look.rows = both(&here, &there);
        (look.only_here, look.only_there) = door.differs_from(incoming.log()?)?;
        look.photos_missing = photos_missing(&incoming, task, &carried.store)?;
        look.faults = carried.store.audit()?;
    }
    Ok(look)
}

fn both(here: &store::Contents, there: &store::Contents) -> Vec<NounBoth> {
    let rows = here.rows.iter().map(|(noun, count)| NounBoth {
        noun: *noun,
        here: *count,
        there: there.of(*noun),
    });
    rows.filter(|row| row.here > 0 || row.there > 0).collect()
}

pub fn apply(
    task: &Task,
    path: &Path,
    passphrase: Option<&str>,
    without_damaged: bool,
) -> Result<Restored, Failure> {
    let mut incoming = Incoming::accepted(task, path, passphrase, without_damaged)?;
    let carried = incoming.carried(task)?;
    let photos_new = incoming.keep_photos(task)?;
    let photos_missing = photos_missing(&incoming, task, &carried.store)?;
    // Closed, so that all of it is in the one file.
    let Carried { store, file } = carried;
    drop(store);
    if task.keep.lost().is_some() {
        let device = held(&task.keep.reader).device();
        lost::settle(&task.keep, Some(&file.0), device)?;
    } else {
        replace(&task.keep, &file.0, task.id, None)?;
    }
    let store = held(&task.keep.writer);
    Ok(Restored {
        rows: counts(&store.contents()?),
        photos_new,
        photos_missing,
        faults: store.audit()?,
        can_undo: can_undo(&task.keep, &store)?,
    })
}

/// How many photos the journal in the backup names that are nowhere.
fn photos_missing(incoming: &Incoming, task: &Task, store: &Store) -> Result<u64, Failure> {
    let mut named = Vec::new();
    store.each_id(Noun::Photo, |id| {
        named.push(id.to_owned());
        Ok::<_, Failure>(())
    })?;
    incoming.photos_missing(task, named.iter().map(String::as_str))
}

/// Puts the journal in a file in the place of the one that is here.
fn replace(keep: &Keep, with: &Path, id: Uuid, spent: Option<&Path>) -> Result<(), Failure> {
    let mut store = held(&keep.writer);
    aside::changed(keep, &mut store, id, spent, |store, before| {
        store.replace(with, before).map(|()| (true, ()))
    })
}
