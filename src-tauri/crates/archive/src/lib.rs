//! One plain ZIP that says what is in it and whether it is whole.
//!
//! A [`Packer`] writes a stream: entries as they are (stored, not packed), a
//! `manifest.json` with the size and BLAKE3 of each, and as the comment of the
//! ZIP the BLAKE3 of everything before it, so that not one bit of the file is
//! without a witness. With a passphrase the same ZIP goes into the `age`
//! format. Memory does not grow with the file.
//!
//! An [`Unpacker`] trusts nothing: the names, sizes and number of the entries
//! are checked before any of them is read, nothing is ever unpacked (a stored
//! entry is as long as it says), and no entry is written by its name.
//!
//! Where its list cannot be read, [`Unpacker::salvage`] walks what is there.
//!
//! What the entries mean is not known here.

mod failure;
mod limits;
mod manifest;
mod pack;
mod progress;
mod salvage;
mod sealed;
#[cfg(test)]
mod tests;
mod unpack;
mod writer;

pub use failure::Failure;
pub use limits::MOST_ENTRIES;
pub use manifest::{Entry, Manifest};
pub use pack::Packer;
pub use progress::Progress;
pub use unpack::{Damage, Unpacker};

/// The version of the layout that is written; an older one is read, a newer one is refused.
pub const FORMAT: u32 = 1;
