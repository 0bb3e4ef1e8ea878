//! Damaged journals that were set aside.

use std::fs;
use std::path::{Path, PathBuf};

use ::disk::Disk;
use message::Failure;

use crate::folder::{JOURNAL, private, unwritable, with_suffix};

/// Damaged journals that were set aside and hold something, the latest last.
pub fn damaged_files(folder: &Path) -> Vec<PathBuf> {
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

/// Gives the journal that lies in the folder, and what SQLite keeps beside it, the name of a
/// damaged one.
pub fn set_aside(folder: &Path, disk: &Disk) -> Result<(), Failure> {
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

pub fn free_name(folder: &Path) -> String {
    let names = (1..).map(|number| format!("damaged-{number}.trugbook"));
    let free = |name: &String| !PathBuf::from(folder).join(name).exists();
    names.into_iter().find(free).unwrap_or_default()
}
