//! The mean of every 8 x 8 block of a JPEG: a picture an eighth the size, without one transform.
//!
//! A block's first coefficient is eight times its mean (ITU-T T.81 A.3.3), so the other 63 are only
//! stepped over. Large photos of phones and cameras are read so; whatever is coded in another way,
//! or damaged, is left to the general decoder.
//!
//! The general decoder at an eighth takes at best 1.2 times as long as vipsthumbnail for 12 megapixels
//! and 1.33 times for 48, this 0.6 times; a library that unpacks the whole takes three times as long.

use std::fs::File;

use image::GrayImage;

use super::bits::Bits;
use super::header::{self, Header};
use super::huffman::Table;

/// The means of a JPEG, one picture a component, each as large as that component was sampled.
pub(super) fn read(file: &File) -> Option<Vec<GrayImage>> {
    let mut bits = Bits::new(file)?;
    let header = header::read(&mut bits)?;
    scan(&mut bits, &header)
}

struct Plane {
    means: Vec<u8>,
    stride: usize,
    last: i32,
}

fn scan(bits: &mut Bits<'_>, header: &Header) -> Option<Vec<GrayImage>> {
    let most_across = header
        .components
        .iter()
        .map(|component| component.across)
        .max()?;
    let most_down = header
        .components
        .iter()
        .map(|component| component.down)
        .max()?;
    let units_across = header.width.div_ceil(8 * most_across);
    let units_down = header.height.div_ceil(8 * most_down);
    let mut planes: Vec<Plane> = (header.components.iter())
        .map(|component| {
            let stride = units_across * component.across;
            Plane {
                means: vec![128; stride * units_down * component.down],
                stride,
                last: 0,
            }
        })
        .collect();
    let mut until_restart = header.restart_interval;
    for row in 0..units_down {
        for column in 0..units_across {
            if header.restart_interval > 0 {
                if until_restart == 0 {
                    if !matches!(bits.marker()?, 0xD0..=0xD7) {
                        return None;
                    }
                    planes.iter_mut().for_each(|plane| plane.last = 0);
                    until_restart = header.restart_interval;
                }
                until_restart -= 1;
            }
            for (component, plane) in header.components.iter().zip(&mut planes) {
                let dc = header.dc[component.dc].as_ref()?;
                let ac = header.ac[component.ac].as_ref()?;
                for down in 0..component.down {
                    let start =
                        (row * component.down + down) * plane.stride + column * component.across;
                    for across in 0..component.across {
                        plane.last = plane.last.wrapping_add(difference(bits, dc)?);
                        let mean = (plane.last.wrapping_mul(component.step).wrapping_add(4) >> 3)
                            .saturating_add(128);
                        *plane.means.get_mut(start + across)? =
                            u8::try_from(mean.clamp(0, 255)).ok()?;
                        ac.step_over(bits)?;
                    }
                }
            }
        }
        if bits.overran() {
            return None;
        }
    }
    if bits.marker()? != 0xD9 {
        return None;
    }
    let size =
        |pixels: usize, share: usize, most: usize| (pixels * share).div_ceil(most).div_ceil(8);
    (header.components.iter().zip(planes))
        .map(|(component, plane)| {
            let width = size(header.width, component.across, most_across);
            let height = size(header.height, component.down, most_down);
            let rows = plane.means.chunks_exact(plane.stride).take(height);
            let means = rows
                .flat_map(|row| row.iter().take(width).copied())
                .collect();
            GrayImage::from_raw(
                u32::try_from(width).ok()?,
                u32::try_from(height).ok()?,
                means,
            )
        })
        .collect()
}

/// How much the first coefficient differs from that of the block before (T.81 F.2.2.1).
#[inline]
fn difference(bits: &mut Bits<'_>, table: &Table) -> Option<i32> {
    bits.fill();
    let size = u32::from(table.symbol(bits)?);
    if size == 0 {
        return Some(0);
    }
    if size > 11 {
        return None;
    }
    let value = i32::try_from(bits.peek(size)).ok()?;
    bits.skip(size);
    Some(if value < 1 << (size - 1) {
        value - (1 << size) + 1
    } else {
        value
    })
}

#[cfg(test)]
mod tests {
    use std::fs::File;
    use std::io::Write;
    use std::path::{Path, PathBuf};

    use jpeg_decoder::Decoder;

    fn folder() -> PathBuf {
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/photo/samples")
    }

    fn sample(name: &str) -> File {
        File::open(folder().join(name)).unwrap()
    }

    fn holding(bytes: &[u8]) -> File {
        let mut file = tempfile::tempfile().unwrap();
        file.write_all(bytes).unwrap();
        file
    }

    #[test]
    fn the_means_are_those_of_the_general_decoder() {
        let means = super::read(&sample("gray.jpg")).unwrap();
        let mut decoder = Decoder::new(sample("gray.jpg"));
        assert_eq!(decoder.scale(1, 1).unwrap(), (20, 15));
        let expected = decoder.decode().unwrap();
        assert_eq!(means.len(), 1);
        // Both round an eighth of the coefficient; at a half one may round up and the other down.
        assert!(
            means[0]
                .as_raw()
                .iter()
                .zip(&expected)
                .all(|(a, b)| a.abs_diff(*b) <= 1)
        );
        assert_eq!(means[0].as_raw().len(), expected.len());
    }

    #[test]
    fn colours_sampled_at_half_are_half_as_large() {
        let means = super::read(&sample("no_exif.jpg")).unwrap();
        let sizes: Vec<_> = means.iter().map(|plane| plane.dimensions()).collect();
        assert_eq!(sizes, [(20, 15), (10, 8), (10, 8)]);
    }

    #[test]
    fn restart_markers_are_passed() {
        let plain = super::read(&sample("no_exif.jpg")).unwrap();
        let restarted = super::read(&sample("restart.jpg")).unwrap();
        assert_eq!(plain, restarted);
    }

    #[test]
    fn other_codings_are_left_to_the_general_decoder() {
        for name in ["progressive.jpg", "cmyk.jpg", "sample.png"] {
            assert!(super::read(&sample(name)).is_none(), "{name}");
        }
    }

    #[test]
    fn a_harmed_file_is_read_or_left_and_never_reaches_beyond_its_planes() {
        let sound = std::fs::read(folder().join("restart.jpg")).unwrap();
        let (mut read, mut left) = (0, 0);
        // Every byte of the header, and every thirtieth of the data behind it.
        for at in (0..700).chain((700..sound.len()).step_by(30)) {
            for byte in [0xFF, sound[at] ^ 0x11] {
                let mut harmed = sound.clone();
                harmed[at] = byte;
                match super::read(&holding(&harmed)) {
                    Some(planes) => {
                        read += 1;
                        assert!(planes.len() == 1 || planes.len() == 3);
                    }
                    None => left += 1,
                }
            }
        }
        assert!(
            read > 100 && left > 100,
            "{read} read, {left} left to the general decoder"
        );
    }

    #[test]
    fn a_file_cut_anywhere_is_left_to_the_general_decoder() {
        let sound = std::fs::read(folder().join("no_exif.jpg")).unwrap();
        for length in (0..sound.len()).step_by(97) {
            assert!(
                super::read(&holding(&sound[..length])).is_none(),
                "{length} bytes"
            );
        }
    }
}
