//! The journal as a whole: copied while it is in use, put in the place of
//! another, counted, listed.

use std::path::Path;
use std::thread::sleep;
use std::time::{Duration, Instant};

use journal::{HybridTime, Noun};
use rusqlite::backup::{Backup, StepResult};
use rusqlite::{Connection, OpenFlags, OptionalExtension};

use crate::open::about;
use crate::sql::quoted;
use crate::{Failure, Store, log, migrate, noun};

/// Names the file that holds what this journal was before it was last replaced or merged. It is
/// written with what it belongs to, so it is never about another state than the one it is in.
pub(crate) const ASIDE: &str = "aside";
/// What belongs to the device and not to what is written down.
const OF_DEVICE: &[&str] = &["device", "backup"];
/// 4 MB at a time.
const PAGES: i32 = 1024;
const PATIENCE: Duration = Duration::from_secs(5);

/// How much a journal holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Contents {
    /// How many rows each noun has.
    pub rows: Vec<(Noun, u64)>,
    /// The size of all originals that the photos speak of.
    pub photo_bytes: u64,
    /// How many deeds there are.
    pub deeds: u64,
    /// When the latest was written, whoever wrote it.
    pub latest: Option<HybridTime>,
}

impl Contents {
    /// How many rows a noun has.
    pub fn of(&self, noun: Noun) -> u64 {
        let found = self.rows.iter().find(|(other, _)| *other == noun);
        found.map_or(0, |(_, count)| *count)
    }
}

impl Store {
    /// Writes the journal as it stands to a new file, while others go on reading and writing.
    /// The copy is one plain file with no log beside it. `tick` hears of the pages done and
    /// of all pages, and stops the copying by an error.
    ///
    /// # Errors
    /// What `tick` fails with, [`Failure::StorageFull`], or a failure to read or write; what was
    /// written is then no journal, and is the caller's to remove.
    pub fn snapshot<E: From<Failure>>(
        &self,
        to: &Path,
        mut tick: impl FnMut(u64, u64) -> Result<(), E>,
    ) -> Result<Contents, E> {
        // One reading holds the state still, so that the copy is never begun anew by a write.
        let still = self.conn.unchecked_transaction().map_err(Failure::from)?;
        let contents = contents(&still)?;
        let mut copy = Connection::open(to).map_err(Failure::from)?;
        copy_over(&still, &mut copy, PAGES, &mut tick)?;
        copy.pragma_update(None, "journal_mode", "DELETE")
            .map_err(Failure::from)?;
        copy.close().map_err(|(_, error)| Failure::from(error))?;
        Ok(contents)
    }

    /// Puts the journal in the file `with` in the place of this one, in one transaction: a kill
    /// leaves this one or that one. This device keeps its name. The file `with` is brought up to
    /// date and changed; `aside` names the file to which this journal was written before.
    ///
    /// # Errors
    /// Those of [`Store::open`] for `with`; [`Failure::StorageFull`], [`Failure::Busy`]; this
    /// journal is then as before.
    pub fn replace(&mut self, with: &Path, aside: &str) -> Result<(), Failure> {
        let other = Store::open(with, self.device)?;
        for key in OF_DEVICE {
            match about(&self.conn, key)? {
                Some(value) => migrate::tell(&other.conn, key, &value)?,
                None => {
                    other
                        .conn
                        .execute("DELETE FROM about WHERE key = ?1", [key])?;
                }
            }
        }
        migrate::tell(&other.conn, ASIDE, aside)?;
        copy_over(&other.conn, &mut self.conn, -1, &mut |_, _| {
            Ok::<_, Failure>(())
        })?;
        self.conn.flush_prepared_statement_cache();
        Ok(())
    }

    /// The name of the file that holds what this journal was before it was last replaced or merged.
    ///
    /// # Errors
    /// A failure to read.
    pub fn aside(&self) -> Result<Option<String>, Failure> {
        about(&self.conn, ASIDE)
    }

    /// What this device noted under a key of its own, no deed.
    ///
    /// # Errors
    /// A failure to read.
    pub fn noted(&self, key: &str) -> Result<Option<String>, Failure> {
        about(&self.conn, key)
    }

    /// Notes something that belongs to this file and is no deed.
    ///
    /// # Errors
    /// A failure to write.
    pub fn note(&mut self, key: &str, value: &str) -> Result<(), Failure> {
        migrate::tell(&self.conn, key, value)
    }

    /// How much there is of what.
    ///
    /// # Errors
    /// A failure to read.
    pub fn contents(&self) -> Result<Contents, Failure> {
        contents(&self.conn)
    }

    /// Lets whoever began a long piece of work stop it: `stop` is asked now and then.
    ///
    /// # Errors
    /// [`Failure::Storage`] when it cannot be asked.
    pub fn stopped_by(
        &mut self,
        stop: impl FnMut() -> bool + Send + 'static,
    ) -> Result<(), Failure> {
        Ok(self.conn.progress_handler(10_000, Some(stop))?)
    }

