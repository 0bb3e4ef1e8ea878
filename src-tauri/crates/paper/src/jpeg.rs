//! The head of a JPEG: a PDF carries the file as it is and only needs its size and colours.

use std::io::Read;

use jpeg_decoder::{Decoder, PixelFormat};

/// A JPEG that a PDF can carry.
#[derive(Debug, Clone)]
pub(crate) struct Jpeg {
    pub(crate) bytes: Vec<u8>,
    pub(crate) width: u16,
    pub(crate) height: u16,
    pub(crate) is_gray: bool,
}

impl Jpeg {
    /// Reads the head; nothing where the bytes are no JPEG in gray or in three colours.
    pub(crate) fn read(bytes: Vec<u8>) -> Option<Self> {
        let mut head = bytes.as_slice();
        // Of the type that the previews are read with, so that the program holds one decoder.
        let mut decoder = Decoder::new(&mut head as &mut dyn Read);
        decoder.read_info().ok()?;
        let info = decoder.info()?;
        let is_gray = match info.pixel_format {
            PixelFormat::L8 => true,
            PixelFormat::RGB24 => false,
            PixelFormat::L16 | PixelFormat::CMYK32 => return None,
        };
        let (width, height) = (info.width, info.height);
        (width > 0 && height > 0).then_some(Self {
            bytes,
            width,
            height,
            is_gray,
        })
    }
}
