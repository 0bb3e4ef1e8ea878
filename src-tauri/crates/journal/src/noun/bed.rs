//! A place where plants grow.

use message::{Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{number, one_line};
use crate::{BedId, Kept, Refusal};

/// A bed of the garden, or a wild place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Bed {
    /// What the maker calls it.
    pub name: String,
    /// Whether nobody planted it, so that each plant must be told from its look-alikes.
    pub wild: bool,
    /// Its area.
    #[serde(default)]
    pub area_m2: Option<f64>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

impl Kept for Bed {
    type Id = BedId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)
    }

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        if let Some(area) = self.area_m2 {
            number(
                "area_m2",
                say!("what-area"),
                area,
                0.01,
                1e7,
                Unit::SquareMetre,
            )?;
        }
        super::remark(self.note.as_deref())
    }
}
