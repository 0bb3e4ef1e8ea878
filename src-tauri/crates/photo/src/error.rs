//! Why a photo was not taken in, in sentences for the maker.

use std::io;

/// Why a photo could not be kept or read. Whenever one of these comes back, the album is as it was.
#[derive(Debug, thiserror::Error)]
pub enum PhotoError {
    /// The file holds nothing.
    #[error("This file is empty. Choose a photo.")]
    Empty,
    /// More than [`crate::MAX_BYTES`].
    #[error("This file is larger than 64 MB. Choose a photo of at most 64 MB.")]
    TooLarge,
    /// The content is no kind of picture the album knows, whatever the file is called.
    #[error(
        "This file is not a photo. Choose a JPEG, PNG, WebP, HEIC, AVIF, TIFF or GIF picture; the file itself was left where it is."
    )]
    NotAPicture,
    /// Text that is not the name of a photo.
    #[error("This is not the name of a photo: 64 characters from 0-9 and a-f are expected.")]
    BadHash,
    /// The disk has no room left.
    #[error(
        "There is no room left on this device, so the photo was not saved. Free some space and add it again."
    )]
    DiskFull,
    /// Reading the upload or writing to the album's folder failed.
    #[error("The photo could not be saved or read ({0}). Nothing else was changed.")]
    Disk(#[source] io::Error),
}

impl From<io::Error> for PhotoError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => Self::DiskFull,
            _ => Self::Disk(error),
        }
    }
}
