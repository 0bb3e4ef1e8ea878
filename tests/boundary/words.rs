//! Every sentence that stands in the core's source or its tables can be said in every other language.

use std::path::Path;

use api::Language;

use super::{files, top};

/// Crates whose sentences reach a page.
const CRATES: [&str; 9] = [
    "api",
    "archive",
    "formulary",
    "journal",
    "label",
    "photo",
    "physics",
    "store",
    "disk",
];
/// Files whose texts are for programs, or for whoever unpacks a file by hand.
const NOT_SAID: [&str; 5] = [
    "bindings.rs",
    "laws.rs",
    "readme.rs",
    "src-tauri/src/lib.rs",
    "tests.rs",
];
/// What a person never reads: a programming error, a lint's reason, a query.
const NOT_FOR_PEOPLE: [&str; 8] = [
    "assert",
    "expect(",
    "panic!",
    "reason =",
    "unreachable!",
    "SELECT",
    "FROM",
    "#[doc",
];

/// Sentences whose words stand in their holes, so that only what they become can have an entry.
const SHAPES: [&str; 3] = [
    "At {:.0} % humidity and {:.0} °C this room stops near {:.0} % moisture ({:.0} to {:.0} %){end}.",
    "It ends at {at}, {stands} the {range} {checked} for {}.",
    "{range} {known} for {}.",
];

/// The source without its comments and its own tests.
fn code(source: &str) -> String {
    let source = source
        .split("#[cfg(test)]\nmod tests {")
        .next()
        .unwrap_or_default();
    source
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .fold(String::new(), |code, line| code + line + "\n")
}

/// The quoted texts of a source, each with what stands before it on its line.
fn quoted(code: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut rest = code;
    while let Some(open) = rest.find('"') {
        let line = rest[..open].rsplit('\n').next().unwrap_or_default();
        let before = line.to_owned();
        // A quotation mark as a character is no beginning of a text.
        if rest[..open].ends_with('\'') && rest[open + 1..].starts_with('\'') {
            rest = &rest[open + 2..];
            continue;
        }
        let body = &rest[open + 1..];
        let mut text = String::new();
        let mut letters = body.char_indices();
        let mut end = body.len();
        while let Some((at, letter)) = letters.next() {
            match letter {
                '"' => {
                    end = at + 1;
                    break;
                }
                '\\' => match letters.next() {
                    Some((_, '\n')) => {
                        let after = letters.as_str();
                        let skipped = after.len() - after.trim_start().len();
                        for _ in 0..after[..skipped].chars().count() {
                            letters.next();
                        }
                    }
                    Some((_, 'n')) => text.push('\n'),
                    Some((_, 'u')) => {
                        for (_, letter) in letters.by_ref() {
                            if letter == '}' {
                                break;
                            }
                        }
                        text.push(' ');
                    }
                    Some((_, other)) => text.push(other),
                    None => {}
                },
                other => text.push(other),
            }
        }
        found.push((before, text));
        rest = &body[end..];
    }
    found
}

/// The text with a figure in every hole.
fn filled(text: &str) -> String {
    let mut said = String::new();
    let mut rest = text;
    while let Some(open) = rest.find('{') {
        let Some(close) = rest[open..].find('}') else {
            break;
        };
        said.push_str(&rest[..open]);
        said.push('7');
        rest = &rest[open + close + 1..];
    }
    said + rest
}

/// Whether it is a sentence that could be read: it begins large, ends with a stop and has several words.
fn is_sentence(text: &str) -> bool {
    text.starts_with(|it: char| it.is_uppercase() || it == '“' || it == '{')
        && text.ends_with(['.', '?'])
        && text.contains(' ')
        && text.chars().any(char::is_lowercase)
        && !text.contains('\n')
        && !text.contains("SELECT")
        && !SHAPES.contains(&text)
}

fn gaps(text: &str) -> Vec<String> {
    Language::ALL
        .iter()
        .filter(|language| **language != Language::English)
        .flat_map(|language| language.gaps(text))
        .collect()
}

