//! Lays one label out: the largest type that fits, and what has to go where none does.

use crate::face::{Face, unknown_letters};
use crate::items::{self, Item, Place};
use crate::page::{Ink, MM_PER_PT, Mark, rule};
use crate::qr::{self, Modules};
use crate::record::Label;
use crate::sheet::Size;
use crate::wrap::{Run, wrap};
use crate::{Refusal, link};

/// The smallest type: its x-height is 0.9 mm, what food law asks of the smallest packages (from memory).
const SMALLEST_PT: f64 = 5.75;
/// The largest type for the small lines; larger labels gain room, not shouting.
const LARGEST_PT: f64 = 11.0;
/// A module narrower than this blurs on kitchen printers and in phone cameras (common practice, no source).
const NARROWEST_MODULE_MM: f64 = 0.33;
const WIDEST_MODULE_MM: f64 = 0.55;
const STEP_PT: f64 = 0.25;

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
    let mut remarks = Vec::new();
    let mut items = items::of(label);
    let mut code = code.as_ref();
    let mut left_out: Vec<&str> = Vec::new();
    let marks = loop {
        if let Some(marks) = largest(label, &items, code, size) {
            break marks;
        }
        let next = items
            .iter()
            .enumerate()
            .filter_map(|(at, item)| item.may_go.map(|rank| (rank, at)))
            .min();
        match next {
            Some((_, at)) => left_out.push(items.remove(at).what),
            None if code.is_some() => {
                code = None;
                left_out.push("the code for the phone");
            }
            None => return Err(too_small(label, &items, size)),
        }
    };
    if !left_out.is_empty() {
        remarks.push(format!(
            "A label of {} has no room for {} of {}; a larger one would.",
            size.words(),
            listed(&left_out),
            label.lot
        ));
    }
    let missing = items::missing(label);
    if !missing.is_empty() {
        remarks.push(format!(
            "The label of {} should also say {}, which is not written down yet.",
            label.lot,
            listed(&missing)
        ));
    }
    remarks.extend(unprintable(&label.name, &items).map(|letters| {
        format!(
            "The label of {} leaves out letters that its type does not have: {letters}.",
            label.lot
        )
    }));
    Ok(Laid { marks, remarks })
}

fn unprintable(name: &str, items: &[Item]) -> Option<String> {
    let all: String = items
        .iter()
        .flat_map(Item::text)
        .chain([name.to_owned()])
        .collect();
    let letters: Vec<String> = unknown_letters(&all).iter().map(char::to_string).collect();
    (!letters.is_empty()).then(|| letters.join(" "))
}

/// `a`, `a and b`, `a, b and c`.
pub(crate) fn listed(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [many @ .., last] => format!("{} and {last}", many.join(", ")),
    }
}

