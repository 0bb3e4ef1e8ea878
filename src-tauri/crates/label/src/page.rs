//! A page of placed marks, in millimetres from its top left corner.

use crate::face::Face;
use crate::jpeg::Jpeg;
use crate::qr::Modules;

/// Millimetres in a point.
pub(crate) const MM_PER_PT: f64 = 25.4 / 72.0;

/// The few inks of the herbarium sheet, as the screens have them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Ink {
    Plain,
    Soft,
    Line,
    Accent,
    Warning,
}

impl Ink {
    /// Red, green and blue, 0 to 255.
    pub(crate) const fn rgb(self) -> [u8; 3] {
        match self {
            Self::Plain => [0x1d, 0x1a, 0x14],
            Self::Soft => [0x45, 0x3e, 0x2f],
            Self::Line => [0xc3, 0xb8, 0x9d],
            Self::Accent => [0x14, 0x40, 0x6b],
            Self::Warning => [0x9e, 0x1b, 0x12],
        }
    }
}

/// One thing on the page.
#[derive(Debug, Clone)]
pub(crate) enum Mark {
    /// Text whose base line begins at (x, y).
    Text {
        x: f64,
        y: f64,
        size_pt: f64,
        face: Face,
        ink: Ink,
        text: String,
    },
    /// A filled box.
    Box {
        x: f64,
        y: f64,
        width: f64,
        height: f64,
        ink: Ink,
    },
    /// A QR code, without its quiet zone.
    Code {
        x: f64,
        y: f64,
        module: f64,
        modules: Modules,
    },
    /// A photo, filling its box.
    Picture {
        x: f64,
        y: f64,
        width: f64,
        height: f64,
        jpeg: Jpeg,
    },
}

/// One page.
#[derive(Debug, Clone)]
pub(crate) struct Page {
    pub(crate) width: f64,
    pub(crate) height: f64,
    pub(crate) marks: Vec<Mark>,
}

impl Page {
    pub(crate) const fn new(width: f64, height: f64) -> Self {
        Self {
            width,
            height,
            marks: Vec::new(),
        }
    }

    /// Puts marks drawn for an own origin at (x, y).
    pub(crate) fn place(&mut self, left: f64, top: f64, marks: impl IntoIterator<Item = Mark>) {
        self.marks.extend(marks.into_iter().map(|mut mark| {
            match &mut mark {
                Mark::Text { x, y, .. }
                | Mark::Box { x, y, .. }
                | Mark::Code { x, y, .. }
                | Mark::Picture { x, y, .. } => {
                    *x += left;
                    *y += top;
                }
            }
            mark
        }));
    }
}

/// A hairline along x.
pub(crate) const fn rule(x: f64, y: f64, width: f64, ink: Ink) -> Mark {
    Mark::Box {
        x,
        y: y - 0.1,
        width,
        height: 0.2,
        ink,
    }
}
