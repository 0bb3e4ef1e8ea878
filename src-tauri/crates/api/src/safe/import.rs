//! `import.look` and `import.apply`: harvests of past years from a spreadsheet, all or nothing.

mod table;

use std::collections::{BTreeMap, BTreeSet};

use chrono::{NaiveDateTime, SubsecRound as _};
use journal::{Bed, BedId, Harvest, HarvestId, Noun};
use serde::{Deserialize, Serialize};

use self::table::Table;
use super::{csv, source, told_time};
use crate::wire::Changed;
use crate::{App, Code, Command, Failure};

/// The columns of harvests.csv, as the export writes them.
pub(super) const COLUMNS: [&str; 12] = [
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
const NEEDED: [&str; 4] = ["picked_at", "herb", "part", "gross_g"];
const MOST_BYTES: u64 = 16_000_000;
const MOST_LINES: usize = 20_000;
/// More than anyone mends before trying again.
const MOST_ERRORS: usize = 200;
const SAMPLE: usize = 20;

/// What would this table bring?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LookAtImport {
    pub file: String,
}

/// Records every harvest of this table as one deed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ApplyImport {
    pub file: String,
}

/// What is wrong with one cell.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LineFault {
    /// The line of the file, the header being line 1.
    pub line: u64,
    pub column: String,
    pub message: String,
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

/// The harvests were recorded.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ImportDone {
    #[serde(flatten)]
    pub done: Changed,
    pub recorded: u64,
    pub known: u64,
}

impl Command for LookAtImport {
    const NAME: &'static str = "import.look";
    type Reply = ImportLook;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        Ok(understood(app, &self.file)?.look)
    }
}

impl Command for ApplyImport {
    const NAME: &'static str = "import.apply";
    type Reply = ImportDone;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let table = understood(app, &self.file)?;
        if let Some(fault) = table.look.faults.first() {
            let why = &fault.message;
            let message = match fault.column.as_str() {
                // The fault is that of the whole line.
                "" => format!("Nothing was imported: line {}: {why}", fault.line),
                column => format!(
                    "Nothing was imported: line {}, column {column}: {why}",
                    fault.line
                ),
            };
            return Err(Failure::invalid("file", message));
        }
        let recorded = table.lines.len() as u64;
        if recorded == 0 {
            let message = "Nothing was imported: the journal has every line of this table already.";
            return Err(Failure::new(Code::Invalid, message));
        }
        let (done, ()) = app.perform(|writing| {
            let mut beds: BTreeMap<String, BedId> = BTreeMap::new();
            for line in table.lines {
                let id = line.id.unwrap_or_else(|| HarvestId(app.new_id()));
                let mut harvest = line.harvest;
                if let Some(name) = line.bed {
                    let key = name.to_lowercase();
                    let bed = match (beds.get(&key), writing.bed_named(&name)?) {
                        (Some(bed), _) => *bed,
                        (None, Some((bed, _))) => bed,
                        (None, None) => {
                            let bed = BedId(app.new_id());
                            let row = Bed {
                                name,
                                wild: false,
                                area_m2: None,
                                note: None,
                            };
                            writing.record(&bed, &row)?;
                            bed
                        }
                    };
                    beds.insert(key, bed);
                    harvest.bed = Some(bed);
                }
                if writing.coded(&harvest.code)?.is_some() {
                    harvest.code = writing.free_code(id.0)?;
                }
                writing.record(&id, &harvest)?;
            }
            Ok((format!("Imported {recorded} harvests from a table"), ()))
        })?;
        Ok(ImportDone {
            done,
            recorded,
            known: table.look.known,
        })
    }
}

struct Line {
    id: Option<HarvestId>,
    harvest: Harvest,
    bed: Option<String>,
}

struct Understood {
    look: ImportLook,
    lines: Vec<Line>,
}

/// What makes two lines the same harvest when they have no id: herb, part, grams, and the time.
type Likeness = (String, String, When, i64);

/// The moment, or what calendar and clock showed there: a table whose times bear no zone is read in
/// the zone where the device is, and another one when it has moved.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
enum When {
    Moment(i64),
    Shown(NaiveDateTime),
}

/// Notes a harvest, and says whether none like it was noted before.
fn is_unlike(likes: &mut BTreeSet<Likeness>, harvest: &Harvest) -> bool {
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

fn understood(app: &App, file: &str) -> Result<Understood, Failure> {
    let path = source(&app.keep, file)?;
    let bytes = csv::read(&path, MOST_BYTES)?;
    let text = std::str::from_utf8(&bytes).map_err(|_| {
        let message = "The table must be saved as CSV in UTF-8; this file is something else.";
        Failure::invalid("file", message)
    })?;
    let text = text.trim_start_matches('\u{feff}');
    let (mut ids, mut likes) = (BTreeSet::new(), BTreeSet::new());
    app.keep.door()?.each_row(Noun::Harvest, |id, body| {
        let harvest: Harvest = serde_json::from_str(body).map_err(store::Failure::from)?;
        ids.insert(id.to_owned());
        is_unlike(&mut likes, &harvest);
        Ok::<_, Failure>(())
    })?;
    app.read(|reading| Table::new(reading, text, app.now())?.read(text, ids, likes))
}
