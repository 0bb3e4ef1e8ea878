//! Bottles, what was taken from them and how they were found.

use chrono::NaiveDate;
use journal::{
    Amount, Bottle, BottleId, BottleState, Check, CheckId, EndKind, HerbKey, JarId, LotCode, Noun,
    Use, UseId,
};
use rusqlite::types::Value;
use rusqlite::{Connection, OptionalExtension, Row, params, params_from_iter};

use super::{Table, all, parsed};
use crate::{Failure, Page, Reading};

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
}

/// Which bottles, as of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct BottleFilter {
    /// Only in this state; without one those on the shelf.
    pub state: Option<BottleState>,
    /// Only of this herb.
    pub herb: Option<HerbKey>,
    /// Only of these preparations, each fresh or dried.
    pub preparations: Option<Vec<(String, bool)>>,
    /// Only those after this one in the list.
    pub after: Option<BottleId>,
    /// At most so many.
    pub limit: usize,
}

/// What asks for the maker about a bottle on the shelf.
#[derive(Debug, Clone, PartialEq)]
pub struct BottleDue {
    /// Its id.
    pub id: BottleId,
    /// The jar it was filled from.
    pub jar: JarId,
    /// Its code.
    pub code: String,
    /// Whether no look and no smell can tell that it went bad.
    pub only_the_date_counts: bool,
    /// Its last day.
    pub best_before: Option<NaiveDate>,
    /// When to look at it next.
    pub next_check: Option<NaiveDate>,
    /// When it was found bad.
    pub found_bad_on: Option<NaiveDate>,
}

/// What bottles are summed up by: what their jar was made as, and of what.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Kind {
    /// Key of the preparation.
    pub preparation: String,
    /// Whether any plant went in fresh.
    pub is_fresh: bool,
    /// The herbs, each once.
    pub herbs: Vec<HerbKey>,
}

impl Kind {
    /// From three columns of a jar.
    pub(crate) fn of(row: &Row<'_>, first: usize) -> Result<Self, Failure> {
        let herbs: String = row.get(first + 2)?;
        Ok(Self {
            preparation: row.get(first)?,
            is_fresh: row.get(first + 1)?,
            herbs: herbs
                .split_terminator(' ')
                .map(str::parse)
                .collect::<Result<_, _>>()?,
        })
    }
}

/// What stands on the shelf, or was used, of a kind.
#[derive(Debug, Clone, PartialEq)]
pub struct KindSum {
    /// The kind.
    pub kind: Kind,
    /// How many bottles, or uses.
    pub count: u32,
    /// How much in all.
    pub ml: f64,
    /// The first day of use.
    pub first_on: Option<NaiveDate>,
}

