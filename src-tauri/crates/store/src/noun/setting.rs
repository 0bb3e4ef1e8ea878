//! How each device shows the journal.

use journal::Setting;
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf};
use crate::Failure;

impl Table for Setting {
    const SQL: &'static str = include_str!("setting.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-setting");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-setting", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-other"))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO setting (id, body) VALUES (?1, ?2)")?
            .execute(params![id, body])?;
        Ok(())
    }
}
