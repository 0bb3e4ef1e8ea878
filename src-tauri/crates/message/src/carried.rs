//! Messages among the words of a text.
//!
//! A message is written as JSON between two characters that Unicode keeps for the inside of a program (U+FDD0 and
//! U+FDD1 are no letters and never interchanged), so that it may stand in any text until the door says it. Behind the
//! first stands a number that this run of the program drew and nobody else knows: what a maker typed, a file brought
//! or another device wrote may hold the two characters, and is still no message. The maker's own words alone need no
//! marks: they are the same in every language.

use std::cell::Cell;
use std::collections::HashMap;
use std::hash::{BuildHasher as _, Hasher as _, RandomState};
use std::sync::LazyLock;

use crate::{Message, Said, Voice};

/// Opens a message where it is kept in a file.
const OPEN: char = '\u{fdd0}';
/// Closes it.
const CLOSE: char = '\u{fdd1}';

/// Opens a message of this run.
static OURS: LazyLock<String> =
    LazyLock::new(|| format!("{OPEN}{:016x}", RandomState::new().build_hasher().finish()));

thread_local! {
    /// Who says the messages that this thread writes out.
    static VOICE: Cell<Option<Voice>> = const { Cell::new(None) };
}

/// Sets the voice back, even where the work panics.
struct Before(Option<Voice>);

impl Drop for Before {
    fn drop(&mut self) {
        VOICE.set(self.0);
    }
}

/// Does `work`; each message that it serializes is said at once by `voice`, where there is one, and need not be carried
/// and read back: a long list holds thousands.
pub fn saying<T>(voice: Option<Voice>, work: impl FnOnce() -> T) -> T {
    let _before = Before(VOICE.replace(voice));
    work()
}

/// The words of a message where it is said at once. What looks like a message of ours in a maker's words is carried, and
/// said as those words.
pub(crate) fn said_now(message: &Message) -> Option<String> {
    let words = VOICE.get()?(message);
    (!is_in(&words)).then_some(words)
}

/// The message as a text carries it.
pub fn written(said: &Said) -> String {
    if let Some(own) = said.own().filter(|own| !is_in(own)) {
        return own.to_owned();
    }
    // Keys are texts and numbers are finite, so nothing of it can fail; an empty text would be seen at once.
    let json = serde_json::to_string(said).unwrap_or_default();
    // A maker's own words may hold anything, these two marks among it.
    let json = json.replace(OPEN, "\\ufdd0").replace(CLOSE, "\\ufdd1");
    format!("{}{json}{CLOSE}", *OURS)
}

/// Whether a text holds a message.
pub fn is_in(text: &str) -> bool {
    text.contains(OURS.as_str())
}

/// A text of our own as it is kept in a file, for another run has another number.
pub fn kept(text: &str) -> String {
    text.replace(OURS.as_str(), &OPEN.to_string())
}

/// What [`kept`] wrote, to be said by this run. Nothing but a text of our own may be given to it.
pub fn taken_up(text: &str) -> String {
    text.replace(OPEN, &OURS)
}

/// The text with `say` in place of each message; what cannot be read stays as it is.
pub fn each(text: &str, mut say: impl FnMut(Said) -> String) -> String {
    replaced(text, |inner| serde_json::from_str(inner).ok().map(&mut say))
}

/// As [`each`] for the messages in the texts of a JSON document, whose form is not touched.
///
/// ```
/// use message::{Message, carried};
/// let json = serde_json::json!({"text": String::from(Message::new("rest"))}).to_string();
/// assert_eq!(carried::each_in_json(&json, |said| format!("\"{}\"", said.id)), r#"{"text":"\"rest\""}"#);
/// ```
pub fn each_in_json(json: &str, mut say: impl FnMut(Said) -> String) -> String {
    replaced(json, |inner| {
        let inner: String = serde_json::from_str(&format!("\"{inner}\"")).ok()?;
        let said = say(serde_json::from_str(&inner).ok()?);
        let quoted = serde_json::to_string(&said).ok()?;
        Some(quoted[1..quoted.len() - 1].to_owned())
    })
}

