//! What came out of jars.

use journal::{HerbKey, How, Interval, JarId, Noun, Straining, StrainingId};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, WordsOf, all};
use crate::name::name_of;
use crate::{Failure, Reading, log};

/// What one straining told of the marc of a herb.
#[derive(Debug, Clone, PartialEq)]
pub struct MarcKept {
    /// How it was strained.
    pub how: How,
    /// What the marc kept, mL for each gram of dry matter.
    pub retained_ml_per_g_dry: Interval,
}

impl Table for Straining {
    const SQL: &'static str = include_str!("straining.sql");
    const RESTS_ON: RestsOn = &[(Noun::Jar, "SELECT id FROM straining WHERE jar = ?1")];
    const WORDS: WordsOf<Self> = None;
    const NOT_THERE: fn() -> Message = || say!("not-there-straining");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-straining", count);

    fn name(&self, conn: &Connection) -> Result<Message, Failure> {
        let of = name_of(conn, Noun::Jar, &self.jar.to_string())?;
        let volume = Argument::millilitres(self.came_out_ml);
        Ok(say!("row-straining", volume, of))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO straining (id, body, jar, at_ms, out, reads_ph)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
        )?
        .execute(params![
            id,
            body,
            self.jar.to_string(),
            self.at.timestamp_millis(),
            self.out().thousandths(),
            self.ph.is_some(),
        ])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// What came out of a jar, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn strainings(&self, jar: &JarId) -> Result<Vec<(StrainingId, Straining)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM straining WHERE jar = ?1 ORDER BY at_ms, id",
            [jar.to_string()],
        )
    }

    /// What the marc of a herb kept in the maker's own jars of a preparation, latest first. Jars
    /// of several herbs and second macerations are left out: they tell nothing of one herb.
    ///
    /// # Errors
    /// A failure to read.
    pub fn marcs(
        &self,
        herb: &HerbKey,
        preparation: &str,
        limit: usize,
    ) -> Result<Vec<MarcKept>, Failure> {
        // The latest jars first, for an old book has hundreds of a herb and a few of them are enough.
        let mut jars = self.conn.prepare_cached(
            "SELECT jar.id FROM jar_herb CROSS JOIN jar ON jar.id = jar_herb.jar
             WHERE jar_herb.herb = ?1 AND jar_herb.preparation = ?2 AND jar.marc_of IS NULL
               AND NOT jar.failed
               AND NOT EXISTS (SELECT 1 FROM jar_herb AS other
                               WHERE other.jar = jar.id AND other.herb <> ?1)
             ORDER BY jar_herb.poured_ms DESC, jar_herb.jar DESC",
        )?;
        let mut jars = jars.query([herb.as_str(), preparation])?;
        let mut kept = Vec::new();
        while let Some(jar) = jars.next()?.filter(|_| kept.len() < limit) {
            let mut of_jar = Vec::new();
            let mut out_ml = 0.0;
            for (_, straining) in self.strainings(&log::text(jar, 0)?.parse()?)? {
                out_ml += straining.came_out_ml;
                if let Some(retained) = straining.retained_ml_per_g_dry(out_ml) {
                    of_jar.push(MarcKept {
                        how: straining.how,
                        retained_ml_per_g_dry: retained,
                    });
                }
            }
            kept.extend(of_jar.into_iter().rev());
        }
        kept.truncate(limit);
        Ok(kept)
    }
}
