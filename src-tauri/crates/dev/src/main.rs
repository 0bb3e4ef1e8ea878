//! The way in for developers: `cargo dev <what>`.
//!
//! Nothing here is shipped. Each subcommand is a module with `main(args) -> ExitCode`.

mod accuracy;
mod ask;
mod bench;
mod bench_shell;
mod bindings;
mod check;
mod check_android;
mod check_phones;
mod check_sources;
mod check_tests;
mod demo;
mod flags;
mod install;
mod opened;
mod package;
mod package_tried;
mod pictures;
mod process;
mod run;
mod serve;
mod years;

use std::process::ExitCode;

const USAGE: &str = "\
cargo dev <what>

  run [--empty]                      opens the app on a journal of its own
  check [--quick] [--only STEP]      checks everything, exactly as CI does
  accuracy                           measures the drying forecast on simulated batches
  bench [--shell [--journal DIR]]    measures what the engine takes, or the window beside an empty one
  ask [--journal DIR]                answers a JSON question a line from standard input
  serve [--journal DIR] [--port N] [--demo] [--now TIME]
                                     the page in an ordinary browser, on 127.0.0.1 alone
  demo --into DIR [--years N]        fills a new journal with the demonstration season, or
                                     with N years of a large garden to measure by
  package [--try]                    builds the .deb and the tarball, and tries the .deb in a
                                     clean Debian
  pictures                           makes the pictures of the README anew
  bindings [--check]                 writes (or compares) the TypeScript of the commands
";

fn main() -> ExitCode {
    let mut args = std::env::args().skip(1);
    let what = args.next().unwrap_or_default();
    let args: Vec<String> = args.collect();
    match what.as_str() {
        "accuracy" => accuracy::main(),
        "ask" => ask::main(&args),
        "bench" if args.first().is_some_and(|flag| flag == "--shell") => {
            bench_shell::main(&args[1..])
        }
        "bench" => bench::main(),
        "bindings" => bindings::main(&args),
        "check" => check::main(&args),
        "demo" => demo::main(&args),
        "package" => package::main(&args),
        "pictures" => pictures::main(&args),
        "run" => run::main(&args),
        "serve" => serve::main(&args),
        _ => {
            eprint!("{USAGE}");
            ExitCode::from(2)
        }
    }
}

/// Says why in a sentence on standard error; the exit status of a run that failed.
fn failed(why: impl std::fmt::Display) -> ExitCode {
    eprintln!("{why}");
    ExitCode::FAILURE
}
