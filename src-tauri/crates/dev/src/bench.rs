//! `cargo dev bench`: what the app takes on this machine, beside a peer in the same run or the most
//! it may take. Judged is the median of rounds that come turn by turn, so that other work falls on all.

use std::process::ExitCode;

use api::{Clock, SystemClock};

use crate::check::in_chromium;
use crate::install;
use crate::process::{openly, quietly, root, target, words};

/// What is measured, each in the profile that ships.
const BENCHES: [&str; 3] = ["engine", "lists", "files"];

/// The head of a table of measurements; the benches print its rows.
pub const HEAD: &str = "| what | ours | beside | goal | reached |\n|---|---:|---:|---:|---|";

/// Runs the measurements, prints their table, and fails where a goal was missed.
pub fn main() -> ExitCode {
    peers();
    let mut build = words("cargo bench --quiet --no-run -p dev");
    for bench in BENCHES {
        build.args(["--bench", bench]);
    }
    if let Err(sentence) = openly(&mut build) {
        return crate::failed(sentence);
    }
    println!("{HEAD}");
    let mut missed = false;
    for bench in BENCHES {
        let line = format!("cargo bench --quiet -p dev --bench {bench}");
        missed |= openly(&mut words(&line)).is_err();
    }
    missed |= page().map_err(|sentence| println!("{sentence}")).is_err();
    println!(
        "\nMeasured on {}, {}, load {}.",
        machine(),
        SystemClock.now().date_naive(),
        load()
    );
    println!("`cargo dev bench --shell` measures the window.");
    if missed {
        return crate::failed("Not every goal was reached.");
    }
    ExitCode::SUCCESS
}

/// Measures long lists in the page, in the browser that the tests drive.
fn page() -> Result<(), String> {
    in_chromium("node long.bench.mjs")
}

/// Installs what is compared with. What cannot be is left out, and its rows say so.
fn peers() {
    if let Err(sentence) = install::system(&["libvips-tools", "python3-venv"]) {
        println!("{sentence}");
    }
    let folder = target().join("bench/peers");
    if folder.join("bin/pip").is_file() {
        return;
    }
    let made = quietly(words("python3 -m venv").arg(&folder));
    let pip = folder.join("bin/pip").display().to_string();
    let done = made.and_then(|()| {
        quietly(words(&format!("{pip} install --quiet CoolProp")).current_dir(root()))
    });
    if let Err(sentence) = done {
        println!("{sentence}");
    }
}

fn machine() -> String {
    let told = std::fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let model = told
        .lines()
        .find_map(|line| line.strip_prefix("model name")?.split(':').nth(1));
    let model = model.map_or("an unnamed processor", str::trim);
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    format!("{model}, {cores} threads, {}", std::env::consts::OS)
}

/// Of the last minutes: figures of a machine that did other work as well are not the best there are.
fn load() -> String {
    let told = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    told.split(' ').take(3).collect::<Vec<_>>().join(" ")
}
