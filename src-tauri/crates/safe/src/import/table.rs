//! One table as it is understood: its columns, its lines, what is wrong with them.

use std::collections::{BTreeMap, BTreeSet};

use ::csv::{ReaderBuilder, StringRecord};
use chrono::{DateTime, FixedOffset, NaiveDate, NaiveDateTime, NaiveTime};
use journal::{Harvest, HarvestId, HerbKey, Kept as _, LotCode, Surface, TimeFrom, Weighed};
use message::{Argument, Failure, Message, Refusal, say};
use reckon::asked;
use reckon::herb::Known;
use store::Reading;

use crate::import::line::{
    COLUMNS, ImportLine, ImportLook, Likeness, Line, LineFault, MOST_ERRORS, MOST_LINES, NEEDED,
    SAMPLE, Understood, is_unlike,
};
use crate::report::told_time;
use crate::tables::unguarded;

/// As many letters as a bed may have that is added by hand.
const LONGEST_BED: usize = 120;

/// No spreadsheet has a line as long; every cell of a line takes memory of its own.
const LONGEST_LINE: usize = 100_000;

pub struct Table<'r, 'c> {
    pub reading: &'r Reading<'c>,
    pub now: DateTime<FixedOffset>,
    pub delimiter: u8,
    pub columns: BTreeMap<&'static str, usize>,
    pub ignored: Vec<String>,
    pub own_herbs: BTreeMap<String, HerbKey>,
    pub herbs: BTreeMap<String, Option<HerbKey>>,
}

type Cell<T> = Result<T, Refusal>;

impl<'r, 'c> Table<'r, 'c> {
    pub fn new(
        reading: &'r Reading<'c>,
        text: &str,
        now: DateTime<FixedOffset>,
    ) -> Result<Self, Failure> {
        if text.lines().any(|line| line.len() > LONGEST_LINE) {
            let message = say!("table-line-too-long", most = LONGEST_LINE / 1000);
            return Err(Failure::invalid("file", message));
        }
        let head = text.lines().next().unwrap_or_default();
        // Spreadsheets separate by what their country does not use in numbers.
        let delimiter = [b',', b';', b'\t']
            .into_iter()
            .max_by_key(|mark| head.bytes().filter(|byte| byte == mark).count())
            .unwrap_or(b',');
        let mut columns = BTreeMap::new();
        let mut ignored = Vec::new();
        let mut reader = ReaderBuilder::new()
            .delimiter(delimiter)
            .has_headers(false)
            .from_reader(head.as_bytes());
        let names = reader
            .records()
            .next()
            .and_then(Result::ok)
            .unwrap_or_default();
        for (place, name) in names.iter().enumerate() {
            let plain = name.trim().to_lowercase().replace(' ', "_");
            match COLUMNS.iter().find(|known| **known == plain) {
                Some(known) if columns.insert(*known, place).is_none() => {}
                Some(known) => {
                    let message = say!("table-column-twice", column = Argument::own(*known));
                    return Err(Failure::invalid("file", message));
                }
                None => ignored.push(name.to_owned()),
            }
        }
        if let Some(missing) = NEEDED.iter().find(|name| !columns.contains_key(*name)) {
            let others = COLUMNS.into_iter().filter(|name| !NEEDED.contains(name));
            let message = say!(
                "table-columns",
                needed = Argument::all_of(NEEDED.map(Argument::own)),
                missing = Argument::own(*missing),
                others = Argument::all_of(others.map(Argument::own))
            );
            return Err(Failure::invalid("file", message));
        }
        let own = reading.herbs()?.into_iter();
        Ok(Self {
            reading,
            now,
            delimiter,
            columns,
            ignored,
            own_herbs: own
                .map(|(id, herb)| (herb.common.to_lowercase(), id.into()))
                .collect(),
            herbs: BTreeMap::new(),
        })
    }

