//! What stands on the shelf and what was used, summed up by kind of preparation.

use chrono::NaiveDate;
use journal::{Amount, Bottle, HerbKey, Use};
use rusqlite::Row;

use crate::{Failure, Reading};

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

impl Reading<'_> {
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
}
