//! What was taken from bottles.

use journal::{Amount, BottleId, JarId, Noun, Use, UseId};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all, parsed};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Use {
    const SQL: &'static str = include_str!("usage.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-use");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-use", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let of = name_of(conn, Noun::Bottle, &self.bottle.to_string())?;
        Ok(say!("row-use", volume = Argument::millilitres(self.ml), of))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO \"use\" (id, body, bottle, at_ms, ml) VALUES (?1, ?2, ?3, ?4, ?5)",
        )?
        .execute(params![
            id,
            body,
            self.bottle.to_string(),
            self.at.timestamp_millis(),
            Amount::of(self.ml).thousandths(),
        ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// What was taken from a bottle, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn uses(&self, bottle: &BottleId) -> Result<Vec<(UseId, Use)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM \"use\" WHERE bottle = ?1 ORDER BY at_ms, id",
            [bottle.to_string()],
        )
    }

    /// What was taken from bottles since a moment, with the jar of each.
    ///
    /// # Errors
    /// A failure to read.
    pub fn used_since(&self, ms: i64) -> Result<Vec<(JarId, Use)>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT bottle.jar, \"use\".body FROM \"use\" CROSS JOIN bottle ON bottle.id = \"use\".bottle
             WHERE \"use\".at_ms >= ?1 ORDER BY \"use\".at_ms, \"use\".id",
        )?;
        let mut rows = statement.query([ms])?;
        let mut uses = Vec::new();
        while let Some(row) = rows.next()? {
            uses.push((
                row.get::<_, String>(0)?.parse()?,
                parsed(&row.get::<_, String>(1)?)?,
            ));
        }
        Ok(uses)
    }
}
