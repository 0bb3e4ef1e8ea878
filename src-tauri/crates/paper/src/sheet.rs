//! Labels on paper: single ones, and sheets of them.

use message::{Argument, Message, Refusal, say};

use crate::draw::{self, Laid};
use crate::drawn::Drawn;
use crate::page::{Ink, Mark, Page};
use crate::pdf::Writer;
use crate::record::Label;
use crate::size::{Paper, Size};
use crate::svg;

/// Home printers leave about this much of the edge white (common practice, no source).
const PRINTER_EDGE_MM: f64 = 5.0;

/// How labels stand on a sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sheet {
    /// The paper.
    pub paper: Paper,
    /// The size of one label.
    pub label: Size,
    /// Left and top margin in mm of a pre-cut sheet; nothing centres the labels.
    pub margin_mm: Option<(f64, f64)>,
    /// Space between labels, across and down, in mm.
    pub gutter_mm: (f64, f64),
    /// Places of the first sheet that were used before.
    pub skip: usize,
    /// Whether fine lines show where to cut.
    pub cut_lines: bool,
}

/// The places of a sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grid {
    /// Labels across.
    pub columns: usize,
    /// Labels down.
    pub rows: usize,
    left: f64,
    top: f64,
    step: (f64, f64),
}

impl Grid {
    /// How many labels a sheet holds.
    #[must_use]
    pub const fn per_sheet(self) -> usize {
        self.columns * self.rows
    }

    /// The top left corner of a place in mm, the places counted along the rows.
    #[must_use]
    pub fn corner_mm(self, place: usize) -> (f64, f64) {
        let (row, column) = (place / self.columns, place % self.columns);
        (
            self.left + self.step.0 * column as f64,
            self.top + self.step.1 * row as f64,
        )
    }
}

impl Sheet {
    /// A plain sheet to be cut: labels centred, 2 mm apart, none used.
    #[must_use]
    pub const fn new(paper: Paper, label: Size) -> Self {
        Self {
            paper,
            label,
            margin_mm: None,
            gutter_mm: (2.0, 2.0),
            skip: 0,
            cut_lines: true,
        }
    }

    /// Where the labels stand.
    ///
    /// # Errors
    /// Margins or gutters that are none, a label larger than the paper, more places skipped than there are.
    pub fn grid(&self) -> Result<Grid, Refusal> {
        let (width, height) = self.paper.size_mm();
        let (across, down) = self.gutter_mm;
        if !(0.0..=50.0).contains(&across) || !(0.0..=50.0).contains(&down) {
            return Err(Refusal::new("gutter_mm", say!("sheet-gutter")));
        }
        if let Some((left, top)) = self.margin_mm
            && (!(0.0..=100.0).contains(&left) || !(0.0..=100.0).contains(&top))
        {
            return Err(Refusal::new("margin_mm", say!("sheet-margin")));
        }
        let fit = |paper: f64, label: f64, gutter: f64, margin: Option<f64>| {
            let room = paper - margin.map_or(2.0 * PRINTER_EDGE_MM, |margin| 2.0 * margin);
            // A hair for sizes such as a third of the paper, which decimals cannot hold.
            let count = ((room + gutter + 1e-6) / (label + gutter)).floor().max(0.0);
            let used = count * (label + gutter) - gutter;
            (count as usize, margin.unwrap_or((paper - used) / 2.0))
        };
        let (columns, left) = fit(
            width,
            self.label.width_mm,
            across,
            self.margin_mm.map(|margin| margin.0),
        );
        let (rows, top) = fit(
            height,
            self.label.height_mm,
            down,
            self.margin_mm.map(|margin| margin.1),
        );
        if columns == 0 || rows == 0 {
            let field = match columns {
                0 => "label.width_mm",
                _ => "label.height_mm",
            };
            let message = say!(
                "sheet-too-small",
                size = self.label.said(),
                paper = self.paper.said()
            );
            return Err(Refusal::new(field, message));
        }
        let step = (self.label.width_mm + across, self.label.height_mm + down);
        let grid = Grid {
            columns,
            rows,
            left,
            top,
            step,
        };
        let places = grid.per_sheet();
        if self.skip >= places {
            let message = say!(
                "sheet-places",
                places = Argument::count(places as u64),
                most = Argument::count(places as u64 - 1)
            );
            return Err(Refusal::new("skip", message));
        }
        Ok(grid)
    }
}

