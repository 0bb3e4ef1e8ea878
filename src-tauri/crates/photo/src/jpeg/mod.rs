//! Small pictures from large JPEGs: decoding at an eighth, a quarter or half the size, so that a
//! 48-megapixel photo never lies unpacked in memory.

mod bits;
mod header;
mod huffman;
mod means;

use std::fs::File;
use std::io::{self, Cursor, Read, Seek, SeekFrom};

use image::{DynamicImage, GrayImage, RgbImage, imageops};
use jpeg_decoder::{CodingProcess, Decoder, Error, ImageInfo, PixelFormat};

use crate::preview::{MAX_PIXELS, NoPreview, THUMB_SIDE};

/// A progressive JPEG keeps every coefficient until the last scan: two bytes each, up to one per
/// pixel and component. 120 MB is what a phone can spare for one picture.
const MAX_COEFFICIENT_BYTES: u64 = 120_000_000;

/// Every scan of a JPEG walks over all its pixels and a hostile file may hold thousands of scans of
/// a few bytes. Four passes over the largest picture, or ten over 40 megapixels, is what honest files need.
const MAX_SCANNED_PIXELS: u64 = 4 * MAX_PIXELS;

/// A picture at least as large as the preview, and whether part of it is missing.
pub(crate) struct Decoded {
    pub(crate) picture: DynamicImage,
    pub(crate) damaged: bool,
}

/// Of one type whatever is read: each type of reader would bring a decoder of its own into the program, 40 kB of it.
fn decoder_of(bytes: &mut dyn Read) -> Decoder<&mut dyn Read> {
    Decoder::new(bytes)
}

/// The pixels the header promises.
pub(crate) fn size(file: &File) -> Option<(u32, u32)> {
    let mut bytes = file;
    let mut guarded = Guarded::new(&mut bytes, u64::MAX).ok()?;
    let mut decoder = decoder_of(&mut guarded);
    decoder.read_info().ok()?;
    decoder
        .info()
        .map(|info| (info.width.into(), info.height.into()))
}

/// Whether a file ends before its picture does (T.81 B.1.1.2: a picture ends with a marker).
pub(crate) fn is_cut_off(mut file: &File) -> io::Result<bool> {
    // The segments before the first scan are passed: a picture inside them has an end of its own.
    let mut scan = 2;
    loop {
        let mut head = [0; 4];
        file.seek(SeekFrom::Start(scan))?;
        file.read_exact(&mut head)?;
        match head {
            [0xFF, 0xFF, ..] => scan += 1,
            [0xFF, 0xDA, ..] => break,
            [0xFF, _, high, low] => scan += 2 + u64::from(u16::from_be_bytes([high, low])),
            _ => return Ok(false),
        }
    }
    let mut piece = vec![0; 64 * 1024];
    let mut end = file.metadata()?.len();
    while end > scan + 2 {
        let start = scan.max(end.saturating_sub(piece.len() as u64));
        let piece = &mut piece[..usize::try_from(end - start).unwrap_or(0)];
        file.seek(SeekFrom::Start(start))?;
        file.read_exact(piece)?;
        if piece.windows(2).rev().any(|pair| pair == END_OF_IMAGE) {
            return Ok(false);
        }
        // The two bytes of the marker may lie in two pieces.
        end = start + 1;
    }
    Ok(true)
}

pub(crate) fn decode(file: &File) -> Result<Decoded, NoPreview> {
    if let Some(picture) = decode_means(file) {
        return Ok(Decoded {
            picture,
            damaged: false,
        });
    }
    let mut bytes = file;
    let mut guarded = Guarded::new(&mut bytes, u64::MAX).map_err(|_| NoPreview::Damaged)?;
    match decode_until(&mut guarded) {
        // The decoder gives nothing back when it stumbles, so it is shown only what comes before the fault.
        Err(NoPreview::Damaged) if !guarded.exhausted => {
            let sound = guarded.served.saturating_sub(LOOK_AHEAD);
            let mut again = Guarded::new(&mut bytes, sound).map_err(|_| NoPreview::Damaged)?;
            decode_until(&mut again)
        }
        other => other,
    }
}

