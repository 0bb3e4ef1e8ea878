//! The demonstration season's pictures, through the album as a stranger's first minute does it.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use chrono::DateTime;
use photo::Preview;
use serde_json::Value;

use crate::{album, take_in};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data")
}

/// Every harvest that names pictures, with the moment it was recorded.
fn harvests() -> Vec<(String, Vec<String>)> {
    let deeds: Vec<Value> =
        serde_json::from_slice(&fs::read(folder().join("season.json")).unwrap()).unwrap();
    deeds
        .iter()
        .filter_map(|deed| {
            let photos = deed["request"]["photos"].as_array()?;
            let photos = photos
                .iter()
                .map(|name| name.as_str().unwrap().to_owned())
                .collect();
            Some((deed["at"].as_str().unwrap().to_owned(), photos))
        })
        .collect()
}

#[test]
fn every_picture_is_used_once_and_shown_whole_and_taken_on_the_day_of_its_harvest() {
    let (_folder, album) = album();
    let mut used = BTreeSet::new();
    for (at, photos) in harvests() {
        let recorded = DateTime::parse_from_rfc3339(&at).unwrap();
        for name in photos {
            let bytes = fs::read(folder().join(&name)).unwrap();
            assert!(
                bytes.len() < 150_000,
                "{name} would weigh down a clone: {} bytes",
                bytes.len()
            );
            let photo = take_in(&album, &bytes);
            assert_eq!(photo.preview, Preview::Whole, "{name}");
            let taken = photo.taken.unwrap();
            assert_eq!(taken.local.date(), recorded.naive_local().date(), "{name}");
            assert!(
                taken.local < recorded.naive_local(),
                "{name} was taken before it was recorded"
            );
            assert!(
                taken
                    .offset
                    .is_none_or(|offset| offset == *recorded.offset()),
                "{name}: summer or winter time"
            );
            assert!(used.insert(name.clone()), "{name} is used twice");
        }
    }
    let lying: BTreeSet<String> = fs::read_dir(folder().join("pictures"))
        .unwrap()
        .map(|entry| format!("pictures/{}", entry.unwrap().file_name().to_string_lossy()))
        .collect();
    assert_eq!(used, lying);
}

#[test]
fn a_picture_stored_sideways_is_seen_upright() {
    let (_folder, album) = album();
    let bytes = fs::read(folder().join("pictures/rose-hip.jpg")).unwrap();
    let photo = take_in(&album, &bytes);
    // exiftool: ImageWidth 1200, ImageHeight 1500, Orientation 6 (rotate 90 CW).
    assert_eq!((photo.width, photo.height), (Some(1500), Some(1200)));
}
