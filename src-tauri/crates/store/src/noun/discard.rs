//! What was thrown away.

use journal::{Discard, DiscardId, Source};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Discard {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO discard (id, body) VALUES (?1, ?2)")?
            .execute(params![id, body])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// What was thrown away of a lot or supply, in order of recording.
    ///
    /// # Errors
    /// A failure to read.
    pub fn discards(&self, from: Source) -> Result<Vec<(DiscardId, Discard)>, Failure> {
        let (noun, id) = from.row();
        all(
            self.conn,
            "SELECT discard.id, discard.body
             FROM draw JOIN discard ON discard.id = draw.owner
             WHERE draw.owner_noun = 'discard' AND draw.source_noun = ?1 AND draw.source = ?2
             ORDER BY discard.id",
            [noun.as_str(), &id],
        )
    }
}
