//! Beds.

use journal::{Bed, BedId};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, Words, WordsOf, all};
use crate::{Failure, Reading};

impl Table for Bed {
    const SQL: &'static str = include_str!("bed.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = Some(|it| Words::of(&[Some(&it.name), it.note.as_deref()]));
    const NOT_THERE: fn() -> Message = || say!("not-there-bed");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-bed", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-bed", name = Argument::own(&self.name)))
    }

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
