//! Messages among the words of a text.
//!
//! A message is written as JSON between two characters that Unicode keeps for the inside of a program (U+FDD0 and
//! U+FDD1 are no letters and never interchanged), so that it may stand in any text, alone or within an older sentence,
//! until the door says it.

use std::borrow::Cow;

use crate::Said;

/// Opens a message.
const OPEN: char = '\u{fdd0}';
/// Closes it.
const CLOSE: char = '\u{fdd1}';

/// The message as a text carries it.
pub fn written(said: &Said) -> String {
    // Keys are texts and numbers are finite, so nothing of it can fail; an empty text would be seen at once.
    let json = serde_json::to_string(said).unwrap_or_default();
    // A maker's own words may hold anything, these two marks among it.
    let json = json.replace(OPEN, "\\ufdd0").replace(CLOSE, "\\ufdd1");
    format!("{OPEN}{json}{CLOSE}")
}

/// Whether a text holds a message.
pub fn is_in(text: &str) -> bool {
    text.contains(OPEN)
}

/// Whether a text ends in a message.
pub fn ends(text: &str) -> bool {
    text.ends_with(CLOSE)
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

/// The text with a token of two marks and a number in place of each message, and the messages.
pub fn taken_out(text: &str) -> (Cow<'_, str>, Vec<Said>) {
    if !is_in(text) {
        return (Cow::Borrowed(text), Vec::new());
    }
    let mut taken = Vec::new();
    let left = replaced(text, |inner| {
        taken.push(serde_json::from_str(inner).ok()?);
        Some(format!("{OPEN}{}{CLOSE}", taken.len() - 1))
    });
    (Cow::Owned(left), taken)
}

/// The text of [`taken_out`] with `said` in the places of its tokens.
pub fn put_back(text: &str, said: &[String]) -> String {
    replaced(text, |inner| {
        said.get(inner.parse::<usize>().ok()?).cloned()
    })
}

fn replaced(text: &str, mut by: impl FnMut(&str) -> Option<String>) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(open) = rest.find(OPEN) {
        let inner = &rest[open + OPEN.len_utf8()..];
        let Some(close) = inner.find(CLOSE) else {
            break;
        };
        let end = open + OPEN.len_utf8() + close + CLOSE.len_utf8();
        out.push_str(&rest[..open]);
        match by(&inner[..close]) {
            Some(said) => out.push_str(&said),
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
        let text = format!("Do not make it: {}", told());
        let mut found = Vec::new();
        let said = each(&text, |said| {
            found.push(Message::Said(said));
            "no.".to_owned()
        });
        assert_eq!(said, "Do not make it: no.");
        assert_eq!(found, [told()]);
    }

    #[test]
    fn what_is_no_message_stays() {
        for text in ["\u{fdd0}", "\u{fdd0}x\u{fdd1} y", "a\u{fdd1}b", ""] {
            assert_eq!(each(text, |_| "said".to_owned()), text);
        }
    }

    #[test]
    fn tokens_are_put_back_in_their_places() {
        let text = format!("{} and {}", Message::new("a"), Message::new("b"));
        let (left, taken) = taken_out(&text);
        let ids: Vec<String> = taken.iter().map(|said| said.id.to_string()).collect();
        assert!(!left.chars().any(|it| it == '{'), "{left}");
        assert_eq!(put_back(&left.replace("and", "und"), &ids), "a und b");
    }
}
