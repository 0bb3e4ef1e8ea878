//! What stands on the pages of a season: a harvest, the table of what the beds gave, a jar.

use message::{Argument, Message, Unit, say};
use words::Language;

use super::{Entry, Jar, PHOTO_MM, Portrait, Yield};
use crate::face::Face;
use crate::flow::{BODY_PT, Column, Flow, Photos, fitted};
use crate::jpeg::Jpeg;
use crate::page::Ink;
use crate::part::Role;
use crate::plant;
use crate::say::{alone, held, photo_of, runs, text, written};
use crate::wrap::Run;

const GAP_MM: f64 = 6.0;
/// How tall a plant is drawn where no photo is.
const DRAWN_MM: f64 = 34.0;
/// Photos of a jar in one row.
const STRIP: usize = 4;
const CAPTION_PT: f64 = 9.0;

pub(super) fn entry(flow: &mut Flow, entry: &Entry, language: Language, photos: &mut Photos<'_>) {
    let picture = entry.photo.as_deref().and_then(photos).and_then(Jpeg::read);
    // Words keep the left edge and photos the right one, so that entries with and without a photo line up.
    let width = flow.width() - PHOTO_MM.0 - GAP_MM;
    let name = runs(
        language,
        &title(entry.herb.clone()),
        Face::Title,
        Ink::Plain,
    );
    let lines = entry_lines(entry, language);
    let text: f64 = flow.height_of(&name, 15.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    let size = picture
        .as_ref()
        .map(|jpeg| fitted(jpeg, PHOTO_MM.0, PHOTO_MM.1));
    let tall = size.map_or(DRAWN_MM, |(_, height)| height);
    // An entry stays whole unless its note alone is longer than half a page.
    flow.need(text.max(tall).min(120.0));
    let (left, top, page) = (flow.left(), flow.y(), flow.number());
    flow.set(Role::Subheading, &name, 15.0, (0.0, width));
    if let (Some(jpeg), Some((across, _))) = (picture, size) {
        let x = left + flow.width() - across;
        let shows = photo_of(language, entry.herb.clone());
        flow.picture(jpeg, (x, top), PHOTO_MM, shows);
    } else {
        // In the middle of the room of a photo, so that plants and photos stand under each other.
        let across = DRAWN_MM * plant::BOX.0 / plant::BOX.1;
        let x = left + flow.width() - (PHOTO_MM.0 + across) / 2.0;
        flow.place(x, top, plant::picture(&entry.drawn, DRAWN_MM, language));
    }
    for line in &lines {
        flow.paragraph(line, BODY_PT, 0.0, width);
    }
    if flow.number() == page {
        flow.down_to(top + tall);
    }
    flow.space(8.0);
}

fn entry_lines(entry: &Entry, language: Language) -> Vec<Vec<Run>> {
    let part = entry.part.clone();
    let latin = entry.latin.as_deref().map(Argument::own);
    let stage = entry.stage.as_deref().map(Argument::own);
    let kind = match (latin, stage) {
        (Some(latin), Some(stage)) => say!("season-latin-part-stage", latin, part, stage),
        (Some(latin), None) => say!("season-latin-part", latin, part),
        (None, Some(stage)) => say!("season-part-stage", part, stage),
        (None, None) => alone(part),
    };
    let day = held(language, Argument::day(entry.on));
    let place = match entry.bed.as_deref() {
        Some(bed) => say!("season-day-bed", day, bed = Argument::own(bed)),
        None => alone(day),
    };
    let fresh = held(language, Argument::grams(entry.fresh_g));
    let weight = match entry.dry_g {
        Some(dry) => say!(
            "season-fresh-dry",
            fresh,
            dry = held(language, dry.said(Unit::Gram))
        ),
        None => say!("season-fresh", fresh),
    };
    let mut lines: Vec<Vec<Run>> = [kind, place, weight]
        .iter()
        .map(|message| text(language, message))
        .collect();
    lines.push(vec![Run::soft(entry.code.as_str())]);
    lines.extend(own(entry.note.as_deref()));
    lines
}

/// A herb at the head of what is said of it.
fn title(herb: Argument) -> Message {
    say!("title", name = herb)
}

fn own(note: Option<&str>) -> Option<Vec<Run>> {
    note.map(|note| vec![Run::italic(note)])
}

pub(super) fn yields(flow: &mut Flow, rows: &[Yield], language: Language) {
    let column = |head: Message, share: f64, is_figure: bool| Column {
        head: language.tell(&head),
        share,
        is_figure,
    };
    let columns = [
        column(say!("season-herb"), 0.24, false),
        column(say!("season-part"), 0.14, false),
        column(say!("season-bed"), 0.20, false),
        column(say!("season-harvests"), 0.11, true),
        column(say!("season-fresh-mass"), 0.12, true),
        column(say!("season-dry-mass"), 0.19, true),
    ];
    let cells = |row: &Yield| {
        let dry = row.dry_g.map(|dry| written(language, dry.said(Unit::Gram)));
        vec![
            language.tell(&title(row.herb.clone())),
            language.tell(&alone(row.part.clone())),
            row.bed.clone().unwrap_or_default(),
            row.harvests.to_string(),
            written(language, Argument::grams(row.fresh_g)),
            dry.unwrap_or_default(),
        ]
    };
    let rows: Vec<Vec<String>> = rows.iter().map(cells).collect();
    flow.table(&columns, &rows);
}

pub(super) fn jar(flow: &mut Flow, jar: &Jar, language: Language, photos: &mut Photos<'_>) {
    let width = flow.width();
    let name = [Run::new(Face::Title, Ink::Plain, jar.name.as_str())];
    let poured = say!(
        "season-poured",
        lot = Argument::own(jar.lot.as_str()),
        day = held(language, Argument::day(jar.poured_on))
    );
    let mut lines = vec![text(language, &poured)];
    lines.extend(jar.lines.iter().map(|line| text(language, line)));
    lines.extend(own(jar.note.as_deref()));
    let tall: f64 = flow.height_of(&name, 13.0, width)
        + lines
            .iter()
            .map(|line| flow.height_of(line, BODY_PT, width))
            .sum::<f64>();
    flow.need(tall.min(120.0));
    flow.set(Role::Subheading, &name, 13.0, (0.0, width));
    for line in &lines {
        flow.paragraph(line, BODY_PT, 0.0, width);
    }
    for row in jar.portraits.chunks(STRIP) {
        strip(flow, &jar.name, row, language, photos);
    }
    flow.space(5.0);
}

/// Photos side by side, each over its caption: how a jar changed reads from left to right.
fn strip(
    flow: &mut Flow,
    name: &str,
    row: &[Portrait],
    language: Language,
    photos: &mut Photos<'_>,
) {
    let across = (flow.width() - GAP_MM * (STRIP - 1) as f64) / STRIP as f64;
    let shown = |it: &Portrait| Some((photos(&it.photo).and_then(Jpeg::read)?, it.caption.clone()));
    let shown: Vec<_> = row.iter().filter_map(shown).collect();
    let size = |jpeg: &Jpeg| fitted(jpeg, across, across);
    let tall = shown
        .iter()
        .map(|(jpeg, _)| size(jpeg).1)
        .fold(0.0, f64::max);
    if shown.is_empty() {
        return;
    }
    let captions: Vec<_> = shown
        .iter()
        .map(|(_, caption)| text(language, caption))
        .collect();
    let below = captions
        .iter()
        .map(|it| flow.height_of(it, CAPTION_PT, across))
        .fold(0.0, f64::max);
    flow.space(2.0);
    flow.need(tall + below);
    let (left, top) = (flow.left(), flow.y());
    for (at, ((jpeg, _), caption)) in shown.into_iter().zip(&captions).enumerate() {
        let indent = at as f64 * (across + GAP_MM);
        let (_, height) = size(&jpeg);
        // They stand on one line, whatever their shape.
        let place = (left + indent, top + tall - height);
        let shows = photo_of(language, Argument::own(name));
        flow.picture(jpeg, place, (across, across), shows);
        flow.beside(caption, CAPTION_PT, indent, top + tall + 1.0, across);
    }
    flow.down_to(top + tall + 1.0 + below);
}
