//! Taking a deed back.

use std::collections::BTreeSet;

use chrono::{DateTime, FixedOffset};
use journal::{Deed, DeedId, Line};
use message::{Voice, say};
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::project::{Touched, project, settle_revocations};
use crate::settle::{Occasion, settle};
use crate::{Done, Failure, Store, log, seal, search};

impl Store {
    /// Takes a deed back, and says so in one line, said by `voice`. Taking back the taking back
    /// does it again.
    ///
    /// # Errors
    /// [`Failure::NoSuchDeed`], [`Failure::AlreadyUndone`];
    /// [`Failure::RestedOn`] naming what rests on it;
    /// [`Failure::NotEnough`] when it would be done again but its lots were used since.
    pub fn undo(
        &mut self,
        deed: DeedId,
        now: DateTime<FixedOffset>,
        target: DeedId,
        voice: Voice,
    ) -> Result<(Done, Line), Failure> {
        let device = self.device;
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let found: Option<(Line, Option<String>, bool)> = tx
            .prepare_cached(
                "SELECT text, message, revokes, EXISTS (SELECT 1 FROM revoked WHERE deed = number)
                 FROM deed WHERE id = ?1",
            )?
            .query_row([target.to_string()], |row| {
                Ok((line(row)?, row.get(2)?, row.get(3)?))
            })
            .optional()?;
        let Some((text, revokes, is_undone)) = found else {
            return Err(Failure::NoSuchDeed);
        };
        if is_undone {
            return Err(Failure::AlreadyUndone(text.told()));
        }
        let (origin, depth) = origin(&tx, text, revokes)?;
        let what = origin.told();
        let message = match depth % 2 {
            0 => say!("deed-undone", what = what.clone()),
            _ => say!("deed-redone", what = what.clone()),
        };
        let line = Line::said(&message, voice);
        seal::count(&tx, &device.to_string())?;
        let number = log::append(
            &tx,
            &Deed {
                id: deed,
                at: log::next_time(&tx, now, &[], Some(target))?,
                device,
                text: line.text.clone(),
                message: line.message.clone(),
                revokes: Some(target),
                changes: Vec::new(),
            },
        )?;
        let mut touched = Touched::default();
        for (noun, id) in settle_revocations(&tx, &[number])? {
            let row = log::folded(&tx, noun, &id)?;
            project(&tx, noun, &id, &row, &mut touched)?;
        }
        settle(&tx, &touched, &Occasion::TakenBack(&what))?;
        search::after(&tx, number)?;
        tx.commit()?;
        Ok((Done::of(deed, &touched), line))
    }
}

/// What a deed says, by its columns `text` and `message`.
fn line(row: &rusqlite::Row<'_>) -> rusqlite::Result<Line> {
    Ok(Line {
        text: row.get(0)?,
        message: row.get(1)?,
    })
}

/// What the deed at the end of a chain of taking back says, and how many
/// links lead to it.
fn origin(conn: &Connection, first: Line, revokes: Option<String>) -> Result<(Line, u32), Failure> {
    let (mut words, mut next, mut depth) = (first, revokes, 0);
    let mut seen = BTreeSet::new();
    // A log that was damaged may lead back to where it came from.
    while let Some(id) = next.filter(|id| seen.insert(id.clone())) {
        let found: Option<(Line, Option<String>)> = conn
            .prepare_cached("SELECT text, message, revokes FROM deed WHERE id = ?1")?
            .query_row([id], |row| Ok((line(row)?, row.get(2)?)))
            .optional()?;
        let Some(found) = found else { break };
        (words, next) = found;
        depth += 1;
    }
    Ok((words, depth))
}
