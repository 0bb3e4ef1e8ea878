//! The tables that put side by side what several rows say: what stands of a bottle, and what a
//! finished drying run tells of the next.

use journal::{Noun, Outcome, Source};
use rusqlite::{Connection, params};

use crate::noun::bottle::{ROW, bottle_row};
use crate::{Failure, ledger};

/// Notes anew what stands of a bottle, or what a tray tells.
pub(crate) fn put(conn: &Connection, source: Source) -> Result<(), Failure> {
    let (_, id) = source.row();
    match source {
        Source::Tray(_) => batch(conn, &id),
        Source::Bottle(_) => bottle(conn, &id),
        Source::Harvest(_) | Source::Supply(_) | Source::Jar(_) => Ok(()),
    }
}

/// Notes anew what shows a row without drawing from it: the trays of a harvest and what came of
/// them tell its day and herb.
pub(crate) fn follow(conn: &Connection, noun: Noun, id: &str) -> Result<(), Failure> {
    if noun != Noun::Harvest {
        return Ok(());
    }
    let mut trays = conn.prepare_cached("SELECT id FROM tray WHERE harvest = ?1")?;
    let trays: Vec<String> = trays
        .query_map([id], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    for source in trays.iter().filter_map(|id| Source::of(Noun::Tray, id)) {
        ledger::recount(conn, source)?;
        put(conn, source)?;
    }
    Ok(())
}

/// The bottles of which something was found out: the one that was looked at, and all that hold the
/// liquid of which the pH was read.
pub(crate) fn looked_at(conn: &Connection, noun: Noun, id: &str) -> Result<Vec<String>, Failure> {
    let sql = match noun {
        Noun::Check => {
            "SELECT \"check\".bottle FROM \"check\" WHERE id = ?1
             UNION SELECT mate.id FROM \"check\" CROSS JOIN bottle ON bottle.id = \"check\".bottle
             CROSS JOIN bottle AS mate ON mate.jar = bottle.jar
             WHERE \"check\".id = ?1 AND \"check\".reads_ph"
        }
        Noun::Straining => {
            "SELECT bottle.id FROM straining CROSS JOIN bottle ON bottle.jar = straining.jar
             WHERE straining.id = ?1 AND straining.reads_ph"
        }
        _ => return Ok(Vec::new()),
    };
    let mut found = conn.prepare_cached(sql)?;
    let found = found.query_map([id], |row| row.get(0))?;
    Ok(found.collect::<Result<_, _>>()?)
}

const BATCH: &str = "INSERT INTO batch
    SELECT tray.id, herb, part, picked_ms, tray.dried, tray.fresh_g, tray.sample_fresh_g,
           tray.sample_dry_g
    FROM tray CROSS JOIN harvest ON harvest.id = tray.harvest
    WHERE tray.dried > 0 AND harvest.surface = 'dry' AND NOT tray.cooked";

fn batch(conn: &Connection, tray: &str) -> Result<(), Failure> {
    conn.prepare_cached("DELETE FROM batch WHERE tray = ?1")?
        .execute([tray])?;
    conn.prepare_cached(&format!("{BATCH} AND tray.id = ?1"))?
        .execute([tray])?;
    Ok(())
}

/// Notes anew what stands of a bottle.
pub(crate) fn bottle(conn: &Connection, id: &str) -> Result<(), Failure> {
    conn.prepare_cached("DELETE FROM shelf WHERE bottle = ?1")?
        .execute([id])?;
    let mut statement =
        conn.prepare_cached(&format!("{ROW} WHERE bottle.id = ?1 AND NOT bottle.ended"))?;
    let mut rows = statement.query([id])?;
    let Some(row) = rows.next()? else {
        return Ok(());
    };
    let remains: i64 = row.get(3)?;
    let row = bottle_row(conn, row)?;
    let last = row.last_check.as_ref();
    conn.prepare_cached(
        "INSERT INTO shelf (bottle, jar, code, remains, is_open, is_bad, only_the_date,
                            best_before, next_check, not_acid_on)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)",
    )?
    .execute(params![
        id,
        row.bottle.jar.to_string(),
        row.bottle.code.as_str(),
        remains.max(0),
        row.is_open,
        last.is_some_and(|check| check.outcome == Outcome::Bad),
        row.bottle.only_the_date_counts,
        row.last_day().map(|day| day.to_string()),
        row.bottle.next_check(last).map(|day| day.to_string()),
        row.ph
            .filter(|_| row.is_not_acid())
            .map(|read| read.at.date_naive().to_string()),
    ])?;
    Ok(())
}

/// Fills both tables when they are empty.
pub(crate) fn rebuild(conn: &Connection) -> Result<(), Failure> {
    conn.execute(BATCH, [])?;
    let mut standing = conn.prepare("SELECT id FROM bottle WHERE NOT ended")?;
    let standing: Vec<String> = standing
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    standing.iter().try_for_each(|id| bottle(conn, id))
}
