//! `cargo dev ask`: questions as JSON lines in, answers as JSON lines out.

use std::io::{BufRead, BufWriter, Write, stdin, stdout};
use std::process::ExitCode;

use api::{App, Code, Failure, SystemClock};
use serde::Deserialize;
use serde_json::value::RawValue;

use crate::failed;
use crate::flags::Flags;

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
    let _ = flags.value("--journal");
    let app = App::new(SystemClock);
    let mut out = BufWriter::new(stdout().lock());
    for line in stdin().lock().lines() {
        let done = line.and_then(|line| {
            if line.trim().is_empty() {
                Ok(())
            } else {
                writeln!(out, "{}", answer(&app, &line))
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
    match replied {
        Ok(reply) => format!("{{\"reply\":{reply}}}"),
        Err(failure) => format!("{{\"failure\":{}}}", serde_json::json!(failure)),
    }
}
