//! `journal.check` and `journal.begin_check`: is all of it as it was written?

use message::Failure;
use safe::check::{BookChecked, checked};
use safe::job::Progress;
use safe::job::{JobBegun, JobWork};
use safe::outcome::JobOutcome;
use safe::report::told_time;

use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// Reads the whole book, every table and every photo, and says what is wrong with it.
    CheckJournal
);

bare_request!(
    /// As `journal.check`, as a job: a book of many years takes a while.
    BeginCheck
);

impl Command for CheckJournal {
    const NAME: &'static str = "journal.check";
    type Reply = BookChecked;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.jobs.rest()?;
        checked(
            &app.keep,
            &Progress::default(),
            || false,
            &app.new_id().to_string(),
            &told_time(app.now()),
        )
    }
}

impl Command for BeginCheck {
    const NAME: &'static str = "journal.begin_check";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        app.begin(JobWork::Check, |task| {
            let found = checked(
                &task.keep,
                &task.progress,
                task.stop(),
                &task.name,
                &told_time(task.now),
            )?;
            Ok(JobOutcome::Checked(found))
        })
    }
}
