//! What a command can reach.

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Mutex, PoisonError};

use photo::{Album, Upload};

use crate::{Clock, Failure};

/// The journal, the photos and the clock.
pub struct App {
    pub(crate) photos: Album,
    pub(crate) clock: Box<dyn Clock>,
    uploads: Mutex<BTreeMap<String, Upload>>,
}

impl App {
    /// Opens the journal in `folder`, or begins one there.
    ///
    /// # Errors
    /// [`Failure`] of code `storage` when the folder cannot be used.
    pub fn open(folder: &Path, clock: Box<dyn Clock>) -> Result<Self, Failure> {
        Ok(Self {
            photos: Album::open(folder.join("photos"))?,
            clock,
            uploads: Mutex::default(),
        })
    }

    /// The uploads that came in part.
    pub(crate) fn uploads(&self) -> std::sync::MutexGuard<'_, BTreeMap<String, Upload>> {
        self.uploads.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
