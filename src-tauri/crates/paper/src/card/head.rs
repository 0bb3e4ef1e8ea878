//! The head of a card: its name, amounts and figures, and beside them its code and its herb.

use message::say;

use super::lay::{Block, SMALLEST_PT, Setter};
use crate::face::Face;
use crate::page::{Ink, Mark, Page, rule};
use crate::part::{Role, item, part};
use crate::plant;
use crate::say::{plain, runs, text};
use crate::wrap::{Run, space_after};

/// The share of the width that the code takes: a recipe of one herb then has modules of 0.65 mm on the smallest card,
/// which a picture at 150 dots an inch still holds when it is turned and blurred (measured).
const CODE_SHARE: f64 = 0.38;
const WIDEST_MODULE_MM: f64 = 0.72;
/// Where so much is left beside the code, the herb stands there; else under the code.
const ROOM_FOR_THE_HERB_MM: f64 = 85.0;
/// A plant fills about half of the width of its box.
const HERB_SHARE: f64 = 0.5;
const NARROWEST_MODULE_MM: f64 = 0.46;
/// Between columns, in mm; wider than the four modules of white that ISO/IEC 18004 asks for.
const GAP_MM: f64 = 3.5;

impl Setter<'_> {
    /// Name, amounts and facts, and beside them the code and the herb.
    pub(super) fn head(&self) -> Block {
        let card = self.card;
        let mut marks = Vec::new();
        let module = self.code.map_or(0.0, |code| {
            let share = self.width * CODE_SHARE / code.side as f64;
            share.clamp(NARROWEST_MODULE_MM, WIDEST_MODULE_MM)
        });
        let side = match self.code {
            Some(code) => module * code.side as f64,
            None if card.herb.is_some() => self.width * 0.28,
            None => 0.0,
        };
        let mut left = self.width - side - if side > 0.0 { GAP_MM } else { 0.0 };
        let is_beside = left > ROOM_FOR_THE_HERB_MM && self.code.is_some();
        let herb_wide = side * 1.15 * HERB_SHARE;
        if is_beside && card.herb.is_some() {
            left -= herb_wide + GAP_MM;
        }
        let name = [Run::new(Face::Title, Ink::Plain, card.name.trim())];
        let mut y = 0.0;
        let mut say = |of: Role, runs: &[Run], size_pt: f64| {
            let mut said = Vec::new();
            y = self.paragraph(&mut said, (0.0, y), left, (runs, size_pt));
            marks.push(part(of, said));
        };
        say(Role::Title, &name, self.body_pt * 1.9);
        let what = text(card.language, &card.preparation);
        say(Role::Paragraph, &what, self.body_pt);
        if !card.latin.is_empty() {
            let latin = [Run::italic(card.latin.join(", "))];
            say(Role::Paragraph, &latin, self.body_pt);
        }
        y += 1.5;
        marks.push(rule(0.0, y, left, Ink::Accent));
        y = self.amounts(&mut marks, y + 1.5, left);
        y = self.facts(&mut marks, y, left);
        let x = self.width - side;
        let mut beside = self.code(&mut marks, x, (side, module));
        let (middle, top, height) = match is_beside {
            true => (x - GAP_MM - herb_wide / 2.0, 0.0, side * 1.15),
            false => {
                let height = (y - beside).clamp(side * 0.95, side * 1.25);
                (x + side / 2.0, beside, height)
            }
        };
        if let Some(herb) = &card.herb {
            let drawn = plant::picture(herb, height, card.language);
            let (across, down) = plant::BOX;
            let mut page = Page::new(0.0, 0.0);
            page.place(middle - height * across / down / 2.0, top, [drawn]);
            marks.extend(page.marks);
            beside = beside.max(top + height);
        }
        Block {
            marks,
            height: y.max(beside),
            gap: 0.0,
            leads: false,
        }
    }

    fn amounts(&self, marks: &mut Vec<Mark>, top: f64, width: f64) -> f64 {
        let language = self.card.language;
        let size_pt = self.body_pt * 1.15;
        let amounts: Vec<Vec<Run>> = (self.card.amounts.iter())
            .map(|(amount, _)| vec![Run::strong(language.tell(amount).replace(' ', "\u{a0}"))])
            .collect();
        let across = |runs: &Vec<Run>| {
            let widths = runs.iter().map(|run| run.face.width(&run.text, size_pt));
            widths.sum::<f64>()
        };
        let column = amounts.iter().map(across).fold(0.0, f64::max) + 2.5;
        let mut y = top;
        for (at, (amount, (_, what))) in amounts.iter().zip(&self.card.amounts).enumerate() {
            let mut said = Vec::new();
            self.paragraph(&mut said, (0.0, y), width, (amount, size_pt));
            space_after(&mut said);
            let what = text(language, what);
            let of = (what.as_slice(), size_pt);
            y = self.paragraph(&mut said, (column, y), width - column, of) + 0.6;
            marks.push(item(at == 0, said));
        }
        y
    }

    fn facts(&self, marks: &mut Vec<Mark>, top: f64, width: f64) -> f64 {
        let language = self.card.language;
        let mut y = top + 1.0;
        for (at, (head, fact)) in self.card.facts.iter().enumerate() {
            let mut runs = runs(language, head, Face::Text, Ink::Soft);
            runs.push(Run::soft(" "));
            runs.extend(text(language, fact));
            let mut said = Vec::new();
            y = self.paragraph(&mut said, (0.0, y), width, (&runs, self.body_pt));
            marks.push(item(at == 0, said));
        }
        y
    }

    /// The code with what it is for; says where that ends.
    fn code(&self, marks: &mut Vec<Mark>, x: f64, of: (f64, f64)) -> f64 {
        let (side, module) = of;
        let Some(code) = self.code else {
            return 0.0;
        };
        let language = self.card.language;
        let holds = Role::Figure(plain(language, &say!("paper-recipe-code")));
        let drawn = Mark::Code {
            x,
            y: 0.0,
            module,
            modules: code.clone(),
        };
        marks.push(part(holds, vec![drawn]));
        let words = runs(language, &say!("card-scan"), Face::Text, Ink::Soft);
        let below = side + 4.0 * module;
        let mut said = Vec::new();
        let end = self.paragraph(&mut said, (x, below), side, (&words, SMALLEST_PT));
        marks.push(part(Role::Paragraph, said));
        end + 1.5
    }
}
