//! A copy of a picture without what it says about itself, but for how it is to be turned.
//!
//! A camera writes the place into EXIF, and some write it a second time into
//! XMP, into a maker's note, or into a film behind the picture. Only what is
//! needed to see the picture is therefore copied; everything else is left out.

use crate::exif;
use std::io::Cursor;

/// A copy of a picture that tells neither place nor time nor camera, with the same pixels; `None`
/// for kinds of file of which that is not known for certain (all but JPEG and PNG), and for a
/// file that cannot be followed to its end.
pub fn without_place(original: &[u8]) -> Option<Vec<u8>> {
    let copy = match original {
        [0xFF, 0xD8, ..] => jpeg(original)?,
        [0x89, b'P', b'N', b'G', ..] => png(original)?,
        _ => return None,
    };
    let told = exif::read(&mut Cursor::new(&copy));
    (told.place.is_none() && told.taken.is_none()).then_some(copy)
}

/// ITU-T T.81, B.1.1: segments up to the scan, scans of entropy-coded bytes, the end.
fn jpeg(from: &[u8]) -> Option<Vec<u8>> {
    let orientation = exif::read(&mut Cursor::new(from)).orientation;
    let mut copy = vec![0xFF, 0xD8];
    let mut turned = Some(app1(orientation.to_exif()));
    let mut at = 2;
    loop {
        if *from.get(at)? != 0xFF {
            return None;
        }
        let marker = *from.get(at + 1)?;
        match marker {
            // Filling before a marker.
            0xFF => at += 1,
            0xD9 => {
                copy.extend([0xFF, 0xD9]);
                return Some(copy);
            }
            0x01 | 0xD0..=0xD7 => return None,
            _ => {
                let length =
                    usize::from(u16::from_be_bytes([*from.get(at + 2)?, *from.get(at + 3)?]));
                let segment = from.get(at..at + 2 + length).filter(|_| length >= 2)?;
                at += segment.len();
                // JFIF comes first and the turning second, as readers expect them.
                if marker != 0xE0
                    && let Some(turned) = turned.take()
                {
                    copy.extend(turned);
                }
                if is_needed(marker, &segment[4..]) {
                    copy.extend_from_slice(segment);
                }
                if marker == 0xDA {
                    let scan = scan_length(&from[at..])?;
                    copy.extend_from_slice(&from[at..at + scan]);
                    at += scan;
                }
            }
        }
    }
}

/// Tables, frames and scans; JFIF, a colour profile, and how Adobe coded the colours.
fn is_needed(marker: u8, body: &[u8]) -> bool {
    match marker {
        0xE0 => body.starts_with(b"JFIF\0"),
        0xE2 => body.starts_with(b"ICC_PROFILE\0"),
        0xEE => body.starts_with(b"Adobe"),
        0xE0..=0xEF | 0xFE => false,
        _ => true,
    }
}

/// Up to the next marker that is neither a stuffed zero nor a restart.
fn scan_length(from: &[u8]) -> Option<usize> {
    from.windows(2)
        .position(|pair| pair[0] == 0xFF && !matches!(pair[1], 0 | 0xFF | 0xD0..=0xD7))
}

/// EXIF with the orientation and nothing else (TIFF 6.0: one directory with one short).
fn app1(orientation: u8) -> Vec<u8> {
    let mut segment = vec![0xFF, 0xE1, 0, 34];
    segment.extend(b"Exif\0\0MM\0\x2A\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0");
    segment.extend([orientation, 0, 0, 0, 0, 0, 0]);
    segment
}

/// PNG third edition, 5: chunks of a length, a name, the data and a check. A name whose first
/// letter is a capital is needed; of the others only those that tell of colours are copied.
fn png(from: &[u8]) -> Option<Vec<u8>> {
    let mut copy = from.get(..8)?.to_vec();
    let mut at = 8;
    loop {
        let head = from.get(at..at + 8)?;
        let length = usize::try_from(u32::from_be_bytes(head[..4].try_into().ok()?)).ok()?;
        let chunk = from.get(at..at.checked_add(length)?.checked_add(12)?)?;
        let name = &head[4..];
        let of_colour = [
            b"tRNS", b"gAMA", b"cHRM", b"sRGB", b"iCCP", b"sBIT", b"cICP",
        ];
        if name[0].is_ascii_uppercase() || of_colour.iter().any(|known| name == *known) {
            copy.extend_from_slice(chunk);
        }
        if name == b"IEND" {
            return Some(copy);
        }
        at += chunk.len();
    }
}
