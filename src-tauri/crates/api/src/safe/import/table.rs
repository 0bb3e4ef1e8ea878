//! One table as it is understood: its columns, its lines, what is wrong with them.

use std::collections::{BTreeMap, BTreeSet};

use ::csv::{ReaderBuilder, StringRecord};
use chrono::{DateTime, FixedOffset, NaiveDate, NaiveDateTime, NaiveTime};
use journal::{Harvest, HarvestId, HerbKey, Kept as _, LotCode, Surface, TimeFrom, Weighed};
use store::Reading;

use super::super::csv::unguarded;
use super::{
    COLUMNS, ImportLine, ImportLook, Likeness, Line, LineFault, MOST_ERRORS, MOST_LINES, NEEDED,
    SAMPLE, Understood, is_unlike, told_time,
};
use crate::herb::Known;
use crate::{Failure, asked};

/// No spreadsheet has a line as long; every cell of a line takes memory of its own.
const LONGEST_LINE: usize = 100_000;

pub(super) struct Table<'r, 'c> {
    reading: &'r Reading<'c>,
    now: DateTime<FixedOffset>,
    delimiter: u8,
    columns: BTreeMap<&'static str, usize>,
    ignored: Vec<String>,
    own_herbs: BTreeMap<String, HerbKey>,
    herbs: BTreeMap<String, Option<HerbKey>>,
}

type Cell<T> = Result<T, (&'static str, String)>;

impl<'r, 'c> Table<'r, 'c> {
    pub(super) fn new(
        reading: &'r Reading<'c>,
        text: &str,
        now: DateTime<FixedOffset>,
    ) -> Result<Self, Failure> {
        if text.lines().any(|line| line.len() > LONGEST_LINE) {
            let message = format!(
                "A line of the table may be at most {} kB long.",
                LONGEST_LINE / 1000
            );
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
                    let message = format!("The column {known} stands twice in the first line.");
                    return Err(Failure::invalid("file", message));
                }
                None => ignored.push(name.to_owned()),
            }
        }
        if let Some(missing) = NEEDED.iter().find(|name| !columns.contains_key(*name)) {
            let message = format!(
                "The first line must name the columns {}; {missing} is missing. It may also name {}.",
                NEEDED.join(", "),
                COLUMNS
                    .into_iter()
                    .filter(|name| !NEEDED.contains(name))
                    .collect::<Vec<_>>()
                    .join(", ")
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

    pub(super) fn read(
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
                let message = format!("A table may have at most {MOST_LINES} harvests; split it.");
                fault(&mut look, at, "", message);
                break;
            }
            let mut line = match self.line(&record) {
                Ok(line) => line,
                Err((column, message)) => {
                    fault(&mut look, at, column, message);
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

    fn cell<'t>(&self, record: &'t StringRecord, column: &str) -> &'t str {
        self.columns
            .get(column)
            .and_then(|place| record.get(*place))
            .map_or("", |cell| unguarded(cell.trim()))
    }

    fn line(&mut self, record: &StringRecord) -> Cell<Line> {
        let text = |column: &str| {
            Some(self.cell(record, column).to_owned()).filter(|text| !text.is_empty())
        };
        let id = match self.cell(record, "id") {
            "" => None,
            id => Some(id.parse::<HarvestId>().map_err(|why| ("id", why.message))?),
        };
        let gross_g = self
            .number(record, "gross_g")?
            .ok_or_else(|| ("gross_g", "The weight in grams must be given.".to_owned()))?;
        let tare_g = self.number(record, "tare_g")?.unwrap_or(0.0);
        let surface = match self.cell(record, "surface") {
            "" => Surface::Dry,
            word => Surface::parse(&word.to_lowercase()).ok_or_else(|| {
                (
                    "surface",
                    format!("The surface must be dry, dew, rain or washed; {word:?} is not."),
                )
            })?,
        };
        let picked_at = self.time(self.cell(record, "picked_at"))?;
        let code = self.cell(record, "code").parse::<LotCode>();
        let (stage, note, bed, part) = (text("stage"), text("note"), text("bed"), text("part"));
        if bed.as_ref().is_some_and(|name| name.chars().count() > 120) {
            return Err((
                "bed",
                "The name of a bed may have at most 120 characters.".to_owned(),
            ));
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
        harvest
            .check()
            .map_err(|refusal| (refusal.field, refusal.message))?;
        Ok(Line { id, harvest, bed })
    }

    fn herb(&mut self, record: &StringRecord) -> Cell<HerbKey> {
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
        Err((
            "herb",
            format!("There is no herb called {name:?}; add it as your own first."),
        ))
    }

    fn number(&self, record: &StringRecord, column: &'static str) -> Cell<Option<f64>> {
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
                Err((
                    column,
                    format!("Grams must be a plain number like 412.5; {shown:?} is not."),
                ))
            }
        }
    }

    /// A time with its offset, or a day or a time on the calendar where the device is now.
    fn time(&self, text: &str) -> Cell<DateTime<FixedOffset>> {
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
            let message =
                format!("The day must be like 2019-07-14 or 2019-07-14 09:30; {shown:?} is not.");
            return Err(("picked_at", message));
        };
        asked::past("picked_at", Some(&at.to_rfc3339()), self.now)
            .map_err(|failure| ("picked_at", failure.message))
    }
}

fn broken(why: &::csv::Error) -> String {
    match why.kind() {
        ::csv::ErrorKind::UnequalLengths {
            expected_len, len, ..
        } => {
            format!("The line has {len} cells where the first line has {expected_len}.")
        }
        _ => "The line cannot be read as CSV.".to_owned(),
    }
}
