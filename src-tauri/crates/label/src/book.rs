//! The season's book: what was picked month by month with its photos, what each bed gave, and what was made of it.

use chrono::{Datelike, NaiveDate};

use crate::face::Face;
use crate::figure::trimmed;
use crate::flow::{BODY_PT, Column, Flow, fitted};
use crate::items::written;
use crate::jpeg::Jpeg;
use crate::page::{Ink, rule};
use crate::sheet::Paper;
use crate::wrap::Run;
use crate::{Drawn, Figure};
use words::Language;

pub use crate::flow::Photos;

/// A season.
#[derive(Debug, Clone, PartialEq)]
pub struct Book {
    /// The language of everything in it that the maker did not write.
    pub language: Language,
    /// The title, such as `The season of 2026`.
    pub title: String,
    /// Whose it is.
    pub maker: Option<String>,
    /// Harvests in order of their day; the book groups them by month.
    pub entries: Vec<Entry>,
    /// What each bed gave.
    pub yields: Vec<Yield>,
    /// What was made.
    pub jars: Vec<Jar>,
}

/// One harvest.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Common name.
    pub herb: String,
    /// Binomial.
    pub latin: Option<String>,
    /// Part.
    pub part: String,
    /// The day it was picked.
    pub on: NaiveDate,
    /// Its bed; a wild place is the caller's to leave out.
    pub bed: Option<String>,
    /// Its code.
    pub code: String,
    /// Fresh weight.
    pub fresh_g: f64,
    /// Dry weight.
    pub dry_g: Option<Figure>,
    /// Stage, such as `in bud`.
    pub stage: Option<String>,
    /// The maker's note.
    pub note: Option<String>,
    /// The key of its photo.
    pub photo: Option<String>,
}

/// One row of the table of yields.
#[derive(Debug, Clone, PartialEq)]
pub struct Yield {
    /// Common name.
    pub herb: String,
    /// Part.
    pub part: String,
    /// Bed.
    pub bed: Option<String>,
    /// Fresh weight.
    pub fresh_g: f64,
    /// Dry weight.
    pub dry_g: Option<Figure>,
    /// How many harvests.
    pub harvests: u32,
}

/// One jar.
#[derive(Debug, Clone, PartialEq)]
pub struct Jar {
    /// Its name.
    pub name: String,
    /// Its lot code.
    pub lot: String,
    /// The day it was poured.
    pub poured_on: NaiveDate,
    /// What went in and what came of it, a sentence each.
    pub lines: Vec<String>,
    /// The maker's note.
    pub note: Option<String>,
}

const PHOTO_MM: (f64, f64) = (64.0, 64.0);
const HEADING_MM: f64 = 18.0;
const GAP_MM: f64 = 6.0;

/// The book as a PDF. Photos are asked for one by one, as their page is written.
#[must_use]
pub fn pdf(book: &Book, paper: Paper, photos: &mut Photos<'_>) -> Drawn<Vec<u8>> {
    let heading = book.language.say(&book.title);
    let mut flow = Flow::new(&heading, paper, &heading);
    title(&mut flow, book, photos);
    let mut entries = book.entries.as_slice();
    while let Some(first) = entries.first() {
        let month = (first.on.year(), first.on.month());
        let count = entries
            .iter()
            .take_while(|entry| (entry.on.year(), entry.on.month()) == month)
            .count();
        let (these, rest) = entries.split_at(count);
        if entries.len() == book.entries.len() {
            flow.new_page();
        } else {
            // A month begins where the last one ended, but never at the foot of a page.
            flow.space(4.0);
            flow.need(HEADING_MM + PHOTO_MM.1);
        }
        flow.heading(&book.language.say(&first.on.format("%B").to_string()), 24.0);
        for one in these {
            entry(&mut flow, one, book.language, photos);
        }
        entries = rest;
    }
    if !book.yields.is_empty() {
        flow.new_page();
        flow.heading(&book.language.say("What the beds gave"), 20.0);
        yields(&mut flow, &book.yields, book.language);
    }
    if !book.jars.is_empty() {
        flow.new_page();
        flow.heading(&book.language.say("What was made"), 20.0);
        for one in &book.jars {
            jar(&mut flow, one, book.language);
        }
    }
    let (bytes, remarks) = flow.finish();
    Drawn { bytes, remarks }
}

fn title(flow: &mut Flow, book: &Book, photos: &mut Photos<'_>) {
    flow.space(34.0);
    flow.centred(
        &[Run::new(
            Face::Title,
            Ink::Accent,
            book.language.say(&book.title),
        )],
        38.0,
    );
    flow.space(3.0);
    let (middle, y) = (flow.left() + flow.width() / 2.0, flow.y());
    flow.mark(rule(middle - 18.0, y, 36.0, Ink::Accent));
    flow.space(5.0);
    let plural = |count: usize, one: &str, many: &str| {
        format!("{count} {}", if count == 1 { one } else { many })
    };
    let counts = format!(
        "{}, {}",
        plural(book.entries.len(), "harvest", "harvests"),
        plural(book.jars.len(), "jar", "jars")
    );
    flow.centred(
        &[Run::new(
            Face::Italic,
            Ink::Soft,
            book.language.say_list(&counts),
        )],
        14.0,
    );
    if let Some(maker) = &book.maker {
        flow.space(1.0);
        flow.centred(&[Run::soft(maker.clone())], 12.0);
    }
    let first = book
        .entries
        .iter()
        .find_map(|entry| photos(entry.photo.as_deref()?))
        .and_then(Jpeg::read);
    if let Some(jpeg) = first {
        flow.space(16.0);
        let (width, _) = fitted(&jpeg, 96.0, 110.0);
        let y = flow.y();
        flow.picture(jpeg, middle - width / 2.0, y, 96.0, 110.0);
    }
}

