//! Which items a label carries, after the trade's table of label items, and what each says.

use chrono::{Datelike, NaiveDate};

use crate::face::Face;
use crate::figure::trimmed;
use crate::page::Ink;
use crate::record::{Kind, Label, Meaning, Plant, State, Strength, Use};
use crate::wrap::Run;

/// A row of the trade's table of label items, and three things of our own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Row {
    /// B01: common and Latin name, part.
    Names,
    /// B02: ratio, fresh or dried, menstruum and strength.
    Liquid,
    /// B03: the day it was begun and the day it is due.
    Begun,
    /// B04: the day it was bottled and its best before.
    Dates,
    /// B05: lot code, harvest and bed.
    Lot,
    /// B06: how to keep it.
    Keeping,
    /// B07: inside, or outside only.
    Use,
    /// B08: warnings.
    Warnings,
    /// B09: alcohol, children and flame.
    Alcohol,
    /// B10: the poison line.
    PoisonLine,
    /// B11: who made it.
    Maker,
    /// B12: contents, ingredients, allergens.
    Contents,
    /// Grams of ethanol in the bottle, where the maker chose it.
    Ethanol,
    /// The maker's own note.
    Note,
    /// The code that opens the lot.
    Code,
}

/// Whether a kind of label carries a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Carries {
    /// Always.
    Yes,
    /// Where the maker gave it.
    Maybe,
    /// Never.
    No,
}

/// Items of this rank go only after the code for the phone.
pub(crate) const AFTER_THE_CODE: u8 = 5;

/// Where on the label an item stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Place {
    Plants,
    Facts,
    Foot,
}

/// One item: a paragraph or more.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    row: Row,
    pub(crate) what: &'static str,
    pub(crate) place: Place,
    pub(crate) lines: Vec<Vec<Run>>,
    /// Left out before items with a higher number when there is no room; nothing where it must stand.
    pub(crate) may_go: Option<u8>,
}

impl Item {
    /// Its row.
    #[must_use]
    pub fn row(&self) -> Row {
        self.row
    }

    /// What it says, line by line.
    #[must_use]
    pub fn text(&self) -> Vec<String> {
        let joined = |line: &Vec<Run>| line.iter().map(|run| run.text.as_str()).collect();
        self.lines.iter().map(joined).collect()
    }
}

impl Row {
    /// The row's name in the trade's table, where it has one.
    #[must_use]
    pub const fn id(self) -> Option<&'static str> {
        Some(match self {
            Self::Names => "B01",
            Self::Liquid => "B02",
            Self::Begun => "B03",
            Self::Dates => "B04",
            Self::Lot => "B05",
            Self::Keeping => "B06",
            Self::Use => "B07",
            Self::Warnings => "B08",
            Self::Alcohol => "B09",
            Self::PoisonLine => "B10",
            Self::Maker => "B11",
            Self::Contents => "B12",
            Self::Ethanol | Self::Note | Self::Code => return None,
        })
    }

    /// Whether a kind of label carries it.
    #[must_use]
    pub const fn on(self, kind: Kind) -> Carries {
        use Carries::{Maybe, No, Yes};
        let [jar, bottle, gift] = match self {
            Self::Names | Self::Liquid | Self::Lot => [Yes, Yes, Yes],
            Self::Begun => [Yes, No, No],
            Self::Dates
            | Self::Keeping
            | Self::Use
            | Self::Warnings
            | Self::Alcohol
            | Self::PoisonLine => [No, Yes, Yes],
            Self::Maker => [No, Maybe, Yes],
            Self::Contents => [No, No, Maybe],
            Self::Ethanol => [No, Maybe, Maybe],
            Self::Note => [Maybe, Maybe, No],
            Self::Code => [Yes, Yes, Yes],
        };
        match kind {
            Kind::Jar => jar,
            Kind::Bottle => bottle,
            Kind::Gift => gift,
        }
    }
}

/// The items a label carries, in the order they are read.
#[must_use]
pub fn of(label: &Label) -> Vec<Item> {
    let all = [
        item(Row::Names, "the plants", Place::Plants, None, plants(label)),
        item(Row::Liquid, "the liquid", Place::Facts, None, liquid(label)),
        item(
            Row::Begun,
            "the days it was begun and is due",
            Place::Facts,
            None,
            begun(label),
        ),
        item(
            Row::Dates,
            "the best before",
            Place::Facts,
            None,
            dates(label),
        ),
        item(
            Row::Lot,
            "the harvest and the bed",
            Place::Facts,
            Some(4),
            origins(label),
        ),
        item(
            Row::Contents,
            "the contents and ingredients",
            Place::Facts,
            Some(1),
            contents(label),
        ),
        item(
            Row::Ethanol,
            "the alcohol in the whole bottle",
            Place::Facts,
            Some(3),
            ethanol(label),
        ),
        item(
            Row::Note,
            "the note",
            Place::Facts,
            Some(0),
            own(label.note.as_deref()),
        ),
        item(Row::Maker, "the maker", Place::Facts, Some(2), maker(label)),
        item(
            Row::Use,
            "the use",
            Place::Foot,
            None,
            vec![used(label.use_for)],
        ),
        item(
            Row::Keeping,
            "how to keep it",
            Place::Foot,
            None,
            one(label.storage.as_deref(), |line| Run::text(line)),
        ),
        item(
            Row::Alcohol,
            "the alcohol",
            Place::Foot,
            None,
            alcohol(label),
        ),
        item(
            Row::Warnings,
            "the cautions",
            Place::Foot,
            None,
            label
                .cautions
                .iter()
                .map(|line| vec![Run::text(line.trim())])
                .collect(),
        ),
        item(
            Row::PoisonLine,
            "the poison line",
            Place::Foot,
            Some(AFTER_THE_CODE),
            poison(label),
        ),
    ];
    all.into_iter()
        .filter(|item| !item.lines.is_empty() && item.row.on(label.kind) != Carries::No)
        .collect()
}

