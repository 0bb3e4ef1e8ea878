//! Who says what time it is.

use std::sync::{Mutex, PoisonError};

use chrono::{DateTime, FixedOffset};

/// The one source of the present moment.
pub trait Clock: Send + Sync {
    /// The present moment with the local offset from UTC.
    fn now(&self) -> DateTime<FixedOffset>;
}

/// The clock of the machine.
#[derive(Debug, Clone, Copy, Default)]
pub struct SystemClock;

impl Clock for SystemClock {
    #[expect(
        clippy::disallowed_methods,
        reason = "this is the clock that the others ask"
    )]
    fn now(&self) -> DateTime<FixedOffset> {
        chrono::Local::now().fixed_offset()
    }
}

/// A clock that stands where it was set, for tests, demo seasons and pictures of screens.
#[derive(Debug)]
pub struct StandingClock(Mutex<DateTime<FixedOffset>>);

impl StandingClock {
    /// A clock that stands at `moment`.
    pub fn at(moment: DateTime<FixedOffset>) -> Self {
        Self(Mutex::new(moment))
    }

    /// Moves the hands.
    pub fn set(&self, moment: DateTime<FixedOffset>) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = moment;
    }
}

impl Clock for StandingClock {
    fn now(&self) -> DateTime<FixedOffset> {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl<C: Clock> Clock for std::sync::Arc<C> {
    fn now(&self) -> DateTime<FixedOffset> {
        self.as_ref().now()
    }
}
