//! Files of up to 64 MB, each made to cost as much as its kind allows.

use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use archive::{Packer, Progress};
use checks::Random;
use chrono::DateTime;
use disk::Disk;
use image::codecs::png::PngEncoder;
use image::{DynamicImage, ImageEncoder as _, ImageFormat, RgbaImage};
use journal::{Act, Change, Deed, DeedId, DeviceId, HybridTime, Noun};
use serde_json::json;
use store::{Failure, Store};
use uuid::Uuid;

/// A file, and the ways by which it comes in.
pub struct Hostile {
    pub name: &'static str,
    pub ways: &'static [&'static str],
    pub write: fn(&Path),
}

const PHOTO: &[&str] = &["photo"];
const AT_ONCE: &[&str] = &["photo.at_once"];
const BACKUP: &[&str] = &["restore.look", "restore.apply", "merge.look", "merge.apply"];
const TABLE: &[&str] = &["import.look", "import.apply"];
/// A little under the largest photo that is taken in.
const LARGE: usize = 63_900_000;

pub fn all() -> Vec<Hostile> {
    let file = |name, ways, write| Hostile { name, ways, write };
    vec![
        file("noise behind the signature of a JPEG", PHOTO, noisy_jpeg),
        file("a JPEG of 100 megapixels of noise", PHOTO, large_jpeg),
        file(
            "a progressive JPEG of 100 megapixels",
            PHOTO,
            progressive_jpeg,
        ),
        file("a JPEG of nothing but EXIF", PHOTO, exif_jpeg),
        file(
            "an EXIF whose pointers lead in circles",
            PHOTO,
            circling_exif,
        ),
        file("a TIFF of entries alone", PHOTO, tiff_of_entries),
        file("a TIFF of pointers to one list", PHOTO, tiff_of_pointers),
        file("a PNG as large as is unpacked", PHOTO, large_png),
        file(
            "a PNG whose colour profile unpacks to 400 MB",
            PHOTO,
            png_of_profile,
        ),
        file(
            "a PNG that is nothing but its colour profile",
            PHOTO,
            png_of_noisy_profile,
        ),
        file("a WebP as large as is unpacked", PHOTO, large_webp),
        file("a WebP without transparency", PHOTO, large_opaque_webp),
        file("a WebP that moves", PHOTO, moving_webp),
        file("eight large photos at once", AT_ONCE, large_png),
        file("a HEIC whose directory is all of it", PHOTO, large_heic),
        file("noise, to be restored", BACKUP, noise),
        file(
            "a backup of as many entries as there may be",
            BACKUP,
            many_entries,
        ),
        file(
            "a backup that says too much about itself",
            BACKUP,
            much_about,
        ),
        file("a backup with a long journal", BACKUP, long_journal),
        file(
            "noise behind the line of a sealed file",
            BACKUP,
            sealed_noise,
        ),
        file("a table of commas", TABLE, commas),
        file("a table with a line of commas", TABLE, line_of_commas),
        file("a table of lines that are all wrong", TABLE, wrong_lines),
        file(
            "a table whose every line has a bed of its own",
            TABLE,
            many_beds,
        ),
        file("a table of one quoted cell", TABLE, one_cell),
        file("a table longer than any", TABLE, noise),
    ]
}

/// Bytes that cannot be pressed together, up to that length.
fn fill(random: &mut Random, bytes: &mut Vec<u8>, until: usize) {
    while bytes.len() < until {
        bytes.extend_from_slice(&random.bits().to_le_bytes());
    }
    bytes.truncate(until);
}

fn sample(name: &str) -> Vec<u8> {
    let samples = Path::new(env!("CARGO_MANIFEST_DIR")).join("photo/samples");
    fs::read(samples.join(name)).unwrap()
}

fn put(path: &Path, bytes: &[u8]) {
    fs::write(path, bytes).unwrap();
}

fn noise(path: &Path) {
    let mut bytes = Vec::new();
    fill(&mut Random::of(1), &mut bytes, LARGE);
    put(path, &bytes);
}

fn noisy_jpeg(path: &Path) {
    let mut bytes = b"\xFF\xD8\xFF".to_vec();
    fill(&mut Random::of(2), &mut bytes, LARGE);
    put(path, &bytes);
}

