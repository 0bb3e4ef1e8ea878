//! Weigh-ins.

use journal::{Amount, TrayId, Weighing, WeighingId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Weighing {
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
