//! How large a file may be: one set of limits for who writes and who reads, so that what was
//! written can always be read.

/// A fifth more than the photos of twenty busy years; a file that claims more would only fill the
/// memory. The manifest counts.
pub const MOST_ENTRIES: u64 = 120_000;
/// That many entries are listed in this many bytes.
pub(crate) const LONGEST_MANIFEST: u64 = 26_000_000;
/// What the writer says about the whole is short; a value takes many times the memory of its text.
pub(crate) const LONGEST_ABOUT: usize = 64 * 1024;
/// A header of ours is a tenth of this; the reader of a longer one would take hours.
pub(crate) const LONGEST_SEALED_HEADER: u64 = 2048;
