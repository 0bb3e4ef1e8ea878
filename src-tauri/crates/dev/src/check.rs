//! `cargo dev check`: everything, in order, until the first thing that fails.

use std::panic::resume_unwind;
use std::process::{Command, ExitCode};
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::TempDir;

use crate::check_phones;
use crate::check_tests::{self, Which};
use crate::install;
use crate::process::{limit, openly, quietly, root, target, words};

/// How the command is called.
pub const USAGE: &str = "cargo dev check [--quick] [--only STEP]";

/// One thing that is checked.
struct Step {
    name: &'static str,
    what: &'static str,
    /// Part of `--quick`: needs neither minutes nor a browser nor Tauri nor another compiler.
    quick: bool,
    /// When it is given up: several times what it takes in a fresh clone beside other work.
    minutes: u64,
    run: fn() -> Result<(), String>,
}

/// The steps in order; a cheap one that often fails stands before a dear one.
const STEPS: &[Step] = &[
    Step::quick("fmt", "the code is formatted", 15, fmt),
    Step::quick("clippy", "no lint warns in the core", 90, clippy),
    Step::quick(
        "docs",
        "the core's documentation builds without a warning",
        90,
        docs,
    ),
    Step::quick(
        "bindings",
        "the page knows the commands as they are",
        60,
        bindings,
    ),
    Step::quick(
        "tests",
        "units, laws, published tables, black box, arrows",
        180,
        || run_tests(Which::Short),
    ),
    Step::quick(
        "page",
        "the page type-checks, keeps its arrows and its rules, and builds",
        60,
        page,
    ),
    Step::slow(
        "long",
        "what is drawn by the thousand, and files as large as are taken in",
        180,
        || run_tests(Which::Long),
    ),
    Step::slow("browser", "end to end in Chromium", 120, browser),
    Step::slow(
        "shell",
        "the Tauri app: lints, units, documentation, build",
        180,
        shell,
    ),
    Step::slow("window", "end to end in the Tauri window", 180, window),
    Step::slow(
        "phones",
        "the app type-checks for Android and iOS",
        120,
        check_phones::run,
    ),
];

impl Step {
    const fn quick(
        name: &'static str,
        what: &'static str,
        minutes: u64,
        run: fn() -> Result<(), String>,
    ) -> Self {
        Self {
            name,
            what,
            quick: true,
            minutes,
            run,
        }
    }

    const fn slow(
        name: &'static str,
        what: &'static str,
        minutes: u64,
        run: fn() -> Result<(), String>,
    ) -> Self {
        Self {
            quick: false,
            ..Self::quick(name, what, minutes, run)
        }
    }
}

/// Carries out the steps that the arguments name.
pub fn main(arguments: &[String]) -> ExitCode {
    match chosen(arguments) {
        Ok(steps) => carry_out(&steps),
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::from(2)
        }
    }
}

fn chosen(arguments: &[String]) -> Result<Vec<&'static Step>, String> {
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let steps: Vec<&Step> = match words.as_slice() {
        [] => STEPS.iter().collect(),
        ["--quick"] => STEPS.iter().filter(|step| step.quick).collect(),
        ["--only", name] => STEPS.iter().filter(|step| step.name == *name).collect(),
        _ => Vec::new(),
    };
    if steps.is_empty() {
        let names: Vec<&str> = STEPS.iter().map(|step| step.name).collect();
        return Err(format!(
            "{USAGE}, where STEP is one of {}.",
            names.join(", ")
        ));
    }
    Ok(steps)
}

fn carry_out(steps: &[&Step]) -> ExitCode {
    let start = Instant::now();
    let mut table = Vec::new();
    let mut failure = None;
    for step in steps {
        println!("== {}: {}", step.name, step.what);
        let began = Instant::now();
        limit(Some(step.minutes));
        let result = (step.run)();
        limit(None);
        let outcome = if result.is_ok() { "ok" } else { "FAILED" };
        table.push(format!(
            "{:8} {:>7}  {outcome}",
            step.name,
            seconds(began.elapsed())
        ));
        if let Err(said) = result {
            println!("{said}");
            failure = Some(step.name);
            break;
        }
    }
    println!(
        "\n{}\n{:8} {:>7}",
        table.join("\n"),
        "in all",
        seconds(start.elapsed())
    );
    let Some(name) = failure else {
        return ExitCode::SUCCESS;
    };
    println!("{name} failed; cargo dev check --only {name} repeats it.");
    ExitCode::FAILURE
}

fn seconds(time: Duration) -> String {
    format!("{:.1} s", time.as_secs_f64())
}

fn fmt() -> Result<(), String> {
    quietly(&mut words("cargo fmt --all -- --check"))
}

fn clippy() -> Result<(), String> {
    quietly(&mut words(
        "cargo clippy --workspace --exclude trugbook --all-targets --all-features -- -D warnings",
    ))
}

