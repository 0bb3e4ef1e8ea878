//! Restore points: what the journal was is written to a file of its own before it is replaced or
//! merged, and the new state names that file, so that either can be taken back. The last three are
//! kept; a file of any other name is the maker's own and is never touched.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use chrono::{DateTime, FixedOffset};
use message::Failure;
use serde::Serialize;
use store::Store;
use uuid::Uuid;

use crate::folder::{Keep, Scrap, WORK, private, remove_journal, unwritable};
use crate::report::told_time;

/// So many restore points are kept.
const KEPT: usize = 3;

/// A state of the journal that can be gone back to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RestorePoint {
    /// What `restore.back` calls it.
    pub point: String,
    /// When it was set.
    pub at: String,
    /// Its size.
    pub bytes: u64,
}

/// What a file is named after if it is a restore point.
fn named(name: &str) -> Option<Uuid> {
    let id = name.strip_prefix("before-")?.strip_suffix(".trugbook")?;
    let uuid = Uuid::parse_str(id).ok()?;
    // Exactly as we write it: no braces, no capitals, no digits alone.
    (uuid.hyphenated().to_string() == id).then_some(uuid)
}

fn name_of(point: Uuid) -> String {
    format!("before-{}.trugbook", point.hyphenated())
}

/// The restore points in a folder with their files, latest first.
fn found(folder: &Path) -> Vec<(Uuid, PathBuf, fs::Metadata)> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let mut points: Vec<_> = entries
        .filter_map(|entry| {
            let point = named(&entry.file_name().to_string_lossy())?;
            let meta = entry.metadata().ok().filter(fs::Metadata::is_file)?;
            Some((point, entry.path(), meta))
        })
        .collect();
    points.sort_by_key(|(point, _, _)| std::cmp::Reverse(*point));
    points
}

/// Whether there is any restore point in a folder.
pub fn any(folder: &Path) -> bool {
    !found(folder).is_empty()
}

/// The restore points in a folder, latest first.
pub fn points(folder: &Path, now: DateTime<FixedOffset>) -> Vec<RestorePoint> {
    let told = |(point, _, meta): (Uuid, PathBuf, fs::Metadata)| {
        let set = point.get_timestamp().and_then(|at| {
            let (seconds, nanoseconds) = at.to_unix();
            DateTime::from_timestamp(i64::try_from(seconds).ok()?, nanoseconds)
        });
        let written = || meta.modified().unwrap_or(SystemTime::UNIX_EPOCH).into();
        let at: DateTime<chrono::Utc> = set.unwrap_or_else(written);
        RestorePoint {
            point: point.hyphenated().to_string(),
            at: told_time(at.with_timezone(now.offset())),
            bytes: meta.len(),
        }
    };
    found(folder).into_iter().map(told).collect()
}

/// The file of a restore point, if there is one of this name.
pub fn file_of(folder: &Path, point: &str) -> Option<PathBuf> {
    let point = Uuid::parse_str(point).ok()?;
    Some(folder.join(name_of(point))).filter(|path| path.is_file())
}

/// Changes the whole journal, which the caller lets nobody else write. `change` is given the name
/// of the file that now holds what it was, and says whether anything has changed. Of the earlier
/// restore points the oldest goes once the new state was read and is sound, or `spent`, which is the
/// journal then.
pub fn changed<T>(
    keep: &Keep,
    store: &mut Store,
    id: Uuid,
    spent: Option<&Path>,
    change: impl FnOnce(&mut Store, &str) -> Result<(bool, T), store::Failure>,
) -> Result<T, Failure> {
    let name = name_of(id);
    let path = keep.folder.join(&name);
    // Whole before it bears its name: a kill leaves no half of a restore point.
    let draft = Scrap(keep.beside(WORK)?.join(&name));
    private(&keep.disk, &draft.0)?;
    store.snapshot(&draft.0, |_, _| Ok::<_, store::Failure>(()))?;
    keep.disk.rename(&draft.0, &path).map_err(unwritable)?;
    match change(store, &name) {
        Ok((true, value)) => {
            if store.unsound().is_ok_and(|found| found.is_empty()) {
                spent.into_iter().for_each(remove_journal);
                forget_old(keep, &path);
            }
            Ok(value)
        }
        Ok((false, value)) => {
            remove_journal(&path);
            Ok(value)
        }
        Err(failure) => {
            // The journal is as it was; where that can be read, the copy of it is of no more use.
            if store.unsound().is_ok_and(|found| found.is_empty()) {
                remove_journal(&path);
            }
            Err(failure.into())
        }
    }
}

fn forget_old(keep: &Keep, newest: &Path) {
    let earlier = found(&keep.folder)
        .into_iter()
        // Where the clock was set back, the newest is not the one of the latest time.
        .filter(|(_, path, _)| path != newest);
    for (_, path, _) in earlier.skip(KEPT - 1) {
        remove_journal(&path);
    }
}

/// Whether what the journal was before the last restore or merge is still there.
pub fn can_undo(keep: &Keep, store: &Store) -> Result<bool, Failure> {
    let before = store.aside()?.map(|name| keep.folder.join(name));
    Ok(before.is_some_and(|path| path.is_file()))
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn a_file_of_the_makers_own_is_no_restore_point() {
        assert!(named("before-0198c0de-0000-7000-8000-000000000001.trugbook").is_some());
        for name in [
            "before-holiday.trugbook",
            "before-0198C0DE-0000-7000-8000-000000000001.trugbook",
            "before-0198c0de000070008000000000000001.trugbook",
            "before-{0198c0de-0000-7000-8000-000000000001}.trugbook",
            "before-0198c0de-0000-7000-8000-000000000001.trugbook-wal",
            "Before-0198c0de-0000-7000-8000-000000000001.trugbook",
        ] {
            assert!(named(name).is_none(), "{name}");
        }
    }
}
