//! `cargo dev bench`: what the engine takes on this machine, beside the most it may take.

use std::process::ExitCode;

use crate::process::{openly, words};

/// Runs the measurements in the profile that ships, and prints their table.
pub fn main() -> ExitCode {
    for line in [
        "cargo bench --quiet -p dev --bench engine",
        "cargo bench --quiet -p formulary --bench composer",
    ] {
        if let Err(sentence) = openly(&mut words(line)) {
            return crate::failed(sentence);
        }
    }
    ExitCode::SUCCESS
}
