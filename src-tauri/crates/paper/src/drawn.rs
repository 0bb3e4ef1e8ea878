//! What comes out.

use message::Message;

/// What was drawn, and what the maker should know about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn<T> {
    /// The file: PDF bytes or SVG text.
    pub bytes: T,
    /// What had to be left out for want of room, what was not known, which letters the type lacks.
    pub remarks: Vec<Message>,
}
