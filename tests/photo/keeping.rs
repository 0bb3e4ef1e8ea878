//! How the album keeps what it is given.

use std::fs;
use std::io::{self, Read};

use photo::{Album, Failure, Hash, MAX_BYTES, Photo, Preview};

use crate::{album, files_under, sample, take_in};

/// A failure as its maker reads it.
fn said(failure: &Failure) -> String {
    api::Language::English.say_messages(&failure.to_string())
}

#[test]
fn a_photo_is_kept_under_its_blake3_hash() {
    let (folder, album) = album();
    let photo = take_in(&album, &sample("no_exif.jpg"));
    let name = photo.hash.to_string();
    // As the BLAKE3 package for Python prints it.
    assert_eq!(
        name,
        "b2cd8e13b31c6d06ea124142e9940c042842296973680abc9e1bdc72e59a6960"
    );
    assert!(
        folder
            .path()
            .join("photos/originals")
            .join(&name[..2])
            .join(&name)
            .is_file()
    );
    assert!(
        folder
            .path()
            .join("photos/thumbs")
            .join(&name[..2])
            .join(name + ".jpg")
            .is_file()
    );
    assert_eq!(album.hashes().unwrap(), [photo.hash]);
}

#[test]
fn the_same_bytes_again_are_recognised_and_kept_once() {
    let (folder, album) = album();
    let first = album.take_in(sample("no_exif.jpg").as_slice()).unwrap();
    let files = files_under(folder.path());
    let second = album.take_in(sample("no_exif.jpg").as_slice()).unwrap();
    assert!(!first.duplicate && second.duplicate);
    assert_eq!(first.photo.hash, second.photo.hash);
    assert_eq!(files_under(folder.path()), files);
}

#[test]
fn pieces_of_any_size_make_the_same_photo() {
    let bytes = sample("place_and_zone.jpg");
    let (_folder, album) = album();
    let whole = take_in(&album, &bytes);
    for size in [1, 63, 64, 65, 4096] {
        let mut upload = album.begin().unwrap();
        for piece in bytes.chunks(size) {
            upload.write(piece).unwrap();
        }
        let kept = upload.keep().unwrap();
        assert!(
            kept.duplicate && kept.hash == whole.hash,
            "pieces of {size}"
        );
    }
}

#[test]
fn a_dropped_upload_leaves_nothing() {
    let (folder, album) = album();
    let mut upload = album.begin().unwrap();
    upload.write(&sample("no_exif.jpg")).unwrap();
    drop(upload);
    assert_eq!(files_under(folder.path()), 0);
}

#[test]
fn an_upload_that_breaks_off_leaves_nothing() {
    struct Broken;
    impl Read for Broken {
        fn read(&mut self, _: &mut [u8]) -> io::Result<usize> {
            Err(io::Error::other("the cable was pulled"))
        }
    }
    let (folder, album) = album();
    let bytes = sample("no_exif.jpg");
    let error = album.take_in(bytes.chain(Broken)).unwrap_err();
    assert!(matches!(error, Failure::Disk(_)), "{error}");
    assert_eq!(files_under(folder.path()), 0);
}

#[test]
fn leftovers_of_another_run_are_cleared_at_opening_and_photos_stay() {
    let (folder, album) = album();
    let photo = take_in(&album, &sample("no_exif.jpg"));
    let root = folder.path().join("photos");
    fs::write(root.join("incoming/0-7"), b"half a phot").unwrap();
    let again = Album::open(&root).unwrap();
    assert_eq!(files_under(&root.join("incoming")), 0);
    assert_eq!(again.hashes().unwrap(), [photo.hash]);
}

#[test]
fn a_photo_nobody_named_in_the_journal_is_found_and_described() {
    let (folder, album) = album();
    let mut upload = album.begin().unwrap();
    upload.write(&sample("place_and_zone.jpg")).unwrap();
    upload.keep().unwrap();
    fs::write(folder.path().join("photos/originals/note.txt"), b"not ours").unwrap();
    let hashes = album.hashes().unwrap();
    assert_eq!(hashes.len(), 1);
    assert!(
        album.thumb(&hashes[0]).unwrap().is_none(),
        "keeping alone makes no preview"
    );
    let photo: Photo = album.describe(&hashes[0]).unwrap().unwrap();
    assert_eq!(photo.preview, Preview::Whole);
    assert!(
        album.thumb(&hashes[0]).unwrap().is_none(),
        "nor does reading what it says"
    );
    assert!(album.shown(&hashes[0]).unwrap().is_some());
    assert!(album.thumb(&hashes[0]).unwrap().is_some());
}

