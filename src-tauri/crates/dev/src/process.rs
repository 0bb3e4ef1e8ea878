//! Running other programs: quietly until they fail, or openly.

use std::io::{BufRead as _, BufReader, Read, Write};
use std::os::unix::process::CommandExt as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

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

/// From here on programs may run so many minutes in all; without a number as long as they like.
pub fn limit(minutes: Option<u64>) {
    *until() = minutes.map(|minutes| (Instant::now() + Duration::from_secs(60 * minutes), minutes));
}

fn until() -> MutexGuard<'static, Option<(Instant, u64)>> {
    static UNTIL: Mutex<Option<(Instant, u64)>> = Mutex::new(None);
    UNTIL.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Runs a program and shows its output only if it fails.
///
/// # Errors
/// The command line and everything it printed.
pub fn quietly(command: &mut Command) -> Result<(), String> {
    heard(command).map(drop)
}

/// As `quietly`: what the program printed, on both of its outputs.
///
/// # Errors
/// The command line and everything it printed.
pub fn heard(command: &mut Command) -> Result<String, String> {
    let said = Said::default();
    let ended = run(command, &said, is_over)?;
    if ended.is_ok() {
        return Ok(said.text());
    }
    Err(format!("{}\n{}", said.text(), why(command, &said, ended)))
}

/// Runs a program whose output is shown as it comes.
///
/// # Errors
/// The command line, since what went wrong was already shown.
pub fn openly(command: &mut Command) -> Result<(), String> {
    let said = Said {
        shown: true,
        ..Said::default()
    };
    let ended = run(command, &said, is_over)?;
    ended.map_err(|how| why(command, &said, Err(how)))
}

fn is_over() -> bool {
    until().is_some_and(|(until, _)| Instant::now() > until)
}

/// How a program ended that did not end well.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Bad {
    Failed,
    TookTooLong,
}

fn why(command: &Command, said: &Said, ended: Result<(), Bad>) -> String {
    if ended != Err(Bad::TookTooLong) {
        return failed(command);
    }
    let minutes = until().map_or(0, |(_, minutes)| minutes);
    let mut why = format!(
        "This did not end within the {minutes} minutes of its step: {}",
        line(command)
    );
    let under_way = said.under_way();
    if !under_way.is_empty() {
        why += &format!("\nThese tests were under way: {}", under_way.join(", "));
    }
    why
}

/// What a program says, on either of its outputs.
#[derive(Default)]
struct Said {
    /// Whether it is shown as it comes.
    shown: bool,
    lines: Mutex<Vec<String>>,
}

impl Said {
    fn listen(&self, from: impl Read, mut to: impl Write) {
        let mut from = BufReader::new(from);
        let mut line = Vec::new();
        // What cannot be read any more is over, and what nobody looks at need not be shown.
        while from
            .read_until(b'\n', &mut line)
            .is_ok_and(|count| count > 0)
        {
            if self.shown {
                let _ = to.write_all(&line).and_then(|()| to.flush());
            }
            let text = String::from_utf8_lossy(&line).into_owned();
            self.lines().push(text);
            line.clear();
        }
    }

    fn lines(&self) -> MutexGuard<'_, Vec<String>> {
        self.lines.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn text(&self) -> String {
        self.lines().concat()
    }

    /// The tests that were told to be slow and not to have ended, as Rust's harness tells it.
    fn under_way(&self) -> Vec<String> {
        let mut names = Vec::new();
        for line in self.lines().iter() {
            let Some(told) = line.strip_prefix("test ") else {
                continue;
            };
            if let Some((name, _)) = told.split_once(" has been running for") {
                names.push(name.to_owned());
            } else if let Some((name, _)) = told.split_once(" ... ") {
                names.retain(|slow| slow != name);
            }
        }
        names
    }
}

