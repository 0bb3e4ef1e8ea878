//! A season: what was picked month by month with its photos, what each bed gave, and what was made of it.

mod pages;

use chrono::{Datelike, NaiveDate};
use message::{Argument, Message, say};
use words::Language;

use crate::drawn::Drawn;
use crate::face::Face;
use crate::figure::Figure;
use crate::flow::{Flow, fitted};
use crate::jpeg::Jpeg;
use crate::page::{Ink, rule};
use crate::part::Role;
use crate::plant::Herb;
use crate::say::{photo_of, runs};
use crate::size::Paper;
use crate::wrap::Run;

pub use crate::flow::Photos;

/// A season.
#[derive(Debug, Clone, PartialEq)]
pub struct Season {
    /// The language of everything in it that the maker did not write.
    pub language: Language,
    /// The year.
    pub year: i32,
    /// Whose it is.
    pub maker: Option<String>,
    /// Harvests in order of their day; they are grouped by month.
    pub entries: Vec<Entry>,
    /// What each bed gave.
    pub yields: Vec<Yield>,
    /// What was made.
    pub jars: Vec<Jar>,
}

/// One harvest.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The common name, or the maker's own.
    pub herb: Argument,
    /// Binomial.
    pub latin: Option<String>,
    /// Part.
    pub part: Argument,
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
    /// The maker's word for its stage, such as `in bud`.
    pub stage: Option<String>,
    /// The maker's note.
    pub note: Option<String>,
    /// The key of its photo.
    pub photo: Option<String>,
    /// What is drawn where no photo is.
    pub drawn: Herb,
}

/// One row of the table of yields.
#[derive(Debug, Clone, PartialEq)]
pub struct Yield {
    /// The common name, or the maker's own.
    pub herb: Argument,
    /// Part.
    pub part: Argument,
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
    pub lines: Vec<Message>,
    /// The maker's note.
    pub note: Option<String>,
    /// How it and its bottles looked, the earliest first.
    pub portraits: Vec<Portrait>,
}

/// A photo of a jar or of one of its bottles.
#[derive(Debug, Clone, PartialEq)]
pub struct Portrait {
    /// The key of the photo.
    pub photo: String,
    /// What stands under it: what it shows and when.
    pub caption: Message,
}

const PHOTO_MM: (f64, f64) = (64.0, 64.0);
const HEADING_MM: f64 = 18.0;

/// The season as a PDF. Photos are asked for one by one, as their page is written.
#[must_use]
pub fn pdf(season: &Season, paper: Paper, photos: &mut Photos<'_>) -> Drawn<Vec<u8>> {
    let language = season.language;
    let mut flow = Flow::new(&language.tell(&title_of(season)), language, paper);
    front(&mut flow, season, photos);
    let mut entries = season.entries.as_slice();
    while let Some(first) = entries.first() {
        let month = (first.on.year(), first.on.month());
        let count = entries
            .iter()
            .take_while(|entry| (entry.on.year(), entry.on.month()) == month)
            .count();
        let (these, rest) = entries.split_at(count);
        if entries.len() == season.entries.len() {
            flow.new_page();
        } else {
            // A month begins where the last one ended, but never at the foot of a page.
            flow.space(4.0);
            flow.need(HEADING_MM + PHOTO_MM.1);
        }
        let month = Argument::count(u64::from(first.on.month()));
        let month = say!("season-month", month);
        flow.heading(Role::Heading, &language.tell(&month), 24.0);
        for one in these {
            pages::entry(&mut flow, one, language, photos);
        }
        entries = rest;
    }
    if !season.yields.is_empty() {
        flow.new_page();
        let gave = language.tell(&say!("season-what-beds-gave"));
        flow.heading(Role::Heading, &gave, 20.0);
        pages::yields(&mut flow, &season.yields, language);
    }
    if !season.jars.is_empty() {
        flow.new_page();
        let made = language.tell(&say!("season-what-was-made"));
        flow.heading(Role::Heading, &made, 20.0);
        for one in &season.jars {
            pages::jar(&mut flow, one, language, photos);
        }
    }
    flow.finish()
}

fn title_of(season: &Season) -> Message {
    say!(
        "season-title",
        year = Argument::figure(season.year.to_string())
    )
}

fn front(flow: &mut Flow, season: &Season, photos: &mut Photos<'_>) {
    let language = season.language;
    flow.space(34.0);
    let title = runs(language, &title_of(season), Face::Title, Ink::Accent);
    flow.centred(Role::Title, &title, 38.0);
    flow.space(3.0);
    let (middle, y) = (flow.left() + flow.width() / 2.0, flow.y());
    flow.mark(rule(middle - 18.0, y, 36.0, Ink::Accent));
    flow.space(5.0);
    let counts = say!(
        "season-counts",
        harvests = Argument::count(season.entries.len() as u64),
        jars = Argument::count(season.jars.len() as u64)
    );
    let counts = runs(language, &counts, Face::Italic, Ink::Soft);
    flow.centred(Role::Paragraph, &counts, 14.0);
    if let Some(maker) = &season.maker {
        flow.space(1.0);
        flow.centred(Role::Paragraph, &[Run::soft(maker.clone())], 12.0);
    }
    let first = season.entries.iter().find_map(|entry| {
        let photo = photos(entry.photo.as_deref()?)?;
        Some((photo, entry.herb.clone()))
    });
    let first = first.and_then(|(photo, herb)| Some((Jpeg::read(photo)?, herb)));
    if let Some((jpeg, what)) = first {
        flow.space(16.0);
        let (width, _) = fitted(&jpeg, 96.0, 110.0);
        let place = (middle - width / 2.0, flow.y());
        let shows = photo_of(language, what);
        flow.picture(jpeg, place, (96.0, 110.0), shows);
    }
}
