//! What can be wrong with a file, in finished sentences.

use std::io;

/// Why a file could not be made or read.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum Trouble {
    /// It is something else, or cut off.
    #[error("This is not a whole Trugbook file: its end is missing, or it is something else.")]
    NotOurs,
    /// A later version wrote it.
    #[error("This file was written by a newer version of Trugbook; update the app to read it.")]
    Newer,
    /// It is sealed and no passphrase was given.
    #[error("This file is sealed; enter the passphrase it was sealed with.")]
    Sealed,
    /// The passphrase does not open it.
    #[error("This passphrase does not open the file, or the beginning of the file is damaged.")]
    WrongPassphrase,
    /// Sealed so that opening takes more memory than a phone has.
    #[error("This file was sealed by another program at a cost that this app does not take on.")]
    TooCostly,
    /// A bit is not what it was.
    #[error("The file is damaged: {0}.")]
    Damaged(String),
    /// It names something that no file of ours would.
    #[error(
        "The file holds an entry that does not belong in it ({0:?}), so nothing was read from it."
    )]
    Foreign(String),
    /// More than one file holds.
    #[error("{0}")]
    TooMuch(String),
    /// No room.
    #[error(
        "The storage of this device is full, so the file was not written; free some space and try again."
    )]
    StorageFull,
    /// The maker stopped it.
    #[error("This was stopped; nothing was changed.")]
    Cancelled,
    /// Anything else.
    #[error("The file could not be read or written: {0}.")]
    Disk(io::Error),
}

impl From<io::Error> for Trouble {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::StorageFull,
            io::ErrorKind::UnexpectedEof => Self::NotOurs,
            _ => Self::Disk(error),
        }
    }
}

impl From<zip::result::ZipError> for Trouble {
    fn from(error: zip::result::ZipError) -> Self {
        match error {
            zip::result::ZipError::Io(error) => error.into(),
            other => Self::Damaged(other.to_string()),
        }
    }
}
