//! What the strained plant keeps of its liquid, mL for each gram of dry matter, where the maker has no figure.

use message::{Message, say};
use physics::Interval;

use crate::{
    note::{Note, Status},
    preparations::{self, Measure, Preparation},
};

/// Whose printed figures stand in where a preparation has none.
const STAND_IN: &str = "tincture-dried";

/// What a plant keeps by each way of straining that is printed.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// After a press, mL/g.
    pub pressed: Interval,
    /// Wrung by hand, mL/g.
    pub wrung: Interval,
    /// What that rests on, in a few words.
    pub basis: Message,
    /// What that rests on, in a sentence; none where nothing is kept.
    pub note: Option<Note>,
}

impl Kept {
    /// What it keeps where nobody said how it is strained: from a press to the weakest hand, mL/g.
    pub fn any_way(&self) -> Interval {
        let value = 0.5 * (self.pressed.value + self.wrung.high);
        Interval::spanning(value, self.pressed.low, self.wrung.high)
    }
}

/// What a preparation's plant keeps: nothing where it is made up to its volume after straining, its own printed
/// figures, else those of dried root in spirit.
///
/// *Source*: the `retention` of the preparation's table.
pub fn of(preparation: &Preparation) -> Kept {
    if preparation.measure == Measure::MadeUpTo {
        return Kept {
            pressed: Interval::exact(0.0),
            wrung: Interval::exact(0.0),
            basis: say!("retention-made-up"),
            note: None,
        };
    }
    let own = preparation.retention.as_ref();
    let stand_in = || preparations::of_key(STAND_IN)?.retention.as_ref();
    let figures = own
        .or_else(stand_in)
        .expect("the dried tincture has its figures");
    let (basis, note) = if own.is_some() {
        let text = say!("retention-published");
        let note = Note::new("retention", text, &figures.source, figures.status);
        (say!("retention-published-figure"), note)
    } else {
        let text = say!("retention-assumed");
        let note = Note::new(
            "retention",
            text,
            "source-dried-root-in-spirit",
            Status::Proposal,
        );
        (say!("retention-of-dried-root"), note)
    };
    Kept {
        pressed: Interval::exact(figures.pressed),
        wrung: Interval {
            low: figures.wrung_low,
            value: 0.5 * (figures.wrung_low + figures.wrung_high),
            high: figures.wrung_high,
        },
        basis,
        note: Some(note),
    }
}
