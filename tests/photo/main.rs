//! Photos from outside the crate: real files in, what the album makes of them out.
//!
//! The files in `samples/` are our own drawings. Their EXIF was written with exiftool 12.57, and the
//! values the tests expect are those the same tool reads back (`exiftool -n`).

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

mod facts;
mod hostile;
mod keeping;
mod previews;
mod season;

use std::fs;
use std::io::Read;
use std::path::Path;

use photo::{Album, Photo};
use tempfile::TempDir;

fn sample(name: &str) -> Vec<u8> {
    fs::read(
        Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("photo/samples")
            .join(name),
    )
    .unwrap()
}

fn album() -> (TempDir, Album) {
    let folder = tempfile::tempdir().unwrap();
    let album = Album::open(folder.path().join("photos")).unwrap();
    (folder, album)
}

/// Takes the bytes in, looks at the picture, and checks what holds for every photo that is kept: the original is theirs to the byte.
fn take_in(album: &Album, bytes: &[u8]) -> Photo {
    let intake = album.take_in(bytes).unwrap();
    let mut kept = Vec::new();
    album
        .original(&intake.photo.hash)
        .unwrap()
        .unwrap()
        .read_to_end(&mut kept)
        .unwrap();
    assert_eq!(kept, bytes, "the original is kept byte for byte");
    assert_eq!(intake.photo.bytes, bytes.len() as u64);
    album.look(&intake.photo.hash).unwrap().unwrap()
}

fn files_under(folder: &Path) -> usize {
    fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap())
        .map(|entry| {
            if entry.file_type().unwrap().is_dir() {
                files_under(&entry.path())
            } else {
                1
            }
        })
        .sum()
}
