//! The herbs of the book and the maker's own: `herb.*`.

pub(crate) mod calendar;
pub(crate) mod find;
pub(crate) mod list;
pub(crate) mod own;
pub(crate) mod page;
