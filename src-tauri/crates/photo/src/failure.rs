//! Why a photo was not taken in, in sentences for the maker.

use std::{fmt, io};

use message::{Argument, Message, say};

/// Why a photo could not be kept or read. Whenever one of these comes back, the album is as it was.
#[derive(Debug)]
pub enum Failure {
    /// The file holds nothing.
    Empty,
    /// More than [`crate::MAX_BYTES`].
    TooLarge,
    /// The content is no kind of picture the album knows, whatever the file is called.
    NotAPicture,
    /// Text that is not the name of a photo.
    BadHash,
    /// The disk has no room left.
    DiskFull,
    /// Reading the upload or writing to the album's folder failed.
    Disk(io::Error),
}

impl Failure {
    /// What the maker should know.
    pub fn message(&self) -> Message {
        match self {
            Self::Empty => say!("photo-empty"),
            Self::TooLarge => say!("photo-too-large"),
            Self::NotAPicture => say!("photo-no-picture"),
            Self::BadHash => say!("photo-bad-name"),
            Self::DiskFull => say!("photo-disk-full"),
            Self::Disk(error) => say!("photo-disk", detail = Argument::own(error.to_string())),
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
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::DiskFull,
            _ => Self::Disk(error),
        }
    }
}

impl From<Failure> for message::Failure {
    fn from(error: Failure) -> Self {
        let code = match &error {
            Failure::Empty | Failure::TooLarge | Failure::NotAPicture => message::Code::Invalid,
            Failure::BadHash => message::Code::NotFound,
            Failure::DiskFull | Failure::Disk(_) => message::Code::Storage,
        };
        Self::new(code, error.message())
    }
}
