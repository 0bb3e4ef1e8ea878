//! The arrows between the crates, and the libraries that only one of them may name.

use std::collections::{BTreeMap, BTreeSet};

use super::{files, top};

/// From left to right: a crate may name only the crates that stand after its colon, and `message`.
const ARROWS: [(&str, &[&str]); 13] = [
    ("message", &[]),
    ("physics", &[]),
    ("formulary", &["physics"]),
    ("journal", &["formulary", "physics"]),
    ("store", &["journal", "formulary", "physics"]),
    ("disk", &[]),
    ("words", &[]),
    ("archive", &["disk"]),
    ("photo", &["disk"]),
    ("label", &["journal", "formulary", "physics", "words"]),
    (
        "api",
        &[
            "store",
            "archive",
            "photo",
            "disk",
            "label",
            "journal",
            "formulary",
            "physics",
            "words",
        ],
    ),
    (
        "dev",
        &[
            "api",
            "store",
            "archive",
            "photo",
            "disk",
            "label",
            "journal",
            "formulary",
            "physics",
            "words",
        ],
    ),
    ("trugbook", &["api"]),
];

/// Outside libraries that would let a crate do what another one is there for.
const OWNERS: [(&str, &[&str]); 8] = [
    ("rusqlite", &["store"]),
    ("zip", &["archive"]),
    ("fluent-bundle", &["words"]),
    ("age", &["archive"]),
    ("image", &["photo"]),
    ("kamadak-exif", &["photo"]),
    ("tauri", &["trugbook"]),
    ("tiny_http", &["dev"]),
];

/// The names under `[dependencies]` of a manifest; what only tests or a build need does not count.
fn dependencies(manifest: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut counts = false;
    for line in manifest.lines().map(str::trim) {
        if let Some(section) = line.strip_prefix('[') {
            let section = section.trim_end_matches(']');
            counts = section == "dependencies"
                || (section.starts_with("target.") && section.ends_with(".dependencies"));
        } else if counts && let Some((name, _)) = line.split_once(['.', '=', ' ']) {
            names.insert(name.to_owned());
        }
    }
    names
}

fn crates() -> BTreeMap<String, BTreeSet<String>> {
    let mut crates = BTreeMap::new();
    let shell = top().join("src-tauri/Cargo.toml");
    let inner = files(&top().join("src-tauri/crates"), &["Cargo.toml"]);
    for manifest in inner.into_iter().chain([shell]) {
        let text = std::fs::read_to_string(manifest).unwrap();
        let name = text
            .lines()
            .find_map(|line| line.strip_prefix("name = \""))
            .unwrap();
        crates.insert(name.trim_end_matches('"').to_owned(), dependencies(&text));
    }
    crates
}

#[test]
fn crates_name_only_what_stands_to_their_right() {
    let crates = crates();
    let known: BTreeSet<&str> = ARROWS.iter().map(|(name, _)| *name).collect();
    for name in crates.keys() {
        assert!(
            known.contains(name.as_str()),
            "{name} has no place in the arrows"
        );
    }
    assert!(crates.len() >= 8, "crates were not found: {crates:?}");
    for (name, allowed) in ARROWS {
        let Some(named) = crates.get(name) else {
            continue;
        };
        for dependency in named.iter().filter(|name| known.contains(name.as_str())) {
            assert!(
                dependency == "message" || allowed.contains(&dependency.as_str()),
                "{name} must not name {dependency}"
            );
        }
    }
}

#[test]
fn each_outside_door_belongs_to_one_crate() {
    for (name, dependencies) in crates() {
        for (door, owners) in OWNERS {
            assert!(
                !dependencies.contains(door) || owners.contains(&name.as_str()),
                "{name} must not name {door}"
            );
        }
    }
}

#[test]
fn the_pure_crates_ask_neither_time_nor_disk_nor_chance() {
    for name in ["physics", "formulary", "journal"] {
        let source = top().join("src-tauri/crates").join(name).join("src");
        let sources = files(&source, &[".rs"]);
        assert!(!sources.is_empty(), "{name} has sources");
        for file in sources {
            let text = std::fs::read_to_string(&file).unwrap();
            for forbidden in [
                "std::fs",
                "std::time",
                "std::env",
                "::now()",
                "now_v7",
                "new_v4",
            ] {
                assert!(
                    !text.contains(forbidden),
                    "{} names {forbidden}",
                    file.display()
                );
            }
        }
    }
}
