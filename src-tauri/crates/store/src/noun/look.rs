//! How bottles were found.

use journal::{BottleId, Check, CheckId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Check {
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
