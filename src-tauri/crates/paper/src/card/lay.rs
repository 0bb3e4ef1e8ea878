//! Where everything of a card stands: the largest type in which it fits on one side, or on two.

use message::{Argument, Message, say};

use super::sign::sign;
use super::{Card, Size, Weight};
use crate::face::Face;
use crate::page::{Ink, Mark, Page, rule};
use crate::part::{Role, item, part, part_of};
use crate::qr::{self, Modules};
use crate::say::{plain, runs, text};
use crate::units::MM_PER_PT;
use crate::wrap::{Run, Words};

/// Nothing on paper is smaller.
pub(super) const SMALLEST_PT: f64 = 7.0;
/// Before it is set smaller than this on one side, it goes on to the back.
const SMALLEST_ON_ONE_SIDE_PT: f64 = 7.5;
const STEP_PT: f64 = 0.25;
const LEADING: f64 = 1.24;
/// What stays together on one side, and how far it keeps from what stands above it.
pub(super) struct Block {
    pub(super) marks: Vec<Mark>,
    pub(super) height: f64,
    pub(super) gap: f64,
    /// A heading is never the last on its side.
    pub(super) leads: bool,
}

/// A card in one size of type.
pub(super) struct Setter<'a> {
    pub(super) card: &'a Card,
    pub(super) body_pt: f64,
    pub(super) width: f64,
    pub(super) code: Option<&'a Modules>,
}

/// The sides of a card.
pub(super) fn pages(card: &Card, size: Size) -> Vec<Page> {
    let (width, height) = size.size_mm();
    let (margin, largest) = match size {
        Size::A6 => (7.0, 9.5),
        Size::A5 | Size::HalfLetter => (10.0, 12.0),
    };
    let code = card.code.as_deref().and_then(qr::encode);
    let room = (width - 2.0 * margin, height - 2.0 * margin);
    let set = |body_pt: f64| {
        let setter = Setter {
            card,
            body_pt,
            width: room.0,
            code: code.as_ref(),
        };
        sides(setter.blocks(), room.1)
    };
    let sizes = |from: f64, to: f64| {
        let steps = ((from - to) / STEP_PT) as u32;
        (0..=steps).map(move |step| from - STEP_PT * f64::from(step))
    };
    let on = |most: usize, to: f64| sizes(largest, to).map(set).find(|it| it.len() <= most);
    let sides = on(1, SMALLEST_ON_ONE_SIDE_PT)
        .or_else(|| on(2, SMALLEST_PT))
        .unwrap_or_else(|| set(SMALLEST_PT));
    let count = sides.len();
    let page = |(at, marks): (usize, Vec<Mark>)| {
        let mut page = Page::new(width, height);
        page.place(margin, margin, marks);
        if count > 1 {
            let foot = Setter::foot(card, at + 1, count);
            let right = width - margin - Face::Text.width(&foot, SMALLEST_PT);
            page.marks.push(Mark::Text {
                x: right,
                y: height - margin * 0.45,
                size_pt: SMALLEST_PT,
                face: Face::Text,
                ink: Ink::Soft,
                text: foot,
            });
        }
        page
    };
    sides.into_iter().enumerate().map(page).collect()
}

/// Blocks under each other, on as many sides as they need.
fn sides(blocks: Vec<Block>, height: f64) -> Vec<Vec<Mark>> {
    let mut sides: Vec<Vec<Mark>> = vec![Vec::new()];
    let mut y = 0.0;
    let heights: Vec<f64> = blocks
        .iter()
        .map(|block| block.gap + block.height)
        .collect();
    for (at, block) in blocks.into_iter().enumerate() {
        let follows = match block.leads {
            true => heights.get(at + 1).copied().unwrap_or_default(),
            false => 0.0,
        };
        let is_first = y == 0.0;
        if !is_first && y + block.gap + block.height + follows > height {
            sides.push(Vec::new());
            y = 0.0;
        }
        if y > 0.0 {
            y += block.gap;
        }
        let mut side = Page::new(0.0, 0.0);
        side.place(0.0, y, block.marks);
        if let Some(last) = sides.last_mut() {
            last.extend(side.marks);
        }
        y += block.height;
    }
    sides
}