/// A small JPEG that lies in memory; none that is longer than `most_side` or that is damaged.
pub(crate) fn decode_small(jpeg: &[u8], most_side: u16) -> Option<DynamicImage> {
    let mut bytes = Cursor::new(jpeg);
    let mut guarded = Guarded::new(&mut bytes, u64::MAX).ok()?;
    let mut decoder = decoder_of(&mut guarded);
    decoder.read_info().ok()?;
    let fits = |info: ImageInfo| info.width.max(info.height) <= most_side;
    decoder.info().filter(|info| fits(*info))?;
    drop(decoder);
    guarded.restart().ok()?;
    let decoded = decode_until(&mut guarded).ok()?;
    (!decoded.damaged).then_some(decoded.picture)
}

/// The quick way, for sound baseline files so large that an eighth is enough.
fn decode_means(file: &File) -> Option<DynamicImage> {
    let (width, height) = size(file)?;
    let longer = width.max(height);
    if longer < 8 * THUMB_SIDE {
        return None;
    }
    let planes = means::read(file)?;
    let fit = |side: u32| (side * THUMB_SIDE + longer / 2) / longer;
    let (width, height) = (fit(width).max(1), fit(height).max(1));
    let mut planes = planes
        .iter()
        .map(|plane| imageops::thumbnail(plane, width, height));
    let light = planes.next()?;
    let (Some(blue), Some(red)) = (planes.next(), planes.next()) else {
        return Some(light.into());
    };
    let pixels = light.pixels().zip(blue.pixels()).zip(red.pixels());
    let pixels = pixels
        .flat_map(|((light, blue), red)| seen(light.0[0], blue.0[0], red.0[0]))
        .collect();
    RgbImage::from_raw(width, height, pixels).map(DynamicImage::ImageRgb8)
}

/// Red, green and blue from brightness and two colour differences, in 65536ths.
///
/// Source: ITU-T T.871 (JFIF), clause 7.
fn seen(light: u8, blue: u8, red: u8) -> [u8; 3] {
    let (light, blue, red) = (
        i32::from(light) << 16,
        i32::from(blue) - 128,
        i32::from(red) - 128,
    );
    let channel =
        |value: i32| u8::try_from(((value + 0x8000) >> 16).clamp(0, 255)).unwrap_or(u8::MAX);
    [
        channel(light + 91_881 * red),
        channel(light - 22_554 * blue - 46_802 * red),
        channel(light + 116_130 * blue),
    ]
}

/// The decoder fills eight bytes of bits at a time.
const LOOK_AHEAD: u64 = 16;

fn decode_until(guarded: &mut Guarded<'_>) -> Result<Decoded, NoPreview> {
    let mut decoder = decoder_of(guarded);
    decoder.read_info().map_err(reason)?;
    let info = decoder.info().ok_or(NoPreview::Damaged)?;
    let pixels = u64::from(info.width) * u64::from(info.height);
    let components = match info.pixel_format {
        PixelFormat::L8 | PixelFormat::L16 => 1,
        PixelFormat::RGB24 => 3,
        PixelFormat::CMYK32 => 4,
    };
    match info.coding_process {
        CodingProcess::DctSequential => {}
        CodingProcess::DctProgressive if pixels * components * 2 <= MAX_COEFFICIENT_BYTES => {}
        CodingProcess::DctProgressive => return Err(NoPreview::TooLarge),
        CodingProcess::Lossless => return Err(NoPreview::Unsupported),
    }
    let side = u16::try_from(THUMB_SIDE).unwrap_or(u16::MAX);
    let (width, height) = decoder.scale(side, side).map_err(reason)?;
    let bytes = usize::from(width) * usize::from(height) * 4;
    decoder.set_max_decoding_buffer_size(bytes);
    drop(decoder);

    guarded.restart().map_err(|_| NoPreview::Damaged)?;
    guarded.scans_allowed = (MAX_SCANNED_PIXELS / pixels.max(1)).max(1);
    let mut decoder = decoder_of(guarded);
    decoder.scale(side, side).map_err(reason)?;
    // The header was in order, so whatever stops the decoder now is a fault of the file.
    let data = decoder.decode().map_err(|_| NoPreview::Damaged)?;
    drop(decoder);
    let picture = match info.pixel_format {
        PixelFormat::L8 => {
            GrayImage::from_raw(width.into(), height.into(), data).map(DynamicImage::ImageLuma8)
        }
        PixelFormat::RGB24 => {
            RgbImage::from_raw(width.into(), height.into(), data).map(DynamicImage::ImageRgb8)
        }
        PixelFormat::CMYK32 => {
            let data = data
                .chunks_exact(4)
                .flat_map(|ink| [0, 1, 2].map(|i| printed(ink[i], ink[3])))
                .collect();
            RgbImage::from_raw(width.into(), height.into(), data).map(DynamicImage::ImageRgb8)
        }
        PixelFormat::L16 => None,
    };
    let picture = picture.ok_or(NoPreview::Damaged)?;
    Ok(Decoded {
        picture,
        damaged: guarded.padded,
    })
}