#[test]
fn what_is_told_before_a_preview_is_made_is_what_making_it_shows() {
    let (_folder, album) = album();
    let jpeg = sample("place_and_zone.jpg");
    for (what, bytes) in [
        ("a whole picture", jpeg.clone()),
        ("no quick way to decode", sample("progressive.jpg")),
        ("cut in its data", jpeg[..jpeg.len() * 2 / 3].to_vec()),
        ("cut in its header", jpeg[..700].to_vec()),
        (
            "bytes behind the picture",
            [jpeg.as_slice(), b"a film"].concat(),
        ),
        ("too many pixels", sample("108_megapixels.png")),
        ("not unpacked here", sample("sample.tif")),
    ] {
        let told = album.take_in(bytes.as_slice()).unwrap().photo;
        let seen = album.look(&told.hash).unwrap().unwrap();
        assert_eq!(told.preview, seen.preview, "{what}");
    }
}

#[test]
fn a_preview_asked_for_many_times_at_once_is_given_to_each() {
    let (folder, album) = album();
    let photo = album
        .take_in(sample("no_exif.jpg").as_slice())
        .unwrap()
        .photo;
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| assert!(album.shown(&photo.hash).unwrap().is_some()));
        }
    });
    assert_eq!(
        files_under(folder.path()),
        2,
        "the original and one preview"
    );
}

#[test]
fn an_original_cut_short_on_the_disk_is_mended_by_taking_it_in_again() {
    let (folder, album) = album();
    let bytes = sample("no_exif.jpg");
    let name = take_in(&album, &bytes).hash.to_string();
    let path = folder
        .path()
        .join("photos/originals")
        .join(&name[..2])
        .join(&name);
    fs::write(path, &bytes[..100]).unwrap();
    assert!(!album.take_in(bytes.as_slice()).unwrap().duplicate);
    take_in(&album, &bytes);
}

#[test]
fn what_is_not_there_is_none() {
    let (_folder, album) = album();
    let hash: Hash = "ab".repeat(32).parse().unwrap();
    assert!(album.original(&hash).unwrap().is_none());
    assert!(album.thumb(&hash).unwrap().is_none());
    assert!(album.describe(&hash).unwrap().is_none());
}

#[test]
fn what_is_no_picture_is_refused_in_a_sentence_and_not_kept() {
    let (folder, album) = album();
    let text = "Peppermint, north wall, 420 g. ".repeat(40);
    for (what, bytes) in [
        ("text", text.as_bytes()),
        ("short text", b"mint".as_slice()),
        (
            "a film in the container HEIC also uses",
            b"\0\0\0\x18ftypisom\0\0\x02\0isomiso2avc1mp41".as_slice(),
        ),
        ("half a signature", b"\xFF\xD8".as_slice()),
    ] {
        let error = album.take_in(bytes).unwrap_err();
        assert!(matches!(error, Failure::NotAPicture), "{what}: {error}");
        assert!(said(&error).starts_with("This file is not a photo."));
    }
    let error = album.take_in(b"".as_slice()).unwrap_err();
    assert_eq!(said(&error), "This file is empty. Choose a photo.");
    assert_eq!(files_under(folder.path()), 0);
}

#[test]
fn a_file_above_64_mb_is_refused_while_it_streams_in() {
    let (folder, album) = album();
    let endless = sample("no_exif.jpg");
    let error = album.take_in(endless.chain(io::repeat(0x55))).unwrap_err();
    assert_eq!(
        said(&error),
        "This file is larger than 64 MB. Choose a photo of at most 64 MB."
    );
    assert_eq!(files_under(folder.path()), 0);

    let head = sample("no_exif.jpg");
    let rest = MAX_BYTES - head.len() as u64;
    let largest = album.take_in(head.chain(io::repeat(0).take(rest))).unwrap();
    assert_eq!(largest.photo.bytes, MAX_BYTES, "exactly 64 MB is taken");
}

#[test]
fn only_64_lower_case_hexadecimal_digits_name_a_photo() {
    let sound = "0123456789abcdef".repeat(4);
    let hash: Hash = sound.parse().unwrap();
    assert_eq!(hash.to_string(), sound);
    let climbing = format!("{}{}", "../".repeat(21), "a");
    for text in [
        "",
        "ab",
        &sound[1..],
        &sound.to_uppercase(),
        &format!("{sound}0"),
        &climbing,
        &"é".repeat(32),
    ] {
        assert!(
            matches!(text.parse::<Hash>(), Err(Failure::BadHash)),
            "{text}"
        );
    }
}
