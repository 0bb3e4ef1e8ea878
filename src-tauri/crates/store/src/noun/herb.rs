//! Herbs of the maker's own.

use journal::{Herb, HerbId};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, Words, WordsOf, all};
use crate::name::named;
use crate::{Failure, Reading};

impl Table for Herb {
    const SQL: &'static str = include_str!("herb.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> =
        Some(|it| Words::of(&[Some(&it.common), it.latin.as_deref(), it.note.as_deref()]));
    const NOT_THERE: fn() -> Message = || say!("not-there-herb");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-herb", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(named(&self.common))
    }

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