/// Labels on sheets, as a PDF.
///
/// # Errors
/// A label too small for what must stand on it, or a sheet that does not hold it.
pub fn sheet_pdf(labels: &[Label], sheet: &Sheet) -> Result<Drawn<Vec<u8>>, Refusal> {
    let Some(first) = labels.first() else {
        return Err(Refusal::new("bottles", say!("sheet-empty")));
    };
    let grid = sheet.grid()?;
    let (width, height) = sheet.paper.size_mm();
    let title = first.language.tell(&say!("labels-title"));
    let mut writer = Writer::new(&title, first.language);
    let mut remarks = Vec::new();
    let mut page = Page::new(width, height);
    for (at, label) in labels.iter().enumerate() {
        let place = (at + sheet.skip) % grid.per_sheet();
        if place == 0 && !page.marks.is_empty() {
            writer.page(&page);
            page = Page::new(width, height);
        }
        let laid = draw::lay(label, sheet.label)?;
        let (left, top) = grid.corner_mm(place);
        if sheet.cut_lines {
            page.place(left, top, cut_lines(sheet.label));
        }
        page.place(left, top, laid.marks);
        for remark in laid.remarks {
            if !remarks.contains(&remark) {
                remarks.push(remark);
            }
        }
    }
    writer.page(&page);
    Ok(Drawn {
        bytes: writer.finish(),
        remarks,
    })
}

/// One label on a page of its own size, as a PDF.
///
/// # Errors
/// A label too small for what must stand on it.
pub fn single_pdf(label: &Label, size: Size) -> Result<Drawn<Vec<u8>>, Refusal> {
    let (page, remarks) = single(label, size)?;
    let mut writer = Writer::new(&label.name, label.language);
    writer.page(&page);
    Ok(Drawn {
        bytes: writer.finish(),
        remarks,
    })
}

/// One label as an SVG file.
///
/// # Errors
/// A label too small for what must stand on it.
pub fn single_svg(label: &Label, size: Size) -> Result<Drawn<String>, Refusal> {
    let (page, remarks) = single(label, size)?;
    let title = say!(
        "label-title",
        name = Argument::own(label.name.as_str()),
        lot = Argument::own(label.lot.as_str())
    );
    let title = label.language.tell(&title);
    Ok(Drawn {
        bytes: svg::write(&page, &title),
        remarks,
    })
}

fn single(label: &Label, size: Size) -> Result<(Page, Vec<Message>), Refusal> {
    let Laid { marks, remarks } = draw::lay(label, size)?;
    let mut page = Page::new(size.width_mm, size.height_mm);
    page.place(0.0, 0.0, marks);
    Ok((page, remarks))
}

/// A hairline frame, half on each side of the label's edge.
fn cut_lines(size: Size) -> [Mark; 4] {
    const WIDTH: f64 = 0.1;
    let (width, height) = (size.width_mm, size.height_mm);
    let edge = |x: f64, y: f64, width: f64, height: f64| Mark::Box {
        x,
        y,
        width,
        height,
        ink: Ink::Line,
    };
    [
        edge(0.0, -WIDTH / 2.0, width, WIDTH),
        edge(0.0, height - WIDTH / 2.0, width, WIDTH),
        edge(-WIDTH / 2.0, 0.0, WIDTH, height),
        edge(width - WIDTH / 2.0, 0.0, WIDTH, height),
    ]
}
