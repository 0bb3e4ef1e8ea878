//! A message in, a sentence out: what the core says, in the languages that it speaks.
//!
//! A sentence is a [`message::Message`]: an id with arguments, whose words stand in Fluent files
//! (`texts/<language>/*.ftl`), English too.

mod digits;
#[path = "../../say/src/places.rs"]
mod places;
mod said;
mod strange;
mod texts;

pub use digits::digits;

use std::collections::{BTreeMap, BTreeSet};

use message::{Message, carried};
use texts::Texts;

/// A language that the core can be asked to speak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// German.
    German,
    /// English as no one writes it (`en-XA`), for whoever looks for sentences that are not of the catalogue.
    Strange,
}

impl Language {
    /// Every language that is spoken.
    pub const ALL: [Self; 2] = [Self::English, Self::German];

    /// The language of a tag such as `de`, `de-AT` or `de-DE,de;q=0.9`; English where it is not spoken here.
    #[must_use]
    pub fn of(tag: &str) -> Self {
        let first = tag.split([',', ';']).next().unwrap_or_default().trim();
        let primary = first.split(['-', '_']).next().unwrap_or_default();
        if primary.trim().eq_ignore_ascii_case("de") {
            Self::German
        } else if first.eq_ignore_ascii_case(Self::Strange.tag()) {
            Self::Strange
        } else {
            Self::English
        }
    }

    /// Its tag (RFC 5646).
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::Strange => "en-XA",
        }
    }

    /// A message in this language.
    #[must_use]
    pub fn tell(self, message: &Message) -> String {
        self.said(message.said())
    }

    /// The messages of a text in this language; its other words stay, for they are the maker's.
    #[must_use]
    pub fn say_messages(self, text: &str) -> String {
        carried::each(text, |said| self.said(&said))
    }

    /// As [`Language::say_messages`] for every text of a JSON document.
    #[must_use]
    pub fn say_messages_in_json(self, json: &str) -> String {
        carried::each_in_json(json, |said| self.said(&said))
    }

    /// The messages of this language: each id with the names of its arguments.
    pub fn messages(self) -> &'static BTreeMap<String, BTreeSet<String>> {
        Texts::of(self).places()
    }
}

#[cfg(test)]
mod tests {
    use super::Language;

    #[test]
    fn a_tag_names_a_language() {
        assert_eq!(Language::of("de-DE,de;q=0.9,en;q=0.8"), Language::German);
        assert_eq!(Language::of("DE"), Language::German);
        assert_eq!(Language::of("den"), Language::English);
        assert_eq!(Language::of("en-XA,en"), Language::Strange);
        assert_eq!(Language::of("en-GB"), Language::English);
        assert_eq!(Language::of(""), Language::English);
    }
}
