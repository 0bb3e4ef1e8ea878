//! `cargo dev accuracy`: the drying forecast measured on simulated batches.

use std::process::ExitCode;

use crate::process::{openly, words};

/// Runs the test that measures it, with its table shown, in the profile that ships.
pub fn main() -> ExitCode {
    let run = openly(&mut words(
        "cargo test --quiet --release -p checks --test accuracy -- --include-ignored --nocapture --test-threads 1",
    ));
    match run {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => crate::failed(sentence),
    }
}
