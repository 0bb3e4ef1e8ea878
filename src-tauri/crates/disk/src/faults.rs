//! A disk that fails on purpose.

use std::io;
use std::sync::atomic::{AtomicU64, Ordering};

/// What goes wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// One call fails with an input/output error.
    InputOutput,
    /// This call and every later one finds the disk full.
    Full,
    /// One write takes only half of its bytes; any other call succeeds.
    Short,
    /// One write takes only half of its bytes, and then the disk is full.
    ShortThenFull,
    /// One write lands with a bit that is not what it was, and succeeds.
    Altered,
}

/// Counts calls, and lets one of them fail.
#[derive(Debug, Default)]
pub struct Faults {
    calls: AtomicU64,
    plan: Option<(u64, Fault)>,
}

impl Faults {
    /// The `nth` call (from 1) meets `fault`.
    pub fn at(nth: u64, fault: Fault) -> Self {
        Self {
            calls: AtomicU64::new(0),
            plan: Some((nth, fault)),
        }
    }

    /// How many calls there were.
    pub fn calls(&self) -> u64 {
        self.calls.load(Ordering::SeqCst)
    }

    pub(crate) fn trip(&self) -> io::Result<()> {
        let call = self.calls.fetch_add(1, Ordering::SeqCst) + 1;
        match self.plan {
            Some((nth, Fault::InputOutput)) if call == nth => {
                Err(io::Error::other("the disk failed on purpose"))
            }
            Some((nth, Fault::Full | Fault::ShortThenFull)) if call >= nth => {
                Err(io::ErrorKind::StorageFull.into())
            }
            _ => Ok(()),
        }
    }

    /// Whether the next call, if it is a write, lands altered.
    pub(crate) fn alters(&self) -> bool {
        self.plan == Some((self.calls() + 1, Fault::Altered))
    }

    /// How much of a write of `length` bytes is taken.
    pub(crate) fn room_for(&self, length: usize) -> io::Result<usize> {
        let next = self.calls() + 1;
        match self.plan {
            Some((nth, Fault::Short | Fault::ShortThenFull)) if nth == next && length > 1 => {
                self.calls.fetch_add(1, Ordering::SeqCst);
                Ok(length / 2)
            }
            _ => self.trip().map(|()| length),
        }
    }
}
