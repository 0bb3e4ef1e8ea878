//! The name of a photo: the BLAKE3 hash of its bytes.

use std::fmt;
use std::str::FromStr;

use crate::Failure;

/// BLAKE3 of a photo's bytes, written as 64 lower-case hexadecimal digits.
///
/// Only such text becomes a `Hash`, so that no text from outside can name a path outside the album.
///
/// # Errors
/// Parsing anything else is [`Failure::BadHash`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Hash([u8; 32]);

impl From<blake3::Hash> for Hash {
    fn from(hash: blake3::Hash) -> Self {
        Self(hash.into())
    }
}

impl FromStr for Hash {
    type Err = Failure;

    fn from_str(text: &str) -> Result<Self, Failure> {
        let hash = blake3::Hash::from_hex(text).map_err(|_| Failure::BadHash)?;
        // A second spelling of the same name would be a second file.
        if hash.to_hex().as_str() != text {
            return Err(Failure::BadHash);
        }
        Ok(hash.into())
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&blake3::Hash::from(self.0).to_hex())
    }
}
