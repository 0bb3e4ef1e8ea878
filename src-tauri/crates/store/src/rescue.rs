//! What can still be read of a damaged journal.

use std::collections::BTreeMap;
use std::path::Path;

use chrono::{DateTime, FixedOffset};
use journal::{Act, Change, Deed, DeedId, DeviceId, Fields, HybridTime, Noun};
use rusqlite::Connection;

use crate::whole::only_to_read;
use crate::{Failure, Store, log, merge};

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

/// Reads what can be read of the journal at `damaged`, which is only read, into a new journal at
/// `fresh`. Rows whose deeds are lost are recorded as they stood by one deed that says so.
///
/// # Errors
/// A failure to write the new journal. What cannot be read is no error; [`Rescued`] counts it.
pub fn rescue(
    damaged: &Path,
    fresh: &Path,
    new_device: DeviceId,
    deed: DeedId,
    now: DateTime<FixedOffset>,
) -> Result<Rescued, Failure> {
    let Ok(conn) = only_to_read(damaged) else {
        Store::open(fresh, new_device)?;
        return Ok(Rescued::default());
    };
    let device = conn
        .query_row("SELECT value FROM about WHERE key = 'device'", [], |row| {
            row.get::<_, String>(0)
        })
        .ok()
        .and_then(|text| text.parse().ok());
    let mut store = Store::open(fresh, device.unwrap_or(new_device))?;
    let mut rescued = Rescued::default();
    let numbers = readable(&conn, &mut rescued);
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
        let text = format!(
            "Saved {} entries of a damaged journal as they stood",
            changes.len()
        );
        let rescue = Deed {
            id: deed,
            at: HybridTime::after(store.latest()?, now),
            device: store.device,
            text,
            revokes: None,
            changes,
        };
        store.absorb([rescue])?;
    }
    Ok(rescued)
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
        let sql = format!("SELECT id, body FROM \"{}\" NOT INDEXED", noun.as_str());
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
