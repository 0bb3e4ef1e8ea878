//! Shakes of jars.

use journal::{JarId, Noun, Shake, ShakeId};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Shake {
    const SQL: &'static str = include_str!("shake.sql");
    const RESTS_ON: RestsOn = &[(Noun::Jar, "SELECT id FROM shake WHERE jar = ?1")];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-shake");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-shake", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let of = name_of(conn, Noun::Jar, &self.jar.to_string())?;
        Ok(say!("row-shake", of))
    }

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
