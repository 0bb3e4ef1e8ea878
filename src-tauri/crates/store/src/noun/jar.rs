//! Jars.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::NaiveDate;
use journal::{Amount, Jar, JarId, JarState, Noun, PlantState};
use message::{Argument, Message, say};
use rusqlite::{Connection, params};

use super::kind::Kind;
use super::{RestsOn, Table, Words, WordsOf, all, parsed};
use crate::name::code;
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
    /// The day on which some are due.
    pub today: NaiveDate,
    /// Only in this state.
    pub state: Option<JarState>,
    /// Only those after this one in the list.
    pub after: Option<JarId>,
    /// At most so many.
    pub limit: usize,
}

/// What was poured of a kind between two moments, and what became of it.
#[derive(Debug, Clone, PartialEq)]
pub struct JarSum {
    /// The kind.
    pub kind: Kind,
    /// How many jars.
    pub jars: u32,
    /// How many of them failed.
    pub failed: u32,
    /// What was strained off them.
    pub out: Amount,
    /// Strained liquid that no bottle holds.
    pub unbottled: Amount,
    /// How many bottles were filled from them.
    pub bottles: u32,
    /// What was filled into them.
    pub bottled: Amount,
    /// How many of them were given away.
    pub given: u32,
    /// What is left in those on the shelf.
    pub shelved: Amount,
}

impl JarSum {
    fn none(kind: Kind) -> Self {
        Self {
            kind,
            jars: 0,
            failed: 0,
            out: Amount::ZERO,
            unbottled: Amount::ZERO,
            bottles: 0,
            bottled: Amount::ZERO,
            given: 0,
            shelved: Amount::ZERO,
        }
    }
}

const STRAINED: &str =
    "NOT failed AND EXISTS (SELECT 1 FROM straining WHERE straining.jar = jar.id)";

/// The herbs of a jar, each once, in their order.
fn herbs_of(jar: &Jar) -> String {
    let mut herbs: Vec<&str> = Vec::new();
    for plant in &jar.plants {
        if !herbs.contains(&plant.herb.as_str()) {
            herbs.push(plant.herb.as_str());
        }
    }
    herbs.join(" ")
}

