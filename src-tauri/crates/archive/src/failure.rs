//! What can be wrong with a file, in finished sentences.

use std::{fmt, io};

use message::{Argument, Message, say};

/// Why a file could not be made or read.
#[derive(Debug)]
#[non_exhaustive]
pub enum Failure {
    /// It is something else, or cut off.
    NotOurs,
    /// A later version wrote it.
    Newer,
    /// It is sealed and no passphrase was given.
    Sealed,
    /// The passphrase does not open it.
    WrongPassphrase,
    /// Sealed so that opening takes more memory than a phone has.
    TooCostly,
    /// A bit is not what it was; what shows it, inside a sentence.
    Damaged(Message),
    /// It names something that no file of ours would.
    Foreign(String),
    /// More than one file holds, and how much that is.
    TooMuch(u64),
    /// No room.
    StorageFull,
    /// The maker stopped it.
    Cancelled,
    /// Anything else.
    Disk(io::Error),
}

impl Failure {
    /// What the maker should know.
    pub fn message(&self) -> Message {
        match self {
            Self::NotOurs => say!("file-not-whole"),
            Self::Newer => say!("file-newer"),
            Self::Sealed => say!("file-sealed"),
            Self::WrongPassphrase => say!("file-wrong-passphrase"),
            Self::TooCostly => say!("file-too-costly"),
            Self::Damaged(detail) => say!("file-damaged", detail = detail.clone()),
            Self::Foreign(name) => say!("file-foreign", name = Argument::own(name)),
            Self::TooMuch(most) => say!("backup-too-many", most = *most),
            Self::StorageFull => say!("file-storage-full"),
            Self::Cancelled => say!("stopped"),
            Self::Disk(error) => say!("file-disk", detail = Argument::own(error.to_string())),
        }
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(out)
    }
}

impl std::error::Error for Failure {}

impl From<io::Error> for Failure {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::StorageFull,
            io::ErrorKind::UnexpectedEof => Self::NotOurs,
            _ => Self::Disk(error),
        }
    }
}

impl From<zip::result::ZipError> for Failure {
    fn from(error: zip::result::ZipError) -> Self {
        match error {
            zip::result::ZipError::Io(error) => error.into(),
            other => Self::Damaged(Message::own(other.to_string())),
        }
    }
}

impl From<Failure> for message::Failure {
    fn from(failure: Failure) -> Self {
        let field = match &failure {
            Failure::TooMuch(_) => Some("photos"),
            Failure::Sealed | Failure::WrongPassphrase | Failure::TooCostly => Some("passphrase"),
            Failure::NotOurs | Failure::Newer | Failure::Damaged(_) | Failure::Foreign(_) => {
                Some("file")
            }
            _ => None,
        };
        let message = failure.message();
        match field {
            Some(field) => Self::invalid(field, message),
            None => Self::new(message::Code::Storage, message),
        }
    }
}
