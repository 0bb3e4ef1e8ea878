//! What can still be read of a damaged journal.

use std::collections::BTreeMap;
use std::fs;
use std::io::Write as _;
use std::path::Path;

use chrono::{DateTime, FixedOffset};
use journal::{Act, Change, Deed, DeedId, DeviceId, Fields, Line, Noun};
use message::{Voice, say};
use rusqlite::Connection;

use crate::open::about;
use crate::sql::quoted;
use crate::whole::only_to_read;
use crate::{Failure, Store, log, merge, migrate};

/// What was saved and what was not.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Rescued {
    /// Deeds that were read whole.
    pub deeds: u64,
    /// Deeds of which something is missing.
    pub lost: u64,
    /// Rows whose deeds are lost, saved as they stood, by noun.
    pub rows: BTreeMap<Noun, u64>,
    /// Whether the end of the damaged file could be found: if not, deeds may be missing that
    /// nobody can count.
    pub end_found: bool,
}

/// As many unreadable deeds in a row are taken for the end of the file.
const GAP: i64 = 4096;
/// What SQLite takes unless it is told otherwise, and no journal tells it.
const PAGE: usize = 4096;

/// Reads what can be read of the journal at `damaged`, which is only read, into a new journal at
/// `fresh`. Rows whose deeds are lost are recorded as they stood by one deed that says so. What the
/// device noted under the keys of `notes` is taken along; `voice` says the line of that deed.
///
/// # Errors
/// A failure to write the new journal. What cannot be read is no error; [`Rescued`] counts it.
pub fn rescue(
    damaged: &Path,
    fresh: &Path,
    notes: &[&str],
    new_device: DeviceId,
    deed: DeedId,
    now: DateTime<FixedOffset>,
    voice: Voice,
) -> Result<Rescued, Failure> {
    let mut rescued = Rescued::default();
    let pages = fresh.with_extension("pages");
    let read = only_to_read(damaged).ok().map(|conn| {
        let numbers = readable(&conn, &mut rescued);
        (conn, numbers)
    });
    let read = match read {
        Some((conn, numbers)) if rescued.end_found => Some((conn, numbers)),
        _ => with_fresh_directory(damaged, &pages).ok().map(|conn| {
            rescued = Rescued::default();
            let numbers = readable(&conn, &mut rescued);
            (conn, numbers)
        }),
    };
    let Some((conn, numbers)) = read else {
        Store::open(fresh, new_device)?;
        return Ok(rescued);
    };
    let device = conn
        .query_row("SELECT value FROM about WHERE key = 'device'", [], |row| {
            row.get::<_, String>(0)
        })
        .ok()
        .and_then(|text| text.parse().ok());
    let mut store = Store::open(fresh, device.unwrap_or(new_device))?;
    for key in notes {
        if let Ok(Some(value)) = about(&conn, key) {
            store.note(key, &value)?;
        }
    }
    let mut whole = Vec::new();
    for number in numbers {
        match log::deed(&conn, number) {
            Ok(deed) if !deed.changes.is_empty() || deed.revokes.is_some() => whole.push(deed),
            _ => rescued.lost += 1,
        }
        // A large journal is taken in by pieces; the order of arrival does not matter.
        if whole.len() == 10_000 {
            rescued.deeds += take_in(&mut store, std::mem::take(&mut whole), &mut rescued.lost)?;
        }
    }
    rescued.deeds += take_in(&mut store, whole, &mut rescued.lost)?;
    let changes = standing(&conn, &store, &mut rescued)?;
    if !changes.is_empty() {
        let line = Line::said(&say!("deed-rescued", count = changes.len()), voice);
        let rescue = Deed {
            id: deed,
            at: log::next_time(&store.conn, now, &changes, None)?,
            device: store.device,
            text: line.text,
            message: line.message,
            revokes: None,
            changes,
        };
        store.absorb([rescue])?;
    }
    drop(conn);
    let _ = fs::remove_file(pages);
    Ok(rescued)
}

