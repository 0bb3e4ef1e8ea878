//! Beds.

use journal::{Bed, BedId};
use rusqlite::{Connection, params};

use super::{Table, all};
use crate::{Failure, Reading};

impl Table for Bed {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO bed (id, body, name) VALUES (?1, ?2, ?3)")?
            .execute(params![id, body, self.name])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// All beds, by name.
    ///
    /// # Errors
    /// A failure to read.
    pub fn beds(&self) -> Result<Vec<(BedId, Bed)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM bed ORDER BY name COLLATE NOCASE, id",
            [],
        )
    }

    /// The bed of this name, read without regard to case and outer spaces.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bed_named(&self, name: &str) -> Result<Option<(BedId, Bed)>, Failure> {
        let wanted = name.trim().to_lowercase();
        Ok(self
            .beds()?
            .into_iter()
            .find(|(_, bed)| bed.name.trim().to_lowercase() == wanted))
    }
}
