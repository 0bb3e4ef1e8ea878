//! Previews: upright, small, and plain about what could not be shown.

use std::fs::File;
use std::io::{Read, Seek, SeekFrom};

use image::{GenericImageView, ImageReader, Rgb, RgbImage};
use photo::{Album, NoPreview, Photo, Preview, THUMB_SIDE};

use crate::{album, sample, take_in};

/// What is told of a picture in English, by the word that the journal keeps.
fn said(photo: &Photo) -> Option<String> {
    let note = photo.note()?;
    Some(api::Language::English.tell(&photo::told(&note)))
}

fn shown(album: &Album, photo: &Photo) -> RgbImage {
    let mut bytes = Vec::new();
    album
        .thumb(&photo.hash)
        .unwrap()
        .unwrap()
        .read_to_end(&mut bytes)
        .unwrap();
    image::load_from_memory_with_format(&bytes, image::ImageFormat::Jpeg)
        .unwrap()
        .to_rgb8()
}

/// JPEG at quality 80 of a plain area moves a channel by a few steps; the colours compared differ by 100.
fn alike(a: Rgb<u8>, b: [u8; 3]) -> bool {
    a.0.iter().zip(b).all(|(a, b)| a.abs_diff(b) < 20)
}

const RED: [u8; 3] = [220, 30, 30];
const GREEN: [u8; 3] = [30, 180, 40];
const BLUE: [u8; 3] = [30, 50, 220];
const WHITE: [u8; 3] = [250, 250, 250];

fn corners_stand_where_they_were_drawn(picture: &RgbImage, name: &str) {
    let (right, bottom) = (picture.width() - 16, picture.height() - 16);
    for (x, y, colour) in [
        (16, 16, RED),
        (right, 16, GREEN),
        (16, bottom, BLUE),
        (right, bottom, WHITE),
    ] {
        let pixel = *picture.get_pixel(x, y);
        assert!(
            alike(pixel, colour),
            "{name} at {x},{y}: {pixel:?} is not {colour:?}"
        );
    }
}

#[test]
fn every_orientation_is_shown_upright() {
    for orientation in 1..=8 {
        let name = format!("orientation_{orientation}.jpg");
        let (_folder, album) = album();
        let photo = take_in(&album, &sample(&name));
        assert_eq!(
            (photo.width, photo.height),
            (Some(96), Some(64)),
            "{name}: size as seen"
        );
        let picture = shown(&album, &photo);
        assert_eq!(
            picture.dimensions(),
            (96, 64),
            "{name}: a small picture is not enlarged"
        );
        corners_stand_where_they_were_drawn(&picture, &name);
    }
}

#[test]
fn webp_is_shown_upright_as_well() {
    let (_folder, album) = album();
    let photo = take_in(&album, &sample("sample.webp"));
    let picture = shown(&album, &photo);
    // The drawing was stored with orientation 3, so upright is upside down.
    assert!(alike(*picture.get_pixel(80, 48), RED));
}

#[test]
fn png_gray_progressive_and_printers_colours_have_previews() {
    for name in ["sample.png", "gray.jpg", "progressive.jpg", "cmyk.jpg"] {
        let (_folder, album) = album();
        let photo = take_in(&album, &sample(name));
        assert_eq!(
            (photo.preview, photo.note()),
            (Preview::Whole, None),
            "{name}"
        );
        let picture = shown(&album, &photo);
        if ["sample.png", "cmyk.jpg"].contains(&name) {
            corners_stand_where_they_were_drawn(&picture, name);
        }
    }
}

#[test]
fn what_is_see_through_becomes_white() {
    let (_folder, album) = album();
    let photo = take_in(&album, &sample("transparent.png"));
    assert!(
        shown(&album, &photo)
            .pixels()
            .all(|pixel| alike(*pixel, [255; 3]))
    );
}

