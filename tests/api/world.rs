//! A journal of its own for each test, with a clock that the test moves.

use std::cell::RefCell;
use std::path::Path;
use std::sync::Arc;

use api::{App, Failure, Language, StandingClock};
use chrono::DateTime;
use serde_json::Value;
use tempfile::TempDir;

/// A journal, its folder and its clock.
pub struct World {
    app: App,
    clock: Arc<StandingClock>,
    folder: TempDir,
    /// All that was ever asked of it, as JSON.
    sent: RefCell<String>,
}

/// A morning in July on which every test begins.
pub const MORNING: &str = "2026-07-14T09:00:00+02:00";

impl World {
    /// An empty journal.
    pub fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let clock = Arc::new(StandingClock::at(
            DateTime::parse_from_rfc3339(MORNING).unwrap(),
        ));
        let app = App::open(folder.path(), Box::new(clock.clone())).unwrap();
        Self {
            app,
            clock,
            folder,
            sent: RefCell::default(),
        }
    }

    /// The folder alone, all of it closed.
    #[allow(dead_code, reason = "the tests of backups use it")]
    pub fn closed(self) -> TempDir {
        let Self { app, folder, .. } = self;
        drop(app);
        folder
    }

    /// The journal that lies in a folder.
    #[allow(dead_code, reason = "the tests of backups use it")]
    pub fn at_folder(folder: TempDir) -> Self {
        let clock = Arc::new(StandingClock::at(
            DateTime::parse_from_rfc3339(MORNING).unwrap(),
        ));
        let app = App::open(folder.path(), Box::new(clock.clone())).unwrap();
        Self {
            app,
            clock,
            folder,
            sent: RefCell::default(),
        }
    }

    /// The same journal as another program run opens it.
    pub fn reopened(self) -> Self {
        let Self {
            app,
            clock,
            folder,
            sent,
        } = self;
        drop(app);
        let app = App::open(folder.path(), Box::new(clock.clone())).unwrap();
        Self {
            app,
            clock,
            folder,
            sent,
        }
    }

    /// Moves the clock.
    pub fn at(&self, moment: &str) {
        self.clock
            .set(DateTime::parse_from_rfc3339(moment).unwrap());
    }

    /// The reply to a command that is carried out.
    pub fn call(&self, command: &str, request: Value) -> Value {
        let carried = api::carried(&self.app, command, &request.to_string())
            .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"));
        self.heard(command, &request, &carried);
        let reply = api::spoken(Language::English, Ok(carried)).unwrap();
        // A message inside what the maker wrote would be said by nobody.
        assert!(
            !message::carried::is_in(&reply),
            "{command} {request}: {reply}"
        );
        serde_json::from_str(&reply).unwrap()
    }

    /// Holds a reply to what a language needs: without its messages, no sentence is left but those that were sent.
    fn heard(&self, command: &str, request: &Value, carried: &str) {
        let request = request.to_string();
        self.sent.borrow_mut().push_str(&request);
        if command == "demo.begin" {
            // From here on the season's maker writes.
            let season = include_str!("../../demo-data/season.json");
            self.sent.borrow_mut().push_str(season);
        }
        // A job has no language, and a deed that may be damaged is named by the line that is kept of it.
        if ["job.show", "journal.check"].contains(&command) {
            return;
        }
        let mut left = Vec::new();
        let unsaid = message::carried::each_in_json(carried, |_| String::new());
        sentences(&serde_json::from_str(&unsaid).unwrap(), &mut left);
        let sent = self.sent.borrow();
        left.retain(|text| !sent.contains(&serde_json::json!(text).to_string()));
        assert!(left.is_empty(), "{command} {request} says {left:#?}");
    }

    /// The reply to a command that writes a harvest, with all that is told of the harvest in the place of its line.
    #[allow(dead_code, reason = "the tests of backups do without")]
    pub fn harvest(&self, command: &str, request: Value) -> Value {
        let mut reply = self.call(command, request);
        let id = serde_json::json!({"id": reply["harvest"]["id"]});
        reply["harvest"] = self.call("harvest.show", id)["harvest"].clone();
        reply
    }

    /// The failure of a command that is refused; its sentence is a finished one.
    pub fn refused(&self, command: &str, request: Value) -> Refused {
        self.refused_text(command, &request.to_string())
    }

    /// As [`World::refused`], for text that need not be JSON.
    pub fn refused_text(&self, command: &str, request: &str) -> Refused {
        let failure = match api::carried(&self.app, command, request) {
            Ok(reply) => panic!("{command} {request} was not refused: {reply}"),
            Err(failure) => failure,
        };
        for language in Language::ALL {
            let known = language.messages();
            assert!(known.contains_key(failure.message.id()), "{failure:?}");
        }
        Refused::said(failure)
    }

    /// Keeps a sample picture and returns the reply of the upload.
    pub fn photo(&self, sample: &str) -> Value {
        let bytes = std::fs::read(samples().join(sample)).unwrap();
        let reply = self.app.take_photo(bytes.as_slice(), Some(sample)).unwrap();
        serde_json::from_str(&reply).unwrap()
    }

    /// Where the journal lies.
    #[allow(dead_code, reason = "the tests of backups use it")]
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// The app, for what is no command.
    pub fn app(&self) -> &App {
        &self.app
    }
}

