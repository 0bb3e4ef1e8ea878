//! `mixture.reach`: how much of each, to end there?

use formulary::Note;
use message::{At, Failure};
use physics::mixture::{Acidity, Liquid};
use physics::quantity::{grams_of, millilitres, millilitres_of};
use physics::solve::{self, Shortfall};
use physics::{MassFraction, Strength};
use reckon::item::{self, StockItem};
use reckon::liquid::noted;
use serde::{Deserialize, Serialize};

use crate::mixture::describe::{WetPlant, plants};
use crate::mixture::help::would_reach;
use crate::open::Open;
use crate::request::Command;

/// How much of each, to end there?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ReachMixture {
    pub stock: Vec<StockItem>,
    pub plants: Option<Vec<WetPlant>>,
    pub targets: Targets,
}

/// Where the liquid should end.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct Targets {
    pub strength_percent_vol: Option<f64>,
    pub glycerol_percent_mass: Option<f64>,
    pub sugar_percent_mass: Option<f64>,
    pub acidity_g_per_100ml: Option<f64>,
    pub volume_ml: Option<f64>,
    pub poured_ml: Option<f64>,
}

/// How much of one item of the stock.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Measure {
    pub index: usize,
    pub ml: f64,
    pub g: f64,
}

/// The answer to [`ReachMixture`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct MixtureReached {
    pub reached: bool,
    pub pours: Vec<Measure>,
    pub liquid: Liquid,
    pub short_of: Vec<Shortfall>,
    pub notes: Vec<Note>,
}

impl Command for ReachMixture {
    const NAME: &'static str = "mixture.reach";
    type Reply = MixtureReached;

    fn run(self, _: &Open) -> Result<Self::Reply, Failure> {
        let mut stock = Vec::with_capacity(self.stock.len());
        for (at, item) in self.stock.iter().enumerate() {
            stock.push(on_the_shelf(item).map_err(|why| why.within(&format!("stock[{at}]")))?);
        }
        let plants = plants(self.plants.as_deref().unwrap_or_default())?;
        let targets = wanted(&self.targets).map_err(|why| why.within("targets"))?;
        let reached = solve::reach(&stock, &plants, &targets)?;
        let mut notes = noted(&reached.liquid.remarks);
        if !reached.reached {
            let missed: Vec<_> = reached.short_of.iter().map(|short| short.target).collect();
            notes.extend(would_reach(&stock, &plants, &targets, &missed)?);
        }
        Ok(MixtureReached {
            reached: reached.reached,
            pours: reached
                .amounts
                .iter()
                .map(|amount| Measure {
                    index: amount.index,
                    ml: millilitres_of(amount.volume),
                    g: grams_of(amount.mass),
                })
                .collect(),
            liquid: reached.liquid.clone(),
            short_of: reached.short_of,
            notes,
        })
    }
}

fn on_the_shelf(item: &StockItem) -> Result<solve::StockItem, Failure> {
    let mut on_shelf = solve::StockItem::new(item::item(item)?.ingredient()?);
    if let Some(ml) = item.available_ml {
        on_shelf = on_shelf.at_most(millilitres(ml)).at("available_ml")?;
    }
    if let Some(ml) = item.exactly_ml {
        on_shelf = on_shelf.exactly(millilitres(ml)).at("exactly_ml")?;
    }
    Ok(on_shelf)
}

fn wanted(targets: &Targets) -> Result<solve::Targets, Failure> {
    let share = |field, percent: Option<f64>| {
        percent
            .map(MassFraction::from_percent)
            .transpose()
            .at(field)
    };
    Ok(solve::Targets {
        strength: targets
            .strength_percent_vol
            .map(Strength::from_percent)
            .transpose()
            .at("strength_percent_vol")?,
        glycerol: share("glycerol_percent_mass", targets.glycerol_percent_mass)?,
        sugar: share("sugar_percent_mass", targets.sugar_percent_mass)?,
        acidity: targets
            .acidity_g_per_100ml
            .map(Acidity::new)
            .transpose()
            .at("acidity_g_per_100ml")?,
        volume: targets.volume_ml.map(millilitres),
        poured: targets.poured_ml.map(millilitres),
    })
}
