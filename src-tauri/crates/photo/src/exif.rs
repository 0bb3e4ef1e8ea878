//! What a picture says about itself: time, place, orientation.

use std::io::{BufRead, Seek, SeekFrom};

use chrono::{FixedOffset, NaiveDate, NaiveDateTime};
use exif::{DateTime, Exif, In, Reader, Tag, Value};
use image::metadata::Orientation;

/// When the picture was taken, as the camera's clock showed it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The time on the camera's clock.
    pub local: NaiveDateTime,
    /// Its offset from UTC. Most cameras do not write one; then the zone is not known from the picture.
    pub offset: Option<FixedOffset>,
}

/// Where the picture was taken, in degrees of WGS 84, north and east positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Latitude, -90 to 90.
    pub lat: f64,
    /// Longitude, -180 to 180.
    pub lon: f64,
}

#[derive(Clone, Debug)]
pub(crate) struct Facts {
    pub(crate) taken: Option<Taken>,
    pub(crate) place: Option<Place>,
    pub(crate) orientation: Orientation,
    pub(crate) width: Option<u32>,
    pub(crate) height: Option<u32>,
}

impl Facts {
    const NONE: Self = Self {
        taken: None,
        place: None,
        orientation: Orientation::NoTransforms,
        width: None,
        height: None,
    };

    /// Whether width and height change places when the picture is set upright.
    pub(crate) fn lies_sideways(&self) -> bool {
        use Orientation::{Rotate90, Rotate90FlipH, Rotate270, Rotate270FlipH};
        matches!(
            self.orientation,
            Rotate90 | Rotate90FlipH | Rotate270 | Rotate270FlipH
        )
    }
}

/// What cameras write about a picture is a few kilobytes long, with a preview some hundred. Every
/// twelve bytes of a directory become a field of several times their size.
const LONGEST: u64 = 2_000_000;

/// Reads what can be read; a field that cannot is as if it were absent.
pub(crate) fn read(from: &mut (impl BufRead + Seek)) -> Facts {
    let Some(exif) = parsed(from) else {
        return Facts::NONE;
    };
    Facts {
        taken: taken(&exif, Tag::DateTimeOriginal, Tag::OffsetTimeOriginal)
            .or_else(|| taken(&exif, Tag::DateTimeDigitized, Tag::OffsetTimeDigitized)),
        place: place(&exif),
        orientation: uint(&exif, Tag::Orientation)
            .and_then(|value| u8::try_from(value).ok())
            .and_then(Orientation::from_exif)
            .unwrap_or(Orientation::NoTransforms),
        width: uint(&exif, Tag::PixelXDimension).or_else(|| uint(&exif, Tag::ImageWidth)),
        height: uint(&exif, Tag::PixelYDimension).or_else(|| uint(&exif, Tag::ImageLength)),
    }
}

/// The small JPEG that a camera may write into EXIF beside the picture, turned as the picture is
/// (Exif 2.32, 4.5.5: the first thumbnail).
pub(crate) fn thumbnail(from: &mut (impl BufRead + Seek)) -> Option<Vec<u8>> {
    let exif = parsed(from)?;
    let number = |tag| {
        let value = &exif.get_field(tag, In::THUMBNAIL)?.value;
        usize::try_from(value.get_uint(0)?).ok()
    };
    let start = number(Tag::JPEGInterchangeFormat)?;
    let end = start.checked_add(number(Tag::JPEGInterchangeFormatLength)?)?;
    exif.buf().get(start..end).map(<[u8]>::to_vec)
}

fn parsed(from: &mut (impl BufRead + Seek)) -> Option<Exif> {
    if !is_short(from).unwrap_or(false) || from.rewind().is_err() {
        return None;
    }
    // Strict reading would lose the date to one bad field elsewhere.
    Reader::new()
        .continue_on_error(true)
        .read_from_container(from)
        .or_else(|error| error.distill_partial_result(|_| {}))
        .ok()
}

