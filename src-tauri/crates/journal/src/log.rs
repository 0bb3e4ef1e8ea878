//! Deeds and the changes they are made of.

use message::{Message, Said};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::{DeedId, DeviceId, HybridTime, Noun};

/// The top-level fields of a row; fields that only make sense together are one.
pub type Fields = Map<String, Value>;

macro_rules! worded {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $word:literal,)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[cfg_attr(feature = "ts", derive(ts_rs::TS))]
        pub enum $name {
            $($(#[$variant_doc])* #[serde(rename = $word)] $variant,)*
        }

        impl $name {
            /// Every one of them.
            pub const ALL: &[Self] = &[$(Self::$variant,)*];

            /// The word that stands for it in the log and on the wire.
            pub fn as_str(self) -> &'static str {
                match self { $(Self::$variant => $word,)* }
            }

            /// The one that `word` stands for.
            pub fn parse(word: &str) -> Option<Self> {
                match word { $($word => Some(Self::$variant),)* _ => None }
            }
        }
    };
}
pub(crate) use worded;

worded!(
    /// What a change does to its row.
    Act {
        /// Makes the row exist, with all its fields.
        Record = "record",
        /// Supersedes some fields.
        Correct = "correct",
        /// Takes the row away; recording or undoing brings it back.
        Strike = "strike",
    }
);

/// One change to one row.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// What the row is about.
    pub noun: Noun,
    /// The row's id as text.
    pub row: String,
    /// What is done to it.
    pub act: Act,
    /// The fields that are set; null empties one.
    pub fields: Fields,
}

/// What a deed says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// One line in the language in which it was said first.
    pub text: String,
    /// The message that it was said from, as JSON of [`message::Said`]; none where the line is all there is. It stays as
    /// it was written, for a later version may know arguments that this one does not.
    pub message: Option<String>,
}

impl Line {
    /// The line of a message, said by `voice`.
    pub fn said(message: &Message, voice: fn(&Message) -> String) -> Self {
        Self {
            text: voice(message),
            // Keys are texts and numbers are finite, so nothing of it can fail.
            message: serde_json::to_string(message.said()).ok(),
        }
    }

    /// What it says, for whatever language it is read in; the line as it was written where no message can be read.
    pub fn told(&self) -> Message {
        let said = self.message.as_deref().map(serde_json::from_str::<Said>);
        match said {
            Some(Ok(said)) => Message::from(said).written_as(&self.text),
            _ => Message::own(&self.text),
        }
    }
}

impl From<&str> for Line {
    fn from(text: &str) -> Self {
        text.to_owned().into()
    }
}

impl From<String> for Line {
    fn from(text: String) -> Self {
        Self {
            text,
            message: None,
        }
    }
}

/// One batch of changes that came about together and is undone together.
#[derive(Debug, Clone, PartialEq)]
pub struct Deed {
    /// Its id.
    pub id: DeedId,
    /// When it was written.
    pub at: HybridTime,
    /// Where it was written.
    pub device: DeviceId,
    /// One line that tells the maker what was done, in the language of the moment in which it was written.
    pub text: String,
    /// The message that the line was said from, as [`Line::message`] has it.
    pub message: Option<String>,
    /// The deed that this one takes back.
    pub revokes: Option<DeedId>,
    /// What was changed, in order.
    pub changes: Vec<Change>,
}

impl Deed {
    /// What it says.
    pub fn line(&self) -> Line {
        Line {
            text: self.text.clone(),
            message: self.message.clone(),
        }
    }

    /// The place of this deed in the one order that every device agrees on.
    pub fn order(&self) -> (HybridTime, DeviceId, DeedId) {
        (self.at, self.device, self.id)
    }
}

#[cfg(test)]
mod tests {
    use message::{Argument, say};

    use super::*;

    #[test]
    fn a_line_is_told_by_its_message_and_else_as_it_was_written() {
        let name = Argument::own("Terrace");
        let message = say!("deed-bed-added", name);
        let line = Line::said(&message, |_| "Added the bed Terrace".to_owned());
        assert_eq!(line.text, "Added the bed Terrace");
        assert_eq!(line.told(), message.written_as(&line.text));
        for json in [None, Some("{}"), Some("no JSON"), Some("{\"id\":7}")] {
            let line = Line {
                message: json.map(str::to_owned),
                ..line.clone()
            };
            assert_eq!(line.told(), Message::own("Added the bed Terrace"));
        }
    }
}
