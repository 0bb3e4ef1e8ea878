//! Thousands of altered backups: bytes of the ZIP, of the journal in it, of its manifest, names in its schema, rows of
//! its log. Nothing outside the given folder is touched, the live journal stays byte for byte, and every look ends.
//!
//! `TRUGBOOK_ALTERED` says how many, `TRUGBOOK_ALTERED_FROM` with which number to go on:
//!
//!     TRUGBOOK_ALTERED=200000 TRUGBOOK_ALTERED_FROM=2000 cargo test --release -p checks --test backup altered -- --ignored

use std::fs;
use std::path::{Path, PathBuf};

use checks::Random;
use rusqlite::Connection;
use serde_json::json;

use super::commands::World;
use super::foreign::{TRIGGERS, WITHOUT_TRIGGERS, packed, plain_journal};
use super::season::{backed_up, ended, outside, told};

/// What every altered backup is made from.
struct Whole {
    zip: Vec<u8>,
    journal: Vec<u8>,
    old: Vec<u8>,
}

impl Whole {
    fn new(folder: &Path) -> Self {
        let world = World::new();
        told(&world);
        let zip = fs::read(backed_up(&world, folder, "whole.zip")).unwrap();
        let frozen = Path::new(env!("CARGO_MANIFEST_DIR")).join("migration/v2.sqlite");
        Self {
            zip,
            journal: fs::read(plain_journal(folder)).unwrap(),
            old: fs::read(frozen).unwrap(),
        }
    }
}

fn bytes_changed(bytes: &mut Vec<u8>, from: usize, random: &mut Random) {
    for _ in 0..=random.place(4) {
        let at = from + random.place(bytes.len().saturating_sub(from));
        match random.place(4) {
            0 => bytes[at] ^= 1 << random.place(8),
            1 => bytes[at] = u8::try_from(random.place(256)).unwrap(),
            2 => {
                let end = (at + random.place(5000)).min(bytes.len());
                bytes[at..end].fill(random.one(&[0, 0xff, 0xa5]));
            }
            _ => {
                let end = (at + random.place(64)).min(bytes.len());
                bytes.drain(at..end);
            }
        }
        if bytes.len() <= from {
            return;
        }
    }
}

const NAMES: &[&str] = &[
    "x\"; ATTACH 'OUT' AS o; --",
    "\"; COMMIT; DELETE FROM deed; --",
    "sqlite_stat1",
    "bed; DROP TABLE deed",
    "\u{202e}bed",
    "",
    "deed ",
    "found_more",
];
const VALUES: &[&str] = &[
    "'../../../etc/passwd'",
    "'x'';--'",
    "1e308",
    "-1",
    "9223372036854775807",
    "''",
    "NULL",
    "x'00ff'",
    "'{\"gross_g\": -5}'",
    "'[]'",
    "printf('%.*c', 900000, 'x')",
    "'+99999-01-01T00:00:00Z'",
    "char(10)",
];
const COLUMNS: &[&str] = &[
    "deed.id",
    "deed.milliseconds",
    "deed.counter",
    "deed.device",
    "deed.text",
    "deed.revokes",
    "deed.number",
    "change.noun",
    "change.row",
    "change.act",
    "change.fields",
    "change.deed",
];
const FIELDS: &[&str] = &[
    "herb",
    "part",
    "weighed",
    "picked_at",
    "photos",
    "bed",
    "surface",
    "name",
    "wild",
    "harvest",
    "code",
    "tare_g",
    "started_at",
    "bytes",
    "pours",
    "plants",
    "steep_days",
    "jar",
    "size_ml",
    "end",
    "at",
];

/// SQL that a stranger may have run on the journal in a backup.
fn sql(random: &mut Random, out: &Path) -> String {
    let value = random.one(VALUES);
    match random.place(4) {
        0 => {
            let name = random.one(NAMES).replace("OUT", &out.display().to_string());
            let name = name.replace('"', "\"\"");
            match random.place(4) {
                0 => format!("CREATE TABLE \"{name}\" (x)"),
                1 => format!("CREATE VIEW \"{name}\" AS SELECT 1"),
                2 => format!("CREATE INDEX \"{name}\" ON bed (name)"),
                _ => format!(
                    "CREATE TRIGGER \"{name}\" AFTER INSERT ON bed BEGIN DELETE FROM deed; END"
                ),
            }
        }
        1 => format!(
            "UPDATE change SET fields = json_set(fields, '$.{}', {value}) WHERE deed % {} = 0",
            random.one(FIELDS),
            1 + random.place(3),
        ),
        _ => {
            let (table, column) = random.one(COLUMNS).split_once('.').unwrap();
            let which = if table == "deed" { "number" } else { "deed" };
            format!(
                "UPDATE OR REPLACE {table} SET {column} = {value} WHERE {which} = {}",
                1 + random.place(12)
            )
        }
    }
}

