//! Every message that the core's source names stands in every language, with the same arguments.

use std::collections::{BTreeMap, BTreeSet};

use api::Language;

use super::{files, top};

/// A message as the source makes it: its file, its id and the names of its arguments.
type Made = (String, String, BTreeSet<String>);

/// Every `Message::new("id")` of a source, with the chain of `.with("name", ...)` behind it.
fn made(file: &str, source: &str) -> Vec<Made> {
    let opening = "Message::new(\"";
    source
        .match_indices(opening)
        .map(|(at, _)| {
            let rest = &source[at + opening.len()..];
            let (id, rest) = rest.split_once('"').unwrap();
            let mut rest = rest.trim_start_matches([')', ',', ' ', '\n']);
            let mut names = BTreeSet::new();
            while let Some(inside) = rest.strip_prefix(".with(") {
                let name = inside.trim_start().strip_prefix('"');
                let (name, _) = name.and_then(|it| it.split_once('"')).unwrap_or_else(|| {
                    panic!("{file}: an argument of {id} is not named by a literal")
                });
                names.insert(name.to_owned());
                rest = inside[closing(inside)..].trim_start();
            }
            (file.to_owned(), id.to_owned(), names)
        })
        .collect()
}

/// Where the bracket that is open before `text` has closed; brackets in texts do not count.
fn closing(text: &str) -> usize {
    let (mut depth, mut is_text, mut is_escaped) = (1_usize, false, false);
    for (at, letter) in text.char_indices() {
        match letter {
            _ if is_escaped => is_escaped = false,
            '\\' if is_text => is_escaped = true,
            '"' => is_text = !is_text,
            _ if is_text => {}
            '(' => depth += 1,
            ')' if depth == 1 => return at + 1,
            ')' => depth -= 1,
            _ => {}
        }
    }
    text.len()
}

/// What the core's source makes; its own tests do not count.
fn everything() -> Vec<Made> {
    let mut found = Vec::new();
    for folder in ["src-tauri/crates", "src-tauri/src"] {
        for file in files(&top().join(folder), &[".rs"]) {
            let name = file.strip_prefix(top()).unwrap().display().to_string();
            let source = std::fs::read_to_string(&file).unwrap();
            let is_only_test = name.ends_with("tests.rs") || name.contains("/crates/message/");
            let code = source.split("#[cfg(test)]\nmod tests {").next().unwrap();
            let code: String = code
                .lines()
                .filter(|line| !line.trim_start().starts_with("//"))
                .map(|line| format!("{line}\n"))
                .collect();
            if !is_only_test {
                found.extend(made(&name, &code));
            }
        }
    }
    found
}

/// Beginnings of ids that a key of a table is put behind.
const OF_TABLES: [&str; 2] = ["plant-", "poison-"];

/// What a language lacks of what is made.
fn lacking(made: &[Made], messages: &BTreeMap<String, BTreeSet<String>>) -> Vec<String> {
    made.iter()
        .filter_map(|(file, id, names)| match messages.get(id) {
            None => Some(format!("{id} ({file})")),
            Some(places) if places != names => Some(format!(
                "{id} ({file}) is given {names:?} and has places for {places:?}"
            )),
            Some(_) => None,
        })
        .collect()
}

#[test]
fn every_message_stands_in_every_language() {
    let made = everything();
    for language in Language::ALL {
        let lacking = lacking(&made, language.messages());
        assert!(lacking.is_empty(), "{language:?} lacks {lacking:#?}");
    }
}

#[test]
fn languages_have_the_same_messages_with_the_same_places() {
    let english = Language::English.messages();
    assert!(english.len() > 15, "the catalogue was not found");
    for language in Language::ALL {
        let other = language.messages();
        for (id, places) in english {
            let Some(theirs) = other.get(id) else {
                panic!("{language:?} lacks {id}");
            };
            assert_eq!(theirs, places, "{id} in {language:?}");
        }
        let more: Vec<_> = other
            .keys()
            .filter(|id| !english.contains_key(*id))
            .collect();
        assert!(more.is_empty(), "only {language:?} has {more:?}");
    }
}

#[test]
fn every_poisonous_plant_has_its_name_and_its_reason_in_every_language() {
    for row in formulary::poison::all() {
        for kind in OF_TABLES {
            let id = format!("{kind}{}", row.key);
            for language in Language::ALL {
                let places = language.messages().get(&id);
                assert!(
                    places.is_some_and(BTreeSet::is_empty),
                    "{language:?} lacks {id}"
                );
            }
        }
    }
}

#[test]
fn no_message_stands_in_the_catalogue_for_nothing() {
    let made: BTreeSet<String> = everything().into_iter().map(|(_, id, _)| id).collect();
    // Units are named where they are written; a table names its texts in its cells.
    let mut elsewhere = String::new();
    let crates = top().join("src-tauri/crates");
    let tables = files(&crates.join("formulary/data"), &[".tsv", ".csv", ".toml"]);
    for file in tables.into_iter().chain([crates.join("words/src/said.rs")]) {
        elsewhere.push_str(&std::fs::read_to_string(file).unwrap());
    }
    let named: BTreeSet<&str> = elsewhere
        .split(|it: char| !(it.is_alphanumeric() || it == '-'))
        .collect();
    let idle: Vec<&String> = Language::English
        .messages()
        .keys()
        .filter(|id| !made.contains(*id) && !named.contains(id.as_str()))
        // The key of a row stands behind the kind of text.
        .filter(|id| {
            let key = OF_TABLES.iter().find_map(|kind| id.strip_prefix(kind));
            key.is_none_or(|key| !named.contains(key))
        })
        .collect();
    assert!(idle.is_empty(), "nothing says {idle:#?}");
}

#[test]
fn a_missing_entry_and_a_missing_place_are_named() {
    let source = "let it = Message::new(\"dry-first\")\n    .with(\"herb\", Argument::own(\"(\"))\n    \
                  .with(\"left\", it(1));\nMessage::new(\"rest\")";
    let made = made("here.rs", source);
    assert_eq!(made.len(), 2);
    assert_eq!(made[0].2, ["herb", "left"].map(str::to_owned).into());
    let places = BTreeMap::from([("dry-first".to_owned(), ["herb".to_owned()].into())]);
    let lacking = lacking(&made, &places);
    assert_eq!(lacking.len(), 2);
    assert!(lacking[0].starts_with("dry-first (here.rs) is given"));
    assert_eq!(lacking[1], "rest (here.rs)");
}
