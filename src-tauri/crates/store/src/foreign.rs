//! A journal file from outside, read as data: nothing in it is ever run, and only its log is read,
//! row by row, into values of this app.

use std::collections::BTreeSet;
use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use journal::{Deed, DeviceId, HybridTime};
use rusqlite::config::DbConfig;
use rusqlite::limits::Limit;
use rusqlite::{Connection, OpenFlags};

use crate::migrate::{self, SchemaRow};
use crate::{Failure, log, seal};

/// The longest row that is read, in bytes: as in a journal of our own.
const LONGEST: i32 = 1024 * 1024;
/// The least room that a deed takes in a file, in bytes: it holds two ids of 36 letters.
const LEAST_DEED: u64 = 72;
/// More objects than any released format has.
const MOST_OBJECTS: i64 = 500;
/// Steps of SQLite's machine between two looks at whether to stop.
const STEPS: i32 = 10_000;

/// What every released version has in a file beside the log, all of it made from the log: `type name`
/// a line. None of it is ever read.
const RELEASED: &str = include_str!("released.txt");

/// Where a deed stands in the one order, and its number in its file.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Standing {
    pub at: HybridTime,
    pub device: DeviceId,
    pub id: journal::DeedId,
    pub number: i64,
}

/// The log of a journal file that came from outside.
pub struct Foreign {
    conn: Mutex<Connection>,
    format: usize,
    order: Vec<Standing>,
}

impl Foreign {
    /// Opens a journal file that nothing is known of, only to read. `stop` is asked now and then
    /// whether to give up.
    ///
    /// # Errors
    /// [`Failure::NotAJournal`] when it is something else or holds anything that no released version
    /// wrote; [`Failure::NewerFile`]; [`Failure::Damaged`] naming what cannot be read;
    /// [`Failure::Stopped`].
    pub fn open(path: &Path, stop: impl FnMut() -> bool + Send + 'static) -> Result<Self, Failure> {
        let mut conn = Connection::open_with_flags(
            path,
            OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
        )?;
        guard(&conn)?;
        conn.progress_handler(STEPS, Some(stop))?;
        let format = recognised(&conn)?;
        let size = std::fs::metadata(path).map_err(|why| Failure::Storage(why.to_string()))?;
        // One reading for all of it: beginning one for each deed took longer than the reading.
        conn.execute_batch("BEGIN")?;
        let order = in_order(&conn, size.len())?;
        is_complete(&conn, format, &order)?;
        Ok(Self {
            conn: Mutex::new(conn),
            format,
            order,
        })
    }

    /// How many deeds it holds.
    pub fn len(&self) -> usize {
        self.order.len()
    }

    /// Whether it holds no deed.
    pub fn is_empty(&self) -> bool {
        self.order.is_empty()
    }

    /// Where its deeds stand, in the order that counts.
    pub(crate) fn order(&self) -> &[Standing] {
        &self.order
    }

    /// A deed by its number, as the journal's own value.
    ///
    /// # Errors
    /// [`Failure::Damaged`] when it cannot be read or is not what was written;
    /// [`Failure::Unfit`] when no version could have written it.
    pub(crate) fn deed(&self, number: i64) -> Result<Deed, Failure> {
        let conn = self.conn();
        if self.format >= migrate::SUMS && !seal::holds(&conn, number)? {
            let text = conn.query_row(
                "SELECT substr(text, 1, 200) FROM deed WHERE number = ?1",
                [number],
                |row| row.get::<_, String>(0),
            );
            return Err(Failure::Damaged(format!(
                "the entry “{}” is not as it was written",
                text.unwrap_or_default()
            )));
        }
        let deed = log::deed(&conn, number)?;
        deed.check().map_err(|why| Failure::unfit(&deed, why))?;
        Ok(deed)
    }

    /// Refuses a log of which some deed by itself makes no sense.
    ///
    /// # Errors
    /// As [`Store::absorb_from`](crate::Store::absorb_from).
    pub fn is_sensible(&self) -> Result<(), Failure> {
        self.deeds().try_for_each(|deed| deed.map(|_| ()))
    }

    /// Every deed, in the order that counts.
    pub(crate) fn deeds(&self) -> impl Iterator<Item = Result<Deed, Failure>> + '_ {
        self.order.iter().map(|standing| self.deed(standing.number))
    }

    /// The photos that its log speaks of.
    ///
    /// # Errors
    /// A failure to read.
    pub fn photos_named(&self) -> Result<BTreeSet<String>, Failure> {
        let conn = self.conn();
        let mut statement =
            conn.prepare("SELECT row FROM change NOT INDEXED WHERE noun = 'photo'")?;
        let mut rows = statement.query([])?;
        let mut named = BTreeSet::new();
        while let Some(row) = rows.next()? {
            named.insert(log::text(row, 0)?.to_owned());
        }
        Ok(named)
    }

    /// One thread at a time reads.
    fn conn(&self) -> MutexGuard<'_, Connection> {
        self.conn.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// By the table itself: an index may leave deeds out.
