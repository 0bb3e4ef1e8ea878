//! Work that takes longer than a page waits: begun by one command, watched by `job.show`.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};

use archive::Progress;
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::Keep;
use super::backup::BackupMade;
use super::check::BookChecked;
use super::export::ExportMade;
use super::merge::MergeReport;
use super::restore::{BackupLook, Restored};
use crate::app::held;
use crate::wire::bare_request;
use crate::{App, Code, Command, Failure};

/// A job was begun.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JobBegun {
    pub job: String,
}

/// How far is it?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowJob {
    pub job: String,
}

/// Stop it. What it has changed by then is complete; most often that is nothing.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CancelJob {
    pub job: String,
}

/// What a job is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum JobWork {
    Backup,
    RestoreLook,
    Restore,
    MergeLook,
    Merge,
    Export,
    Check,
}

bare_request!(
    /// Which job is still at work? A page that was loaded anew asks this.
    RunningJob
);

/// The answer to [`RunningJob`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JobRunning {
    pub job: Option<JobCard>,
}

/// What became of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum JobState {
    Running,
    Done,
    Failed,
    Cancelled,
}

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

struct Job {
    work: JobWork,
    progress: Arc<Progress>,
    end: Option<Result<JobOutcome, Failure>>,
}

/// The jobs of this run of the app, latest last.
#[derive(Default)]
pub(crate) struct Jobs(Mutex<BTreeMap<String, Job>>);

/// Ended jobs that a page may still ask for.
const REMEMBERED: usize = 16;

/// What a job has in hand.
pub(super) struct Task {
    pub keep: Keep,
    pub progress: Arc<Progress>,
    pub now: DateTime<FixedOffset>,
    /// Names the files of this job.
    pub name: String,
    /// The same as an id, which sorts by the time it was made.
    pub id: Uuid,
}

impl Task {
    /// Says whether the maker stopped the job, to whoever works on it for long.
    pub fn stop(&self) -> impl Fn() -> bool + Send + Clone + 'static {
        let progress = self.progress.clone();
        move || progress.is_cancelled()
    }
}

impl App {
    /// Begins a job on a thread of its own; one at a time, because they change the whole journal.
    pub(super) fn begin(
        &self,
        work: JobWork,
        body: impl FnOnce(&Task) -> Result<JobOutcome, Failure> + Send + 'static,
    ) -> Result<JobBegun, Failure> {
        let id = self.new_id();
        let job = id.to_string();
        let task = Task {
            keep: self.keep.clone(),
            progress: Arc::default(),
            now: self.now(),
            name: job.clone(),
            id,
        };
        let mut jobs = held(&self.keep.jobs.0);
        // A check only reads, and may have begun by itself: it gives way to what the maker asks for.
        let checks = |job: &&Job| job.work == JobWork::Check;
        jobs.values()
            .filter(checks)
            .for_each(|job| job.progress.cancel());
        jobs_at_rest(jobs.values().filter(|job| !checks(job)))?;
        while jobs.len() >= REMEMBERED {
            jobs.pop_first();
        }
        jobs.insert(
            job.clone(),
            Job {
                work,
                progress: task.progress.clone(),
                end: None,
            },
        );
        drop(jobs);
        std::thread::spawn(move || {
            // A job that panics has failed; it must not be taken for one that still runs.
            let worked = std::panic::AssertUnwindSafe(|| body(&task));
            let end =
                std::panic::catch_unwind(worked).unwrap_or_else(|_| Err(Failure::broken_off()));
            let Task { keep, name, .. } = task;
            let jobs = keep.jobs.clone();
            // Whoever hears that the job has ended may close the journal; this must not hold it open.
            drop(keep);
            if let Some(job) = held(&jobs.0).get_mut(&name) {
                job.end = Some(end);
            }
        });
        Ok(JobBegun { job })
    }

    /// Refuses what no job may run beside.
    pub(super) fn no_job_runs(&self) -> Result<(), Failure> {
        jobs_at_rest(held(&self.keep.jobs.0).values())
    }

    fn job(&self, name: &str) -> Result<JobCard, Failure> {
        let jobs = held(&self.keep.jobs.0);
        jobs.get(name).map(|job| job.card(name)).ok_or_else(|| {
            let message = "This job is not known any more; the app was restarted since.";
            Failure::not_found("job", message)
        })
    }
}

fn jobs_at_rest<'j>(mut jobs: impl Iterator<Item = &'j Job>) -> Result<(), Failure> {
    if jobs.all(|job| job.end.is_some()) {
        return Ok(());
    }
    let message =
        "Another backup, restore, merge or export is still running; wait for it or stop it.";
    Err(Failure::new(Code::Invalid, message))
}

impl Job {
    fn card(&self, name: &str) -> JobCard {
        let state = match &self.end {
            None => JobState::Running,
            Some(Ok(_)) => JobState::Done,
            Some(Err(_)) if self.progress.is_cancelled() => JobState::Cancelled,
            Some(Err(_)) => JobState::Failed,
        };
        JobCard {
            job: name.to_owned(),
            work: self.work,
            state,
            done_bytes: self.progress.done(),
            total_bytes: self.progress.total().max(self.progress.done()),
            outcome: self.end.as_ref().and_then(|end| end.as_ref().ok()).cloned(),
            failure: self
                .end
                .as_ref()
                .and_then(|end| end.as_ref().err())
                .cloned(),
        }
    }
}

impl Command for RunningJob {
    const NAME: &'static str = "job.running";
    type Reply = JobRunning;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let jobs = held(&app.keep.jobs.0);
        let running = jobs.iter().find(|(_, job)| job.end.is_none());
        Ok(JobRunning {
            job: running.map(|(name, job)| job.card(name)),
        })
    }
}

impl Command for ShowJob {
    const NAME: &'static str = "job.show";
    type Reply = JobCard;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.job(&self.job)
    }
}

impl Command for CancelJob {
    const NAME: &'static str = "job.cancel";
    type Reply = JobCard;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        if let Some(job) = held(&app.keep.jobs.0).get(&self.job) {
            job.progress.cancel();
        }
        app.job(&self.job)
    }
}
