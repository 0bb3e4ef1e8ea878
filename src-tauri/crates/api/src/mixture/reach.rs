//! `mixture.reach`: how much of each, to end there?

use physics::mixture::Acidity;
use physics::quantity::{grams_of, millilitres, millilitres_of};
use physics::solve::{self, Reached};
use physics::{MassFraction, Strength};

use super::describe::{noted, plants};
use super::help::would_reach;
use super::label;
use super::wire::{Liquid, Measure, MixtureReached, ReachMixture, Shortfall, StockItem, Targets};
use crate::failure::At;
use crate::{App, Command, Failure};

impl Command for ReachMixture {
    const NAME: &'static str = "mixture.reach";
    type Reply = MixtureReached;

    fn run(self, _: &App) -> Result<Self::Reply, Failure> {
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
            liquid: Liquid::from(&reached.liquid),
            short_of: short_of(&reached),
            notes,
        })
    }
}

fn on_the_shelf(item: &StockItem) -> Result<solve::StockItem, Failure> {
    let mut on_shelf = solve::StockItem::new(label::ingredient(&label::stock(item)?)?);
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

fn short_of(reached: &Reached) -> Vec<Shortfall> {
    let short = reached.short_of.iter().map(|short| Shortfall {
        target: short.target.key().to_owned(),
        wanted: short.wanted,
        got: short.got,
    });
    short.collect()
}
