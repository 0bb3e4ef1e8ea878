//! `export.make`: everything as tables and as JSON, for other programs.

use std::collections::BTreeMap;
use std::io::{BufWriter, Write as _};
use std::path::{Path, PathBuf};

use ::photo::{Kind, without_place};
use archive::Packer;
use journal::{Harvest, HerbKey, Noun};
use message::Failure;
use reckon::herb::Known;
use serde::Serialize;
use serde_json::{Value, json};
use store::Store;

use crate::backup::ending;
use crate::folder::{MADE, PREFIX, Scrap, WORK, forget_made, private, unwritable};
use crate::job::Task;
use crate::readme;
use crate::report::{counts, told_time};
use crate::tables::{Columns, Flat, Table, without_places};

/// The kind that the manifest of an export names.
const KIND: &str = "trugbook export";

/// An export was made.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ExportMade {
    pub file: String,
    pub file_name: String,
    pub bytes: u64,
    /// The tables and other files in it, without the photos.
    pub files: Vec<String>,
    pub photos: u64,
    /// Photos from which the place could not be removed for certain.
    pub photos_left_out: u64,
}

pub fn make(task: &Task, target: &Path, photos: bool, places: bool) -> Result<ExportMade, Failure> {
    let (keep, progress) = (&task.keep, &task.progress);
    let work = keep.beside(WORK)?;
    let copy = Scrap(work.join(format!("export-{}", task.name)));
    private(&keep.disk, &copy.0)?;
    let door = keep.door()?;
    let contents = door.snapshot(&copy.0, |_, _| progress.advance(0).map_err(Failure::from))?;
    let store = Store::open(&copy.0, door.device())?;
    let tables = Tables {
        task,
        store: &store,
        work: &work,
        places,
    };
    let mut packer = Packer::begin(&keep.disk, target, None, progress)?;
    packer.add("README.txt", 0, readme::EXPORT.as_bytes())?;
    let mut files = vec!["README.txt".to_owned()];
    let mut add = |name: String, scrap: Scrap, packer: &mut Packer<'_>| -> Result<(), Failure> {
        let file = std::fs::File::open(&scrap.0).map_err(unwritable)?;
        packer.add(&name, file.metadata().map_err(unwritable)?.len(), file)?;
        files.push(name);
        Ok(())
    };
    let scrap = tables.harvests()?;
    add("harvests.csv".to_owned(), scrap, &mut packer)?;
    for noun in Noun::ALL.iter().filter(|noun| contents.of(**noun) > 0) {
        for (name, scrap) in tables.of(*noun)? {
            add(name, scrap, &mut packer)?;
        }
    }
    let scrap = tables.json()?;
    add("journal.json".to_owned(), scrap, &mut packer)?;
    let (mut copied, mut left_out) = (0, 0);
    if photos {
        for hash in keep.photos.hashes()? {
            // At most 64 MB: the album takes in no larger ones.
            let mut original = Vec::new();
            let Some(mut file) = keep.photos.original(&hash)? else {
                continue;
            };
            std::io::Read::read_to_end(&mut file, &mut original).map_err(unwritable)?;
            let bytes = if places {
                Some(original.clone())
            } else {
                without_place(&original)
            };
            let Some(bytes) = bytes else {
                left_out += 1;
                continue;
            };
            let ending = Kind::of(&original).map_or("bin", ending);
            packer.add(&format!("photos/{hash}.{ending}"), 0, bytes.as_slice())?;
            copied += 1;
        }
    }
    let about = json!({
        "made_at": told_time(task.now),
        "app_version": env!("CARGO_PKG_VERSION"),
        "rows": counts(&contents),
        "with_photos": photos,
        "with_places": places,
    });
    let bytes = packer.finish(KIND, about)?;
    if target.parent() == Some(keep.folder.join(MADE).as_path()) {
        let name = target.file_name().unwrap_or_default().to_string_lossy();
        forget_made(keep, &name, |name| name.starts_with(PREFIX));
    }
    Ok(ExportMade {
        file: target.display().to_string(),
        file_name: target
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned(),
        bytes,
        files,
        photos: copied,
        photos_left_out: left_out,
    })
}

struct Tables<'a> {
    task: &'a Task,
    store: &'a Store,
    work: &'a Path,
    places: bool,
}

