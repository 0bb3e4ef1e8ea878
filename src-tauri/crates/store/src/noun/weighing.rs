//! Weigh-ins.

use journal::{Amount, Noun, TrayId, Weighing, WeighingId};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Weighing {
    const SQL: &'static str = include_str!("weighing.sql");
    const RESTS_ON: RestsOn = &[(Noun::Tray, "SELECT id FROM weighing WHERE tray = ?1")];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-weighing");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-weighing", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let of = name_of(conn, Noun::Tray, &self.tray.to_string())?;
        Ok(say!("row-weight", mass = Argument::grams(self.gross_g), of))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO weighing (id, body, tray, at_ms, gross) VALUES (?1, ?2, ?3, ?4, ?5)",
        )?
        .execute(params![
            id,
            body,
            self.tray.to_string(),
            self.at.timestamp_millis(),
            Amount::of(self.gross_g).thousandths(),
        ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// The weigh-ins of a tray, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn weighings(&self, tray: &TrayId) -> Result<Vec<(WeighingId, Weighing)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM weighing WHERE tray = ?1 ORDER BY at_ms, id",
            [tray.to_string()],
        )
    }
}
