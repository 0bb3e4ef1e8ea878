//! Reading from one state of the journal.

use journal::{DeviceId, LotCode, Noun, Setting};
use rusqlite::{Connection, OptionalExtension};
use uuid::Uuid;

use crate::noun::{Table, find};
use crate::whole::tally;
use crate::{Failure, log};

/// One state of the journal.
pub struct Reading<'c> {
    pub(crate) conn: &'c Connection,
    pub(crate) device: DeviceId,
}

/// Some rows of a longer list.
#[derive(Debug, Clone, PartialEq)]
pub struct Page<T> {
    /// The rows.
    pub rows: Vec<T>,
    /// Whether more follow.
    pub more: bool,
}

impl<T> Page<T> {
    /// From one row more than was asked for.
    pub(crate) fn of(mut rows: Vec<T>, limit: usize) -> Self {
        let more = rows.len() > limit;
        rows.truncate(limit);
        Self { rows, more }
    }
}

/// How much there is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Counts {
    /// Harvests.
    pub harvests: u64,
    /// Trays, drying and taken down.
    pub trays: u64,
    /// Jars.
    pub jars: u64,
    /// Photos.
    pub photos: u64,
}

impl Reading<'_> {
    /// The row with this id, if it exists.
    ///
    /// # Errors
    /// A failure to read.
    pub fn find<N: Table>(&self, id: &N::Id) -> Result<Option<N>, Failure> {
        find(self.conn, &id.to_string())
    }

    /// The row with this id.
    ///
    /// # Errors
    /// [`Failure::NotFound`] if it does not exist.
    pub fn get<N: Table>(&self, id: &N::Id) -> Result<N, Failure> {
        self.find(id)?.ok_or_else(|| Failure::not_found(N::NOUN))
    }

    /// A code that no lot bears yet, as the id of the new lot suggests it.
    ///
    /// # Errors
    /// A failure to read.
    pub fn free_code(&self, id: Uuid) -> Result<LotCode, Failure> {
        let mut attempt = 0;
        loop {
            let code = LotCode::suggested(id, attempt);
            if self.coded(&code)?.is_none() {
                return Ok(code);
            }
            attempt += 1;
        }
    }

    /// The lot that bears a code, and its id as text.
    ///
    /// # Errors
    /// A failure to read.
    pub fn coded(&self, code: &LotCode) -> Result<Option<(Noun, String)>, Failure> {
        let found: Option<(String, String)> = self
            .conn
            .prepare_cached(
                "SELECT 'harvest', id FROM harvest WHERE code = ?1
                 UNION ALL SELECT 'tray', id FROM tray WHERE code = ?1
                 UNION ALL SELECT 'jar', id FROM jar WHERE code = ?1
                 UNION ALL SELECT 'bottle', id FROM bottle WHERE code = ?1 LIMIT 1",
            )?
            .query_row([code.as_str()], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?;
        found
            .map(|(noun, id)| Ok((log::noun(&noun)?, id)))
            .transpose()
    }

    /// Names this state of the journal: as long as it is the same, nothing was written.
    ///
    /// # Errors
    /// A failure to read.
    pub fn state(&self) -> Result<String, Failure> {
        let latest: Option<(i64, String)> = self
            .conn
            .prepare_cached("SELECT number, id FROM deed ORDER BY number DESC LIMIT 1")?
            .query_row([], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?;
        Ok(latest.map_or_else(String::new, |(number, id)| format!("{number} {id}")))
    }

    /// How this device shows the journal.
    ///
    /// # Errors
    /// A failure to read.
    pub fn setting(&self) -> Result<Setting, Failure> {
        Ok(self.find(&self.device)?.unwrap_or_default())
    }

    /// The name of this device in the journal.
    pub fn device(&self) -> DeviceId {
        self.device
    }

    /// How much there is.
    ///
    /// # Errors
    /// A failure to read.
    pub fn counts(&self) -> Result<Counts, Failure> {
        let count = |noun: Noun| tally(self.conn, noun).map(|(count, _)| count);
        Ok(Counts {
            harvests: count(Noun::Harvest)?,
            trays: count(Noun::Tray)?,
            jars: count(Noun::Jar)?,
            photos: count(Noun::Photo)?,
        })
    }
}
