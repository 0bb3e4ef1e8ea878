//! Pages that fill from the top: paragraphs, photos and table rows one under the other, a new page when one is full.

use std::mem;

use crate::face::{Face, unknown_letters};
use crate::jpeg::Jpeg;
use crate::page::{Ink, MM_PER_PT, Mark, Page, rule};
use crate::pdf::Writer;
use crate::sheet::Paper;
use crate::wrap::{Run, Words};

/// How photos are asked for: the upright JPEG of a key, small enough to print a few centimetres wide.
pub type Photos<'a> = dyn FnMut(&str) -> Option<Vec<u8>> + 'a;

const SIDE_MM: f64 = 22.0;
const HEAD_MM: f64 = 20.0;
const FOOT_MM: f64 = 24.0;
/// Type of running text in points, and its leading as a share of it.
pub(crate) const BODY_PT: f64 = 10.5;
const LEADING: f64 = 1.32;

const TABLE_PT: f64 = 9.5;
const TABLE_LEADING: f64 = TABLE_PT * MM_PER_PT * 1.25;
const TABLE_GAP: f64 = 3.0;

/// A column of a table: its head, its share of the width, and whether it holds figures.
pub(crate) struct Column {
    pub(crate) head: String,
    pub(crate) share: f64,
    pub(crate) is_figure: bool,
}

/// A document in the making.
pub(crate) struct Flow {
    writer: Writer,
    page: Page,
    y: f64,
    number: usize,
    running: String,
    unknown: Vec<char>,
}

impl Flow {
    /// Begins a document; `running` stands at the foot of every page beside its number.
    pub(crate) fn new(title: &str, paper: Paper, running: &str) -> Self {
        let (width, height) = paper.size_mm();
        Self {
            writer: Writer::new(title),
            page: Page::new(width, height),
            y: HEAD_MM,
            number: 1,
            running: running.to_owned(),
            unknown: Vec::new(),
        }
    }

    pub(crate) fn width(&self) -> f64 {
        self.page.width - 2.0 * SIDE_MM
    }

    pub(crate) fn left(&self) -> f64 {
        SIDE_MM
    }

    pub(crate) fn y(&self) -> f64 {
        self.y
    }

    /// The page that is being filled, counted from one.
    pub(crate) fn number(&self) -> usize {
        self.number
    }

    fn bottom(&self) -> f64 {
        self.page.height - FOOT_MM
    }

    /// Puts a mark where the caller says.
    pub(crate) fn mark(&mut self, mark: Mark) {
        self.page.marks.push(mark);
    }

    pub(crate) fn space(&mut self, mm: f64) {
        self.y += mm;
    }

    pub(crate) fn down_to(&mut self, y: f64) {
        self.y = self.y.max(y);
    }

    /// Begins a new page unless `mm` more fit on this one.
    pub(crate) fn need(&mut self, mm: f64) -> bool {
        let is_full = self.y + mm > self.bottom();
        if is_full {
            self.new_page();
        }
        is_full
    }

    pub(crate) fn new_page(&mut self) {
        // A title page carries no number, as books have it.
        if self.number > 1 {
            self.foot();
        }
        let blank = Page::new(self.page.width, self.page.height);
        let full = mem::replace(&mut self.page, blank);
        self.writer.page(&full);
        self.number += 1;
        self.y = HEAD_MM;
    }

    /// Numbers the first page too, for a document without a title page.
    pub(crate) fn foot(&mut self) {
        let y = self.page.height - FOOT_MM / 2.0;
        let size_pt = 9.0;
        let number = self.number.to_string();
        let x = self.page.width - SIDE_MM - Face::Text.width(&number, size_pt);
        let (left, width) = (SIDE_MM, self.width());
        self.mark(rule(left, y - 4.0, width, Ink::Line));
        let text = |x: f64, text: String| Mark::Text {
            x,
            y,
            size_pt,
            face: Face::Text,
            ink: Ink::Soft,
            text,
        };
        let running = self.running.clone();
        self.mark(text(left, running));
        self.mark(text(x, number));
    }

    fn note_unknown(&mut self, runs: &[Run]) {
        for run in runs {
            self.unknown.extend(unknown_letters(&run.text));
        }
        self.unknown.sort_unstable();
        self.unknown.dedup();
    }

    /// A paragraph across the page or, indented, beside something; lines that do not fit go on to the next page.
    pub(crate) fn paragraph(&mut self, runs: &[Run], size_pt: f64, indent: f64, width: f64) {
        self.note_unknown(runs);
        let leading = size_pt * MM_PER_PT * LEADING;
        let words = Words::of(runs);
        let lines = words.fill(size_pt, width);
        let left = SIDE_MM + indent;
        for at in 0..lines.count() {
            self.need(leading);
            let marks = lines.line(at, self.y, leading, |_| left);
            self.page.marks.extend(marks);
            self.y += leading;
        }
    }

