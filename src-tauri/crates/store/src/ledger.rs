//! Ledger entries and what is left, as tables.

use journal::{Amount, Draw, Noun, Source, left};
use rusqlite::{Connection, OptionalExtension, params};

use crate::{Failure, log};

/// What came into a lot and what is left of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Holding {
    pub came_in: Amount,
    pub left: Amount,
}

pub(crate) fn sources_of(
    conn: &Connection,
    noun: Noun,
    owner: &str,
) -> Result<Vec<Source>, Failure> {
    let mut statement = conn.prepare_cached(
        "SELECT DISTINCT source_noun, source FROM draw WHERE owner_noun = ?1 AND owner = ?2",
    )?;
    let mut rows = statement.query([noun.as_str(), owner])?;
    let mut sources = Vec::new();
    while let Some(row) = rows.next()? {
        let noun = log::noun(&row.get::<_, String>(0)?)?;
        sources.extend(Source::of(noun, &row.get::<_, String>(1)?));
    }
    Ok(sources)
}

/// The lot that a row adds to: what is strained off a jar can be drawn from it.
pub(crate) fn fed_by(conn: &Connection, noun: Noun, id: &str) -> Result<Option<Source>, Failure> {
    if noun != Noun::Straining {
        return Ok(None);
    }
    let jar: Option<String> = conn
        .prepare_cached("SELECT jar FROM straining WHERE id = ?1")?
        .query_row([id], |row| row.get(0))
        .optional()?;
    Ok(jar.and_then(|jar| Source::of(Noun::Jar, &jar)))
}

pub(crate) fn remove(conn: &Connection, noun: Noun, owner: &str) -> Result<(), Failure> {
    conn.prepare_cached("DELETE FROM draw WHERE owner_noun = ?1 AND owner = ?2")?
        .execute([noun.as_str(), owner])?;
    Ok(())
}

pub(crate) fn put(
    conn: &Connection,
    noun: Noun,
    owner: &str,
    draws: &[Draw],
) -> Result<(), Failure> {
    let mut insert = conn.prepare_cached(
        "INSERT INTO draw (owner_noun, owner, position, source_noun, source, amount)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?;
    for (position, draw) in draws.iter().enumerate() {
        let (source_noun, source) = draw.from.row();
        insert.execute(params![
            noun.as_str(),
            owner,
            position as i64,
            source_noun.as_str(),
            source,
            draw.amount.thousandths(),
        ])?;
    }
    Ok(())
}

/// What is noted about a lot.
pub(crate) fn noted(conn: &Connection, source: Source) -> Result<Option<Holding>, Failure> {
    let (noun, id) = source.row();
    Ok(conn
        .prepare_cached("SELECT came_in, remains FROM lot WHERE noun = ?1 AND id = ?2")?
        .query_row([noun.as_str(), &id], |row| {
            Ok(Holding {
                came_in: Amount::from_thousandths(row.get(0)?),
                left: Amount::from_thousandths(row.get(1)?),
            })
        })
        .optional()?)
}

/// What a lot holds by its row and the entries that draw from it.
pub(crate) fn counted(conn: &Connection, source: Source) -> Result<Option<Holding>, Failure> {
    Ok(lot(conn, source)?.map(|lot| lot.holding))
}

/// A lot by its row and the entries that draw from it.
struct Counted {
    holding: Holding,
    picked_ms: Option<i64>,
    herb: Option<String>,
}

fn lot(conn: &Connection, source: Source) -> Result<Option<Counted>, Failure> {
    let (noun, id) = source.row();
    let sql = match source {
        Source::Harvest(_) => "SELECT fresh, picked_ms, herb FROM harvest WHERE id = ?1",
        Source::Tray(_) => {
            "SELECT dried, picked_ms, herb
             FROM tray LEFT JOIN harvest ON harvest.id = tray.harvest WHERE tray.id = ?1"
        }
        Source::Supply(_) => "SELECT size, NULL, NULL FROM supply WHERE id = ?1",
        Source::Jar(_) => {
            "SELECT coalesce((SELECT sum(out) FROM straining WHERE jar = ?1), 0), NULL, NULL
             FROM jar WHERE id = ?1"
        }
        Source::Bottle(_) => "SELECT size, NULL, NULL FROM bottle WHERE id = ?1",
    };
    let row: Option<(i64, Option<i64>, Option<String>)> = conn
        .prepare_cached(sql)?
        .query_row([&id], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))
        .optional()?;
    let Some((came_in, picked_ms, herb)) = row else {
        return Ok(None);
    };
    let came_in = Amount::from_thousandths(came_in);
    let drawn: i64 = conn
        .prepare_cached(
            "SELECT coalesce(sum(amount), 0) FROM draw WHERE source_noun = ?1 AND source = ?2",
        )?
        .query_row([noun.as_str(), &id], |row| row.get(0))?;
    Ok(Some(Counted {
        holding: Holding {
            came_in,
            left: left(came_in, [Amount::from_thousandths(drawn)]),
        },
        picked_ms,
        herb,
    }))
}

/// Counts a lot and notes what it holds.
pub(crate) fn recount(conn: &Connection, source: Source) -> Result<(), Failure> {
    let (noun, id) = source.row();
    match lot(conn, source)? {
        Some(lot) => conn
            .prepare_cached(
                "INSERT OR REPLACE INTO lot (noun, id, came_in, remains, picked_ms, herb)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                noun.as_str(),
                id,
                lot.holding.came_in.thousandths(),
                lot.holding.left.thousandths(),
                lot.picked_ms,
                lot.herb,
            ])?,
        None => conn
            .prepare_cached("DELETE FROM lot WHERE noun = ?1 AND id = ?2")?
            .execute([noun.as_str(), &id])?,
    };
    Ok(())
}
