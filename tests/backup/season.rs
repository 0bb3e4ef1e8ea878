//! A small season in a journal, and the jobs that work on it.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use journal::DeviceId;
use serde_json::{Value, json};
use store::Store;
use uuid::Uuid;

use super::commands::{World, text};

/// Asks for a job until it has ended.
pub fn ended(world: &World, begun: &Value) -> Value {
    loop {
        let card = world.call("job.show", json!({ "job": begun["job"] }));
        if card["state"] != "running" {
            return card;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
}

/// What a job brought about.
#[track_caller]
pub fn done(world: &World, command: &str, request: Value) -> Value {
    let card = ended(world, &world.call(command, request));
    assert_eq!(card["state"], "done", "{command}: {card}");
    card["outcome"].clone()
}

/// Why a job failed.
#[track_caller]
pub fn failed(world: &World, command: &str, request: Value) -> Value {
    let card = ended(world, &world.call(command, request));
    assert_eq!(card["state"], "failed", "{command}: {card}");
    let message = text(&card, "/failure/message");
    assert!(message.ends_with('.'), "a finished sentence: {message}");
    card["failure"].clone()
}

/// Picks a herb with a photo.
pub fn pick(world: &World, sample: &str, gross_g: f64, bed: &str) -> Value {
    let photo = world.photo(sample);
    world.call(
        "harvest.record",
        json!({
            "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": gross_g,
            "tare_g": 20, "bed_name": bed, "photos": [text(&photo, "/photo/hash")],
        }),
    )["harvest"]
        .clone()
}

/// Three harvests, a tray, and a correction.
pub fn told(world: &World) {
    let first = pick(world, "place_and_zone.jpg", 520.0, "Lower bank");
    pick(world, "orientation_6.jpg", 300.0, "Lower bank");
    pick(world, "sample.png", 210.5, "Terrace");
    world.call(
        "tray.start",
        json!({ "harvest": first["id"], "name": "Sieve", "mass_g": 400, "tare_g": 0 }),
    );
    world.call(
        "harvest.correct",
        json!({ "id": first["id"], "note": "Cut in the morning" }),
    );
}

/// Where a test puts the files that a maker would choose.
pub fn outside() -> tempfile::TempDir {
    tempfile::tempdir().unwrap()
}

/// Backs a journal up to a file.
pub fn backed_up(world: &World, folder: &Path, name: &str) -> PathBuf {
    let file = folder.join(name);
    done(world, "backup.make", json!({ "file": file }));
    file
}

/// Everything a journal is: its log, the tables made from it, and the originals.
#[derive(Debug, PartialEq)]
pub struct Everything {
    pub deeds: Vec<journal::Deed>,
    pub tables: Vec<String>,
    pub originals: BTreeMap<String, Vec<u8>>,
}

/// Reads all of a journal in its folder.
pub fn everything(world: &World) -> Everything {
    let folder = world.folder();
    let store = Store::open(&folder.join("journal.trugbook"), DeviceId(Uuid::nil())).unwrap();
    let mut deeds = Vec::new();
    store
        .each_deed(|deed| {
            deeds.push(deed);
            Ok(())
        })
        .unwrap();
    let mut originals = BTreeMap::new();
    for part in fs::read_dir(folder.join("photos/originals"))
        .unwrap()
        .flatten()
    {
        for file in fs::read_dir(part.path()).unwrap().flatten() {
            let name = file.file_name().to_string_lossy().into_owned();
            originals.insert(name, fs::read(file.path()).unwrap());
        }
    }
    Everything {
        deeds,
        tables: store.tables().unwrap(),
        originals,
    }
}
