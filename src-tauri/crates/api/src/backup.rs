//! `backup.*`: how safe the journal is, and a copy of it to take away.

use message::Failure;
use safe::backup::{BackupAbout, about, make};
use safe::folder::{held, passphrase, target};
use safe::job::{JobBegun, JobWork};
use safe::outcome::JobOutcome;
use safe::report::{LAST, LastBackup, WAITING};
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// How safe is the journal?
    AboutBackup
);

/// Makes a backup. Without `file` it lies among the made files, to be fetched or shared.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct MakeBackup {
    pub file: Option<String>,
    pub passphrase: Option<String>,
    /// With the original photos, unless this is false.
    pub photos: Option<bool>,
}

/// The maker has taken a made backup away, so that it lies elsewhere now.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TakeBackup {
    pub file_name: String,
}

/// The answer to [`TakeBackup`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct BackupTaken {
    /// Whether it counts as the last backup now; one of a damaged journal does not.
    pub counts: bool,
}

impl Command for AboutBackup {
    const NAME: &'static str = "backup.about";
    type Reply = BackupAbout;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        about(&app.keep, app.now())
    }
}

impl Command for MakeBackup {
    const NAME: &'static str = "backup.make";
    type Reply = JobBegun;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let sealed = passphrase(self.passphrase.as_deref())?.is_some();
        let day = app.now().format("%Y-%m-%d");
        let name = format!("trugbook-{day}.zip{}", if sealed { ".age" } else { "" });
        let target = target(&app.keep, self.file.as_deref(), &name)?;
        let with_photos = self.photos.unwrap_or(true);
        let passphrase = self.passphrase;
        app.begin(JobWork::Backup, move |task| {
            make(task, &target, passphrase.as_deref(), with_photos).map(JobOutcome::Backup)
        })
    }
}

impl Command for TakeBackup {
    const NAME: &'static str = "backup.taken";
    type Reply = BackupTaken;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let mut writer = held(&app.keep.writer);
        let waiting = writer.noted(WAITING)?.filter(|text| {
            serde_json::from_str::<LastBackup>(text)
                .is_ok_and(|waiting| waiting.file_name == self.file_name)
        });
        if let Some(text) = &waiting {
            writer.note(LAST, text)?;
        }
        Ok(BackupTaken {
            counts: waiting.is_some(),
        })
    }
}
