//! A line of a table, what is wrong with it, and what makes two of them the same harvest.

use std::collections::BTreeSet;

use chrono::{NaiveDateTime, SubsecRound as _};
use journal::{Harvest, HarvestId};
use message::Message;
use serde::Serialize;

/// The columns of harvests.csv, as the export writes them.
pub const COLUMNS: [&str; 12] = [
    "id",
    "code",
    "picked_at",
    "herb",
    "herb_key",
    "part",
    "gross_g",
    "tare_g",
    "bed",
    "stage",
    "surface",
    "note",
];
pub const NEEDED: [&str; 4] = ["picked_at", "herb", "part", "gross_g"];
pub const MOST_LINES: usize = 20_000;
/// More than anyone mends before trying again.
pub const MOST_ERRORS: usize = 200;
pub const SAMPLE: usize = 20;

/// What is wrong with one cell.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LineFault {
    /// The line of the file, the header being line 1.
    pub line: u64,
    pub column: String,
    pub message: Message,
}

/// One harvest as it was understood.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ImportLine {
    pub line: u64,
    pub herb: String,
    pub part: String,
    pub picked_at: String,
    pub fresh_mass_g: f64,
    pub bed: Option<String>,
    pub surface: String,
}

/// The answer to [`LookAtImport`]. It can be applied if there are no faults and something is new.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ImportLook {
    pub new: u64,
    /// Lines that the journal has already; they are passed over.
    pub known: u64,
    pub new_beds: Vec<String>,
    /// Columns that are not read.
    pub ignored_columns: Vec<String>,
    /// The first 200.
    pub faults: Vec<LineFault>,
    pub fault_count: u64,
    /// The first 20 new ones.
    pub sample: Vec<ImportLine>,
}

pub struct Line {
    pub id: Option<HarvestId>,
    pub harvest: Harvest,
    pub bed: Option<String>,
}

pub struct Understood {
    pub look: ImportLook,
    pub lines: Vec<Line>,
}

/// What makes two lines the same harvest when they have no id: herb, part, grams, and the time.
pub type Likeness = (String, String, When, i64);

/// The moment, or what calendar and clock showed there: a table whose times bear no zone is read in
/// the zone where the device is, and another one when it has moved.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
pub enum When {
    Moment(i64),
    Shown(NaiveDateTime),
}

/// Notes a harvest, and says whether none like it was noted before.
pub fn is_unlike(likes: &mut BTreeSet<Likeness>, harvest: &Harvest) -> bool {
    let times = [
        When::Moment(harvest.picked_at.timestamp()),
        When::Shown(harvest.picked_at.naive_local().trunc_subsecs(0)),
    ];
    let mut is_new = true;
    for when in times {
        is_new &= likes.insert((
            harvest.herb.to_string(),
            harvest.part.to_lowercase(),
            when,
            harvest.fresh().thousandths(),
        ));
    }
    is_new
}
