//! The arrows between the crates, and the libraries that only one of them may name.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use serde_json::Value;

use super::{files, top};

/// From left to right: a crate may name only the crates that stand after its colon, and `message`.
const ARROWS: [(&str, &str); 16] = [
    ("say", ""),
    ("message", "say"),
    ("physics", ""),
    ("formulary", "physics"),
    ("journal", "formulary physics"),
    ("store", "journal formulary physics"),
    ("disk", ""),
    ("words", ""),
    ("archive", "disk"),
    ("photo", "disk"),
    ("paper", "journal formulary physics words"),
    ("reckon", "store journal formulary physics"),
    (
        "safe",
        "reckon store archive photo disk journal formulary physics",
    ),
    (
        "api",
        "safe reckon store photo disk paper journal formulary physics words",
    ),
    (
        "dev",
        "api store archive photo disk paper journal formulary physics words",
    ),
    ("trugbook", "api"),
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

/// What each crate of ours names, as cargo reads its manifest; what only tests or a build need does not count.
fn crates() -> BTreeMap<String, BTreeSet<String>> {
    let told = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--no-deps",
            "--format-version",
            "1",
            "--offline",
        ])
        .current_dir(top())
        .output()
        .unwrap();
    let told: Value = serde_json::from_slice(&told.stdout).unwrap();
    let text = |of: &Value| of.as_str().map(str::to_owned);
    let packages = told["packages"].as_array().unwrap().iter();
    packages
        .map(|package| {
            let named = package["dependencies"].as_array().unwrap().iter();
            let named = named.filter(|it| it["kind"].is_null());
            let named = named.filter_map(|it| text(&it["name"])).collect();
            (text(&package["name"]).unwrap(), named)
        })
        // The tests name whatever they try.
        .filter(|(name, _)| name != "checks")
        .collect()
}

#[test]
fn crates_name_only_what_stands_to_their_right() {
    let crates = crates();
    let arrows = BTreeMap::from(ARROWS);
    assert!(crates.len() >= 8, "crates were not found: {crates:?}");
    for (name, named) in &crates {
        let Some(allowed) = arrows.get(name.as_str()) else {
            panic!("{name} has no place in the arrows");
        };
        for dependency in named.iter().filter(|it| crates.contains_key(*it)) {
            assert!(
                dependency == "message" || allowed.split(' ').any(|it| it == dependency),
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
    for name in ["physics", "formulary", "journal", "reckon"] {
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
