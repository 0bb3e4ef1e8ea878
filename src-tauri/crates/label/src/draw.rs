//! Lays one label out: the largest type that fits, and what has to go where none does.

use crate::face::{Face, unknown_letters};
use crate::items::{self, Item, Place};
use crate::page::{Ink, MM_PER_PT, Mark, rule};
use crate::qr::{self, Modules};
use crate::record::Label;
use crate::sheet::Size;
use crate::wrap::{Run, Words};
use crate::{Refusal, link};

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

/// A label as marks from its own top left corner, with what the maker should know.
pub(crate) struct Laid {
    pub(crate) marks: Vec<Mark>,
    pub(crate) remarks: Vec<String>,
}

/// Lays a label out.
pub(crate) fn lay(label: &Label, size: Size) -> Result<Laid, Refusal> {
    if label.name.trim().is_empty() {
        return Err(Refusal::new(
            "name",
            "A label needs the name of what is in it.",
        ));
    }
    if label.lot.trim().is_empty() {
        return Err(Refusal::new(
            "lot",
            "A label needs the lot code, or nothing leads back from it.",
        ));
    }
    let code = qr::encode(&link::of(&label.lot, &label.name));
    let mut code = code.as_ref();
    let all = items::of(label);
    let mut items = all.clone();
    let mut left_out: Vec<&str> = Vec::new();
    let marks = loop {
        if let Some(marks) = largest(&Copy::of(label, &items, code), size) {
            break marks;
        }
        let next = items
            .iter()
            .enumerate()
            .filter_map(|(at, item)| item.may_go.map(|rank| (rank, at)))
            .min();
        match next {
            Some((rank, at)) if rank < items::AFTER_THE_CODE || code.is_none() => {
                left_out.push(items.remove(at).what);
            }
            // What the code opens is in the journal too; a poison line may be needed when no phone is at hand.
            _ if code.is_some() => {
                code = None;
                left_out.push("the code for the phone");
            }
            _ => return Err(too_small(label, &items, size)),
        }
    };
    let remarks = remarks(label, &all, size, &left_out);
    Ok(Laid { marks, remarks })
}

fn remarks(label: &Label, items: &[Item], size: Size, left_out: &[&str]) -> Vec<String> {
    let (lot, mut remarks) = (&label.lot, Vec::new());
    if !left_out.is_empty() {
        let (size, what) = (size.words(), listed(left_out));
        remarks.push(format!(
            "A label of {size} has no room for {what} of {lot}; a larger one would."
        ));
    }
    let missing = items::missing(label);
    if !missing.is_empty() {
        let what = listed(&missing);
        remarks.push(format!(
            "The label of {lot} should also say {what}, which is not written down yet."
        ));
    }
    let words = items.iter().flat_map(Item::text);
    let letters = unknown_letters(&words.chain([label.name.clone()]).collect::<String>());
    if !letters.is_empty() {
        let letters: Vec<String> = letters.iter().map(char::to_string).collect();
        let letters = letters.join(" ");
        remarks.push(format!(
            "The label of {lot} leaves out letters that its type does not have: {letters}."
        ));
    }
    remarks
}

/// `a`, `a and b`, `a, b and c`.
fn listed(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [many @ .., last] => format!("{} and {last}", many.join(", ")),
    }
}

fn too_small(label: &Label, items: &[Item], size: Size) -> Refusal {
    let copy = Copy::of(label, items, None);
    // The heights beyond the asked one, in whole millimetres.
    let enough = (1..=Size::TALLEST_MM as u32)
        .map(f64::from)
        .filter(|height_mm| *height_mm > size.height_mm)
        .find(|height_mm| {
            largest(
                &copy,
                Size {
                    height_mm: *height_mm,
                    ..size
                },
            )
            .is_some()
        });
    let name = &label.name;
    match enough {
        Some(height) => Refusal::new(
            "label.height_mm",
            format!(
                "What must stand on the label of {name} does not fit on {}: at this width it needs a height of {height:.0} mm.",
                size.words()
            ),
        ),
        None => Refusal::new(
            "label.width_mm",
            format!(
                "What must stand on the label of {name} does not fit on a label {:.0} mm wide: choose a wider one.",
                size.width_mm
            ),
        ),
    }
}

/// What is to be set, measured once for all sizes of type.
struct Copy<'a> {
    name: Words,
    lot: Words,
    lot_width: f64,
    code: Option<&'a Modules>,
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
    fn of(label: &Label, items: &[Item], code: Option<&'a Modules>) -> Self {
        let lot = Run::strong(label.lot.trim());
        let lot_width = lot.face.width(&lot.text, 1.0);
        let place = |place: Place| -> Vec<Vec<Run>> {
            let mut lines: Vec<Vec<Run>> = items
                .iter()
                .filter(|item| item.place == place)
                .flat_map(|item| item.lines.clone())
                .collect();
            if place == Place::Facts && code.is_none() {
                lines.insert(
                    0,
                    vec![
                        Run::soft(label.language.say("Lot ").into_owned()),
                        lot.clone(),
                    ],
                );
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
        Self {
            name: Words::of(&[Run::new(Face::Title, Ink::Plain, label.name.trim())]),
            lot: Words::of(std::slice::from_ref(&lot)),
            lot_width,
            code,
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

/// The label in the largest type that fits, or nothing.
fn largest(copy: &Copy<'_>, size: Size) -> Option<Vec<Mark>> {
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
            corner: None,
        }
    }

    fn lay(mut self, copy: &Copy<'_>, lots: &Lots) -> Option<Vec<Mark>> {
        if let Some(code) = copy.code {
            self.code(code, copy)?;
        }
        let mut y = self.name(&copy.name)? + self.leading * 0.2;
        for line in &lots.plants {
            y = self.paragraph(line, y)?;
        }
        y += self.leading * 0.35;
        for line in &lots.facts {
            y = self.paragraph(line, y)?;
        }
        self.foot(&lots.foot, y)?;
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
        self.marks.push(Mark::Code {
            x,
            y,
            module,
            modules,
        });
        let lines = copy.lot.wrap(lot_pt, |_| f64::INFINITY)?;
        let middle = x + side / 2.0;
        let place = |width: f64| (middle - width / 2.0).min(right - width);
        self.marks.extend(lines.marks(top, tall, place));
        self.corner = Some((left, top + tall));
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
                    self.marks.extend(marks);
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
        self.marks.extend(marks);
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
