//! From the log to the tables.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use journal::{
    Bed, Bottle, Check, Discard, Dropper, Harvest, Herb, Jar, Noun, Photo, Recipe, Row, RowRef,
    Setting, Shake, Source, Straining, Supply, Tray, Use, Weighing, Wish,
};
use rusqlite::{Connection, params};

use crate::ledger::{self, Holding};
use crate::noun::Table;
use crate::{Failure, log, search, shelf};

/// What a deed has touched so far.
#[derive(Debug, Default)]
pub(crate) struct Touched {
    /// The rows, with what each needs; `None` for a row that no longer exists.
    pub rows: BTreeMap<RowRef, Option<Vec<RowRef>>>,
    /// The lots, with what they held before.
    pub lots: BTreeMap<Source, Option<Holding>>,
}

impl Touched {
    /// The nouns of which some row reads differently now.
    pub(crate) fn nouns(&self) -> impl Iterator<Item = Noun> {
        let rows = self.rows.keys().map(|(noun, _)| *noun);
        let lots = self.lots.keys().map(|source| source.row().0);
        rows.chain(lots).filter(|noun| *noun != Noun::Discard)
    }
}

/// Puts the state of a row into the tables and recounts the lots it touches.
pub(crate) fn project(
    conn: &Connection,
    noun: Noun,
    id: &str,
    row: &Row,
    touched: &mut Touched,
) -> Result<(), Failure> {
    let mut sources: BTreeSet<Source> = ledger::sources_of(conn, noun, id)?.into_iter().collect();
    sources.extend(ledger::fed_by(conn, noun, id)?);
    let mut looked_at: BTreeSet<String> = shelf::looked_at(conn, noun, id)?.into_iter().collect();
    let placed = place(conn, noun, id, row)?;
    sources.extend(ledger::sources_of(conn, noun, id)?);
    sources.extend(ledger::fed_by(conn, noun, id)?);
    sources.extend(Source::of(noun, id));
    for source in sources {
        if let Entry::Vacant(before) = touched.lots.entry(source) {
            before.insert(ledger::noted(conn, source)?);
        }
        ledger::recount(conn, source)?;
        shelf::put(conn, source)?;
    }
    shelf::follow(conn, noun, id)?;
    looked_at.extend(shelf::looked_at(conn, noun, id)?);
    for bottle in looked_at {
        shelf::bottle(conn, &bottle)?;
    }
    touched.rows.insert((noun, id.to_owned()), placed);
    Ok(())
}

fn place(
    conn: &Connection,
    noun: Noun,
    id: &str,
    row: &Row,
) -> Result<Option<Vec<RowRef>>, Failure> {
    match noun {
        Noun::Herb => place_as::<Herb>(conn, id, row),
        Noun::Bed => place_as::<Bed>(conn, id, row),
        Noun::Harvest => place_as::<Harvest>(conn, id, row),
        Noun::Photo => place_as::<Photo>(conn, id, row),
        Noun::Tray => place_as::<Tray>(conn, id, row),
        Noun::Weighing => place_as::<Weighing>(conn, id, row),
        Noun::Supply => place_as::<Supply>(conn, id, row),
        Noun::Jar => place_as::<Jar>(conn, id, row),
        Noun::Discard => place_as::<Discard>(conn, id, row),
        Noun::Setting => place_as::<Setting>(conn, id, row),
        Noun::Shake => place_as::<Shake>(conn, id, row),
        Noun::Straining => place_as::<Straining>(conn, id, row),
        Noun::Bottle => place_as::<Bottle>(conn, id, row),
        Noun::Use => place_as::<Use>(conn, id, row),
        Noun::Check => place_as::<Check>(conn, id, row),
        Noun::Recipe => place_as::<Recipe>(conn, id, row),
        Noun::Dropper => place_as::<Dropper>(conn, id, row),
        Noun::Plan => place_as::<Wish>(conn, id, row),
    }
}

fn place_as<T: Table>(
    conn: &Connection,
    id: &str,
    row: &Row,
) -> Result<Option<Vec<RowRef>>, Failure> {
    T::remove(conn, id)?;
    let noun: Option<T> = row.read()?;
    if let Some(noun) = &noun {
        noun.insert(conn, id, &serde_json::to_string(noun)?)?;
    }
    ledger::put(
        conn,
        T::NOUN,
        id,
        &noun.as_ref().map_or_else(Vec::new, T::draws),
    )?;
    Ok(noun.map(|noun| noun.needs()))
}

