//! Deeds and changes in the file.

use chrono::{DateTime, FixedOffset};
use journal::{Act, Change, Deed, DeedId, DeviceId, Fields, HybridTime, Line, Noun, Row, RowRef};
use rusqlite::{CachedStatement, Connection, OptionalExtension, params};

use crate::seal::{Sealing, Written};
use crate::{Failure, Reading, Store};

/// A deed as the list of deeds shows it.
#[derive(Debug, Clone, PartialEq)]
pub struct DeedRow {
    /// Its id.
    pub deed: DeedId,
    /// When it was written.
    pub at: HybridTime,
    /// Where it was written.
    pub device: DeviceId,
    /// What was done.
    pub line: Line,
    /// The deed that it took back.
    pub revokes: Option<DeedId>,
    /// Whether it was itself taken back.
    pub undone: bool,
}

impl Reading<'_> {
    /// The latest deeds by their arrival in this file, latest first: a phone whose clock is ahead
    /// must not hold the head of the list for years.
    ///
    /// # Errors
    /// A failure to read.
    pub fn deeds(&self, limit: usize) -> Result<Vec<DeedRow>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT id, milliseconds, counter, device, text, revokes,
                    EXISTS (SELECT 1 FROM revoked WHERE revoked.deed = deed.number), message
             FROM deed ORDER BY number DESC LIMIT ?1",
        )?;
        let mut rows = statement.query([limit as i64])?;
        let mut deeds = Vec::new();
        while let Some(row) = rows.next()? {
            deeds.push(DeedRow {
                deed: row.get::<_, String>(0)?.parse()?,
                at: HybridTime {
                    milliseconds: row.get(1)?,
                    counter: row.get(2)?,
                },
                device: row.get::<_, String>(3)?.parse()?,
                line: Line {
                    text: row.get(4)?,
                    message: row.get(7)?,
                },
                revokes: row
                    .get::<_, Option<String>>(5)?
                    .map(|id| id.parse())
                    .transpose()?,
                undone: row.get(6)?,
            });
        }
        Ok(deeds)
    }
}

impl Store {
    /// Hands every deed to `each`, in the order that counts.
    ///
    /// # Errors
    /// What `each` fails with, or a failure to read.
    pub fn each_deed(
        &self,
        mut each: impl FnMut(Deed) -> Result<(), Failure>,
    ) -> Result<(), Failure> {
        let mut deeds = self
            .conn
            .prepare("SELECT number FROM deed ORDER BY milliseconds, counter, device, id")?;
        let mut rows = deeds.query([])?;
        while let Some(row) = rows.next()? {
            each(deed(&self.conn, row.get(0)?)?)?;
        }
        Ok(())
    }
}

/// The columns of a deed by its number: id, milliseconds, counter, device, text, revokes and message, which a file of an
/// earlier format has not.
pub(crate) fn columns(conn: &Connection) -> Result<CachedStatement<'_>, Failure> {
    const SINCE_MESSAGES: &str = "SELECT id, milliseconds, counter, device, text, revokes, message
         FROM deed WHERE number = ?1";
    const BEFORE: &str = "SELECT id, milliseconds, counter, device, text, revokes, NULL
         FROM deed WHERE number = ?1";
    let found = conn.prepare_cached(SINCE_MESSAGES);
    Ok(found.or_else(|_| conn.prepare_cached(BEFORE))?)
}

/// The deed of this number.
pub(crate) fn deed(conn: &Connection, number: i64) -> Result<Deed, Failure> {
    let mut statement = columns(conn)?;
    let mut rows = statement.query([number])?;
    let row = rows.next()?.ok_or(Failure::NoSuchDeed)?;
    Ok(Deed {
        id: row.get::<_, String>(0)?.parse()?,
        at: HybridTime {
            milliseconds: row.get(1)?,
            counter: row.get(2)?,
        },
        device: row.get::<_, String>(3)?.parse()?,
        text: row.get(4)?,
        revokes: row
            .get::<_, Option<String>>(5)?
            .map(|id| id.parse())
            .transpose()?,
        message: row.get(6)?,
        changes: changes(conn, number)?,
    })
}

