//! What became of a job, as a page shows it.

use message::Failure;
use serde::Serialize;

use crate::backup::BackupMade;
use crate::check::BookChecked;
use crate::export::ExportMade;
use crate::job::{Job, JobState, JobWork};
use crate::merge::MergeReport;
use crate::restore::{BackupLook, Restored};

/// What a job brought about.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum JobOutcome {
    Backup(BackupMade),
    RestoreLook(BackupLook),
    Restored(Restored),
    MergeLook(MergeReport),
    Merged(MergeReport),
    Export(ExportMade),
    Checked(BookChecked),
}

/// A job as a page shows it; `total_bytes` grows while the work is still being measured.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JobCard {
    pub job: String,
    pub work: JobWork,
    pub state: JobState,
    pub done_bytes: u64,
    pub total_bytes: u64,
    pub outcome: Option<JobOutcome>,
    pub failure: Option<Failure>,
}

impl JobCard {
    /// A job as it stands.
    pub fn of(name: &str, job: &Job<JobOutcome>) -> Self {
        let state = match &job.end {
            None => JobState::Running,
            Some(Ok(_)) => JobState::Done,
            Some(Err(_)) if job.progress.is_cancelled() => JobState::Cancelled,
            Some(Err(_)) => JobState::Failed,
        };
        Self {
            job: name.to_owned(),
            work: job.work,
            state,
            done_bytes: job.progress.done(),
            total_bytes: job.progress.total().max(job.progress.done()),
            outcome: job.end.as_ref().and_then(|end| end.as_ref().ok()).cloned(),
            failure: job.end.as_ref().and_then(|end| end.as_ref().err()).cloned(),
        }
    }
}
