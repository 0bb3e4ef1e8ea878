//! What the maker calls a row, for sentences.

use std::collections::BTreeMap;

use journal::{Act, Amount, Fields, LotCode, Noun, Row, Source, of_noun};
use message::{Argument, Message, Unit, say};
use rusqlite::Connection;

use crate::noun::{Table, find};
use crate::{Failure, log};

/// A row as the maker knew it last: a name is asked for while the row is being taken back too.
pub(crate) fn known<T: Table>(conn: &Connection, id: &str) -> Result<Option<T>, Failure> {
    if let Some(there) = find::<T>(conn, id)? {
        return Ok(Some(there));
    }
    let mut statement = conn.prepare_cached(
        "SELECT change.act, change.fields FROM change JOIN deed ON deed.number = change.deed
         WHERE change.noun = ?1 AND change.row = ?2
         ORDER BY milliseconds, counter, device, id, position",
    )?;
    let mut rows = statement.query([T::NOUN.as_str(), id])?;
    let mut last = Row::default();
    while let Some(row) = rows.next()? {
        if row.get::<_, String>(0)? != Act::Strike.as_str() {
            let fields: Fields = serde_json::from_str(&row.get::<_, String>(1)?)?;
            last.apply(Act::Record, &fields);
        }
    }
    Ok(last.read().ok().flatten())
}

/// The name of a row, to stand within a sentence.
pub(crate) fn name_of(conn: &Connection, noun: Noun, id: &str) -> Result<Message, Failure> {
    of_noun!(noun, N => match known::<N>(conn, id)? {
        Some(row) => row.name(conn),
        None => Ok(say!("row-other")),
    })
}

/// What goes by its name alone.
pub(crate) fn named(name: &str) -> Message {
    say!("row-named", name = Argument::own(name))
}

/// A code within a sentence.
pub(crate) fn code(code: &LotCode) -> Argument {
    Argument::own(code.to_string())
}

/// The names of the rows that need a row or draw from it.
pub(crate) fn resting_on(conn: &Connection, noun: Noun, id: &str) -> Result<Vec<Message>, Failure> {
    let mut names = BTreeMap::new();
    let mut put = |of: Noun, resting: &str| {
        let name = name_of(conn, of, resting)?;
        names.insert(name.to_string(), name);
        Ok::<_, Failure>(())
    };
    let mut draws = conn.prepare_cached(
        "SELECT owner_noun, owner FROM draw WHERE source_noun = ?1 AND source = ?2",
    )?;
    let mut drawn = draws.query([noun.as_str(), id])?;
    while let Some(row) = drawn.next()? {
        put(
            log::noun(&row.get::<_, String>(0)?)?,
            &row.get::<_, String>(1)?,
        )?;
    }
    for other in Noun::ALL {
        let needs = of_noun!(other, N => N::RESTS_ON).iter();
        for (_, sql) in needs.filter(|(needed, _)| *needed == noun) {
            let mut found = conn.prepare_cached(sql)?;
            let mut rows = found.query([id])?;
            while let Some(row) = rows.next()? {
                put(*other, &row.get::<_, String>(0)?)?;
            }
        }
    }
    Ok(names.into_values().collect())
}

/// A few names as one phrase.
pub(crate) fn joined(names: &[Message]) -> Argument {
    match names {
        [one, two, rest @ ..] if !rest.is_empty() => Argument::from(say!(
            "rows-and-more",
            one = one.clone(),
            two = two.clone(),
            more = rest.len(),
        )),
        few => Argument::all_of(few.iter().cloned().map(Argument::from)),
    }
}

/// So much of what a source holds.
pub(crate) fn amount_of(source: Source, amount: Amount) -> Argument {
    let unit = match source.unit() {
        journal::Unit::Gram => Unit::Gram,
        journal::Unit::Millilitre => Unit::Millilitre,
    };
    Argument::exact(amount.get(), unit)
}
