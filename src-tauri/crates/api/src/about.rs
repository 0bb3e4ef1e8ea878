//! What this journal holds: `journal.about`.

use serde::Serialize;

use crate::wire::{Note, bare_request};

bare_request!(
    /// What this journal holds.
    AboutJournal
);

/// The answer to [`AboutJournal`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JournalAbout {
    pub harvests: u32,
    pub trays: u32,
    pub jars: u32,
    pub photos: u32,
    pub demo: bool,
    pub version: String,
    pub cautions: Vec<Note>,
}
