//! A recipe as a card to be handed out: its herb, its amounts, its steps, what to beware of, and a code that holds it.

mod head;
mod lay;
mod sign;

use message::{Argument, Message, Refusal, say};
use serde::Deserialize;
use words::Language;

use crate::drawn::Drawn;
use crate::face::unknown_letters;
use crate::page::Page;
use crate::pdf::Writer;
use crate::plant::Herb;
use crate::svg;

/// The size of a card.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "CardSize"))]
pub enum Size {
    /// 105 x 148 mm.
    A6,
    /// 148 x 210 mm.
    A5,
    /// Half of US Letter, 5.5 x 8.5 in.
    HalfLetter,
}

impl Size {
    /// Width and height in mm.
    #[must_use]
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A6 => (105.0, 148.0),
            Self::A5 => (148.0, 210.0),
            Self::HalfLetter => (139.7, 215.9),
        }
    }
}

/// How grave a caution is; each has a mark of its own shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// Nobody may.
    Stop,
    /// Some may not, or with care.
    Care,
    /// Good to know.
    Note,
}

/// One recipe. Its messages are counted in the reader's units already.
#[derive(Debug, Clone, PartialEq)]
pub struct Card {
    /// The language of everything on it that the maker did not write.
    pub language: Language,
    /// What the maker calls it.
    pub name: String,
    /// What it is.
    pub preparation: Message,
    /// The plants by their Latin names.
    pub latin: Vec<String>,
    /// The herb that is drawn.
    pub herb: Option<Herb>,
    /// How much and of what.
    pub amounts: Vec<(Message, Message)>,
    /// What is good to know at a glance, each under its head.
    pub facts: Vec<(Message, Message)>,
    /// The work in its order, one sentence or more a step.
    pub steps: Vec<Message>,
    /// How to keep it.
    pub keeping: Vec<Message>,
    /// Ways to use it, with what to beware of.
    pub ways: Vec<Message>,
    /// What to beware of, the gravest first.
    pub cautions: Vec<(Weight, Message)>,
    /// The maker's own note.
    pub note: Option<String>,
    /// The link that the code holds, from [`crate::packed::link_of`].
    pub code: Option<String>,
}

/// Cards as a PDF, each beginning on a page of its own.
///
/// # Errors
/// No card at all.
pub fn pdf(cards: &[Card], size: Size) -> Result<Drawn<Vec<u8>>, Refusal> {
    let first = cards
        .first()
        .ok_or_else(|| Refusal::new("people", say!("card-none")))?;
    let mut writer = Writer::new(&first.name, first.language);
    let mut remarks = Vec::new();
    for card in cards {
        for page in lay::pages(card, size) {
            writer.page(&page);
        }
        let remark = lacking(card).filter(|remark| !remarks.contains(remark));
        remarks.extend(remark);
    }
    Ok(Drawn {
        bytes: writer.finish(),
        remarks,
    })
}

/// Each page of a card as an SVG file.
#[must_use]
pub fn svg(card: &Card, size: Size) -> Drawn<Vec<String>> {
    let pages: Vec<Page> = lay::pages(card, size);
    let written = pages.iter().map(|page| svg::write(page, &card.name));
    Drawn {
        bytes: written.collect(),
        remarks: lacking(card).into_iter().collect(),
    }
}

/// Names the letters that the maker wrote and the type lacks.
fn lacking(card: &Card) -> Option<Message> {
    let own = [Some(&card.name), card.note.as_ref()];
    let letters = unknown_letters(&own.into_iter().flatten().cloned().collect::<String>());
    (!letters.is_empty()).then(|| say!("paper-lacks-letters", letters = Argument::own(letters)))
}
