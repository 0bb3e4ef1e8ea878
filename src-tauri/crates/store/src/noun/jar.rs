//! Jars.

use chrono::NaiveDate;
use journal::{Jar, JarId, JarState, Noun};
use rusqlite::types::Value;
use rusqlite::{Connection, params, params_from_iter};

use super::{Table, all, parsed};
use crate::{Failure, Page, Reading};

/// A jar.
#[derive(Debug, Clone, PartialEq)]
pub struct JarRow {
    /// Its id.
    pub id: JarId,
    /// The jar as poured.
    pub jar: Jar,
    /// Whether anything was strained off it.
    pub is_strained: bool,
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
            "INSERT INTO jar (id, body, code, poured_ms, due_from, failed, preparation, marc_of)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.poured_at.timestamp_millis(),
            self.due().0.to_string(),
            self.failed.is_some(),
            self.preparation,
            self.marc_of.map(|jar| jar.to_string()),
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
        let mut sql = String::from("WHERE 1");
        let mut values: Vec<Value> = Vec::new();
        if let Some((state, today)) = filter.state {
            match state {
                JarState::Failed => sql.push_str(" AND failed"),
                JarState::Strained => sql.push_str(
                    " AND NOT failed AND EXISTS (SELECT 1 FROM straining WHERE jar = jar.id)",
                ),
                JarState::Due => {
                    sql.push_str(" AND id IN (SELECT jar FROM standing WHERE due_from <= ?)");
                }
                JarState::Steeping => {
                    sql.push_str(" AND id IN (SELECT jar FROM standing WHERE due_from > ?)");
                }
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
        let rows = self.jar_rows(&sql, params_from_iter(values))?;
        Ok(Page::of(rows, filter.limit))
    }

    fn jar_rows(&self, rest: &str, params: impl rusqlite::Params) -> Result<Vec<JarRow>, Failure> {
        let mut statement = self.conn.prepare_cached(&format!(
            "SELECT id, body, EXISTS (SELECT 1 FROM straining WHERE straining.jar = jar.id)
             FROM jar {rest}"
        ))?;
        let mut rows = statement.query(params)?;
        let mut jars = Vec::new();
        while let Some(row) = rows.next()? {
            jars.push(JarRow {
                id: row.get::<_, String>(0)?.parse()?,
                jar: parsed(&row.get::<_, String>(1)?)?,
                is_strained: row.get(2)?,
            });
        }
        Ok(jars)
    }

    /// One jar.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn jar(&self, id: &JarId) -> Result<JarRow, Failure> {
        let rows = self.jar_rows("WHERE id = ?1", [id.to_string()])?;
        rows.into_iter()
            .next()
            .ok_or_else(|| Failure::not_found(Noun::Jar))
    }

    /// The jar in which the marc of another was covered again.
    ///
    /// # Errors
    /// A failure to read.
    pub fn jar_on_marc_of(&self, id: &JarId) -> Result<Option<Jar>, Failure> {
        let found = all::<Jar>(
            self.conn,
            "SELECT id, body FROM jar WHERE marc_of = ?1 ORDER BY poured_ms, id LIMIT 1",
            [id.to_string()],
        )?;
        Ok(found.into_iter().next().map(|(_, jar)| jar))
    }

    /// The jars that stand on their plants, the longest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn jars_standing(&self) -> Result<Vec<(JarId, Jar)>, Failure> {
        all(
            self.conn,
            "SELECT jar.id, jar.body FROM standing CROSS JOIN jar ON jar.id = standing.jar
             ORDER BY standing.poured_ms, jar.id",
            [],
        )
    }

    /// The strained jars with liquid that no bottle holds yet, the longest poured first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn jars_unbottled(&self) -> Result<Vec<(JarId, Jar)>, Failure> {
        all(
            self.conn,
            "SELECT jar.id, jar.body FROM lot CROSS JOIN jar ON jar.id = lot.id
             WHERE lot.noun = 'jar' AND lot.remains > 0 AND NOT jar.failed
             ORDER BY jar.poured_ms, jar.id",
            [],
        )
    }

    /// The jars poured between two moments, in order.
    ///
    /// # Errors
    /// A failure to read.
    pub fn jars_poured(&self, from_ms: i64, to_ms: i64) -> Result<Vec<JarRow>, Failure> {
        self.jar_rows(
            "WHERE poured_ms >= ?1 AND poured_ms < ?2 ORDER BY poured_ms, id",
            [from_ms, to_ms],
        )
    }
}
