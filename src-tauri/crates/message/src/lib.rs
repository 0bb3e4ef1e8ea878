//! What is said to the maker, before it has a language.
//!
//! A [`Message`] is an id of the catalogue (`words/texts/*/*.ftl`) with typed arguments. It becomes words at the door, in
//! the language of the call. A text of the core may hold messages: each stands there between two marks (see [`carried`]).
//! What lives here is the value alone; no language, no sentence.

// The macro names this crate as every other does.
extern crate self as message;

mod argument;
pub mod carried;
mod failure;
mod refusal;

use std::borrow::Cow;
use std::fmt;

use serde::{Deserialize, Serialize, Serializer};

pub use argument::{Amount, Argument, Joint, Unit};
pub use failure::{At, Code, Failure};
pub use refusal::Refusal;
pub use say::say;

/// The entry that holds nothing but what the maker wrote.
pub(crate) const OWN: &str = "own-words";

/// The argument that holds the line of a message as it was written once; no entry has a place for it.
const AS_WRITTEN: &str = "as-written";

/// An id with its arguments, by name, in the order in which they were given.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Said {
    /// The entry of the catalogue.
    pub id: Cow<'static, str>,
    /// What stands in its places.
    #[serde(default, rename = "with", skip_serializing_if = "Vec::is_empty")]
    pub arguments: Vec<(Cow<'static, str>, Argument)>,
}

impl Said {
    /// The maker's words where it is nothing but those.
    pub(crate) fn own(&self) -> Option<&str> {
        match self.arguments.as_slice() {
            [(_, Argument::Own(text))] if self.id == OWN => Some(text),
            _ => None,
        }
    }

    /// Cuts what it quotes where that is longer than anyone reads.
    pub(crate) fn keep_short(&mut self) {
        for (_, argument) in &mut self.arguments {
            argument.keep_short();
        }
    }

    pub(crate) fn count_in_ounces(&mut self) {
        for (_, argument) in &mut self.arguments {
            argument.count_in_ounces();
        }
    }

    /// The line that it was once, by [`Message::written_as`].
    pub fn as_written(&self) -> Option<&str> {
        self.arguments.iter().find_map(|(name, it)| match it {
            Argument::Own(line) if name == AS_WRITTEN => Some(line.as_str()),
            _ => None,
        })
    }
}

/// Something that the core says.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(type = "string"))]
pub struct Message(Said);

impl Message {
    /// The entry `id` of the catalogue; what the macro [`say!`] makes, which holds it to the catalogue.
    ///
    /// ```
    /// use message::{Argument, say};
    /// let text = String::from(say!("photo-disk", detail = Argument::own("gone")));
    /// assert!(message::carried::is_in(&text));
    /// ```
    pub fn new(id: &'static str) -> Self {
        Self::of_table(id)
    }

    /// The entry that a table of the formulary names; a test holds the ids of tables to the catalogue.
    pub fn of_table(id: impl Into<Cow<'static, str>>) -> Self {
        Self(Said {
            id: id.into(),
            arguments: Vec::new(),
        })
    }

    /// What the maker wrote, or what is cited: the same in every language.
    pub fn own(text: impl Into<String>) -> Self {
        Self::new(OWN).with("text", Argument::own(text))
    }

    /// The entry that it names.
    pub fn id(&self) -> &str {
        &self.0.id
    }

    /// The same message as an earlier version may have written it: `line` is said where the catalogue no longer has, or
    /// does not have yet, what the message needs.
    #[must_use]
    pub fn written_as(self, line: &str) -> Self {
        self.with(AS_WRITTEN, Argument::own(line))
    }

    /// Its entry with its arguments.
    pub fn said(&self) -> &Said {
        &self.0
    }

    /// The same message for a reader of US units: grams as ounces, millilitres as fluid ounces.
    #[must_use]
    pub fn in_us_units(mut self) -> Self {
        self.0.count_in_ounces();
        self
    }

    /// The same message with one more argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, argument: Argument) -> Self {
        self.0.arguments.push((Cow::Borrowed(name), argument));
        self
    }
}

/// Says a message in the language of the moment.
pub type Voice = fn(&Message) -> String;

/// The message as a text carries it, where [`carried::each`] finds it again.
impl fmt::Display for Message {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&carried::written(&self.0))
    }
}

impl From<Said> for Message {
    fn from(said: Said) -> Self {
        Self(said)
    }
}

impl From<Message> for String {
    fn from(message: Message) -> Self {
        carried::written(&message.0)
    }
}

/// As a text, so that a reply that holds a message reads as one that holds words: said by [`carried::saying`], or carried.
impl Serialize for Message {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match carried::said_now(self) {
            Some(words) => serializer.serialize_str(&words),
            None => serializer.collect_str(self),
        }
    }
}
