//! Uniting two logs.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::mpsc::sync_channel;
use std::thread;

use chrono::{DateTime, FixedOffset};
use journal::{Deed, HybridTime, Noun};
use message::Message;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::project::{Touched, project, rebuild, settle_revocations};
use crate::sql::quoted;
use crate::{Failure, Foreign, Store, gate, log, migrate, seal, search};

/// What came in.
#[derive(Debug, Clone, PartialEq)]
pub struct Absorbed {
    /// Deeds that were not known here.
    pub deeds: usize,
    /// The nouns of which some row reads differently now.
    pub changed: Vec<Noun>,
    /// How many rows of each noun came, changed or went.
    pub rows: BTreeMap<Noun, RowTally>,
    /// What the first of them say, in their order.
    pub told: Vec<Message>,
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

impl RowTally {
    fn count(&mut self, before: Option<&str>, after: Option<&str>) {
        match (before, after) {
            (None, Some(_)) => self.new += 1,
            (Some(_), None) => self.gone += 1,
            (before, after) if before != after => self.changed += 1,
            _ => {}
        }
    }
}

/// So many deeds of a file are read and checked ahead of what is written.
const READ_AHEAD: usize = 256;
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
        self.absorb_each(deeds.into_iter().map(Ok), &Coming::Ours)
    }

    /// Takes in the log of a journal file from outside, as [`Store::absorb`] does, once every deed
    /// and every row that it touches obeys the rules. `aside` names the file
    /// to which [`Store::snapshot`] wrote this journal before, and is noted with the deeds. Without it what comes is only
    /// looked at, and can be searched once something is looked for.
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
        let (sender, deeds) = sync_channel(READ_AHEAD);
        thread::scope(|scope| {
            scope.spawn(move || {
                for number in missing {
                    let deed = other.deed(number);
                    let is_last = deed.is_err();
                    if sender.send(deed).is_err() || is_last {
                        break;
                    }
                }
            });
            self.absorb_each(deeds.into_iter(), &Coming::Foreign(aside))
        })
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

    /// Of a file's deeds only those may come that are missing here.
    fn absorb_each(
        &mut self,
        deeds: impl Iterator<Item = Result<Deed, Failure>>,
        coming: &Coming<'_>,
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
        let may_be_known = matches!(coming, Coming::Ours);
        for deed in deeds {
            let deed = deed?;
            if !may_be_known || log::number_of(&tx, &deed.id.to_string())?.is_none() {
                latest = latest.max(Some(deed.at));
                arrived.push(log::append(&tx, &deed)?);
                if told.len() < TOLD {
                    told.push(deed.line().told());
                }
            }
        }
        let first = match coming {
            Coming::Ours => None,
            Coming::Foreign(_) => Some(last + 1),
        };
        if let Some(first) = first {
            gate::undo_links(&tx, first)?;
        }
        seal::recount(&tx)?;
        let (changed, rows) = if arrived.len() as i64 > last {
            at_once(&tx, first)?
        } else {
            row_by_row(&tx, &arrived, first)?
        };
        if !matches!(coming, Coming::Foreign(None)) {
            search::follow(&tx)?;
        }
        if let Coming::Foreign(Some(aside)) = coming
            && !arrived.is_empty()
        {
            migrate::tell(&tx, crate::whole::ASIDE, aside)?;
        }
        tx.commit()?;
        Ok(Absorbed {
            deeds: arrived.len(),
            changed,
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
        seal::recount(&tx)?;
        rebuild(&tx, Some(0))?;
        search::follow(&tx)?;
        tx.commit()?;
        Ok(())
    }
}

/// The nouns of which some row reads differently, and how many rows of each noun do.
type Followed = (Vec<Noun>, BTreeMap<Noun, RowTally>);

/// Lets the tables follow what arrived, one row after the other. `first` is the number of the first deed from outside.
fn row_by_row(conn: &Connection, arrived: &[i64], first: Option<i64>) -> Result<Followed, Failure> {
    let mut changed = BTreeSet::new();
    let mut rows: BTreeMap<Noun, RowTally> = BTreeMap::new();
    for (noun, id) in settle_revocations(conn, arrived)? {
        if let Some(first) = first {
            gate::row(conn, noun, &id, first)?;
        }
        let before = body(conn, noun, &id)?;
        let row = log::folded(conn, noun, &id)?;
        // Let go of row by row: a journal of many years may come in at once.
        let mut touched = Touched::default();
        project(conn, noun, &id, &row, &mut touched)?;
        changed.extend(touched.nouns());
        let after = body(conn, noun, &id)?;
        rows.entry(noun)
            .or_default()
            .count(before.as_deref(), after.as_deref());
    }
    rows.retain(|_, tally| *tally != RowTally::default());
    Ok((changed.into_iter().collect(), rows))
}

/// As [`row_by_row`], by making all tables anew: where more arrives than was there, that takes a part of the time.
fn at_once(conn: &Connection, first: Option<i64>) -> Result<Followed, Failure> {
    let mut before: BTreeMap<Noun, BTreeMap<String, blake3::Hash>> = BTreeMap::new();
    for &noun in Noun::ALL {
        each_body(conn, noun, |id, body| {
            let hash = blake3::hash(body.as_bytes());
            before.entry(noun).or_default().insert(id.to_owned(), hash);
        })?;
    }
    rebuild(conn, first)?;
    let mut rows: BTreeMap<Noun, RowTally> = BTreeMap::new();
    for &noun in Noun::ALL {
        let mut there = before.remove(&noun).unwrap_or_default();
        let mut tally = RowTally::default();
        each_body(conn, noun, |id, body| match there.remove(id) {
            None => tally.new += 1,
            Some(before) if before != blake3::hash(body.as_bytes()) => tally.changed += 1,
            Some(_) => {}
        })?;
        tally.gone = there.len() as u64;
        if tally != RowTally::default() {
            rows.insert(noun, tally);
        }
    }
    // What is left of a lot changes with any row that draws from it.
    let changed = Noun::ALL
        .iter()
        .copied()
        .filter(|noun| *noun != Noun::Discard);
    Ok((changed.collect(), rows))
}

fn each_body(
    conn: &Connection,
    noun: Noun,
    mut each: impl FnMut(&str, &str),
) -> Result<(), Failure> {
    let sql = format!("SELECT id, body FROM {}", quoted(noun.as_str()));
    let mut statement = conn.prepare(&sql)?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        each(log::text(row, 0)?, log::text(row, 1)?);
    }
    Ok(())
}

