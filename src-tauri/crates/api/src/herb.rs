//! The herbs of the book and the maker's own: `herb.*`.

mod find;
mod known;
mod list;
mod own;
mod show;
mod wire;

pub(crate) use known::Known;
pub use wire::*;
