//! Jars.

use chrono::NaiveDate;
use journal::{Jar, JarId, JarState, Noun};
use rusqlite::types::Value;
use rusqlite::{Connection, params, params_from_iter};

use super::{Table, all};
use crate::{Failure, Page, Reading};

/// A jar.
#[derive(Debug, Clone, PartialEq)]
pub struct JarRow {
    /// Its id.
    pub id: JarId,
    /// The jar as poured.
    pub jar: Jar,
}

/// Which jars.
#[derive(Debug, Clone, PartialEq)]
pub struct JarFilter {
    /// Only in this state, as of this day.
    pub state: Option<(JarState, NaiveDate)>,
    /// Only those after this one in the list.
    pub before: Option<JarId>,
    /// At most so many.
    pub limit: usize,
}

impl Table for Jar {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO jar (id, body, code, poured_ms, due_from, failed)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.poured_at.timestamp_millis(),
            self.due().0.to_string(),
            self.failed.is_some(),
        ])?;
        let mut herbs =
            conn.prepare_cached("INSERT OR IGNORE INTO jar_herb (jar, herb) VALUES (?1, ?2)")?;
        for plant in &self.plants {
            herbs.execute([id, plant.herb.as_str()])?;
        }
        Ok(())
    }

    fn remove(conn: &Connection, id: &str) -> Result<(), Failure> {
        conn.prepare_cached("DELETE FROM jar WHERE id = ?1")?
            .execute([id])?;
        conn.prepare_cached("DELETE FROM jar_herb WHERE jar = ?1")?
            .execute([id])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// Jars, the latest first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `before` names no jar; a failure to read.
    pub fn jars(&self, filter: &JarFilter) -> Result<Page<JarRow>, Failure> {
        let mut sql = String::from("SELECT id, body FROM jar WHERE 1");
        let mut values: Vec<Value> = Vec::new();
        if let Some((state, today)) = filter.state {
            match state {
                JarState::Failed => sql.push_str(" AND failed"),
                JarState::Strained => {
                    return Ok(Page {
                        rows: Vec::new(),
                        more: false,
                    });
                }
                JarState::Due => sql.push_str(" AND NOT failed AND +due_from <= ?"),
                JarState::Steeping => sql.push_str(" AND NOT failed AND +due_from > ?"),
            }
            if matches!(state, JarState::Due | JarState::Steeping) {
                values.push(today.to_string().into());
            }
        }
        if let Some(before) = filter.before {
            if !super::is_present(self.conn, Noun::Jar, &before.to_string())? {
                return Err(Failure::not_found(Noun::Jar));
            }
            sql.push_str(" AND (poured_ms, id) < (SELECT poured_ms, id FROM jar WHERE id = ?)");
            values.push(before.to_string().into());
        }
        sql.push_str(" ORDER BY poured_ms DESC, id DESC LIMIT ?");
        values.push((filter.limit as i64 + 1).into());
        let rows = all::<Jar>(self.conn, &sql, params_from_iter(values))?;
        let rows = rows
            .into_iter()
            .map(|(id, jar)| JarRow { id, jar })
            .collect();
        Ok(Page::of(rows, filter.limit))
    }
}