impl Table for Jar {
    const SQL: &'static str = include_str!("jar.sql");
    const RESTS_ON: RestsOn = &[
        (Noun::Herb, "SELECT jar FROM jar_herb WHERE herb = ?1"),
        (Noun::Jar, "SELECT id FROM jar WHERE marc_of = ?1"),
    ];
    const WORDS: WordsOf<Self> = Some(|it| {
        let failed = it.failed.as_ref().map(|failed| failed.reason.as_str());
        Words::of(&[
            Some(it.code.as_str()),
            Some(&it.name),
            Some(&it.preparation),
            it.place.as_deref(),
            it.note.as_deref(),
            failed,
        ])
        .linked(it.plants.iter().map(|plant| plant.herb.as_str()))
        .at(it.poured_at.timestamp_millis())
    });
    const NOT_THERE: fn() -> Message = || say!("not-there-jar");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-jar", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        let name = Argument::own(&self.name);
        Ok(say!("row-jar", name, code = code(&self.code)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO jar (id, body, code, poured_ms, due_from, failed, preparation, marc_of,
                              herbs, is_fresh, name, poured_at)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
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
            herbs_of(self),
            self.plants
                .iter()
                .any(|plant| plant.state == PlantState::Fresh),
            self.name,
            self.poured_at.to_rfc3339(),
        ])?;
        let mut herbs = conn.prepare_cached(
            "INSERT OR IGNORE INTO jar_herb (jar, herb, preparation, poured_ms)
             VALUES (?1, ?2, ?3, ?4)",
        )?;
        let poured_ms = self.poured_at.timestamp_millis();
        for plant in &self.plants {
            herbs.execute(params![
                id,
                plant.herb.as_str(),
                self.preparation,
                poured_ms
            ])?;
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
    /// Jars: those that stand on their plants, the longest due first; the strained and the failed
    /// ones, the latest poured first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `after` names no jar; a failure to read.
    pub fn jars(&self, filter: &JarFilter) -> Result<Page<JarRow>, Failure> {
        let after = match filter.after {
            None => None,
            Some(id) => Some((id.to_string(), self.jar(&id)?)),
        };
        let parts = [
            (
                JarState::Due,
                "due_from <= ?1",
                "standing",
                "due_from, jar",
                false,
            ),
            (
                JarState::Steeping,
                "due_from > ?1",
                "standing",
                "due_from, jar",
                false,
            ),
            (JarState::Strained, STRAINED, "jar", "poured_ms, id", true),
            (JarState::Failed, "failed", "jar", "poured_ms, id", true),
        ];
        let reached = after
            .as_ref()
            .map(|(_, row)| row.jar.state(row.is_strained, filter.today));
        let mut rows = Vec::new();
        let mut is_behind = reached.is_some();
        for (state, holds, table, order, descending) in parts {
            let begins_here = is_behind && reached == Some(state);
            is_behind &= !begins_here;
            let is_wanted = filter.state.is_none_or(|wanted| wanted == state);
            if is_behind || !is_wanted || rows.len() > filter.limit {
                continue;
            }
            let id = if table == "jar" { "id" } else { "jar" };
            let (than, direction) = if descending {
                ("<", " DESC")
            } else {
                (">", "")
            };
            let sorted = order.replace(',', &format!("{direction},"));
            let room = filter.limit + 1 - rows.len();
            let last = after.as_ref().filter(|_| begins_here).map(|(id, _)| id);
            // ?1 is named in every part, so that all take the same values.
            let mut statement = self.conn.prepare_cached(&format!(
                "SELECT {id} FROM {table} WHERE {holds} AND ?1 IS NOT NULL AND (?2 IS NULL OR
                     ({order}) {than} (SELECT {order} FROM {table} WHERE {id} = ?2))
                 ORDER BY {sorted}{direction} LIMIT ?3"
            ))?;
            let values = params![filter.today.to_string(), last, room as i64];
            let ids: Vec<String> = statement
                .query_map(values, |row| row.get(0))?
                .collect::<Result<_, _>>()?;
            for id in ids {
                rows.extend(self.jar_rows("WHERE id = ?1", [id])?);
            }
        }
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
            // Left to itself SQLite reads the lots of all jars there ever were.
            "SELECT jar.id, jar.body
             FROM lot INDEXED BY lot_in_stock CROSS JOIN jar ON jar.id = lot.id
             WHERE lot.noun = 'jar' AND lot.remains > 0 AND NOT jar.failed
             ORDER BY jar.poured_ms, jar.id",
            [],
        )
    }

    /// What was poured between two moments, summed up by kind.
    ///
    /// # Errors
    /// A failure to read.
    pub fn poured_sums(&self, from_ms: i64, to_ms: i64) -> Result<Vec<JarSum>, Failure> {
        // Summed up here and not by SQLite, which would sort all of a year's bottles by three texts.
        let mut statement = self.conn.prepare_cached(
            "SELECT preparation, is_fresh, herbs, failed,
                    (SELECT sum(out) FROM straining WHERE straining.jar = jar.id),
                    (SELECT remains FROM lot INDEXED BY lot_in_stock WHERE lot.noun = 'jar'
                        AND lot.picked_ms IS NULL AND lot.id = jar.id AND remains > 0
                        AND NOT jar.failed),
                    (SELECT sum(remains) FROM shelf INDEXED BY shelf_of_jar WHERE shelf.jar = jar.id),
                    count(bottle.id), sum(bottle.size), coalesce(sum(bottle.end_kind IS 'given'), 0)
             FROM jar LEFT JOIN bottle INDEXED BY bottle_of_jar ON bottle.jar = jar.id
             WHERE poured_ms >= ?1 AND poured_ms < ?2 GROUP BY poured_ms, jar.id",
        )?;
        let mut rows = statement.query([from_ms, to_ms])?;
        let mut sums: BTreeMap<(String, bool, String), JarSum> = BTreeMap::new();
        while let Some(row) = rows.next()? {
            let sum = match sums.entry((row.get(0)?, row.get(1)?, row.get(2)?)) {
                Entry::Occupied(entry) => entry.into_mut(),
                Entry::Vacant(place) => place.insert(JarSum::none(Kind::of(row, 0)?)),
            };
            sum.jars += 1;
            sum.failed += row.get::<_, u32>(3)?;
            let ml = |place: usize| -> Result<Amount, Failure> {
                let ml: Option<i64> = row.get(place)?;
                Ok(Amount::from_thousandths(ml.unwrap_or_default()))
            };
            sum.out = sum.out + ml(4)?;
            sum.unbottled = sum.unbottled + ml(5)?;
            sum.shelved = sum.shelved + ml(6)?;
            sum.bottles += row.get::<_, u32>(7)?;
            sum.bottled = sum.bottled + ml(8)?;
            sum.given += row.get::<_, u32>(9)?;
        }
        Ok(sums.into_values().collect())
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
