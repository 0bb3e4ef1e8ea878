//! From the tap on Save to the harvest on the page, in both engines.

use std::fs;
use std::path::Path;

use super::seen;
use crate::bench::HEAD;
use crate::install;
use crate::process::{openly, quietly, root, target, words};

/// Each engine as the tests call it, and what is said where its goal is missed.
const ENGINES: [(&str, &str); 2] = [
    ("browser", "saving in the browser"),
    ("window", "saving in the window"),
];
/// What of a journal lies in its database; the second is there where a window was ended while it was open.
const FILES: [&str; 2] = ["journal.trugbook", "journal.trugbook-wal"];

/// Measures with the release programs, prints the rows, and names what missed its goal.
///
/// The app's own program must be built already.
///
/// # Errors
/// A sentence about what could not be installed, built or copied.
pub fn missed_in(journal: &Path) -> Result<Vec<&'static str>, String> {
    install::system(install::BROWSER)?;
    install::npm("tests/e2e")?;
    quietly(&mut words("cargo build --release -p dev"))?;
    println!("\n{HEAD}");
    let mut missed = Vec::new();
    for (engine, what) in ENGINES {
        // Beside the other journals, for a folder of temporary files may lie in memory and never wait for a disk.
        let bench = target().join("bench");
        let copy = tempfile::tempdir_in(bench).map_err(|error| error.to_string())?;
        for name in FILES {
            let file = journal.join(name);
            if file.is_file() {
                fs::copy(&file, copy.path().join(name))
                    .map_err(|error| format!("{} cannot be copied: {error}.", file.display()))?;
            }
        }
        let mut script = words("node saved.bench.mjs");
        script
            .arg(copy.path())
            .current_dir(root().join("tests/e2e"))
            .env("TRUGBOOK_ENGINE", engine)
            .env("TRUGBOOK_BUILT", target())
            .env("TRUGBOOK_PROFILE", "release")
            .envs([seen::PLAINLY]);
        if openly(&mut script).is_err() {
            missed.push(what);
        }
    }
    Ok(missed)
}
