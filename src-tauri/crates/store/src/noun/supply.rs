//! Bottles bought to pour from.

use journal::{Amount, Supply, SupplyId};
use message::{Message, say};
use rusqlite::{Connection, params};

use super::{RestsOn, Table, Words, WordsOf, parsed};
use crate::name::named;
use crate::{Failure, Reading};

/// A supply and what is left of it.
#[derive(Debug, Clone, PartialEq)]
pub struct SupplyRow {
    /// Its id.
    pub id: SupplyId,
    /// The supply.
    pub supply: Supply,
    /// What is left.
    pub left_ml: f64,
}

impl Table for Supply {
    const SQL: &'static str = include_str!("supply.sql");
    const RESTS_ON: RestsOn = &[];
    const WORDS: WordsOf<Self> = Some(|it| Words::of(&[Some(&it.name)]));
    const NOT_THERE: fn() -> Message = || say!("not-there-supply");
    const COUNTED: fn(u64) -> Message = |count| say!("counted-supply", count);

    fn name(&self, _: &Connection) -> Result<Message, Failure> {
        Ok(named(&self.name))
    }

    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure> {
        conn.prepare_cached("INSERT INTO supply (id, body, name, size) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![id, body, self.name, self.size().thousandths()])?;
        Ok(())
    }
}

impl Reading<'_> {
    /// All supplies, by name, the empty ones last.
    ///
    /// # Errors
    /// A failure to read.
    pub fn supplies(&self) -> Result<Vec<SupplyRow>, Failure> {
        let mut statement = self.conn.prepare_cached(
            "SELECT supply.id, supply.body, lot.remains
             FROM supply JOIN lot ON lot.noun = 'supply' AND lot.id = supply.id
             ORDER BY lot.remains <= 0, supply.name COLLATE NOCASE, supply.id",
        )?;
        let mut rows = statement.query([])?;
        let mut supplies = Vec::new();
        while let Some(row) = rows.next()? {
            supplies.push(SupplyRow {
                id: row.get::<_, String>(0)?.parse()?,
                supply: parsed(&row.get::<_, String>(1)?)?,
                left_ml: Amount::from_thousandths(row.get(2)?).get(),
            });
        }
        Ok(supplies)
    }
}
