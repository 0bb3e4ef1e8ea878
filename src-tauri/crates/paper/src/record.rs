//! What stands on a label, as a plain record.

use chrono::NaiveDate;
use message::{Argument, Message};
use words::Language;

use crate::figure::Figure;
use crate::plant::Herb;

/// Whom a label speaks to, which decides the items it carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A jar that steeps at home.
    Jar,
    /// A bottle kept at home.
    Bottle,
    /// A bottle that leaves the house: no private note.
    Gift,
}

/// What a ratio's millilitres are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Meaning {
    /// The liquid that was poured on.
    PouredOn,
    /// The volume it was made up to at the end.
    MadeUpTo,
}

/// Grams of herb to millilitres of liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ratio {
    /// Millilitres for each gram of herb.
    pub ml_per_g: f64,
    /// Which liquid those millilitres are.
    pub meaning: Meaning,
}

/// How strong the liquid is in what matters to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Strength {
    /// Alcohol in % vol at 20 C.
    Alcohol(Figure),
    /// Glycerol in % by weight.
    Glycerol(Figure),
    /// Acidity in g of acetic acid per 100 mL.
    Acidity(Figure),
    /// Sugar in % by weight.
    Sugar(Figure),
}

/// What the preparation is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// Taken by mouth.
    Inside,
    /// Put on the skin and never taken.
    OutsideOnly,
    /// Eaten or drunk as food.
    Food,
}

/// One plant in the preparation.
#[derive(Debug, Clone, PartialEq)]
pub struct Plant {
    /// The common name, or the maker's own.
    pub common: Argument,
    /// The binomial.
    pub latin: Option<String>,
    /// The part, such as `leaf`.
    pub part: Argument,
    /// Fresh, dried or cooked.
    pub state: Argument,
}

/// Where something in it came from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Origin {
    /// The code of a harvest.
    Harvest(String),
    /// The name of a bed.
    Bed(String),
    /// The code of the jar whose marc was poured on again.
    Marc(String),
}

/// One label. What is not known is left empty; [`Label::new`] begins with an empty one.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The language of everything on it that the maker did not write.
    pub language: Language,
    /// Whom it speaks to.
    pub kind: Kind,
    /// What it is: `Lemon balm glycerite`.
    pub name: String,
    /// The plants.
    pub plants: Vec<Plant>,
    /// The plant that is drawn where there is room for it.
    pub drawn: Option<Herb>,
    /// Herb to liquid.
    pub ratio: Option<Ratio>,
    /// What was poured on: olive oil, spirit, water.
    pub liquids: Vec<Argument>,
    /// On a jar what was poured, on a bottle or gift what the finished liquid holds.
    pub strengths: Vec<Strength>,
    /// The day it was poured.
    pub made_on: Option<NaiveDate>,
    /// The first day it may be strained.
    pub due_from: Option<NaiveDate>,
    /// The day by which it should be strained.
    pub due_to: Option<NaiveDate>,
    /// The day it was strained.
    pub strained_on: Option<NaiveDate>,
    /// The day it was bottled.
    pub bottled_on: Option<NaiveDate>,
    /// The last day it should be used.
    pub best_before: Option<NaiveDate>,
    /// The lot code: `tavo-472`.
    pub lot: String,
    /// Harvests and beds; a wild place is left out by whoever fills this.
    pub origins: Vec<Origin>,
    /// How to keep it, one line.
    pub storage: Option<Message>,
    /// What it is for.
    pub use_for: Use,
    /// Cautions, one plain line each.
    pub cautions: Vec<Message>,
    /// Grams of ethanol in the whole bottle, where the maker wants it printed.
    pub ethanol_in_bottle_g: Option<Figure>,
    /// The number of the maker's poison centre.
    pub poison_line: Option<String>,
    /// Who made it and how to reach them.
    pub maker: Option<String>,
    /// What the bottle holds, in mL.
    pub net_ml: Option<f64>,
    /// What is in it, most first.
    pub ingredients: Vec<Argument>,
    /// Allergens among them.
    pub allergens: Vec<Argument>,
    /// Lines that are filled in by hand.
    pub by_hand: Vec<Message>,
    /// The link of its code, where that is another than its lot's.
    pub code: Option<String>,
    /// Ways to use it with what to beware of, on a gift that has room.
    pub ways: Vec<Message>,
    /// The maker's own note, never on a gift.
    pub note: Option<String>,
}

impl Label {
    /// A label that knows only what it is and its lot.
    #[must_use]
    pub fn new(kind: Kind, name: impl Into<String>, lot: impl Into<String>) -> Self {
        Self {
            language: Language::English,
            kind,
            name: name.into(),
            plants: Vec::new(),
            drawn: None,
            ratio: None,
            liquids: Vec::new(),
            strengths: Vec::new(),
            made_on: None,
            due_from: None,
            due_to: None,
            strained_on: None,
            bottled_on: None,
            best_before: None,
            lot: lot.into(),
            origins: Vec::new(),
            storage: None,
            use_for: Use::Inside,
            cautions: Vec::new(),
            ethanol_in_bottle_g: None,
            poison_line: None,
            maker: None,
            net_ml: None,
            ingredients: Vec::new(),
            allergens: Vec::new(),
            by_hand: Vec::new(),
            code: None,
            ways: Vec::new(),
            note: None,
        }
    }
}
