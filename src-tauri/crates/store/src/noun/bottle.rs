//! Bottles.

use chrono::NaiveDate;
use journal::{
    Amount, Bottle, BottleId, BottleState, Check, EndKind, JarId, LotCode, Noun, PhRead,
};
use message::{Message, say};
use rusqlite::{Connection, OptionalExtension, Row, params};

use super::{RestsOn, Table, Words, WordsOf, parsed, ph};
use crate::name::code;
use crate::{Failure, Reading};

/// A bottle with what lists show of it.
#[derive(Debug, Clone, PartialEq)]
pub struct BottleRow {
    /// Its id.
    pub id: BottleId,
    /// The bottle.
    pub bottle: Bottle,
    /// What was not taken from it by the record.
    pub left_ml: f64,
    /// Whether anything was taken.
    pub is_open: bool,
    /// The last look at it.
    pub last_check: Option<Check>,
    /// The pH that counts for it.
    pub ph: Option<PhRead>,
}

impl BottleRow {
    /// Where it is in its life on a day.
    pub fn state(&self, today: NaiveDate) -> BottleState {
        let (last, ph) = (self.last_check.as_ref(), self.ph.as_ref());
        self.bottle.state(self.is_open, last, ph, today)
    }

    /// Whether a pH was read at which acid may not protect it.
    pub fn is_not_acid(&self) -> bool {
        self.ph.is_some_and(|read| !read.ph.is_acid_enough())
    }

    /// The last day on which it should be used.
    pub fn last_day(&self) -> Option<NaiveDate> {
        self.bottle.last_day(self.ph.as_ref())
    }
}

impl Table for Bottle {
    const SQL: &'static str = include_str!("bottle.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = Some(|it| {
        let end = it.end.as_ref();
        Words::of(&[
            Some(it.code.as_str()),
            it.place.as_deref(),
            it.note.as_deref(),
            end.and_then(|end| end.to.as_deref()),
            end.and_then(|end| end.reason.as_deref()),
        ])
        .at(it.filled_at.timestamp_millis())
    });
    const NOT_THERE: fn() -> Message = || say!("not-there-bottle");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-bottle", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(say!("row-bottle", code = code(&self.code)))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        let given = self.end.as_ref().filter(|end| end.kind == EndKind::Given);
        conn.prepare_cached(
            "INSERT INTO bottle (id, body, code, jar, filled_ms, size, ended, end_kind, ended_ms,
                                 place, given_to, given_at)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
        )?
        .execute(params![
            id,
            body,
            self.code.as_str(),
            self.jar.to_string(),
            self.filled_at.timestamp_millis(),
            self.size().thousandths(),
            self.end.is_some(),
            self.end.as_ref().map(|end| end.kind.as_str()),
            self.end.as_ref().map(|end| end.at.timestamp_millis()),
            self.place,
            given.and_then(|end| end.to.as_deref()),
            given.map(|end| end.at.to_rfc3339()),
        ])?;
        Ok(())
    }
}

pub(crate) const ROW: &str = "SELECT bottle.id, bottle.body, lot.came_in, lot.remains,
        (SELECT body FROM \"check\" WHERE \"check\".bottle = bottle.id
         ORDER BY at_ms DESC, \"check\".id DESC LIMIT 1)
    FROM bottle CROSS JOIN lot ON lot.noun = 'bottle' AND lot.id = bottle.id";

pub(crate) fn bottle_row(conn: &Connection, row: &Row<'_>) -> Result<BottleRow, Failure> {
    let (came_in, remains): (i64, i64) = (row.get(2)?, row.get(3)?);
    let id: BottleId = row.get::<_, String>(0)?.parse()?;
    let bottle: Bottle = parsed(row.get_ref(1)?.as_str().unwrap_or_default())?;
    Ok(BottleRow {
        id,
        ph: ph::that_counts(conn, &bottle.jar, Some(id))?,
        bottle,
        left_ml: Amount::from_thousandths(remains).get(),
        is_open: remains != came_in,
        last_check: row
            .get::<_, Option<String>>(4)?
            .map(|body| parsed(&body))
            .transpose()?,
    })
}

impl Reading<'_> {
    pub(crate) fn bottle_rows(
        &self,
        rest: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<BottleRow>, Failure> {
        let mut statement = self.conn.prepare_cached(&format!("{ROW} {rest}"))?;
        let mut rows = statement.query(params)?;
        let mut bottles = Vec::new();
        while let Some(row) = rows.next()? {
            bottles.push(bottle_row(self.conn, row)?);
        }
        Ok(bottles)
    }

    /// The bottles that left the shelf, the latest filled first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottles_ended(&self, limit: usize) -> Result<Vec<BottleRow>, Failure> {
        self.bottle_rows(
            "WHERE bottle.ended ORDER BY bottle.filled_ms DESC, bottle.id DESC LIMIT ?1",
            [limit as i64],
        )
    }

    /// The bottles of a jar, in the order in which they were filled.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottles_of(&self, jar: &JarId) -> Result<Vec<BottleRow>, Failure> {
        self.bottle_rows(
            "WHERE bottle.jar = ?1 ORDER BY bottle.filled_ms, bottle.id",
            [jar.to_string()],
        )
    }

    /// One bottle.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn bottle(&self, id: &BottleId) -> Result<BottleRow, Failure> {
        let rows = self.bottle_rows("WHERE bottle.id = ?1", [id.to_string()])?;
        rows.into_iter()
            .next()
            .ok_or_else(|| Failure::not_found(Noun::Bottle))
    }

    /// The bottle that bears a code.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottle_coded(&self, code: &LotCode) -> Result<Option<BottleId>, Failure> {
        let id: Option<String> = self
            .conn
            .prepare_cached("SELECT id FROM bottle WHERE code = ?1")?
            .query_row([code.as_str()], |row| row.get(0))
            .optional()?;
        Ok(id.map(|id| id.parse()).transpose()?)
    }
}
