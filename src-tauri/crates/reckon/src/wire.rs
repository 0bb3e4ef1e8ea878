//! Shapes that several nouns share on the wire.

use serde::{Deserialize, Serialize};

/// Fresh grams come from a harvest, dried and cooked grams from a tray or a pot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Lot {
    pub kind: LotKind,
    pub id: String,
}

/// Where a lot lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum LotKind {
    Harvest,
    Tray,
}

impl From<journal::Lot> for Lot {
    fn from(lot: journal::Lot) -> Self {
        match lot {
            journal::Lot::Harvest(id) => Self {
                kind: LotKind::Harvest,
                id: id.to_string(),
            },
            journal::Lot::Tray(id) => Self {
                kind: LotKind::Tray,
                id: id.to_string(),
            },
        }
    }
}
