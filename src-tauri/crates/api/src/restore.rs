//! `restore.*`: a backup, or an earlier state, in the place of the journal.

use message::{Code, Failure, say};
use safe::aside::{self, RestorePoint};
use safe::damaged::damaged_files;
use safe::folder::{LostHow, held, source};
use safe::job::{JobBegun, JobWork};
use safe::lost::{made, settle};
use safe::outcome::JobOutcome;
use safe::restore::{Restored, apply, gone_back, look};
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::{Command, bare_request};

/// A book that is not where it was, and what is still there of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LostBook {
    pub how: LostHow,
    /// Originals of photos in the folder.
    pub photos: u64,
    /// Whether there is a damaged file that `rescue.make` can read.
    pub can_rescue: bool,
    /// Backups that were made here and not taken away yet, as the field `file` calls them.
    pub backups: Vec<String>,
}

bare_request!(
    /// To which states can the journal go back, and is it there at all?
    ListRestorePoints
);

/// The answer to [`ListRestorePoints`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RestorePoints {
    /// Latest first.
    pub points: Vec<RestorePoint>,
    /// Set while the journal is missing or empty.
    pub lost: Option<LostBook>,
}

/// Begins a new, empty journal in the place of one that is missing. What is still there stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BeginAnew {
    /// Must be true: without it nothing is begun.
    pub sure: Option<bool>,
}

/// A new journal was begun.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BegunAnew {
    /// Restore points that are kept beside it.
    pub points: u64,
}

impl Command for ListRestorePoints {
    const NAME: &'static str = "restore.points";
    type Reply = RestorePoints;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let keep = &app.keep;
        let lost = match keep.lost() {
            None => None,
            Some(how) => Some(LostBook {
                how,
                photos: keep.photos.hashes()?.len() as u64,
                can_rescue: !damaged_files(&keep.folder).is_empty(),
                backups: made(&keep.folder)
                    .into_iter()
                    .map(|name| format!("made:{name}"))
                    .collect(),
            }),
        };
        Ok(RestorePoints {
            points: aside::points(&keep.folder, app.now()),
            lost,
        })
    }
}

impl Command for BeginAnew {
    const NAME: &'static str = "restore.anew";
    type Reply = BegunAnew;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.jobs.rest()?;
        let keep = &app.keep;
        if keep.lost().is_none() {
            return Err(Failure::new(Code::Invalid, say!("book-there")));
        }
        if self.sure != Some(true) {
            return Err(Failure::invalid("sure", say!("book-anew-sure")));
        }
        let device = held(&keep.reader).device();
        settle(keep, None, device)?;
        Ok(BegunAnew {
            points: aside::points(&keep.folder, app.now()).len() as u64,
        })
    }
}

/// What is in this backup, is it whole, and what would restoring it change?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct LookAtRestore {
    pub file: String,
    pub passphrase: Option<String>,
}

/// Puts this backup in the place of the journal.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ApplyRestore {
    pub file: String,
    pub passphrase: Option<String>,
    /// Restore what is whole although the backup is damaged elsewhere.
    pub without_damaged: Option<bool>,
}

bare_request!(
    /// Puts the journal of before the last restore or merge back; doing it again changes them back.
    UndoRestore
);

/// Puts a restore point in the place of the journal; what the journal is now becomes one in turn.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct GoBack {
    /// As `restore.points` calls it.
    pub point: String,
}

impl Command for LookAtRestore {
    const NAME: &'static str = "restore.look";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        app.begin(JobWork::RestoreLook, move |task| {
            look(task, &path, self.passphrase.as_deref()).map(JobOutcome::RestoreLook)
        })
    }
}

impl Command for ApplyRestore {
    const NAME: &'static str = "restore.apply";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        let without_damaged = self.without_damaged.unwrap_or(false);
        app.begin(JobWork::Restore, move |task| {
            apply(task, &path, self.passphrase.as_deref(), without_damaged)
                .map(JobOutcome::Restored)
        })
    }
}

impl Command for UndoRestore {
    const NAME: &'static str = "restore.undo";
    type Reply = Restored;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let keep = &app.keep;
        let before = held(&keep.writer)
            .aside()?
            .map(|name| keep.folder.join(name))
            .filter(|path| path.is_file())
            .ok_or_else(|| Failure::not_found("restore", say!("restore-none-to-undo")))?;
        // The journal is then what lay there: changing to and fro must not push out older points.
        gone_back(&app.keep, app.new_id(), &before, Some(&before))
    }
}

impl Command for GoBack {
    const NAME: &'static str = "restore.back";
    type Reply = Restored;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.jobs.rest()?;
        let found = aside::file_of(&app.keep.folder, &self.point);
        let before = found.ok_or_else(|| Failure::not_found("point", say!("point-gone")))?;
        gone_back(&app.keep, app.new_id(), &before, None)
    }
}