/// A long list says the same of many of its lines, and each of those is asked for once.
fn replaced(text: &str, mut by: impl FnMut(&str) -> Option<String>) -> String {
    let mut out = String::with_capacity(text.len());
    let mut known: HashMap<&str, Option<String>> = HashMap::new();
    let mut rest = text;
    while let Some(open) = rest.find(OURS.as_str()) {
        let inner = &rest[open + OURS.len()..];
        let Some(close) = inner.find(CLOSE) else {
            break;
        };
        let end = open + OURS.len() + close + CLOSE.len_utf8();
        out.push_str(&rest[..open]);
        let inner = &inner[..close];
        match known.entry(inner).or_insert_with(|| by(inner)) {
            Some(said) => out.push_str(said),
            None => out.push_str(&rest[open..end]),
        }
        rest = &rest[end..];
    }
    out + rest
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Argument, Message};

    fn told() -> Message {
        Message::new("rest").with("name", Argument::own("“Bay” \u{fdd0}leaf\u{fdd1}\n"))
    }

    #[test]
    fn a_message_comes_out_of_a_text_as_it_went_in() {
        let text = format!("No: {}", told());
        let mut found = Vec::new();
        let said = each(&text, |said| {
            found.push(said);
            "no.".to_owned()
        });
        assert_eq!(said, "No: no.");
        assert_eq!(found, [told().said().clone()]);
    }

    #[test]
    fn a_message_is_said_where_it_is_written_out_and_the_voice_ends_with_the_work() {
        let json = |message: &Message| serde_json::to_string(message).expect("it is JSON");
        let voice: Voice = |message| format!("“{}”", message.id());
        let said = saying(Some(voice), || json(&told()));
        assert_eq!(said, "\"“rest”\"");
        assert!(is_in(&json(&told())));
        let ended = std::panic::catch_unwind(|| saying(Some(voice), || panic!("within")));
        assert!(ended.is_err() && is_in(&json(&told())));
    }

    #[test]
    fn what_a_voice_leaves_that_looks_like_a_message_is_carried() {
        let leaked = told().to_string();
        let quoted = Message::new("rest").with("name", Argument::own(leaked.as_str()));
        let voice: Voice = |message| match message.said().arguments.as_slice() {
            [(_, Argument::Own(name))] => name.clone(),
            other => panic!("{other:?}"),
        };
        let json = saying(Some(voice), || serde_json::to_string(&quoted)).expect("it is JSON");
        let said = each_in_json(&json, |said| {
            assert_eq!(&said, quoted.said());
            "rest".to_owned()
        });
        assert_eq!(said, "\"rest\"");
    }

    #[test]
    fn what_looks_like_a_message_is_none_unless_this_run_wrote_it() {
        for own in [
            "Bay leaf",
            "\u{fdd0}{\"id\":\"stopped\"}\u{fdd1}",
            "\u{fdd0}0000000000000000{\"id\":\"stopped\"}\u{fdd1}",
        ] {
            let text = Message::own(own).to_string();
            assert_eq!(text, own);
            assert!(!is_in(&text), "{own}");
            assert_eq!(each(&text, |_| "said".to_owned()), own);
            assert_eq!(each_in_json(&text, |_| "said".to_owned()), own);
        }
    }

    #[test]
    fn what_is_kept_in_a_file_is_said_by_another_run() {
        let text = format!("No: {}", told());
        let kept = kept(&text);
        assert!(!is_in(&kept));
        assert_eq!(taken_up(&kept), text);
    }

    #[test]
    fn what_is_no_message_stays() {
        let ours = OURS.as_str();
        for text in [ours, &format!("{ours}x\u{fdd1} y"), "a\u{fdd1}b", ""] {
            assert_eq!(each(text, |_| "said".to_owned()), text);
        }
    }
}
