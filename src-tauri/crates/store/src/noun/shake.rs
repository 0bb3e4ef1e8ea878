//! Shakes of jars.

use journal::{JarId, Shake, ShakeId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Shake {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO shake (id, body, jar, at_ms) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![
                id,
                body,
                self.jar.to_string(),
                self.at.timestamp_millis()
            ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// The shakes of a jar, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn shakes(&self, jar: &JarId) -> Result<Vec<(ShakeId, Shake)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM shake WHERE jar = ?1 ORDER BY at_ms, id",
            [jar.to_string()],
        )
    }
}
