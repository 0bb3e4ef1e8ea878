//! Who may name whom: the arrows of the crates and of the outside libraries.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod bindings;
mod circles;
mod crates;
mod messages;
mod nouns;
mod tables;

use std::path::{Path, PathBuf};

/// The top of the workspace.
fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// Every file below `folder` whose name ends in one of `endings`, in order.
fn files(folder: &Path, endings: &[&str]) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let Ok(entries) = std::fs::read_dir(folder) else {
        return found;
    };
    for entry in entries {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path, endings));
        } else if endings
            .iter()
            .any(|ending| path.to_string_lossy().ends_with(ending))
        {
            found.push(path);
        }
    }
    found.sort();
    found
}
