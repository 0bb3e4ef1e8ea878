//! The tables of the formulary hold facts; what is said of them stands in the catalogue.

use std::path::Path;

use super::{files, top};

/// Columns of names and of citations, which are the same in every language.
const NAMES: [&str; 14] = [
    "aliases",
    "common",
    "common_en",
    "latin",
    "name",
    "note",
    "part",
    "parts",
    "printed",
    "source",
    "synonyms",
    "use_source",
    "herb",
    "kind",
];

/// Words of several parts by which the tables and the program mean one thing.
const WORDS: [&str; 17] = [
    "at least",
    "at most",
    "do not make",
    "dry-down ratio",
    "final moisture",
    "food table",
    "food table + paper",
    "keeps cold",
    "liquid extract",
    "loss on drying",
    "made up to",
    "moisture at finish",
    "not for",
    "partly confirmed",
    "poured on",
    "use now",
    "very good",
];

/// Whether a cell reads like a sentence: several words, one of them in small letters.
fn is_prose(cell: &str) -> bool {
    let is_small =
        |word: &str| word.chars().count() > 1 && word.chars().all(|letter| letter.is_lowercase());
    cell.contains(' ') && cell.split(' ').any(is_small) && !WORDS.contains(&cell)
}

/// Hands on every cell of the tables: where it stands, the name of its column, and what it holds.
fn each_cell(folder: &Path, mut held: impl FnMut(&str, &str, &str)) {
    for file in files(folder, &[".tsv"]) {
        let text = std::fs::read_to_string(&file).unwrap();
        let mut lines = text
            .lines()
            .map(|line| line.split('\t').collect::<Vec<_>>());
        let columns = lines.next().unwrap();
        for (row, cells) in lines.enumerate() {
            let at = format!("{}, row {}", file.display(), row + 1);
            for (column, cell) in columns.iter().zip(cells) {
                held(&at, column, cell);
            }
        }
    }
}

#[test]
fn the_tables_of_the_formulary_hold_no_sentence() {
    let folder = top().join("src-tauri/crates/formulary/data");
    let mut read = 0;
    each_cell(&folder, |at, column, cell| {
        let is_named = NAMES.contains(&column);
        assert!(is_named || !is_prose(cell), "{at}, {column}: {cell}");
        read += 1;
    });
    assert!(read > 10_000, "the tables were not found");
    let blocks = std::fs::read_to_string(folder.join("preparations.toml")).unwrap();
    for line in blocks.lines().filter(|line| !line.starts_with('#')) {
        let is_citation = |before: &str| before.trim_end().ends_with("source =");
        let mut quoted = line.split('"');
        while let (Some(before), Some(inside)) = (quoted.next(), quoted.next()) {
            assert!(is_citation(before) || !is_prose(inside), "{line}");
        }
    }
}

#[test]
fn a_sentence_in_a_cell_is_seen() {
    for cell in ["Throw it away.", "cool, dark", "fair (after cooking)"] {
        assert!(is_prose(cell), "{cell}");
    }
    for cell in ["partly confirmed", "1:5", "step-pour-it-on", "EMA 2014"] {
        assert!(!is_prose(cell), "{cell}");
    }
}

/// Notes of whoever read, and short names that nobody outside knows: a source says title, body and year, or names
/// an entry of the catalogue.
const NO_SOURCE: [&str; 25] = [
    " page",
    "Page ",
    "as quoted",
    "as restated",
    "as reported",
    "as copied",
    "et al",
    "stored",
    "handbook text",
    "health library",
    "memory",
    "is practice",
    " >= ",
    " <= ",
    " -> ",
    "http",
    "www.",
    ".com",
    ".org",
    "phytodb",
    "BPC",
    "USD ",
    "UC ANR",
    "NCHFP",
    "HPUS",
];

/// Tables whose sources say why a name stands there; no page shows them.
const WORKING: [&str; 2] = ["herb_names.tsv", "poison_genera.tsv"];

#[test]
fn a_source_says_title_body_and_year_and_no_working_note() {
    let folder = top().join("src-tauri/crates/formulary/data");
    let mut read = 0;
    let mut held = |at: &str, source: &str| {
        let note = NO_SOURCE.iter().find(|note| source.contains(*note));
        assert_eq!(note, None, "{at}: {source}");
        let is_capital =
            source.starts_with(|first: char| first.is_uppercase() || first.is_ascii_digit());
        let is_entry = source.is_empty() || source.starts_with("source-");
        assert!(is_entry || is_capital, "{at}: {source}");
        read += 1;
    };
    each_cell(&folder, |at, column, cell| {
        let is_working = WORKING.iter().any(|name| at.contains(name));
        if column.ends_with("source") && !is_working {
            held(at, cell.trim_matches('"'));
        }
    });
    let preparations = std::fs::read_to_string(folder.join("preparations.toml")).unwrap();
    for (row, line) in preparations.lines().enumerate() {
        for after in line.split("source = \"").skip(1) {
            let source = after.split('"').next().unwrap_or_default();
            held(&format!("preparations.toml, line {}", row + 1), source);
        }
    }
    assert!(read > 1_400, "the tables were not found: {read}");
}