    pub fn read(
        mut self,
        text: &str,
        ids: BTreeSet<String>,
        mut likes: BTreeSet<Likeness>,
    ) -> Result<Understood, Failure> {
        let mut reader = ReaderBuilder::new()
            .delimiter(self.delimiter)
            .from_reader(text.as_bytes());
        let mut look = ImportLook {
            new: 0,
            known: 0,
            new_beds: Vec::new(),
            ignored_columns: std::mem::take(&mut self.ignored),
            faults: Vec::new(),
            fault_count: 0,
            sample: Vec::new(),
        };
        let mut lines = Vec::new();
        let (mut codes, mut beds) = (BTreeSet::new(), BTreeSet::new());
        let mut fresh_ids = BTreeSet::new();
        let mut read = 0;
        let fault = |look: &mut ImportLook, line, column: &str, message| {
            look.fault_count += 1;
            if look.faults.len() < MOST_ERRORS {
                let column = column.to_owned();
                look.faults.push(LineFault {
                    line,
                    column,
                    message,
                });
            }
        };
        for record in reader.records() {
            let record = match record {
                Ok(record) => record,
                Err(why) => {
                    let line = why.position().map_or(0, ::csv::Position::line);
                    fault(&mut look, line, "", broken(&why));
                    continue;
                }
            };
            if record.iter().all(|cell| cell.trim().is_empty()) {
                continue;
            }
            let at = record.position().map_or(0, ::csv::Position::line);
            read += 1;
            if read > MOST_LINES {
                let message = say!("table-too-many", most = MOST_LINES);
                fault(&mut look, at, "", message);
                break;
            }
            let mut line = match self.line(&record) {
                Ok(line) => line,
                Err(why) => {
                    fault(&mut look, at, &why.field, why.message);
                    continue;
                }
            };
            let id = line.id.map(|id| id.to_string());
            // The same harvest twice in one table counts once, as it does over two imports.
            let is_known = match &id {
                Some(id) => ids.contains(id) || !fresh_ids.insert(id.clone()),
                None => false,
            } || !is_unlike(&mut likes, &line.harvest);
            if is_known {
                look.known += 1;
                continue;
            }
            if !codes.insert(line.harvest.code.to_string()) {
                line.harvest.code = self.reading.free_code(uuid::Uuid::from_u128(at.into()))?;
            }
            if let Some(bed) = &line.bed
                && beds.insert(bed.clone())
                && self.reading.bed_named(bed)?.is_none()
            {
                look.new_beds.push(bed.clone());
            }
            look.new += 1;
            if look.sample.len() < SAMPLE {
                look.sample.push(ImportLine {
                    line: at,
                    herb: Known::written(self.reading, &line.harvest.herb)?.common,
                    part: line.harvest.part.clone(),
                    picked_at: told_time(line.harvest.picked_at),
                    fresh_mass_g: line.harvest.fresh().get(),
                    bed: line.bed.clone(),
                    surface: line.harvest.surface.as_str().to_owned(),
                });
            }
            lines.push(line);
        }
        Ok(Understood { look, lines })
    }

