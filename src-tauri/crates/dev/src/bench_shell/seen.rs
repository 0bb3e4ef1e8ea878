//! Opening a window and watching it from outside, on a display that nobody looks at.

use std::collections::BTreeMap;
use std::fs;
use std::io::{BufRead, BufReader, Read as _, Seek as _};
use std::os::unix::process::CommandExt as _;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// What a window still takes up this long after it stands is what it takes.
const SETTLED: Duration = Duration::from_secs(1);

/// Where there is no screen there is no graphics card either. WebKit would draw on an emulated one, whose shaders for
/// lines and leaves take 50 ms that no phone spends; so every window draws with the processor itself.
pub const PLAINLY: (&str, &str) = ("WEBKIT_SKIA_ENABLE_CPU_RENDERING", "1");

/// One opening.
pub struct Seen {
    /// From the start of the program until its page said that it stands.
    pub stands_after: Duration,
    /// The proportional share of every process that the program started.
    pub memory_bytes: f64,
}

/// A display without a screen, gone when this is dropped.
pub struct Display {
    server: Child,
    name: String,
}

impl Display {
    /// Starts one.
    ///
    /// # Errors
    /// A sentence when it does not start.
    pub fn open() -> Result<Self, String> {
        let mut server = Command::new("Xvfb")
            .args(["-displayfd", "1", "-screen", "0", "1280x1600x24"])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|error| format!("Xvfb could not be started: {error}."))?;
        let number = first_line(&mut server);
        let mut display = Self {
            server,
            name: String::new(),
        };
        let number = number.ok_or("Xvfb ended before it had a display.")?;
        display.name = format!(":{number}");
        Ok(display)
    }
}

impl Drop for Display {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// Opens a window, waits until its page stands, looks at its memory and ends it with all that it started.
///
/// What it keeps of its own lies in `home`, where it finds it again: only the very first start makes it.
///
/// # Errors
/// A sentence when it ends before its page stands.
pub fn open(mut command: Command, display: &Display, home: &Path) -> Result<Seen, String> {
    let name = command.get_program().to_string_lossy().into_owned();
    let mut said = tempfile::tempfile().map_err(|error| error.to_string())?;
    let errors = said.try_clone().map_err(|error| error.to_string())?;
    command
        .env("DISPLAY", &display.name)
        .env("XDG_DATA_HOME", home.join("data"))
        .env("XDG_CACHE_HOME", home.join("cache"))
        .envs([PLAINLY])
        .env_remove("WAYLAND_DISPLAY")
        .stdout(Stdio::piped())
        .stderr(errors)
        .process_group(0);
    let start = Instant::now();
    let mut window = command
        .spawn()
        .map_err(|error| format!("{name} could not be started: {error}."))?;
    let seen = first_line(&mut window).map(|_| {
        let stands_after = start.elapsed();
        thread::sleep(SETTLED);
        Seen {
            stands_after,
            memory_bytes: memory(window.id()),
        }
    });
    // Its helpers are of its group, and would outlive it.
    let _ = Command::new("kill")
        .args(["-9", "--", &format!("-{}", window.id())])
        .status();
    let _ = window.wait();
    seen.ok_or_else(|| {
        let mut why = String::new();
        let read = said.rewind().and_then(|()| said.read_to_string(&mut why));
        let why = read.map_or_else(|error| error.to_string(), |_| why);
        format!("{name} ended before its page stood. {why}")
    })
}

fn first_line(child: &mut Child) -> Option<String> {
    let mut line = String::new();
    BufReader::new(child.stdout.take()?)
        .read_line(&mut line)
        .ok()?;
    let line = line.trim();
    (!line.is_empty()).then(|| line.to_owned())
}

/// The memory of a process and of all that descend from it, each page shared among those that map it.
fn memory(process: u32) -> f64 {
    let parents = parents();
    let descends = |mut one: u32| loop {
        if one == process {
            return true;
        }
        match parents.get(&one) {
            Some(&parent) => one = parent,
            None => return false,
        }
    };
    let all = parents.keys().copied().filter(|&one| descends(one));
    all.filter_map(share).sum()
}

fn parents() -> BTreeMap<u32, u32> {
    let entries = fs::read_dir("/proc").into_iter().flatten().flatten();
    let processes = entries.filter_map(|entry| entry.file_name().to_str()?.parse().ok());
    let parent = |process: u32| {
        let stat = fs::read_to_string(format!("/proc/{process}/stat")).ok()?;
        // The name stands in brackets and may hold anything, brackets too.
        let (_, rest) = stat.rsplit_once(')')?;
        rest.split_whitespace().nth(1)?.parse().ok()
    };
    processes
        .filter_map(|process: u32| Some((process, parent(process)?)))
        .collect()
}

fn share(process: u32) -> Option<f64> {
    let told = fs::read_to_string(format!("/proc/{process}/smaps_rollup")).ok()?;
    let line = told.lines().find_map(|line| line.strip_prefix("Pss:"))?;
    let kilobytes: f64 = line.split_whitespace().next()?.parse().ok()?;
    Some(kilobytes * 1024.0)
}

#[cfg(test)]
mod tests {
    use std::path::Path;
    use std::process::Command;

    use super::{Display, memory, open};

    #[test]
    fn a_window_that_ends_before_its_page_stands_is_heard() {
        let display = Display {
            server: Command::new("true")
                .spawn()
                .expect("a stand-in for a display"),
            name: String::new(),
        };
        let mut window = Command::new("sh");
        window.args(["-c", "echo no journal >&2"]);
        let heard = open(window, &display, Path::new("/nowhere")).err();
        let wanted = "sh ended before its page stood. no journal\n";
        assert_eq!(heard.as_deref(), Some(wanted));
    }

    #[test]
    fn a_process_takes_some_memory_and_one_that_is_not_takes_none() {
        assert!(memory(std::process::id()) > 1e5);
        assert!(memory(u32::MAX).abs() < f64::EPSILON);
    }
}
