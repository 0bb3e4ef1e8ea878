//! What can go wrong, in finished sentences.

use journal::{Amount, Deed, Noun, Refusal, Source};
use message::{Argument, Message};
use rusqlite::ErrorCode;

/// Why the journal could not do something. Nothing was written.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Failure {
    /// A noun was refused.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// A lot or supply does not hold as much.
    #[error("{message}")]
    NotEnough {
        /// Which one.
        from: Source,
        /// What is left of it.
        left: Amount,
        /// A finished sentence.
        message: String,
    },
    /// Something later needs what was to be taken back or struck.
    #[error("{message}")]
    RestedOn {
        /// A finished sentence that names what rests on it.
        message: String,
    },
    /// There is no such row.
    #[error("{message}")]
    NotFound {
        /// What was looked for.
        noun: Noun,
        /// A finished sentence.
        message: String,
    },
    /// There is no such deed.
    #[error("There is nothing here that could be taken back.")]
    NoSuchDeed,
    /// The deed was taken back before.
    #[error("“{0}” was taken back already.")]
    AlreadyUndone(String),
    /// Nothing would change.
    #[error("Nothing was changed.")]
    Unchanged,
    /// Something that came from another file is not what any version could have written.
    #[error("{message}")]
    Unfit {
        /// What the entry says was done.
        deed: String,
        /// The field that is at fault.
        field: &'static str,
        /// A finished sentence.
        message: String,
    },
    /// The maker stopped it.
    #[error("This was stopped; nothing was changed.")]
    Stopped,
    /// The file was written by a later version.
    #[error("This journal was written by a newer version of Trugbook; update the app to open it.")]
    NewerFile,
    /// The file is something else.
    #[error("This file is not a Trugbook journal.")]
    NotAJournal,
    /// The file is broken.
    #[error("This journal is damaged and was left as it is: {0}.")]
    Damaged(String),
    /// No room.
    #[error(
        "The storage of this device is full, so nothing was saved; free some space and try again."
    )]
    StorageFull,
    /// Another program holds the file.
    #[error("Another program is writing to this journal; try again in a moment.")]
    Busy,
    /// Anything else.
    #[error("The journal could not be read or written: {0}.")]
    Storage(String),
}

impl Failure {
    /// The field of the request that is at fault, if one is.
    pub fn field(&self) -> Option<&'static str> {
        match self {
            Self::Refused(refusal) => Some(refusal.field),
            Self::NotEnough {
                from: Source::Supply(_),
                ..
            } => Some("stock"),
            Self::NotEnough {
                from: Source::Jar(_),
                ..
            } => Some("bottles"),
            Self::NotEnough {
                from: Source::Bottle(_),
                ..
            } => Some("ml"),
            Self::NotEnough { .. } => Some("mass_g"),
            Self::NotFound { .. } => Some("id"),
            Self::NoSuchDeed | Self::AlreadyUndone(_) => Some("deed"),
            _ => None,
        }
    }

    /// What is wrong with a deed that came from another file.
    pub(crate) fn unfit(deed: &Deed, why: Refusal) -> Self {
        // A line of ours is short; one that is not must not fill the screen.
        let text: String = deed.text.chars().take(200).collect();
        Self::Unfit {
            field: why.field,
            message: Message::new("entry-unfit")
                .with("deed", Argument::own(&text))
                .with("why", Argument::message(Message::plain(why.message)))
                .into(),
            deed: text,
        }
    }

    pub(crate) fn not_found(noun: Noun) -> Self {
        let what = match noun {
            Noun::Herb => "This herb",
            Noun::Bed => "This bed",
            Noun::Harvest => "This harvest",
            Noun::Photo => "This photo",
            Noun::Tray => "This tray",
            Noun::Weighing => "This weigh-in",
            Noun::Supply => "This supply",
            Noun::Jar => "This jar",
            Noun::Discard => "This entry",
            Noun::Setting => "This setting",
            Noun::Shake => "This shake",
            Noun::Straining => "This straining",
            Noun::Bottle => "This bottle",
            Noun::Use => "This use",
            Noun::Check => "This check",
            Noun::Recipe => "This recipe",
            Noun::Dropper => "This dropper",
            Noun::Plan => "This plan",
        };
        Self::NotFound {
            noun,
            message: format!("{what} is not in the journal."),
        }
    }
}

impl From<rusqlite::Error> for Failure {
    fn from(error: rusqlite::Error) -> Self {
        let code = match &error {
            rusqlite::Error::SqliteFailure(failure, _) => Some(failure.code),
            _ => None,
        };
        match code {
            Some(ErrorCode::DiskFull) => Self::StorageFull,
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy,
            Some(ErrorCode::OperationInterrupted) => Self::Stopped,
            Some(ErrorCode::NotADatabase) => Self::NotAJournal,
            Some(ErrorCode::TooBig) => {
                Self::Damaged("a row is longer than any that this app writes".into())
            }
            Some(ErrorCode::DatabaseCorrupt) => Self::Damaged(error.to_string()),
            _ => Self::Storage(error.to_string()),
        }
    }
}

impl From<serde_json::Error> for Failure {
    fn from(error: serde_json::Error) -> Self {
        Self::Damaged(error.to_string())
    }
}
