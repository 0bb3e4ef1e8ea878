//! One file for each noun, its table beside it.
//!
//! Every table holds the whole noun as JSON in `body`; the other columns are
//! copies of what lists are found and sorted by.

pub(crate) mod bed;
pub(crate) mod bottle;
pub(crate) mod discard;
pub(crate) mod harvest;
pub(crate) mod herb;
pub(crate) mod jar;
pub(crate) mod kind;
pub(crate) mod look;
pub(crate) mod lot;
pub(crate) mod ph;
pub(crate) mod photo;
pub(crate) mod portrait;
pub(crate) mod recipe;
pub(crate) mod setting;
pub(crate) mod shake;
pub(crate) mod shelf;
pub(crate) mod straining;
pub(crate) mod supply;
pub(crate) mod tray;
pub(crate) mod usage;
pub(crate) mod weighing;

use std::iter::once;

use journal::{Kept, Noun, Refusal, RowRef, of_noun};
use message::Message;
use rusqlite::{Connection, OptionalExtension};

use crate::search::Words;
use crate::sql::quoted;
use crate::{Failure, log};

/// What rows need, and the query that finds those of ours that need the one with a given id.
pub type RestsOn = &'static [(Noun, &'static str)];
/// What a row is found by; nothing where it is found through what it belongs to.
pub type WordsOf<N> = Option<fn(&N) -> Words>;

/// A noun that has a table of the name of the noun, and all that the journal's keeping asks of
/// it. Outside this crate it is only a bound: every noun of the journal has one.
pub trait Table: Kept {
    /// Makes its table, and those that are filled from its rows alone.
    const SQL: &'static str;
    /// Whether a row tells in `bytes` how much is kept of it elsewhere.
    const TELLS_BYTES: bool = false;
    /// What its rows need and do not draw from.
    const RESTS_ON: RestsOn;
    /// What its rows are found by.
    const WORDS: WordsOf<Self>;
    /// Says that there is no such row.
    const NOT_THERE: fn() -> Message;
    /// Says so many.
    const COUNTED: fn(u64) -> Message;

    /// What the maker calls this row, to stand within a sentence.
    fn name(&self, conn: &Connection) -> Result<Message, Failure>;

    /// Puts a row that is not there.
    fn insert(&self, conn: &Connection, id: &str, body: &str) -> Result<(), Failure>;

    /// Removes a row that may be there.
    fn remove(conn: &Connection, id: &str) -> Result<(), Failure> {
        conn.prepare_cached(&format!(
            "DELETE FROM {} WHERE id = ?1",
            quoted(Self::NOUN.as_str())
        ))?
        .execute([id])?;
        Ok(())
    }
}

/// What makes the tables that are made from the log, but for what keeps the tally.
fn sql() -> impl Iterator<Item = &'static str> {
    let nouns = Noun::ALL.iter().map(|noun| of_noun!(noun, N => N::SQL));
    once(include_str!("../ledger.sql")).chain(nouns).chain([
        include_str!("shelf.sql"),
        include_str!("../words.sql"),
        // Last, because it counts the others.
        include_str!("tally.sql"),
    ])
}

/// The tables that are made from the log.
pub(crate) fn tables() -> String {
    sql()
        .map(str::to_owned)
        .chain(Noun::ALL.iter().map(|noun| tallied(*noun)))
        .collect()
}

/// Their names, the tally after what it counts.
pub(crate) fn made() -> impl Iterator<Item = &'static str> {
    let lines = sql().flat_map(str::lines);
    let names = lines.filter_map(|line| line.strip_prefix("CREATE TABLE ")?.strip_suffix(" ("));
    names.map(|name| name.trim_matches('"'))
}

/// The triggers that keep the tally of one noun.
fn tallied(noun: Noun) -> String {
    let bytes = |row| match of_noun!(noun, N => N::TELLS_BYTES) {
        true => format!("({row}.body ->> '$.bytes')"),
        false => "0".to_owned(),
    };
    let (new, old) = (bytes("NEW"), bytes("OLD"));
    format!(
        "CREATE TRIGGER {noun}_comes AFTER INSERT ON \"{noun}\" BEGIN
            INSERT INTO tally VALUES ('{noun}', 1, {new})
            ON CONFLICT (noun) DO UPDATE
            SET count = count + excluded.count, bytes = bytes + excluded.bytes;
        END;
        CREATE TRIGGER {noun}_goes AFTER DELETE ON \"{noun}\" BEGIN
            UPDATE tally SET count = count - 1, bytes = bytes - {old} WHERE noun = '{noun}';
            DELETE FROM tally WHERE noun = '{noun}' AND count = 0;
        END;
        ",
        noun = noun.as_str(),
    )
}

