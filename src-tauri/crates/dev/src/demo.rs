//! `cargo dev demo`: the demo season with its pictures, or many years, in a journal of its own.

use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;

use api::{App, Season, StandingClock};

use crate::failed;
use crate::flags::Flags;
use crate::years::{self, Size};

/// Twenty years of these are 20,000 jars and 100,000 bottles.
const JARS_A_YEAR: u32 = 1000;

/// Fills the journal in the folder after `--into`.
pub fn main(args: &[String]) -> ExitCode {
    let told = Flags::read(args, &["--into", "--years"], &[]).and_then(|flags| {
        let folder = flags
            .value("--into")
            .ok_or("--into DIR says where the journal goes.")?;
        match flags.value("--years") {
            None => tell_into(Path::new(folder)),
            Some(years) => {
                let years = years
                    .parse()
                    .ok()
                    .filter(|years| (1..=100).contains(years))
                    .ok_or("--years N is a whole number between 1 and 100.")?;
                let size = Size {
                    years,
                    jars_a_year: JARS_A_YEAR,
                };
                years::fill(Path::new(folder), size)
            }
        }
    });
    match told {
        Ok(deeds) => {
            eprintln!("{deeds} deeds were recorded.");
            ExitCode::SUCCESS
        }
        Err(why) => failed(why),
    }
}

/// Where the season and its pictures lie.
fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../demo-data")
}

/// Tells the season into the journal in `journal`, which must hold nothing yet.
///
/// # Errors
/// A sentence that names the deed that was refused.
pub fn tell_into(journal: &Path) -> Result<usize, String> {
    let season = Season::read()?;
    let clock = Arc::new(StandingClock::at(season.begins_at()));
    let app = App::open(journal, Box::new(clock.clone())).map_err(|failure| failure.message)?;
    season.tell(&app, &clock, |name| {
        let file = folder().join(name);
        let opened = File::open(&file);
        opened
            .map(Some)
            .map_err(|error| format!("{}: {error}.", file.display()))
    })
}
