//! A folder of a test's own.
//!
//! No library for it: what it needs turns on a feature that SQLite's binding is built with, and the whole core would be
//! built once for the window and once more for its tests.

use std::path::PathBuf;
use std::sync::atomic::{AtomicU32, Ordering};
use std::{env, fs, process};

/// Is there until it is dropped.
pub struct Scratch(pub PathBuf);

impl Scratch {
    /// A folder that holds nothing.
    pub fn new() -> Self {
        static MADE: AtomicU32 = AtomicU32::new(0);
        let number = MADE.fetch_add(1, Ordering::Relaxed);
        let folder = env::temp_dir().join(format!("trugbook-{}-{number}", process::id()));
        fs::create_dir(&folder).unwrap();
        Self(folder)
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        // A folder that is left behind is no failure of the test.
        let _ = fs::remove_dir_all(&self.0);
    }
}