/// What this kind of label should carry and nobody wrote down, in the words of a remark.
pub(crate) fn missing(label: &Label) -> Vec<&'static str> {
    let items = of(label);
    let has = |row: Row| items.iter().any(|item| item.row == row);
    [
        (Row::Names, "its plant"),
        (Row::Liquid, "its liquid"),
        (Row::Begun, "the days it was begun and is due"),
        (Row::Dates, "its best before"),
        (Row::Keeping, "how to keep it"),
        (Row::PoisonLine, "a poison line"),
        (Row::Maker, "who made it"),
    ]
    .into_iter()
    .filter(|(row, _)| row.on(label.kind) == Carries::Yes && !has(*row))
    .map(|(_, what)| what)
    .collect()
}

fn item(
    row: Row,
    what: &'static str,
    place: Place,
    may_go: Option<u8>,
    lines: Vec<Vec<Run>>,
) -> Item {
    Item {
        row,
        what,
        place,
        lines,
        may_go,
    }
}

fn plants(label: &Label) -> Vec<Vec<Run>> {
    let line = |plant: &Plant| {
        let state = match plant.state {
            State::Fresh => "fresh",
            State::Dried => "dried",
        };
        let rest = format!("{state}\u{a0}{}", plant.part);
        match &plant.latin {
            Some(latin) => vec![
                Run::text(format!("{} ", plant.common)),
                Run::italic(latin.clone()),
                Run::text(format!(", {rest}")),
            ],
            None => vec![Run::text(format!("{}, {rest}", plant.common))],
        }
    };
    label.plants.iter().map(line).collect()
}

fn liquid(label: &Label) -> Vec<Vec<Run>> {
    let mut parts: Vec<String> = Vec::new();
    if let Some(oil) = &label.oil {
        parts.push(format!("in {oil}"));
    }
    if !label.menstruum.is_empty() {
        parts.push(format!("in {}", label.menstruum));
    }
    if let Some(ratio) = label.ratio {
        let meaning = match ratio.meaning {
            Meaning::PouredOn => "poured on",
            Meaning::MadeUpTo => "made up to",
        };
        parts.push(format!(
            "1\u{a0}g to {}\u{a0}mL {meaning}",
            trimmed(ratio.ml_per_g, 1)
        ));
    }
    let mut lines = Vec::new();
    if !parts.is_empty() {
        lines.push(vec![Run::text(capital(&parts.join(", ")))]);
    }
    if !label.strengths.is_empty() {
        let strengths: Vec<String> = label
            .strengths
            .iter()
            .map(|strength| strength.words())
            .collect();
        // A jar's figure is what was poured, a bottle's is what came of it: the same number would mean two things.
        let whose = if label.kind == Kind::Jar {
            "Poured at "
        } else {
            "In the bottle "
        };
        lines.push(vec![Run::text(whose), Run::strong(strengths.join(", "))]);
    }
    lines
}

impl Strength {
    fn words(self) -> String {
        match self {
            Self::Alcohol(figure) => figure.with_unit("%\u{a0}vol"),
            Self::Glycerol(figure) => format!("glycerol {}", figure.with_unit("% by weight")),
            Self::Acidity(figure) => format!("acidity {}", figure.with_unit("g per 100\u{a0}mL")),
            Self::Sugar(figure) => format!("sugar {}", figure.with_unit("% by weight")),
        }
    }
}

fn begun(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = days(&[("made", label.made_on)]);
    let due = match (label.due_from, label.due_to) {
        (Some(from), Some(to)) if from != to => Some(span(from, to)),
        (Some(on), _) | (None, Some(on)) => Some(written(on)),
        (None, None) => None,
    };
    if let Some(due) = due {
        lines.push(vec![Run::text("Due "), Run::strong(due)]);
    }
    lines
}

fn dates(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = days(&[
        ("made", label.made_on),
        ("strained", label.strained_on),
        ("bottled", label.bottled_on),
    ]);
    if let Some(on) = label.best_before {
        lines.push(vec![
            Run::text("Best\u{a0}before "),
            Run::strong(written(on)),
        ]);
    }
    lines
}

