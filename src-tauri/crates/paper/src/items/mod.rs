//! Which items a label carries, after the trade's table of label items.

mod row;
mod says;

use crate::record::{Kind, Label};
use crate::wrap::Run;

pub use row::{Carries, Row};

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
    pub(crate) place: Place,
    pub(crate) lines: Vec<Vec<Run>>,
    /// Left out before items with a higher number when there is no room; nothing where it must stand.
    pub(crate) may_go: Option<u8>,
}

impl Item {
    fn new(row: Row, place: Place, may_go: Option<u8>, lines: Vec<Vec<Run>>) -> Self {
        Self {
            row,
            place,
            lines,
            may_go,
        }
    }

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

/// The items a label carries, in the order they are read, in its language.
#[must_use]
pub fn of(label: &Label) -> Vec<Item> {
    use Place::{Facts, Foot, Plants};
    let all = [
        Item::new(Row::Names, Plants, None, says::plants(label)),
        Item::new(Row::Liquid, Facts, None, says::liquid(label)),
        Item::new(Row::Begun, Facts, None, says::begun(label)),
        Item::new(Row::Dates, Facts, None, says::dates(label)),
        Item::new(Row::Lot, Facts, Some(4), says::origins(label)),
        Item::new(Row::Contents, Facts, Some(1), says::contents(label)),
        Item::new(Row::Ethanol, Facts, Some(3), says::ethanol(label)),
        Item::new(Row::ByHand, Facts, None, says::by_hand(label)),
        Item::new(Row::Ways, Facts, Some(0), says::ways(label)),
        Item::new(Row::Note, Facts, Some(0), says::note(label)),
        Item::new(Row::Maker, Facts, Some(2), says::maker(label)),
        Item::new(Row::Use, Foot, None, says::used(label)),
        Item::new(Row::Keeping, Foot, None, says::keeping(label)),
        Item::new(Row::Alcohol, Foot, None, says::alcohol(label)),
        Item::new(Row::Warnings, Foot, None, says::cautions(label)),
        Item::new(
            Row::PoisonLine,
            Foot,
            Some(AFTER_THE_CODE),
            says::poison(label),
        ),
    ];
    all.into_iter()
        .filter(|item| !item.lines.is_empty() && item.row.on(label.kind) != Carries::No)
        .collect()
}

/// What this kind of label should carry and nobody wrote down.
pub(crate) fn missing(kind: Kind, items: &[Item]) -> Vec<Row> {
    let has = |row: Row| items.iter().any(|item| item.row == row);
    [
        Row::Names,
        Row::Liquid,
        Row::Begun,
        Row::Dates,
        Row::Keeping,
        Row::PoisonLine,
        Row::Maker,
    ]
    .into_iter()
    .filter(|row| row.on(kind) == Carries::Yes && !has(*row))
    .collect()
}
