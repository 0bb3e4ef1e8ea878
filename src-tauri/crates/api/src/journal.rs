//! The journal as a whole: `journal.*`.

pub(crate) mod about;
pub(crate) mod check;
pub(crate) mod search;