/// Runs a program in a group of its own until it ends, or until it is over. Either way nothing of the group is left,
/// nor is it when this program is ended meanwhile: see `tests/leash.sh`.
fn run(
    command: &Command,
    said: &Said,
    is_over: impl Fn() -> bool,
) -> Result<Result<(), Bad>, String> {
    let mut child = leashed(command)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|error| not_started(command, &error))?;
    let (stdout, stderr) = (child.stdout.take(), child.stderr.take());
    thread::scope(|scope| {
        let ended = || -> std::io::Result<Result<(), Bad>> {
            if let Some(stdout) = stdout {
                scope.spawn(|| said.listen(stdout, std::io::stdout()));
            }
            if let Some(stderr) = stderr {
                scope.spawn(|| said.listen(stderr, std::io::stderr()));
            }
            let ended = loop {
                if let Some(status) = child.try_wait()? {
                    break if status.success() {
                        Ok(())
                    } else {
                        Err(Bad::Failed)
                    };
                }
                if is_over() {
                    break Err(Bad::TookTooLong);
                }
                thread::sleep(Duration::from_millis(20));
            };
            // The one that holds the leash is of the group, so the number is still its own.
            end_group(child.id());
            child.wait()?;
            Ok(ended)
        };
        ended().map_err(|error| not_started(command, &error))
    })
}

/// Ends every process of a group.
fn end_group(group: u32) {
    let _ = Command::new("kill")
        .args(["-KILL", "--", &format!("-{group}")])
        .stderr(Stdio::null())
        .status();
}

/// The same command on a leash.
fn leashed(command: &Command) -> Command {
    let mut leashed = Command::new("sh");
    leashed
        .arg(root().join("tests/leash.sh"))
        .arg(command.get_program())
        .args(command.get_args())
        .process_group(0);
    if let Some(folder) = command.get_current_dir() {
        leashed.current_dir(folder);
    }
    for (name, value) in command.get_envs() {
        match value {
            Some(value) => leashed.env(name, value),
            None => leashed.env_remove(name),
        };
    }
    leashed
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

#[cfg(test)]
mod tests {
    use super::*;

    fn shell(script: &str) -> Command {
        let mut command = program("sh");
        command.args(["-c", script]);
        command
    }

    /// Waits until a process is gone; one that nobody asked after is gone as well.
    fn is_gone(process: &str) {
        let stat = Path::new("/proc").join(process).join("stat");
        let lives = || std::fs::read_to_string(&stat).is_ok_and(|told| !told.contains(") Z "));
        while lives() {
            thread::sleep(Duration::from_millis(5));
        }
    }

    #[test]
    fn a_program_that_takes_too_long_ends_with_all_that_it_started_and_its_test_is_named() {
        let said = Said::default();
        let command = shell(
            "echo 'test one::two has been running for over 60 seconds'
             echo 'test one::three has been running for over 60 seconds'
             echo 'test one::three ... ok'
             sleep 100000 & echo $!; wait",
        );
        let began = || said.lines().len() == 4;
        assert_eq!(run(&command, &said, began).unwrap(), Err(Bad::TookTooLong));
        let why = why(&command, &said, Err(Bad::TookTooLong));
        assert!(why.ends_with("were under way: one::two"), "{why}");
        is_gone(said.lines()[3].trim());
    }

    #[test]
    fn what_a_program_leaves_running_ends_with_it() {
        let said = Said::default();
        let command = shell("sleep 100000 & echo $!");
        assert_eq!(run(&command, &said, || false).unwrap(), Ok(()));
        is_gone(said.lines()[0].trim());
        let failing = shell("exit 3");
        assert_eq!(run(&failing, &said, || false).unwrap(), Err(Bad::Failed));
    }

    #[test]
    fn a_program_on_the_leash_ends_when_whoever_holds_it_is_gone() {
        let mut child = leashed(&shell("sleep 100000 & echo $!; wait"))
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap())
            .read_line(&mut line)
            .unwrap();
        // What a killed parent leaves of the leash: its end is closed.
        drop(child.stdin.take());
        assert!(!child.wait().unwrap().success());
        is_gone(line.trim());
    }
}
