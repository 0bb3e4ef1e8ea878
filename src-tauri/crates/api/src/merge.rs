//! `merge.*`: the journal of another phone united with this one.

use message::Failure;
use safe::folder::source;
use safe::job::{JobBegun, JobWork};
use safe::merge::{apply, look};
use safe::outcome::JobOutcome;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// What would come in from this backup of another phone?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct LookAtMerge {
    pub file: String,
    pub passphrase: Option<String>,
}

/// Takes in what this backup of another phone holds.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ApplyMerge {
    pub file: String,
    pub passphrase: Option<String>,
    /// Take in what is whole although the backup is damaged elsewhere.
    pub without_damaged: Option<bool>,
}

impl Command for LookAtMerge {
    const NAME: &'static str = "merge.look";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        app.begin(JobWork::MergeLook, move |task| {
            look(task, &path, self.passphrase.as_deref()).map(JobOutcome::MergeLook)
        })
    }
}

impl Command for ApplyMerge {
    const NAME: &'static str = "merge.apply";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let path = source(&app.keep, &self.file)?;
        let without_damaged = self.without_damaged.unwrap_or(false);
        app.begin(JobWork::Merge, move |task| {
            apply(task, &path, self.passphrase.as_deref(), without_damaged).map(JobOutcome::Merged)
        })
    }
}
