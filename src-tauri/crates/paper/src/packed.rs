//! What the code on a recipe's card holds: the recipe itself, packed small enough for a phone to read.
//!
//! `trugbook:recipe/1/` and base 32 (RFC 4648, without padding) of four bytes of CRC-32 (ISO-HDLC, big-endian) of the
//! text and the text itself as raw DEFLATE (RFC 1951). Base 32 is of the letters that a QR code packs closest. What the
//! text says is the caller's to know; what comes from a code is a stranger's, so it is bounded before it is unpacked.

use message::{Refusal, say};
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::decompress_to_vec_with_limit;

use crate::link::SCHEME;
use crate::page::{Mark, Page};
use crate::{qr, svg};

const PATH: &str = "recipe/";
/// The version of what follows.
const VERSION: &str = "1";
/// The largest code that a card bears, by the version of the symbol (ISO/IEC 18004): 77 modules across.
const LARGEST_VERSION: usize = 15;
/// The characters of the largest code, with some for the blanks and breaks of whoever pastes it.
const LONGEST_LINK: usize = 1000;
/// More than any text that fits in the largest code unpacks to, unless it was made to burst.
const LONGEST_TEXT: usize = 4096;
const LETTERS: &[u8; 32] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

/// The link that holds a text; nothing where it would need a code too large to read easily.
#[must_use]
pub fn link_of(text: &str) -> Option<String> {
    let mut bytes = crc32fast::hash(text.as_bytes()).to_be_bytes().to_vec();
    bytes.extend(compress_to_vec(text.as_bytes(), 10));
    let link = format!("{SCHEME}:{PATH}{VERSION}/{}", written(&bytes));
    (text.len() <= LONGEST_TEXT && version_of(&link)? <= LARGEST_VERSION).then_some(link)
}

/// The version of the QR code that a link needs at level M, 1 to 40.
#[must_use]
pub fn version_of(link: &str) -> Option<usize> {
    qr::encode(link).map(|modules| (modules.side - 17) / 4)
}

/// The code alone as an SVG file with its white around it, for a screen that another phone reads; titled `name`.
#[must_use]
pub fn svg_of(link: &str, name: &str) -> Option<String> {
    const MODULE_MM: f64 = 1.0;
    // ISO/IEC 18004 asks for four modules of white around the code.
    const QUIET_MM: f64 = 4.0 * MODULE_MM;
    let modules = qr::encode(link)?;
    let side = modules.side as f64 * MODULE_MM + 2.0 * QUIET_MM;
    let mut page = Page::new(side, side);
    page.marks.push(Mark::Code {
        x: QUIET_MM,
        y: QUIET_MM,
        module: MODULE_MM,
        modules,
    });
    Some(svg::write(&page, name))
}

/// The text that a link holds.
///
/// # Errors
/// A link that holds none, is too long, of a later version, damaged, or bursts when it is unpacked.
pub fn text_in(link: &str) -> Result<String, Refusal> {
    let refused = |message| Refusal::new("text", message);
    if link.len() > LONGEST_LINK {
        return Err(refused(say!("code-too-long")));
    }
    let path = path_of(link).ok_or_else(|| refused(say!("code-holds-no-recipe")))?;
    let damaged = || refused(say!("code-damaged"));
    let (version, packed) = path.split_once('/').ok_or_else(damaged)?;
    if version != VERSION {
        let is_number = !version.is_empty() && version.bytes().all(|byte| byte.is_ascii_digit());
        return Err(match is_number {
            true => refused(say!("code-of-a-later-version")),
            false => damaged(),
        });
    }
    let bytes = read(packed).ok_or_else(damaged)?;
    let (sum, packed) = bytes.split_at_checked(4).ok_or_else(damaged)?;
    let text = decompress_to_vec_with_limit(packed, LONGEST_TEXT).map_err(|_| damaged())?;
    if sum != crc32fast::hash(&text).to_be_bytes() {
        return Err(damaged());
    }
    String::from_utf8(text).map_err(|_| damaged())
}

/// What stands behind `trugbook:recipe/`; a phone may say the scheme in capitals or with slashes.
fn path_of(text: &str) -> Option<&str> {
    let (scheme, rest) = text.trim().split_once(':')?;
    let rest = rest.trim_start_matches('/');
    let is_ours =
        scheme.eq_ignore_ascii_case(SCHEME) && rest.get(..PATH.len())?.eq_ignore_ascii_case(PATH);
    is_ours.then(|| &rest[PATH.len()..])
}

/// Bytes as base 32.
fn written(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 8 / 5 + 1);
    let (mut held, mut bits) = (0_u32, 0_u32);
    for byte in bytes {
        held = held << 8 | u32::from(*byte);
        bits += 8;
        while bits >= 5 {
            bits -= 5;
            text.push(char::from(LETTERS[(held >> bits & 31) as usize]));
        }
        held &= (1 << bits) - 1;
    }
    if bits > 0 {
        text.push(char::from(LETTERS[(held << (5 - bits) & 31) as usize]));
    }
    text
}

