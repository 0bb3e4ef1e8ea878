//! Whatever comes in: every command's JSON, and the largest file of every kind. No panic, no hang,
//! no more memory than a phone has.
//!
//! `TRUGBOOK_FUZZ` multiplies the number of cases.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod codes;
mod commands;
mod hostile;
mod memory;
mod shapes;

/// How many times as many cases as usual were asked for.
fn times() -> u32 {
    let asked = std::env::var("TRUGBOOK_FUZZ").ok();
    asked.and_then(|number| number.parse().ok()).unwrap_or(1)
}

/// More work than one file or one request may make: what takes this long hangs. An unoptimised build is
/// slower by an order.
const HANG: std::time::Duration =
    std::time::Duration::from_secs(if cfg!(debug_assertions) { 20 } else { 2 });
