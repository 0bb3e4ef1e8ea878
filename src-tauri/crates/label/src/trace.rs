//! A chain on paper: from a bottle back to its bed, or from a bed forward to whoever was given a bottle.

use chrono::NaiveDate;

use crate::Drawn;
use crate::face::Face;
use crate::flow::{BODY_PT, Flow, Photos, fitted};
use crate::items::written;
use crate::jpeg::Jpeg;
use crate::page::{Ink, Mark};
use crate::sheet::Paper;
use crate::wrap::Run;
use words::Language;

/// A chain, in the order it is read.
#[derive(Debug, Clone, PartialEq)]
pub struct Trace {
    /// The language of everything in it that the maker did not write.
    pub language: Language,
    /// What it is about: `Lemon balm glycerite`.
    pub title: String,
    /// Its lot.
    pub lot: Option<String>,
    /// What was asked: `Back from the bottle to the bed`.
    pub asked: String,
    /// The day it was printed.
    pub printed_on: NaiveDate,
    /// Its steps.
    pub steps: Vec<Step>,
    /// What the reader must know beside it.
    pub notes: Vec<String>,
}

/// One link of the chain.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What it is: `Jar`, `Harvest`, `Given to a neighbour`.
    pub heading: String,
    /// Its code.
    pub code: Option<String>,
    /// Its day.
    pub on: Option<NaiveDate>,
    /// What happened, a line each.
    pub lines: Vec<String>,
    /// The key of its photo.
    pub photo: Option<String>,
}

const INDENT_MM: f64 = 9.0;
const PHOTO_MM: (f64, f64) = (34.0, 34.0);

/// The chain as a PDF.
#[must_use]
pub fn pdf(trace: &Trace, paper: Paper, photos: &mut Photos<'_>) -> Drawn<Vec<u8>> {
    let title = match &trace.lot {
        Some(lot) => format!("{}, {lot}", trace.title),
        None => trace.title.clone(),
    };
    let mut flow = Flow::new(&title, paper, &title);
    let width = flow.width();
    flow.heading(&trace.title, 22.0);
    let mut about = Vec::new();
    if let Some(lot) = &trace.lot {
        about.push(Run::strong(lot.clone()));
        about.push(Run::text(". "));
    }
    let asked = format!("{}. Printed {}.", trace.asked, written(trace.printed_on));
    about.push(Run::text(trace.language.say(&asked).into_owned()));
    flow.paragraph(&about, BODY_PT, 0.0, width);
    for note in &trace.notes {
        flow.paragraph(
            &[Run::new(
                Face::Italic,
                Ink::Soft,
                trace.language.say(note).into_owned(),
            )],
            BODY_PT,
            0.0,
            width,
        );
    }
    flow.space(6.0);
    for (at, one) in trace.steps.iter().enumerate() {
        let is_last = at + 1 == trace.steps.len();
        step(&mut flow, one, is_last, trace.language, photos);
    }
    let (bytes, remarks) = flow.finish();
    Drawn { bytes, remarks }
}

fn step(flow: &mut Flow, step: &Step, is_last: bool, language: Language, photos: &mut Photos<'_>) {
    let picture = step.photo.as_deref().and_then(photos).and_then(Jpeg::read);
    let size = picture
        .as_ref()
        .map(|jpeg| fitted(jpeg, PHOTO_MM.0, PHOTO_MM.1));
    let width = flow.width() - INDENT_MM - size.map_or(0.0, |(width, _)| width + 5.0);
    let mut head = vec![Run::new(
        Face::Title,
        Ink::Plain,
        language.say(&step.heading),
    )];
    if let Some(code) = &step.code {
        head.push(Run::strong(format!(" {code}")));
    }
    if let Some(on) = step.on {
        head.push(Run::soft(format!(", {}", language.say(&written(on)))));
    }
    let lines: Vec<[Run; 1]> = step
        .lines
        .iter()
        .map(|line| [Run::text(language.say(line).into_owned())])
        .collect();
    let text: f64 = flow.height_of(&head, 13.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    let tall = size.map_or(0.0, |(_, height)| height);
    flow.need(text.max(tall).min(120.0));
    let (left, top, page) = (flow.left(), flow.y(), flow.number());
    if let (Some(jpeg), Some((across, _))) = (picture, size) {
        let x = left + flow.width() - across;
        flow.picture(jpeg, x, top, PHOTO_MM.0, PHOTO_MM.1);
    }
    let knot = |y: f64| Mark::Box {
        x: left,
        y,
        width: 2.6,
        height: 2.6,
        ink: Ink::Accent,
    };
    flow.mark(knot(top + 1.7));
    flow.paragraph(&head, 13.0, INDENT_MM, width);
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
