//! Taking a deed back.

use std::collections::BTreeSet;

use chrono::{DateTime, FixedOffset};
use journal::{Deed, DeedId};
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::project::{Touched, project, settle_revocations};
use crate::settle::{Occasion, settle};
use crate::{Done, Failure, Store, log, seal, search};

impl Store {
    /// Takes a deed back, and says so in one line. Taking back the taking back
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
    ) -> Result<(Done, String), Failure> {
        let device = self.device;
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let found: Option<(String, Option<String>, bool)> = tx
            .prepare_cached(
                "SELECT text, revokes, EXISTS (SELECT 1 FROM revoked WHERE deed = number)
                 FROM deed WHERE id = ?1",
            )?
            .query_row([target.to_string()], |row| {
                Ok((row.get(0)?, row.get(1)?, row.get(2)?))
            })
            .optional()?;
        let Some((text, revokes, is_undone)) = found else {
            return Err(Failure::NoSuchDeed);
        };
        if is_undone {
            return Err(Failure::AlreadyUndone(text));
        }
        let (what, depth) = origin(&tx, text, revokes)?;
        let told = if depth % 2 == 0 {
            "Took back"
        } else {
            "Did again"
        };
        let line = format!("{told}: {what}");
        seal::count(&tx, &device.to_string())?;
        let number = log::append(
            &tx,
            &Deed {
                id: deed,
                at: log::next_time(&tx, now, &[], Some(target))?,
                device,
                text: line.clone(),
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

/// The text of the deed at the end of a chain of taking back, and how many
/// links lead to it.
fn origin(
    conn: &Connection,
    text: String,
    revokes: Option<String>,
) -> Result<(String, u32), Failure> {
    let (mut words, mut next, mut depth) = (text, revokes, 0);
    let mut seen = BTreeSet::new();
    // A log that was damaged may lead back to where it came from.
    while let Some(id) = next.filter(|id| seen.insert(id.clone())) {
        let found: Option<(String, Option<String>)> = conn
            .prepare_cached("SELECT text, revokes FROM deed WHERE id = ?1")?
            .query_row([id], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?;
        let Some(found) = found else { break };
        (words, next) = found;
        depth += 1;
    }
    Ok((words, depth))
}