fn entry(flow: &mut Flow, entry: &Entry, language: Language, photos: &mut Photos<'_>) {
    let picture = entry.photo.as_deref().and_then(photos).and_then(Jpeg::read);
    // Words keep the left edge and photos the right one, so that entries with and without a photo line up.
    let width = flow.width() - PHOTO_MM.0 - GAP_MM;
    let name = [Run::new(Face::Title, Ink::Plain, language.say(&entry.herb))];
    let lines = entry_lines(entry, language);
    let text: f64 = flow.height_of(&name, 15.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    let size = picture
        .as_ref()
        .map(|jpeg| fitted(jpeg, PHOTO_MM.0, PHOTO_MM.1));
    let tall = size.map_or(0.0, |(_, height)| height);
    // An entry stays whole unless its note alone is longer than half a page.
    flow.need(text.max(tall).min(120.0));
    let (left, top, page) = (flow.left(), flow.y(), flow.number());
    if let (Some(jpeg), Some((across, _))) = (picture, size) {
        let x = left + flow.width() - across;
        flow.picture(jpeg, x, top, PHOTO_MM.0, PHOTO_MM.1);
    }
    flow.paragraph(&name, 15.0, 0.0, width);
    for line in &lines {
        flow.paragraph(line, BODY_PT, 0.0, width);
    }
    if flow.number() == page {
        flow.down_to(top + tall);
    }
    flow.space(8.0);
}

fn entry_lines(entry: &Entry, language: Language) -> Vec<Vec<Run>> {
    let say = |text: &str| language.say(text).into_owned();
    let mut kind = Vec::new();
    if let Some(latin) = &entry.latin {
        kind.push(Run::italic(latin.clone()));
        kind.push(Run::text(", "));
    }
    kind.push(Run::text(say(&entry.part)));
    if let Some(stage) = &entry.stage {
        kind.push(Run::text(format!(", {stage}")));
    }
    let mut place = say(&written(entry.on));
    if let Some(bed) = &entry.bed {
        place = format!("{place}, {bed}");
    }
    let mut weight = vec![
        Run::strong(say(&grams(entry.fresh_g))),
        Run::text(say(" fresh")),
    ];
    if let Some(dry) = entry.dry_g {
        weight.push(Run::text(", "));
        weight.push(Run::strong(say(&dry.with_unit("g"))));
        weight.push(Run::text(say(" dry")));
    }
    let mut lines = vec![
        kind,
        vec![Run::text(place)],
        weight,
        vec![Run::soft(entry.code.clone())],
    ];
    if let Some(note) = &entry.note {
        lines.push(vec![Run::italic(note.clone())]);
    }
    lines
}

fn yields(flow: &mut Flow, rows: &[Yield], language: Language) {
    let say = |text: &str| language.say(text).into_owned();
    let columns = [
        Column {
            head: say("Herb"),
            share: 0.24,
            is_figure: false,
        },
        Column {
            head: say("Part"),
            share: 0.14,
            is_figure: false,
        },
        Column {
            head: say("Bed"),
            share: 0.20,
            is_figure: false,
        },
        Column {
            head: say("Harvests"),
            share: 0.11,
            is_figure: true,
        },
        Column {
            head: say("Fresh"),
            share: 0.12,
            is_figure: true,
        },
        Column {
            head: say("Dry"),
            share: 0.19,
            is_figure: true,
        },
    ];
    let rows: Vec<Vec<String>> = rows
        .iter()
        .map(|row| {
            vec![
                say(&row.herb),
                say(&row.part),
                row.bed.clone().unwrap_or_default(),
                row.harvests.to_string(),
                say(&grams(row.fresh_g)),
                row.dry_g
                    .map(|dry| say(&dry.with_unit("g")))
                    .unwrap_or_default(),
            ]
        })
        .collect();
    flow.table(&columns, &rows);
}

fn jar(flow: &mut Flow, jar: &Jar, language: Language) {
    let say = |text: &str| language.say(text).into_owned();
    let width = flow.width();
    let name = [Run::new(Face::Title, Ink::Plain, jar.name.clone())];
    let mut lines = vec![vec![
        Run::strong(jar.lot.clone()),
        Run::soft(say(&format!(", poured {}", written(jar.poured_on)))),
    ]];
    lines.extend(jar.lines.iter().map(|line| vec![Run::text(say(line))]));
    lines.extend(jar.note.iter().map(|note| vec![Run::italic(note.clone())]));
    let tall: f64 = flow.height_of(&name, 13.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    flow.need(tall.min(120.0));
    flow.paragraph(&name, 13.0, 0.0, width);
    for line in &lines {
        flow.paragraph(line, BODY_PT, 0.0, width);
    }
    flow.space(5.0);
}

fn grams(value: f64) -> String {
    format!(
        "{}\u{a0}g",
        trimmed(value, if value < 10.0 { 1 } else { 0 })
    )
}