/// How far ahead of its own clock a device follows that of another: no wrong time zone and no
/// wrong day make more than two days.
const MOST_LEAD_MS: i64 = 2 * 24 * 60 * 60 * 1000;

/// The first moment that no clock of a household should show yet.
pub(crate) fn too_late(now: DateTime<FixedOffset>) -> i64 {
    now.timestamp_millis().saturating_add(MOST_LEAD_MS)
}

/// The time of a deed that writes `changes` or takes `revokes` back.
///
/// It comes after everything written up to two days from now, so that a clock that is a little off
/// keeps the order. A deed that claims a later day was written by a clock that was wrong; it is
/// followed only where this deed builds on it, or else one such phone would lift every later
/// entry of the household above what the other phones write meanwhile.
pub(crate) fn next_time(
    conn: &Connection,
    now: DateTime<FixedOffset>,
    changes: &[Change],
    revokes: Option<DeedId>,
) -> Result<HybridTime, Failure> {
    let time = |row: &rusqlite::Row<'_>| {
        Ok(HybridTime {
            milliseconds: row.get(0)?,
            counter: row.get(1)?,
        })
    };
    let mut last: Option<HybridTime> = conn
        .prepare_cached(
            "SELECT milliseconds, counter FROM deed WHERE milliseconds < ?1
             ORDER BY milliseconds DESC, counter DESC LIMIT 1",
        )?
        .query_row([too_late(now)], time)
        .optional()?;
    let mut of_row = conn.prepare_cached(
        "SELECT milliseconds, counter FROM change JOIN deed ON deed.number = change.deed
         WHERE change.noun = ?1 AND change.row = ?2
         ORDER BY milliseconds DESC, counter DESC LIMIT 1",
    )?;
    for change in changes {
        let found = of_row.query_row([change.noun.as_str(), change.row.as_str()], time);
        last = last.max(found.optional()?);
    }
    if let Some(target) = revokes {
        let found = conn
            .prepare_cached("SELECT milliseconds, counter FROM deed WHERE id = ?1")?
            .query_row([target.to_string()], time);
        last = last.max(found.optional()?);
    }
    Ok(HybridTime::after(last, now))
}

pub(crate) fn latest(conn: &Connection) -> Result<Option<HybridTime>, Failure> {
    Ok(conn
        .prepare_cached(
            "SELECT milliseconds, counter FROM deed
             ORDER BY milliseconds DESC, counter DESC LIMIT 1",
        )?
        .query_row([], |row| {
            Ok(HybridTime {
                milliseconds: row.get(0)?,
                counter: row.get(1)?,
            })
        })
        .optional()?)
}

/// More than the longest table that is imported brings; a deed is held in memory as a whole.
const MOST_CHANGES: usize = 50_000;

fn changes(conn: &Connection, number: i64) -> Result<Vec<Change>, Failure> {
    let mut statement = conn.prepare_cached(
        "SELECT noun, row, act, fields FROM change WHERE deed = ?1 ORDER BY position",
    )?;
    let mut rows = statement.query([number])?;
    let mut changes = Vec::new();
    while let Some(row) = rows.next()? {
        if changes.len() == MOST_CHANGES {
            let why = "one entry of the log changes more than this app ever does at once";
            return Err(Failure::Damaged(why.into()));
        }
        changes.push(Change {
            noun: noun(&row.get::<_, String>(0)?)?,
            row: row.get(1)?,
            act: act(&row.get::<_, String>(2)?)?,
            fields: fields(&row.get::<_, String>(3)?)?,
        });
    }
    Ok(changes)
}

