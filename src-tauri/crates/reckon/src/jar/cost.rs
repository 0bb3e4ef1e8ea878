//! What the liquids of a jar cost, where the maker wrote down prices.

use formulary::arithmetic::{self, Input};
use formulary::{Note, Status};
use journal::{Jar, Supply};
use message::{Argument, Failure, say};
use serde::Serialize;
use store::Reading;

use crate::told;

/// What the liquids cost, and in which currency; nothing where no price is known, or prices in several currencies.
#[derive(Debug, Clone, Default, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Cost {
    pub amount: Option<f64>,
    pub currency: Option<String>,
    /// What has no price and is not in it.
    pub notes: Vec<Note>,
}

impl Cost {
    /// The liquids of a whole jar, not yet rounded.
    ///
    /// # Errors
    /// A failure to read, or a price or an amount that no supply has.
    pub fn of(reading: &Reading<'_>, jar: &Jar) -> Result<Self, Failure> {
        let (mut inputs, mut currencies, mut unpriced) = (Vec::new(), Vec::new(), Vec::new());
        for pour in &jar.pours {
            let Some(id) = pour.supply else {
                unpriced.push(told::poured(pour).into());
                continue;
            };
            let supply = reading.get::<Supply>(&id)?;
            match supply.price {
                Some(price) => {
                    inputs.push(Input {
                        used_ml: pour.ml,
                        bought_ml: supply.size_ml,
                        price: price.amount,
                    });
                    currencies.push(price.currency);
                }
                None => unpriced.push(Argument::own(supply.name)),
            }
        }
        currencies.sort_unstable();
        currencies.dedup();
        let [currency] = currencies.as_slice() else {
            return Ok(Self::default());
        };
        let whole = arithmetic::cost_per_bottle(&inputs, 1)?;
        let notes = if unpriced.is_empty() {
            Vec::new()
        } else {
            let text = say!("cost-without", names = Argument::all_of(unpriced));
            vec![Note::new("cost", text, "", Status::Computed)]
        };
        Ok(Self {
            amount: Some(whole),
            currency: Some(currency.clone()),
            notes,
        })
    }

    /// The same for a share of the jar, in whole cents.
    #[must_use]
    pub fn of_share(self, share: f64) -> Self {
        let amount = self
            .amount
            .map(|whole| (whole * share * 100.0).round() / 100.0);
        Self { amount, ..self }
    }
}