/// The sample with 10,000 pixels a side, and noise for its scan.
fn huge(sample_name: &str, frame: [u8; 2], path: &Path) {
    let mut bytes = sample(sample_name);
    let at =
        |bytes: &[u8], marker: [u8; 2]| bytes.windows(2).position(|two| two == marker).unwrap();
    let frame = at(&bytes, frame);
    bytes[frame + 5..frame + 9].copy_from_slice(&[0x27, 0x10, 0x27, 0x10]);
    let scan = at(&bytes, [0xFF, 0xDA]);
    let header = usize::from(bytes[scan + 2]) * 256 + usize::from(bytes[scan + 3]) + 2;
    bytes.truncate(scan + header);
    let from = bytes.len();
    fill(&mut Random::of(3), &mut bytes, LARGE);
    // No marker ends the scan early.
    for byte in &mut bytes[from..] {
        if *byte == 0xFF {
            *byte = 0xFE;
        }
    }
    put(path, &bytes);
}

fn large_jpeg(path: &Path) {
    huge("no_exif.jpg", [0xFF, 0xC0], path);
}

fn progressive_jpeg(path: &Path) {
    huge("progressive.jpg", [0xFF, 0xC2], path);
}

/// An entry of a TIFF directory (TIFF 6.0, section 2): tag, type, count, value.
fn entry(tag: u16, kind: u16, count: u32, value: u32) -> [u8; 12] {
    let mut bytes = [0; 12];
    bytes[..2].copy_from_slice(&tag.to_le_bytes());
    bytes[2..4].copy_from_slice(&kind.to_le_bytes());
    bytes[4..8].copy_from_slice(&count.to_le_bytes());
    bytes[8..].copy_from_slice(&value.to_le_bytes());
    bytes
}

fn exif_segment(of: &[u8]) -> Vec<u8> {
    let length = u16::try_from(of.len() + 8).unwrap();
    [
        b"\xFF\xE1".as_slice(),
        &length.to_be_bytes(),
        b"Exif\0\0",
        of,
    ]
    .concat()
}

fn exif_jpeg(path: &Path) {
    let mut tiff = b"II*\0\x08\0\0\0".to_vec();
    tiff.extend(5400_u16.to_le_bytes());
    for number in 0..5400_u16 {
        tiff.extend(entry(number, 2, 60_000, 8));
    }
    tiff.extend([0; 4]);
    let segment = exif_segment(&tiff);
    let mut bytes = b"\xFF\xD8".to_vec();
    while bytes.len() + segment.len() < LARGE {
        bytes.extend_from_slice(&segment);
    }
    bytes.extend_from_slice(&sample("no_exif.jpg")[2..]);
    put(path, &bytes);
}

/// Tag 0x8769 points to the directory of the EXIF (EXIF 2.32, table 3).
fn circling_exif(path: &Path) {
    let mut tiff = b"II*\0\x08\0\0\0".to_vec();
    tiff.extend(5400_u16.to_le_bytes());
    for _ in 0..5400 {
        tiff.extend(entry(0x8769, 4, 1, 8));
    }
    tiff.extend(8_u32.to_le_bytes());
    let rest = sample("no_exif.jpg");
    put(
        path,
        &[b"\xFF\xD8", exif_segment(&tiff).as_slice(), &rest[2..]].concat(),
    );
}

fn tiff_of_entries(path: &Path) {
    let mut bytes = b"II*\0\x08\0\0\0".to_vec();
    let directory = 2 + 65_535 * 12 + 4;
    while bytes.len() + directory < LARGE {
        bytes.extend(u16::MAX.to_le_bytes());
        for number in 0..u16::MAX {
            bytes.extend(entry(number, 7, 60_000_000, 8));
        }
        let next = u32::try_from(bytes.len() + 4).unwrap();
        bytes.extend(next.to_le_bytes());
    }
    put(path, &bytes);
}

fn tiff_of_pointers(path: &Path) {
    let mut bytes = b"II*\0\x08\0\0\0".to_vec();
    let second = u32::try_from(8 + 2 + 65_535 * 12 + 4).unwrap();
    bytes.extend(u16::MAX.to_le_bytes());
    for _ in 0..u16::MAX {
        bytes.extend(entry(0x8769, 4, 1, second));
    }
    bytes.extend([0; 4]);
    bytes.extend(u16::MAX.to_le_bytes());
    for number in 0..u16::MAX {
        bytes.extend(entry(number, 4, 1, 1));
    }
    bytes.extend([0; 4]);
    put(path, &bytes);
}

/// So many pixels a side of colours that no coding makes small.
fn picture(side: u32) -> DynamicImage {
    let (mut random, mut value) = (Random::of(5), 0);
    DynamicImage::ImageRgba8(RgbaImage::from_fn(side, side, |x, _| {
        if x % 16 == 0 {
            value = random.bits();
        }
        image::Rgba((value as u32).to_le_bytes())
    }))
}

