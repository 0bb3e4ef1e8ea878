//! A chain on paper: from a bottle back to its bed, or from a bed forward to whoever was given a bottle.

use chrono::NaiveDate;
use message::{Argument, Message, say};
use words::Language;

use crate::drawn::Drawn;
use crate::face::Face;
use crate::flow::{BODY_PT, Flow, Photos, fitted};
use crate::jpeg::Jpeg;
use crate::page::{Ink, Mark};
use crate::part::Role;
use crate::say::{held, photo_of, runs, text};
use crate::size::Paper;
use crate::wrap::Run;

/// A chain, in the order it is read.
#[derive(Debug, Clone, PartialEq)]
pub struct Chain {
    /// The language of everything in it that the maker did not write.
    pub language: Language,
    /// What it is about: `Lemon balm glycerite`.
    pub title: Message,
    /// Its lot.
    pub lot: Option<String>,
    /// What was asked: `Where this bottle came from`.
    pub asked: Message,
    /// The day it was printed.
    pub printed_on: NaiveDate,
    /// Its steps.
    pub steps: Vec<Step>,
    /// What the reader must know beside it.
    pub notes: Vec<Message>,
}

/// One link of the chain.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What it is: `Jar`, `Harvest`, `Given to a neighbour`.
    pub heading: Message,
    /// Its code.
    pub code: Option<String>,
    /// Its day.
    pub on: Option<NaiveDate>,
    /// What happened, a line each.
    pub lines: Vec<Message>,
    /// The key of its photo.
    pub photo: Option<String>,
}

const INDENT_MM: f64 = 9.0;
const PHOTO_MM: (f64, f64) = (34.0, 34.0);

/// The chain as a PDF.
#[must_use]
pub fn pdf(chain: &Chain, paper: Paper, photos: &mut Photos<'_>) -> Drawn<Vec<u8>> {
    let language = chain.language;
    let lot = chain.lot.as_deref().map(Argument::own);
    let day = held(language, Argument::day(chain.printed_on));
    let (title, asked) = match lot {
        Some(lot) => (
            say!(
                "chain-title-lot",
                title = chain.title.clone(),
                lot = lot.clone()
            ),
            say!("chain-asked-lot", lot, asked = chain.asked.clone(), day),
        ),
        None => (
            chain.title.clone(),
            say!("chain-asked", asked = chain.asked.clone(), day),
        ),
    };
    let mut flow = Flow::new(&language.tell(&title), language, paper);
    let width = flow.width();
    flow.heading(Role::Title, &language.tell(&chain.title), 22.0);
    flow.paragraph(&text(language, &asked), BODY_PT, 0.0, width);
    for note in &chain.notes {
        let note = runs(language, note, Face::Italic, Ink::Soft);
        flow.paragraph(&note, BODY_PT, 0.0, width);
    }
    flow.space(6.0);
    for (at, one) in chain.steps.iter().enumerate() {
        let is_last = at + 1 == chain.steps.len();
        step(&mut flow, one, is_last, language, photos);
    }
    flow.finish()
}

fn head(step: &Step, language: Language) -> Vec<Run> {
    let heading = Argument::message(step.heading.clone());
    let code = step.code.as_deref().map(Argument::own);
    let day = step.on.map(|on| held(language, Argument::day(on)));
    let head = match (code, day) {
        (Some(code), Some(day)) => say!("chain-step-code-day", heading, code, day),
        (Some(code), None) => say!("chain-step-code", heading, code),
        (None, Some(day)) => say!("chain-step-day", heading, day),
        (None, None) => step.heading.clone(),
    };
    runs(language, &head, Face::Title, Ink::Plain)
}

fn step(flow: &mut Flow, step: &Step, is_last: bool, language: Language, photos: &mut Photos<'_>) {
    let picture = step.photo.as_deref().and_then(photos).and_then(Jpeg::read);
    let size = picture
        .as_ref()
        .map(|jpeg| fitted(jpeg, PHOTO_MM.0, PHOTO_MM.1));
    let width = flow.width() - INDENT_MM - size.map_or(0.0, |(width, _)| width + 5.0);
    let head = head(step, language);
    let lines: Vec<Vec<Run>> = step.lines.iter().map(|line| text(language, line)).collect();
    let words: f64 = flow.height_of(&head, 13.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    let tall = size.map_or(0.0, |(_, height)| height);
    flow.need(words.max(tall).min(120.0));
    let (left, top, page) = (flow.left(), flow.y(), flow.number());
    let knot = |y: f64| Mark::Box {
        x: left,
        y,
        width: 2.6,
        height: 2.6,
        ink: Ink::Accent,
    };
    flow.mark(knot(top + 1.7));
    flow.set(Role::Heading, &head, 13.0, (INDENT_MM, width));
    if let (Some(jpeg), Some((across, _))) = (picture, size) {
        let x = left + flow.width() - across;
        let shows = photo_of(language, step.heading.clone());
        flow.picture(jpeg, (x, top), PHOTO_MM, shows);
    }
    for line in &lines {
        flow.paragraph(line, BODY_PT, INDENT_MM, width);
    }
    if flow.number() == page {
        flow.down_to(top + tall);
        let end = flow.y();
        if !is_last {
            flow.mark(Mark::Box {
                x: left + 1.2,
                y: top + 5.4,
                width: 0.2,
                height: end + 5.0 - top - 4.6,
                ink: Ink::Accent,
            });
        }
    }
    flow.space(5.0);
}
