//! Fits a label's copy into its size: the largest type, the name, the code in its corner, the foot.

use message::{Argument, say};
use words::Language;

use crate::face::Face;
use crate::items::{Item, Place};
use crate::page::{Ink, Mark, Page, rule};
use crate::part::{Role, part};
use crate::plant::{self, Herb};
use crate::qr::Modules;
use crate::record::Label;
use crate::say::{plain, text};
use crate::size::Size;
use crate::units::MM_PER_PT;
use crate::wrap::{Run, Words};

/// The smallest type: its x-height is 0.9 mm, what food law asks of the smallest packages (from memory).
const SMALLEST_PT: f64 = 5.75;
/// The largest type for the small lines; larger labels gain room, not shouting.
const LARGEST_PT: f64 = 11.0;
const STEP_PT: f64 = 0.25;
/// A line for every item is given up below this for larger type with the items run together.
const SMALLEST_APART_PT: f64 = 6.25;
/// A module narrower than this blurs on kitchen printers and in phone cameras (common practice, no source).
const NARROWEST_MODULE_MM: f64 = 0.33;
const WIDEST_MODULE_MM: f64 = 0.55;
/// A plant that is smaller is a smudge, and one that is taller takes the room of what must be read.
const SHORTEST_MM: f64 = 11.0;
const TALLEST_MM: f64 = 26.0;
const GAP_MM: f64 = 0.8;

/// What is to be set, measured once for all sizes of type.
pub(crate) struct Copy<'a> {
    language: Language,
    name: Words,
    lot: Words,
    lot_width: f64,
    code: Option<&'a Modules>,
    /// What the code is for, as whoever hears the label is told.
    opens: String,
    /// The plant, and whether it stands beside the code or below it.
    drawn: Option<(&'a Herb, bool)>,
    /// A line for every item.
    apart: Lots,
    /// Items of a kind run together, for small labels.
    run_on: Lots,
}

/// The paragraphs in their three places.
struct Lots {
    plants: Vec<Words>,
    facts: Vec<Words>,
    foot: Vec<Words>,
}

impl<'a> Copy<'a> {
    pub(crate) fn of(label: &Label, items: &[Item], code: Option<&'a Modules>) -> Self {
        let lot = Run::strong(label.lot.trim());
        let lot_width = lot.face.width(&lot.text, 1.0);
        let place = |place: Place| -> Vec<Vec<Run>> {
            let mut lines: Vec<Vec<Run>> = items
                .iter()
                .filter(|item| item.place == place)
                .flat_map(|item| item.lines.clone())
                .collect();
            if place == Place::Facts && code.is_none() {
                let message = say!("label-lot", lot = Argument::own(label.lot.trim()));
                lines.insert(0, text(label.language, &message));
            }
            lines
        };
        let each = |lines: Vec<Vec<Run>>| lines.iter().map(|line| Words::of(line)).collect();
        let one = |lines: Vec<Vec<Run>>, between: &str| {
            let mut joined: Vec<Run> = Vec::new();
            for line in lines {
                if !joined.is_empty() {
                    joined.push(Run::soft(between));
                }
                joined.extend(line);
            }
            vec![Words::of(&joined)]
        };
        let opens = match label.code {
            Some(_) => say!("paper-recipe-code"),
            None => say!("paper-lot-code", lot = Argument::own(label.lot.trim())),
        };
        Self {
            language: label.language,
            name: Words::of(&[Run::new(Face::Title, Ink::Plain, label.name.trim())]),
            lot: Words::of(std::slice::from_ref(&lot)),
            lot_width,
            code,
            opens: plain(label.language, &opens),
            drawn: None,
            apart: Lots {
                plants: each(place(Place::Plants)),
                facts: each(place(Place::Facts)),
                foot: each(place(Place::Foot)),
            },
            run_on: Lots {
                plants: one(place(Place::Plants), "; "),
                facts: one(place(Place::Facts), "\u{a0}· "),
                foot: one(place(Place::Foot), " "),
            },
        }
    }
}

