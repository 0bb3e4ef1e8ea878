//! Packs the texts of each language into one file; unpacked they would be a thirtieth of the program.

use std::path::{Path, PathBuf};
use std::{env, fs};

/// What the best packing is called; it is done once, while the app is built.
const BEST: u8 = 10;

fn main() {
    println!("cargo:rerun-if-changed=texts");
    let made = PathBuf::from(env::var("OUT_DIR").expect("cargo names it"));
    for folder in listed(Path::new("texts")) {
        let mut text = String::new();
        for file in listed(&folder) {
            text += &fs::read_to_string(&file)
                .unwrap_or_else(|why| panic!("{}: {why}", file.display()));
            text.push('\n');
        }
        let language = folder
            .file_name()
            .and_then(|name| name.to_str())
            .expect("a name");
        let packed = miniz_oxide::deflate::compress_to_vec(text.as_bytes(), BEST);
        fs::write(made.join(format!("{language}.ftl.deflate")), packed)
            .expect("room for the texts");
    }
}

/// What lies in a folder, by name.
fn listed(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).unwrap_or_else(|why| panic!("{}: {why}", folder.display()));
    let mut paths: Vec<PathBuf> = entries
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    paths
}
