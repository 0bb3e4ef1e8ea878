//! Labels, calendar, the season and the chain on paper, from plain records.
//!
//! Every drawing is first a page of placed marks in millimetres; SVG and PDF only write those marks down, so both show the same layout.
//! Nothing here asks the clock, the disk or the journal: the caller fills the records and writes the bytes.

pub mod calendar;
pub mod card;
pub mod chain;
mod draw;
mod drawn;
mod face;
mod figure;
mod fit;
mod flow;
pub mod items;
mod jpeg;
pub mod link;
pub mod packed;
mod page;
mod part;
mod pdf;
mod plant;
mod qr;
mod record;
mod say;
pub mod season;
mod sheet;
mod size;
mod svg;
mod units;
mod wrap;

pub use drawn::Drawn;
pub use figure::Figure;
pub use message::Refusal;
pub use plant::Herb;
pub use record::{Kind, Label, Meaning, Origin, Plant, Ratio, Strength, Use};
pub use sheet::{Grid, Sheet, sheet_pdf, single_pdf, single_svg};
pub use size::{Paper, Size};
