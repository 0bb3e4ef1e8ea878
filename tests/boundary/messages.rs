//! Every message that the core's source or a table names stands in every language, with the same arguments.

use std::collections::BTreeSet;

use api::Language;

use super::{files, top};

/// Columns of tables that name entries without a place.
const COLUMNS: [(&str, &[&str]); 4] = [
    ("clauses.tsv", &["says"]),
    ("cautions.tsv", &["says"]),
    ("look_alikes.tsv", &["look_alike", "why", "tell_apart"]),
    ("harvest_months.tsv", &["stage"]),
];

/// The ids in `say!("id", ...)`, which the compiler holds to the English catalogue.
fn said(source: &str) -> impl Iterator<Item = String> {
    source.split("say!(").skip(1).filter_map(|rest| {
        let rest = rest.trim_start().strip_prefix('"')?;
        rest.split_once('"').map(|(id, _)| id.to_owned())
    })
}

/// The ids that the core's source says, and the files that make a message without the macro; its own tests do not count.
fn everything() -> (BTreeSet<String>, Vec<String>) {
    let (mut ids, mut by_hand) = (BTreeSet::new(), Vec::new());
    for folder in ["src-tauri/crates", "src-tauri/src"] {
        for file in files(&top().join(folder), &[".rs"]) {
            let name = file.strip_prefix(top()).unwrap().display().to_string();
            let source = std::fs::read_to_string(&file).unwrap();
            if name.ends_with("tests.rs") {
                continue;
            }
            let code = source.split("#[cfg(test)]\nmod tests {").next().unwrap();
            let code: String = code
                .lines()
                .filter(|line| !line.trim_start().starts_with("//"))
                .map(|line| format!("{line}\n"))
                .collect();
            ids.extend(said(&code));
            let is_maker = ["/crates/message/", "/crates/say/"]
                .iter()
                .any(|it| name.contains(it));
            if code.contains("Message::new(") && !is_maker {
                by_hand.push(name);
            }
        }
    }
    (ids, by_hand)
}

/// Beginnings of ids that a key of a table is put behind.
const OF_TABLES: [&str; 2] = ["plant-", "poison-"];
/// The start of ids that a preparation makes of its family.
const OF_FAMILIES: &str = "family-";

#[test]
fn every_message_is_made_by_the_macro_that_holds_it_to_the_catalogue() {
    let (ids, by_hand) = everything();
    assert!(ids.len() > 700, "only {} ids were found", ids.len());
    assert!(by_hand.is_empty(), "{by_hand:?}");
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

/// The cells of the named columns of a table of the formulary.
fn cells(table: &str, columns: &[&str]) -> Vec<String> {
    let path = top().join("src-tauri/crates/formulary/data").join(table);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(b'\t')
        .quoting(false)
        .from_path(path)
        .unwrap();
    let head = reader.headers().unwrap().clone();
    let at: Vec<usize> = columns
        .iter()
        .map(|column| head.iter().position(|it| it == *column).unwrap())
        .collect();
    let rows: Vec<_> = reader.records().map(Result::unwrap).collect();
    rows.iter()
        .flat_map(|row| at.iter().map(|at| row[*at].to_owned()))
        .filter(|cell| !cell.is_empty())
        .collect()
}

#[test]
fn every_id_in_a_cell_of_a_table_stands_in_every_language() {
    let ids: Vec<String> = COLUMNS
        .iter()
        .flat_map(|(table, columns)| cells(table, columns))
        .collect();
    assert!(ids.len() > 600, "only {} ids were found", ids.len());
    for language in Language::ALL {
        let known = language.messages();
        for id in &ids {
            let places = known.get(id);
            assert!(
                places.is_some_and(BTreeSet::is_empty),
                "{language:?} lacks {id}"
            );
        }
    }
}

#[test]
fn every_entry_that_a_table_implies_stands_in_every_language() {
    let entries = formulary::said::entries();
    assert!(entries.len() > 200, "the tables were not read");
    for language in Language::ALL {
        let messages = language.messages();
        let has = |id: &&String| {
            let places = messages.get(*id);
            let is_known = |place: &String| formulary::said::may_have(id, place);
            places.is_some_and(|places| places.iter().all(is_known))
        };
        let lacking: Vec<&String> = entries.iter().filter(|id| !has(id)).collect();
        assert!(lacking.is_empty(), "{language:?} lacks {lacking:#?}");
    }
}

#[test]
fn a_herb_is_called_in_english_as_its_table_calls_it() {
    for herb in formulary::herbs::all() {
        let title = message::say!("title", name = herb.name());
        assert_eq!(Language::English.tell(&title), herb.common);
    }
}

#[test]
fn no_message_stands_in_the_catalogue_for_nothing() {
    let (mut made, _) = everything();
    made.extend(formulary::said::entries());
    // Units are named where they are written; a table names its texts in its cells.
    let mut elsewhere = String::new();
    let crates = top().join("src-tauri/crates");
    let tables = files(&crates.join("formulary/data"), &[".tsv", ".csv", ".toml"]);
    // Fractions hand their ids to a macro, and sources of our own words are named where they are used.
    let own = [
        "formulary/src/compose/plants.rs",
        "formulary/src/plan.rs",
        "formulary/src/retention.rs",
        "words/src/said.rs",
        "message/src/lib.rs",
        "physics/src/fraction.rs",
    ];
    let own = own.map(|file| crates.join(file));
    for file in tables.into_iter().chain(own) {
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
            let mut kinds = OF_TABLES.into_iter().chain([OF_FAMILIES]);
            let key = kinds.find_map(|kind| id.strip_prefix(kind));
            key.is_none_or(|key| !named.contains(key))
        })
        .collect();
    assert!(idle.is_empty(), "nothing says {idle:#?}");
}
