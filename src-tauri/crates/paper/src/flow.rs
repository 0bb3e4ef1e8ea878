//! Pages that fill from the top: paragraphs, photos and table rows one under the other, a new page when one is full.

mod table;

use std::collections::BTreeSet;
use std::mem;

use message::{Argument, say};
use words::Language;

use crate::drawn::Drawn;
use crate::face::{Face, unknown_letters};
use crate::jpeg::Jpeg;
use crate::page::{Ink, Mark, Page, rule};
use crate::part::{Role, part, part_of};
use crate::pdf::Writer;
use crate::size::Paper;
use crate::units::MM_PER_PT;
use crate::wrap::{Run, Words};
pub(crate) use table::Column;

/// How photos are asked for: the upright JPEG of a key, small enough to print a few centimetres wide.
pub type Photos<'a> = dyn FnMut(&str) -> Option<Vec<u8>> + 'a;

const SIDE_MM: f64 = 22.0;
const HEAD_MM: f64 = 20.0;
const FOOT_MM: f64 = 24.0;
/// Type of running text in points, and its leading as a share of it.
pub(crate) const BODY_PT: f64 = 10.5;
const LEADING: f64 = 1.32;

/// A document in the making.
pub(crate) struct Flow {
    writer: Writer,
    page: Page,
    y: f64,
    number: usize,
    running: String,
    /// Every text so far, of which `finish` names the letters that the type lacks.
    letters: BTreeSet<char>,
}

impl Flow {
    /// Begins a document; its title stands at the foot of every page beside its number.
    pub(crate) fn new(title: &str, language: Language, paper: Paper) -> Self {
        let (width, height) = paper.size_mm();
        Self {
            writer: Writer::new(title, language),
            page: Page::new(width, height),
            y: HEAD_MM,
            number: 1,
            running: title.to_owned(),
            letters: BTreeSet::new(),
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

    /// Puts a mark drawn for an own origin where the caller says.
    pub(crate) fn place(&mut self, left: f64, top: f64, mark: Mark) {
        self.page.place(left, top, [mark]);
    }

    pub(crate) fn space(&mut self, mm: f64) {
        self.y += mm;
    }

    pub(crate) fn down_to(&mut self, y: f64) {
        self.y = self.y.max(y);
    }

    /// Begins a new page unless `mm` more fit on this one.
    pub(crate) fn need(&mut self, mm: f64) -> bool {
        let is_full = self.is_full(mm);
        if is_full {
            self.new_page();
        }
        is_full
    }

    fn is_full(&self, mm: f64) -> bool {
        self.y + mm > self.bottom()
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

    fn note_letters(&mut self, runs: &[Run]) {
        self.letters
            .extend(runs.iter().flat_map(|run| run.text.chars()));
    }

    /// A paragraph across the page or, indented, beside something; lines that do not fit go on to the next page.
    pub(crate) fn paragraph(&mut self, runs: &[Run], size_pt: f64, indent: f64, width: f64) {
        self.set(Role::Paragraph, runs, size_pt, (indent, width));
    }

    /// Text that is read as what `of` says, set like a paragraph whose indent and width are given.
    pub(crate) fn set(
        &mut self,
        of: Role,
        runs: &[Run],
        size_pt: f64,
        (indent, width): (f64, f64),
    ) {
        self.note_letters(runs);
        let leading = size_pt * MM_PER_PT * LEADING;
        let words = Words::of(runs);
        let lines = words.fill(size_pt, width);
        let left = SIDE_MM + indent;
        let (mut said, mut goes_on) = (Vec::new(), false);
        for at in 0..lines.count() {
            if self.is_full(leading) {
                if !said.is_empty() {
                    self.mark(part_of(of.clone(), goes_on, mem::take(&mut said)));
                    goes_on = true;
                }
                self.new_page();
            }
            said.extend(lines.line(at, self.y, leading, |_| left));
            self.y += leading;
        }
        if !said.is_empty() {
            self.mark(part_of(of, goes_on, said));
        }
    }

    /// A paragraph in a place of its own; the page goes on where it was.
    pub(crate) fn beside(&mut self, runs: &[Run], size_pt: f64, indent: f64, y: f64, width: f64) {
        self.note_letters(runs);
        let left = SIDE_MM + indent;
        let leading = size_pt * MM_PER_PT * LEADING;
        let words = Words::of(runs);
        let marks = words.fill(size_pt, width).marks(y, leading, |_| left);
        self.mark(part(Role::Paragraph, marks));
    }

    /// How tall a paragraph will be.
    pub(crate) fn height_of(&self, runs: &[Run], size_pt: f64, width: f64) -> f64 {
        Words::of(runs).fill(size_pt, width).count() as f64 * size_pt * MM_PER_PT * LEADING
    }

    /// Text in the middle of the page.
    pub(crate) fn centred(&mut self, of: Role, runs: &[Run], size_pt: f64) {
        self.note_letters(runs);
        let leading = size_pt * MM_PER_PT * LEADING;
        let words = Words::of(runs);
        let lines = words.fill(size_pt, self.width());
        let (top, middle) = (self.y, self.page.width / 2.0);
        let marks = lines.marks(top, leading, |width| middle - width / 2.0);
        self.mark(part(of, marks));
        self.y += leading * lines.count() as f64;
    }

    /// A title or a heading over a rule.
    pub(crate) fn heading(&mut self, of: Role, text: &str, size_pt: f64) {
        self.need(size_pt * 3.0 * MM_PER_PT + 14.0);
        let width = self.width();
        let runs = [Run::new(Face::Title, Ink::Accent, text)];
        self.set(of, &runs, size_pt, (0.0, width));
        self.y += 1.2;
        let (left, y) = (SIDE_MM, self.y);
        self.mark(rule(left, y, width, Ink::Accent));
        self.y += 4.0;
    }

    /// A photo in a box at (x, y), kept in its proportions, with what it shows.
    pub(crate) fn picture(
        &mut self,
        jpeg: Jpeg,
        (x, y): (f64, f64),
        (widest, tallest): (f64, f64),
        shows: String,
    ) {
        let (width, height) = fitted(&jpeg, widest, tallest);
        let picture = Mark::Picture {
            x,
            y,
            width,
            height,
            jpeg,
        };
        self.mark(part(Role::Figure(shows), vec![picture]));
    }

    /// Writes the last page; the remarks name letters that could not be printed.
    pub(crate) fn finish(mut self) -> Drawn<Vec<u8>> {
        self.foot();
        self.writer.page(&self.page);
        let letters = unknown_letters(&self.letters.iter().collect::<String>());
        let remark = (!letters.is_empty())
            .then(|| say!("paper-lacks-letters", letters = Argument::own(letters)));
        Drawn {
            bytes: self.writer.finish(),
            remarks: remark.into_iter().collect(),
        }
    }
}

/// The largest size of a photo within a box.
pub(crate) fn fitted(jpeg: &Jpeg, widest: f64, tallest: f64) -> (f64, f64) {
    let shape = f64::from(jpeg.height) / f64::from(jpeg.width);
    let width = widest.min(tallest / shape);
    (width, width * shape)
}
