//! What is known about photos.

use journal::{HarvestId, Photo, PhotoHash};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::{Failure, Reading};

impl Table for Photo {
    const SQL: &'static str = include_str!("photo.sql");
    const TELLS_BYTES: bool = true;
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-photo");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-photo", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-other"))
    }

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