/// Base 32 as bytes; blanks and breaks of whoever pasted it are passed over.
fn read(text: &str) -> Option<Vec<u8>> {
    let (mut held, mut bits) = (0_u32, 0_u32);
    let mut bytes = Vec::with_capacity(text.len() * 5 / 8);
    for letter in text.bytes().filter(|byte| !byte.is_ascii_whitespace()) {
        let letter = letter.to_ascii_uppercase();
        let value = LETTERS.iter().position(|it| *it == letter)?;
        held = held << 5 | value as u32;
        bits += 5;
        if bits >= 8 {
            bits -= 8;
            bytes.push((held >> bits & 255) as u8);
        }
        held &= (1 << bits) - 1;
    }
    // What is left over is filling, and filling is nothing.
    (held == 0 && bits < 5).then_some(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(link: &str) -> String {
        text_in(link).unwrap_err().message.id().to_owned()
    }

    /// A link whose sum is right, around bytes that no writer of ours makes.
    fn around(sum: u32, packed: &[u8]) -> String {
        let bytes = [&sum.to_be_bytes(), packed].concat();
        format!("trugbook:recipe/1/{}", written(&bytes))
    }

    #[test]
    fn base_32_is_that_of_the_standard() {
        // RFC 4648, section 10, without its padding.
        for (plain, coded) in [
            ("", ""),
            ("f", "MY"),
            ("fo", "MZXQ"),
            ("foo", "MZXW6"),
            ("foob", "MZXW6YQ"),
            ("fooba", "MZXW6YTB"),
            ("foobar", "MZXW6YTBOI"),
        ] {
            assert_eq!(written(plain.as_bytes()), coded);
            assert_eq!(read(coded).unwrap(), plain.as_bytes());
        }
        for no in ["M", "MZ0Q", "MZX", "MR", "MZ=Q", "MÄ"] {
            assert_eq!(read(no), None, "{no}");
        }
    }

    #[test]
    fn what_is_packed_is_unpacked_however_it_was_pasted() {
        let text = r#"["Zitronenmelisse, kräftig","tincture-fresh"]"#;
        let link = link_of(text).unwrap();
        let (head, body) = link.split_at(30);
        for link in [
            link.clone(),
            link.to_lowercase(),
            link.to_uppercase(),
            link.replace("trugbook:", "Trugbook://"),
            format!("  {head}\n {body}\r\n"),
        ] {
            assert_eq!(text_in(&link).unwrap(), text, "{link}");
        }
    }

    #[test]
    fn one_wrong_letter_is_noticed_wherever_it_stands() {
        let link = link_of(r#"["Sage in honey","honey-syrup"]"#).unwrap();
        let start = "trugbook:recipe/1/".len();
        for at in start..link.len() {
            let mut bytes = link.clone().into_bytes();
            bytes[at] = if bytes[at] == b'A' { b'B' } else { b'A' };
            let wrong = String::from_utf8(bytes).unwrap();
            assert_eq!(said(&wrong), "code-damaged", "letter {at}");
            assert_eq!(said(&link[..at]), "code-damaged", "cut at {at}");
        }
    }

    #[test]
    fn a_bomb_is_never_unpacked() {
        let burst = vec![b' '; 400_000];
        let link = around(crc32fast::hash(&burst), &compress_to_vec(&burst, 10));
        assert!(
            link.len() < LONGEST_LINK,
            "it looks like any other: {}",
            link.len()
        );
        assert_eq!(said(&link), "code-damaged");
    }

    #[test]
    fn what_is_no_code_of_ours_is_told_apart() {
        for (link, why) in [
            ("", "code-holds-no-recipe"),
            ("trugbook:lot/tavo-472", "code-holds-no-recipe"),
            ("https://example.org/recipe/1/AAAA", "code-holds-no-recipe"),
            ("trugbook:recipe/", "code-damaged"),
            ("trugbook:recipe/1/", "code-damaged"),
            ("trugbook:recipe/x/AAAA", "code-damaged"),
            ("trugbook:recipe/2/AAAA", "code-of-a-later-version"),
        ] {
            assert_eq!(said(link), why, "{link}");
        }
        let long = format!("trugbook:recipe/1/{}", "A".repeat(LONGEST_LINK));
        assert_eq!(said(&long), "code-too-long");
        let no_text = around(
            crc32fast::hash(&[0xff, 0xfe]),
            &compress_to_vec(&[0xff, 0xfe], 6),
        );
        assert_eq!(said(&no_text), "code-damaged");
    }

    #[test]
    fn a_text_too_long_for_an_easy_code_gets_none() {
        // Digits that do not pack, so that the length alone decides.
        let mut state = 7_u32;
        let mut noise = |length: usize| -> String {
            let letters = std::iter::repeat_with(|| {
                state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                char::from(LETTERS[(state >> 27) as usize])
            });
            letters.take(length).collect()
        };
        let fits = link_of(&noise(400)).unwrap();
        assert!(version_of(&fits).unwrap() <= 15);
        assert_eq!(link_of(&noise(900)), None);
    }
}
