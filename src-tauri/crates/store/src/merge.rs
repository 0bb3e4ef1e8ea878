//! Uniting two logs.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{DateTime, FixedOffset};
use journal::{Deed, HybridTime, Noun};
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::project::{Touched, project, settle_revocations};
use crate::sql::quoted;
use crate::{Failure, Foreign, Store, gate, log, migrate, seal, search};

/// What came in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Absorbed {
    /// Deeds that were not known here.
    pub deeds: usize,
    /// The nouns of which some row reads differently now.
    pub changed: Vec<Noun>,
    /// How many rows of each noun came, changed or went.
    pub rows: BTreeMap<Noun, RowTally>,
    /// What the first of them say, in their order.
    pub told: Vec<String>,
    /// The latest time that one of them claims.
    pub latest: Option<HybridTime>,
}

impl Absorbed {
    /// The time of what came if no clock that is right could have written it by `now`.
    pub fn ahead_of(&self, now: DateTime<FixedOffset>) -> Option<HybridTime> {
        self.latest
            .filter(|at| at.milliseconds >= log::too_late(now))
    }
}

/// How the rows of a noun have changed.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct RowTally {
    /// Rows that were not there before.
    pub new: u64,
    /// Rows that read differently now.
    pub changed: u64,
    /// Rows that are gone.
    pub gone: u64,
}

/// More lines than anyone reads.
const TOLD: usize = 200;

impl Store {
    /// Takes in deeds that are known to be sensible, all or nothing. A deed that is known
    /// already is passed over, so the outcome depends neither on the order nor
    /// on how often a deed comes.
    ///
    /// What two phones did to the same lot apart from each other may not add
    /// up; it is taken in all the same, for it happened, and
    /// [`Store::audit`] names it.
    ///
    /// # Errors
    /// [`Failure::Refused`] when a row cannot be read; a failure to write.
    pub fn absorb(&mut self, deeds: impl IntoIterator<Item = Deed>) -> Result<Absorbed, Failure> {
        self.absorb_each(deeds.into_iter().map(Ok), None, Trust::Ours)
    }

    /// Takes in the log of a journal file from outside, as [`Store::absorb`] does, once every deed
    /// and every row that it touches obeys the rules. `aside` names the file
    /// to which [`Store::snapshot`] wrote this journal before, and is noted with the deeds.
    ///
    /// # Errors
    /// [`Failure::Unfit`] naming the deed and the field; those of [`Store::absorb`], and a failure to
    /// read the file. Nothing is taken in then.
    pub fn absorb_from(
        &mut self,
        other: &Foreign,
        aside: Option<&str>,
    ) -> Result<Absorbed, Failure> {
        let missing = self.missing(other)?;
        let deeds = missing.into_iter().map(|number| other.deed(number));
        self.absorb_each(deeds, aside, Trust::Foreign)
    }

    /// The numbers of the deeds that only `other` has, in the order that counts.
    fn missing(&self, other: &Foreign) -> Result<Vec<i64>, Failure> {
        let mut missing = Vec::new();
        for standing in other.order() {
            if log::number_of(&self.conn, &standing.id.to_string())?.is_none() {
                missing.push(standing.number);
            }
        }
        Ok(missing)
    }

    /// How many deeds another journal lacks, and how many this one lacks.
    ///
    /// # Errors
    /// A failure to read.
    pub fn differs_from(&self, other: &Foreign) -> Result<(u64, u64), Failure> {
        let only_there = self.missing(other)?.len() as u64;
        let here: i64 = self
            .conn
            .query_row("SELECT count(*) FROM deed", [], |row| row.get(0))?;
        let in_both = other.len() as u64 - only_there;
        Ok((here.unsigned_abs().saturating_sub(in_both), only_there))
    }

    fn absorb_each(
        &mut self,
        deeds: impl Iterator<Item = Result<Deed, Failure>>,
        aside: Option<&str>,
        trust: Trust,
    ) -> Result<Absorbed, Failure> {
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let last: i64 = tx.query_row("SELECT coalesce(max(number), 0) FROM deed", [], |row| {
            row.get(0)
        })?;
        let mut arrived = Vec::new();
        let mut told = Vec::new();
        let mut latest = None;
        for deed in deeds {
            let deed = deed?;
            if log::number_of(&tx, &deed.id.to_string())?.is_none() {
                latest = latest.max(Some(deed.at));
                arrived.push(log::append(&tx, &deed)?);
                if told.len() < TOLD {
                    told.push(deed.text);
                }
            }
        }
        if trust == Trust::Foreign {
            gate::undo_links(&tx, last + 1)?;
        }
        seal::recount(&tx)?;
        let mut changed = BTreeSet::new();
        let mut rows: BTreeMap<Noun, RowTally> = BTreeMap::new();
        for (noun, id) in settle_revocations(&tx, &arrived)? {
            if trust == Trust::Foreign {
                gate::row(&tx, noun, &id, last + 1)?;
            }
            let before = body(&tx, noun, &id)?;
            let row = log::folded(&tx, noun, &id)?;
            // Let go of row by row: a journal of many years may come in at once.
            let mut touched = Touched::default();
            project(&tx, noun, &id, &row, &mut touched)?;
            changed.extend(touched.nouns());
            let tally = rows.entry(noun).or_default();
            match (before, body(&tx, noun, &id)?) {
                (None, Some(_)) => tally.new += 1,
                (Some(_), None) => tally.gone += 1,
                (before, after) if before != after => tally.changed += 1,
                _ => {}
            }
        }
        search::follow(&tx)?;
        rows.retain(|_, tally| *tally != RowTally::default());
        if let Some(aside) = aside.filter(|_| !arrived.is_empty()) {
            migrate::tell(&tx, crate::whole::ASIDE, aside)?;
        }
        tx.commit()?;
        Ok(Absorbed {
            deeds: arrived.len(),
            changed: changed.into_iter().collect(),
            rows,
            told,
            latest,
        })
    }

    /// Fills this journal, which must be empty, with the log of a journal file from outside. Faster
    /// than [`Store::absorb_from`], since all tables are made at once.
    ///
    /// # Errors
    /// As [`Store::absorb_from`].
    pub fn fill_from(&mut self, other: &Foreign) -> Result<(), Failure> {
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        for deed in other.deeds() {
            log::append(&tx, &deed?)?;
        }
        gate::undo_links(&tx, 0)?;
        gate::every_row(&tx)?;
        seal::recount(&tx)?;
        crate::project::rebuild(&tx)?;
        tx.commit()?;
        Ok(())
    }
}

/// Where deeds come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Trust {
    /// This app wrote them and this journal held them.
    Ours,
    /// A file brought them.
    Foreign,
}

pub(crate) fn body(conn: &Connection, noun: Noun, id: &str) -> Result<Option<String>, Failure> {
    Ok(conn
        .prepare_cached(&format!(
            "SELECT body FROM {} WHERE id = ?1",
            quoted(noun.as_str())
        ))?
        .query_row([id], |row| row.get(0))
        .optional()?)
}
