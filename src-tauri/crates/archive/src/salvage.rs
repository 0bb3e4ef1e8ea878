//! What can still be found in a file whose list of entries cannot be read, or whose end is missing.
//!
//! Each entry has a header of its own before its bytes, and its size and CRC-32 after them (APPNOTE
//! 4.3.7 and 4.3.9). So a file of ours can be walked from its beginning. Nothing is believed of a
//! header but its name, which must be one of ours.

use std::io::{BufReader, Read, Seek, SeekFrom};

use crate::manifest::is_plain;
use crate::sealed::Input;
use crate::unpack::{Place, Proof};
use crate::{Entry, Failure, Progress, manifest};

/// APPNOTE 4.3.7: what an entry begins with, and the length of its header without name and extra.
const LOCAL: &[u8] = b"PK\x03\x04";
const LOCAL_LENGTH: usize = 30;
/// APPNOTE 4.3.9: what stands after its bytes.
const AFTER: &[u8] = b"PK\x07\x08";
/// The longest name of ours with the longest field after it.
const NAMED: usize = 256;
const PIECE: usize = 1 << 20;

/// Walks the file; every entry that was found with its place, in order.
pub(crate) fn walk(
    input: &mut BufReader<Input>,
    length: u64,
    most: u64,
    progress: &Progress,
) -> Result<Vec<(Entry, Place)>, Failure> {
    let mut found: Vec<(Entry, Place)> = Vec::new();
    progress.expect(length);
    // The entry whose end is not known yet: its name and where its bytes begin.
    let mut open: Option<(String, u64)> = None;
    let overlap = (LOCAL_LENGTH + NAMED) as u64;
    let mut from = 0;
    while from < length && (found.len() as u64) < most {
        input.seek(SeekFrom::Start(from))?;
        let mut piece = Vec::new();
        input
            .by_ref()
            .take(PIECE as u64 + overlap)
            .read_to_end(&mut piece)?;
        let mut skip = 0;
        for at in memchr(&piece, PIECE) {
            if at < skip {
                continue;
            }
            let rest = &piece[at..];
            let place = from + at as u64;
            if rest.starts_with(AFTER) {
                if let Some((name, begin)) = &open
                    && let Some(crc) = ended(rest, place - begin)
                {
                    found.push(entry(name, *begin, place - begin, Some(crc)));
                    open = None;
                }
            } else if let Some((name, header)) = begun(rest) {
                // The end of the one before was not found: what lies between may be all of it or not.
                if let Some((name, begin)) = open.take() {
                    found.push(entry(&name, begin, place - begin, None));
                }
                skip = at + header;
                open = Some((name, place + header as u64));
            }
        }
        progress.advance(piece.len().min(PIECE) as u64)?;
        from += PIECE as u64;
    }
    if let Some((name, begin)) = open {
        found.push(entry(&name, begin, length - begin, None));
    }
    found.retain(|(entry, _)| entry.name != manifest::NAME);
    let mut names = std::collections::BTreeSet::new();
    found.retain(|(entry, _)| names.insert(entry.name.clone()));
    Ok(found)
}

/// The places of "PK" that begin before `end`.
fn memchr(piece: &[u8], end: usize) -> impl Iterator<Item = usize> {
    (0..piece.len().saturating_sub(3).min(end)).filter(|at| piece[*at..].starts_with(b"PK"))
}

fn entry(name: &str, begin: u64, bytes: u64, crc: Option<u32>) -> (Entry, Place) {
    // A photo bears its hash as its name.
    let hash = name.strip_prefix("photos/").and_then(|path| {
        let hash = path.get(3..67)?;
        hash.bytes()
            .all(|byte| byte.is_ascii_hexdigit())
            .then(|| hash.to_owned())
    });
    let proof = match (&hash, crc) {
        (Some(hash), _) => Proof::Hash(hash.clone()),
        (None, Some(crc)) => Proof::Crc(crc),
        (None, None) => Proof::None,
    };
    let entry = Entry {
        name: name.to_owned(),
        bytes,
        blake3: hash.unwrap_or_default(),
    };
    (
        entry,
        Place {
            begin,
            bytes,
            proof,
        },
    )
}

/// The name in a header of ours, and the length of the header.
fn begun(rest: &[u8]) -> Option<(String, usize)> {
    if !rest.starts_with(LOCAL) || rest.len() < LOCAL_LENGTH {
        return None;
    }
    let short = |at: usize| usize::from(u16::from_le_bytes([rest[at], rest[at + 1]]));
    let (method, name, extra) = (short(8), short(26), short(28));
    let whole = LOCAL_LENGTH + name + extra;
    let name = std::str::from_utf8(rest.get(LOCAL_LENGTH..LOCAL_LENGTH + name)?).ok()?;
    (method == 0 && is_plain(name) && whole <= rest.len()).then(|| (name.to_owned(), whole))
}

/// The CRC-32 after an entry of `bytes` bytes, if this is what stands there.
fn ended(rest: &[u8], bytes: u64) -> Option<u32> {
    let number = |at: usize, count: usize| {
        let digits = rest.get(at..at + count)?;
        Some(
            digits
                .iter()
                .rev()
                .fold(0_u64, |sum, digit| sum << 8 | u64::from(*digit)),
        )
    };
    let crc = u32::try_from(number(4, 4)?).ok()?;
    let short = number(8, 4) == Some(bytes) && number(12, 4) == Some(bytes);
    let long = number(8, 8) == Some(bytes) && number(16, 8) == Some(bytes);
    (short || long).then_some(crc)
}