impl Failure {
    /// There is no such row.
    pub(crate) fn not_found(noun: Noun) -> Self {
        let message = of_noun!(noun, N => (N::NOT_THERE)());
        Self::NotFound { noun, message }
    }
}

/// Says how many rows of a noun there are.
pub fn counted(noun: Noun, count: u64) -> Message {
    of_noun!(noun, N => (N::COUNTED)(count))
}

pub(crate) fn find<T: Table>(conn: &Connection, id: &str) -> Result<Option<T>, Failure> {
    let body: Option<String> = conn
        .prepare_cached(&format!(
            "SELECT body FROM {} WHERE id = ?1",
            quoted(T::NOUN.as_str())
        ))?
        .query_row([id], |row| row.get(0))
        .optional()?;
    body.map(|body| parsed(&body)).transpose()
}

pub(crate) fn parsed<T: Kept>(body: &str) -> Result<T, Failure> {
    Ok(serde_json::from_str(body)?)
}

/// All rows that `sql` finds, each an id and a body.
pub(crate) fn all<T: Table>(
    conn: &Connection,
    sql: &str,
    params: impl rusqlite::Params,
) -> Result<Vec<(T::Id, T)>, Failure> {
    let mut statement = conn.prepare_cached(sql)?;
    let mut rows = statement.query(params)?;
    let mut found = Vec::new();
    while let Some(row) = rows.next()? {
        found.push((
            row.get::<_, String>(0)?.parse()?,
            parsed(&row.get::<_, String>(1)?)?,
        ));
    }
    Ok(found)
}

pub(crate) fn is_present(conn: &Connection, noun: Noun, id: &str) -> Result<bool, Failure> {
    Ok(conn
        .prepare_cached(&format!(
            "SELECT 1 FROM {} WHERE id = ?1",
            quoted(noun.as_str())
        ))?
        .exists([id])?)
}

/// Whether this is a bottle that left the shelf.
pub(crate) fn is_ended_bottle(conn: &Connection, noun: Noun, id: &str) -> Result<bool, Failure> {
    Ok(noun == Noun::Bottle
        && conn
            .prepare_cached("SELECT 1 FROM bottle WHERE id = ?1 AND ended")?
            .exists([id])?)
}

/// Hands each row of a noun to `each`, in the order of the ids: its id, what it needs, and why nobody might type it now.
/// There may be more of them than a phone has room for at once.
pub(crate) fn each_resting(
    conn: &Connection,
    noun: Noun,
    mut each: impl FnMut(&str, Vec<RowRef>, Option<Refusal>) -> Result<(), Failure>,
) -> Result<(), Failure> {
    let sql = format!("SELECT id, body FROM {} ORDER BY id", quoted(noun.as_str()));
    let mut statement = conn.prepare(&sql)?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        let (id, body) = (log::text(row, 0)?, log::text(row, 1)?);
        of_noun!(noun, N => {
            let row: N = parsed(body)?;
            each(id, row.needs(), row.check_typed().err())?;
        });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use journal::DeviceId;
    use uuid::Uuid;

    use super::*;
    use crate::Store;

    #[test]
    fn every_table_is_named_and_every_question_of_a_noun_can_be_asked() {
        let store = Store::in_memory(DeviceId(Uuid::from_u128(1))).unwrap();
        let sql = "SELECT name FROM sqlite_schema WHERE type = 'table' AND sql NOT LIKE '%VIRTUAL%'
             AND name NOT IN ('about', 'deed', 'change', 'writer')
             AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'found_%' ORDER BY name";
        let mut there = store.conn.prepare(sql).unwrap();
        let there = there.query_map([], |row| row.get::<_, String>(0)).unwrap();
        let mut named: Vec<&str> = made().collect();
        assert_eq!(named.last(), Some(&"tally"));
        named.sort_unstable();
        assert_eq!(there.collect::<Result<Vec<_>, _>>().unwrap(), named);
        for noun in Noun::ALL {
            for (needed, sql) in of_noun!(noun, N => N::RESTS_ON) {
                let asked = store.conn.prepare(sql).unwrap();
                let told = (asked.column_count(), asked.parameter_count());
                assert_eq!(told, (1, 1), "{noun:?} rests on {needed:?}");
            }
        }
    }
}
