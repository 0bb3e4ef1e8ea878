//! `cargo dev ask`: questions as JSON lines in, answers as JSON lines out.

use std::io::{BufRead, BufWriter, Write, stdin, stdout};
use std::path::Path;
use std::process::ExitCode;

use api::{App, Code, Failure, SystemClock};
use serde::Deserialize;
use serde_json::value::RawValue;

use crate::failed;
use crate::flags::Flags;
use crate::opened::Journal;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Question<'a> {
    command: String,
    #[serde(borrow, default)]
    request: Option<&'a RawValue>,
}

/// Answers every line of standard input in order.
pub fn main(args: &[String]) -> ExitCode {
    let flags = match Flags::read(args, &["--journal"], &[]) {
        Ok(flags) => flags,
        Err(why) => return failed(why),
    };
    let journal = flags.value("--journal").map(Path::new);
    let journal = match Journal::open(journal, Box::new(SystemClock)) {
        Ok(journal) => journal,
        Err(why) => return failed(why),
    };
    let app = &journal.app;
    let mut out = BufWriter::new(stdout().lock());
    for line in stdin().lock().lines() {
        let done = line.and_then(|line| {
            if line.trim().is_empty() {
                Ok(())
            } else {
                writeln!(out, "{}", answer(app, &line))
            }
        });
        if let Err(error) = done {
            return failed(format!("The questions could not all be answered: {error}."));
        }
    }
    match out.flush() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => failed(format!("The answers could not all be written: {error}.")),
    }
}

/// One answer, `{"reply": ...}` or `{"failure": ...}`.
pub fn answer(app: &App, line: &str) -> String {
    let replied = serde_json::from_str::<Question>(line)
        .map_err(|error| {
            Failure::new(
                Code::Invalid,
                format!("A line is {{\"command\": ..., \"request\": {{...}}}}: {error}."),
            )
        })
        .and_then(|question| {
            api::call(
                app,
                &question.command,
                question.request.map_or("{}", RawValue::get),
            )
        });
    api::envelope(replied)
}