impl Tables<'_> {
    fn path(&self, name: &str) -> PathBuf {
        self.work.join(format!("{name}-{}", self.task.name))
    }

    /// An entry with its id, and without the place if that is not wanted.
    fn entry(&self, id: &str, body: &str) -> Result<serde_json::Map<String, Value>, Failure> {
        let mut value: Value = serde_json::from_str(body).map_err(store::Failure::from)?;
        if !self.places {
            without_places(&mut value);
        }
        let mut fields = match value {
            Value::Object(fields) => fields,
            _ => serde_json::Map::new(),
        };
        fields.insert("id".to_owned(), json!(id));
        Ok(fields)
    }

    /// The table of a noun and those of its lists. Read twice: the columns come first.
    fn of(&self, noun: Noun) -> Result<Vec<(String, Scrap)>, Failure> {
        let disk = &self.task.keep.disk;
        let mut columns = Columns::default();
        self.store.each_row(noun, |id, body| {
            columns.see(&Flat::of(&self.entry(id, body)?));
            self.task.progress.advance(0).map_err(Failure::from)
        })?;
        let word = noun.as_str();
        let mut table = Table::begin(disk, self.path(word), columns.in_order())?;
        let mut lists = BTreeMap::new();
        for (list, names) in &columns.lists {
            let head = [word.to_owned(), "position".to_owned()];
            let columns = head.into_iter().chain(names.iter().cloned()).collect();
            let path = self.path(&format!("{word}.{list}"));
            lists.insert(list.clone(), Table::begin(disk, path, columns)?);
        }
        self.store.each_row(noun, |id, body| {
            let flat = Flat::of(&self.entry(id, body)?);
            table.line(&flat.fields)?;
            for (list, lines) in flat.lists {
                for (position, mut line) in lines.into_iter().enumerate() {
                    line.insert(word.to_owned(), id.to_owned());
                    line.insert("position".to_owned(), (position + 1).to_string());
                    if let Some(table) = lists.get_mut(&list) {
                        table.line(&line)?;
                    }
                }
            }
            Ok::<_, Failure>(())
        })?;
        let mut made = vec![(format!("{word}.csv"), Scrap(table.finish()?))];
        for (list, table) in lists {
            made.push((format!("{word}.{list}.csv"), Scrap(table.finish()?)));
        }
        Ok(made)
    }

    /// The harvests as the import reads them.
    fn harvests(&self) -> Result<Scrap, Failure> {
        let columns = crate::import::line::COLUMNS
            .iter()
            .map(|name| (*name).to_owned());
        let disk = &self.task.keep.disk;
        let mut table = Table::begin(disk, self.path("harvests"), columns.collect())?;
        let beds: BTreeMap<String, String> = self.store.read(|reading| {
            let beds = reading.beds()?.into_iter();
            Ok::<_, Failure>(beds.map(|(id, bed)| (id.to_string(), bed.name)).collect())
        })?;
        let mut names: BTreeMap<HerbKey, String> = BTreeMap::new();
        self.store.each_row(Noun::Harvest, |id, body| {
            let harvest: Harvest = serde_json::from_str(body).map_err(store::Failure::from)?;
            if !names.contains_key(&harvest.herb) {
                let known = self
                    .store
                    .read(|reading| Known::written(reading, &harvest.herb))?;
                names.insert(harvest.herb.clone(), known.common);
            }
            let line = [
                ("id", id.to_owned()),
                ("code", harvest.code.to_string()),
                ("picked_at", harvest.picked_at.to_rfc3339()),
                ("herb", names[&harvest.herb].clone()),
                ("herb_key", harvest.herb.to_string()),
                ("part", harvest.part),
                ("gross_g", harvest.weighed.gross_g.to_string()),
                ("tare_g", harvest.weighed.tare_g.to_string()),
                (
                    "bed",
                    harvest
                        .bed
                        .and_then(|bed| beds.get(&bed.to_string()).cloned())
                        .unwrap_or_default(),
                ),
                ("stage", harvest.stage.unwrap_or_default()),
                ("surface", harvest.surface.as_str().to_owned()),
                ("note", harvest.note.unwrap_or_default()),
            ];
            let line = line.into_iter().map(|(name, text)| (name.to_owned(), text));
            table.line(&line.collect())?;
            self.task.progress.advance(0).map_err(Failure::from)
        })?;
        Ok(Scrap(table.finish()?))
    }

    /// Everything as JSON, written as it is read.
    fn json(&self) -> Result<Scrap, Failure> {
        let scrap = Scrap(self.path("json"));
        let draft = self.task.keep.disk.create(&scrap.0).map_err(unwritable)?;
        let mut out = BufWriter::new(draft);
        let made_at = told_time(self.task.now);
        write!(
            out,
            "{{\"format\":1,\"made_at\":\"{made_at}\",\"entries\":{{"
        )
        .map_err(unwritable)?;
        for (place, noun) in Noun::ALL.iter().enumerate() {
            let comma = if place == 0 { "" } else { "," };
            write!(out, "{comma}\n\"{}\":[", noun.as_str()).map_err(unwritable)?;
            let mut comma = "";
            self.store.each_row(*noun, |id, body| {
                let entry = Value::Object(self.entry(id, body)?);
                write!(out, "{comma}\n{entry}").map_err(unwritable)?;
                comma = ",";
                self.task.progress.advance(0).map_err(Failure::from)
            })?;
            out.write_all(b"]").map_err(unwritable)?;
        }
        out.write_all(b"},\n\"deeds\":[").map_err(unwritable)?;
        let mut comma = "";
        let mut failed = None;
        self.store.each_deed(|deed| {
            let changes = deed.changes.iter().map(|change| {
                let mut change = json!(change);
                if !self.places {
                    without_places(&mut change);
                }
                change
            });
            let deed = json!({
                "id": deed.id, "milliseconds": deed.at.milliseconds, "counter": deed.at.counter,
                "device": deed.device, "text": deed.text, "revokes": deed.revokes,
                "changes": changes.collect::<Vec<_>>(),
            });
            if failed.is_none() {
                failed = write!(out, "{comma}\n{deed}").err();
            }
            comma = ",";
            Ok(())
        })?;
        if let Some(error) = failed {
            return Err(unwritable(error));
        }
        out.write_all(b"]}\n").map_err(unwritable)?;
        out.flush().map_err(unwritable)?;
        Ok(scrap)
    }
}
