//! The liquids at hand.

use formulary::compose;
use message::{Argument, Failure, say};
use store::Reading;

use crate::asked;
use crate::item::{self, StockItem};

/// The liquids at hand; one that names a supply is what the supply's label says.
pub fn shelf(reading: &Reading<'_>, stock: &[StockItem]) -> Result<Vec<compose::Stock>, Failure> {
    let on_shelf = |item: &StockItem| {
        let mut available_ml = item.available_ml;
        let label = match &item.supply {
            None => item::item(item)?,
            Some(text) => {
                let id = asked::id("supply", text)?;
                let supply = reading
                    .get::<journal::Supply>(&id)
                    .map_err(|why| Failure::from(why).renamed("supply"))?;
                if supply.item.kind() != item.kind {
                    let name = Argument::own(supply.name);
                    let message = say!("supply-of-another-kind", name);
                    return Err(Failure::invalid("kind", message));
                }
                let left = reading.left(journal::Source::Supply(id))?.get();
                available_ml = Some(available_ml.map_or(left, |asked| asked.min(left)));
                supply.item
            }
        };
        Ok(compose::Stock {
            ingredient: label.ingredient()?,
            available_ml,
            exactly_ml: item.exactly_ml,
            supply: item.supply.clone(),
        })
    };
    let indexed = stock.iter().enumerate();
    indexed
        .map(|(at, item)| {
            on_shelf(item).map_err(|why: Failure| why.within(&format!("stock[{at}]")))
        })
        .collect()
}
