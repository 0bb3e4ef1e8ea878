//! Running other programs: quietly until they fail, or openly.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The folder of the workspace.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(3).unwrap_or(here).to_path_buf()
}

/// The folder that Cargo builds into.
pub fn target() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root().join(folder),
        None => root().join("target"),
    }
}

/// A program that will run in the workspace's folder.
pub fn program(name: impl AsRef<std::ffi::OsStr>) -> Command {
    let mut command = Command::new(name);
    command
        .current_dir(root())
        .stdin(Stdio::null())
        // `cargo run` points this at one toolchain's libraries; another compiler must not load them.
        .env_remove("LD_LIBRARY_PATH");
    command
}

/// A program with its arguments given as one line of words.
pub fn words(line: &str) -> Command {
    let mut words = line.split_whitespace();
    let mut command = program(words.next().unwrap_or_default());
    command.args(words);
    command
}

/// Runs a program and shows its output only if it fails.
///
/// # Errors
/// The command line and everything it printed.
pub fn quietly(command: &mut Command) -> Result<(), String> {
    let output = command
        .output()
        .map_err(|error| not_started(command, &error))?;
    if output.status.success() {
        return Ok(());
    }
    let said = [output.stdout, output.stderr].concat();
    Err(format!(
        "{}\n{}",
        String::from_utf8_lossy(&said),
        failed(command)
    ))
}

/// Runs a program whose output is shown as it comes.
///
/// # Errors
/// The command line, since what went wrong was already shown.
pub fn openly(command: &mut Command) -> Result<(), String> {
    let status = command
        .status()
        .map_err(|error| not_started(command, &error))?;
    if status.success() {
        Ok(())
    } else {
        Err(failed(command))
    }
}

/// Says whether a program of this name can be started.
pub fn is_installed(name: &str) -> bool {
    let path = std::env::var_os("PATH").unwrap_or_default();
    std::env::split_paths(&path).any(|folder| folder.join(name).is_file())
}

fn failed(command: &Command) -> String {
    format!("This failed: {}", line(command))
}

fn not_started(command: &Command, error: &std::io::Error) -> String {
    format!("{} could not be started: {error}.", line(command))
}

fn line(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words
        .map(|word| word.to_string_lossy())
        .collect::<Vec<_>>()
        .join(" ")
}
