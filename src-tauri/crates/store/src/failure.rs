//! What can go wrong, in finished sentences.

use std::borrow::Cow;
use std::fmt;

use journal::{Amount, Deed, Noun, Refusal, Source};
use message::{Argument, Message, say};
use rusqlite::ErrorCode;

/// Why the journal could not do something. Nothing was written.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Failure {
    /// A noun was refused.
    Refused(Refusal),
    /// A lot or supply does not hold as much.
    NotEnough {
        /// Which one.
        from: Source,
        /// What is left of it.
        left: Amount,
        /// A finished sentence.
        message: Message,
    },
    /// Something later needs what was to be taken back or struck.
    RestedOn {
        /// A finished sentence that names what rests on it.
        message: Message,
    },
    /// There is no such row.
    NotFound {
        /// What was looked for.
        noun: Noun,
        /// A finished sentence.
        message: Message,
    },
    /// There is no such deed.
    NoSuchDeed,
    /// The deed was taken back before.
    AlreadyUndone(Message),
    /// Nothing would change.
    Unchanged,
    /// Something that came from another file is not what any version could have written.
    Unfit {
        /// What the entry says was done.
        deed: String,
        /// The field that is at fault.
        field: Cow<'static, str>,
        /// A finished sentence.
        message: Message,
    },
    /// The maker stopped it.
    Stopped,
    /// The file was written by a later version.
    NewerFile,
    /// The file is something else.
    NotAJournal,
    /// The file is broken.
    Damaged(String),
    /// No room.
    StorageFull,
    /// Another program holds the file.
    Busy,
    /// Anything else.
    Storage(String),
}

impl Failure {
    /// The field of the request that is at fault, if one is.
    pub fn field(&self) -> Option<&str> {
        match self {
            Self::Refused(refusal) => Some(&refusal.field),
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
            message: say!(
                "entry-unfit",
                deed = Argument::own(&text),
                why = why.message
            ),
            deed: text,
        }
    }

    /// A finished sentence.
    pub fn message(&self) -> Message {
        let detail = |detail: &str| Argument::own(detail.trim_end_matches('.'));
        match self {
            Self::Refused(refusal) => refusal.message.clone(),
            Self::NotEnough { message, .. }
            | Self::RestedOn { message }
            | Self::NotFound { message, .. }
            | Self::Unfit { message, .. } => message.clone(),
            Self::NoSuchDeed => say!("nothing-to-undo"),
            Self::AlreadyUndone(deed) => say!("undone-already", deed = deed.clone()),
            Self::Unchanged => say!("nothing-changed"),
            Self::Stopped => say!("stopped"),
            Self::NewerFile => say!("newer-file"),
            Self::NotAJournal => say!("not-a-book"),
            Self::Damaged(why) => say!("book-damaged", detail = detail(why)),
            Self::StorageFull => say!("storage-full"),
            Self::Busy => say!("storage-busy"),
            Self::Storage(why) => say!("storage-failed", detail = detail(why)),
        }
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(out)
    }
}

impl std::error::Error for Failure {}

impl From<Refusal> for Failure {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
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

impl From<Failure> for message::Failure {
    fn from(failure: Failure) -> Self {
        use Failure as Stored;
        let code = match &failure {
            Stored::NotEnough { .. } => message::Code::NotEnough,
            Stored::NotFound { .. } | Stored::NoSuchDeed => message::Code::NotFound,
            Stored::Refused(_)
            | Stored::RestedOn { .. }
            | Stored::Unfit { .. }
            | Stored::AlreadyUndone(_)
            | Stored::Unchanged => message::Code::Invalid,
            Stored::Damaged(_) | Stored::NotAJournal => message::Code::Damaged,
            _ => message::Code::Storage,
        };
        let field = failure.field().map(str::to_owned);
        Self {
            code,
            field,
            message: failure.message(),
        }
    }
}