/// Whether a deed is taken back by one that counts.
fn is_revoked(conn: &Connection, number: i64) -> Result<bool, Failure> {
    let mut statement = conn.prepare_cached(
        "SELECT later.number FROM deed AS deed JOIN deed AS later ON later.revokes = deed.id
         WHERE deed.number = ?1
           AND (later.milliseconds, later.counter, later.device, later.id)
             > (deed.milliseconds, deed.counter, deed.device, deed.id)",
    )?;
    let revokers: Vec<i64> = statement
        .query_map([number], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    drop(statement);
    for revoker in revokers {
        if !is_revoked(conn, revoker)? {
            return Ok(true);
        }
    }
    Ok(false)
}

/// Settles which deeds count after `deeds` arrived, and returns the rows whose
/// state that may change.
pub(crate) fn settle_revocations(
    conn: &Connection,
    deeds: &[i64],
) -> Result<BTreeSet<RowRef>, Failure> {
    let mut affected = BTreeSet::new();
    for &deed in deeds {
        affected.extend(log::rows_of(conn, deed)?);
        let mut next = Some(deed);
        let mut seen = BTreeSet::new();
        while let Some(number) = next.filter(|number| seen.insert(*number)) {
            let changed = if is_revoked(conn, number)? {
                conn.prepare_cached("INSERT OR IGNORE INTO revoked (deed) VALUES (?1)")?
                    .execute([number])?
            } else {
                conn.prepare_cached("DELETE FROM revoked WHERE deed = ?1")?
                    .execute([number])?
            };
            if changed > 0 {
                affected.extend(log::rows_of(conn, number)?);
            }
            let target: Option<String> = conn
                .prepare_cached("SELECT revokes FROM deed WHERE number = ?1")?
                .query_row([number], |row| row.get(0))?;
            next = match target {
                Some(target) => log::number_of(conn, &target)?,
                None => None,
            };
        }
    }
    Ok(affected)
}

/// Fills empty tables from the log.
pub(crate) fn rebuild(conn: &Connection) -> Result<(), Failure> {
    let mut all = conn.prepare("SELECT number FROM deed WHERE revokes IS NOT NULL")?;
    let undoing: Vec<i64> = all
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    settle_revocations(conn, &undoing)?;
    let mut changes = conn.prepare(
        "SELECT change.noun, change.row, change.act, change.fields
         FROM change JOIN deed ON deed.number = change.deed
         WHERE change.deed NOT IN (SELECT deed FROM revoked)
         ORDER BY change.noun, change.row, milliseconds, counter, device, id, position",
    )?;
    let mut found = changes.query([])?;
    let mut current: Option<(RowRef, Row)> = None;
    while let Some(change) = found.next()? {
        let key = (
            log::noun(&change.get::<_, String>(0)?)?,
            change.get::<_, String>(1)?,
        );
        if current.as_ref().is_none_or(|(present, _)| *present != key) {
            if let Some(((noun, id), row)) = current.take() {
                place(conn, noun, &id, &row)?;
            }
            current = Some((key, Row::default()));
        }
        if let Some((_, row)) = &mut current {
            let act = log::act(&change.get::<_, String>(2)?)?;
            row.apply(act, &log::fields(&change.get::<_, String>(3)?)?);
        }
    }
    if let Some(((noun, id), row)) = current {
        place(conn, noun, &id, &row)?;
    }
    conn.execute(
        "INSERT INTO lot (noun, id, came_in, remains, picked_ms, herb)
         SELECT noun, id, came_in, came_in - coalesce(
             (SELECT sum(amount) FROM draw WHERE source_noun = noun AND source = id), 0),
             picked_ms, herb
         FROM (SELECT 'harvest' AS noun, id, fresh AS came_in, picked_ms, herb FROM harvest
               UNION ALL SELECT 'tray', tray.id, dried, picked_ms, herb
                   FROM tray LEFT JOIN harvest ON harvest.id = tray.harvest
               UNION ALL SELECT 'supply', id, size, NULL, NULL FROM supply
               UNION ALL SELECT 'bottle', id, size, NULL, NULL FROM bottle
               UNION ALL SELECT 'jar', id, coalesce(
                   (SELECT sum(out) FROM straining WHERE straining.jar = jar.id), 0), NULL, NULL
                   FROM jar)",
        params![],
    )?;
    shelf::rebuild(conn)?;
    search::rebuild(conn)
}
