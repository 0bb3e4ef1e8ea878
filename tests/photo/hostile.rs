//! Whatever bytes arrive, each has a clear outcome: kept to the byte, or refused with nothing left behind.

use std::io::Read;
use std::time::Duration;

use checks::worked;
use photo::{Failure, NoPreview, Preview};
use proptest::prelude::*;

use crate::{album, files_under, sample, take_in};

/// More work than any picture of these may make, by an order: what takes this long hangs.
const HANG: Duration = Duration::from_secs(20);

const SAMPLES: [&str; 9] = [
    "place_and_zone.jpg",
    "progressive.jpg",
    "gray.jpg",
    "cmyk.jpg",
    "orientation_6.jpg",
    "phone.heic",
    "sample.png",
    "sample.webp",
    "sample.tif",
];

const SIGNATURES: [&[u8]; 8] = [
    b"\xFF\xD8\xFF",
    b"\x89PNG\r\n\x1A\n",
    b"RIFF\x40\0\0\0WEBPVP8 ",
    b"II*\0",
    b"MM\0*",
    b"\xFF\xD8\xFF\xE1\x10\0Exif\0\0II*\0\x08\0\0\0",
    b"\0\0\0\x18ftypheic\0\0\0\0heicmif1",
    b"GIF89a",
];

/// A byte set, a stretch cut out, or a stretch doubled.
#[derive(Clone, Debug)]
enum Harm {
    Set(usize, u8),
    Cut(usize, usize),
    Double(usize, usize),
    End(usize),
}

fn harm() -> impl Strategy<Value = Harm> {
    prop_oneof![
        // Headers and EXIF lie in the first kilobyte, so that half the harm is done there.
        6 => (0..1_000_usize, any::<u8>()).prop_map(|(at, byte)| Harm::Set(at, byte)),
        6 => (any::<usize>(), any::<u8>()).prop_map(|(at, byte)| Harm::Set(at, byte)),
        1 => (any::<usize>(), 1..200_usize).prop_map(|(at, length)| Harm::Cut(at, length)),
        1 => (any::<usize>(), 1..200_usize).prop_map(|(at, length)| Harm::Double(at, length)),
        1 => any::<usize>().prop_map(Harm::End),
    ]
}

fn harmed(mut bytes: Vec<u8>, harms: &[Harm]) -> Vec<u8> {
    for harm in harms {
        let length = bytes.len().max(1);
        match *harm {
            Harm::Set(at, byte) => {
                if let Some(place) = bytes.get_mut(at % length) {
                    *place = byte;
                }
            }
            Harm::Cut(at, count) => {
                let start = (at % length).min(bytes.len());
                bytes.drain(start..(start + count).min(bytes.len()));
            }
            Harm::Double(at, count) => {
                let start = (at % length).min(bytes.len());
                let piece = bytes[start..(start + count).min(bytes.len())].to_vec();
                bytes.splice(start..start, piece);
            }
            Harm::End(at) => bytes.truncate(at % length),
        }
    }
    bytes
}

fn has_a_clear_outcome(bytes: &[u8]) -> Result<(), TestCaseError> {
    let (folder, album) = album();
    let before = worked();
    match album.take_in(bytes) {
        Ok(intake) => {
            let mut kept = Vec::new();
            album
                .original(&intake.photo.hash)
                .unwrap()
                .unwrap()
                .read_to_end(&mut kept)
                .unwrap();
            prop_assert_eq!(kept.as_slice(), bytes);
            let photo = album.look(&intake.photo.hash).unwrap().unwrap();
            let thumb = album.thumb(&photo.hash).unwrap();
            prop_assert_eq!(thumb.is_some(), photo.preview.exists());
            if let Some(place) = photo.place {
                prop_assert!(place.lat.abs() <= 90.0 && place.lon.abs() <= 180.0);
            }
        }
        Err(Failure::NotAPicture | Failure::Empty) => {
            prop_assert_eq!(files_under(folder.path()), 0)
        }
        Err(error) => prop_assert!(false, "{error}"),
    }
    let took = worked() - before;
    prop_assert!(took < HANG, "it worked {took:?}");
    Ok(())
}

proptest! {
    // Every case waits several times for the disk.
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn a_harmed_picture_is_kept_or_refused(
        name in prop::sample::select(&SAMPLES[..]),
        harms in prop::collection::vec(harm(), 1..8),
    ) {
        has_a_clear_outcome(&harmed(sample(name), &harms))?;
    }

    #[test]
    fn any_bytes_behind_a_signature_are_kept(
        head in prop::sample::select(&SIGNATURES[..]),
        rest in prop::collection::vec(any::<u8>(), 0..600),
    ) {
        has_a_clear_outcome(&[head, &rest].concat())?;
    }

    #[test]
    fn any_bytes_at_all_have_an_outcome(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        has_a_clear_outcome(&bytes)?;
    }
}

#[test]
fn a_file_of_ten_thousand_scans_is_given_up_early() {
    let mut bytes = sample("no_exif.jpg");
    let frame = bytes
        .windows(2)
        .position(|pair| pair == [0xFF, 0xC0])
        .unwrap();
    bytes[frame + 5..frame + 9].copy_from_slice(&[0x20, 0, 0x20, 0]);
    let scan = bytes
        .windows(2)
        .position(|pair| pair == [0xFF, 0xDA])
        .unwrap();
    let header = usize::from(bytes[scan + 2]) * 256 + usize::from(bytes[scan + 3]) + 2;
    let scan = bytes[scan..scan + header].to_vec();
    bytes.truncate(bytes.len() - 2);
    for _ in 0..10_000 {
        bytes.extend_from_slice(&scan);
    }
    let (_folder, album) = album();
    let before = worked();
    let photo = take_in(&album, &bytes);
    assert_eq!(photo.preview, Preview::No(NoPreview::Damaged));
    // Ten thousand passes over 67 megapixels would take an hour.
    let took = worked() - before;
    assert!(took < HANG, "it worked {took:?}");
}
