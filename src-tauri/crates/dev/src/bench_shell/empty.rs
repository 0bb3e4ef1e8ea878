//! The peer: a window with nothing in it, built with the same versions and in the same profile.

use std::fs;
use std::path::{Path, PathBuf};

use super::text_of;
use crate::process::{quietly, root, target, words};

const MANIFEST: &str = r#"[package]
name = "empty-window"
version = "0.0.0"
edition = "2024"
publish = false

[workspace]

[build-dependencies]
tauri-build = { version = "2", features = [] }

[dependencies]
tauri = { version = "2", features = [] }

"#;

const BUILD: &str = "fn main() {\n    tauri_build::build();\n}\n";

const MAIN: &str = r#"#[tauri::command]
fn stands() {
    println!("stands");
}

fn main() {
    tauri::Builder::default()
        .invoke_handler(tauri::generate_handler![stands])
        .run(tauri::generate_context!())
        .unwrap();
}
"#;

const CONFIG: &str = r#"{
  "productName": "Empty window",
  "identifier": "app.trugbook.empty",
  "build": { "frontendDist": "dist" },
  "app": {
    "windows": [{ "title": "Empty", "width": 412, "height": 915 }],
    "security": { "csp": "default-src 'self'; connect-src ipc: http://ipc.localhost" }
  },
  "bundle": { "icon": ["icon.png"] }
}
"#;

const PAGE: &str = "<!doctype html><html lang=\"en\"><title>Empty</title><script src=\"first.js\"></script></html>\n";
const SCRIPT: &str = "window.__TAURI_INTERNALS__.invoke('stands');\n";

/// Writes the project, builds it, and says where its program is.
///
/// # Errors
/// A sentence about the file that cannot be written, or what Cargo printed.
pub fn build() -> Result<PathBuf, String> {
    let folder = target().join("bench/empty-window");
    let manifest = format!("{MANIFEST}{}", release_profile(&text_of("Cargo.toml")?));
    for (name, text) in [
        ("Cargo.toml", manifest.as_str()),
        ("build.rs", BUILD),
        ("src/main.rs", MAIN),
        ("tauri.conf.json", CONFIG),
        ("dist/index.html", PAGE),
        ("dist/first.js", SCRIPT),
    ] {
        write(&folder.join(name), text.as_bytes())?;
    }
    copy("Cargo.lock", &folder.join("Cargo.lock"))?;
    copy("icons/32x32.png", &folder.join("icon.png"))?;
    quietly(
        words("cargo build --release --manifest-path")
            .arg(folder.join("Cargo.toml"))
            .arg("--target-dir")
            .arg(target()),
    )?;
    Ok(target().join("release/empty-window"))
}

/// The lines of the release profile, without what names a package that the empty window lacks.
fn release_profile(manifest: &str) -> String {
    let lines = manifest
        .lines()
        .skip_while(|line| *line != "[profile.release]");
    let mut profile: Vec<&str> = Vec::new();
    for line in lines {
        if line.starts_with('[') && !profile.is_empty() {
            break;
        }
        profile.push(line);
    }
    profile.join("\n")
}

fn copy(name: &str, to: &Path) -> Result<(), String> {
    let bytes =
        fs::read(root().join(name)).map_err(|error| format!("{name} cannot be read: {error}."))?;
    write(to, &bytes)
}

/// A file that already says so keeps its time, so that nothing is built twice.
fn write(path: &Path, bytes: &[u8]) -> Result<(), String> {
    if fs::read(path).is_ok_and(|there| there == bytes) {
        return Ok(());
    }
    path.parent()
        .map_or(Ok(()), fs::create_dir_all)
        .and_then(|()| fs::write(path, bytes))
        .map_err(|error| format!("{} cannot be written: {error}.", path.display()))
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_release_profile_is_taken_as_it_stands() {
        let manifest = "[profile.dev]\ndebug = 1\n\n[profile.release]\nlto = true\nstrip = true\n\n[profile.release.package.x]\nopt-level = 3\n";
        assert_eq!(
            super::release_profile(manifest),
            "[profile.release]\nlto = true\nstrip = true\n"
        );
    }
}
