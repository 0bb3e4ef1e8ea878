//! Whether a file is sound: asked of a journal before another is let go for it.

use std::path::Path;

use rusqlite::Connection;

use crate::whole::only_to_read;
use crate::{Failure, Store};

/// Whether the file at `path` is a database without any table: nobody has begun a journal in it, or
/// it has lost all that it held.
///
/// A file that cannot be read as a database is not blank; [`Store::open`] says what it is.
pub fn is_blank(path: &Path) -> bool {
    let tables = only_to_read(path).and_then(|conn| {
        let count = conn.query_row("SELECT count(*) FROM sqlite_schema", [], |row| {
            row.get::<_, i64>(0)
        });
        Ok(count?)
    });
    tables == Ok(0)
}

/// What SQLite finds wrong with the file at `path`, which is only read, when it reads all of it.
///
/// # Errors
/// A failure to read; a damaged file is no failure.
pub fn unsound(path: &Path) -> Result<Vec<String>, Failure> {
    match only_to_read(path).and_then(|conn| found(&conn)) {
        Err(Failure::Damaged(why)) => Ok(vec![why]),
        Err(Failure::NotAJournal) => Ok(vec![Failure::NotAJournal.to_string()]),
        other => other,
    }
}

fn found(conn: &Connection) -> Result<Vec<String>, Failure> {
    let mut check = conn.prepare("PRAGMA integrity_check")?;
    let lines = check.query_map([], |row| row.get::<_, String>(0))?;
    let mut found: Vec<String> = lines.collect::<Result<_, _>>()?;
    found.retain(|line| line != "ok");
    Ok(found)
}

impl Store {
    /// What SQLite finds wrong with the file when it reads all of it, in its own words; nothing
    /// when the file is sound.
    ///
    /// # Errors
    /// A failure to read.
    pub fn unsound(&self) -> Result<Vec<String>, Failure> {
        found(&self.conn)
    }
}
