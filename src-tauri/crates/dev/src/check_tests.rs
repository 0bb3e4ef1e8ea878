//! The tests of the core, several programs of them at a time: Cargo runs one after the other, and the one long test of a
//! program would leave every other processor idle.

use std::panic::resume_unwind;
use std::path::PathBuf;
use std::process::Command;
use std::sync::{Mutex, PoisonError};
use std::{fs, thread};

use serde::Deserialize;

use crate::process::{heard, program, quietly, words};

const TEST: &str = "cargo test --workspace --exclude trugbook";

/// A program of tests, as Cargo tells of what it built.
#[derive(Deserialize)]
struct Built {
    executable: PathBuf,
    manifest_path: PathBuf,
    profile: Profile,
}

#[derive(Deserialize)]
struct Profile {
    test: bool,
}

/// Which tests of the core are run.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Which {
    /// All but those that say `#[ignore = "long"]`, and the examples of the documentation.
    Short,
    /// Those alone.
    Long,
}

/// Builds the core's tests and runs such of them; `ready` is given each command before it is run.
///
/// # Errors
/// What the compiler or the first program that failed printed.
pub fn run(which: Which, ready: impl Fn(&mut Command) + Sync) -> Result<(), String> {
    quietly(&mut words(&format!("{TEST} --no-run")))?;
    let mut tests = built()?;
    let libraries = heard(&mut words("rustc --print target-libdir"))?;
    // What holds most most often takes longest, and begins first.
    tests.sort_by_key(|test| fs::metadata(&test.executable).map_or(0, |file| file.len()));
    let left = Mutex::new(tests);
    let left = || left.lock().unwrap_or_else(PoisonError::into_inner);
    let worker = || -> Result<(), String> {
        loop {
            let Some(test) = left().pop() else {
                return Ok(());
            };
            let mut command = test.command();
            if which == Which::Long {
                command.arg("--ignored");
            }
            // What tests a macro is linked to the standard library of the compiler that it serves.
            command.env("LD_LIBRARY_PATH", libraries.trim());
            ready(&mut command);
            // After the first that fails no other is begun.
            test.carry_out(&mut command)
                .inspect_err(|_| left().clear())?;
        }
    };
    thread::scope(|scope| {
        let count = thread::available_parallelism().map_or(1, usize::from);
        let workers: Vec<_> = (0..count).map(|_| scope.spawn(worker)).collect();
        workers
            .into_iter()
            .try_for_each(|worker| worker.join().unwrap_or_else(|panic| resume_unwind(panic)))
    })?;
    if which == Which::Long {
        return Ok(());
    }
    // The examples of the documentation are no programs of their own.
    let mut examples = words(&format!("{TEST} --doc"));
    ready(&mut examples);
    quietly(&mut examples)
}

fn built() -> Result<Vec<Built>, String> {
    let told = heard(&mut words(&format!(
        "{TEST} --no-run --quiet --message-format json"
    )))?;
    // Not every message is about a program.
    let built = told
        .lines()
        .filter_map(|line| serde_json::from_str::<Built>(line).ok())
        .filter(|built| built.profile.test)
        .collect::<Vec<_>>();
    if built.is_empty() {
        return Err("Cargo named no program of tests.".to_owned());
    }
    Ok(built)
}

impl Built {
    fn command(&self) -> Command {
        let mut command = program(&self.executable);
        if let Some(folder) = self.manifest_path.parent() {
            command
                .current_dir(folder)
                .env("CARGO_MANIFEST_DIR", folder);
        }
        command
    }

    /// Runs its command, and says how many tests passed.
    fn carry_out(&self, command: &mut Command) -> Result<(), String> {
        let said = heard(command)?;
        let result = said.lines().find(|line| line.starts_with("test result"));
        let name = self.executable.file_stem().unwrap_or_default();
        println!(
            "{}: {}",
            name.to_string_lossy(),
            result
                .unwrap_or_default()
                .trim_start_matches("test result: ")
        );
        Ok(())
    }
}