/// Fields that hold a citation, or what is kept in the book under that name.
const CITED: [&str; 3] = ["source", "because", "name"];

/// Sentences among the texts of a reply, citations and the lines of the book apart, which are the same in every language.
/// What is in small letters throughout is a value of the wire, such as "on the shelf".
fn sentences(reply: &Value, found: &mut Vec<String>) {
    match reply {
        Value::String(text) => {
            let plain =
                |word: &&str| word.len() > 1 && word.chars().all(|it| it.is_ascii_lowercase());
            let is_value = text == &text.to_lowercase() && !text.contains(['.', ':', ';']);
            if !is_value
                && !text.starts_with("<svg")
                && text.split_whitespace().filter(plain).count() > 2
            {
                found.push(text.clone());
            }
        }
        Value::Array(items) => items.iter().for_each(|item| sentences(item, found)),
        Value::Object(fields) => {
            // A line of the book is one of the language it was written in.
            let is_deed = fields.contains_key("undone_by") || fields.contains_key("device");
            for (name, value) in fields {
                let is_cited = CITED.contains(&name.as_str()) || (is_deed && name == "text");
                if !is_cited {
                    sentences(value, found);
                }
            }
        }
        _ => {}
    }
}

/// Where the sample pictures lie.
pub fn samples() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("photo/samples")
}

/// A failure as the page receives it.
#[derive(Debug)]
pub struct Refused {
    pub code: String,
    pub field: String,
    pub message: String,
}

impl Refused {
    /// A failure as both hosts hand it on, said in English.
    pub fn said(failure: Failure) -> Self {
        let failure = api::spoken(Language::English, Err(failure)).unwrap_err();
        let wire = serde_json::to_value(&failure).unwrap();
        let text = |name: &str| wire[name].as_str().unwrap_or_default().to_owned();
        let message = text("message");
        assert!(
            message.starts_with(|first: char| !first.is_lowercase()) && message.ends_with('.'),
            "no finished sentence: {message:?}"
        );
        assert!(message.len() < 500, "too long to read: {message:?}");
        Self {
            code: text("code"),
            field: text("field"),
            message,
        }
    }
}

impl Refused {
    /// Asserts which field is at fault.
    #[track_caller]
    pub fn of(self, code: &str, field: &str) -> Self {
        assert_eq!(
            (self.code.as_str(), self.field.as_str()),
            (code, field),
            "{}",
            self.message
        );
        self
    }

    /// Asserts that the sentence says this.
    #[track_caller]
    pub fn says(self, part: &str) -> Self {
        assert!(
            self.message.contains(part),
            "{:?} does not say {part:?}",
            self.message
        );
        self
    }
}

/// A number of a reply by its pointer.
#[track_caller]
pub fn number(reply: &Value, pointer: &str) -> f64 {
    reply
        .pointer(pointer)
        .and_then(Value::as_f64)
        .unwrap_or_else(|| panic!("{pointer}: {reply}"))
}

/// A text of a reply by its pointer.
#[track_caller]
pub fn text<'a>(reply: &'a Value, pointer: &str) -> &'a str {
    reply
        .pointer(pointer)
        .and_then(Value::as_str)
        .unwrap_or_else(|| panic!("{pointer}: {reply}"))
}

/// Asserts that a reply holds an interval there, its ends around its value.
#[track_caller]
pub fn is_interval(reply: &Value, pointer: &str) {
    let end = |name: &str| number(reply, &format!("{pointer}/{name}"));
    assert!(
        end("low") <= end("value") && end("value") <= end("high"),
        "{pointer}: {reply}"
    );
}