/// A copy of the file whose first page, which says where the tables are, is that of a new journal:
/// the log lies in the same pages in every journal. What SQLite keeps beside the file is brought
/// into it first, as far as that can be done.
fn with_fresh_directory(damaged: &Path, copy: &Path) -> Result<Connection, Failure> {
    let failed = |error: std::io::Error| Failure::Storage(error.to_string());
    let beside = |path: &Path| {
        let mut name = path.as_os_str().to_owned();
        name.push("-wal");
        name
    };
    fs::copy(damaged, copy).map_err(failed)?;
    if fs::copy(beside(damaged), beside(copy)).is_ok() {
        if let Ok(conn) = Connection::open(copy) {
            let _ = conn.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()));
        }
        let _ = fs::remove_file(beside(copy));
    }
    let model = copy.with_extension("model");
    let _ = fs::remove_file(&model);
    let fresh = Connection::open(&model)?;
    migrate::log_alone(&fresh)?;
    drop(fresh);
    let mut first = fs::read(&model).map_err(failed)?;
    let _ = fs::remove_file(&model);
    first.truncate(PAGE);
    let mut bytes = fs::OpenOptions::new()
        .write(true)
        .open(copy)
        .map_err(failed)?;
    let length = bytes.metadata().map_err(failed)?.len();
    let pages = u32::try_from(length / PAGE as u64).unwrap_or(0);
    // SQLite file format 1.3.7: the size in pages, at 28 in the header.
    first[28..32].copy_from_slice(&pages.to_be_bytes());
    bytes.write_all(&first).map_err(failed)?;
    drop(bytes);
    only_to_read(copy)
}

/// The numbers of the deeds that the file has or had.
fn readable(conn: &Connection, rescued: &mut Rescued) -> Vec<i64> {
    let end = [
        "SELECT max(number) FROM deed",
        "SELECT max(deed) FROM change",
    ]
    .iter()
    .filter_map(|sql| {
        conn.query_row(sql, [], |row| row.get::<_, Option<i64>>(0))
            .ok()
    })
    .collect::<Vec<_>>();
    rescued.end_found = !end.is_empty();
    let end = end.into_iter().flatten().max();
    let mut numbers = Vec::new();
    let mut last_seen = 0;
    for number in 1.. {
        if end.is_some_and(|end| number > end) || (end.is_none() && number > last_seen + GAP) {
            break;
        }
        let found = conn
            .prepare_cached("SELECT 1 FROM deed WHERE number = ?1")
            .and_then(|mut statement| statement.exists([number]));
        match found {
            Ok(true) => {
                last_seen = number;
                numbers.push(number);
            }
            Ok(false) => {}
            Err(_) if end.is_some() => rescued.lost += 1,
            Err(_) => {}
        }
    }
    numbers
}

/// All at once, and one by one where one of them is refused.
fn take_in(store: &mut Store, deeds: Vec<Deed>, lost: &mut u64) -> Result<u64, Failure> {
    match store.absorb(deeds.iter().cloned()) {
        Ok(absorbed) => return Ok(absorbed.deeds as u64),
        Err(Failure::StorageFull) => return Err(Failure::StorageFull),
        Err(_) => {}
    }
    let mut taken = 0;
    for deed in deeds {
        match store.absorb([deed]) {
            Ok(absorbed) => taken += absorbed.deeds as u64,
            Err(Failure::StorageFull) => return Err(Failure::StorageFull),
            Err(_) => *lost += 1,
        }
    }
    Ok(taken)
}

/// Rows of the damaged file that the deeds that were read do not give.
fn standing(
    conn: &Connection,
    store: &Store,
    rescued: &mut Rescued,
) -> Result<Vec<Change>, Failure> {
    let mut changes = Vec::new();
    for noun in Noun::ALL {
        let sql = format!("SELECT id, body FROM {} NOT INDEXED", quoted(noun.as_str()));
        let Ok(mut statement) = conn.prepare(&sql) else {
            continue;
        };
        let Ok(mut rows) = statement.query([]) else {
            continue;
        };
        // The first page that cannot be read ends this table.
        while let Ok(Some(row)) = rows.next() {
            let (Ok(id), Ok(body)) = (row.get::<_, String>(0), row.get::<_, String>(1)) else {
                continue;
            };
            let Some(fields) = filled(&body) else {
                continue;
            };
            let known = match merge::body(&store.conn, *noun, &id)? {
                Some(known) => filled(&known),
                None => None,
            };
            if known.as_ref() != Some(&fields) {
                *rescued.rows.entry(*noun).or_default() += 1;
                changes.push(Change {
                    noun: *noun,
                    row: id,
                    act: Act::Record,
                    fields,
                });
            }
        }
    }
    Ok(changes)
}

/// The fields that hold something; `None` for a text that cannot be read.
fn filled(body: &str) -> Option<Fields> {
    let mut fields: Fields = serde_json::from_str(body).ok()?;
    fields.retain(|_, value| !value.is_null());
    Some(fields)
}
