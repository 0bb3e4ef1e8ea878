//! Published tables, each row with its citation, against the numbers the app computes.

#![allow(
    clippy::unwrap_used,
    reason = "a failed step fails the test, which is what is wanted"
)]

mod chemistry;
mod drying;
mod herbs;
mod trade;
