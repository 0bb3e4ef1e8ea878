//! What is known about photos.

use journal::{HarvestId, Photo, PhotoHash};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Photo {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO photo (id, body) VALUES (?1, ?2)")?
            .execute(params![id, body])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// All photos, by hash.
    ///
    /// # Errors
    /// A failure to read.
    pub fn photos(&self) -> Result<Vec<(PhotoHash, Photo)>, Failure> {
        all(self.conn, "SELECT id, body FROM photo ORDER BY id", [])
    }

    /// The harvests that show a photo.
    ///
    /// # Errors
    /// A failure to read.
    pub fn photo_uses(&self, hash: &PhotoHash) -> Result<Vec<HarvestId>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT DISTINCT harvest FROM harvest_photo WHERE hash = ?1 ORDER BY harvest",
        )?;
        let mut rows = statement.query([hash.as_str()])?;
        let mut uses = Vec::new();
        while let Some(row) = rows.next()? {
            uses.push(row.get::<_, String>(0)?.parse()?);
        }
        Ok(uses)
    }
}
