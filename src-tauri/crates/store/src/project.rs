//! From the log to the tables.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use journal::{Noun, Row, RowRef, Source, of_noun};
use rusqlite::{Connection, params};

use crate::ledger::{self, Holding};
use crate::noun::{self, Table};
use crate::sql::quoted;
use crate::{Failure, gate, log, search, shelf};

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
    remove(conn, noun, id)?;
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

fn remove(conn: &Connection, noun: Noun, id: &str) -> Result<(), Failure> {
    of_noun!(noun, N => N::remove(conn, id))?;
    ledger::remove(conn, noun, id)
}

/// Puts a row into tables that do not hold it.
fn place(
    conn: &Connection,
    noun: Noun,
    id: &str,
    row: &Row,
) -> Result<Option<Vec<RowRef>>, Failure> {
    of_noun!(noun, N => place_as::<N>(conn, id, row))
}

fn place_as<T: Table>(
    conn: &Connection,
    id: &str,
    row: &Row,
) -> Result<Option<Vec<RowRef>>, Failure> {
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

/// A deed's place in the one order, and its number in this file.
type Place = (i64, u32, String, String, i64);

fn place_of(conn: &Connection, number: i64) -> Result<(Place, Option<String>), Failure> {
    Ok(conn
        .prepare_cached(
            "SELECT milliseconds, counter, device, id, revokes FROM deed WHERE number = ?1",
        )?
        .query_row([number], |row| {
            let place = (row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?, number);
            Ok((place, row.get(4)?))
        })?)
}

/// Settles which deeds count after `deeds` arrived, and returns the rows whose
/// state that may change.
///
/// A deed is taken back if a later one that counts itself takes it back. So the deeds that hang
/// together are gone through once, latest first: a chain of any length takes time in proportion and
/// no stack.
pub(crate) fn settle_revocations(
    conn: &Connection,
    deeds: &[i64],
) -> Result<BTreeSet<RowRef>, Failure> {
    let mut affected = BTreeSet::new();
    let mut places = BTreeMap::new();
    for &deed in deeds {
        affected.extend(log::rows_of(conn, deed)?);
        let mut next = Some(deed);
        while let Some(number) = next.filter(|number| !places.contains_key(number)) {
            let (place, revokes) = place_of(conn, number)?;
            places.insert(number, place);
            next = match revokes {
                Some(target) => log::number_of(conn, &target)?,
                None => None,
            };
        }
    }
    let mut latest_first: Vec<Place> = places.into_values().collect();
    latest_first.sort_unstable_by(|one, other| other.cmp(one));
    for (milliseconds, counter, device, id, number) in latest_first {
        let is_revoked = conn
            .prepare_cached(
                "SELECT 1 FROM deed AS later
                 WHERE later.revokes = ?4
                   AND (later.milliseconds, later.counter, later.device, later.id) > (?1, ?2, ?3, ?4)
                   AND NOT EXISTS (SELECT 1 FROM revoked WHERE revoked.deed = later.number)",
            )?
            .exists(params![milliseconds, counter, device, id])?;
        let sql = if is_revoked {
            "INSERT OR IGNORE INTO revoked (deed) VALUES (?1)"
        } else {
            "DELETE FROM revoked WHERE deed = ?1"
        };
        if conn.prepare_cached(sql)?.execute([number])? > 0 {
            affected.extend(log::rows_of(conn, number)?);
        }
    }
    Ok(affected)
}

/// Empties the tables and fills them from the log; the search follows when it is asked to. With `first`, the number of the
/// first deed that came from another file, a deed from there on that leaves a row that makes no sense is refused.
pub(crate) fn rebuild(conn: &Connection, first: Option<i64>) -> Result<(), Failure> {
    for table in noun::made() {
        conn.execute(&format!("DELETE FROM {}", quoted(table)), [])?;
    }
    let mut all = conn.prepare("SELECT number FROM deed WHERE revokes IS NOT NULL")?;
    let undoing: Vec<i64> = all
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    settle_revocations(conn, &undoing)?;
    let mut changes = conn.prepare(
        "SELECT change.noun, change.row, change.act, change.fields, change.deed,
                change.deed IN (SELECT deed FROM revoked)
         FROM change JOIN deed ON deed.number = change.deed
         ORDER BY change.noun, change.row, milliseconds, counter, device, id, position",
    )?;
    let mut found = changes.query([])?;
    let mut current: Option<Folding> = None;
    while let Some(change) = found.next()? {
        let (noun, id) = (log::noun(log::text(change, 0)?)?, log::text(change, 1)?);
        if current
            .as_ref()
            .is_none_or(|row| (row.noun, row.id.as_str()) != (noun, id))
        {
            let begun = Folding {
                noun,
                id: id.to_owned(),
                counts: Row::default(),
                written: None,
            };
            if let Some(done) = current.replace(begun) {
                place(conn, done.noun, &done.id, &done.counts)?;
            }
        }
        let Some(row) = &mut current else { continue };
        let act = log::act(log::text(change, 2)?)?;
        let fields = log::fields(log::text(change, 3)?)?;
        let is_revoked = change.get(5)?;
        if is_revoked {
            row.written.get_or_insert_with(|| row.counts.clone());
        } else {
            row.counts.apply(act, &fields);
        }
        if let Some(written) = &mut row.written {
            written.apply(act, &fields);
        }
        if let Some(first) = first {
            let written = row.written.as_ref().unwrap_or(&row.counts);
            gate::left(conn, noun, written, change.get(4)?, first)?;
        }
    }
    if let Some(done) = current {
        place(conn, done.noun, &done.id, &done.counts)?;
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
    search::empty(conn)
}

/// A row while its changes are gone through.
struct Folding {
    noun: Noun,
    id: String,
    /// By what counts.
    counts: Row,
    /// By everything that was ever written, what was taken back too, since that may count again; nothing while that is the
    /// same.
    written: Option<Row>,
}