fn in_order(conn: &Connection, bytes: u64) -> Result<Vec<Standing>, Failure> {
    let room = usize::try_from(bytes / LEAST_DEED).unwrap_or(usize::MAX);
    let mut statement = conn.prepare(
        "SELECT number, milliseconds, counter, device, id FROM deed NOT INDEXED ORDER BY number",
    )?;
    let mut rows = statement.query([])?;
    let mut order = Vec::new();
    while let Some(row) = rows.next()? {
        if order.len() == room {
            let why = "it claims more entries than it has room for";
            return Err(Failure::Damaged(why.into()));
        }
        order.push(Standing {
            at: HybridTime {
                milliseconds: row.get(1)?,
                counter: row.get(2)?,
            },
            device: log::text(row, 3)?.parse()?,
            id: log::text(row, 4)?.parse()?,
            number: row.get(0)?,
        });
    }
    order.sort_unstable();
    let mut ids: Vec<_> = order.iter().map(|standing| standing.id).collect();
    ids.sort_unstable();
    if ids.windows(2).any(|pair| pair[0] == pair[1]) {
        return Err(Failure::Damaged("it holds one entry twice".into()));
    }
    Ok(order)
}

/// Deeds are numbered without a gap, changes belong to a deed, and from the format on that counts
/// them no device's deeds are fewer than its count.
fn is_complete(conn: &Connection, format: usize, order: &[Standing]) -> Result<(), Failure> {
    let last = order.iter().map(|standing| standing.number).max();
    let gone = last
        .unwrap_or(0)
        .abs_diff(0)
        .saturating_sub(order.len() as u64);
    let counted = if format >= migrate::SUMS {
        seal::missing(conn)?
    } else {
        0
    };
    let gone = gone.max(counted);
    if gone > 0 {
        return Err(Failure::Damaged(format!(
            "{gone} of its entries are missing"
        )));
    }
    let loose: i64 = conn.query_row(
        "SELECT count(*) FROM change NOT INDEXED
         WHERE deed NOT IN (SELECT number FROM deed NOT INDEXED)",
        [],
        |row| row.get(0),
    )?;
    if loose > 0 {
        let why = format!("{loose} changes belong to entries that are missing");
        return Err(Failure::Damaged(why));
    }
    Ok(())
}

/// Lets a connection do nothing but read tables within bounds.
fn guard(conn: &Connection) -> Result<(), Failure> {
    for (setting, is_on) in [
        (DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true),
        (DbConfig::SQLITE_DBCONFIG_TRUSTED_SCHEMA, false),
        (DbConfig::SQLITE_DBCONFIG_WRITABLE_SCHEMA, false),
        (DbConfig::SQLITE_DBCONFIG_ENABLE_TRIGGER, false),
        (DbConfig::SQLITE_DBCONFIG_ENABLE_VIEW, false),
        (DbConfig::SQLITE_DBCONFIG_DQS_DDL, false),
        (DbConfig::SQLITE_DBCONFIG_DQS_DML, false),
        // Without it a kept statement is planned anew for every deed.
        (DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true),
    ] {
        conn.set_db_config(setting, is_on)?;
    }
    for (limit, most) in [
        (Limit::SQLITE_LIMIT_LENGTH, LONGEST),
        (Limit::SQLITE_LIMIT_SQL_LENGTH, 100_000),
        (Limit::SQLITE_LIMIT_COLUMN, 100),
        (Limit::SQLITE_LIMIT_EXPR_DEPTH, 50),
        (Limit::SQLITE_LIMIT_COMPOUND_SELECT, 5),
        (Limit::SQLITE_LIMIT_ATTACHED, 0),
        (Limit::SQLITE_LIMIT_TRIGGER_DEPTH, 1),
        (Limit::SQLITE_LIMIT_WORKER_THREADS, 0),
    ] {
        conn.set_limit(limit, most)?;
    }
    // 16 MB, whatever the file suggests; damage in a page is met where the page is read.
    for (pragma, value) in [
        ("query_only", 1),
        ("cell_size_check", 1),
        ("mmap_size", 0),
        ("cache_size", -16_384),
    ] {
        conn.pragma_update(None, pragma, value)?;
    }
    Ok(())
}

/// The format of a file that holds the log of a released format and, beside it, only what released
/// versions make from the log.
fn recognised(conn: &Connection) -> Result<usize, Failure> {
    if migrate::number(conn, "application_id")? != migrate::APPLICATION_ID {
        return Err(Failure::NotAJournal);
    }
    let format = usize::try_from(migrate::number(conn, "user_version")?).unwrap_or(0);
    if format == 0 {
        return Err(Failure::NotAJournal);
    }
    if format > migrate::LATEST {
        return Err(Failure::NewerFile);
    }
    let objects: i64 =
        conn.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    if objects > MOST_OBJECTS {
        return Err(Failure::NotAJournal);
    }
    let found: BTreeSet<SchemaRow> = migrate::schema(conn)?.into_iter().collect();
    let log: BTreeSet<SchemaRow> = migrate::log_schema(format)?.into_iter().collect();
    let strange = found.difference(&log).find(|row| !is_made(row));
    if strange.is_some() || !log.is_subset(&found) {
        return Err(Failure::NotAJournal);
    }
    Ok(format)
}

/// Whether a released version makes an object of this name from the log.
fn is_made((kind, name, table, _): &SchemaRow) -> bool {
    let released = |line: &str| RELEASED.lines().any(|known| known == line);
    let of_a_table = released(&format!("table {table}"));
    let is_automatic = kind == "index" && name.starts_with("sqlite_autoindex_");
    of_a_table && (is_automatic || released(&format!("{kind} {name}")))
}

#[cfg(test)]
mod tests;
