//! The independent readers: poppler's pdftotext, pdfinfo and pdftoppm, qpdf, zbar's zbarimg. A missing one fails the test.

use std::path::{Path, PathBuf};
use std::process::Command;

/// A folder of this run's pictures and pages, kept so that they can be looked at.
pub fn folder(test: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("paper")
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

/// A piece that a screen reader says.
#[derive(Debug, Clone, PartialEq, Eq)]
#[allow(dead_code, reason = "the tests of commands look at a part of it")]
pub struct Heard {
    /// What it belongs to, from the document down: `Document/L/LI/LBody`.
    pub path: String,
    /// Its words, with single spaces.
    pub words: String,
}

/// What a screen reader says of a PDF, in its order, without the pictures.
#[allow(dead_code, reason = "the tests of commands look at a part of it")]
pub fn heard(folder: &Path, name: &str, pdf: &[u8]) -> Vec<Heard> {
    let path = folder.join(name).with_extension("pdf");
    std::fs::write(&path, pdf).unwrap();
    let tree = run("pdfinfo", &["-struct-text", path.to_str().unwrap()]);
    let mut open: Vec<(usize, &str)> = Vec::new();
    let mut heard = Vec::new();
    for line in tree.lines().filter(|line| !line.trim().is_empty()) {
        let words = line.trim_start();
        let depth = line.len() - words.len();
        // Attributes of an element.
        if words.starts_with('/') {
            continue;
        }
        open.retain(|(above, _)| *above < depth);
        let text = words.strip_prefix('"');
        match text.and_then(|text| text.strip_suffix('"')) {
            Some(text) if text.trim().is_empty() => {}
            Some(text) => heard.push(Heard {
                path: open
                    .iter()
                    .map(|(_, kind)| *kind)
                    .collect::<Vec<_>>()
                    .join("/"),
                words: text.split_whitespace().collect::<Vec<_>>().join(" "),
            }),
            None => open.push((depth, words.split([' ', ':']).next().unwrap())),
        }
    }
    heard
}

/// The objects of a PDF in their order, which is the order in which they are read; qpdf fails where it finds a fault.
#[allow(dead_code, reason = "the tests of commands look at a part of it")]
pub fn objects_of(folder: &Path, name: &str, pdf: &[u8]) -> Vec<serde_json::Value> {
    let path = folder.join(name).with_extension("pdf");
    std::fs::write(&path, pdf).unwrap();
    let path = path.to_str().unwrap();
    run("qpdf", &["--check", path]);
    let all = run("qpdf", &["--json=2", "--json-key=qpdf", path]);
    let mut all: serde_json::Value = serde_json::from_str(&all).unwrap();
    let all = all["qpdf"][1].as_object_mut().unwrap();
    let number = |name: &str| name.strip_prefix("obj:")?.split(' ').next()?.parse().ok();
    let mut objects: Vec<(u32, serde_json::Value)> = all
        .into_iter()
        .filter_map(|(name, object)| Some((number(name)?, object.take())))
        .collect();
    objects.sort_by_key(|(number, _)| *number);
    let objects = objects.into_iter();
    objects.map(|(_, mut it)| it["value"].take()).collect()
}

/// What the pictures of a PDF show, as a screen reader says it.
#[allow(dead_code, reason = "the tests of commands look at a part of it")]
pub fn shown(folder: &Path, name: &str, pdf: &[u8]) -> Vec<String> {
    let objects = objects_of(folder, name, pdf);
    let figures = objects.iter().filter(|it| it["/S"] == "/Figure");
    figures
        .map(|it| {
            it["/Alt"]
                .as_str()
                .unwrap()
                .strip_prefix("u:")
                .unwrap()
                .to_owned()
        })
        .collect()
}

/// Every page of a PDF as a PNG at 200 dots an inch.
pub fn pictures_of(folder: &Path, name: &str, pdf: &[u8]) -> Vec<PathBuf> {
    pictures_at(200, folder, name, pdf)
}

/// Every page of a PDF as a PNG at so many dots an inch.
pub fn pictures_at(dots: u32, folder: &Path, name: &str, pdf: &[u8]) -> Vec<PathBuf> {
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
            &dots.to_string(),
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

/// A page as a hand holds it before a camera that is not quite sharp: turned by `degrees` about its middle and blurred
/// by a bell curve of `dots` (its standard deviation).
#[allow(dead_code, reason = "the tests of cards use it")]
pub fn turned_and_blurred(picture: &Path, degrees: f32, dots: f32) -> PathBuf {
    let page = image::open(picture).unwrap().to_luma8();
    let (width, height) = page.dimensions();
    // Room for its corners.
    let (wide, tall) = (width + width / 4, height + height / 4);
    let half = |length: u32| length as f32 / 2.0;
    let (sin, cos) = degrees.to_radians().sin_cos();
    let at = |x: i64, y: i64| -> f32 {
        let inside = x >= 0 && y >= 0 && x < width.into() && y < height.into();
        if inside {
            page.get_pixel(x as u32, y as u32)[0].into()
        } else {
            255.0
        }
    };
    let turned = image::GrayImage::from_fn(wide, tall, |x, y| {
        let (dx, dy) = (x as f32 - half(wide), y as f32 - half(tall));
        let u = half(width) + dx * cos + dy * sin;
        let v = half(height) - dx * sin + dy * cos;
        let (left, top) = (u.floor() as i64, v.floor() as i64);
        let (right, down) = (u - u.floor(), v - v.floor());
        let row = |y: i64| at(left, y) * (1.0 - right) + at(left + 1, y) * right;
        image::Luma([(row(top) * (1.0 - down) + row(top + 1) * down).round() as u8])
    });
    let path = picture.with_file_name(format!(
        "turned-{}",
        picture.file_name().unwrap().to_string_lossy()
    ));
    image::imageops::blur(&turned, dots).save(&path).unwrap();
    path
}
