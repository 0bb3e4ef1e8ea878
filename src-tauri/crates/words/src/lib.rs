//! The core's own sentences in other languages.
//!
//! A sentence is a [`message::Message`]: an id with arguments, whose words stand in Fluent files
//! (`texts/<language>/*.ftl`), English too.
//!
//! Older sentences are written in English; the English sentence is the key. A catalogue (`data/de/*.tsv`) holds one
//! English template a line with its translation. What stands in a hole is translated in turn, so that the name of a
//! part or a field inside a sentence speaks the language too, and its numbers take the language's decimal mark. A
//! sentence without an entry stays English.

mod catalogue;
mod number;
mod said;
mod template;
mod texts;

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use catalogue::Catalogue;
use message::{Message, carried};
use texts::Texts;

/// A language that the core can be asked to speak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// What the core writes by itself.
    #[default]
    English,
    /// German.
    German,
}

static GERMAN: LazyLock<Catalogue> = LazyLock::new(|| {
    Catalogue::read(&[
        include_str!("../data/de/names.tsv"),
        include_str!("../data/de/herbs.tsv"),
        include_str!("../data/de/preparations.tsv"),
        include_str!("../data/de/cautions.tsv"),
        include_str!("../data/de/sentences.tsv"),
        include_str!("../data/de/refusals.tsv"),
        include_str!("../data/de/papers.tsv"),
        include_str!("../data/de/safe.tsv"),
    ])
});

impl Language {
    /// Every language.
    pub const ALL: [Self; 2] = [Self::English, Self::German];

    /// The language of a tag such as `de`, `de-AT` or `de-DE,de;q=0.9`; English where it is not spoken here.
    #[must_use]
    pub fn of(tag: &str) -> Self {
        let primary = tag.split([',', ';', '-', '_']).next().unwrap_or_default();
        if primary.trim().eq_ignore_ascii_case("de") {
            Self::German
        } else {
            Self::English
        }
    }

    fn catalogue(self) -> Option<&'static Catalogue> {
        match self {
            Self::English => None,
            Self::German => Some(&GERMAN),
        }
    }

    /// A message in this language.
    #[must_use]
    pub fn tell(self, message: &Message) -> String {
        match message {
            Message::Plain(text) => self.say(text).into_owned(),
            Message::Said(said) => self.said(said),
        }
    }

    /// A text of the core in this language: its messages are said, its older sentences translated; as it stands where
    /// nothing is known for it.
    #[must_use]
    pub fn say(self, text: &str) -> Cow<'_, str> {
        self.around(text, |words, left| words.say(left))
    }

    /// `text` with its messages said and what stands around them translated by `say`.
    fn around(
        self,
        text: &str,
        say: impl FnOnce(&Catalogue, &str) -> Option<String>,
    ) -> Cow<'_, str> {
        let (left, messages) = carried::taken_out(text);
        let said = self.catalogue().and_then(|words| say(words, &left));
        if messages.is_empty() {
            return said.map_or(Cow::Borrowed(text), Cow::Owned);
        }
        let messages: Vec<String> = messages.iter().map(|it| self.said(it)).collect();
        Cow::Owned(carried::put_back(
            said.as_deref().unwrap_or(&left),
            &messages,
        ))
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

    /// A citation or a unit in this language, where all of it is an entry: a part of one is never translated.
    #[must_use]
    pub fn say_whole(self, text: &str) -> Cow<'_, str> {
        self.around(text, Catalogue::say_whole)
    }

    /// Several words or sentences of the core, joined by commas, "and" or "or", in this language.
    #[must_use]
    pub fn say_list(self, text: &str) -> Cow<'_, str> {
        self.around(text, |words, left| Some(words.say_list(left)))
    }

    /// Pieces of a sentence of the core that have no entry; nothing when all of it has one.
    ///
    /// What fills a hole is reported with a leading `~`: it may well be a name that the maker gave.
    #[must_use]
    pub fn gaps(self, text: &str) -> Vec<String> {
        let (left, messages) = carried::taken_out(text);
        let mut gaps: Vec<String> = messages
            .iter()
            .flat_map(|said| Texts::of(self).gaps(said))
            .collect();
        gaps.extend(self.catalogue().into_iter().flat_map(|it| it.gaps(&left)));
        gaps
    }

    /// The messages of this language: each id with the names of its arguments.
    pub fn messages(self) -> &'static BTreeMap<String, BTreeSet<String>> {
        Texts::of(self).places()
    }

    /// The English templates of the catalogue, as they are written there.
    pub fn templates(self) -> impl Iterator<Item = &'static str> {
        self.catalogue().into_iter().flat_map(Catalogue::templates)
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::Language;

    #[test]
    fn a_tag_names_a_language() {
        assert_eq!(Language::of("de-DE,de;q=0.9,en;q=0.8"), Language::German);
        assert_eq!(Language::of("DE"), Language::German);
        assert_eq!(Language::of("den"), Language::English);
        assert_eq!(Language::of(""), Language::English);
    }

    #[test]
    fn no_entry_stands_twice() {
        let mut seen = BTreeSet::new();
        for template in Language::German.templates() {
            let key = template.to_lowercase();
            assert!(seen.insert(key), "twice: {template}");
        }
        assert!(seen.len() > 1000, "the catalogue was not found");
    }

    #[test]
    fn sentences_of_the_core_are_said_in_german() {
        let said = |text| Language::German.say(text).into_owned();
        assert_eq!(
            said("The strength must be between 0 and 100 % vol; 120.5 is not."),
            "Der Alkoholgehalt muss zwischen 0 und 100\u{a0}% vol liegen; 120,5 tut es nicht."
        );
        assert_eq!(
            said("published water content of lemon balm leaf, two tables"),
            "veröffentlichter Wassergehalt von Melisse (Blatt), zwei Tabellen"
        );
        assert_eq!(
            said(
                "Keeps cold: alcohol at the end 22 % vol (20.5 to 24); 25 % vol keeps on the shelf, 20 to 25 keeps cold, below 20 it is fresh food."
            ),
            "Gekühlt haltbar: Alkohol am Ende 22\u{a0}% vol (20,5 bis 24); 25 % vol hält sich im Regal, 20 bis 25 gekühlt, unter 20 ist es ein frisches Lebensmittel."
        );
        let listed = |text| Language::German.say_list(text).into_owned();
        assert_eq!(
            listed("Made 2\u{a0}Jul, strained and bottled\u{a0}18\u{a0}Jul\u{a0}2026"),
            "Hergestellt 2.\u{a0}Juli, abgeseiht und abgefüllt 18.\u{a0}Juli\u{a0}2026"
        );
        assert_eq!(listed("In the bottle "), "In der Flasche ");
        assert_eq!(
            said("On the scale: 543 g on 14 Jun, 468 g on 16 Jun."),
            "Auf der Waage: 543\u{a0}g am 14.\u{a0}Juni, 468\u{a0}g am 16.\u{a0}Juni."
        );
        assert_eq!(
            said("Poured Leaf (tavo-472), 250 mL"),
            "Leaf (tavo-472) angesetzt, 250\u{a0}mL"
        );
        assert_eq!(
            said("Threw away 12.5 g of dried Peppermint (tavo-472)"),
            "12,5\u{a0}g Pfefferminze (tavo-472), getrocknet, weggeworfen"
        );
        assert_eq!(
            said("Tray “Leaf 1” (tavo-472) has 40 g left; 40.5 g cannot be taken from it."),
            "Horde „Leaf 1“ (tavo-472) hat noch 40\u{a0}g; 40,5\u{a0}g können nicht entnommen werden."
        );
    }
}
