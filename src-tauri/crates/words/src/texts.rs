//! The catalogue of messages: Fluent files, one folder a language, one file a subject.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast;
use message::Said;
use unic_langid::LanguageIdentifier;

use crate::Language;

/// The files of a folder; each stands in every language.
macro_rules! files {
    ($folder:literal) => {
        files!($folder: "units", "poison", "cautions", "clauses", "look_alikes", "stages", "keeping", "drying", "journal", "safe")
    };
    ($folder:literal: $($file:literal),*) => {
        [$(include_str!(concat!("../texts/", $folder, "/", $file, ".ftl"))),*]
    };
}

/// The messages of one language.
pub(crate) struct Texts {
    bundle: FluentBundle<FluentResource>,
    places: BTreeMap<String, BTreeSet<String>>,
    /// Ids of entries that begin with a name, which begins large where a sentence begins with it.
    open: BTreeSet<String>,
}

static ENGLISH: LazyLock<Texts> = LazyLock::new(|| Texts::read("en", &files!("en")));
static GERMAN: LazyLock<Texts> = LazyLock::new(|| Texts::read("de", &files!("de")));

impl Texts {
    pub(crate) fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &ENGLISH,
            Language::German => &GERMAN,
        }
    }

    /// # Panics
    /// Where a file is no Fluent or an id stands twice; the files are part of the program and held by a test.
    fn read(tag: &str, files: &[&'static str]) -> Self {
        let language: LanguageIdentifier = tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // The marks would stand in labels, files and tests, and our languages run the same way.
        bundle.set_use_isolating(false);
        let (mut places, mut open) = (BTreeMap::new(), BTreeSet::new());
        for file in files {
            let resource = FluentResource::try_new((*file).to_owned())
                .unwrap_or_else(|(_, faults)| panic!("no Fluent: {faults:?} in {file}"));
            for entry in resource.entries() {
                let ast::Entry::Message(entry) = entry else {
                    continue;
                };
                let id = entry.id.name.to_owned();
                let mut names = BTreeSet::new();
                if let Some(pattern) = &entry.value {
                    variables(pattern, &mut names);
                    if matches!(
                        pattern.elements.first(),
                        Some(ast::PatternElement::Placeable { .. })
                    ) {
                        open.insert(id.clone());
                    }
                }
                places.insert(id, names);
            }
            if let Err(faults) = bundle.add_resource(resource) {
                panic!("{faults:?}");
            }
        }
        Self {
            bundle,
            places,
            open,
        }
    }

    /// Every id with the names of its arguments.
    pub(crate) fn places(&self) -> &BTreeMap<String, BTreeSet<String>> {
        &self.places
    }

    /// Whether the entry begins with one of its arguments.
    pub(crate) fn opens_with_a_place(&self, id: &str) -> bool {
        self.open.contains(id)
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

    /// What of a message this language lacks: its id, or an argument by `id.name`.
    pub(crate) fn gaps(&self, said: &Said) -> Vec<String> {
        let Some(places) = self.places.get(said.id.as_ref()) else {
            return vec![said.id.to_string()];
        };
        places
            .iter()
            .filter(|place| !said.arguments.iter().any(|(name, _)| name == *place))
            .map(|place| format!("{}.{place}", said.id))
            .collect()
    }
}

/// The names of the arguments of a pattern, those of its variants too.
fn variables(pattern: &ast::Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let ast::PatternElement::Placeable { expression } = element {
            of_expression(expression, names);
        }
    }
}

fn of_expression(expression: &ast::Expression<&str>, names: &mut BTreeSet<String>) {
    match expression {
        ast::Expression::Inline(inline) => of_inline(inline, names),
        ast::Expression::Select { selector, variants } => {
            of_inline(selector, names);
            for variant in variants {
                variables(&variant.value, names);
            }
        }
    }
}

fn of_inline(inline: &ast::InlineExpression<&str>, names: &mut BTreeSet<String>) {
    match inline {
        ast::InlineExpression::VariableReference { id } => {
            names.insert(id.name.to_owned());
        }
        ast::InlineExpression::Placeable { expression } => of_expression(expression, names),
        _ => {}
    }
}
