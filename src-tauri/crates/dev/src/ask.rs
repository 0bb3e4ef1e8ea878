//! `cargo dev ask`: questions as JSON lines in, answers as JSON lines out.

use std::io::{BufRead, BufReader, BufWriter, Read, Write, stdin, stdout};
use std::path::Path;
use std::process::ExitCode;

use api::{App, Code, Failure, Language, SystemClock};
use message::Message;
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
    /// A tag such as `de`; English without it.
    #[serde(default)]
    language: String,
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
    match answer_all(app, stdin().lock(), stdout().lock()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => failed(format!("The questions could not all be answered: {error}.")),
    }
}

fn answer_all(app: &App, questions: impl Read, answers: impl Write) -> std::io::Result<()> {
    let mut questions = BufReader::new(questions);
    let mut answers = BufWriter::new(answers);
    let mut line = Vec::new();
    while questions.read_until(b'\n', &mut line)? > 0 {
        // Bytes that are no text become a character that no command contains.
        let text = String::from_utf8_lossy(&line);
        if !text.trim().is_empty() {
            writeln!(answers, "{}", answer(app, text.trim()))?;
        }
        // Whoever asks one question at a time waits for its answer.
        if questions.buffer().is_empty() {
            answers.flush()?;
        }
        line.clear();
    }
    answers.flush()
}

/// One answer, `{"reply": ...}` or `{"failure": ...}`.
fn answer(app: &App, line: &str) -> String {
    let replied = serde_json::from_str::<Question>(line)
        .map_err(|error| {
            Failure::new(
                Code::Invalid,
                Message::own(format!("This line is no question like {{\"command\": \"...\", \"request\": {{...}}}}: {error}.")),
            )
        })
        .and_then(|question| {
            api::call_in(
                app,
                Language::of(&question.language),
                &question.command,
                question.request.map_or("{}", RawValue::get),
            )
        });
    api::envelope(replied)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_line_is_answered_in_order_whatever_it_holds() {
        let journal = Journal::open(None, Box::new(SystemClock)).unwrap();
        let questions: &[u8] = b"{\"command\":\"bed.list\",\"request\":{}}\n\
            no json\n\n\
            {\"command\":\"bed.list\"}\n\
            {\"command\":\"b\xffd.list\",\"request\":{}}\n\
            {\"command\":\"bed.list\",\"request\":{\"x\":NaN}}\n\
            {\"command\":\"bed.list\",\"request\":{},\"more\":1}\n\
            {\"command\":\"no.such\",\"request\":{}}";
        let mut answers = Vec::new();
        answer_all(&journal.app, questions, &mut answers).unwrap();
        let answers = String::from_utf8(answers).unwrap();
        let heads: Vec<&str> = answers
            .lines()
            .map(|line| line.split(':').next().unwrap())
            .collect();
        let (reply, failure) = ("{\"reply\"", "{\"failure\"");
        assert_eq!(
            heads,
            [reply, failure, reply, failure, failure, failure, failure]
        );
        for line in answers.lines() {
            serde_json::from_str::<serde_json::Value>(line).unwrap();
        }
    }
}
