//! Uploads, and `photo.chunk`.

use serde_json::{Value, json};

use crate::world::{Refused, World, samples, text};

/// Base64 of RFC 4648, written here so that the command is not tested with its own decoder's twin.
fn base64(bytes: &[u8]) -> String {
    const DIGITS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::new();
    for group in bytes.chunks(3) {
        let bits = group
            .iter()
            .fold(0_u32, |bits, byte| bits << 8 | u32::from(*byte))
            << (8 * (3 - group.len()));
        for digit in 0..4 {
            let value = (bits >> (18 - 6 * digit)) & 63;
            text.push(if digit <= group.len() {
                DIGITS[value as usize] as char
            } else {
                '='
            });
        }
    }
    text
}

#[test]
fn an_upload_is_described_and_recognised_the_second_time() {
    let world = World::new();
    let first = world.photo("place_and_zone.jpg");
    assert_eq!(first["duplicate"], false);
    assert_eq!(text(&first, "/photo/name"), "place_and_zone.jpg");
    assert_eq!(text(&first, "/photo/taken_at"), "2026-06-21T08:15:42+02:00");
    assert_eq!(first["photo"]["zone_known"], true);
    let request = json!({"herb": "sage", "part": "leaf", "gross_g": 40, "surface": "dry",
        "look_alike_ruled_out": true, "photos": [first["photo"]["hash"]]});
    let harvest = world.call("harvest.record", request);
    let second = world.photo("place_and_zone.jpg");
    assert_eq!(second["duplicate"], true);
    assert_eq!(second["photo"], first["photo"]);
    assert_eq!(second["used_in"], json!([harvest["harvest"]["id"]]));
}

#[test]
fn a_photo_without_a_zone_was_taken_where_the_phone_is() {
    let reply = World::new().photo("south_west_no_zone.jpg");
    assert_eq!(text(&reply, "/photo/taken_at"), "2026-02-28T23:59:59+02:00");
    assert_eq!(reply["photo"]["zone_known"], false);
}

#[test]
fn chunks_make_the_same_photo_as_a_stream() {
    let world = World::new();
    let bytes = std::fs::read(samples().join("no_exif.jpg")).unwrap();
    let pieces: Vec<&[u8]> = bytes.chunks(4000).collect();
    let (last, others) = pieces.split_last().unwrap();
    for piece in others {
        let request = json!({"upload": "a", "base64": base64(piece), "last": false});
        assert_eq!(world.call("photo.chunk", request), json!({"taken": null}));
    }
    let request =
        json!({"upload": "a", "base64": base64(last), "last": true, "name": "no_exif.jpg"});
    let taken = world.call("photo.chunk", request)["taken"].clone();
    assert_eq!(taken["photo"], World::new().photo("no_exif.jpg")["photo"]);
}

#[test]
fn a_chunk_that_is_no_photo_is_refused_and_leaves_nothing() {
    let world = World::new();
    let chunk =
        |upload: &str, base64: String| json!({"upload": upload, "base64": base64, "last": true});
    world
        .refused("photo.chunk", chunk("a", "?".into()))
        .of("invalid", "base64");
    world
        .refused("photo.chunk", chunk("", base64(b"x")))
        .of("invalid", "upload");
    world
        .refused("photo.chunk", chunk("a", "A".repeat(1_500_000)))
        .of("invalid", "base64")
        .says("1 MiB");
    world
        .refused(
            "photo.chunk",
            chunk("a", base64(b"this is a letter, not a picture")),
        )
        .says("not a photo");
    let about = world.call("journal.about", json!({}));
    assert_eq!(about["photos"], json!(0));
    let failure = world
        .app()
        .take_photo(b"hello".as_slice(), Some("leaf.jpg"))
        .unwrap_err();
    assert_eq!(
        Refused::said(failure).code,
        "invalid",
        "whatever a file is called"
    );
}

#[test]
fn a_picture_is_served_with_its_type_and_no_other_file_is() {
    let world = World::new();
    let hash = text(&world.photo("sample.png"), "/photo/hash").to_owned();
    assert_eq!(
        world.app().original(&hash).unwrap().unwrap().media_type,
        "image/png"
    );
    assert_eq!(
        world.app().thumb(&hash).unwrap().unwrap().media_type,
        "image/jpeg"
    );
    assert!(world.app().thumb(&"0".repeat(64)).unwrap().is_none());
    let failure = world.app().original("../journal.trugbook").unwrap_err();
    assert_eq!(Refused::said(failure).code, "not_found");
    let heic = world.photo("phone.heic");
    assert_eq!(heic["photo"]["has_preview"], false);
    assert_ne!(
        heic["photo"]["note"],
        Value::Null,
        "the page says why there is no preview"
    );
}

#[test]
fn a_photo_is_kept_before_its_preview_is_made_and_looking_tells_what_is_wrong_with_it() {
    let world = World::new();
    let bytes = std::fs::read(samples().join("no_exif.jpg")).unwrap();
    let mut harmed = bytes.clone();
    let middle = bytes.len() / 2;
    // A frame header inside the picture data (ITU-T T.81 B.2.2): no decoder can go on from there.
    harmed[middle..middle + 8].copy_from_slice(&[0xFF, 0xC0, 0, 0, 0, 0, 0, 0]);
    let kept: Value =
        serde_json::from_str(&world.app().take_photo(&harmed[..], None).unwrap()).unwrap();
    let hash = text(&kept, "/photo/hash");
    let thumbs = world.folder().join("photos/thumbs").join(&hash[..2]);
    assert!(!thumbs.exists(), "made when it is asked for");
    assert_eq!(kept["photo"]["note"], Value::Null);
    let seen = world.call("photo.preview", json!({"hash": hash}));
    assert_eq!(seen["has_preview"], true);
    assert!(text(&seen, "/note").contains("damaged"));
    assert_eq!(world.call("photo.preview", json!({"hash": hash})), seen);
    // As after a kill between the two, or a restore: it is made again for whoever asks.
    std::fs::remove_dir_all(thumbs).unwrap();
    assert!(world.app().thumb(hash).unwrap().is_some());
    world
        .refused("photo.preview", json!({"hash": "0".repeat(64)}))
        .of("not_found", "hash");
}
