//! What is said to the maker, before it has a language.
//!
//! A [`Message`] is an id of the catalogue (`words/texts/*/*.ftl`) with typed arguments, or an older English sentence.
//! A text of the core may hold messages among its words: each stands between two marks (see [`carried`]) and becomes
//! words at the door, in the language of the call. What lives here is the value alone; no language, no sentence.

mod argument;
pub mod carried;
mod name;

use std::borrow::Cow;
use std::fmt;

use serde::{Deserialize, Serialize, Serializer};

pub use argument::{Amount, Argument, Joint, Unit};
pub use name::in_sentence;

/// An id with its arguments, by name, in the order in which they were given.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Said {
    /// The entry of the catalogue.
    pub id: Cow<'static, str>,
    /// What stands in its places.
    #[serde(default, rename = "with", skip_serializing_if = "Vec::is_empty")]
    pub arguments: Vec<(Cow<'static, str>, Argument)>,
}

/// Something that the core says.
#[derive(Debug, Clone, PartialEq)]
pub enum Message {
    /// An English text of the core, which the older catalogue translates by its wording.
    Plain(String),
    /// An entry of the catalogue with its arguments.
    Said(Said),
}

impl Message {
    /// The entry `id` of the catalogue; its arguments follow by [`Message::with`] in the same chain, where the check
    /// reads them.
    ///
    /// ```
    /// use message::{Argument, Message};
    /// let text = String::from(Message::new("dry-first").with("herb", Argument::herb("Comfrey")));
    /// assert!(message::carried::is_in(&text));
    /// ```
    pub fn new(id: &'static str) -> Self {
        Self::Said(Said {
            id: Cow::Borrowed(id),
            arguments: Vec::new(),
        })
    }

    /// The entry that a table of the formulary names; a test holds the ids of tables to the catalogue.
    pub fn of_table(id: impl Into<Cow<'static, str>>) -> Self {
        Self::Said(Said {
            id: id.into(),
            arguments: Vec::new(),
        })
    }

    /// An older English sentence as it stands.
    pub fn plain(text: impl Into<String>) -> Self {
        Self::Plain(text.into())
    }

    /// The same message with one more argument; a plain text has none and stays as it is.
    #[must_use]
    pub fn with(mut self, name: &'static str, argument: Argument) -> Self {
        if let Self::Said(said) = &mut self {
            said.arguments.push((Cow::Borrowed(name), argument));
        }
        self
    }
}

/// The message as a text carries it: words where it is plain, else what [`carried::each`] finds again.
impl fmt::Display for Message {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Plain(text) => out.write_str(text),
            Self::Said(said) => out.write_str(&carried::written(said)),
        }
    }
}

impl From<Message> for String {
    fn from(message: Message) -> Self {
        match message {
            Message::Plain(text) => text,
            Message::Said(said) => carried::written(&said),
        }
    }
}

impl From<String> for Message {
    fn from(text: String) -> Self {
        Self::Plain(text)
    }
}

impl From<&str> for Message {
    fn from(text: &str) -> Self {
        Self::Plain(text.to_owned())
    }
}

/// As a text, so that a reply that holds a message reads as one that holds words.
impl Serialize for Message {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
