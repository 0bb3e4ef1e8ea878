//! Which items a label carries, after the trade's table of label items, and what each says.

mod says;

use crate::record::{Kind, Label};
use crate::wrap::Run;
use words::Language;

pub(crate) use says::written;

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
        item(
            Row::Names,
            "the plants",
            Place::Plants,
            None,
            says::plants(label),
        ),
        item(
            Row::Liquid,
            "the liquid",
            Place::Facts,
            None,
            says::liquid(label),
        ),
        item(
            Row::Begun,
            "the days it was begun and is due",
            Place::Facts,
            None,
            says::begun(label),
        ),
        item(
            Row::Dates,
            "the best before",
            Place::Facts,
            None,
            says::dates(label),
        ),
        item(
            Row::Lot,
            "the harvest and the bed",
            Place::Facts,
            Some(4),
            says::origins(label),
        ),
        item(
            Row::Contents,
            "the contents and ingredients",
            Place::Facts,
            Some(1),
            says::contents(label),
        ),
        item(
            Row::Ethanol,
            "the alcohol in the whole bottle",
            Place::Facts,
            Some(3),
            says::ethanol(label),
        ),
        item(
            Row::Note,
            "the note",
            Place::Facts,
            Some(0),
            says::own(label.note.as_deref()),
        ),
        item(
            Row::Maker,
            "the maker",
            Place::Facts,
            Some(2),
            says::maker(label),
        ),
        item(
            Row::Use,
            "the use",
            Place::Foot,
            None,
            vec![says::used(label.use_for)],
        ),
        item(
            Row::Keeping,
            "how to keep it",
            Place::Foot,
            None,
            says::one(label.storage.as_deref(), |line| Run::text(line)),
        ),
        item(
            Row::Alcohol,
            "the alcohol",
            Place::Foot,
            None,
            says::alcohol(label),
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
            says::poison(label),
        ),
    ];
    all.into_iter()
        .filter(|item| !item.lines.is_empty() && item.row.on(label.kind) != Carries::No)
        .map(|item| spoken(label.language, item))
        .collect()
}

/// The item in the language of the label; a note and a number to call are the maker's own words.
fn spoken(language: Language, mut item: Item) -> Item {
    if item.row == Row::Note {
        return item;
    }
    if language == Language::English {
        for run in item.lines.iter_mut().flatten() {
            run.text = language.say_messages(&run.text);
        }
        return item;
    }
    if item.row == Row::Lot {
        for run in item.lines.iter_mut().flatten() {
            run.text = origins(language, &run.text);
        }
        return item;
    }
    let own_from = match item.row {
        Row::PoisonLine => 1,
        _ => usize::MAX,
    };
    for line in &mut item.lines {
        for run in line.iter_mut().take(own_from) {
            run.text = language.say_list(&run.text).into_owned();
        }
    }
    item
}

/// Harvests are the book's words; a bed is called what its maker calls it.
fn origins(language: Language, text: &str) -> String {
    let given = text.strip_prefix("From ").unwrap_or(text);
    let said: Vec<_> = given
        .split(", ")
        .map(|origin| {
            if origin.starts_with("harvest ") || origin.starts_with("the marc of ") {
                language.say(origin)
            } else {
                origin.into()
            }
        })
        .collect();
    language
        .say(&format!("From {}", said.join(", ")))
        .into_owned()
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