fn docs() -> Result<(), String> {
    quietly(
        words("cargo doc --workspace --exclude trugbook --no-deps")
            .env("RUSTDOCFLAGS", "-D warnings"),
    )
}

fn bindings() -> Result<(), String> {
    // The program that runs may be older than the commands.
    quietly(&mut words("cargo run --quiet -p dev -- bindings --check"))
}

fn run_tests(which: Which) -> Result<(), String> {
    install::system(install::READERS)?;
    let memory = Memory::new();
    check_tests::run(which, |tests| {
        // A check says the same of the same code; a bare `cargo test` draws its cases afresh.
        memory.holds(tests).env("PROPTEST_RNG_SEED", "1");
    })
}

fn page() -> Result<(), String> {
    install::npm("ui")?;
    // Each of them works with one processor.
    let scripts = ["npm run check", "npm run lint", "npm test"];
    let run = |script: &str| quietly(words(script).current_dir(root().join("ui")));
    thread::scope(|scope| {
        let running = scripts.map(|script| scope.spawn(move || run(script)));
        let built = build_page();
        let ended = running.map(|one| one.join().unwrap_or_else(|panic| resume_unwind(panic)));
        ended.into_iter().collect::<Result<(), _>>().and(built)
    })
}

/// Builds the page into ui/dist, once in a run of this program.
///
/// # Errors
/// What npm or the bundler printed.
pub fn build_page() -> Result<(), String> {
    static IS_BUILT: AtomicBool = AtomicBool::new(false);
    if IS_BUILT.load(Ordering::Relaxed) {
        return Ok(());
    }
    install::npm("ui")?;
    quietly(words("npm run build").current_dir(root().join("ui")))?;
    IS_BUILT.store(true, Ordering::Relaxed);
    Ok(())
}

/// Builds the program with the window, which holds the built page.
///
/// # Errors
/// What Cargo printed.
pub fn build_shell() -> Result<(), String> {
    install::system(install::WINDOW)?;
    quietly(&mut words("cargo build -p trugbook"))
}

fn browser() -> Result<(), String> {
    in_chromium("npm run browser")
}

/// Builds the page and the preview, and runs what drives them in Chromium.
///
/// # Errors
/// What failed, or the command line where it was shown already.
pub fn in_chromium(script: &str) -> Result<(), String> {
    install::system(install::BROWSER)?;
    install::npm("tests/e2e")?;
    build_page()?;
    quietly(&mut words("cargo build -p dev"))?;
    end_to_end(script, "browser")
}

fn shell() -> Result<(), String> {
    install::system(install::WINDOW)?;
    build_page()?;
    quietly(&mut words(
        "cargo clippy -p trugbook --all-targets --all-features -- -D warnings",
    ))?;
    openly(&mut words("cargo test --quiet -p trugbook --lib"))?;
    quietly(words("cargo doc -p trugbook --no-deps").env("RUSTDOCFLAGS", "-D warnings"))?;
    build_shell()
}

fn window() -> Result<(), String> {
    install::system(install::WINDOW_TESTS)?;
    install::npm("tests/e2e")?;
    build_page()?;
    build_shell()?;
    end_to_end("npm run window", "window")
}

/// Runs what drives the app in an engine, with the programs that Cargo built.
fn end_to_end(script: &str, engine: &str) -> Result<(), String> {
    let mut tests = words(script);
    tests
        .current_dir(root().join("tests/e2e"))
        .env("TRUGBOOK_ENGINE", engine)
        .env("TRUGBOOK_BUILT", target());
    openly(Memory::new().holds(&mut tests))
}

/// A folder in memory for the journals of tests, where there is room for them: else they wait for the disk more than for
/// anything else, at each of thousands of deeds.
struct Memory(Option<TempDir>);

impl Memory {
    fn new() -> Self {
        let folder = has_room(MEMORY).then(|| tempfile::tempdir_in(MEMORY).ok());
        Self(folder.flatten())
    }

    /// Has tests put there what they would put into the folder of temporary files.
    fn holds<'a>(&self, tests: &'a mut Command) -> &'a mut Command {
        if let Some(folder) = &self.0 {
            tests.env("TMPDIR", folder.path());
        }
        tests
    }
}

/// Where Linux keeps files in memory.
const MEMORY: &str = "/dev/shm";

/// Whether a folder has room for all that tests write at one time, several times over.
fn has_room(folder: &str) -> bool {
    const LEAST_MB: u64 = 6_000;
    let told = words("df --output=avail --block-size=1MB")
        .arg(folder)
        .output();
    let told = told.map(|told| String::from_utf8_lossy(&told.stdout).into_owned());
    let free = told
        .ok()
        .and_then(|told| told.lines().nth(1)?.trim().parse().ok());
    free.is_some_and(|free: u64| free >= LEAST_MB)
}