#[test]
fn sentences_of_the_source_have_an_entry() {
    let mut seen = 0;
    let mut missing = Vec::new();
    let crates = CRATES.map(|name| top().join("src-tauri/crates").join(name).join("src"));
    let shell = top().join("src-tauri/src");
    for folder in crates.iter().chain([&shell]) {
        for file in files(folder, &[".rs"]) {
            if NOT_SAID.iter().any(|it| file.ends_with(it)) {
                continue;
            }
            let source = std::fs::read_to_string(&file).unwrap();
            for (before, text) in quoted(&code(&source)) {
                if !is_sentence(&text) || NOT_FOR_PEOPLE.iter().any(|it| before.contains(it)) {
                    continue;
                }
                seen += 1;
                // A hole may hold anything here, so only what stands around it counts.
                let left: Vec<String> = gaps(&filled(&text))
                    .into_iter()
                    .filter(|gap| !gap.starts_with('~'))
                    .collect();
                if !left.is_empty() {
                    missing.push(format!("{}: {text}", file.file_name().unwrap().display()));
                }
            }
        }
    }
    assert!(seen > 200, "only {seen} sentences were found");
    assert!(
        missing.is_empty(),
        "{} without an entry:\n{}",
        missing.len(),
        missing.join("\n")
    );
}

#[test]
fn a_sentence_without_an_entry_is_found() {
    let code = "let it = format!(\"Nothing like this {} was ever said.\", 1); \"\\u{a0}x\"";
    let texts = quoted(code);
    assert_eq!(texts[0].1, "Nothing like this {} was ever said.");
    assert!(is_sentence(&texts[0].1) && !gaps(&filled(&texts[0].1)).is_empty());
    assert!(gaps("Nothing was changed.").is_empty());
}

/// The cells of the named columns of a table of the formulary.
fn cells(table: &str, columns: &[&str]) -> Vec<String> {
    let path = Path::new("src-tauri/crates/formulary/data").join(table);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(b'\t')
        .quoting(false)
        .from_path(top().join(path))
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
fn every_id_of_a_table_stands_in_every_language() {
    let mut ids = cells("clauses.tsv", &["says"]);
    ids.extend(cells("cautions.tsv", &["says"]));
    ids.extend(cells(
        "look_alikes.tsv",
        &["look_alike", "why", "tell_apart"],
    ));
    ids.extend(cells("harvest_months.tsv", &["stage"]));
    assert!(ids.len() > 600, "only {} ids were found", ids.len());
    for language in Language::ALL {
        let known = language.messages();
        for id in &ids {
            let places = known.get(id);
            assert!(
                places.is_some_and(|it| it.is_empty()),
                "{language:?} lacks {id}"
            );
        }
    }
}

#[test]
fn texts_of_the_tables_have_an_entry() {
    let herbs = [
        "common",
        "constituents",
        "glycerite",
        "oil",
        "vinegar",
        "wine",
        "use_text",
    ];
    let mut texts = cells("herbs.tsv", &herbs);
    for parts in cells("herbs.tsv", &["parts"]) {
        texts.extend(parts.split(';').map(str::to_owned));
    }
    texts.extend(cells("texts.tsv", &["text"]));
    texts.extend(cells("gates.tsv", &["gate", "text"]));
    texts.extend(cells("constituents.tsv", &["name", "note"]));
    let path = top().join("src-tauri/crates/formulary/data/preparations.toml");
    let toml = std::fs::read_to_string(path).unwrap();
    let fields = [
        "name",
        "summary",
        "recipe",
        "fill",
        "vessel",
        "agitation",
        "straining",
        "retention_note",
        "storage",
        "gate_text",
        "spoilage",
        "ended_by",
        "caution",
        "notes",
    ];
    for line in toml.lines() {
        if let Some((field, rest)) = line.split_once(" = ")
            && fields.contains(&field)
        {
            texts.extend(quoted(rest).into_iter().map(|(_, text)| text));
        }
    }
    assert!(texts.len() > 1000, "only {} texts were found", texts.len());
    // A cell that begins with @ names an entry of the newer catalogue.
    let said = |text: &str| match text.strip_prefix('@') {
        Some(id) => {
            let message = String::from(message::Message::of_table(id.to_owned()));
            let spoken = |language: Language| language.say(&message).into_owned();
            spoken(Language::English) != spoken(Language::German)
        }
        None => gaps(text).is_empty(),
    };
    let missing: Vec<&String> = texts
        .iter()
        .filter(|text| !text.is_empty() && !said(text))
        .collect();
    assert!(missing.is_empty(), "without an entry: {missing:#?}");
}
