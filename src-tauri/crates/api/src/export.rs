//! `export.make`: everything as plain tables.

use message::Failure;
use safe::export::make;
use safe::folder::{PREFIX, target};
use safe::job::{JobBegun, JobWork};
use safe::outcome::JobOutcome;
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;

/// Writes everything as CSV and JSON. Without `file` it lies among the made files.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct MakeExport {
    pub file: Option<String>,
    /// With copies of the photos, if this is true.
    pub photos: Option<bool>,
    /// With the places where plants were picked, in tables and photos, if this is true.
    pub places: Option<bool>,
}

impl Command for MakeExport {
    const NAME: &'static str = "export.make";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let name = format!("{PREFIX}{}.zip", app.now().format("%Y-%m-%d"));
        let target = target(&app.keep, self.file.as_deref(), &name)?;
        let (photos, places) = (self.photos.unwrap_or(false), self.places.unwrap_or(false));
        app.begin(JobWork::Export, move |task| {
            make(task, &target, photos, places).map(JobOutcome::Export)
        })
    }
}
