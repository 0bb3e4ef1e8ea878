//! The rules that hold between rows, checked before a deed is committed.

use chrono::DateTime;
use journal::{Amount, Noun, Source, Tray, weighings_fit};
use message::{Message, say};
use rusqlite::Connection;

use crate::ledger;
use crate::name::{amount_of, joined, name_of, resting_on};
use crate::noun::find;
use crate::project::Touched;
use crate::{Failure, log};

/// What is about to be committed.
pub(crate) enum Occasion<'a> {
    /// A new deed.
    Performed,
    /// The taking back of the deed that says this.
    TakenBack(&'a Message),
}

/// Refuses a state in which a row needs another that does not exist, or a lot
/// gives more than came in. A lot that a merge left below nothing may be brought
/// nearer to it, or left where it is: else nothing could put it right.
pub(crate) fn settle(
    conn: &Connection,
    touched: &Touched,
    occasion: &Occasion<'_>,
) -> Result<(), Failure> {
    for ((noun, id), needs) in &touched.rows {
        match needs {
            Some(needs) => {
                for (noun, id) in needs {
                    if !crate::noun::is_present(conn, *noun, id)? {
                        return Err(Failure::not_found(*noun));
                    }
                }
            }
            None => nothing_rests_on(conn, *noun, id, occasion)?,
        }
    }
    for (source, before) in &touched.lots {
        let Some(now) = ledger::noted(conn, *source)? else {
            continue;
        };
        if now.left + source.allowance(now.came_in) < Amount::ZERO {
            let before = before.unwrap_or(ledger::Holding {
                came_in: now.came_in,
                left: now.came_in,
            });
            if now.left < before.left {
                return Err(overdrawn(conn, *source, before, now, occasion)?);
            }
        }
    }
    let trays = touched.rows.iter().filter(|(_, needs)| needs.is_some());
    for ((noun, id), _) in trays {
        match noun {
            Noun::Tray => tray_fits(conn, id)?,
            Noun::Weighing => {
                let tray: String = conn
                    .prepare_cached("SELECT tray FROM weighing WHERE id = ?1")?
                    .query_row([id], |row| row.get(0))?;
                tray_fits(conn, &tray)?;
            }
            _ => {}
        }
    }
    Ok(())
}

fn nothing_rests_on(
    conn: &Connection,
    noun: Noun,
    id: &str,
    occasion: &Occasion<'_>,
) -> Result<(), Failure> {
    let mut names = resting_on(conn, noun, id)?;
    if names.is_empty() && log::folded(conn, noun, id)?.is_orphan() {
        names.push(say!("row-later-correction"));
    }
    if names.is_empty() {
        return Ok(());
    }
    let (count, names) = (names.len(), joined(&names));
    Err(Failure::RestedOn {
        message: match occasion {
            Occasion::Performed => say!("delete-rested", names, count),
            Occasion::TakenBack(what) => {
                say!("undo-rested", deed = (*what).clone(), names, count)
            }
        },
    })
}

fn overdrawn(
    conn: &Connection,
    source: Source,
    before: ledger::Holding,
    now: ledger::Holding,
    occasion: &Occasion<'_>,
) -> Result<Failure, Failure> {
    let (noun, id) = source.row();
    let name = name_of(conn, noun, &id)?;
    let amount = |amount| amount_of(source, amount);
    let drawn = now.came_in - now.left;
    let drawn_before = before.came_in - before.left;
    let shrank = now.came_in < before.came_in;
    if let (Occasion::TakenBack(what), true) = (occasion, shrank) {
        return Ok(Failure::RestedOn {
            message: say!(
                "undo-overdrawn",
                deed = (*what).clone(),
                name,
                has = amount(now.came_in),
                names = joined(&resting_on(conn, noun, &id)?),
                taken = amount(drawn),
            ),
        });
    }
    let message = if shrank {
        say!(
            "given-already",
            name,
            taken = amount(drawn),
            has = amount(now.came_in)
        )
    } else if noun == Noun::Jar && now.came_in == Amount::ZERO {
        say!("not-strained-yet", name)
    } else if noun == Noun::Tray && now.came_in == Amount::ZERO {
        match find::<Tray>(conn, &id)?.is_some_and(|tray| tray.lost.is_some()) {
            true => say!("thrown-away-while-drying", name),
            false => say!("still-drying", name),
        }
    } else {
        say!(
            "not-enough-left",
            name,
            left = amount(before.left),
            wanted = amount(drawn - drawn_before),
        )
    };
    Ok(Failure::NotEnough {
        from: source,
        left: before.left,
        message,
    })
}

fn tray_fits(conn: &Connection, id: &str) -> Result<(), Failure> {
    let Some(tray) = find::<Tray>(conn, id)? else {
        return Ok(());
    };
    let (lightest, earliest): (Option<i64>, Option<i64>) = conn
        .prepare_cached("SELECT min(gross), min(at_ms) FROM weighing WHERE tray = ?1")?
        .query_row([id], |row| Ok((row.get(0)?, row.get(1)?)))?;
    if let (Some(lightest), Some(earliest)) =
        (lightest, earliest.and_then(DateTime::from_timestamp_millis))
    {
        weighings_fit(
            &tray,
            Amount::from_thousandths(lightest).get(),
            earliest.fixed_offset(),
        )?;
    }
    Ok(())
}

#[cfg(test)]
mod tests;
