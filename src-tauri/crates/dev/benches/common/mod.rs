//! What the benches share: rows of one table, times of many runs, the journal of twenty years.

#![allow(dead_code, reason = "each bench uses a part of it")]

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::time::{Duration, Instant};

use api::{App, StandingClock};
use chrono::DateTime;
use serde_json::Value;

use super::years;

/// A line of the table, and whether the goal was reached; nothing where there is no peer to say so.
pub struct Row {
    pub what: String,
    pub ours: String,
    pub peer: String,
    pub goal: String,
    pub within: Option<bool>,
}

/// Prints the rows; the head of the table is printed by who called.
///
/// # Panics
/// When a goal was missed, which is the report.
pub fn print(rows: &[Row]) {
    for row in rows {
        let said = match row.within {
            Some(true) => "yes",
            Some(false) => "**no**",
            None => "peer missing",
        };
        println!(
            "| {} | {} | {} | {} | {said} |",
            row.what, row.ours, row.peer, row.goal
        );
    }
    let missed: Vec<&str> = rows
        .iter()
        .filter(|row| row.within == Some(false))
        .map(|row| row.what.as_str())
        .collect();
    if !missed.is_empty() {
        eprintln!("Not within its goal: {}.", missed.join("; "));
        std::process::exit(1);
    }
}

pub fn timed<T>(work: impl FnOnce() -> T) -> (Duration, T) {
    let start = Instant::now();
    let done = work();
    (start.elapsed(), done)
}

pub fn median(times: &mut [Duration]) -> Duration {
    quantile(times, 50)
}

/// The time that so many of a hundred runs stay within.
pub fn quantile(times: &mut [Duration], percent: usize) -> Duration {
    times.sort_unstable();
    let at = (times.len() * percent).div_ceil(100).max(1) - 1;
    times[at]
}

/// What two of a pair took in rounds that came by turns: whatever else the machine does meets both.
pub struct Turns {
    /// The median of ours.
    pub ours: Duration,
    /// The median of the peer's.
    pub peer: Duration,
    /// The median of each round's own ratio, by which the pair is judged.
    pub ratio: f64,
}

/// The two of a pair, taken by turns.
pub fn by_turns(
    rounds: usize,
    mut ours: impl FnMut(usize) -> Duration,
    mut peer: impl FnMut(usize) -> Duration,
) -> Turns {
    let (mut of_ours, mut of_peer, mut ratios) = (Vec::new(), Vec::new(), Vec::new());
    for round in 0..rounds {
        let (own, other) = if round % 2 == 0 {
            let own = ours(round);
            (own, peer(round))
        } else {
            let other = peer(round);
            (ours(round), other)
        };
        of_ours.push(own);
        of_peer.push(other);
        ratios.push(own.as_secs_f64() / other.as_secs_f64());
    }
    ratios.sort_unstable_by(f64::total_cmp);
    Turns {
        ours: median(&mut of_ours),
        peer: median(&mut of_peer),
        ratio: ratios[ratios.len() / 2],
    }
}

/// What is done again in each round, and what each time took.
pub struct Repeated<'w> {
    pub what: String,
    pub limit: Duration,
    pub once: Box<dyn FnMut(usize) -> Duration + 'w>,
}

/// Rows of what may take at most so long: all of them in each round, a few times each, so that whatever else the
/// machine does meets them alike. The median of all is judged, and the slowest of a hundred told beside it.
pub fn in_rounds(rounds: usize, times: usize, mut all: Vec<Repeated<'_>>) -> Vec<Row> {
    let mut took: Vec<Vec<Duration>> = all.iter().map(|_| Vec::new()).collect();
    for round in 0..rounds {
        for (one, took) in all.iter_mut().zip(&mut took) {
            took.extend((0..times).map(|time| (one.once)(round * times + time)));
        }
    }
    let rows = all.into_iter().zip(took).map(|(one, mut took)| {
        let middle = median(&mut took);
        Row {
            what: one.what,
            ours: shown(middle),
            peer: format!("p99 of {}: {}", took.len(), shown(quantile(&mut took, 99))),
            goal: format!("<= {}", shown(one.limit)),
            within: Some(middle <= one.limit),
        }
    });
    rows.collect()
}

pub fn shown(time: Duration) -> String {
    let micros = time.as_secs_f64() * 1e6;
    if micros >= 1e6 {
        format!("{:.2} s", micros / 1e6)
    } else if micros >= 1000.0 {
        format!("{:.2} ms", micros / 1000.0)
    } else {
        format!("{micros:.2} µs")
    }
}

/// A row of ours beside a peer in the same run.
pub fn beside(what: &str, turns: &Turns, peer: &str, most: f64) -> Row {
    Row {
        what: what.to_owned(),
        ours: shown(turns.ours),
        peer: format!("{peer}: {}, {:.2}x", shown(turns.peer), turns.ratio),
        goal: format!("<= {most}x"),
        within: Some(turns.ratio <= most),
    }
}

/// A row of a peer that is not on this machine.
pub fn missing(what: &str, goal: &str, install: &str) -> Row {
    Row {
        what: what.to_owned(),
        ours: "-".to_owned(),
        peer: format!("not installed: {install}"),
        goal: goal.to_owned(),
        within: None,
    }
}

pub fn target() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let root = here.ancestors().nth(3).unwrap();
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root.join(folder),
        None => root.join("target"),
    }
}

/// The folder of the journal of twenty years, made when it is not there; it takes minutes.
pub fn twenty_years() -> PathBuf {
    let folder = target().join("bench/years-20");
    if !folder.join("journal.trugbook").is_file() {
        eprintln!("Making a journal of twenty years, once; this takes some minutes.");
        let begun = target().join("bench/years-20.begun");
        let _ = std::fs::remove_dir_all(&begun);
        let size = years::Size {
            years: 20,
            jars_a_year: 1000,
        };
        years::fill(&begun, size).unwrap();
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::rename(&begun, &folder).unwrap();
    }
    folder
}

pub fn open(folder: &Path) -> App {
    let now = DateTime::parse_from_rfc3339(years::LAST).unwrap();
    App::open(folder, Box::new(Arc::new(StandingClock::at(now)))).unwrap()
}

pub fn asked(app: &App, command: &str, request: &Value) -> Value {
    let reply = api::call(app, command, &request.to_string())
        .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"));
    serde_json::from_str(&reply).unwrap()
}

/// Whether a program answers to its first argument without failing.
pub fn answers(program: impl AsRef<std::ffi::OsStr>, arguments: &[&str]) -> bool {
    Command::new(program)
        .args(arguments)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// The most memory a process of ours held, in megabytes, since its start or the last reset.
pub fn peak_mb() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kb = line.and_then(|line| line.split_whitespace().next()?.parse::<f64>().ok());
    kb.unwrap_or(f64::NAN) / 1000.0
}