/// Where deeds come from.
enum Coming<'a> {
    /// This app wrote them and this journal held them.
    Ours,
    /// A file brought them; with the name of the file that this journal was written to before, unless it is only looked at.
    Foreign(Option<&'a str>),
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

#[cfg(test)]
mod tests {
    use journal::{Bed, BedId, DeedId};
    use uuid::Uuid;

    use super::*;
    use crate::sample::{bed, now, store};

    /// Three beds; later one more, one of another name, one struck, and one that is as before since that was taken back.
    fn history() -> (Vec<Deed>, Vec<Deed>) {
        let mut store = store();
        let now = now();
        let mut number = 100;
        let mut deed = || {
            number += 1;
            DeedId(Uuid::from_u128(number))
        };
        let id = |number| BedId(Uuid::from_u128(number));
        let done = |it| Ok::<_, Failure>((journal::Line::from(it), ()));
        for number in 1..=3 {
            let bed = bed(&format!("Terrace {number}"));
            let write = |w: &mut crate::Writing<'_>| w.record(&id(number), &bed);
            let written =
                store.perform(deed(), now, |w| write(w).and_then(|()| done("Added a bed")));
            written.unwrap();
        }
        let mut first = Vec::new();
        store
            .each_deed(|deed| {
                first.push(deed);
                Ok(())
            })
            .unwrap();
        let mut perform = |write: &dyn Fn(&mut crate::Writing<'_>) -> Result<(), Failure>| {
            let deed = deed();
            let written =
                store.perform(deed, now, |w| write(w).and_then(|()| done("Changed a bed")));
            written.unwrap();
            deed
        };
        perform(&|w| w.record(&id(4), &bed("Slope")));
        perform(&|w| w.correct(&id(1), &bed("Wall")));
        perform(&|w| w.strike::<Bed>(&id(2)));
        let undone = perform(&|w| w.correct(&id(3), &bed("Ditch")));
        store
            .undo(deed(), now, undone, |line| line.to_string())
            .unwrap();
        let mut all = Vec::new();
        store
            .each_deed(|deed| {
                all.push(deed);
                Ok(())
            })
            .unwrap();
        (first.clone(), all.split_off(first.len()))
    }

    #[test]
    fn both_ways_to_follow_tell_the_same_and_leave_the_same() {
        let (first, later) = history();
        let followed = [at_once, |conn: &Connection, _| {
            let last: i64 = conn.query_row("SELECT max(number) FROM deed", [], |row| row.get(0))?;
            row_by_row(conn, &(4..=last).collect::<Vec<_>>(), None)
        }]
        .map(
            |follow: fn(&Connection, Option<i64>) -> Result<Followed, Failure>| {
                let mut store = store();
                store.absorb(first.clone()).unwrap();
                for deed in &later {
                    log::append(&store.conn, deed).unwrap();
                }
                let (_, rows) = follow(&store.conn, None).unwrap();
                (rows, store.tables().unwrap())
            },
        );
        let expected = RowTally {
            new: 1,
            changed: 1,
            gone: 1,
        };
        assert_eq!(followed[0].0, BTreeMap::from([(Noun::Bed, expected)]));
        assert_eq!(followed[0], followed[1]);
    }
}
