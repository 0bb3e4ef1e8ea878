//! Bottles of spirit, glycerin, vinegar and the rest: `supply.*`.

use journal::{Item, Price, Source, SupplyId};
use message::{Argument, Failure, say};
use reckon::asked;
use reckon::item::{self, StockItem};
use serde::{Deserialize, Serialize};
use store::SupplyRow;

use crate::changed::Changed;
use crate::open::Open;
use crate::request::{Command, bare_request};

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

/// A change to a bottle; what is left out stays. An empty day and an empty currency are taken back,
/// the price with its currency.
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

impl Supply {
    fn of(row: SupplyRow) -> Self {
        let SupplyRow {
            id,
            supply,
            left_ml,
        } = row;
        let (price, currency) = supply
            .price
            .map(|price| (price.amount, price.currency))
            .unzip();
        Self {
            id: id.to_string(),
            name: supply.name,
            item: item::as_item(&supply.item),
            size_ml: supply.size_ml,
            left_ml,
            price,
            currency,
            bought_on: supply.bought_on.map(|day| day.to_string()),
            best_before: supply.best_before.map(|day| day.to_string()),
        }
    }
}

impl Command for ListSupplies {
    const NAME: &'static str = "supply.list";
    type Reply = Supplies;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let supplies = app.read(|reading| Ok(reading.supplies()?))?;
        Ok(Supplies {
            supplies: supplies.into_iter().map(Supply::of).collect(),
        })
    }
}

impl Command for AddSupply {
    const NAME: &'static str = "supply.add";
    type Reply = SupplyWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let supply = journal::Supply {
            name: self.name.trim().to_owned(),
            item: labelled(&self.item)?,
            size_ml: self.size_ml,
            price: price(self.price, self.currency)?,
            bought_on: self
                .bought_on
                .map(|day| asked::date("bought_on", &day))
                .transpose()?,
            best_before: self
                .best_before
                .map(|day| asked::date("best_before", &day))
                .transpose()?,
        };
        let id = SupplyId(app.new_id());
        let (done, supply) = app.perform(|writing| {
            writing.record(&id, &supply)?;
            Ok((
                say!("deed-supply-added", name = Argument::own(&supply.name)),
                supply,
            ))
        })?;
        let left_ml = supply.size_ml;
        Ok(SupplyWritten {
            done,
            supply: Supply::of(SupplyRow {
                id,
                supply,
                left_ml,
            }),
        })
    }
}

impl Command for CorrectSupply {
    const NAME: &'static str = "supply.correct";
    type Reply = SupplyWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: SupplyId = asked::id("id", &self.id)?;
        let item = self.item.as_ref().map(labelled).transpose()?;
        let day = |field, day: Option<String>| {
            // Left out it stays, empty it is cleared.
            let day = day.map(|day| asked::text(Some(day)));
            day.map(|day| day.map(|day| asked::date(field, &day)).transpose())
                .transpose()
        };
        let bought_on = day("bought_on", self.bought_on)?;
        let best_before = day("best_before", self.best_before)?;
        let (done, supply) = app.correct::<journal::Supply>("id", &id, |_, supply| {
            asked::renamed(&mut supply.name, self.name);
            asked::set(&mut supply.item, item);
            asked::set(&mut supply.size_ml, self.size_ml);
            asked::set(&mut supply.bought_on, bought_on);
            asked::set(&mut supply.best_before, best_before);
            let taken_back =
                |text: &Option<String>| text.as_deref().is_some_and(|text| text.trim().is_empty());
            if self.price.is_none() && taken_back(&self.currency) {
                supply.price = None;
            } else if self.price.is_some() || self.currency.is_some() {
                let before = supply.price.take();
                let amount = self.price.or(before.as_ref().map(|price| price.amount));
                let currency = asked::text(self.currency).or(before.map(|price| price.currency));
                supply.price = price(amount, currency)?;
            }
            let name = Argument::own(&supply.name);
            Ok(say!("deed-supply-edited", name))
        })?;
        let left_ml = app
            .read(|reading| Ok(reading.left(Source::Supply(id))?))?
            .get();
        Ok(SupplyWritten {
            done,
            supply: Supply::of(SupplyRow {
                id,
                supply,
                left_ml,
            }),
        })
    }
}

/// What the label says, without how much of it is to be used.
fn labelled(item: &StockItem) -> Result<Item, Failure> {
    let amounts = [
        ("available_ml", item.available_ml.is_some()),
        ("exactly_ml", item.exactly_ml.is_some()),
        ("supply", item.supply.is_some()),
    ];
    if let Some((field, _)) = amounts.iter().find(|(_, given)| *given) {
        let message = say!("supply-without-amounts");
        return Err(Failure::invalid(&format!("item.{field}"), message));
    }
    let stock = item::item(item).map_err(|why| why.within("item"))?;
    // What no liquid can be is refused now, not when it is poured.
    stock.ingredient().map_err(|why| why.within("item"))?;
    Ok(stock)
}

fn price(amount: Option<f64>, currency: Option<String>) -> Result<Option<Price>, Failure> {
    match (amount, asked::text(currency)) {
        (Some(amount), Some(currency)) => Ok(Some(Price { amount, currency })),
        (Some(_), None) => Err(Failure::invalid("currency", say!("currency-missing"))),
        (None, Some(_)) => Err(Failure::invalid("price", say!("price-missing"))),
        (None, None) => Ok(None),
    }
}
