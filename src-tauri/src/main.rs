//! The desktop program: where the journal lies may be said on the command line.

#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

use std::path::PathBuf;
use std::process::ExitCode;

fn main() -> ExitCode {
    match journal_folder(std::env::args_os().skip(1).map(PathBuf::from)) {
        Ok(folder) => trugbook_lib::run(folder),
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::from(2)
        }
    }
}

/// The folder named after `--journal`, else the one in `TRUGBOOK_JOURNAL`, else none: the platform's own. A label's link
/// may stand in its place, as the system puts it there; the window hears of it by itself.
fn journal_folder(mut arguments: impl Iterator<Item = PathBuf>) -> Result<Option<PathBuf>, String> {
    let usual = || std::env::var_os("TRUGBOOK_JOURNAL").map(PathBuf::from);
    let Some(first) = arguments.next() else {
        return Ok(usual());
    };
    match (first.to_str(), arguments.next(), arguments.next()) {
        (Some("--journal"), Some(folder), None) => Ok(Some(folder)),
        (Some(link), None, None) if link.starts_with("trugbook:") => Ok(usual()),
        _ => Err(format!(
            "\"{}\" is not understood; the only option is --journal FOLDER.",
            first.display()
        )),
    }
}
