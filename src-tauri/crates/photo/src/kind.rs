//! What a file is, by its content: names and media types from outside are not believed.

/// The kinds of picture the album takes in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// ITU-T T.81.
    Jpeg,
    /// Portable Network Graphics.
    Png,
    /// WebP, lossy or lossless.
    WebP,
    /// HEIF with HEVC inside, as phones write it.
    Heic,
    /// HEIF with AV1 inside.
    Avif,
    /// TIFF, and the raw formats built on it.
    Tiff,
    /// Graphics Interchange Format.
    Gif,
}

/// How many bytes [`Kind::of`] wants to see.
pub(crate) const HEAD: usize = 64;

impl Kind {
    /// The kind whose signature the first bytes of a file bear; `None` if it is no picture.
    pub fn of(head: &[u8]) -> Option<Self> {
        let at = |offset: usize, signature: &[u8]| {
            head.get(offset..)
                .is_some_and(|rest| rest.starts_with(signature))
        };
        if at(0, b"\xFF\xD8\xFF") {
            Some(Self::Jpeg)
        } else if at(0, b"\x89PNG\r\n\x1A\n") {
            Some(Self::Png)
        } else if at(0, b"RIFF") && at(8, b"WEBP") {
            Some(Self::WebP)
        } else if at(0, b"II*\0") || at(0, b"MM\0*") {
            Some(Self::Tiff)
        } else if at(0, b"GIF87a") || at(0, b"GIF89a") {
            Some(Self::Gif)
        } else if at(4, b"ftyp") {
            heif(head)
        } else {
            None
        }
    }

    /// The name people use.
    pub fn name(self) -> &'static str {
        match self {
            Self::Jpeg => "JPEG",
            Self::Png => "PNG",
            Self::WebP => "WebP",
            Self::Heic => "HEIC",
            Self::Avif => "AVIF",
            Self::Tiff => "TIFF",
            Self::Gif => "GIF",
        }
    }

    /// The media type to serve the original under.
    pub fn media_type(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
            Self::WebP => "image/webp",
            Self::Heic => "image/heic",
            Self::Avif => "image/avif",
            Self::Tiff => "image/tiff",
            Self::Gif => "image/gif",
        }
    }
}

/// An ISO base media file is a picture only if one of its brands says so; films share the container.
fn heif(head: &[u8]) -> Option<Kind> {
    let size = usize::try_from(u32::from_be_bytes(head.get(..4)?.try_into().ok()?)).ok()?;
    let brands = head.get(8..size.min(head.len()))?;
    // The four bytes after the major brand are a version number, not a brand.
    let mut brands = brands
        .chunks_exact(4)
        .enumerate()
        .filter(|(i, _)| *i != 1)
        .map(|(_, brand)| brand);
    brands.find_map(|brand| match brand {
        b"heic" | b"heix" | b"heim" | b"heis" | b"hevc" | b"hevx" | b"mif1" | b"msf1" => {
            Some(Kind::Heic)
        }
        b"avif" | b"avis" => Some(Kind::Avif),
        _ => None,
    })
}
