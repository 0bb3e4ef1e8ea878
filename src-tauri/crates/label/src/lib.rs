//! Labels, calendar, season's book and trace sheet from plain records.
//!
//! Every drawing is first a page of placed marks in millimetres; SVG and PDF only write those marks down, so both show the same layout.
//! Nothing here asks the clock, the disk or the journal: the caller fills the records and writes the bytes.

pub mod book;
pub mod calendar;
mod draw;
mod face;
mod figure;
mod flow;
pub mod items;
mod jpeg;
pub mod link;
mod page;
mod pdf;
mod qr;
mod record;
mod sheet;
mod svg;
pub mod trace;
mod wrap;

pub use figure::Figure;
pub use record::{Kind, Label, Meaning, Plant, Ratio, State, Strength, Use};
pub use sheet::{Grid, Paper, Sheet, Size, sheet_pdf, single_pdf, single_svg};

/// What was drawn, and what the maker should know about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn<T> {
    /// The file: PDF bytes or SVG text.
    pub bytes: T,
    /// Finished sentences: what had to be left out for want of room, what was not known, which letters the type lacks.
    pub remarks: Vec<String>,
}

/// What was asked for cannot be drawn.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{message}")]
pub struct Refusal {
    /// The field that has to change, such as `label.height_mm`.
    pub field: &'static str,
    /// A finished sentence that names what would do.
    pub message: String,
}

impl Refusal {
    pub(crate) fn new(field: &'static str, message: impl Into<String>) -> Self {
        Self {
            field,
            message: message.into(),
        }
    }
}
