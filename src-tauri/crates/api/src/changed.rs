//! What a write did: the deed that can be undone and the nouns to refresh.

use journal::Noun;
use serde::Serialize;

/// What a write did: the deed that can be undone and the nouns to refresh.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Changed {
    pub deed: String,
    pub changed: Vec<Noun>,
}

impl From<store::Done> for Changed {
    fn from(done: store::Done) -> Self {
        Self {
            deed: done.deed.to_string(),
            changed: done.changed,
        }
    }
}