fn put_picture(picture: &DynamicImage, format: ImageFormat, path: &Path) {
    let mut out = BufWriter::new(File::create(path).unwrap());
    picture
        .write_to(&mut std::io::BufWriter::new(Seekable(&mut out)), format)
        .unwrap();
    out.flush().unwrap();
    // Whatever follows the end of the picture is kept with it.
    let file = fs::OpenOptions::new().write(true).open(path).unwrap();
    assert!(file.metadata().unwrap().len() < LARGE as u64);
    file.set_len(LARGE as u64).unwrap();
}

/// Encoders that write a stream still ask for a place to seek in.
struct Seekable<'f>(&'f mut BufWriter<File>);

impl Write for Seekable<'_> {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.write(bytes)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.0.flush()
    }
}

impl std::io::Seek for Seekable<'_> {
    fn seek(&mut self, to: std::io::SeekFrom) -> std::io::Result<u64> {
        std::io::Seek::seek(self.0, to)
    }
}

/// At 4 bytes a pixel just under the 96 MB that are unpacked of a PNG.
fn large_png(path: &Path) {
    put_picture(&picture(4898), ImageFormat::Png, path);
}

/// A small picture with this colour profile, which is packed with it.
fn png_with(profile: Vec<u8>, path: &Path) {
    let picture = picture(100);
    let mut encoder = PngEncoder::new(File::create(path).unwrap());
    encoder.set_icc_profile(profile).unwrap();
    let (bytes, side) = (picture.as_bytes(), picture.width());
    encoder
        .write_image(bytes, side, side, picture.color().into())
        .unwrap();
}

fn png_of_profile(path: &Path) {
    png_with(vec![0; 400_000_000], path);
}

fn png_of_noisy_profile(path: &Path) {
    let mut profile = Vec::new();
    fill(&mut Random::of(7), &mut profile, LARGE - 500_000);
    png_with(profile, path);
}

/// At 4 bytes a pixel just under the 48 MB that are unpacked of a WebP.
fn large_webp(path: &Path) {
    put_picture(&picture(3463), ImageFormat::WebP, path);
}

/// At 3 bytes a pixel just under the 48 MB.
fn large_opaque_webp(path: &Path) {
    let opaque = DynamicImage::ImageRgb8(picture(3998).into_rgb8());
    put_picture(&opaque, ImageFormat::WebP, path);
}

/// The large WebP as the one frame of a film, which is laid on a canvas before it is shown.
fn moving_webp(path: &Path) {
    let side = 3463_u32;
    let mut still = std::io::Cursor::new(Vec::new());
    picture(side)
        .write_to(&mut still, ImageFormat::WebP)
        .unwrap();
    // RIFF, its length and WEBP are 12 bytes; then comes the one chunk of the picture.
    let frame = &still.get_ref()[12..];
    let chunk = |name: &[u8; 4], of: &[u8]| {
        let length = u32::try_from(of.len()).unwrap();
        [name.as_slice(), &length.to_le_bytes(), of].concat()
    };
    let three = |number: u32| number.to_le_bytes()[..3].to_vec();
    let size = [three(side - 1), three(side - 1)].concat();
    // The flags say that it moves and lets its ground shine through (RFC 9649, section 2.7).
    let head = chunk(
        b"VP8X",
        &[&[0b0001_0010, 0, 0, 0], size.as_slice()].concat(),
    );
    let film = chunk(b"ANIM", &[0; 6]);
    let place = [three(0), three(0), size, three(100), vec![0]].concat();
    let frame = chunk(b"ANMF", &[place.as_slice(), frame].concat());
    let riff = [b"WEBP".as_slice(), &head, &film, &frame].concat();
    put(path, &chunk(b"RIFF", &riff));
}

/// Boxes of ISO/IEC 14496-12: a length, a name, what is in it.
fn iso_box(name: &[u8; 4], of: &[u8]) -> Vec<u8> {
    let length = u32::try_from(of.len() + 8).unwrap();
    [&length.to_be_bytes(), name.as_slice(), of].concat()
}

fn large_heic(path: &Path) {
    let mut items = 0_u32.to_be_bytes().to_vec();
    items.extend(65_535_u16.to_be_bytes());
    let item = iso_box(
        b"infe",
        &[b"\x02\0\0\0\0\x01\0\0Exif\0".as_slice(), &[0; 900]].concat(),
    );
    for _ in 0..65_535 {
        items.extend_from_slice(&item);
    }
    let full = [&[0; 4], iso_box(b"iinf", &items).as_slice()].concat();
    let mut bytes = iso_box(b"ftyp", b"heic\0\0\0\0mif1heic");
    bytes.extend(iso_box(b"meta", &full));
    put(path, &bytes);
}

fn sealed_noise(path: &Path) {
    let mut bytes = b"age-encryption.org/v1\n".to_vec();
    fill(&mut Random::of(6), &mut bytes, LARGE);
    put(path, &bytes);
}

