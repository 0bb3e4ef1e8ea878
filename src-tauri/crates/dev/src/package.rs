//! `cargo dev package`: the .deb and the tarball for a desktop, with the licences of all that is inside.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use serde_json::json;

use crate::flags::Flags;
use crate::process::{openly, program, quietly, root, target, words};
use crate::{failed, install, package_tried};

/// How the command is called.
const USAGE: &str = "cargo dev package [--try]";

/// The tool that collects the licence texts of the crates.
const LICENCES: &str = "cargo-bundle-licenses";

/// Where its texts lie once the package is installed.
const DOCUMENTS: &str = "/usr/share/doc/trugbook";

/// Builds both packages into `target/package`; with `--try` it also installs the .deb in a clean Debian.
pub fn main(arguments: &[String]) -> ExitCode {
    let flags = match Flags::read(arguments, &[], &["--try"]) {
        Ok(flags) => flags,
        Err(why) => return failed(format!("{why}\n{USAGE}")),
    };
    let made = build().and_then(|deb| match flags.has("--try") {
        true => package_tried::run(&deb),
        false => Ok(()),
    });
    match made {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => failed(why),
    }
}

/// The folder that holds what is made here.
fn folder() -> PathBuf {
    target().join("package")
}

/// Builds the .deb and the tarball; where the .deb lies.
///
/// # Errors
/// What the failing program printed, or the file that could not be written.
fn build() -> Result<PathBuf, String> {
    install::system(install::WINDOW)?;
    install::npm("ui")?;
    let made = folder();
    // What an earlier version left here must not be taken for this one.
    match fs::remove_dir_all(&made) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
            return Err(unwritten(&made, &error));
        }
        _ => fs::create_dir_all(&made).map_err(|error| unwritten(&made, &error))?,
    }
    println!("Building the page, with the licences of what is in it.");
    let of_page = made.join("licences-page.txt");
    quietly(
        words("npm run build --silent")
            .current_dir(root().join("ui"))
            .env("TRUGBOOK_LICENCES", &of_page),
    )?;
    let documents = licences(&made, &of_page)?;

    println!("Building the app and its .deb; this takes minutes.");
    let files: serde_json::Map<_, _> = documents
        .iter()
        .map(|file| (inside(file), json!(file)))
        .collect();
    let settings = json!({ "bundle": { "linux": { "deb": { "files": files } } } });
    let tauri = root().join("ui/node_modules/.bin/tauri");
    openly(
        program(tauri)
            .args([
                "build",
                "--ci",
                "--bundles",
                "deb",
                "--config",
                &settings.to_string(),
            ])
            .current_dir(root().join("src-tauri")),
    )?;
    let deb = newest(&target().join("release/bundle/deb"))?;
    let kept = made.join(deb.file_name().unwrap_or_default());
    fs::copy(&deb, &kept).map_err(|error| unwritten(&kept, &error))?;
    let tarball = tarball(&made, &kept)?;
    for file in [&kept, &tarball] {
        let length = fs::metadata(file)
            .map_err(|error| unwritten(file, &error))?
            .len();
        println!("{} ({:.1} MB)", file.display(), length as f64 / 1e6);
    }
    Ok(kept)
}

/// Where a document lies on the machine of who installs it.
fn inside(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    format!("{DOCUMENTS}/{name}")
}

/// Our own licence, those of the crates, and those of what the page is made of; compressed where they are long.
fn licences(made: &Path, of_page: &Path) -> Result<Vec<PathBuf>, String> {
    let tools = target().join("tools");
    let tool = tools.join("bin").join(LICENCES);
    if !tool.is_file() {
        println!("Building {LICENCES}; the first time takes minutes.");
        quietly(
            words("cargo install --locked --version ^5")
                .arg(LICENCES)
                .arg("--root")
                .arg(&tools),
        )?;
    }
    let of_crates = made.join("licences-crates.yml");
    quietly(
        program(tool)
            .args(["--format", "yaml", "--prefer", "MIT", "--output"])
            .arg(&of_crates)
            .current_dir(root().join("src-tauri")),
    )?;
    let mut page = read(of_page)?;
    for font in fonts()? {
        page += &format!("\n\n---\n\n{}", read(&font)?);
    }
    fs::write(of_page, page).map_err(|error| unwritten(of_page, &error))?;
    for long in [&of_crates, &of_page.to_path_buf()] {
        quietly(words("gzip -9 --no-name --force").arg(long))?;
    }
    let copyright = made.join("copyright");
    let own = root().join("LICENSE");
    fs::copy(own, &copyright).map_err(|error| unwritten(&copyright, &error))?;
    Ok(vec![
        copyright,
        made.join("licences-crates.yml.gz"),
        made.join("licences-page.txt.gz"),
    ])
}

/// The licences of the fonts of the page and of the papers.
fn fonts() -> Result<Vec<PathBuf>, String> {
    let mut found = vec![root().join("src-tauri/crates/paper/fonts/OFL.txt")];
    let modules = root().join("ui/node_modules");
    for publisher in ["@fontsource", "@fontsource-variable"] {
        found.extend(
            listed(&modules.join(publisher))?
                .iter()
                .map(|font| font.join("LICENSE")),
        );
    }
    Ok(found)
}

/// What the .deb would install, for those whose system knows no .deb.
fn tarball(made: &Path, deb: &Path) -> Result<PathBuf, String> {
    let name = deb
        .file_stem()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    let tree = made.join(&name);
    quietly(words("dpkg-deb --extract").arg(deb).arg(&tree))?;
    let tarball = made.join(format!("{name}.tar.gz"));
    quietly(
        words("tar --create --gzip --owner=0 --group=0 --file")
            .arg(&tarball)
            .arg("--directory")
            .arg(made)
            .arg(&name),
    )?;
    fs::remove_dir_all(&tree).map_err(|error| unwritten(&tree, &error))?;
    Ok(tarball)
}

fn newest(folder: &Path) -> Result<PathBuf, String> {
    let is_deb = |path: &PathBuf| path.extension().is_some_and(|ending| ending == "deb");
    let when = |path: &PathBuf| fs::metadata(path).and_then(|found| found.modified()).ok();
    let found = listed(folder)?.into_iter().filter(is_deb).max_by_key(when);
    found.ok_or_else(|| format!("{} holds no .deb.", folder.display()))
}

fn listed(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let entries =
        fs::read_dir(folder).and_then(|entries| entries.map(|entry| Ok(entry?.path())).collect());
    entries.map_err(|error| format!("{} could not be read: {error}.", folder.display()))
}

fn read(file: &Path) -> Result<String, String> {
    fs::read_to_string(file)
        .map_err(|error| format!("{} could not be read: {error}.", file.display()))
}

fn unwritten(file: &Path, error: &std::io::Error) -> String {
    format!("{} could not be written: {error}.", file.display())
}
