//! Tables as CSV, written and read.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::fs::File;
use std::path::{Path, PathBuf};

use ::csv::Writer;
use ::disk::Disk;
use message::{Argument, Code, Failure, say};
use serde_json::{Map, Value};

use crate::folder::unwritable;

/// A table in the making: its columns are known before its lines are written.
pub struct Table {
    writer: Writer<Box<dyn std::io::Write>>,
    columns: Vec<String>,
    pub path: PathBuf,
}

impl Table {
    pub fn begin(disk: &Disk, path: PathBuf, columns: Vec<String>) -> Result<Self, Failure> {
        disk.remove(&path).map_err(unwritable)?;
        let draft: Box<dyn std::io::Write> = Box::new(disk.create(&path).map_err(unwritable)?);
        let mut writer = Writer::from_writer(draft);
        writer.write_record(&columns).map_err(unwritten)?;
        Ok(Self {
            writer,
            columns,
            path,
        })
    }

    pub fn line(&mut self, fields: &BTreeMap<String, String>) -> Result<(), Failure> {
        let line = self
            .columns
            .iter()
            .map(|column| guarded(fields.get(column).map_or("", String::as_str)));
        for cell in line {
            self.writer
                .write_field(cell.as_bytes())
                .map_err(unwritten)?;
        }
        self.writer.write_record(None::<&[u8]>).map_err(unwritten)
    }

    pub fn finish(mut self) -> Result<PathBuf, Failure> {
        self.writer.flush().map_err(unwritable)?;
        Ok(self.path)
    }
}

/// Whether a spreadsheet may take this text for a formula, and run it.
fn may_run(text: &str) -> bool {
    text.trim_start_matches(APOSTROPHE)
        .starts_with(['=', '+', '-', '@', '\t', '\r'])
        && text.parse::<f64>().is_err()
}

const APOSTROPHE: char = '\'';

/// The text of a cell, with an apostrophe before what may run: a spreadsheet shows it as it is then.
pub fn guarded(text: &str) -> Cow<'_, str> {
    if may_run(text) {
        Cow::Owned(format!("{APOSTROPHE}{text}"))
    } else {
        Cow::Borrowed(text)
    }
}

/// The text that [`guarded`] made a cell of.
pub fn unguarded(cell: &str) -> &str {
    match cell.strip_prefix(APOSTROPHE) {
        Some(text) if may_run(text) => text,
        _ => cell,
    }
}

fn unwritten(error: ::csv::Error) -> Failure {
    match error.into_kind() {
        ::csv::ErrorKind::Io(error) => unwritable(error),
        other => {
            let detail = Argument::own(format!("{other:?}"));
            Failure::new(Code::Storage, say!("table-unwritten", detail))
        }
    }
}

/// One entry taken apart.
#[derive(Default)]
pub struct Flat {
    /// What fits on one line, by the name of the column.
    pub fields: BTreeMap<String, String>,
    /// Lists of several fields, by the name of the field.
    pub lists: BTreeMap<String, Vec<BTreeMap<String, String>>>,
}

impl Flat {
    pub fn of(entry: &Map<String, Value>) -> Self {
        let mut flat = Self::default();
        flat.add("", entry);
        flat
    }

    fn add(&mut self, within: &str, entry: &Map<String, Value>) {
        for (name, value) in entry {
            let name = if within.is_empty() {
                name.clone()
            } else {
                format!("{within}.{name}")
            };
            match value {
                Value::Null => {}
                Value::Object(inner) => self.add(&name, inner),
                Value::Array(items)
                    if items.iter().any(|item| item.is_object() || item.is_array()) =>
                {
                    let lines = items.iter().map(|item| match item {
                        Value::Object(item) => Self::of(item).with_lists_as_json().fields,
                        other => BTreeMap::from([("value".to_owned(), plain(other))]),
                    });
                    self.lists.insert(name, lines.collect());
                }
                Value::Array(items) => {
                    let words: Vec<String> = items.iter().map(plain).collect();
                    self.fields.insert(name, words.join("; "));
                }
                other => {
                    self.fields.insert(name, plain(other));
                }
            }
        }
    }

    /// A list within a list stays JSON: a third table would help nobody.
    fn with_lists_as_json(mut self) -> Self {
        for (name, lines) in std::mem::take(&mut self.lists) {
            self.fields
                .insert(name, serde_json::json!(lines).to_string());
        }
        self
    }
}

fn plain(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

/// The columns of a noun and of each of its lists.
#[derive(Default)]
pub struct Columns {
    names: BTreeSet<String>,
    pub lists: BTreeMap<String, BTreeSet<String>>,
}

impl Columns {
    pub fn see(&mut self, flat: &Flat) {
        self.names.extend(flat.fields.keys().cloned());
        for (list, lines) in &flat.lists {
            let names = self.lists.entry(list.clone()).or_default();
            names.extend(lines.iter().flat_map(BTreeMap::keys).cloned());
        }
    }

    /// What names an entry comes first.
    pub fn in_order(&self) -> Vec<String> {
        let first = ["id", "code", "name", "common"];
        let heads = first
            .iter()
            .filter(|name| **name == "id" || self.names.contains(**name));
        let rest = self
            .names
            .iter()
            .filter(|name| !first.contains(&name.as_str()));
        heads
            .map(|name| (*name).to_owned())
            .chain(rest.cloned())
            .collect()
    }
}

/// Removes what is a point on the globe, wherever it stands.
pub fn without_places(value: &mut Value) {
    match value {
        Value::Object(fields) => {
            fields.retain(|_, value| !(value.get("lat").is_some() && value.get("lon").is_some()));
            fields.values_mut().for_each(without_places);
        }
        Value::Array(items) => items.iter_mut().for_each(without_places),
        _ => {}
    }
}

/// The first megabytes of a file decide nothing: a table of past years is read whole.
pub fn read(path: &Path, most: u64) -> Result<Vec<u8>, Failure> {
    let file = File::open(path).map_err(unwritable)?;
    let mut bytes = Vec::new();
    let mut limited = std::io::Read::take(file, most + 1);
    std::io::Read::read_to_end(&mut limited, &mut bytes).map_err(unwritable)?;
    if bytes.len() as u64 > most {
        let message = say!("table-too-long", most = most / 1_000_000);
        return Err(Failure::invalid("file", message));
    }
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn fields_within_fields_become_columns_and_lists_of_fields_tables_of_their_own() {
        let jar = json!({
            "name": "Balm", "jar_ml": 500.0, "failed": null, "tags": ["a", "b"],
            "steep_days": { "low": 14, "high": 28 },
            "pours": [{ "ml": 400.0, "item": { "kind": "spirit" } }]
        });
        let flat = Flat::of(jar.as_object().unwrap());
        let fields: Vec<_> = flat
            .fields
            .iter()
            .map(|(k, v)| format!("{k}={v}"))
            .collect();
        assert_eq!(
            fields,
            [
                "jar_ml=500.0",
                "name=Balm",
                "steep_days.high=28",
                "steep_days.low=14",
                "tags=a; b"
            ]
        );
        assert_eq!(flat.lists["pours"][0]["item.kind"], "spirit");
    }

    #[test]
    fn a_point_on_the_globe_is_removed_wherever_it_stands_and_a_shelf_is_not() {
        let mut value = json!({ "place": { "lat": 1.0, "lon": 2.0 }, "jars": [{ "place": "cellar", "where": { "lat": 1, "lon": 2 } }] });
        without_places(&mut value);
        assert_eq!(value, json!({ "jars": [{ "place": "cellar" }] }));
    }
}
