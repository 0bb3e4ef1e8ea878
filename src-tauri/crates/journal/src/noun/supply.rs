//! A bottle bought to pour from.

use chrono::NaiveDate;
use message::{Unit, say};
use serde::{Deserialize, Serialize};

use crate::refusal::{day, number, one_line};
use crate::{Amount, Item, Kept, Refusal, SupplyId};

/// What was paid.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Price {
    /// How much.
    pub amount: f64,
    /// ISO 4217 code.
    pub currency: String,
}

/// A bottle bought to pour from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Supply {
    /// What the maker calls it.
    pub name: String,
    /// What it is, with the figures on its label.
    pub item: Item,
    /// What was in it when new.
    pub size_ml: f64,
    /// What was paid.
    #[serde(default)]
    pub price: Option<Price>,
    /// When it was bought.
    #[serde(default)]
    pub bought_on: Option<NaiveDate>,
    /// The date on its label.
    #[serde(default)]
    pub best_before: Option<NaiveDate>,
}

impl Supply {
    /// What was in it when new.
    pub fn size(&self) -> Amount {
        Amount::of(self.size_ml)
    }
}

impl Kept for Supply {
    type Id = SupplyId;

    fn check_typed(&self) -> Result<(), Refusal> {
        one_line("name", &self.name)
    }

    fn check(&self) -> Result<(), Refusal> {
        super::name(&self.name)?;
        super::item(&self.item)?;
        for (field, set) in [
            ("bought_on", self.bought_on),
            ("best_before", self.best_before),
        ] {
            set.map_or(Ok(()), |set| day(field, set))?;
        }
        super::volume("size_ml", say!("what-size"), self.size_ml)?;
        if let Some(price) = &self.price {
            number(
                "price",
                say!("what-price"),
                price.amount,
                0.0,
                1e9,
                Unit::None,
            )?;
            if price.currency.len() != 3 || !price.currency.bytes().all(|b| b.is_ascii_uppercase())
            {
                return Err(Refusal::new("currency", say!("refused-currency")));
            }
        }
        Ok(())
    }
}
