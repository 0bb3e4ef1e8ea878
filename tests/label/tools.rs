//! The independent readers: poppler's pdftotext and pdftoppm, zbar's zbarimg. A missing one fails the test.

use std::path::{Path, PathBuf};
use std::process::Command;

/// A folder of this run's pictures and pages, kept so that they can be looked at.
pub fn folder(test: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("label")
        .join(test);
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn run(program: &str, arguments: &[&str]) -> String {
    let answer = Command::new(program)
        .args(arguments)
        .output()
        .unwrap_or_else(|error| panic!("{program} is needed to read the pages back (`cargo dev check` installs it): {error}"));
    assert!(
        answer.status.success(),
        "{program} {arguments:?}: {}",
        String::from_utf8_lossy(&answer.stderr)
    );
    String::from_utf8(answer.stdout).unwrap()
}

/// The text of a PDF as a reader copies it out, with single spaces.
pub fn text_of(folder: &Path, name: &str, pdf: &[u8]) -> String {
    let path = folder.join(name).with_extension("pdf");
    std::fs::write(&path, pdf).unwrap();
    let text = run("pdftotext", &["-raw", path.to_str().unwrap(), "-"]);
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Every page of a PDF as a PNG at 200 dots an inch.
pub fn pictures_of(folder: &Path, name: &str, pdf: &[u8]) -> Vec<PathBuf> {
    let path = folder.join(name).with_extension("pdf");
    std::fs::write(&path, pdf).unwrap();
    let stem = folder.join(name);
    for old in pages(folder, name) {
        std::fs::remove_file(old).unwrap();
    }
    run(
        "pdftoppm",
        &[
            "-r",
            "200",
            "-png",
            path.to_str().unwrap(),
            stem.to_str().unwrap(),
        ],
    );
    let pages = pages(folder, name);
    assert!(!pages.is_empty(), "pdftoppm wrote no page of {name}");
    pages
}

fn pages(folder: &Path, name: &str) -> Vec<PathBuf> {
    let mut pages: Vec<PathBuf> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| {
            let file = path.file_name().unwrap().to_string_lossy();
            file.strip_prefix(name)
                .is_some_and(|rest| rest.starts_with('-') && rest.ends_with(".png"))
        })
        .collect();
    pages.sort();
    pages
}

/// What zbar reads in a picture, sorted.
pub fn codes_in(picture: &Path) -> Vec<String> {
    let read = run(
        "zbarimg",
        &[
            "--quiet",
            "--raw",
            "-Sdisable",
            "-Sqrcode.enable",
            picture.to_str().unwrap(),
        ],
    );
    let mut codes: Vec<String> = read.lines().map(str::to_owned).collect();
    codes.sort();
    codes
}
