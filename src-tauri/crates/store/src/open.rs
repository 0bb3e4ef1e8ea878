//! Opening a journal.

use std::path::Path;
use std::time::Duration;

use journal::{DeviceId, HybridTime};
use rusqlite::config::DbConfig;
use rusqlite::limits::Limit;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

use crate::{Failure, Reading, log, migrate};

/// A row is at most so many bytes long, which no entry comes near: a file from outside may hold one
/// that would fill the memory.
const LONGEST: i32 = 1024 * 1024;

/// An open journal: one connection, to be used by one thread at a time.
pub struct Store {
    pub(crate) conn: Connection,
    pub(crate) device: DeviceId,
}

impl Store {
    /// Opens the journal at `path`, making it if there is none, bringing it to
    /// the present format, and finishing what a kill left half written.
    ///
    /// `new_device` becomes the name of this device if the file is new;
    /// otherwise the name in the file stays.
    ///
    /// # Errors
    /// [`Failure::NewerFile`], [`Failure::NotAJournal`], [`Failure::Damaged`],
    /// [`Failure::StorageFull`], [`Failure::Busy`]; the file is then as before.
    pub fn open(path: &Path, new_device: DeviceId) -> Result<Self, Failure> {
        Self::with(Connection::open(path)?, new_device)
    }

    /// A copy of a journal at `path` that is thrown away after it was looked at: what is written to it need not outlast a
    /// loss of power, and what fails cannot be taken back.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn scratch(path: &Path, device: DeviceId) -> Result<Self, Failure> {
        let store = Self::open(path, device)?;
        store.conn.pragma_update(None, "journal_mode", "OFF")?;
        store.conn.pragma_update(None, "synchronous", "OFF")?;
        // Twenty years come in and go through the indexes in no order.
        store.conn.pragma_update(None, "cache_size", -65_536)?;
        Ok(store)
    }

    /// A journal that is gone when it is dropped.
    ///
    /// # Errors
    /// [`Failure::Storage`] when there is no memory.
    pub fn in_memory(new_device: DeviceId) -> Result<Self, Failure> {
        Self::with(Connection::open_in_memory()?, new_device)
    }

    /// A journal that holds nothing and takes nothing, to stand in while a file changes places.
    ///
    /// # Errors
    /// [`Failure::Storage`] when there is no memory.
    pub fn closed(device: DeviceId) -> Result<Self, Failure> {
        let store = Self::in_memory(device)?;
        store.conn.pragma_update(None, "query_only", true)?;
        Ok(store)
    }

    fn with(mut conn: Connection, new_device: DeviceId) -> Result<Self, Failure> {
        conn.busy_timeout(Duration::from_secs(5))?;
        conn.set_limit(Limit::SQLITE_LIMIT_LENGTH, LONGEST)?;
        // Refused before anything is written, the change to WAL included.
        migrate::recognise(&conn)?;
        conn.pragma_update(None, "journal_mode", "WAL")?;
        conn.pragma_update(None, "synchronous", "FULL")?;
        conn.pragma_update(None, "foreign_keys", true)?;
        conn.pragma_update(None, "temp_store", "MEMORY")?;
        // 16 MB hold the indexes of many years; the log itself is read by row.
        conn.pragma_update(None, "cache_size", -16_384)?;
        // A large import must not leave its log on the phone for ever.
        conn.pragma_update(None, "journal_size_limit", 16 * 1024 * 1024)?;
        // Without it a kept statement is planned anew whenever other values are bound to it.
        conn.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
        conn.set_prepared_statement_cache_capacity(128);
        let device = match migrate::device_of_current(&conn)? {
            Some(device) => device,
            None => {
                let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
                let device = migrate::bring_up_to_date(&tx, new_device)?;
                tx.commit()?;
                device
            }
        };
        Ok(Self { conn, device })
    }

    /// The name of this device in the journal.
    pub fn device(&self) -> DeviceId {
        self.device
    }

    /// Reads from one state of the journal: all of a deed or nothing of it.
    ///
    /// # Errors
    /// What `body` fails with, or a failure to read.
    pub fn read<T, E: From<Failure>>(
        &self,
        body: impl FnOnce(&Reading<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        let tx = self.conn.unchecked_transaction().map_err(Failure::from)?;
        let read = body(&Reading {
            conn: &tx,
            device: self.device,
        })?;
        // A search may have caught up with the log; where there is no room left to keep that, it
        // does so again.
        let _ = tx.commit();
        Ok(read)
    }

    /// The hybrid time of the latest deed, whoever wrote it.
    ///
    /// # Errors
    /// A failure to read.
    pub fn latest(&self) -> Result<Option<HybridTime>, Failure> {
        log::latest(&self.conn)
    }
}

pub(crate) fn about(conn: &Connection, key: &str) -> Result<Option<String>, Failure> {
    Ok(conn
        .prepare_cached("SELECT value FROM about WHERE key = ?1")?
        .query_row([key], |row| row.get(0))
        .optional()?)
}
