//! Upright previews, made without ever unpacking more than memory allows.

use message::{Argument, Message, say};
use std::fs::File;
use std::io::{BufReader, Seek};

use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{
    DynamicImage, GenericImageView, ImageDecoder, ImageFormat, ImageReader, Limits, Rgb, RgbImage,
    imageops,
};
use jpeg_encoder::{ColorType, Encoder};

use crate::{Kind, exif, jpeg};

/// The longer side of a preview in pixels.
pub const THUMB_SIDE: u32 = 480;

/// The most pixels a picture may have to be unpacked: 100 megapixels.
pub const MAX_PIXELS: u64 = 100_000_000;

/// A PNG cannot be unpacked at a smaller size, so its pixels are bounded in bytes.
const MAX_PNG_BYTES: u64 = 96_000_000;
/// Nor can a WebP, which is held up to three times while it is unpacked.
const MAX_WEBP_BYTES: u64 = 48_000_000;
/// What else a PNG may bring, such as a packed colour profile: the decoder holds all of it in memory.
const MAX_BESIDE: u64 = 16_000_000;

const QUALITY: u8 = 80;

/// Whether there is a preview.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Preview {
    /// Of the whole picture.
    Whole,
    /// Of a picture that is cut off or damaged: part of it may be missing.
    Part,
    /// There is none.
    No(NoPreview),
}

/// Why there is no preview. The original is kept all the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPreview {
    /// Nothing of it can be read.
    Damaged,
    /// More pixels, or more memory, than is unpacked at once.
    TooLarge,
    /// A kind of picture, or a coding of it, that is not unpacked here.
    Unsupported,
}

impl Preview {
    /// Whether [`crate::Album::thumb`] has something to show.
    pub fn exists(self) -> bool {
        !matches!(self, Self::No(_))
    }

    /// What is wrong with it, as the word that the journal keeps and [`told`] says; `None` where all is well.
    pub fn note(self, kind: Kind) -> Option<String> {
        let word = match self {
            Self::Whole => return None,
            Self::Part => "part-missing",
            Self::No(NoPreview::Damaged) => "damaged",
            Self::No(NoPreview::TooLarge) => "too-many-pixels",
            Self::No(NoPreview::Unsupported) => return Some(format!("{OF_A_KIND}{}", kind.name())),
        };
        Some(word.to_owned())
    }
}

/// Leads the kind of a picture that is not shown.
const OF_A_KIND: &str = "of-a-kind: ";

/// What the maker should know by the word of [`Preview::note`]; what an earlier version wrote in its place stays.
pub fn told(note: &str) -> Message {
    match note {
        "part-missing" => say!("photo-part-missing"),
        "damaged" => say!("photo-damaged"),
        "too-many-pixels" => say!("photo-too-many-pixels"),
        other => match other.strip_prefix(OF_A_KIND) {
            Some(kind) => say!("photo-of-a-kind", kind = Argument::own(kind)),
            None => Message::own(other),
        },
    }
}

/// The pixels the header promises, as stored.
pub(crate) fn size(kind: Kind, file: &File) -> Option<(u32, u32)> {
    match kind {
        Kind::Jpeg => jpeg::size(file),
        Kind::Png | Kind::WebP => reader(kind, file)?.into_dimensions().ok(),
        Kind::Heic | Kind::Avif | Kind::Tiff | Kind::Gif => None,
    }
}

/// Whether header and end of a file promise a preview of the whole picture. A fault in between is
/// found by [`make`] alone.
pub(crate) fn seems_whole(kind: Kind, size: Option<(u32, u32)>, file: &File) -> bool {
    let fits = |(width, height)| u64::from(width) * u64::from(height) <= MAX_PIXELS;
    let ends = kind != Kind::Jpeg || jpeg::is_cut_off(file).is_ok_and(|cut| !cut);
    size.is_some_and(|size: (u32, u32)| fits(size)) && ends
}