    /// How tall a paragraph will be.
    pub(crate) fn height_of(&self, runs: &[Run], size_pt: f64, width: f64) -> f64 {
        Words::of(runs).fill(size_pt, width).count() as f64 * size_pt * MM_PER_PT * LEADING
    }

    /// A paragraph in the middle of the page.
    pub(crate) fn centred(&mut self, runs: &[Run], size_pt: f64) {
        self.note_unknown(runs);
        let leading = size_pt * MM_PER_PT * LEADING;
        let words = Words::of(runs);
        let lines = words.fill(size_pt, self.width());
        let (top, middle) = (self.y, self.page.width / 2.0);
        self.page
            .marks
            .extend(lines.marks(top, leading, |width| middle - width / 2.0));
        self.y += leading * lines.count() as f64;
    }

    pub(crate) fn heading(&mut self, text: &str, size_pt: f64) {
        self.need(size_pt * 3.0 * MM_PER_PT + 14.0);
        let width = self.width();
        self.paragraph(
            &[Run::new(Face::Title, Ink::Accent, text)],
            size_pt,
            0.0,
            width,
        );
        self.y += 1.2;
        let (left, y) = (SIDE_MM, self.y);
        self.mark(rule(left, y, width, Ink::Accent));
        self.y += 4.0;
    }

    /// A photo in a box, kept in its proportions; says how tall it became, nothing where it is no JPEG.
    pub(crate) fn picture(&mut self, jpeg: Jpeg, x: f64, y: f64, widest: f64, tallest: f64) -> f64 {
        let (width, height) = fitted(&jpeg, widest, tallest);
        self.mark(Mark::Picture {
            x,
            y,
            width,
            height,
            jpeg,
        });
        height
    }

    /// A table whose head comes again on every page. Columns of words come first, then those of figures.
    pub(crate) fn table(&mut self, columns: &[Column], rows: &[Vec<String>]) {
        let head: Vec<String> = columns.iter().map(|column| column.head.clone()).collect();
        self.need(TABLE_LEADING * 4.0);
        self.row(columns, &head, true);
        for row in rows {
            let lines = columns
                .iter()
                .zip(row)
                .map(|(column, cell)| {
                    let words = Words::of(&[Run::text(cell.clone())]);
                    words
                        .fill(TABLE_PT, self.width() * column.share - TABLE_GAP)
                        .count()
                })
                .max()
                .unwrap_or(1);
            if self.need(TABLE_LEADING * lines as f64 + 1.6) {
                self.row(columns, &head, true);
            }
            self.row(columns, row, false);
        }
    }

    fn row(&mut self, columns: &[Column], cells: &[String], is_head: bool) {
        let (ink, line) = if is_head {
            (Ink::Soft, Ink::Accent)
        } else {
            (Ink::Plain, Ink::Line)
        };
        let (top, width) = (self.y, self.width());
        let mut left = SIDE_MM;
        for (column, cell) in columns.iter().zip(cells) {
            let runs = [Run::new(Face::Text, ink, cell.clone())];
            self.note_unknown(&runs);
            let across = width * column.share;
            let words = Words::of(&runs);
            let lines = words.fill(TABLE_PT, across - TABLE_GAP);
            let place = |width: f64| {
                left + if column.is_figure {
                    across - width
                } else {
                    0.0
                }
            };
            self.page
                .marks
                .extend(lines.marks(top, TABLE_LEADING, place));
            self.y = self.y.max(top + TABLE_LEADING * lines.count() as f64);
            left += across;
        }
        let y = self.y + 0.8;
        self.mark(rule(SIDE_MM, y, width, line));
        self.y = y + 0.8;
    }

    /// Writes the last page; the remarks name letters that could not be printed.
    pub(crate) fn finish(mut self) -> (Vec<u8>, Vec<String>) {
        self.foot();
        self.writer.page(&self.page);
        let letters: Vec<String> = self.unknown.iter().map(char::to_string).collect();
        let remarks = if letters.is_empty() {
            Vec::new()
        } else {
            vec![format!(
                "These letters are left out, because the type does not have them: {}.",
                letters.join(" ")
            )]
        };
        (self.writer.finish(), remarks)
    }
}

/// The largest size of a photo within a box.
pub(crate) fn fitted(jpeg: &Jpeg, widest: f64, tallest: f64) -> (f64, f64) {
    let shape = f64::from(jpeg.height) / f64::from(jpeg.width);
    let width = widest.min(tallest / shape);
    (width, width * shape)
}