impl<'a> Copy<'a> {
    /// The same with a plant beside the code or below it.
    pub(crate) fn with(self, herb: &'a Herb, is_beside: bool) -> Self {
        Self {
            drawn: Some((herb, is_beside)),
            ..self
        }
    }
}

/// The label in the largest type that fits, or nothing.
pub(crate) fn largest(copy: &Copy<'_>, size: Size) -> Option<Vec<Mark>> {
    let lay = |body_pt: f64, lots: &Lots| Attempt::new(size, body_pt).lay(copy, lots);
    // What does not fit in the smallest type fits in none.
    lay(SMALLEST_PT, &copy.run_on)?;
    let steps = ((LARGEST_PT - SMALLEST_PT) / STEP_PT) as u32;
    let sizes = || (0..=steps).map(|step| LARGEST_PT - STEP_PT * f64::from(step));
    sizes()
        .take_while(|body_pt| *body_pt >= SMALLEST_APART_PT)
        .find_map(|body_pt| lay(body_pt, &copy.apart))
        .or_else(|| sizes().find_map(|body_pt| lay(body_pt, &copy.run_on)))
}

/// One try at one size of type.
struct Attempt {
    size: Size,
    body_pt: f64,
    margin: f64,
    leading: f64,
    marks: Vec<Mark>,
    /// The lot, which stands under the code and is read after the plants.
    lot: Option<Mark>,
    /// The code and the plant, which are read last.
    pictures: Vec<Mark>,
    /// The box in the top right corner that text must keep clear of: its left edge and its bottom.
    corner: Option<(f64, f64)>,
}

impl Attempt {
    fn new(size: Size, body_pt: f64) -> Self {
        Self {
            size,
            body_pt,
            margin: (size.width_mm.min(size.height_mm) * 0.07).clamp(1.8, 4.5),
            leading: body_pt * MM_PER_PT * 1.17,
            marks: Vec::new(),
            lot: None,
            pictures: Vec::new(),
            corner: None,
        }
    }

    fn lay(mut self, copy: &Copy<'_>, lots: &Lots) -> Option<Vec<Mark>> {
        if let Some(code) = copy.code {
            self.code(code, copy)?;
        }
        if let Some((herb, is_beside)) = copy.drawn {
            self.plant(herb, is_beside, copy.language)?;
        }
        let mut y = self.name(&copy.name)? + self.leading * 0.2;
        for line in &lots.plants {
            y = self.paragraph(line, y)?;
        }
        self.marks.extend(self.lot.take());
        y += self.leading * 0.35;
        for line in &lots.facts {
            y = self.paragraph(line, y)?;
        }
        self.foot(&lots.foot, y)?;
        self.marks.append(&mut self.pictures);
        Some(self.marks)
    }

    fn bottom(&self) -> f64 {
        self.size.height_mm - self.margin
    }

    /// How wide a line may be whose box begins at `top`.
    fn room(&self, top: f64) -> f64 {
        let right = match self.corner {
            Some((left, bottom)) if top < bottom => left,
            _ => self.size.width_mm - self.margin,
        };
        right - self.margin
    }

    /// The code in the corner with the lot below it, both read by whoever holds the bottle.
    fn code(&mut self, code: &Modules, copy: &Copy<'_>) -> Option<()> {
        let share = (self.size.width_mm * 0.30).min(self.size.height_mm * 0.5);
        let side = code.side as f64;
        let module = (share / side).clamp(NARROWEST_MODULE_MM, WIDEST_MODULE_MM);
        let side = module * side;
        // ISO/IEC 18004 asks for four modules of white around the code.
        let quiet = 4.0 * module;
        let edge = self.margin.max(quiet);
        let (x, y) = (self.size.width_mm - edge - side, edge);
        let lot_pt = (self.body_pt * 1.15).max(7.5);
        let right = self.size.width_mm - self.margin;
        let left = x.min(right - copy.lot_width * lot_pt) - quiet;
        let top = y + side + quiet;
        let tall = lot_pt * MM_PER_PT * 1.15;
        // Beside the code the name needs a column worth reading.
        if left - self.margin < self.size.width_mm * 0.4 || top + tall > self.bottom() {
            return None;
        }
        let modules = code.clone();
        let drawn = Mark::Code {
            x,
            y,
            module,
            modules,
        };
        let opens = Role::Figure(copy.opens.clone());
        self.pictures.push(part(opens, vec![drawn]));
        let lines = copy.lot.wrap(lot_pt, |_| f64::INFINITY)?;
        let middle = x + side / 2.0;
        let place = |width: f64| (middle - width / 2.0).min(right - width);
        self.lot = Some(part(Role::Paragraph, lines.marks(top, tall, place)));
        self.corner = Some((left, top + tall));
        Some(())
    }