/// Appends a deed with its checksum; the caller makes the tables follow, and counts it by
/// [`seal::count`] or [`seal::recount`].
pub(crate) fn append(conn: &Connection, deed: &Deed) -> Result<i64, Failure> {
    let (id, device) = (deed.id.to_string(), deed.device.to_string());
    let revokes = deed.revokes.map(|id| id.to_string());
    let mut sealing = Sealing::of(&Written {
        id: &id,
        milliseconds: deed.at.milliseconds,
        counter: deed.at.counter,
        device: &device,
        text: &deed.text,
        message: deed.message.as_deref(),
        revokes: revokes.as_deref(),
    });
    let mut all_fields = Vec::with_capacity(deed.changes.len());
    for change in &deed.changes {
        let fields = serde_json::to_string(&change.fields)?;
        sealing.change(
            change.noun.as_str(),
            &change.row,
            change.act.as_str(),
            &fields,
        );
        all_fields.push(fields);
    }
    conn.prepare_cached(
        "INSERT INTO deed (id, milliseconds, counter, device, text, revokes, sum, message)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
    )?
    .execute(params![
        id,
        deed.at.milliseconds,
        deed.at.counter,
        device,
        deed.text,
        revokes,
        sealing.finish(),
        deed.message,
    ])?;
    let number = conn.last_insert_rowid();
    let mut insert = conn.prepare_cached(
        "INSERT INTO change (deed, position, noun, row, act, fields)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?;
    let changes = deed.changes.iter().zip(&all_fields);
    for (position, (change, fields)) in changes.enumerate() {
        insert.execute(params![
            number,
            position as i64,
            change.noun.as_str(),
            change.row,
            change.act.as_str(),
            fields,
        ])?;
    }
    Ok(number)
}

pub(crate) fn number_of(conn: &Connection, deed: &str) -> Result<Option<i64>, Failure> {
    Ok(conn
        .prepare_cached("SELECT number FROM deed WHERE id = ?1")?
        .query_row([deed], |row| row.get(0))
        .optional()?)
}

/// The rows that a deed changed.
pub(crate) fn rows_of(conn: &Connection, number: i64) -> Result<Vec<RowRef>, Failure> {
    let mut statement =
        conn.prepare_cached("SELECT DISTINCT noun, row FROM change WHERE deed = ?1")?;
    let mut rows = statement.query([number])?;
    let mut changed = Vec::new();
    while let Some(row) = rows.next()? {
        changed.push((noun(&row.get::<_, String>(0)?)?, row.get(1)?));
    }
    Ok(changed)
}

/// The state of one row by the deeds in the file that count.
pub(crate) fn folded(conn: &Connection, noun: Noun, id: &str) -> Result<Row, Failure> {
    let mut statement = conn.prepare_cached(
        "SELECT change.act, change.fields
         FROM change JOIN deed ON deed.number = change.deed
         WHERE change.noun = ?1 AND change.row = ?2
           AND change.deed NOT IN (SELECT deed FROM revoked)
         ORDER BY milliseconds, counter, device, id, position",
    )?;
    let mut rows = statement.query([noun.as_str(), id])?;
    let mut folded = Row::default();
    while let Some(row) = rows.next()? {
        folded.apply(
            act(&row.get::<_, String>(0)?)?,
            &fields(&row.get::<_, String>(1)?)?,
        );
    }
    Ok(folded)
}

/// The text in a column.
pub(crate) fn text<'r>(row: &'r rusqlite::Row<'_>, place: usize) -> Result<&'r str, Failure> {
    let value = row.get_ref(place)?;
    value
        .as_str()
        .map_err(|why| Failure::Damaged(why.to_string()))
}

pub(crate) fn noun(word: &str) -> Result<Noun, Failure> {
    Noun::parse(word).ok_or_else(|| Failure::Damaged(format!("“{word}” is no noun")))
}

pub(crate) fn act(word: &str) -> Result<Act, Failure> {
    Act::parse(word).ok_or_else(|| Failure::Damaged(format!("“{word}” is no act")))
}

pub(crate) fn fields(text: &str) -> Result<Fields, Failure> {
    Ok(serde_json::from_str(text)?)
}

#[cfg(test)]
mod tests {
    use journal::BedId;
    use uuid::Uuid;

    use super::*;
    use crate::sample::{bed, now, store};

    #[test]
    fn what_was_logged_can_be_neither_changed_nor_erased() {
        let mut store = store();
        store
            .perform(DeedId(Uuid::from_u128(2)), now(), |w| {
                w.record(&BedId(Uuid::from_u128(3)), &bed("Terrace"))?;
                Ok::<_, Failure>(("Added a bed".into(), ()))
            })
            .unwrap();
        for sql in [
            "UPDATE deed SET text = 'Added a field'",
            "DELETE FROM deed",
            "UPDATE change SET fields = '{}'",
            "DELETE FROM change",
        ] {
            assert!(store.conn.execute(sql, []).is_err(), "{sql}");
        }
    }
}
