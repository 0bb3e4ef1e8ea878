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
pub(crate) mod recipe;
pub(crate) mod setting;
pub(crate) mod shake;
pub(crate) mod shelf;
pub(crate) mod straining;
pub(crate) mod supply;
pub(crate) mod tray;
pub(crate) mod usage;
pub(crate) mod weighing;

use journal::{Kept, Noun, Refusal, RowRef, of_noun};
use rusqlite::{Connection, OptionalExtension};

use crate::Failure;
use crate::sql::quoted;

/// The triggers that keep the tally of one noun, given what a row adds to its bytes.
macro_rules! tallied {
    ($($noun:literal $new:literal $old:literal,)*) => { concat!($(
        "CREATE TRIGGER ", $noun, "_comes AFTER INSERT ON \"", $noun, "\" BEGIN
            INSERT INTO tally VALUES ('", $noun, "', 1, ", $new, ")
            ON CONFLICT (noun) DO UPDATE
            SET count = count + excluded.count, bytes = bytes + excluded.bytes;
        END;
        CREATE TRIGGER ", $noun, "_goes AFTER DELETE ON \"", $noun, "\" BEGIN
            UPDATE tally SET count = count - 1, bytes = bytes - ", $old, "
            WHERE noun = '", $noun, "';
            DELETE FROM tally WHERE noun = '", $noun, "' AND count = 0;
        END;
        ",
    )*) };
}

/// The tables that are made from the log.
pub(crate) const TABLES: &[&str] = &[
    include_str!("../ledger.sql"),
    include_str!("herb.sql"),
    include_str!("bed.sql"),
    include_str!("harvest.sql"),
    include_str!("photo.sql"),
    include_str!("tray.sql"),
    include_str!("weighing.sql"),
    include_str!("supply.sql"),
    include_str!("jar.sql"),
    include_str!("discard.sql"),
    include_str!("setting.sql"),
    include_str!("shake.sql"),
    include_str!("straining.sql"),
    include_str!("bottle.sql"),
    include_str!("usage.sql"),
    include_str!("look.sql"),
    include_str!("recipe.sql"),
    include_str!("dropper.sql"),
    include_str!("wish.sql"),
    include_str!("shelf.sql"),
    include_str!("../words.sql"),
    // Last, because it watches the others.
    include_str!("tally.sql"),
    tallied! {
        "herb" "0" "0",
        "bed" "0" "0",
        "harvest" "0" "0",
        "tray" "0" "0",
        "weighing" "0" "0",
        "supply" "0" "0",
        "jar" "0" "0",
        "discard" "0" "0",
        "setting" "0" "0",
        "shake" "0" "0",
        "straining" "0" "0",
        "bottle" "0" "0",
        "use" "0" "0",
        "check" "0" "0",
        "recipe" "0" "0",
        "dropper" "0" "0",
        "plan" "0" "0",
        "photo" "NEW.body ->> '$.bytes'" "(OLD.body ->> '$.bytes')",
    },
];

/// Their names, the tally after what it counts.
pub(crate) const MADE: &[&str] = &[
    "revoked",
    "draw",
    "lot",
    "herb",
    "bed",
    "harvest",
    "harvest_photo",
    "photo",
    "tray",
    "weighing",
    "supply",
    "jar",
    "jar_herb",
    "discard",
    "setting",
    "shake",
    "straining",
    "standing",
    "bottle",
    "use",
    "check",
    "recipe",
    "recipe_herb",
    "dropper",
    "plan",
    "batch",
    "shelf",
    "page",
    "tally",
];

/// A noun that has a table of the name of the noun. Outside this crate it is
/// only a bound: every noun of the journal has one.
pub trait Table: Kept {
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

/// What a row is called, what it needs, and what nobody may type now that it holds.
pub(crate) type Resting = (String, Vec<RowRef>, Option<Refusal>);

/// What each row of a noun needs, and whether it might be typed now.
pub(crate) fn needs_of_all(conn: &Connection, noun: Noun) -> Result<Vec<Resting>, Failure> {
    let sql = format!("SELECT id, body FROM {} ORDER BY id", quoted(noun.as_str()));
    of_noun!(noun, N => {
        let rows = all::<N>(conn, &sql, [])?;
        Ok(rows
            .into_iter()
            .map(|(id, row)| (id.to_string(), row.needs(), row.check_typed().err()))
            .collect())
    })
}
