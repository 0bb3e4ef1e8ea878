//! Packs the drawings of plants: a third of their room in the app.

use std::path::PathBuf;
use std::{env, fs};

/// What the best packing is called; it is done once, while the app is built.
const BEST: u8 = 10;

fn main() {
    let drawings = "../../../ui/drawings/plants.svg";
    println!("cargo:rerun-if-changed={drawings}");
    let text = fs::read(drawings).unwrap_or_else(|why| panic!("{drawings}: {why}"));
    let packed = miniz_oxide::deflate::compress_to_vec(&text, BEST);
    let made = PathBuf::from(env::var("OUT_DIR").expect("cargo names it"));
    fs::write(made.join("plants.deflate"), packed).expect("room for the drawings");
}
