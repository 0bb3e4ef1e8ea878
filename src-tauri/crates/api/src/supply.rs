//! Bottles of spirit, glycerin, vinegar and the rest: `supply.*`.

use serde::{Deserialize, Serialize};

use crate::mixture::StockItem;
use crate::wire::{Changed, bare_request};

bare_request!(
    /// Everything on the shelf that can be poured.
    ListSupplies
);

/// A bottle on the shelf.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Supply {
    pub id: String,
    pub name: String,
    pub item: StockItem,
    pub size_ml: f64,
    pub left_ml: f64,
    pub price: Option<f64>,
    pub currency: Option<String>,
    pub bought_on: Option<String>,
    pub best_before: Option<String>,
}

/// The answer to [`ListSupplies`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Supplies {
    pub supplies: Vec<Supply>,
}

/// A bottle was bought.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct AddSupply {
    pub name: String,
    pub item: StockItem,
    pub size_ml: f64,
    pub price: Option<f64>,
    pub currency: Option<String>,
    pub bought_on: Option<String>,
    pub best_before: Option<String>,
}

/// A change to a bottle; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectSupply {
    pub id: String,
    pub name: Option<String>,
    pub item: Option<StockItem>,
    pub size_ml: Option<f64>,
    pub price: Option<f64>,
    pub currency: Option<String>,
    pub bought_on: Option<String>,
    pub best_before: Option<String>,
}

/// A bottle was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct SupplyWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub supply: Supply,
}
