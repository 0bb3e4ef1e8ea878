//! What every noun of the journal can say about itself.

use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::{Draw, Noun, Refusal, RowId};

/// A row that another row needs.
pub type RowRef = (Noun, String);

/// A noun whose rows the journal keeps.
pub trait Kept: Serialize + DeserializeOwned + Clone {
    /// Which noun this is.
    const NOUN: Noun;
    /// What names its rows.
    type Id: RowId;

    /// Refuses nonsense; nothing that fails here is ever written.
    ///
    /// # Errors
    /// [`Refusal`] naming the field and the accepted range.
    fn check(&self) -> Result<(), Refusal>;

    /// What this row takes out of lots.
    fn draws(&self) -> Vec<Draw> {
        Vec::new()
    }

    /// The rows without which this one makes no sense.
    fn needs(&self) -> Vec<RowRef> {
        Vec::new()
    }
}