/// What is left of white under one ink and black.
fn printed(ink: u8, black: u8) -> u8 {
    let light = u16::from(255 - ink) * u16::from(255 - black) / 255;
    u8::try_from(light).unwrap_or(u8::MAX)
}

fn reason(error: Error) -> NoPreview {
    match error {
        Error::Unsupported(_) => NoPreview::Unsupported,
        Error::Format(_) | Error::Io(_) | Error::Internal(_) => NoPreview::Damaged,
    }
}

/// A file, or a picture that lies inside one; named as a trait, so that the decoder is compiled once.
trait Bytes: Read + Seek {}

impl<T: Read + Seek> Bytes for T {}

/// A JPEG that never ends early: where the bytes stop, end-of-image markers follow, so that the
/// decoder hands over what it has. It also counts scans and stops a file that has too many.
struct Guarded<'a> {
    bytes: &'a mut dyn Bytes,
    until: u64,
    buffer: Vec<u8>,
    at: usize,
    filled: usize,
    read: u64,
    served: u64,
    last: u8,
    scans: u64,
    scans_allowed: u64,
    padded: bool,
    exhausted: bool,
}

const END_OF_IMAGE: [u8; 2] = [0xFF, 0xD9];

impl<'a> Guarded<'a> {
    fn new(bytes: &'a mut dyn Bytes, until: u64) -> io::Result<Self> {
        let mut guarded = Self {
            bytes,
            until,
            buffer: vec![0; 64 * 1024],
            at: 0,
            filled: 0,
            read: 0,
            served: 0,
            last: 0,
            scans: 0,
            scans_allowed: u64::MAX,
            padded: false,
            exhausted: false,
        };
        guarded.restart()?;
        Ok(guarded)
    }

    fn restart(&mut self) -> io::Result<()> {
        self.bytes.rewind()?;
        (
            self.at,
            self.filled,
            self.read,
            self.served,
            self.last,
            self.scans,
        ) = (0, 0, 0, 0, 0, 0);
        self.padded = false;
        Ok(())
    }

    fn fill(&mut self) -> io::Result<()> {
        let room = usize::try_from(self.until - self.read)
            .unwrap_or(usize::MAX)
            .min(self.buffer.len());
        self.at = 0;
        self.filled = self.bytes.read(&mut self.buffer[..room])?;
        self.read += self.filled as u64;
        if self.filled == 0 {
            self.padded = true;
            self.buffer[..2].copy_from_slice(&END_OF_IMAGE);
            self.filled = 2;
            return Ok(());
        }
        let chunk = &self.buffer[..self.filled];
        let starts = |pair: &&[u8]| **pair == [0xFF, 0xDA];
        self.scans += chunk.windows(2).filter(starts).count() as u64;
        self.scans += u64::from(self.last == 0xFF && chunk[0] == 0xDA);
        self.last = chunk[self.filled - 1];
        if self.scans > self.scans_allowed {
            self.exhausted = true;
            return Err(io::Error::other("too many scans"));
        }
        Ok(())
    }
}

impl Read for Guarded<'_> {
    #[inline]
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        if self.at == self.filled {
            self.fill()?;
        }
        let count = into.len().min(self.filled - self.at);
        into[..count].copy_from_slice(&self.buffer[self.at..self.at + count]);
        self.at += count;
        self.served += count as u64;
        Ok(count)
    }
}
