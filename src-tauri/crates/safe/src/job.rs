//! Work on a thread of its own, one at a time, with its progress and its end.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};

pub use archive::Progress;
use chrono::{DateTime, FixedOffset};
use message::{Code, Failure, Voice, say};
use serde::Serialize;
use uuid::Uuid;

use crate::folder::{Keep, held};

/// A job was begun.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JobBegun {
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

pub struct Job<O> {
    pub work: JobWork,
    pub progress: Arc<Progress>,
    pub end: Option<Result<O, Failure>>,
}

/// The jobs of this run of the app, latest last.
pub struct Jobs<O>(Mutex<BTreeMap<String, Job<O>>>);

impl<O> Default for Jobs<O> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

/// Ended jobs that a page may still ask for.
const REMEMBERED: usize = 16;

/// What a job has in hand.
pub struct Task {
    pub keep: Keep,
    pub progress: Arc<Progress>,
    pub now: DateTime<FixedOffset>,
    /// Names the files of this job.
    pub name: String,
    /// The same as an id, which sorts by the time it was made.
    pub id: Uuid,
    /// Says what becomes a line of the book.
    pub voice: Voice,
}

impl Task {
    /// A task on a journal; `id` names its files.
    pub fn new(keep: Keep, id: Uuid, now: DateTime<FixedOffset>, voice: Voice) -> Self {
        Self {
            keep,
            progress: Arc::default(),
            now,
            name: id.to_string(),
            id,
            voice,
        }
    }

    /// Says whether the maker stopped the job, to whoever works on it for long.
    pub fn stop(&self) -> impl Fn() -> bool + Send + Clone + 'static {
        let progress = self.progress.clone();
        move || progress.is_cancelled()
    }
}

impl<O: Send + 'static> Jobs<O> {
    /// Begins a job on a thread of its own; one at a time, because they change the whole journal.
    pub fn begin(
        self: &Arc<Self>,
        work: JobWork,
        task: Task,
        body: impl FnOnce(&Task) -> Result<O, Failure> + Send + 'static,
    ) -> Result<JobBegun, Failure> {
        let job = task.name.clone();
        let mut jobs = held(&self.0);
        // A check only reads, and may have begun by itself: it gives way to what the maker asks for.
        let checks = |job: &&Job<O>| job.work == JobWork::Check;
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
        let jobs = self.clone();
        std::thread::spawn(move || {
            // A job that panics has failed; it must not be taken for one that still runs.
            let worked = std::panic::AssertUnwindSafe(|| body(&task));
            let end =
                std::panic::catch_unwind(worked).unwrap_or_else(|_| Err(Failure::broken_off()));
            let Task { keep, name, .. } = task;
            // Whoever hears that the job has ended may close the journal; this must not hold it open.
            drop(keep);
            if let Some(job) = held(&jobs.0).get_mut(&name) {
                job.end = Some(end);
            }
        });
        Ok(JobBegun { job })
    }
}

impl<O> Jobs<O> {
    /// Refuses what no job may run beside.
    pub fn rest(&self) -> Result<(), Failure> {
        jobs_at_rest(held(&self.0).values())
    }

    /// What `tell` says of the job of this name; nothing where none is known.
    pub fn with<T>(&self, name: &str, tell: impl FnOnce(&Job<O>) -> T) -> Option<T> {
        held(&self.0).get(name).map(tell)
    }

    /// What `tell` says of the job that runs.
    pub fn running<T>(&self, tell: impl FnOnce(&str, &Job<O>) -> T) -> Option<T> {
        let jobs = held(&self.0);
        let running = jobs.iter().find(|(_, job)| job.end.is_none());
        running.map(|(name, job)| tell(name, job))
    }
}

fn jobs_at_rest<'j, O: 'j>(mut jobs: impl Iterator<Item = &'j Job<O>>) -> Result<(), Failure> {
    if jobs.all(|job| job.end.is_some()) {
        return Ok(());
    }
    Err(Failure::new(Code::Invalid, say!("job-running")))
}