/// `Made 12 Jun, strained and bottled 10 Jul 2026`: a day and a year are said once.
fn days(given: &[(&str, Option<NaiveDate>)]) -> Vec<Vec<Run>> {
    let mut told: Vec<(String, NaiveDate)> = Vec::new();
    for (word, on) in given.iter().filter_map(|(word, on)| Some((*word, (*on)?))) {
        match told.last_mut() {
            Some((words, day)) if *day == on => {
                words.push_str(" and ");
                words.push_str(word);
            }
            _ => told.push((word.to_owned(), on)),
        }
    }
    let parts: Vec<String> = told
        .iter()
        .enumerate()
        .map(|(at, (words, on))| {
            let is_same_year = told
                .get(at + 1)
                .is_some_and(|(_, next)| next.year() == on.year());
            let day = if is_same_year {
                day_and_month(*on)
            } else {
                written(*on)
            };
            format!("{words}\u{a0}{day}")
        })
        .collect();
    filled(match parts.is_empty() {
        true => Vec::new(),
        false => vec![Run::text(capital(&parts.join(", ")))],
    })
}

fn span(from: NaiveDate, to: NaiveDate) -> String {
    let begin = if from.year() == to.year() {
        day_and_month(from)
    } else {
        written(from)
    };
    format!("{begin} – {}", written(to))
}

fn day_and_month(on: NaiveDate) -> String {
    on.format("%-d\u{a0}%b").to_string()
}

/// A day as it is read the same everywhere: the month in letters.
pub(crate) fn written(on: NaiveDate) -> String {
    on.format("%-d\u{a0}%b\u{a0}%Y").to_string()
}

fn origins(label: &Label) -> Vec<Vec<Run>> {
    let given: Vec<&str> = label
        .origins
        .iter()
        .map(|origin| origin.trim())
        .filter(|origin| !origin.is_empty())
        .collect();
    if given.is_empty() {
        return Vec::new();
    }
    vec![vec![Run::soft(format!("From {}", given.join(", ")))]]
}

fn contents(label: &Label) -> Vec<Vec<Run>> {
    let mut lines = Vec::new();
    if let Some(ml) = label.net_ml {
        lines.push(vec![Run::text(format!("Holds {}\u{a0}mL", trimmed(ml, 0)))]);
    }
    if !label.ingredients.is_empty() {
        lines.push(vec![
            Run::soft("Made of "),
            Run::text(label.ingredients.join(", ")),
        ]);
    }
    if !label.allergens.is_empty() {
        lines.push(vec![
            Run::soft("Allergens: "),
            Run::strong(label.allergens.join(", ")),
        ]);
    }
    lines
}

fn ethanol(label: &Label) -> Vec<Vec<Run>> {
    label
        .ethanol_in_bottle_g
        .map(|figure| {
            vec![vec![Run::text(format!(
                "Alcohol in the whole bottle: {}",
                figure.with_unit("g")
            ))]]
        })
        .unwrap_or_default()
}

fn maker(label: &Label) -> Vec<Vec<Run>> {
    one(label.maker.as_deref(), |maker| {
        Run::soft(format!("Maker: {maker}"))
    })
}

fn own(note: Option<&str>) -> Vec<Vec<Run>> {
    one(note, |note| Run::new(Face::Italic, Ink::Soft, note))
}

fn used(use_for: Use) -> Vec<Run> {
    match use_for {
        Use::Inside => vec![Run::strong("For use inside.")],
        Use::Food => vec![Run::strong("For the table.")],
        Use::OutsideOnly => vec![Run::new(
            Face::Strong,
            Ink::Warning,
            "EXTERNAL USE ONLY. Never swallow it.",
        )],
    }
}

/// Alcohol below this cannot be told from none with a kitchen's means (common practice, no source).
const NO_ALCOHOL_PERCENT_VOL: f64 = 0.5;

fn alcohol(label: &Label) -> Vec<Vec<Run>> {
    label
        .strengths
        .iter()
        .filter_map(|strength| match strength {
            Strength::Alcohol(figure) if figure.high >= NO_ALCOHOL_PERCENT_VOL => {
                Some(strength.words())
            }
            _ => None,
        })
        .map(|words| {
            vec![Run::strong(format!(
                "Contains alcohol, {words}: keep away from children and flame."
            ))]
        })
        .collect()
}

fn poison(label: &Label) -> Vec<Vec<Run>> {
    label
        .poison_line
        .as_deref()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .map(|line| vec![vec![Run::text("Poison\u{a0}line\u{a0}"), Run::strong(line)]])
        .unwrap_or_default()
}

fn one(text: Option<&str>, run: impl FnOnce(&str) -> Run) -> Vec<Vec<Run>> {
    match text.map(str::trim) {
        Some(text) if !text.is_empty() => vec![vec![run(text)]],
        _ => Vec::new(),
    }
}

fn filled(line: Vec<Run>) -> Vec<Vec<Run>> {
    if line.is_empty() {
        Vec::new()
    } else {
        vec![line]
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