/// An upright JPEG of at most [`THUMB_SIDE`] pixels a side, and whether part of the picture is missing.
pub(crate) fn make(
    kind: Kind,
    size: Option<(u32, u32)>,
    orientation: Orientation,
    file: &File,
) -> Result<(Vec<u8>, bool), NoPreview> {
    if size.is_some_and(|(width, height)| u64::from(width) * u64::from(height) > MAX_PIXELS) {
        return Err(NoPreview::TooLarge);
    }
    let (picture, damaged) = match kind {
        Kind::Jpeg => {
            let decoded = jpeg::decode(file)?;
            (decoded.picture, decoded.damaged)
        }
        Kind::Png | Kind::WebP => (decode_whole(kind, file)?, false),
        Kind::Heic | Kind::Avif => (embedded(file).ok_or(NoPreview::Unsupported)?, false),
        Kind::Tiff | Kind::Gif => return Err(NoPreview::Unsupported),
    };
    let mut small = shrink(picture);
    small.apply_orientation(orientation);
    let mut bytes = Vec::new();
    let small = on_white(&small);
    let side = |pixels: u32| u16::try_from(pixels).map_err(|_| NoPreview::TooLarge);
    let (width, height) = (side(small.width())?, side(small.height())?);
    Encoder::new(&mut bytes, QUALITY)
        .encode(small.as_raw(), width, height, ColorType::Rgb)
        .map_err(|_| NoPreview::Unsupported)?;
    Ok((bytes, damaged))
}

fn reader(kind: Kind, file: &File) -> Option<ImageReader<BufReader<&File>>> {
    let mut start = file;
    start.rewind().ok()?;
    let format = if kind == Kind::Png {
        ImageFormat::Png
    } else {
        ImageFormat::WebP
    };
    let mut reader = ImageReader::with_format(BufReader::new(file), format);
    let mut limits = Limits::default();
    // The decoder of PNG takes this for everything but the pixels, whose bytes are judged before they are unpacked.
    limits.max_alloc = Some(MAX_BESIDE);
    reader.limits(limits);
    Some(reader)
}

/// What the picture itself is coded in is not unpacked here, but many cameras put a small JPEG beside it.
fn embedded(file: &File) -> Option<DynamicImage> {
    const MOST_SIDE: u16 = 2048;
    let mut from = BufReader::new(file);
    from.rewind().ok()?;
    jpeg::decode_small(&exif::thumbnail(&mut from)?, MOST_SIDE)
}

fn decode_whole(kind: Kind, file: &File) -> Result<DynamicImage, NoPreview> {
    let mut decoder = reader(kind, file)
        .ok_or(NoPreview::Damaged)?
        .into_decoder()
        .map_err(reason)?;
    let most = if kind == Kind::Png {
        MAX_PNG_BYTES
    } else {
        MAX_WEBP_BYTES
    };
    if decoder.total_bytes() > most {
        return Err(NoPreview::TooLarge);
    }
    let mut limits = Limits::default();
    limits.max_alloc = Some(2 * most);
    decoder.set_limits(limits).map_err(reason)?;
    DynamicImage::from_decoder(decoder).map_err(reason)
}

fn reason(error: image::ImageError) -> NoPreview {
    match error {
        image::ImageError::Limits(_) => NoPreview::TooLarge,
        image::ImageError::Unsupported(_) => NoPreview::Unsupported,
        _ => NoPreview::Damaged,
    }
}

/// Never enlarges.
fn shrink(picture: DynamicImage) -> DynamicImage {
    let (width, height) = picture.dimensions();
    let longer = width.max(height);
    if longer <= THUMB_SIDE {
        return picture;
    }
    // Averaging first keeps the finer filter cheap on pictures that came whole.
    let picture = if longer > 4 * THUMB_SIDE {
        picture.thumbnail(2 * THUMB_SIDE, 2 * THUMB_SIDE)
    } else {
        picture
    };
    picture.resize(THUMB_SIDE, THUMB_SIDE, FilterType::Triangle)
}

/// JPEG knows no transparency; what was see-through becomes paper.
fn on_white(picture: &DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.to_rgb8();
    }
    let mut paper = DynamicImage::ImageRgb8(RgbImage::from_pixel(
        picture.width(),
        picture.height(),
        Rgb([255; 3]),
    ));
    imageops::overlay(&mut paper, picture, 0, 0);
    paper.into_rgb8()
}
