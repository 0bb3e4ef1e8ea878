//! How bottles were found.

use journal::{BottleId, Check, CheckId, Noun};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Check {
    const SQL: &'static str = include_str!("look.sql");
    const RESTS_ON: RestsOn = &[(Noun::Bottle, "SELECT id FROM \"check\" WHERE bottle = ?1")];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-check");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-check", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let of = name_of(conn, Noun::Bottle, &self.bottle.to_string())?;
        Ok(say!("row-check", of))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO \"check\" (id, body, bottle, at_ms, reads_ph) VALUES (?1, ?2, ?3, ?4, ?5)",
        )?
        .execute(params![
            id,
            body,
            self.bottle.to_string(),
            self.at.timestamp_millis(),
            self.ph.is_some(),
        ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// How a bottle was found, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn checks(&self, bottle: &BottleId) -> Result<Vec<(CheckId, Check)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM \"check\" WHERE bottle = ?1 ORDER BY at_ms, id",
            [bottle.to_string()],
        )
    }
}
