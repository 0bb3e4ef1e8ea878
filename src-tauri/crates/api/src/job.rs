//! Work that takes longer than a page waits: begun by one command, watched by `job.show`.

use message::{Failure, say};
use safe::job::{JobBegun, JobWork, Task};
use safe::outcome::{JobCard, JobOutcome};
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::{Command, bare_request};

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

impl Open {
    /// Begins a job on a thread of its own; one at a time, because they change the whole journal.
    pub(crate) fn begin(
        &self,
        work: JobWork,
        body: impl FnOnce(&Task) -> Result<JobOutcome, Failure> + Send + 'static,
    ) -> Result<JobBegun, Failure> {
        let task = Task::new(
            self.keep.clone(),
            self.new_id(),
            self.now(),
            crate::speech::line,
        );
        self.jobs.begin(work, task, body)
    }

    fn job(&self, name: &str) -> Result<JobCard, Failure> {
        let card = self.jobs.with(name, |job| JobCard::of(name, job));
        card.ok_or_else(|| Failure::not_found("job", say!("job-gone")))
    }
}

impl Command for RunningJob {
    const NAME: &'static str = "job.running";
    type Reply = JobRunning;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        Ok(JobRunning {
            job: app.jobs.running(JobCard::of),
        })
    }
}

impl Command for ShowJob {
    const NAME: &'static str = "job.show";
    type Reply = JobCard;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.job(&self.job)
    }
}

impl Command for CancelJob {
    const NAME: &'static str = "job.cancel";
    type Reply = JobCard;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.jobs.with(&self.job, |job| job.progress.cancel());
        app.job(&self.job)
    }
}
