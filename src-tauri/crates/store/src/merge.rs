//! Uniting two logs.

use journal::{Deed, Noun};
use rusqlite::TransactionBehavior;

use crate::project::{Touched, project, settle_revocations};
use crate::{Done, Failure, Store, log};

/// What came in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Absorbed {
    /// Deeds that were not known here.
    pub deeds: usize,
    /// The nouns of which some row reads differently now.
    pub changed: Vec<Noun>,
}

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
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut arrived = Vec::new();
        let mut last = None;
        for deed in deeds {
            if log::number_of(&tx, &deed.id.to_string())?.is_none() {
                last = Some(deed.id);
                arrived.push(log::append(&tx, &deed)?);
            }
        }
        let mut touched = Touched::default();
        for (noun, id) in settle_revocations(&tx, &arrived)? {
            let row = log::folded(&tx, noun, &id)?;
            project(&tx, noun, &id, &row, &mut touched)?;
        }
        tx.commit()?;
        let changed = last.map_or_else(Vec::new, |deed| Done::of(deed, &touched).changed);
        Ok(Absorbed {
            deeds: arrived.len(),
            changed,
        })
    }
}