fn too_small(label: &Label, items: &[Item], size: Size) -> Refusal {
    let enough = (1..=Size::TALLEST_MM as u32)
        .map(|height| Size {
            height_mm: f64::from(height),
            ..size
        })
        .filter(|taller| taller.height_mm > size.height_mm)
        .find(|taller| largest(label, items, None, *taller).is_some());
    let name = &label.name;
    match enough {
        Some(enough) => Refusal::new(
            "label.height_mm",
            format!(
                "What must stand on the label of {name} does not fit on {}: at this width it needs a height of {:.0} mm.",
                size.words(),
                enough.height_mm
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

/// The label in the largest type that fits, or nothing.
fn largest(label: &Label, items: &[Item], code: Option<&Modules>, size: Size) -> Option<Vec<Mark>> {
    let steps = ((LARGEST_PT - SMALLEST_PT) / STEP_PT) as u32;
    (0..=steps)
        .map(|step| LARGEST_PT - STEP_PT * f64::from(step))
        .find_map(|body_pt| Attempt::new(size, body_pt).lay(label, items, code))
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

    fn lay(mut self, label: &Label, items: &[Item], code: Option<&Modules>) -> Option<Vec<Mark>> {
        let lot = Run::strong(label.lot.clone());
        if let Some(code) = code {
            self.code(code, &lot)?;
        }
        let mut y = self.name(&label.name)?;
        y += self.leading * 0.1;
        let mut facts: Vec<Vec<Run>> = lines_at(items, Place::Plants);
        let plants = facts.len();
        facts.extend(lines_at(items, Place::Facts));
        if code.is_none() {
            facts.insert(plants, vec![Run::soft("Lot "), lot]);
        }
        for (at, line) in facts.iter().enumerate() {
            y = self.paragraph(line, y)?;
            if at + 1 == plants {
                y += self.leading * 0.35;
            }
        }
        let foot = lines_at(items, Place::Foot);
        if !foot.is_empty() {
            y = self.foot(&foot, y)?;
        }
        (y <= self.bottom() + 1e-6).then_some(self.marks)
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
    fn code(&mut self, code: &Modules, lot: &Run) -> Option<()> {
        let share = (self.size.width_mm * 0.30).min(self.size.height_mm * 0.5);
        let module = (share / code.side as f64).clamp(NARROWEST_MODULE_MM, WIDEST_MODULE_MM);
        let side = module * code.side as f64;
        // ISO/IEC 18004 asks for four modules of white around the code.
        let quiet = 4.0 * module;
        let edge = self.margin.max(quiet);
        let (x, y) = (self.size.width_mm - edge - side, edge);
        let lot_pt = (self.body_pt * 1.15).max(7.5);
        let width = lot.face.width(&lot.text, lot_pt);
        let left = x.min(self.size.width_mm - self.margin - width) - quiet;
        let top = y + side + quiet * 0.5;
        let tall = lot_pt * MM_PER_PT * 1.15;
        if left - self.margin < self.size.width_mm * 0.4 || top + tall > self.bottom() {
            return None;
        }
        self.marks.push(Mark::Code {
            x,
            y,
            module,
            modules: code.clone(),
        });
        let lines = wrap(std::slice::from_ref(lot), lot_pt, |_| f64::INFINITY);
        let right = self.size.width_mm - self.margin;
        self.marks.extend(lines.marks(top, lot_pt, tall, |width| {
            (x + side / 2.0 - width / 2.0).min(right - width)
        }));
        self.corner = Some((left, top + tall));
        Some(())
    }

    /// The name as large as it can be in two lines, or in three where it is long.
    fn name(&mut self, name: &str) -> Option<f64> {
        let run = [Run::new(Face::Title, Ink::Plain, name.trim())];
        let top = self.margin;
        for (most, sizes) in [
            (1, [2.1, 1.9, 1.7]),
            (2, [1.9, 1.7, 1.5]),
            (3, [1.5, 1.35, 1.2]),
        ] {
            for size in sizes {
                let size_pt = self.body_pt * size;
                let leading = size_pt * MM_PER_PT * 1.05;
                let lines = wrap(&run, size_pt, |at| self.room(top + leading * at as f64));
                if lines.count() <= most && !lines.has_cut_word {
                    // Capitals begin at the margin, not their line's box.
                    let lift = size_pt * MM_PER_PT * 0.16;
                    self.marks
                        .extend(lines.marks(top - lift, size_pt, leading, |_| self.margin));
                    return Some(top - lift + leading * lines.count() as f64);
                }
            }
        }
        None
    }

    fn paragraph(&mut self, line: &[Run], top: f64) -> Option<f64> {
        let lines = wrap(line, self.body_pt, |at| {
            self.room(top + self.leading * at as f64)
        });
        let end = top + self.leading * lines.count() as f64;
        if lines.has_cut_word || end > self.bottom() + 1e-6 {
            return None;
        }
        self.marks
            .extend(lines.marks(top, self.body_pt, self.leading, |_| self.margin));
        Some(end)
    }

    /// How to keep it and what to beware of, at the bottom edge under a rule, clear of the corner where there is room.
    fn foot(&mut self, foot: &[Vec<Run>], after: f64) -> Option<f64> {
        let gap = self.leading * 0.5;
        let full = self.size.width_mm - 2.0 * self.margin;
        let height: f64 = foot
            .iter()
            .map(|line| wrap(line, self.body_pt, |_| full).count() as f64 * self.leading)
            .sum();
        let lowest = self.bottom() - height;
        let clear = self.corner.map_or(0.0, |(_, bottom)| bottom);
        let top = if lowest - gap * 0.5 >= clear {
            lowest.max(after + gap)
        } else {
            after + gap
        };
        let width = self.room(top - gap * 0.5);
        self.marks
            .push(rule(self.margin, top - gap * 0.5, width, Ink::Accent));
        let mut y = top;
        for line in foot {
            y = self.paragraph(line, y)?;
        }
        Some(y)
    }
}

fn lines_at(items: &[Item], place: Place) -> Vec<Vec<Run>> {
    items
        .iter()
        .filter(|item| item.place == place)
        .flat_map(|item| item.lines.clone())
        .collect()
}
