//! The language of a call: what the core says in a reply is said in it, what the maker wrote stays as it is.

use std::cell::Cell;

pub use ::words::Language;
use serde_json::{Map, Value};

use message::carried;

use crate::command::carried as answered;
use crate::{App, Code, Failure};

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

/// Carries out the command `name` with `request` (a JSON object) and returns the reply as JSON, in English.
///
/// # Errors
/// A [`Failure`] when there is no such command, the request cannot be read or it was refused.
pub fn call(app: &App, name: &str, request: &str) -> Result<String, Failure> {
    call_in(app, Language::English, name, request)
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
    // The store has rolled back what a panic left half written, and a lock that it poisoned is taken
    // all the same.
    let worked = std::panic::AssertUnwindSafe(|| answered(app, name, request));
    let answer = std::panic::catch_unwind(worked).unwrap_or_else(|_| Err(Failure::broken_off()));
    spoken(language, answer)
}

/// An answer of the core, a reply as JSON, with its own sentences in `language`.
///
/// # Errors
/// The failure that `answer` holds, or one of code `storage` when the reply is no JSON.
pub fn spoken(language: Language, answer: Result<String, Failure>) -> Result<String, Failure> {
    let reply = answer.map_err(|failure| {
        let message = language.say(&failure.message).into_owned();
        Failure { message, ..failure }.kept_short()
    })?;
    if language == Language::English {
        // Most replies hold no message, and those are not walked.
        return Ok(match carried::is_in(&reply) {
            true => language.say_messages_in_json(&reply),
            false => reply,
        });
    }
    let mut reply: Value = serde_json::from_str(&reply).map_err(|error| {
        let message = format!("The reply could not be written down: {error}.");
        Failure::new(Code::Storage, language.say(&message))
    })?;
    each(&mut reply, &mut |text, whose| {
        *text = match whose {
            Whose::Cited => language.say_whole(text).into_owned(),
            Whose::Core | Whose::Either => language.say(text).into_owned(),
            Whose::Maker => language.say_messages(text),
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

/// Every text of a reply that holds the core's own words, citations and units apart; of a reply of [`crate::carried`], its
/// messages are still to be said.
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
    /// The maker; what the core says in such a field is a message.
    Maker,
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
        Value::String(text) if carried::is_in(text) => say(text, Whose::Maker),
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

#[cfg(test)]
mod tests {
    use message::{Argument, Message};
    use serde_json::json;

    use super::*;

    fn told() -> String {
        Message::new("list-and")
            .with("before", Argument::name("leaf"))
            .with("last", Argument::own("Bay leaf, \"2.5\""))
            .into()
    }

    fn in_both(reply: &Value) -> [Value; 2] {
        Language::ALL.map(|language| {
            let said = spoken(language, Ok(reply.to_string())).expect("it is said");
            serde_json::from_str(&said).expect("it is JSON")
        })
    }

    #[test]
    fn a_message_is_said_in_the_language_of_the_call_and_the_makers_words_pass_unchanged() {
        let reply = json!({"notes": [{"text": told()}], "name": told(), "mine": "leaf", "n": 2.50});
        let [english, german] = in_both(&reply);
        assert_eq!(english["notes"][0]["text"], "leaf and Bay leaf, \"2.5\"");
        assert_eq!(german["notes"][0]["text"], "Blatt und Bay leaf, \"2.5\"");
        assert_eq!(german["name"], german["notes"][0]["text"]);
        assert_eq!(german["mine"], "leaf");
        assert_eq!(english["n"], json!(2.5));
    }

    #[test]
    fn a_message_inside_an_older_sentence_is_said_too() {
        let text = format!("Do not make it: {}", told());
        let [english, german] = in_both(&json!({"text": text}));
        assert_eq!(
            english["text"],
            "Do not make it: leaf and Bay leaf, \"2.5\""
        );
        assert_eq!(
            german["text"],
            "Nicht herstellen: Blatt und Bay leaf, \"2.5\""
        );
        let refused = Failure::invalid("herb", told());
        let Err(failure) = spoken(Language::German, Err(refused)) else {
            panic!("a refusal stays one");
        };
        assert_eq!(failure.message, "Blatt und Bay leaf, \"2.5\"");
    }
}
