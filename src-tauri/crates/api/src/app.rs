//! What a command can reach.

use crate::Clock;

/// The journal, the photos and the clock.
pub struct App {
    pub(crate) clock: Box<dyn Clock>,
}

impl App {
    /// An app over its parts.
    pub fn new(clock: impl Clock + 'static) -> Self {
        Self {
            clock: Box::new(clock),
        }
    }
}