#[test]
fn a_large_photo_becomes_480_pixels_on_its_longer_side_and_keeps_its_colours() {
    let mut large = RgbImage::from_pixel(1500, 2000, Rgb([120; 3]));
    for (x, y, pixel) in large.enumerate_pixels_mut() {
        if x < 150 && y < 150 {
            *pixel = Rgb(RED);
        }
    }
    for format in [image::ImageFormat::Jpeg, image::ImageFormat::Png] {
        let mut bytes = std::io::Cursor::new(Vec::new());
        large.write_to(&mut bytes, format).unwrap();
        let (_folder, album) = album();
        let photo = take_in(&album, bytes.get_ref());
        let picture = shown(&album, &photo);
        assert_eq!(picture.dimensions(), (360, THUMB_SIDE), "{format:?}");
        assert!(
            alike(*picture.get_pixel(15, 15), RED) && alike(*picture.get_pixel(200, 300), [120; 3]),
            "{format:?}"
        );
    }
}

#[test]
fn heic_tiff_and_gif_are_kept_without_a_preview_and_say_so() {
    for (name, kind) in [
        ("phone.heic", "HEIC"),
        ("sample.tif", "TIFF"),
        ("sample.gif", "GIF"),
    ] {
        let (_folder, album) = album();
        let photo = take_in(&album, &sample(name));
        assert_eq!(photo.preview, Preview::No(NoPreview::Unsupported), "{name}");
        let note =
            format!("Saved as it is, without a preview: this kind of {kind} cannot be shown here.");
        assert_eq!(said(&photo), Some(note));
        assert!(album.thumb(&photo.hash).unwrap().is_none());
    }
}

#[test]
fn a_jpeg_cut_in_the_middle_shows_its_upper_part() {
    let whole = sample("no_exif.jpg");
    let expected = image::load_from_memory(&whole).unwrap().to_rgb8();
    for name in ["no_exif.jpg", "progressive.jpg"] {
        let bytes = sample(name);
        let (_folder, album) = album();
        let photo = take_in(&album, &bytes[..bytes.len() * 2 / 3]);
        assert_eq!(photo.preview, Preview::Part, "{name}");
        assert!(said(&photo).unwrap().contains("damaged"));
        let picture = shown(&album, &photo);
        assert_eq!(picture.dimensions(), (160, 120));
        if name == "no_exif.jpg" {
            // The samples are noise; averaged over a block the upper part is the same picture.
            let mean = |image: &RgbImage| {
                let sum: u64 = image
                    .view(0, 0, 160, 32)
                    .pixels()
                    .map(|(_, _, p)| u64::from(p.0[2]))
                    .sum();
                sum / (160 * 32)
            };
            assert!(mean(&picture).abs_diff(mean(&expected)) < 5);
        }
    }
}

#[test]
fn a_jpeg_damaged_inside_shows_what_comes_before_the_fault() {
    let mut bytes = sample("no_exif.jpg");
    let middle = bytes.len() / 2;
    // A frame header inside the picture data: no decoder can go on from there.
    bytes[middle..middle + 8].copy_from_slice(&[0xFF, 0xC0, 0, 0, 0, 0, 0, 0]);
    let (_folder, album) = album();
    let photo = take_in(&album, &bytes);
    assert_eq!(photo.preview, Preview::Part);
    assert_eq!(shown(&album, &photo).dimensions(), (160, 120));
}

#[test]
fn a_jpeg_cut_in_its_header_is_kept_without_a_preview() {
    let (_folder, album) = album();
    let photo = take_in(&album, &sample("place_and_zone.jpg")[..700]);
    assert_eq!(photo.preview, Preview::No(NoPreview::Damaged));
    assert_eq!(
        said(&photo).unwrap(),
        "Saved as it is, without a preview: the file is damaged."
    );
}

#[test]
fn a_png_cut_in_the_middle_is_kept_without_a_preview() {
    let bytes = sample("sample.png");
    let (_folder, album) = album();
    let photo = take_in(&album, &bytes[..bytes.len() / 2]);
    assert_eq!(photo.preview, Preview::No(NoPreview::Damaged));
}