/// A folder with a journal of nothing in it.
fn empty_journal() -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("j"), folder.path().join("copy"));
    let store = Store::open(&path, DeviceId(Uuid::from_u128(1))).unwrap();
    store.snapshot(&copy, |_, _| Ok::<_, Failure>(())).unwrap();
    (folder, copy)
}

fn packed(path: &Path, journal: &Path, about: serde_json::Value, more: usize) {
    let (disk, progress) = (Disk::default(), Progress::default());
    let mut packer = Packer::begin(&disk, path, None, &progress).unwrap();
    let bytes = fs::metadata(journal).unwrap().len();
    let file = File::open(journal).unwrap();
    packer.add("journal.trugbook", bytes, file).unwrap();
    for number in 0..more {
        let name = format!("photos/ab/{number:044}");
        packer.add(&name, 1, [7].as_slice()).unwrap();
    }
    packer.finish("trugbook backup", about).unwrap();
}

fn many_entries(path: &Path) {
    let (_folder, journal) = empty_journal();
    packed(path, &journal, json!({}), 119_990);
}

fn much_about(path: &Path) {
    let (_folder, journal) = empty_journal();
    // As much as the writer lets anybody say.
    packed(path, &journal, json!({ "much": vec![0; 3_000] }), 0);
}

/// Deeds as small as they can be, so that as many as possible come in one file.
fn long_journal(path: &Path) {
    let folder = tempfile::tempdir().unwrap();
    let journal = folder.path().join("j");
    let mut store = Store::open(&journal, DeviceId(Uuid::from_u128(2))).unwrap();
    let changes = 15_000 * crate::times() as usize;
    let change = |number: usize| Change {
        noun: Noun::Bed,
        row: Uuid::from_u128(number as u128).to_string(),
        act: Act::Record,
        fields: json!({ "name": "B", "wild": true })
            .as_object()
            .unwrap()
            .clone()
            .into_iter()
            .collect(),
    };
    let deed = Deed {
        id: DeedId(Uuid::from_u128(9)),
        at: HybridTime {
            milliseconds: DateTime::parse_from_rfc3339("2026-07-01T08:00:00Z")
                .unwrap()
                .timestamp_millis(),
            counter: 0,
        },
        device: DeviceId(Uuid::from_u128(2)),
        text: "Wrote much".into(),
        message: None,
        revokes: None,
        changes: (0..changes).map(change).collect(),
    };
    store.absorb([deed]).unwrap();
    let copy = folder.path().join("copy");
    store.snapshot(&copy, |_, _| Ok::<_, Failure>(())).unwrap();
    packed(path, &copy, json!({}), 0);
}

/// The longest table that is read.
const LONG_TABLE: usize = 15_900_000;

fn commas(path: &Path) {
    put(path, &vec![b','; LONG_TABLE]);
}

const HEAD: &str = "picked_at,herb,part,gross_g,bed\n";

fn line_of_commas(path: &Path) {
    put(
        path,
        &[HEAD.as_bytes(), &vec![b','; LONG_TABLE - 40]].concat(),
    );
}

fn lines(path: &Path, line: impl Fn(usize) -> String) {
    let mut text = HEAD.to_owned();
    let mut number = 0;
    while text.len() < LONG_TABLE - 100 {
        text.push_str(&line(number));
        number += 1;
    }
    put(path, text.as_bytes());
}

fn wrong_lines(path: &Path) {
    lines(path, |number| format!("2024-06-01,H{number},leaf,1,\n"));
}

fn many_beds(path: &Path) {
    lines(path, |number| {
        format!(
            "2024-06-01,peppermint,leaf,{}.{:02},B{number}\n",
            1 + number % 900,
            number / 900 % 100
        )
    });
}

fn one_cell(path: &Path) {
    put(
        path,
        &[HEAD.as_bytes(), b"\"", &vec![b'\n'; LONG_TABLE - 40]].concat(),
    );
}

/// A journal's folder with so many photos in its album; returns their bytes.
pub fn album(folder: &Path, photos: usize, each: usize) -> u64 {
    let app = api::App::open(folder, Box::new(api::SystemClock)).unwrap();
    drop(app);
    let album = photo::Album::open(folder.join("photos")).unwrap();
    let mut random = Random::of(11);
    let mut picture = b"\xFF\xD8\xFF\xE0".to_vec();
    fill(&mut random, &mut picture, each);
    for _ in 0..photos {
        picture[10..18].copy_from_slice(&random.bits().to_le_bytes());
        let mut upload = album.begin().unwrap();
        upload.write(&picture).unwrap();
        upload.keep().unwrap();
    }
    (photos * each) as u64
}
