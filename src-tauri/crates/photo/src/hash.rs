//! The name of a photo: the BLAKE3 hash of its bytes.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

use crate::PhotoError;

/// BLAKE3 of a photo's bytes, written as 64 lower-case hexadecimal digits.
///
/// Only such text becomes a `Hash`, so that no text from outside can name a path outside the album.
///
/// # Errors
/// Parsing anything else is [`PhotoError::BadHash`].
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Hash([u8; 32]);

impl From<blake3::Hash> for Hash {
    fn from(hash: blake3::Hash) -> Self {
        Self(*hash.as_bytes())
    }
}

impl FromStr for Hash {
    type Err = PhotoError;

    fn from_str(text: &str) -> Result<Self, PhotoError> {
        let digits = text.as_bytes();
        if digits.len() != 64 {
            return Err(PhotoError::BadHash);
        }
        let mut bytes = [0; 32];
        for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
            *byte = digit(pair[0])? * 16 + digit(pair[1])?;
        }
        Ok(Self(bytes))
    }
}

fn digit(character: u8) -> Result<u8, PhotoError> {
    match character {
        b'0'..=b'9' => Ok(character - b'0'),
        b'a'..=b'f' => Ok(character - b'a' + 10),
        _ => Err(PhotoError::BadHash),
    }
}

impl TryFrom<String> for Hash {
    type Error = PhotoError;

    fn try_from(text: String) -> Result<Self, PhotoError> {
        text.parse()
    }
}

impl From<Hash> for String {
    fn from(hash: Hash) -> Self {
        hash.to_string()
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}
