//! Herbs of the maker's own.

use journal::{Herb, HerbId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Herb {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO herb (id, body, common) VALUES (?1, ?2, ?3)")?
            .execute(params![id, body, self.common])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// The maker's own herbs, by name.
    ///
    /// # Errors
    /// A failure to read.
    pub fn herbs(&self) -> Result<Vec<(HerbId, Herb)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM herb ORDER BY common COLLATE NOCASE, id",
            [],
        )
    }
}
