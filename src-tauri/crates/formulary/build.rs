//! Packs the tables into one file: a tenth of their room in the app. The one in TOML is packed as JSON, so that the app
//! carries no reader of TOML beside that of JSON.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::{env, fs};

/// What the best packing is called; it is done once, while the app is built.
const BEST: u8 = 10;

fn main() {
    println!("cargo:rerun-if-changed=data");
    let mut tables = BTreeMap::new();
    for entry in fs::read_dir("data").expect("the tables") {
        let path = entry.expect("a table").path();
        let text =
            || fs::read_to_string(&path).unwrap_or_else(|why| panic!("{}: {why}", path.display()));
        match path.extension().and_then(|ending| ending.to_str()) {
            Some("toml") => tables.insert(named(&path, "json"), json_of(&path, &text())),
            Some("tsv") => tables.insert(named(&path, "tsv"), text()),
            _ => None,
        };
    }
    let json = serde_json::to_string(&tables).expect("texts by their names");
    let packed = miniz_oxide::deflate::compress_to_vec(json.as_bytes(), BEST);
    let made = PathBuf::from(env::var("OUT_DIR").expect("cargo names it"));
    fs::write(made.join("tables.deflate"), packed).expect("room for the tables");
}

fn named(path: &Path, ending: &str) -> String {
    let name = path.with_extension(ending);
    let name = name.file_name().and_then(|name| name.to_str());
    name.expect("a name").to_owned()
}

fn json_of(path: &Path, text: &str) -> String {
    let table: toml::Value =
        toml::from_str(text).unwrap_or_else(|why| panic!("{}: {why}", path.display()));
    serde_json::to_string(&table).expect("what TOML says JSON says")
}
