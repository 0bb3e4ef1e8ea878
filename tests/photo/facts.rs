//! What a picture says about itself, against what exiftool reads from the same file.

use photo::{Kind, Taken};

use crate::{album, sample, take_in};

fn read(name: &str) -> photo::Photo {
    let (_folder, album) = album();
    take_in(&album, &sample(name))
}

fn taken(local: &str, offset: Option<&str>) -> Option<Taken> {
    Some(Taken {
        local: local.parse().unwrap(),
        offset: offset.map(|text| text.parse().unwrap()),
    })
}

/// exiftool gives degrees with at most 15 digits; EXIF holds seconds as fractions, so the last may differ.
fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-8
}

#[test]
fn time_zone_and_place_are_read_from_a_jpeg_and_from_a_heic() {
    for (name, kind) in [
        ("place_and_zone.jpg", Kind::Jpeg),
        ("phone.heic", Kind::Heic),
    ] {
        let photo = read(name);
        assert_eq!(photo.kind, kind);
        // exiftool: DateTimeOriginal 2026:06:21 08:15:42, OffsetTimeOriginal +02:00 (ModifyDate differs).
        assert_eq!(
            photo.taken,
            taken("2026-06-21T08:15:42", Some("+02:00")),
            "{name}"
        );
        // exiftool: GPSLatitude 46.512345 N, GPSLongitude 8.034567 E
        let place = photo.place.unwrap();
        assert!(
            near(place.lat, 46.512_345) && near(place.lon, 8.034_567),
            "{name}: {place:?}"
        );
    }
}

#[test]
fn south_and_west_are_negative_and_a_missing_zone_stays_unknown() {
    let photo = read("south_west_no_zone.jpg");
    // exiftool: DateTimeOriginal 2026:02:28 23:59:59, no offset, GPSLatitude -33.25, GPSLongitude -70.5004
    assert_eq!(photo.taken, taken("2026-02-28T23:59:59", None));
    let place = photo.place.unwrap();
    assert!(
        near(place.lat, -33.25) && near(place.lon, -70.5004),
        "{place:?}"
    );
}

#[test]
fn the_time_of_digitising_serves_where_the_original_time_is_missing() {
    // exiftool: CreateDate (DateTimeDigitized) 2025:10:03 07:00:00, OffsetTimeDigitized -03:30
    let photo = read("digitized_only.jpg");
    assert_eq!(photo.taken, taken("2025-10-03T07:00:00", Some("-03:30")));
    assert_eq!(photo.place, None);
}

#[test]
fn webp_png_and_tiff_carry_exif_too() {
    assert_eq!(
        read("sample.webp").taken,
        taken("2026-05-01T12:00:00", None)
    );
    assert_eq!(
        read("sample.png").taken,
        taken("2026-05-02T12:00:00", Some("+01:00"))
    );
    assert_eq!(read("sample.tif").taken, taken("2026-05-03T12:00:00", None));
}

#[test]
fn a_picture_without_exif_says_nothing() {
    let photo = read("no_exif.jpg");
    assert_eq!((photo.taken, photo.place), (None, None));
    assert_eq!((photo.width, photo.height), (Some(160), Some(120)));
}

/// Overwrites one text of the EXIF block by another of the same length.
fn with_text(name: &str, old: &[u8], new: &[u8]) -> photo::Photo {
    assert_eq!(old.len(), new.len());
    let mut bytes = sample(name);
    let at = bytes
        .windows(old.len())
        .position(|window| window == old)
        .unwrap();
    bytes[at..at + new.len()].copy_from_slice(new);
    let (_folder, album) = album();
    take_in(&album, &bytes)
}

#[test]
fn an_impossible_date_is_no_date() {
    for impossible in [
        "0000:00:00 00:00:00",
        "2026:02:30 08:15:42",
        "2026:06:21 25:15:42",
        "    :  :     :  :  ",
    ] {
        let photo = with_text(
            "place_and_zone.jpg",
            b"2026:06:21 08:15:42",
            impossible.as_bytes(),
        );
        assert_eq!(photo.taken, None, "{impossible}");
        assert!(photo.place.is_some(), "the place beside it is still read");
    }
}

#[test]
fn an_impossible_zone_leaves_the_time() {
    for impossible in ["+99:00", "   :  ", "later!"] {
        let photo = with_text("place_and_zone.jpg", b"+02:00", impossible.as_bytes());
        assert_eq!(
            photo.taken,
            taken("2026-06-21T08:15:42", None),
            "{impossible}"
        );
    }
}
