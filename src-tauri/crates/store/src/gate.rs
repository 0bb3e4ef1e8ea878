//! What arrived from another file obeys the rules of what is typed, looked at before any of it
//! counts: a deed may be sensible by itself and yet make nonsense of a row, here or there.

use journal::{Noun, Refusal, Row};
use message::say;
use rusqlite::Connection;

use crate::{Failure, log};

/// Refuses deeds that take a later one back: none of ours ever did, and they could form a circle.
/// `first` is the number of the first deed that arrived.
pub(crate) fn undo_links(conn: &Connection, first: i64) -> Result<(), Failure> {
    let mut statement = conn.prepare(
        "SELECT later.number FROM deed AS later JOIN deed AS target ON target.id = later.revokes
         WHERE later.number >= ?1
           AND (later.milliseconds, later.counter, later.device, later.id)
            <= (target.milliseconds, target.counter, target.device, target.id)
         LIMIT 1",
    )?;
    let mut rows = statement.query([first])?;
    let Some(row) = rows.next()? else {
        return Ok(());
    };
    let deed = log::deed(conn, row.get(0)?)?;
    let why = Refusal::new("revokes", say!("refused-entry-later"));
    Err(Failure::unfit(&deed, why))
}

/// Goes through everything that was ever written about a row, what was taken back too, since that
/// may count again, and refuses a deed that arrived and leaves a row that makes no sense.
pub(crate) fn row(conn: &Connection, noun: Noun, id: &str, first: i64) -> Result<(), Failure> {
    let mut statement = conn.prepare_cached(
        "SELECT change.act, change.fields, change.deed
         FROM change JOIN deed ON deed.number = change.deed
         WHERE change.noun = ?1 AND change.row = ?2
         ORDER BY milliseconds, counter, device, id, position",
    )?;
    let mut rows = statement.query([noun.as_str(), id])?;
    let mut state = Row::default();
    while let Some(change) = rows.next()? {
        let act = log::act(log::text(change, 0)?)?;
        let fields = log::fields(log::text(change, 1)?)?;
        state.apply(act, &fields);
        left(conn, noun, &state, change.get(2)?, first)?;
    }
    Ok(())
}

/// Refuses the deed of this number if it arrived and leaves a row that makes no sense.
pub(crate) fn left(
    conn: &Connection,
    noun: Noun,
    state: &Row,
    number: i64,
    first: i64,
) -> Result<(), Failure> {
    if number >= first
        && let Err(why) = state.check(noun)
    {
        return Err(Failure::unfit(&log::deed(conn, number)?, why));
    }
    Ok(())
}
