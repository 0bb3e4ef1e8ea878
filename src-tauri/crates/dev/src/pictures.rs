//! `cargo dev pictures`: the pictures of the README, made anew in `.github/pictures`.

use std::process::ExitCode;

use crate::check::in_chromium;
use crate::failed;

/// Builds the page and the preview, and photographs the demo season in Chromium.
pub fn main(arguments: &[String]) -> ExitCode {
    if !arguments.is_empty() {
        return failed("cargo dev pictures, and nothing else.");
    }
    match in_chromium("npm run --silent pictures") {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => failed(why),
    }
}
