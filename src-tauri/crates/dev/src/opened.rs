//! A journal opened for a subcommand: a folder of the caller's, or one to throw away.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use api::{App, Clock, StandingClock, SystemClock};
use chrono::DateTime;

/// An open journal; a throw-away folder goes with it.
pub struct Journal {
    /// The app over the journal.
    pub app: Arc<App>,
    _throw_away: Option<tempfile::TempDir>,
}

impl Journal {
    /// Opens the journal in `folder`, or a new one that ends with this value.
    ///
    /// # Errors
    /// A sentence when the folder cannot be used.
    pub fn open(folder: Option<&Path>, clock: Box<dyn Clock>) -> Result<Self, String> {
        let throw_away = match folder {
            Some(_) => None,
            None => Some(tempfile::tempdir().map_err(|error| {
                format!("A folder for a throw-away journal could not be made: {error}.")
            })?),
        };
        let folder: PathBuf = match (&throw_away, folder) {
            (Some(folder), _) => folder.path().to_owned(),
            (None, folder) => folder.map(Path::to_owned).unwrap_or_default(),
        };
        let app = App::open(&folder, clock).map_err(|failure| failure.message)?;
        Ok(Self {
            app: Arc::new(app),
            _throw_away: throw_away,
        })
    }
}

/// The machine's clock, or one that stands at `now`.
///
/// # Errors
/// A sentence when `now` is not a time with an offset.
pub fn clock(now: Option<&str>) -> Result<Box<dyn Clock>, String> {
    match now {
        None => Ok(Box::new(SystemClock)),
        Some(text) => DateTime::parse_from_rfc3339(text)
            .map(|now| Box::new(StandingClock::at(now)) as Box<dyn Clock>)
            .map_err(|_| format!("--now must be like 2026-07-14T09:00:00+02:00; {text:?} is not.")),
    }
}
