//! What the file says about itself.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use crate::{FORMAT, Failure};

/// The name of the manifest in the ZIP.
pub(crate) const NAME: &str = "manifest.json";

/// One entry.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Its name in the ZIP.
    pub name: String,
    /// Its size.
    pub bytes: u64,
    /// Its BLAKE3, 64 hexadecimal digits.
    pub blake3: String,
}

/// The list of all entries but itself, and what the writer wanted to say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Manifest {
    /// The version of the layout.
    pub format: u32,
    /// What kind of file this is: "trugbook backup" or "trugbook export".
    pub kind: String,
    /// What the writer says about the whole: when, how many of what.
    pub about: serde_json::Value,
    /// The entries, in the order of the file.
    pub entries: Vec<Entry>,
}

impl Manifest {
    /// Refuses what no file of ours says.
    pub(crate) fn check(&self) -> Result<(), Failure> {
        if self.format > FORMAT {
            return Err(Failure::Newer);
        }
        let mut names = BTreeSet::new();
        for entry in &self.entries {
            if !is_plain(&entry.name) || entry.name == NAME || !names.insert(&entry.name) {
                return Err(Failure::Foreign(shortened(&entry.name)));
            }
        }
        Ok(())
    }
}

/// A relative path of plain words: no file of ours has any other, so none can lead out of a folder.
pub(crate) fn is_plain(name: &str) -> bool {
    name.len() <= 200
        && name.split('/').all(|part| {
            !part.is_empty()
                && !part.starts_with('.')
                && part
                    .bytes()
                    .all(|byte| byte.is_ascii_alphanumeric() || b"._-".contains(&byte))
        })
}

pub(crate) fn shortened(name: &str) -> String {
    name.chars().take(80).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_that_lead_elsewhere_are_not_plain() {
        for name in ["a", "photos/ab/cd.jpg", "journal.trugbook"] {
            assert!(is_plain(name), "{name}");
        }
        for name in [
            "",
            "/etc/passwd",
            "../a",
            "a/../b",
            "a//b",
            "a/",
            "C:\\a",
            "a\\b",
            "a\0b",
            ".hidden",
            "é",
            "a b",
        ] {
            assert!(!is_plain(name), "{name:?}");
        }
    }
}
