//! The language of a call: what the core says in a reply is said in it, what the maker wrote stays as it is.

use std::cell::Cell;

pub use ::words::Language;
use serde_json::{Map, Value};

use crate::{App, Code, Failure, call};

thread_local! {
    /// The call that a thread works on; a long job works on another thread and is translated where it is shown.
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
}

/// Sets the language back even where the call panics.
struct Turn(Language);

impl Drop for Turn {
    fn drop(&mut self) {
        SPOKEN.set(self.0);
    }
}

/// As [`call`], with the core's own sentences in `language`.
///
/// # Errors
/// As [`call`].
pub fn call_in(
    app: &App,
    language: Language,
    name: &str,
    request: &str,
) -> Result<String, Failure> {
    let _turn = Turn(SPOKEN.replace(language));
    spoken(language, call(app, name, request))
}

/// An answer of the core, a reply as JSON, with its own sentences in `language`.
///
/// # Errors
/// The failure that `answer` holds, or one of code `storage` when the reply is no JSON.
pub fn spoken(language: Language, answer: Result<String, Failure>) -> Result<String, Failure> {
    if language == Language::English {
        return answer;
    }
    let reply = answer.map_err(|failure| Failure {
        message: language.say(&failure.message).into_owned(),
        ..failure
    })?;
    let mut reply: Value = serde_json::from_str(&reply).map_err(|error| {
        let message = format!("The reply could not be written down: {error}.");
        Failure::new(Code::Storage, language.say(&message))
    })?;
    each(&mut reply, &mut |text, whose| {
        *text = match whose {
            Whose::Cited => language.say_whole(text).into_owned(),
            Whose::Core | Whose::Either => language.say(text).into_owned(),
        };
    });
    Ok(reply.to_string())
}

/// The language of the call that this thread works on.
pub(crate) fn language() -> Language {
    SPOKEN.get()
}

/// Words of the core in the language of this call, where they become the maker's or leave as a file.
pub(crate) fn said(text: &str) -> String {
    language().say(text).into_owned()
}

/// Every text of a reply that holds the core's own words, citations and units apart.
pub fn core_words(reply: &Value) -> Vec<String> {
    let mut found = Vec::new();
    each(&mut reply.clone(), &mut |text, whose| {
        if whose == Whose::Core {
            found.push(text.clone());
        }
    });
    found
}

/// Who wrote a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Whose {
    /// The core.
    Core,
    /// A source or a unit: translated as a whole or not at all.
    Cited,
    /// The core, or what it repeats: a source, the name of an own herb.
    Either,
}

fn whose(is_shared: bool) -> Whose {
    if is_shared {
        Whose::Either
    } else {
        Whose::Core
    }
}

/// Fields that hold nothing but the core's words wherever they stand.
const ALWAYS: [&str; 11] = [
    "because",
    "common",
    "gate",
    "message",
    "preparation_name",
    "problem",
    "says",
    "summary",
    "tell_apart",
    "text",
    "undone",
];
/// Lists of such texts.
const LISTS: [&str; 5] = ["damaged", "faults", "herbs", "remarks", "sentences"];
/// Citations and units.
const WHOLE: [&str; 2] = ["source", "unit"];
/// Values of `basis` that a page reads as a code.
const CODES: [&str; 4] = ["table", "own batches", "weigh-ins", "sample"];

fn each(value: &mut Value, say: &mut dyn FnMut(&mut String, Whose)) {
    match value {
        Value::Array(items) => items.iter_mut().for_each(|item| each(item, say)),
        Value::Object(fields) => object(fields, say),
        _ => {}
    }
}

fn object(fields: &mut Map<String, Value>, say: &mut dyn FnMut(&mut String, Whose)) {
    let core: Vec<String> = fields
        .iter()
        .filter(|(name, value)| {
            value
                .as_str()
                .is_some_and(|text| is_core(fields, name, text))
        })
        .map(|(name, _)| name.clone())
        .collect();
    let has_usual = fields.contains_key("usual");
    for (name, value) in fields.iter_mut() {
        match value {
            Value::String(text) if core.contains(name) => {
                let is_shared = matches!(name.as_str(), "common" | "title" | "line")
                    || (name == "because" && has_usual);
                say(text, whose(is_shared));
            }
            Value::String(text) if WHOLE.contains(&name.as_str()) => say(text, Whose::Cited),
            Value::Array(items) if LISTS.contains(&name.as_str()) => {
                for item in items {
                    match item {
                        Value::String(text) => {
                            say(text, whose(matches!(name.as_str(), "damaged" | "herbs")))
                        }
                        inner => each(inner, say),
                    }
                }
            }
            inner => each(inner, say),
        }
    }
}

/// Whether the core wrote this field of this thing; a name, a note and a place are the maker's.
fn is_core(fields: &Map<String, Value>, name: &str, text: &str) -> bool {
    let has = |field: &str| fields.contains_key(field);
    match name {
        _ if ALWAYS.contains(&name) => true,
        "why" => has("tell_apart"),
        "basis" => !CODES.contains(&text),
        "label" => has("status"),
        // The fact called "Note" is what the maker wrote about an own herb.
        "value" => has("status") && fields["label"] != "Note",
        "line" => text.starts_with("given to "),
        "name" => {
            has("summary")
                || has("tell_apart")
                || (has("verdict") && has("reasons"))
                // What is poured from the shelf is called as the maker called it.
                || (has("kind") && !has("id") && fields.get("supply").is_none_or(Value::is_null))
        }
        "note" => has("hash"),
        "reason" => has("dry_mass_g"),
        "title" => match fields.get("noun").and_then(Value::as_str) {
            Some("herb" | "harvest") => true,
            Some(_) => has("what") && text.ends_with("mL left in the jar"),
            None => has("status"),
        },
        _ => false,
    }
}