impl Setter<'_> {
    fn foot(card: &Card, side: usize, of: usize) -> String {
        let (side, of) = (Argument::count(side as u64), Argument::count(of as u64));
        let name = Argument::own(card.name.trim());
        card.language.tell(&say!("card-side", name, side, of))
    }

    fn leading(&self, size_pt: f64) -> f64 {
        size_pt * MM_PER_PT * LEADING
    }

    /// Sets a paragraph at (x, y) and says where it ends.
    pub(super) fn paragraph(
        &self,
        into: &mut Vec<Mark>,
        at: (f64, f64),
        width: f64,
        of: (&[Run], f64),
    ) -> f64 {
        let (runs, size_pt) = of;
        let leading = self.leading(size_pt);
        let words = Words::of(runs);
        let lines = words.fill(size_pt, width);
        into.extend(lines.marks(at.1, leading, |_| at.0));
        at.1 + leading * lines.count() as f64
    }

    fn blocks(&self) -> Vec<Block> {
        let card = self.card;
        let mut blocks = vec![self.head()];
        if !card.steps.is_empty() {
            blocks.push(self.heading(&say!("card-method")));
            let steps = card.steps.iter().enumerate();
            blocks.extend(steps.map(|(at, step)| self.step(at + 1, step)));
        }
        if !card.keeping.is_empty() {
            blocks.push(self.heading(&say!("card-keeping")));
            blocks.extend(card.keeping.iter().map(|line| self.line(line)));
        }
        if !card.ways.is_empty() {
            blocks.push(self.heading(&say!("card-ways")));
            blocks.extend(card.ways.iter().map(|line| self.line(line)));
        }
        blocks.push(self.heading(&say!("card-beware")));
        let cautions = card.cautions.iter();
        let cautions = cautions.enumerate();
        blocks.extend(cautions.map(|(at, (weight, line))| self.caution(at == 0, *weight, line)));
        if let Some(note) = &card.note {
            let mut marks = Vec::new();
            let runs = [Run::italic(note.as_str())];
            let height = self.paragraph(&mut marks, (0.0, 0.0), self.width, (&runs, self.body_pt));
            blocks.push(Block {
                marks: vec![part(Role::Paragraph, marks)],
                height,
                gap: 2.0,
                leads: false,
            });
        }
        blocks
    }

    fn heading(&self, of: &Message) -> Block {
        let mut said = Vec::new();
        let runs = runs(self.card.language, of, Face::Title, Ink::Accent);
        let size_pt = self.body_pt * 1.2;
        let height = self.paragraph(&mut said, (0.0, 0.0), self.width, (&runs, size_pt)) + 0.4;
        Block {
            marks: vec![
                part(Role::Heading, said),
                rule(0.0, height, self.width, Ink::Line),
            ],
            height: height + 0.6,
            gap: self.body_pt * 0.16,
            leads: true,
        }
    }

    /// Words that hang `indent` mm from the left, and `read` says what they are read as.
    fn hung(&self, line: &Message, indent: f64, read: impl FnOnce(Vec<Mark>) -> Mark) -> Block {
        let mut said = Vec::new();
        let words = text(self.card.language, line);
        let room = self.width - indent;
        let height = self.paragraph(&mut said, (indent, 0.0), room, (&words, self.body_pt));
        Block {
            marks: vec![read(said)],
            height,
            gap: self.body_pt * 0.06,
            leads: false,
        }
    }

    fn step(&self, number: usize, step: &Message) -> Block {
        let mut label = Vec::new();
        let figure = [Run::new(Face::Title, Ink::Accent, number.to_string())];
        self.paragraph(&mut label, (0.0, 0.0), self.width, (&figure, self.body_pt));
        let label = part(Role::Label, label);
        self.hung(step, self.body_pt * 0.55, |said| {
            let step = part(Role::Item, vec![label, part(Role::Body, said)]);
            let list = Role::List { is_numbered: true };
            part_of(list, number > 1, vec![step])
        })
    }

    fn line(&self, line: &Message) -> Block {
        self.hung(line, 0.0, |said| part(Role::Paragraph, said))
    }

    fn caution(&self, is_first: bool, weight: Weight, line: &Message) -> Block {
        let side = self.body_pt * MM_PER_PT * 0.85;
        let top = (self.leading(self.body_pt) - side) / 2.0;
        let drawn = sign(weight, top, side);
        let shows = match weight {
            // The words begin with it.
            Weight::Stop => None,
            Weight::Care => Some(say!("card-beware")),
            Weight::Note => Some(say!("card-good-to-know")),
        };
        match shows {
            Some(shows) => {
                let shows = plain(self.card.language, &shows);
                let sign = part(Role::Figure(shows), drawn);
                self.hung(line, self.body_pt * 0.55, |said| {
                    item(is_first, [vec![sign], said].concat())
                })
            }
            None => {
                let mut block = self.hung(line, self.body_pt * 0.55, |said| item(is_first, said));
                block.marks.extend(drawn);
                block
            }
        }
    }
}
