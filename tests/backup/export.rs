//! What an export tells, and what it does not.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use api::Language;
use archive::{Progress, Unpacker};
use serde_json::{Value, json};

use super::commands::{World, number};
use super::season::{done, ended, outside, told};

fn unpacked(file: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut zip = Unpacker::open(file, None).unwrap();
    assert!(zip.verify(&Progress::default()).unwrap().is_none());
    let names: Vec<String> = zip
        .manifest()
        .entries
        .iter()
        .map(|entry| entry.name.clone())
        .collect();
    let mut files = BTreeMap::new();
    for name in names {
        let mut bytes = Vec::new();
        zip.copy(&name, &Progress::default(), |piece| {
            bytes.extend_from_slice(piece);
            Ok(())
        })
        .unwrap();
        files.insert(name, bytes);
    }
    files
}

/// 48.2 N 16.4 E is where the sample picture says it was taken.
fn tells_the_place(files: &BTreeMap<String, Vec<u8>>) -> bool {
    files.iter().any(|(name, bytes)| {
        let is_picture = name.starts_with("photos/");
        let exif = is_picture && place_in(bytes);
        let text = String::from_utf8_lossy(bytes);
        exif || (!is_picture && (text.contains("\"lat\"") || text.contains("place.lat")))
    })
}

fn place_in(bytes: &[u8]) -> bool {
    let folder = tempfile::tempdir().unwrap();
    let album = photo::Album::open(folder.path()).unwrap();
    album.take_in(bytes).unwrap().photo.place.is_some()
}

#[test]
fn an_export_has_every_entry_in_tables_and_json_and_no_place_unless_asked() {
    let (world, outside) = (World::new(), outside());
    told(&world);
    let file = outside.path().join("e.zip");
    let made = done(
        &world,
        "export.make",
        json!({ "file": file, "photos": true }),
    );
    assert_eq!(
        (number(&made, "/photos"), number(&made, "/photos_left_out")),
        (3.0, 0.0)
    );
    let files = unpacked(&file);
    assert!(!tells_the_place(&files), "no place was asked for");
    let table = String::from_utf8(files["harvest.csv"].clone()).unwrap();
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let head: Vec<String> = reader
        .headers()
        .unwrap()
        .iter()
        .map(str::to_owned)
        .collect();
    assert_eq!(&head[..2], ["id", "code"]);
    assert!(
        head.contains(&"weighed.gross_g".to_owned()),
        "units are in the names: {head:?}"
    );
    assert_eq!(reader.records().count(), 3);
    assert!(files.contains_key("tray.csv") && files.contains_key("bed.csv"));
    let json: Value = serde_json::from_slice(&files["journal.json"]).unwrap();
    assert_eq!(json["entries"]["harvest"].as_array().unwrap().len(), 3);
    assert!(json["deeds"].as_array().unwrap().len() >= 8);

    let file = outside.path().join("places.zip");
    done(
        &world,
        "export.make",
        json!({ "file": file, "photos": true, "places": true }),
    );
    assert!(tells_the_place(&unpacked(&file)), "the place was asked for");
}

/// Whatever the catalogue says is a name that a maker may give; the tables are read by programs and people alike.
#[test]
fn names_of_the_catalogue_s_own_words_stand_in_the_tables_as_they_were_typed() {
    let (world, outside) = (World::new(), outside());
    let mut names = BTreeSet::new();
    for language in Language::ALL {
        let alone = language
            .messages()
            .iter()
            .filter(|(_, places)| places.is_empty());
        names.extend(alone.map(|(id, _)| language.tell(&message::Message::of_table(id.clone()))));
    }
    let is_a_name = |name: &&String| {
        (1..=60).contains(&name.chars().count())
            && name.trim() == name.as_str()
            && !name.contains(['\n', '\u{a0}'])
    };
    // Two beds of one name, however it is spelt, are refused.
    let mut seen = BTreeSet::new();
    let is_new = |name: &&String| seen.insert(name.to_lowercase());
    let names = names.iter().filter(is_a_name).filter(is_new);
    let names: Vec<&String> = names.take(1_200).collect();
    assert!(names.len() > 1_000, "only {}", names.len());
    for name in &names {
        let bed = json!({"name": name, "note": name});
        api::call_in(world.app(), Language::German, "bed.add", &bed.to_string()).unwrap();
    }
    let file = outside.path().join("e.zip");
    let request = json!({ "file": file, "photos": false }).to_string();
    let begun = api::call_in(world.app(), Language::German, "export.make", &request).unwrap();
    ended(&world, &serde_json::from_str(&begun).unwrap());
    let files = unpacked(&file);
    let mut reader = csv::Reader::from_reader(files["bed.csv"].as_slice());
    let head = reader.headers().unwrap().clone();
    let column = |name: &str| head.iter().position(|one| one == name).unwrap();
    let (name, note) = (column("name"), column("note"));
    let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
    let written: BTreeSet<(&str, &str)> = rows.iter().map(|row| (&row[name], &row[note])).collect();
    let typed: BTreeSet<(&str, &str)> = names
        .iter()
        .map(|name| (name.as_str(), name.as_str()))
        .collect();
    assert_eq!(written, typed);
    let json: Value = serde_json::from_slice(&files["journal.json"]).unwrap();
    let beds = json["entries"]["bed"].as_array().unwrap().iter();
    let kept: BTreeSet<&str> = beds
        .map(|bed| {
            bed["body"]["name"]
                .as_str()
                .or(bed["name"].as_str())
                .unwrap()
        })
        .collect();
    assert_eq!(kept, names.iter().map(|name| name.as_str()).collect());
}

#[test]
fn a_photo_without_its_place_keeps_its_pixels_and_stands_upright() {
    for sample in [
        "place_and_zone.jpg",
        "orientation_6.jpg",
        "progressive.jpg",
        "restart.jpg",
        "cmyk.jpg",
        "sample.png",
        "transparent.png",
    ] {
        let original = std::fs::read(super::commands::samples().join(sample)).unwrap();
        let copy = photo::without_place(&original).unwrap_or_else(|| panic!("{sample}"));
        let [before, after] = [&original, &copy].map(|bytes| {
            let folder = tempfile::tempdir().unwrap();
            let album = photo::Album::open(folder.path()).unwrap();
            let photo = album.take_in(bytes.as_slice()).unwrap().photo;
            let mut thumb = Vec::new();
            std::io::Read::read_to_end(&mut album.shown(&photo.hash).unwrap().unwrap(), &mut thumb)
                .unwrap();
            (photo.width, photo.height, thumb, photo.place.is_some())
        });
        assert_eq!((after.0, after.1), (before.0, before.1), "{sample}");
        assert_eq!(after.2, before.2, "the same upright picture: {sample}");
        assert!(!after.3, "{sample}");
    }
    for sample in ["phone.heic", "sample.tif", "sample.gif", "sample.webp"] {
        let original = std::fs::read(super::commands::samples().join(sample)).unwrap();
        assert!(
            photo::without_place(&original).is_none(),
            "{sample} is left out instead"
        );
    }
}
