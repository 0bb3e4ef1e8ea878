//! `cargo dev check`: everything, in order, until the first thing that fails.

use std::process::ExitCode;
use std::time::{Duration, Instant};

use crate::check_phones;
use crate::install;
use crate::process::{limit, openly, quietly, root, target, words};

/// How the command is called.
pub const USAGE: &str = "cargo dev check [--quick] [--only STEP]";

/// One thing that is checked.
struct Step {
    name: &'static str,
    what: &'static str,
    /// Part of `--quick`: needs neither Tauri nor another compiler.
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
        tests,
    ),
    Step::quick("page", "the page type-checks and builds", 60, page),
    Step::quick("browser", "end to end in Chromium", 120, browser),
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

fn tests() -> Result<(), String> {
    install::system(install::READERS)?;
    // A check says the same of the same code; a bare `cargo test` draws its cases afresh.
    openly(words("cargo test --workspace --exclude trugbook").env("PROPTEST_RNG_SEED", "1"))
}

fn page() -> Result<(), String> {
    install::npm("ui")?;
    quietly(words("npm run check").current_dir(root().join("ui")))?;
    build_page()
}

/// Builds the page into ui/dist.
///
/// # Errors
/// What npm or the bundler printed.
pub fn build_page() -> Result<(), String> {
    install::npm("ui")?;
    quietly(words("npm run build").current_dir(root().join("ui")))
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
    install::system(install::BROWSER)?;
    install::npm("tests/e2e")?;
    build_page()?;
    quietly(&mut words("cargo build -p dev"))?;
    openly(
        words("npm run browser")
            .current_dir(root().join("tests/e2e"))
            .env("TRUGBOOK_BUILT", target()),
    )
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
    openly(
        words("npm run window")
            .current_dir(root().join("tests/e2e"))
            .env("TRUGBOOK_BUILT", target()),
    )
}