    /// From now on nothing stops it.
    ///
    /// # Errors
    /// [`Failure::Storage`] when that cannot be.
    pub fn unstopped(&mut self) -> Result<(), Failure> {
        Ok(self.conn.progress_handler(0, None::<fn() -> bool>)?)
    }

    /// Hands every row of a noun to `each`, in the order of the ids: the id, and the noun as JSON.
    ///
    /// # Errors
    /// What `each` fails with, or a failure to read.
    pub fn each_row<E: From<Failure>>(
        &self,
        noun: Noun,
        mut each: impl FnMut(&str, &str) -> Result<(), E>,
    ) -> Result<(), E> {
        let sql = format!("SELECT id, body FROM {} ORDER BY id", quoted(noun.as_str()));
        let mut statement = self.conn.prepare(&sql).map_err(Failure::from)?;
        let mut rows = statement.query([]).map_err(Failure::from)?;
        while let Some(row) = rows.next().map_err(Failure::from)? {
            let id: String = row.get(0).map_err(Failure::from)?;
            let body: String = row.get(1).map_err(Failure::from)?;
            each(&id, &body)?;
        }
        Ok(())
    }

    /// Hands the id of every row of a noun to `each`, in order.
    ///
    /// # Errors
    /// What `each` fails with, or a failure to read.
    pub fn each_id<E: From<Failure>>(
        &self,
        noun: Noun,
        mut each: impl FnMut(&str) -> Result<(), E>,
    ) -> Result<(), E> {
        let sql = format!("SELECT id FROM {} ORDER BY id", quoted(noun.as_str()));
        let mut statement = self.conn.prepare(&sql).map_err(Failure::from)?;
        let mut rows = statement.query([]).map_err(Failure::from)?;
        while let Some(row) = rows.next().map_err(Failure::from)? {
            let id = row.get_ref(0).map_err(Failure::from)?;
            each(
                id.as_str()
                    .map_err(|why| Failure::Damaged(why.to_string()))?,
            )?;
        }
        Ok(())
    }

    /// Whether the file is damaged where it can be seen without reading all of it: the log can
    /// be counted and the tables that are made from it are there.
    ///
    /// # Errors
    /// [`Failure::Damaged`] or a failure to read.
    pub fn glance(&self) -> Result<(), Failure> {
        for table in noun::made() {
            let sql = format!("SELECT EXISTS (SELECT 1 FROM {})", quoted(table));
            self.conn.query_row(&sql, [], |_| Ok(()))?;
        }
        log::latest(&self.conn).map(|_| ())
    }
}

/// How many rows of a noun there are, and the bytes that they speak of.
pub(crate) fn tally(conn: &Connection, noun: Noun) -> Result<(u64, u64), Failure> {
    let unsigned = |row: &rusqlite::Row<'_>, place| row.get::<_, i64>(place).map(i64::unsigned_abs);
    let found = conn
        .prepare_cached("SELECT count, bytes FROM tally WHERE noun = ?1")?
        .query_row([noun.as_str()], |row| {
            Ok((unsigned(row, 0)?, unsigned(row, 1)?))
        })
        .optional()?;
    Ok(found.unwrap_or_default())
}

fn contents(conn: &Connection) -> Result<Contents, Failure> {
    let mut photo_bytes = 0;
    let mut counted = |noun: &Noun| -> Result<(Noun, u64), Failure> {
        let (count, bytes) = tally(conn, *noun)?;
        photo_bytes += bytes;
        Ok((*noun, count))
    };
    Ok(Contents {
        rows: Noun::ALL
            .iter()
            .map(&mut counted)
            .collect::<Result<_, _>>()?,
        photo_bytes,
        // Deeds are numbered from 1 without a gap, because none is ever erased.
        deeds: conn.query_row("SELECT coalesce(max(number), 0) FROM deed", [], |row| {
            row.get::<_, i64>(0).map(i64::unsigned_abs)
        })?,
        latest: log::latest(conn)?,
    })
}

fn copy_over<E: From<Failure>>(
    from: &Connection,
    to: &mut Connection,
    pages: i32,
    tick: &mut impl FnMut(u64, u64) -> Result<(), E>,
) -> Result<(), E> {
    let backup = Backup::new(from, to).map_err(Failure::from)?;
    let begun = Instant::now();
    loop {
        let step = backup.step(pages).map_err(Failure::from)?;
        let progress = backup.progress();
        let all = u64::try_from(progress.pagecount).unwrap_or(0);
        tick(
            all - u64::try_from(progress.remaining).unwrap_or(0).min(all),
            all,
        )?;
        match step {
            StepResult::Done => return Ok(()),
            StepResult::Busy | StepResult::Locked if begun.elapsed() > PATIENCE => {
                return Err(Failure::Busy.into());
            }
            StepResult::Busy | StepResult::Locked => sleep(Duration::from_millis(10)),
            _ => {}
        }
    }
}

/// A connection that only reads, for a file that may be damaged.
pub(crate) fn only_to_read(path: &Path) -> Result<Connection, Failure> {
    Ok(Connection::open_with_flags(
        path,
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
    )?)
}

#[cfg(test)]
mod tests;
