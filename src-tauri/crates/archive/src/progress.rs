//! How far a long job has got, and whether it shall stop.

use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};

use crate::Failure;

/// Shared between the one who works and the one who watches.
#[derive(Debug, Default)]
pub struct Progress {
    done: AtomicU64,
    total: AtomicU64,
    cancelled: AtomicBool,
}

impl Progress {
    /// Bytes that were worked through.
    pub fn done(&self) -> u64 {
        self.done.load(Ordering::Relaxed)
    }

    /// Bytes there are in all, as far as is known.
    pub fn total(&self) -> u64 {
        self.total.load(Ordering::Relaxed)
    }

    /// Asks the work to stop at the next chance.
    pub fn cancel(&self) {
        self.cancelled.store(true, Ordering::Relaxed);
    }

    /// Whether it was asked to stop.
    pub fn is_cancelled(&self) -> bool {
        self.cancelled.load(Ordering::Relaxed)
    }

    /// Adds to what there is to do.
    pub fn expect(&self, bytes: u64) {
        self.total.fetch_add(bytes, Ordering::Relaxed);
    }

    /// Adds to what is done.
    ///
    /// # Errors
    /// [`Failure::Cancelled`] once [`Progress::cancel`] was called.
    pub fn advance(&self, bytes: u64) -> Result<(), Failure> {
        self.done.fetch_add(bytes, Ordering::Relaxed);
        if self.cancelled.load(Ordering::Relaxed) {
            return Err(Failure::Cancelled);
        }
        Ok(())
    }
}