/// Whether what a file says about itself is no longer than it ever is. A JPEG cannot hold more than
/// 64 kB of it; the directories of a TIFF, the chunk of a PNG or a WebP and the boxes of a HEIC can.
fn is_short(from: &mut (impl BufRead + Seek)) -> std::io::Result<bool> {
    let mut head = [0; 12];
    from.read_exact(&mut head)?;
    let (little, big) = (u32::from_le_bytes, u32::from_be_bytes);
    match &head {
        [b'I', b'I', ..] | [b'M', b'M', ..] => {
            let is_little = head[0] == b'I';
            let number = |four: [u8; 4]| if is_little { little(four) } else { big(four) };
            let mut next = number([head[4], head[5], head[6], head[7]]);
            let mut length = 0;
            while next != 0 && length <= LONGEST {
                from.seek(SeekFrom::Start(next.into()))?;
                let mut two = [0; 2];
                from.read_exact(&mut two)?;
                let entries = if is_little {
                    u16::from_le_bytes(two)
                } else {
                    u16::from_be_bytes(two)
                };
                // Each directory counts, so that a chain that leads in circles ends too.
                length += 6 + 12 * u64::from(entries);
                from.seek_relative(12 * i64::from(entries))?;
                next = number(four(from)?);
            }
            Ok(length <= LONGEST)
        }
        [0x89, b'P', b'N', b'G', ..] => {
            from.seek(SeekFrom::Start(8))?;
            while let Ok(length) = four(from).map(big) {
                if &four(from)? == b"eXIf" {
                    return Ok(u64::from(length) <= LONGEST);
                }
                from.seek_relative(i64::from(length) + 4)?;
            }
            Ok(true)
        }
        [b'R', b'I', b'F', b'F', ..] => {
            while let Ok(name) = four(from) {
                let length = four(from).map(little)?;
                if &name == b"EXIF" {
                    return Ok(u64::from(length) <= LONGEST);
                }
                from.seek_relative(i64::from(length) + i64::from(length % 2))?;
            }
            Ok(true)
        }
        _ => Ok(true),
    }
}

fn four(from: &mut impl BufRead) -> std::io::Result<[u8; 4]> {
    let mut bytes = [0; 4];
    from.read_exact(&mut bytes)?;
    Ok(bytes)
}

fn uint(exif: &Exif, tag: Tag) -> Option<u32> {
    exif.get_field(tag, In::PRIMARY)?.value.get_uint(0)
}

fn ascii(exif: &Exif, tag: Tag) -> Option<&[u8]> {
    match &exif.get_field(tag, In::PRIMARY)?.value {
        Value::Ascii(lines) => lines.first().map(Vec::as_slice),
        _ => None,
    }
}

fn taken(exif: &Exif, time: Tag, offset: Tag) -> Option<Taken> {
    let mut at = DateTime::from_ascii(ascii(exif, time)?).ok()?;
    let local = NaiveDate::from_ymd_opt(at.year.into(), at.month.into(), at.day.into())?
        .and_hms_opt(at.hour.into(), at.minute.into(), at.second.into())?;
    // Year 0 is how a camera without a set clock fills the field.
    if at.year == 0 {
        return None;
    }
    let offset = ascii(exif, offset)
        .and_then(|text| at.parse_offset(text).ok())
        .and(at.offset)
        .and_then(|minutes| FixedOffset::east_opt(i32::from(minutes) * 60));
    Some(Taken { local, offset })
}

fn place(exif: &Exif) -> Option<Place> {
    let lat = degrees(exif, Tag::GPSLatitude)? * side(exif, Tag::GPSLatitudeRef, b'N', b'S')?;
    let lon = degrees(exif, Tag::GPSLongitude)? * side(exif, Tag::GPSLongitudeRef, b'E', b'W')?;
    // Cameras without a fix write zero for both; that point lies in the open sea.
    let known = lat != 0.0 || lon != 0.0;
    (known && lat.abs() <= 90.0 && lon.abs() <= 180.0).then_some(Place { lat, lon })
}

fn degrees(exif: &Exif, tag: Tag) -> Option<f64> {
    let Value::Rational(parts) = &exif.get_field(tag, In::PRIMARY)?.value else {
        return None;
    };
    let mut sum = 0.0;
    for (part, per_degree) in parts.iter().zip([1.0, 60.0, 3600.0]) {
        // A camera that gives minutes with decimals may leave the seconds as 0/0.
        if part.num != 0 || part.denom != 0 {
            sum += part.to_f64() / per_degree;
        }
    }
    (!parts.is_empty() && sum.is_finite()).then_some(sum)
}

fn side(exif: &Exif, tag: Tag, positive: u8, negative: u8) -> Option<f64> {
    match ascii(exif, tag)?.first()? {
        letter if *letter == positive => Some(1.0),
        letter if *letter == negative => Some(-1.0),
        _ => None,
    }
}
