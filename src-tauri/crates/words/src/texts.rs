//! The catalogue of messages: Fluent files, one folder a language, one file a subject.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast;
use unic_langid::LanguageIdentifier;

use crate::Language;
use crate::places::places_of;
use crate::strange::strange;

/// The files of a language, one after the other, as `build.rs` packed them: a language that nobody reads stays small.
macro_rules! packed {
    ($language:literal) => {
        include_bytes!(concat!(env!("OUT_DIR"), "/", $language, ".ftl.deflate"))
    };
}

/// The messages of one language.
pub(crate) struct Texts {
    bundle: FluentBundle<FluentResource>,
    places: BTreeMap<String, BTreeSet<String>>,
}

static ENGLISH: LazyLock<Texts> = LazyLock::new(|| Texts::read("en", packed!("en"), None));
static GERMAN: LazyLock<Texts> = LazyLock::new(|| Texts::read("de", packed!("de"), None));
static STRANGE: LazyLock<Texts> = LazyLock::new(|| Texts::read("en", packed!("en"), Some(strange)));

impl Texts {
    pub(crate) fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &ENGLISH,
            Language::German => &GERMAN,
            Language::Strange => &STRANGE,
        }
    }

    /// # Panics
    /// Where a file is no Fluent or an id stands twice; the files are part of the program and held by a test.
    fn read(tag: &str, packed: &[u8], turned: Option<fn(&str) -> Cow<'_, str>>) -> Self {
        let language: LanguageIdentifier = tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // The marks would stand in labels, files and tests, and our languages run the same way.
        bundle.set_use_isolating(false);
        bundle.set_transform(turned);
        if let Err(faults) = bundle.add_function("CAPITAL", capital) {
            panic!("{faults:?}");
        }
        let text = miniz_oxide::inflate::decompress_to_vec(packed).map(String::from_utf8);
        let Ok(Ok(text)) = text else {
            panic!("the texts of {tag} cannot be unpacked");
        };
        let resource = FluentResource::try_new(text)
            .unwrap_or_else(|(_, faults)| panic!("no Fluent in {tag}: {faults:?}"));
        let mut places = BTreeMap::new();
        for entry in resource.entries() {
            let ast::Entry::Message(entry) = entry else {
                continue;
            };
            let id = entry.id.name.to_owned();
            let names = entry.value.as_ref().map(places_of).unwrap_or_default();
            places.insert(id, names);
        }
        if let Err(faults) = bundle.add_resource(resource) {
            panic!("{faults:?}");
        }
        Self { bundle, places }
    }

    /// Every id with the names of its arguments.
    pub(crate) fn places(&self) -> &BTreeMap<String, BTreeSet<String>> {
        &self.places
    }

    /// The entry `id` filled with values; nothing where there is none or where a value is missing.
    pub(crate) fn filled(&self, id: &str, values: &[(&str, FluentValue<'_>)]) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        let mut arguments = FluentArgs::with_capacity(values.len());
        for (name, value) in values {
            arguments.set(*name, value.clone());
        }
        let mut faults = Vec::new();
        let text = self
            .bundle
            .format_pattern(pattern, Some(&arguments), &mut faults)
            .into_owned();
        faults.is_empty().then_some(text)
    }
}

/// `CAPITAL($name)`: as it begins a sentence or stands alone. What the maker wrote begins as the maker wrote it.
fn capital<'a>(given: &[FluentValue<'a>], _: &FluentArgs<'_>) -> FluentValue<'a> {
    match given {
        [FluentValue::String(text)] => {
            let mut letters = text.chars();
            let first = letters.next().into_iter().flat_map(char::to_uppercase);
            FluentValue::from(first.chain(letters).collect::<String>())
        }
        [other] => other.clone(),
        _ => FluentValue::Error,
    }
}
