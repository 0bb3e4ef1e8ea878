//! Uniting two logs.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{DateTime, FixedOffset};
use journal::{Deed, HybridTime, Noun};
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::project::{Touched, project, settle_revocations};
use crate::{Failure, Store, log, migrate, search};

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
    /// Takes in the deeds of another log, all or nothing. A deed that is known
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
        self.absorb_each(deeds.into_iter().map(Ok), None)
    }

    /// Takes in the deeds of another journal, as [`Store::absorb`] does. `aside` names the file
    /// to which [`Store::snapshot`] wrote this journal before, and is noted with the deeds.
    ///
    /// # Errors
    /// As [`Store::absorb`], and a failure to read the other journal; nothing is taken in then.
    pub fn absorb_from(&mut self, other: &Store, aside: Option<&str>) -> Result<Absorbed, Failure> {
        let missing = self.missing(other)?;
        let deeds = missing
            .into_iter()
            .map(|number| log::deed(&other.conn, number));
        self.absorb_each(deeds, aside)
    }

    /// The numbers of the deeds that only `other` has, in the order that counts.
    fn missing(&self, other: &Store) -> Result<Vec<i64>, Failure> {
        let mut all = other
            .conn
            .prepare("SELECT number, id FROM deed ORDER BY milliseconds, counter, device, id")?;
        let mut rows = all.query([])?;
        let mut missing = Vec::new();
        while let Some(row) = rows.next()? {
            if log::number_of(&self.conn, &row.get::<_, String>(1)?)?.is_none() {
                missing.push(row.get(0)?);
            }
        }
        Ok(missing)
    }

    /// How many deeds another journal lacks, and how many this one lacks.
    ///
    /// # Errors
    /// A failure to read.
    pub fn differs_from(&self, other: &Store) -> Result<(u64, u64), Failure> {
        Ok((
            other.missing(self)?.len() as u64,
            self.missing(other)?.len() as u64,
        ))
    }

    fn absorb_each(
        &mut self,
        deeds: impl Iterator<Item = Result<Deed, Failure>>,
        aside: Option<&str>,
    ) -> Result<Absorbed, Failure> {
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
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
        let mut changed = BTreeSet::new();
        let mut rows: BTreeMap<Noun, RowTally> = BTreeMap::new();
        for (noun, id) in settle_revocations(&tx, &arrived)? {
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
}

pub(crate) fn body(conn: &Connection, noun: Noun, id: &str) -> Result<Option<String>, Failure> {
    Ok(conn
        .prepare_cached(&format!(
            "SELECT body FROM \"{}\" WHERE id = ?1",
            noun.as_str()
        ))?
        .query_row([id], |row| row.get(0))
        .optional()?)
}
