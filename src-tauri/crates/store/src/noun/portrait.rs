//! Photos of jars, bottles, beds and own herbs.

use journal::{Noun, PhotoHash, Pictured, Portrait, PortraitId};
use message::{Message, say};
use rusqlite::{Connection, OptionalExtension, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading};

impl Table for Portrait {
    const SQL: &'static str = include_str!("portrait.sql");
    const RESTS_ON: RestsOn = &[
        (
            Noun::Bed,
            "SELECT id FROM portrait WHERE of_noun = 'bed' AND of_id = ?1",
        ),
        (
            Noun::Jar,
            "SELECT id FROM portrait WHERE of_noun = 'jar' AND of_id = ?1",
        ),
        (
            Noun::Bottle,
            "SELECT id FROM portrait WHERE of_noun = 'bottle' AND of_id = ?1",
        ),
        (
            Noun::Herb,
            "SELECT id FROM portrait WHERE of_noun = 'herb' AND of_id = ?1",
        ),
        (Noun::Photo, "SELECT id FROM portrait WHERE hash = ?1"),
    ];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-portrait");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-portrait", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let (noun, id) = self.of.row();
        let of = name_of(conn, noun, &id)?;
        Ok(say!("row-portrait", of))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        let (noun, of) = self.of.row();
        conn.prepare_cached(
            "INSERT INTO portrait (id, body, of_noun, of_id, hash, at_ms, shown)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
        )?
        .execute(params![
            id,
            body,
            noun.as_str(),
            of,
            self.photo.as_str(),
            self.at.timestamp_millis(),
            self.shown,
        ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// The photos of one thing, the earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn portraits(&self, of: Pictured) -> Result<Vec<(PortraitId, Portrait)>, Failure> {
        let (noun, id) = of.row();
        all(
            self.conn,
            "SELECT id, body FROM portrait WHERE of_noun = ?1 AND of_id = ?2 ORDER BY at_ms, id",
            [noun.as_str(), &id],
        )
    }

    /// The photo that stands in the place of the drawing of a thing; of several the one taken last.
    ///
    /// # Errors
    /// A failure to read.
    pub fn face(&self, of: Pictured) -> Result<Option<PhotoHash>, Failure> {
        let (noun, id) = of.row();
        let hash: Option<String> = self
            .conn
            .prepare_cached(
                "SELECT hash FROM portrait INDEXED BY portrait_shown
                 WHERE of_noun = ?1 AND of_id = ?2 AND shown
                 ORDER BY at_ms DESC, id DESC LIMIT 1",
            )?
            .query_row([noun.as_str(), &id], |row| row.get(0))
            .optional()?;
        Ok(hash.map(|hash| hash.parse()).transpose()?)
    }
}
