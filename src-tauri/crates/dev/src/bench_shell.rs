//! `cargo dev bench --shell`: the app's window beside an empty one that is built alike, in one run, and how soon what
//! is saved stands on the page.

mod empty;
mod saved;
mod seen;

use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::time::Duration;
use std::{fmt, fs};

use crate::check::build_page;
use crate::install;
use crate::process::{openly, program, quietly, root, target, words};
use seen::{Display, Seen};

/// How the command is called.
pub const USAGE: &str = "cargo dev bench --shell [--journal DIR]";

/// Each window is opened so often, in turns; the first turn only warms the machine and is not counted.
const TURNS: usize = 9;

/// Measures, prints the table, and fails where a goal is missed.
pub fn main(arguments: &[String]) -> ExitCode {
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let measured = match arguments.as_slice() {
        [] => years().and_then(|journal| run(&journal)),
        ["--journal", journal] => run(Path::new(journal)),
        _ => Err(format!("{USAGE}, and nothing else.")),
    };
    match measured {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => crate::failed(sentence),
    }
}

/// A journal of twenty years, made once.
fn years() -> Result<PathBuf, String> {
    let journal = target().join("bench/years-20");
    if !journal.join("journal.trugbook").is_file() {
        println!("Filling a journal with twenty years; this takes minutes.");
        openly(
            words("cargo run --release --quiet -p dev -- demo --years 20 --into").arg(&journal),
        )?;
    }
    Ok(journal)
}

fn run(journal: &Path) -> Result<(), String> {
    install::system(install::WINDOW)?;
    install::system(install::WINDOW_TESTS)?;
    build_page()?;
    println!("Building an empty window and the app; the first time takes many minutes.");
    let empty = empty::build()?;
    let app = target().join("release/trugbook");
    // What is timed differs from what ships by one line that it prints, and must never be taken for it.
    quietly(&mut release("--features measured"))?;
    let timed = target().join("bench/trugbook-measured");
    fs::rename(&app, &timed)
        .map_err(|error| format!("{} cannot be moved: {error}.", app.display()))?;
    quietly(&mut release(""))?;
    let size = (length(&app)?, length(&empty)?);

    let display = Display::open()?;
    let home = tempfile::tempdir().map_err(|error| error.to_string())?;
    let (home_of_theirs, home_of_ours) = (home.path().join("empty"), home.path().join("app"));
    let mut ours = Vec::new();
    let mut theirs = Vec::new();
    for turn in 0..=TURNS {
        let other = seen::open(program(&empty), &display, &home_of_theirs)?;
        let mut command = program(&timed);
        command.arg("--journal").arg(journal);
        let own = seen::open(command, &display, &home_of_ours)?;
        if turn > 0 {
            theirs.push(other);
            ours.push(own);
        }
    }

    let rows = [
        Row {
            what: "cold start to the first list, 20 years, ms",
            ours: median(&ours, |seen| milliseconds(seen.stands_after)),
            theirs: median(&theirs, |seen| milliseconds(seen.stands_after)),
            goal: Goal::Times(1.25),
        },
        Row {
            what: "memory of all its processes, MB",
            ours: median(&ours, |seen| seen.memory_bytes / 1e6),
            theirs: median(&theirs, |seen| seen.memory_bytes / 1e6),
            goal: Goal::Times(1.2),
        },
        Row {
            what: "program with its page, stripped, MB",
            ours: size.0 / 1e6,
            theirs: size.1 / 1e6,
            goal: Goal::AtMost(12.0),
        },
    ];
    println!(
        "{:44} {:>9} {:>9} {:>7} {:>9}",
        "", "the app", "empty", "ratio", "goal"
    );
    for row in &rows {
        println!(
            "{:44} {:>9.1} {:>9.1} {:>7.2} {:>9}  {}",
            row.what,
            row.ours,
            row.theirs,
            row.ratio(),
            row.goal.to_string(),
            if row.holds() { "ok" } else { "MISSED" }
        );
    }
    let mut missed: Vec<&str> = rows
        .iter()
        .filter(|row| !row.holds())
        .map(|row| row.what)
        .collect();
    missed.extend(saved::missed_in(journal)?);
    if missed.is_empty() {
        Ok(())
    } else {
        Err(format!("Missed: {}.", missed.join("; ")))
    }
}

struct Row {
    what: &'static str,
    ours: f64,
    theirs: f64,
    goal: Goal,
}

/// The most that may be measured.
enum Goal {
    /// So many times what the empty window takes.
    Times(f64),
    /// So much, whatever an empty window takes.
    AtMost(f64),
}

impl fmt::Display for Goal {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Times(most) => write!(to, "{most} times"),
            Self::AtMost(most) => write!(to, "{most}"),
        }
    }
}

/// The app as its package is built, without the commands that no page may call.
fn release(features: &str) -> Command {
    let line = format!("cargo build --release -p trugbook {features}");
    let mut command = words(line.trim_end());
    command.env("REMOVE_UNUSED_COMMANDS", root().join("src-tauri"));
    command
}

impl Row {
    fn ratio(&self) -> f64 {
        self.ours / self.theirs
    }

    fn holds(&self) -> bool {
        match self.goal {
            Goal::Times(most) => self.ratio() <= most,
            Goal::AtMost(most) => self.ours <= most,
        }
    }
}

fn median(seen: &[Seen], of: impl Fn(&Seen) -> f64) -> f64 {
    let mut values: Vec<f64> = seen.iter().map(of).collect();
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

fn milliseconds(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

#[expect(
    clippy::cast_precision_loss,
    reason = "a program is shorter than 2^52 bytes"
)]
fn length(path: &Path) -> Result<f64, String> {
    fs::metadata(path)
        .map(|file| file.len() as f64)
        .map_err(|error| format!("{} cannot be read: {error}.", path.display()))
}

/// A file of the workspace as text.
fn text_of(name: &str) -> Result<String, String> {
    fs::read_to_string(root().join(name))
        .map_err(|error| format!("{name} cannot be read: {error}."))
}
