//! The checksum that every deed carries, and the count of every device's deeds: so a digit that
//! changed in the log is found, and so is a deed that is gone.

use std::collections::BTreeMap;

use rusqlite::types::ValueRef;
use rusqlite::{Connection, OptionalExtension};

use crate::{Failure, log};

/// Length of a checksum in bytes. It finds chance damage, not a forger; half a hash is plenty.
pub(crate) const BYTES: usize = 16;

/// A deed as its columns hold it, digit by digit.
pub(crate) struct Written<'a> {
    pub id: &'a str,
    pub milliseconds: i64,
    pub counter: u32,
    pub device: &'a str,
    pub text: &'a str,
    pub message: Option<&'a str>,
    pub revokes: Option<&'a str>,
}

/// Takes a deed in, part by part, and gives its checksum: the first 16 bytes of the BLAKE3 of all
/// parts in order, each led by its length in 8 bytes, little-endian.
pub(crate) struct Sealing(blake3::Hasher);

impl Sealing {
    pub(crate) fn of(deed: &Written<'_>) -> Self {
        let mut sealing = Self(blake3::Hasher::new());
        sealing.part(deed.id.as_bytes());
        sealing.part(&deed.milliseconds.to_le_bytes());
        sealing.part(&deed.counter.to_le_bytes());
        sealing.part(deed.device.as_bytes());
        sealing.part(deed.text.as_bytes());
        sealing.part(deed.revokes.unwrap_or_default().as_bytes());
        // The sums of older deeds know of none.
        if let Some(message) = deed.message {
            sealing.part(message.as_bytes());
        }
        sealing
    }

    /// The next change, in order; `fields` is the text of its column.
    pub(crate) fn change(&mut self, noun: &str, row: &str, act: &str, fields: &str) {
        for part in [noun, row, act, fields] {
            self.part(part.as_bytes());
        }
    }

    pub(crate) fn finish(self) -> [u8; BYTES] {
        let mut sum = [0; BYTES];
        sum.copy_from_slice(&self.0.finalize().as_bytes()[..BYTES]);
        sum
    }

    fn part(&mut self, bytes: &[u8]) {
        self.0.update(&(bytes.len() as u64).to_le_bytes());
        self.0.update(bytes);
    }
}

/// The checksum of a deed as the file holds it now.
pub(crate) fn sum_of(conn: &Connection, number: i64) -> Result<[u8; BYTES], Failure> {
    let mut statement = log::columns(conn)?;
    let mut rows = statement.query([number])?;
    let row = rows.next()?.ok_or(Failure::NoSuchDeed)?;
    let text = |place: usize| log::text(row, place);
    let text_or_none = |place: usize| match row.get_ref(place)? {
        ValueRef::Null => Ok(None),
        _ => text(place).map(Some),
    };
    let mut sealing = Sealing::of(&Written {
        id: text(0)?,
        milliseconds: row.get(1)?,
        counter: row.get(2)?,
        device: text(3)?,
        text: text(4)?,
        revokes: text_or_none(5)?,
        message: text_or_none(6)?,
    });
    let mut statement = conn.prepare_cached(
        "SELECT noun, row, act, fields FROM change WHERE deed = ?1 ORDER BY position",
    )?;
    let mut rows = statement.query([number])?;
    while let Some(row) = rows.next()? {
        sealing.change(
            log::text(row, 0)?,
            log::text(row, 1)?,
            log::text(row, 2)?,
            log::text(row, 3)?,
        );
    }
    Ok(sealing.finish())
}

/// Whether a deed reads as it was written.
pub(crate) fn holds(conn: &Connection, number: i64) -> Result<bool, Failure> {
    let kept: Option<Vec<u8>> = conn
        .prepare_cached("SELECT sum FROM deed WHERE number = ?1")?
        .query_row([number], |row| row.get(0))
        .optional()?
        .flatten();
    Ok(kept.as_deref() == Some(&sum_of(conn, number)?[..]))
}

/// Gives every deed that has none its checksum and counts the deeds of each device, when the file
/// comes from a format that had neither.
pub(crate) fn seal_all(conn: &Connection) -> Result<(), Failure> {
    let mut numbers = conn.prepare("SELECT number FROM deed WHERE sum IS NULL")?;
    let numbers: Vec<i64> = numbers
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    for number in numbers {
        conn.prepare_cached("UPDATE deed SET sum = ?2 WHERE number = ?1")?
            .execute(rusqlite::params![number, sum_of(conn, number)?])?;
    }
    recount(conn)
}

/// Lets each device's count say at least what is here. Where it already said more, deeds are
/// missing, and it goes on saying so until they have come back.
pub(crate) fn recount(conn: &Connection) -> Result<(), Failure> {
    let mut told = conn.prepare(
        "INSERT INTO writer (device, deeds) VALUES (?1, ?2)
         ON CONFLICT (device) DO UPDATE SET deeds = max(deeds, excluded.deeds)",
    )?;
    for (device, deeds) in by_device(conn)? {
        told.execute((device, deeds))?;
    }
    Ok(())
}

/// How many deeds there are of each device. SQLite would sort all of them for it.
fn by_device(conn: &Connection) -> Result<BTreeMap<String, i64>, Failure> {
    let mut deeds = conn.prepare("SELECT device FROM deed NOT INDEXED")?;
    let mut rows = deeds.query([])?;
    let mut counted = BTreeMap::new();
    while let Some(row) = rows.next()? {
        let device = log::text(row, 0)?;
        match counted.get_mut(device) {
            Some(count) => *count += 1,
            None => {
                counted.insert(device.to_owned(), 1);
            }
        }
    }
    Ok(counted)
}

/// One more deed of a device.
pub(crate) fn count(conn: &Connection, device: &str) -> Result<(), Failure> {
    conn.prepare_cached(
        "INSERT INTO writer (device, deeds) VALUES (?1, 1)
         ON CONFLICT (device) DO UPDATE SET deeds = deeds + 1",
    )?
    .execute([device])?;
    Ok(())
}

/// How many deeds are gone that were once written: by device, those that its count says more.
pub(crate) fn missing(conn: &Connection) -> Result<u64, Failure> {
    let here = by_device(conn)?;
    let mut claimed = conn.prepare("SELECT device, deeds FROM writer")?;
    let mut rows = claimed.query([])?;
    let mut gone: u64 = 0;
    while let Some(row) = rows.next()? {
        let here = here.get(log::text(row, 0)?).copied().unwrap_or(0);
        let claimed: i64 = row.get(1)?;
        gone = gone.saturating_add(claimed.saturating_sub(here).max(0).unsigned_abs());
    }
    Ok(gone)
}
