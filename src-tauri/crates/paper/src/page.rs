//! A page of placed marks, in millimetres from its top left corner.

use crate::face::Face;
use crate::jpeg::Jpeg;
use crate::part::Part;
use crate::qr::Modules;

/// The few inks of the herbarium sheet, as the screens have them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Ink {
    Plain,
    Soft,
    Line,
    Accent,
    Warning,
    Leaf,
    Petal,
    Berry,
    Paper,
    Stalk,
    Green,
    Grey,
    Yellow,
    Violet,
    Blue,
    Pink,
    Red,
    Dark,
    Root,
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
            Self::Leaf => [0x8f, 0xa0, 0x6a],
            Self::Petal => [0xf4, 0xe3, 0xb4],
            Self::Berry => [0xc5, 0x7d, 0x1f],
            Self::Paper => [0xff, 0xff, 0xff],
            Self::Stalk => [0x4d, 0x6b, 0x3a],
            Self::Green => [0xa9, 0xbb, 0x7c],
            Self::Grey => [0xb4, 0xbf, 0xa6],
            Self::Yellow => [0xec, 0xc6, 0x54],
            Self::Violet => [0xa7, 0x94, 0xc6],
            Self::Blue => [0x8a, 0xa7, 0xd0],
            Self::Pink => [0xdf, 0xa3, 0xb2],
            Self::Red => [0xb2, 0x3a, 0x2a],
            Self::Dark => [0x4a, 0x30, 0x50],
            Self::Root => [0xb5, 0x8a, 0x57],
        }
    }
}

/// One stroke of an outline, in millimetres from its own origin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Stroke {
    Move(f64, f64),
    Line(f64, f64),
    /// A cubic curve by its two handles and its end.
    Curve([f64; 6]),
    Close,
}

/// One thing on the page.
#[derive(Debug, Clone)]
pub(crate) enum Mark {
    /// Marks that are read as one.
    Part(Part),
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
    /// An outline, filled, drawn along its edge, or both.
    Shape {
        x: f64,
        y: f64,
        strokes: Vec<Stroke>,
        fill: Option<Ink>,
        /// The ink of its edge and how wide it is.
        edge: Option<(Ink, f64)>,
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
        let moved = |mut mark: Mark| {
            mark.shift(left, top);
            mark
        };
        self.marks.extend(marks.into_iter().map(moved));
    }
}

impl Mark {
    fn shift(&mut self, right: f64, down: f64) {
        match self {
            Self::Part(part) => {
                for mark in &mut part.marks {
                    mark.shift(right, down);
                }
            }
            Self::Text { x, y, .. }
            | Self::Box { x, y, .. }
            | Self::Code { x, y, .. }
            | Self::Shape { x, y, .. }
            | Self::Picture { x, y, .. } => {
                *x += right;
                *y += down;
            }
        }
    }

    /// Left, top, right and bottom of what it draws; nothing for text, which asks its face, and for parts.
    fn bounds(&self) -> Option<[f64; 4]> {
        match self {
            Self::Part(_) | Self::Text { .. } => None,
            Self::Box {
                x,
                y,
                width,
                height,
                ..
            }
            | Self::Picture {
                x,
                y,
                width,
                height,
                ..
            } => Some([*x, *y, x + width, y + height]),
            Self::Code {
                x,
                y,
                module,
                modules,
            } => {
                let side = module * modules.side as f64;
                Some([*x, *y, x + side, y + side])
            }
            Self::Shape { x, y, strokes, .. } => {
                let points = strokes.iter().filter_map(|stroke| match stroke {
                    Stroke::Move(u, v) | Stroke::Line(u, v) | Stroke::Curve([.., u, v]) => {
                        Some([x + u, y + v, x + u, y + v])
                    }
                    Stroke::Close => None,
                });
                points.reduce(around)
            }
        }
    }
}

/// The smallest box around two.
fn around(one: [f64; 4], other: [f64; 4]) -> [f64; 4] {
    [
        one[0].min(other[0]),
        one[1].min(other[1]),
        one[2].max(other[2]),
        one[3].max(other[3]),
    ]
}

/// The box around all that a picture draws, in mm from the top left corner.
pub(crate) fn bounds(marks: &[Mark]) -> Option<[f64; 4]> {
    marks.iter().filter_map(Mark::bounds).reduce(around)
}

/// What leaves ink, without the parts that it stands in.
pub(crate) fn inks(marks: &[Mark]) -> Vec<&Mark> {
    let each = marks.iter().flat_map(|mark| match mark {
        Mark::Part(part) => inks(&part.marks),
        ink => vec![ink],
    });
    each.collect()
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
