//! What every noun of the journal can say about itself.

use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::{Draw, Listed, Noun, Refusal, RowId};

/// A row that another row needs.
pub type RowRef = (Noun, String);

/// A noun whose rows the journal keeps.
pub trait Kept: Listed + Serialize + DeserializeOwned + Clone {
    /// What names its rows.
    type Id: RowId;

    /// Refuses nonsense: what no version ever let anybody write. Nothing that fails here is
    /// written, and nothing that fails here is taken in from another file.
    ///
    /// # Errors
    /// [`Refusal`] naming the field and the accepted range.
    fn check(&self) -> Result<(), Refusal>;

    /// Refuses what nobody may type now although an entry may hold it: a rule that came after
    /// entries were written, or one between two fields that two phones may have broken together.
    /// What was carried here from another file is only told of.
    ///
    /// # Errors
    /// [`Refusal`] naming the field and the accepted range.
    fn check_typed(&self) -> Result<(), Refusal> {
        Ok(())
    }

    /// What this row takes out of lots.
    fn draws(&self) -> Vec<Draw> {
        Vec::new()
    }

    /// The rows without which this one makes no sense.
    fn needs(&self) -> Vec<RowRef> {
        Vec::new()
    }
}