/// The same JPEG with another size in its frame header (ITU-T T.81 B.2.2: marker, length, precision, lines, samples).
fn with_size(name: &str, width: u16, height: u16) -> Vec<u8> {
    let mut bytes = sample(name);
    let frame = bytes
        .windows(2)
        .position(|pair| pair == [0xFF, 0xC0] || pair == [0xFF, 0xC2])
        .unwrap();
    bytes[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
    bytes[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
    bytes
}

#[test]
fn a_picture_of_more_than_100_megapixels_is_kept_and_never_unpacked() {
    for bytes in [
        sample("108_megapixels.png"),
        with_size("no_exif.jpg", 12_000, 9_000),
    ] {
        let (_folder, album) = album();
        let photo = take_in(&album, &bytes);
        assert_eq!(photo.preview, Preview::No(NoPreview::TooLarge));
        assert_eq!((photo.width, photo.height), (Some(12_000), Some(9_000)));
        assert!(said(&photo).unwrap().contains("too large"));
    }
}

#[test]
fn a_progressive_picture_that_would_fill_the_memory_is_not_unpacked() {
    let (_folder, album) = album();
    let photo = take_in(&album, &with_size("progressive.jpg", 9_000, 9_000));
    assert_eq!(photo.preview, Preview::No(NoPreview::TooLarge));
}

#[test]
fn the_preview_is_a_plain_jpeg_without_the_place() {
    let (_folder, album) = album();
    let photo = take_in(&album, &sample("place_and_zone.jpg"));
    let mut file: File = album.thumb(&photo.hash).unwrap().unwrap();
    let mut bytes = Vec::new();
    file.read_to_end(&mut bytes).unwrap();
    assert!(!bytes.windows(4).any(|window| window == b"Exif"));
    file.seek(SeekFrom::Start(0)).unwrap();
    let reader = ImageReader::new(std::io::BufReader::new(file))
        .with_guessed_format()
        .unwrap();
    assert_eq!(reader.format(), Some(image::ImageFormat::Jpeg));
}

#[test]
fn a_photo_large_enough_for_the_quick_way_has_its_colours_and_corners_in_place() {
    let mut drawn = RgbImage::from_pixel(960, 640, Rgb([120; 3]));
    for (left, top, colour) in [
        (0, 0, RED),
        (640, 0, GREEN),
        (0, 320, BLUE),
        (640, 320, WHITE),
    ] {
        image::imageops::replace(
            &mut drawn,
            &RgbImage::from_pixel(320, 320, Rgb(colour)),
            left,
            top,
        );
    }
    // 3840 pixels across: an eighth is just 480.
    let large = image::imageops::resize(&drawn, 3840, 2560, image::imageops::FilterType::Nearest);
    for gray in [false, true] {
        let large = image::DynamicImage::from(large.clone());
        let large = if gray { large.to_luma8().into() } else { large };
        let mut bytes = std::io::Cursor::new(Vec::new());
        large
            .write_to(&mut bytes, image::ImageFormat::Jpeg)
            .unwrap();
        let (_folder, album) = album();
        let photo = take_in(&album, bytes.get_ref());
        assert_eq!(photo.preview, Preview::Whole);
        let picture = shown(&album, &photo);
        assert_eq!(picture.dimensions(), (480, 320));
        if gray {
            let expected =
                image::DynamicImage::from(RgbImage::from_pixel(1, 1, Rgb(GREEN))).to_luma8();
            assert!(alike(
                *picture.get_pixel(464, 16),
                [expected.get_pixel(0, 0).0[0]; 3]
            ));
        } else {
            corners_stand_where_they_were_drawn(&picture, "large");
        }
        // Cut off, it goes the general way and shows the same upper part.
        let cut = take_in(&album, &bytes.get_ref()[..bytes.get_ref().len() * 3 / 4]);
        assert_eq!(cut.preview, Preview::Part);
        assert!(gray || alike(*shown(&album, &cut).get_pixel(16, 16), RED));
    }
}

/// A box of ISO/IEC 14496-12, 4.2: length, name, body.
fn boxed(name: &[u8; 4], body: &[&[u8]]) -> Vec<u8> {
    let body = body.concat();
    let length = u32::try_from(body.len() + 8).unwrap();
    [&length.to_be_bytes(), name.as_slice(), &body].concat()
}

/// EXIF in TIFF 6.0 with the orientation in its first directory and a JPEG in its second.
fn exif_with(jpeg: &[u8], orientation: u8) -> Vec<u8> {
    let entry = |tag: u16, kind: u16, value: [u8; 4]| {
        [
            tag.to_be_bytes().as_slice(),
            &kind.to_be_bytes(),
            &1_u32.to_be_bytes(),
            &value,
        ]
        .concat()
    };
    let length = u32::try_from(jpeg.len()).unwrap();
    [
        b"MM\0\x2A\0\0\0\x08\0\x01".as_slice(),
        &entry(0x0112, 3, [0, orientation, 0, 0]),
        // The second directory begins at 26 and ends at 56, where the JPEG lies.
        &26_u32.to_be_bytes(),
        b"\0\x02",
        &entry(0x0201, 4, 56_u32.to_be_bytes()),
        &entry(0x0202, 4, length.to_be_bytes()),
        &[0; 4],
        jpeg,
    ]
    .concat()
}

/// A HEIC of which only the EXIF item can be read (ISO/IEC 23008-12, A.2.1).
fn heic_with(exif: &[u8]) -> Vec<u8> {
    let kind = boxed(b"ftyp", &[b"heic\0\0\0\0mif1heic"]);
    let entry = boxed(b"infe", &[b"\x02\0\0\0\0\x01\0\0Exif\0"]);
    let items = boxed(b"iinf", &[b"\0\0\0\0\0\x01", &entry]);
    let length = u32::try_from(exif.len() + 4).unwrap().to_be_bytes();
    let places = |start: u32| {
        // Four bytes for an offset and for a length; one item of one extent.
        let head = b"\0\0\0\0\x44\0\0\x01\0\x01\0\0\0\x01";
        let places = boxed(b"iloc", &[head, &start.to_be_bytes(), &length]);
        boxed(b"meta", &[&[0; 4], &items, &places])
    };
    let start = kind.len() + places(0).len() + 8;
    let data = boxed(b"mdat", &[&[0; 4], exif]);
    [kind, places(u32::try_from(start).unwrap()), data].concat()
}

#[test]
fn a_heic_shows_the_small_jpeg_inside_its_exif_upright() {
    for orientation in 1..=8 {
        let jpeg = sample(&format!("orientation_{orientation}.jpg"));
        let (_folder, album) = album();
        let photo = take_in(&album, &heic_with(&exif_with(&jpeg, orientation)));
        assert_eq!((photo.preview, photo.note()), (Preview::Whole, None));
        let picture = shown(&album, &photo);
        assert_eq!(picture.dimensions(), (96, 64));
        corners_stand_where_they_were_drawn(&picture, "inside HEIC");
    }
}

/// The drawing of `orientation_1.jpg` lying on its side, written by pillow-heif 1.8: enlarged to 640 x 960,
/// saved at quality 40 with EXIF of piexif 1.1 (Orientation 6, the drawing itself as thumbnail).
#[test]
fn a_heic_that_another_program_wrote_shows_its_small_jpeg_upright() {
    let (_folder, album) = album();
    let photo = take_in(&album, &sample("small_jpeg_inside.heic"));
    assert_eq!(photo.preview, Preview::Whole);
    let picture = shown(&album, &photo);
    assert_eq!(picture.dimensions(), (96, 64));
    corners_stand_where_they_were_drawn(&picture, "small_jpeg_inside.heic");
}

#[test]
fn a_heic_whose_small_jpeg_is_harmed_or_elsewhere_has_no_preview() {
    let sound = heic_with(&exif_with(&sample("orientation_1.jpg"), 1));
    let jpeg = sound
        .windows(3)
        .position(|at| at == [0xFF, 0xD8, 0xFF])
        .unwrap();
    for at in [jpeg, jpeg - 14, jpeg - 26] {
        let mut harmed = sound.clone();
        harmed[at..at + 2].copy_from_slice(&[0x7F, 0xF0]);
        let (_folder, album) = album();
        let photo = take_in(&album, &harmed);
        assert_eq!(photo.preview, Preview::No(NoPreview::Unsupported), "{at}");
    }
}