impl Table for Bottle {
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

impl Table for Use {
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

impl Table for Check {
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached(
            "INSERT INTO \"check\" (id, body, bottle, at_ms) VALUES (?1, ?2, ?3, ?4)",
        )?
        .execute(params![
            id,
            body,
            self.bottle.to_string(),
            self.at.timestamp_millis()
        ])?;
        Ok(())
    }
}

pub(crate) const ROW: &str = "SELECT bottle.id, bottle.body, lot.came_in, lot.remains,
        (SELECT body FROM \"check\" WHERE \"check\".bottle = bottle.id
         ORDER BY at_ms DESC, \"check\".id DESC LIMIT 1)
    FROM bottle CROSS JOIN lot ON lot.noun = 'bottle' AND lot.id = bottle.id";

/// The shelf with what it is sorted by: to be thrown away, to look at, open, closed; the last day.
const SHELF: &str = "SELECT bottle, jar, code, coalesce(best_before, '') AS day,
        NOT (is_bad OR (only_the_date AND coalesce(best_before < ?, 0))) AS keeps,
        CASE WHEN is_bad OR (only_the_date AND coalesce(best_before < ?, 0))
                  OR coalesce(next_check <= ?, 0) THEN 0
             WHEN is_open THEN 1 ELSE 2 END AS state
    FROM shelf";

pub(crate) fn bottle_row(row: &Row<'_>) -> Result<BottleRow, Failure> {
    let (came_in, remains): (i64, i64) = (row.get(2)?, row.get(3)?);
    Ok(BottleRow {
        id: row.get::<_, String>(0)?.parse()?,
        bottle: parsed(row.get_ref(1)?.as_str().unwrap_or_default())?,
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
            bottles.push(bottle_row(row)?);
        }
        Ok(bottles)
    }

    /// Bottles: those on the shelf in the order in which they ask for the maker, those that must be
    /// thrown away first; those that left it, the latest filled first.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when `after` is not in this list; a failure to read.
    pub fn bottles(
        &self,
        filter: &BottleFilter,
        today: NaiveDate,
    ) -> Result<Page<BottleRow>, Failure> {
        let ended = match filter.state {
            Some(BottleState::Finished) => Some(EndKind::Finished),
            Some(BottleState::Binned) => Some(EndKind::Binned),
            Some(BottleState::Given) => Some(EndKind::Given),
            _ => None,
        };
        let (list, order, mut values) = match ended {
            Some(kind) => (
                "SELECT id AS bottle, jar, filled_ms FROM bottle WHERE end_kind = ? AND ended",
                ["filled_ms", "bottle", "", ""],
                vec![Value::from(kind.as_str().to_owned())],
            ),
            None => (
                SHELF,
                ["keeps", "state", "day", "code"],
                vec![Value::from(today.to_string()); 3],
            ),
        };
        let order: Vec<&str> = order.into_iter().filter(|name| !name.is_empty()).collect();
        let (columns, descending) = (order.join(", "), ended.is_some());
        let mut rest = String::new();
        match filter.state.filter(|_| ended.is_none()) {
            None => {}
            Some(state) => {
                rest.push_str(" AND state = ?");
                values.push(Value::from(match state {
                    BottleState::ToCheck => 0,
                    BottleState::Open => 1,
                    _ => 2,
                }));
            }
        }
        if let Some(herb) = &filter.herb {
            rest.push_str(" AND jar IN (SELECT jar FROM jar_herb WHERE herb = ?)");
            values.push(herb.as_str().to_owned().into());
        }
        if let Some(preparations) = &filter.preparations {
            let rows = vec!["(?, ?)"; preparations.len()].join(", ");
            rest.push_str(&if preparations.is_empty() {
                " AND 0".to_owned()
            } else {
                format!(
                    " AND jar IN (SELECT id FROM jar WHERE (preparation, is_fresh) IN (VALUES {rows}))"
                )
            });
            for (preparation, is_fresh) in preparations {
                values.extend([
                    preparation.clone().into(),
                    Value::from(i64::from(*is_fresh)),
                ]);
            }
        }
        if let Some(after) = filter.after {
            let known = format!("WITH list AS ({list}) SELECT 1 FROM list WHERE bottle = ?");
            let places = known.matches('?').count() - 1;
            let mut asked = values[..places].to_vec();
            asked.push(after.to_string().into());
            if !self
                .conn
                .prepare_cached(&known)?
                .exists(params_from_iter(asked))?
            {
                return Err(Failure::not_found(Noun::Bottle));
            }
            let than = if descending { '<' } else { '>' };
            rest.push_str(&format!(
                " AND ({columns}) {than} (SELECT {columns} FROM list WHERE bottle = ?)"
            ));
            values.push(after.to_string().into());
        }
        let direction = if descending { " DESC" } else { "" };
        let sorted: Vec<String> = order
            .iter()
            .map(|name| format!("{name}{direction}"))
            .collect();
        values.push((filter.limit as i64 + 1).into());
        let sql = format!(
            "WITH list AS ({list}) SELECT bottle FROM list WHERE 1{rest} ORDER BY {} LIMIT ?",
            sorted.join(", ")
        );
        self.bottles_listed(&sql, params_from_iter(values))
            .map(|rows| Page::of(rows, filter.limit))
    }

    fn bottles_listed(
        &self,
        sql: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<BottleRow>, Failure> {
        let mut statement = self.conn.prepare_cached(sql)?;
        let ids: Vec<String> = statement
            .query_map(params, |row| row.get(0))?
            .collect::<Result<_, _>>()?;
        let mut rows = Vec::new();
        for id in ids {
            rows.extend(self.bottle_rows("WHERE bottle.id = ?1", [id])?);
        }
        Ok(rows)
    }

    /// The bottles on the shelf that ask for the maker up to a day: found bad, to be looked at, or
    /// at their last day. They may be thousands, so no whole row is read.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottles_due(&self, until: NaiveDate) -> Result<Vec<BottleDue>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT bottle, jar, code, only_the_date, best_before, next_check, is_bad FROM shelf
             WHERE is_bad OR next_check <= ?1 OR best_before <= ?1",
        )?;
        let mut rows = statement.query([until.to_string()])?;
        let mut bottles = Vec::new();
        while let Some(row) = rows.next()? {
            let day = |place: usize| -> Result<Option<NaiveDate>, Failure> {
                let day: Option<String> = row.get(place)?;
                day.map(|day| {
                    let why = |_| Failure::Damaged(format!("{day:?} is no day"));
                    day.parse().map_err(why)
                })
                .transpose()
            };
            let id: BottleId = row.get::<_, String>(0)?.parse()?;
            let last = if row.get(6)? {
                self.checks(&id)?.pop()
            } else {
                None
            };
            bottles.push(BottleDue {
                id,
                jar: row.get::<_, String>(1)?.parse()?,
                code: row.get(2)?,
                only_the_date_counts: row.get(3)?,
                best_before: day(4)?,
                next_check: day(5)?,
                found_bad_on: last.map(|(_, check)| check.at.date_naive()),
            });
        }
        Ok(bottles)
    }

    /// What a line about a bottle tells of its jar: its name, its preparation and whether any plant
    /// went in fresh.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if there is none.
    pub fn jar_named(&self, id: &JarId) -> Result<(String, String, bool), Failure> {
        self.conn
            .prepare_cached(
                "SELECT name, preparation, is_fresh FROM jar INDEXED BY jar_kind WHERE id = ?1",
            )?
            .query_row([id.to_string()], |row| {
                Ok((row.get(0)?, row.get(1)?, row.get(2)?))
            })
            .optional()?
            .ok_or_else(|| Failure::not_found(Noun::Jar))
    }

    /// Every kind of preparation that was ever poured.
    ///
    /// # Errors
    /// A failure to read.
    pub fn preparations_poured(&self) -> Result<Vec<(String, bool)>, Failure> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT DISTINCT preparation, is_fresh FROM jar ORDER BY 1, 2")?;
        let kinds = statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
        Ok(kinds.collect::<Result<_, _>>()?)
    }