    /// The plant as tall as the room allows: below the code and its lot, or beside both.
    fn plant(&mut self, herb: &Herb, is_beside: bool, language: Language) -> Option<()> {
        let (left, above) = self.corner?;
        let shape = plant::BOX.1 / plant::BOX.0;
        let wide = self.size.width_mm - self.margin - left;
        let (top, room) = match is_beside {
            true => (self.margin, above - self.margin),
            false => (
                above + GAP_MM,
                (self.bottom() - above - GAP_MM).min(wide * shape),
            ),
        };
        let height = room.min(TALLEST_MM);
        let across = height / shape;
        let x = match is_beside {
            true => left - across,
            false => left + (wide - across) / 2.0,
        };
        // The words keep half of the width, or they would run into many short lines.
        if height < SHORTEST_MM || x - self.margin < self.size.width_mm * 0.45 {
            return None;
        }
        let mut page = Page::new(0.0, 0.0);
        page.place(x, top, [plant::picture(herb, height, language)]);
        self.pictures.append(&mut page.marks);
        self.corner = Some((x.min(left), above.max(top + height)));
        Some(())
    }

    /// The name as large as it can be in two lines, or in three where it is long.
    fn name(&mut self, name: &Words) -> Option<f64> {
        let tries = [
            (1, [2.1, 1.9, 1.7]),
            (2, [1.9, 1.7, 1.5]),
            (3, [1.5, 1.35, 1.2]),
            (4, [1.35, 1.2, 1.0]),
        ];
        for (most, sizes) in tries {
            for size in sizes {
                let size_pt = self.body_pt * size;
                let leading = size_pt * MM_PER_PT * 1.05;
                // Capitals begin at the margin, not their line's box.
                let top = self.margin - size_pt * MM_PER_PT * 0.16;
                let lines = name.wrap(size_pt, |at| self.room(top + leading * at as f64));
                if let Some(lines) = lines.filter(|lines| lines.count() <= most) {
                    let marks = lines.marks(top, leading, |_| self.margin);
                    self.marks.push(part(Role::Title, marks));
                    return Some(top + leading * lines.count() as f64);
                }
            }
        }
        None
    }

    fn paragraph(&mut self, words: &Words, top: f64) -> Option<f64> {
        let lines = words.wrap(self.body_pt, |at| self.room(top + self.leading * at as f64))?;
        let end = top + self.leading * lines.count() as f64;
        if end > self.bottom() + 1e-6 {
            return None;
        }
        let marks = lines.marks(top, self.leading, |_| self.margin);
        self.marks.push(part(Role::Paragraph, marks));
        Some(end)
    }

    /// How to keep it and what to beware of, at the bottom edge under a rule, clear of the corner where there is room.
    fn foot(&mut self, foot: &[Words], after: f64) -> Option<()> {
        if foot.is_empty() {
            return Some(());
        }
        let gap = self.leading * 0.8;
        let full = self.size.width_mm - 2.0 * self.margin;
        let mut count = 0;
        for line in foot {
            count += line.wrap(self.body_pt, |_| full)?.count();
        }
        let lowest = self.bottom() - self.leading * count as f64;
        let clear = self.corner.map_or(0.0, |(_, bottom)| bottom);
        let is_clear = lowest - gap * 0.5 >= clear;
        let mut y = if is_clear {
            lowest.max(after + gap)
        } else {
            after + gap
        };
        let width = self.room(y - gap * 0.5);
        self.marks
            .push(rule(self.margin, y - gap * 0.5, width, Ink::Accent));
        for line in foot {
            y = self.paragraph(line, y)?;
        }
        Some(())
    }
}
