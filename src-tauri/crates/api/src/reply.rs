//! A reply as it leaves: JSON, with the core's own sentences in the language of the call.

use ::words::Language;
use message::{Argument, Code, Failure, Message, carried, say};
use serde::Serialize;

use crate::speech::{Turn, voice};

/// A reply as JSON, said where a call is in a language.
pub(crate) fn written_down(reply: &impl Serialize) -> Result<String, Failure> {
    let written = carried::saying(voice(), || serde_json::to_string(reply));
    written.map_err(|error| {
        let why = Argument::own(error.to_string());
        Failure::new(Code::Storage, say!("reply-unwritten", why))
    })
}

/// An answer as both hosts carry it: `{"reply": ...}` or `{"failure": ...}`.
pub fn envelope(answer: Result<String, Failure>) -> String {
    match answer {
        Ok(reply) => format!("{{\"reply\":{reply}}}"),
        Err(failure) => format!("{{\"failure\":{}}}", serde_json::json!(failure)),
    }
}

/// What `work` answers, with the core's own sentences in `language`; a panic is a failure as any other.
pub(crate) fn answered_in(
    language: Language,
    work: impl FnOnce() -> Result<String, Failure>,
) -> Result<String, Failure> {
    let _turn = Turn::to(language);
    // The store has rolled back what a panic left half written, and a lock that it poisoned is taken
    // all the same.
    let worked = std::panic::AssertUnwindSafe(work);
    let answer = std::panic::catch_unwind(worked).unwrap_or_else(|_| Err(Failure::broken_off()));
    spoken(language, answer)
}

/// An answer of the core, a reply as JSON, with its own sentences in `language`.
///
/// # Errors
/// The failure that `answer` holds, with its sentence in words.
pub fn spoken(language: Language, answer: Result<String, Failure>) -> Result<String, Failure> {
    match answer {
        // A message within a longer text is still carried; most replies hold none, and those are not walked.
        Ok(reply) if carried::is_in(&reply) => Ok(language.say_messages_in_json(&reply)),
        Ok(reply) => Ok(reply),
        Err(failure) => {
            let message = Message::own(language.tell(&failure.message));
            Err(Failure { message, ..failure })
        }
    }
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use super::*;

    fn told() -> String {
        let last = Argument::own("Bay leaf, \"2.5\"");
        say!("list-and", before = say!("part-leaf"), last).into()
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
    fn a_refusal_leaves_in_words() {
        let name = Argument::own("leaf \u{fdd0}");
        let refused = Failure::invalid("herb", say!("herb-unknown", name));
        let Err(failure) = spoken(Language::German, Err(refused)) else {
            panic!("a refusal stays one");
        };
        assert_eq!(
            failure.message.to_string(),
            "Eine Pflanze „leaf \u{fdd0}“ gibt es nicht. Leg sie zuerst als deine eigene an."
        );
    }
}