    /// What stands on the shelf of each kind, without what must be thrown away.
    ///
    /// # Errors
    /// A failure to read.
    pub fn shelved(&self, today: NaiveDate) -> Result<Vec<KindSum>, Failure> {
        self.kind_sums(
            "SELECT jar.preparation, jar.is_fresh, jar.herbs, sum(held.count), sum(held.remains), NULL
             FROM (SELECT jar, count(*) AS count, sum(remains) AS remains FROM shelf
                   WHERE NOT is_bad AND NOT (only_the_date AND coalesce(best_before < ?1, 0))
                   GROUP BY jar) AS held
             CROSS JOIN jar INDEXED BY jar_kind ON jar.id = held.jar
             GROUP BY 1, 2, 3",
            [today.to_string()],
        )
    }

    /// What was used of each kind since a moment: taken from bottles, and what was in a bottle when
    /// it was finished.
    ///
    /// # Errors
    /// A failure to read.
    pub fn used_of_kinds(&self, since_ms: i64) -> Result<Vec<KindSum>, Failure> {
        let mut sums = self.kind_sums(
            "SELECT jar.preparation, jar.is_fresh, jar.herbs, count(*), sum(\"use\".ml),
                    \"use\".id, min(\"use\".at_ms)
             FROM \"use\" CROSS JOIN bottle ON bottle.id = \"use\".bottle
             CROSS JOIN jar INDEXED BY jar_kind ON jar.id = bottle.jar
             WHERE \"use\".at_ms >= ?1 GROUP BY 1, 2, 3",
            [since_ms],
        )?;
        sums.extend(self.kind_sums(
            "SELECT jar.preparation, jar.is_fresh, jar.herbs, count(*), sum(lot.remains),
                    bottle.id, min(bottle.ended_ms)
             FROM bottle CROSS JOIN lot ON lot.noun = 'bottle' AND lot.id = bottle.id
             CROSS JOIN jar INDEXED BY jar_kind ON jar.id = bottle.jar
             WHERE bottle.end_kind = 'finished' AND bottle.ended_ms >= ?1 AND lot.remains > 0
             GROUP BY 1, 2, 3",
            [since_ms],
        )?);
        Ok(sums)
    }

    fn kind_sums(&self, sql: &str, params: impl rusqlite::Params) -> Result<Vec<KindSum>, Failure> {
        let mut statement = self.conn.prepare_cached(sql)?;
        let mut rows = statement.query(params)?;
        let mut sums = Vec::new();
        while let Some(row) = rows.next()? {
            let first_on = match row.get::<_, Option<String>>(5)? {
                None => None,
                // The day where the maker was, which the milliseconds do not tell.
                Some(id) => match super::find::<Use>(self.conn, &id)? {
                    Some(used) => Some(used.at.date_naive()),
                    None => super::find::<Bottle>(self.conn, &id)?
                        .and_then(|bottle| bottle.end)
                        .map(|end| end.at.date_naive()),
                },
            };
            sums.push(KindSum {
                kind: Kind::of(row, 0)?,
                count: row.get(3)?,
                ml: Amount::from_thousandths(row.get(4)?).get(),
                first_on,
            });
        }
        Ok(sums)
    }

    /// The bottles on the shelf, the latest filled first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottles_standing(&self) -> Result<Vec<BottleRow>, Failure> {
        self.bottle_rows(
            "WHERE NOT bottle.ended ORDER BY bottle.filled_ms DESC, bottle.id DESC",
            [],
        )
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

    /// The bottles filled between two moments, in order.
    ///
    /// # Errors
    /// A failure to read.
    pub fn bottles_filled(&self, from_ms: i64, to_ms: i64) -> Result<Vec<BottleRow>, Failure> {
        self.bottle_rows(
            "WHERE bottle.filled_ms >= ?1 AND bottle.filled_ms < ?2
             ORDER BY bottle.filled_ms, bottle.id",
            [from_ms, to_ms],
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

    /// How a bottle was found, earliest first.
    ///
    /// # Errors
    /// A failure to read.
    pub fn checks(&self, bottle: &BottleId) -> Result<Vec<(CheckId, Check)>, Failure> {
        all(
            self.conn,
            "SELECT id, body FROM \"check\" WHERE bottle = ?1 ORDER BY at_ms, id",
            [bottle.to_string()],
        )
    }
}
