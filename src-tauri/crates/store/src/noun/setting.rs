//! How each device shows the journal.

use journal::Setting;
use rusqlite::{Connection, params};

use super::Table;
use crate::Failure;

impl Table for Setting {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO setting (id, body) VALUES (?1, ?2)")?
            .execute(params![id, body])?;
        Ok(())
    }
}
