//! What must hold for any input whatever.

#![allow(
    clippy::unwrap_used,
    reason = "a failed step fails the test, which is what is wanted"
)]

mod drying;
mod journal;
mod mixture;
mod own_words;
mod plan;
