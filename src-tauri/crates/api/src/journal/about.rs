//! What this journal holds: `journal.about`.

use formulary::Note;
use message::Failure;
use serde::Serialize;

use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// What this journal holds.
    AboutJournal
);

/// The answer to [`AboutJournal`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JournalAbout {
    pub harvests: u64,
    pub trays: u64,
    pub jars: u64,
    pub photos: u64,
    pub demo: bool,
    pub version: String,
    pub cautions: Vec<Note>,
}

impl Command for AboutJournal {
    const NAME: &'static str = "journal.about";
    type Reply = JournalAbout;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let counts = reading.counts()?;
            Ok(JournalAbout {
                harvests: counts.harvests,
                trays: counts.trays,
                jars: counts.jars,
                photos: counts.photos,
                demo: reading.setting()?.demo,
                version: env!("CARGO_PKG_VERSION").to_owned(),
                cautions: formulary::cautions::general(),
            })
        })
    }
}