    pub fn cell<'t>(&self, record: &'t StringRecord, column: &str) -> &'t str {
        self.columns
            .get(column)
            .and_then(|place| record.get(*place))
            .map_or("", |cell| unguarded(cell.trim()))
    }

    pub fn line(&mut self, record: &StringRecord) -> Cell<Line> {
        let text = |column: &str| {
            Some(self.cell(record, column).to_owned()).filter(|text| !text.is_empty())
        };
        let id = match self.cell(record, "id") {
            "" => None,
            id => Some(
                id.parse::<HarvestId>()
                    .map_err(|why| Refusal::new("id", why.message))?,
            ),
        };
        let gross_g = self
            .number(record, "gross_g")?
            .ok_or_else(|| Refusal::new("gross_g", say!("table-weight-missing")))?;
        let tare_g = self.number(record, "tare_g")?.unwrap_or(0.0);
        let surface = match self.cell(record, "surface") {
            "" => Surface::Dry,
            word => Surface::parse(&word.to_lowercase()).ok_or_else(|| {
                Refusal::new(
                    "surface",
                    say!("table-surface", given = Argument::own(word)),
                )
            })?,
        };
        let picked_at = self.time(self.cell(record, "picked_at"))?;
        let code = self.cell(record, "code").parse::<LotCode>();
        let (stage, note, bed, part) = (text("stage"), text("note"), text("bed"), text("part"));
        let letters = bed.as_ref().map_or(0, |name| name.chars().count());
        if letters > LONGEST_BED {
            let message = say!(
                "refused-too-long",
                what = say!("what-name-of-a-bed"),
                longest = LONGEST_BED,
                count = letters
            );
            return Err(Refusal::new("bed", message));
        }
        let herb = self.herb(record)?;
        let harvest = Harvest {
            code: code.unwrap_or_else(|_| LotCode::suggested(uuid::Uuid::nil(), 0)),
            herb,
            part: part.unwrap_or_default(),
            weighed: Weighed { gross_g, tare_g },
            picked_at,
            time_from: TimeFrom::Typed,
            bed: None,
            stage,
            surface,
            note,
            photos: Vec::new(),
            place: None,
            look_alike_ruled_out: false,
        };
        harvest.check()?;
        Ok(Line { id, harvest, bed })
    }

    pub fn herb(&mut self, record: &StringRecord) -> Cell<HerbKey> {
        let (key, name) = (self.cell(record, "herb_key"), self.cell(record, "herb"));
        for asked in [key, name].into_iter().filter(|text| !text.is_empty()) {
            let found = match self.herbs.get(asked) {
                Some(found) => found.clone(),
                None => {
                    let own = self.own_herbs.get(&asked.to_lowercase()).cloned();
                    let found = own.or_else(|| {
                        Known::asked(self.reading, asked)
                            .ok()
                            .map(|known| known.key)
                    });
                    self.herbs.insert(asked.to_owned(), found.clone());
                    found
                }
            };
            if let Some(found) = found {
                return Ok(found);
            }
        }
        let name: String = name.chars().take(80).collect();
        Err(Refusal::new(
            "herb",
            say!("herb-unknown", name = Argument::own(name)),
        ))
    }

    pub fn number(&self, record: &StringRecord, column: &'static str) -> Cell<Option<f64>> {
        let text = self.cell(record, column);
        if text.is_empty() {
            return Ok(None);
        }
        // Where cells are not separated by commas, a comma may stand before the decimals.
        let plain = if self.delimiter == b',' {
            text.to_owned()
        } else {
            text.replace(',', ".")
        };
        match plain.parse::<f64>() {
            Ok(number) if number.is_finite() => Ok(Some(number)),
            _ => {
                let shown: String = text.chars().take(40).collect();
                Err(Refusal::new(
                    column,
                    say!("table-number", given = Argument::own(shown)),
                ))
            }
        }
    }

    /// A time with its offset, or a day or a time on the calendar where the device is now.
    pub fn time(&self, text: &str) -> Cell<DateTime<FixedOffset>> {
        let noon = NaiveTime::from_hms_opt(12, 0, 0).unwrap_or_default();
        let local = |text: &str| {
            text.parse::<NaiveDate>()
                .map(|day| day.and_time(noon))
                .or_else(|_| NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M"))
                .or_else(|_| NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M:%S"))
                .ok()
        };
        let at = DateTime::parse_from_rfc3339(text)
            .ok()
            .or_else(|| local(text)?.and_local_timezone(*self.now.offset()).single());
        let Some(at) = at else {
            let shown: String = text.chars().take(40).collect();
            let message = say!("table-day", given = Argument::own(shown));
            return Err(Refusal::new("picked_at", message));
        };
        asked::past("picked_at", Some(&at.to_rfc3339()), self.now)
            .map_err(|failure| Refusal::new("picked_at", failure.message))
    }
}

fn broken(why: &::csv::Error) -> Message {
    match why.kind() {
        ::csv::ErrorKind::UnequalLengths {
            expected_len, len, ..
        } => {
            say!("table-cells", cells = *len, columns = *expected_len)
        }
        _ => say!("table-line-unreadable"),
    }
}
