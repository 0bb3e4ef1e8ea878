//! `cargo dev run`: the app on a journal of its own, in a window, or in a browser where there is no display.

use std::fs;
use std::path::Path;
use std::process::ExitCode;

use crate::check::build_page;
use crate::install;
use crate::process::{openly, program, quietly, target, words};

/// How the command is called.
pub const USAGE: &str = "cargo dev run [--empty]";

/// Installs, builds, fills a journal with the demo season unless it shall be empty, and opens the app.
pub fn main(arguments: &[String]) -> ExitCode {
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let ran = match words.as_slice() {
        [] => run(true),
        ["--empty"] => run(false),
        _ => Err(format!("{USAGE}, and nothing else.")),
    };
    match ran {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::FAILURE
        }
    }
}

fn run(with_season: bool) -> Result<(), String> {
    let window = has_display();
    if window {
        install::system(install::WINDOW)?;
    }
    println!("Building the page.");
    build_page()?;
    let journal = target()
        .join("run")
        .join(if with_season { "demo" } else { "empty" });
    make_anew(&journal)?;
    let this = std::env::current_exe()
        .map_err(|error| format!("This program does not find itself: {error}."))?;
    if with_season {
        println!("Filling a journal with the demo season.");
        quietly(program(&this).args(["demo", "--into"]).arg(&journal))?;
    }
    if window {
        println!("Building the app; the first time takes some minutes.");
        openly(&mut words("cargo build -p trugbook"))?;
        println!("The journal is in {}.", journal.display());
        openly(
            program(target().join("debug/trugbook"))
                .arg("--journal")
                .arg(&journal),
        )
    } else {
        println!("There is no display, so here is the same app for a browser on this machine.");
        openly(program(&this).args(["serve", "--journal"]).arg(&journal))
    }
}

/// Each run starts from the same state, so that what is seen can be seen again.
fn make_anew(folder: &Path) -> Result<(), String> {
    let made = match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => Err(error),
        _ => fs::create_dir_all(folder),
    };
    made.map_err(|error| format!("{} could not be made anew: {error}.", folder.display()))
}

fn has_display() -> bool {
    let is_set = |name| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    !cfg!(target_os = "linux") || is_set("DISPLAY") || is_set("WAYLAND_DISPLAY")
}
