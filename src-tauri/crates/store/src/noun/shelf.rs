//! Bottles as lists ask for them: those that stand on the shelf, and those that left it.

use chrono::NaiveDate;
use journal::{BottleId, BottleState, EndKind, HerbKey, JarId, Noun};
use rusqlite::types::Value;
use rusqlite::{OptionalExtension, params_from_iter};

use super::bottle::BottleRow;
use crate::{Failure, Page, Reading};

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
    /// When a pH was read at which acid may not protect it.
    pub not_acid_on: Option<NaiveDate>,
}

/// The shelf with what it is sorted by: to be thrown away, to look at, open, closed; the last day.
const SHELF: &str = "SELECT bottle, jar, code, coalesce(best_before, '') AS day,
        NOT (is_bad OR (only_the_date AND coalesce(best_before < ?, 0))) AS keeps,
        CASE WHEN is_bad OR (only_the_date AND coalesce(best_before < ?, 0))
                  OR coalesce(next_check <= ?, 0) OR not_acid_on IS NOT NULL THEN 0
             WHEN is_open THEN 1 ELSE 2 END AS state
    FROM shelf";

impl Reading<'_> {
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
            "SELECT bottle, jar, code, only_the_date, best_before, next_check, is_bad, not_acid_on
             FROM shelf
             WHERE is_bad OR next_check <= ?1 OR best_before <= ?1 OR not_acid_on IS NOT NULL",
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
                not_acid_on: day(7)?,
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
}
