//! Tables that go on from page to page.

use super::{Flow, SIDE_MM};
use crate::face::Face;
use crate::page::{Ink, Mark, inks, rule};
use crate::part::{Role, part, part_of};
use crate::units::MM_PER_PT;
use crate::wrap::{Run, Words};

const TABLE_PT: f64 = 9.5;
const TABLE_LEADING: f64 = TABLE_PT * MM_PER_PT * 1.25;
const TABLE_GAP: f64 = 3.0;

/// A column of a table: its head, its share of the width, and whether it holds figures.
pub(crate) struct Column {
    pub(crate) head: String,
    pub(crate) share: f64,
    pub(crate) is_figure: bool,
}

impl Flow {
    /// A table whose head comes again on every page, for the eye alone. Columns of words come first, then those of figures.
    pub(crate) fn table(&mut self, columns: &[Column], rows: &[Vec<String>]) {
        let head: Vec<String> = columns.iter().map(|column| column.head.clone()).collect();
        self.need(TABLE_LEADING * 4.0);
        let first = self.row(columns, &head, true);
        self.mark(part(Role::Table, vec![first]));
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
                let again = self.row(columns, &head, true);
                let inks = inks(std::slice::from_ref(&again)).into_iter().cloned();
                self.page.marks.extend(inks);
            }
            let row = self.row(columns, row, false);
            self.mark(part_of(Role::Table, true, vec![row]));
        }
    }

    /// A row with the rule under it, still to be put into its table.
    fn row(&mut self, columns: &[Column], cells: &[String], is_head: bool) -> Mark {
        let (ink, line) = if is_head {
            (Ink::Soft, Ink::Accent)
        } else {
            (Ink::Plain, Ink::Line)
        };
        let (top, width) = (self.y, self.width());
        let mut left = SIDE_MM;
        let mut marks = Vec::new();
        for (column, cell) in columns.iter().zip(cells) {
            let runs = [Run::new(Face::Text, ink, cell.clone())];
            self.note_letters(&runs);
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
            let of = if is_head { Role::Head } else { Role::Cell };
            marks.push(part(of, lines.marks(top, TABLE_LEADING, place)));
            self.y = self.y.max(top + TABLE_LEADING * lines.count() as f64);
            left += across;
        }
        let y = self.y + 0.8;
        marks.push(rule(SIDE_MM, y, width, line));
        self.y = y + 0.8;
        part(Role::Row, marks)
    }
}