/// Writes the backup of this number to `file`.
fn write(number: u64, whole: &Whole, file: &Path, out: &Path) {
    let mut random = Random::of(number);
    let journal = file.with_extension("journal");
    match number % 6 {
        0 => {
            let mut bytes = whole.zip.clone();
            bytes_changed(&mut bytes, 0, &mut random);
            fs::write(file, bytes).unwrap();
        }
        1 => {
            // The manifest and the directory, with a witness that is right again.
            let mut bytes = whole.zip.clone();
            let length = bytes.len();
            bytes.truncate(length - 64);
            let at = bytes
                .windows(9)
                .rposition(|it| it == b"\"entries\"")
                .unwrap_or(0);
            let place = at + random.place(bytes.len() - at);
            bytes[place] ^= 1 << random.place(8);
            let witness = blake3::hash(&bytes).to_hex();
            bytes.extend_from_slice(witness.as_bytes());
            fs::write(file, bytes).unwrap();
        }
        2 => {
            let mut bytes = random.one(&[&whole.journal, &whole.old]).clone();
            bytes_changed(&mut bytes, 0, &mut random);
            fs::write(&journal, bytes).unwrap();
            packed(&journal, file);
        }
        _ => {
            fs::write(
                &journal,
                random.one(&[&whole.journal, &whole.old, &whole.old]),
            )
            .unwrap();
            let conn = Connection::open(&journal).unwrap();
            conn.execute_batch(&format!("PRAGMA foreign_keys = OFF; {WITHOUT_TRIGGERS}"))
                .unwrap();
            // What SQLite itself refuses leaves the journal as it was.
            let _ = conn.execute_batch(&sql(&mut random, out));
            conn.execute_batch(TRIGGERS).unwrap();
            drop(conn);
            packed(&journal, file);
        }
    }
}

/// Every file below a folder with its bytes, but for the scratch that a job uses.
fn files(folder: &Path, found: &mut Vec<(PathBuf, Vec<u8>)>) {
    for entry in fs::read_dir(folder).unwrap().flatten() {
        let path = entry.path();
        if path.is_dir() {
            files(&path, found);
        } else if !path.to_string_lossy().ends_with("-shm") {
            found.push((path.clone(), fs::read(&path).unwrap()));
        }
    }
}

fn state(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let mut found = Vec::new();
    files(folder, &mut found);
    found.sort();
    found
}

fn asked(name: &str, usual: u64) -> u64 {
    let asked = std::env::var(name).ok();
    asked
        .and_then(|number| number.parse().ok())
        .unwrap_or(usual)
}

/// The most memory this process ever held, in kB; nothing where the system does not tell.
fn most_memory() -> Option<u64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|line| line.starts_with("VmHWM:"))?;
    line.split_whitespace().nth(1)?.parse().ok()
}

#[test]
#[ignore = "long"]
fn altered_backups_touch_nothing_but_the_folder_they_are_given() {
    let (first, count) = (
        asked("TRUGBOOK_ALTERED_FROM", 0),
        asked("TRUGBOOK_ALTERED", 2000),
    );
    let outside = outside();
    let whole = Whole::new(outside.path());
    let (file, out) = (
        outside.path().join("altered.zip"),
        outside.path().join("written-elsewhere"),
    );
    let mut here = World::new();
    told(&here);
    let mut before = state(here.folder());
    let mut taken = 0;
    for number in first..first + count {
        write(number, &whole, &file, &out);
        let command = if number % 2 == 0 {
            "restore.look"
        } else {
            "merge.look"
        };
        let card = ended(&here, &here.call(command, json!({ "file": file })));
        let said = card["failure"]["message"].as_str().unwrap_or_default();
        assert!(
            !said.contains("error in the app"),
            "{number} made it break off: {card}"
        );
        assert!(!out.exists(), "{number} wrote a file elsewhere");
        assert_eq!(
            state(here.folder()),
            before,
            "{number} touched the live book"
        );
        if card["state"] != "done" || number % 7 != 0 {
            continue;
        }
        // What a look lets through can be taken in, and everything can be read afterwards.
        let asked = json!({ "file": file, "without_damaged": true });
        let applied = ended(&here, &here.call(&command.replace("look", "apply"), asked));
        for list in [
            "harvest.list",
            "tray.list",
            "jar.list",
            "bed.list",
            "deed.list",
            "due.list",
            "backup.about",
        ] {
            let read = api::call(here.app(), list, "{}");
            assert!(read.is_ok(), "{number}, {list}: {read:?}");
        }
        assert_ne!(applied["state"], "running", "{number}");
        taken += 1;
        here = World::new();
        told(&here);
        before = state(here.folder());
    }
    if count >= 2000 {
        assert!(
            taken > 10,
            "{taken} were let through: the rest of the check had nothing to look at"
        );
    }
    if let Some(kb) = most_memory() {
        assert!(kb < 600_000, "{kb} kB");
    }
}
