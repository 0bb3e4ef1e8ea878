//! Where the shelf sets limits: several bottles of a kind, too little of one, a fixed amount.
//!
//! One way for every preparation: what the recipe comes to is put to the linear programme of the
//! mixture engine as targets, and whatever stands on the shelf is what it may take.

use physics::{
    MassFraction, OutOfRange, Strength,
    mixture::{self, Acidity, IngredientKind, Liquid},
    quantity::{millilitres, millilitres_of},
    solve::{StockItem, Targets, reach},
};

use message::Refusal;

use super::{
    Missed, Shortfall,
    liquids::{Chosen, chosen},
    pours::{Jar, LEAST_ML, Volumes},
};

impl Jar<'_> {
    /// Everything the shelf has to offer for these kinds, with what else must be used up.
    pub(super) fn offered(&self, kinds: &[IngredientKind], instead: &[Chosen]) -> Vec<Chosen> {
        let mut offered: Vec<Chosen> = self
            .composition
            .stock
            .iter()
            .filter(|stock| {
                stock.exactly_ml.is_some() || kinds.contains(&stock.ingredient.kind().into())
            })
            .map(chosen)
            .collect();
        for one in instead {
            let kind = one.kind();
            let at_hand = |offer: &Chosen| offer.kind() == kind && offer.exactly_ml.is_none();
            let is_free = one.exactly_ml.is_none() && kinds.contains(&kind);
            if is_free && !offered.iter().any(at_hand) {
                offered.push(one.clone());
            }
        }
        offered
    }

    pub(super) fn is_fixed(&self) -> bool {
        let stock = &self.composition.stock;
        stock.iter().any(|stock| stock.exactly_ml.is_some())
    }

    /// The recipe as it stands where the shelf carries it; else the nearest the shelf can make.
    pub(super) fn carried(
        &self,
        volumes: Volumes,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Volumes, Refusal> {
        if !self.is_fixed() && !overdrawn(&volumes) {
            return Ok(volumes);
        }
        let poured = volumes.iter().map(|(_, ml)| ml).sum();
        let recipe: Vec<Chosen> = volumes.iter().map(|(chosen, _)| chosen.clone()).collect();
        let kinds: Vec<IngredientKind> = recipe.iter().map(Chosen::kind).collect();
        let targets = like(&self.describe(&volumes)?, poured)?;
        self.taken(&self.offered(&kinds, &recipe), &targets, short_of)
            .map(|taken| taken.unwrap_or_else(|| self.shared(volumes)))
    }

    /// The recipe as it stands, each liquid taken from as many bottles of the very same as it needs. The programme cannot
    /// find this where sugar stays undissolved: what it aims at counts only what dissolves.
    fn shared(&self, volumes: Volumes) -> Volumes {
        let mut taken = Volumes::new();
        for (first, mut wanted) in volumes {
            let alike = self
                .at_hand(first.kind())
                .filter(|stock| stock.ingredient == first.ingredient && stock.exactly_ml.is_none());
            let mut alike: Vec<Chosen> = alike.map(chosen).collect();
            if alike.is_empty() {
                alike.push(first.clone());
            }
            for bottle in &alike {
                let ml = bottle.available_ml.unwrap_or(wanted).min(wanted);
                wanted -= ml;
                taken.push((bottle.clone(), ml));
            }
            // What no bottle holds is missed by the first, as it was asked of it.
            if let Some((_, ml)) = taken.iter_mut().find(|(bottle, _)| {
                bottle.supply == first.supply && bottle.ingredient == first.ingredient
            }) {
                *ml += wanted;
            }
        }
        taken
    }

    /// What the linear programme takes from the shelf; none where it misses a target, unless a fixed amount
    /// leaves no other way.
    pub(super) fn taken(
        &self,
        offered: &[Chosen],
        targets: &Targets,
        short_of: &mut Vec<Shortfall>,
    ) -> Result<Option<Volumes>, Refusal> {
        let given = take(offered, &self.exact, targets)?;
        if given.short_of.is_empty() || self.is_fixed() {
            short_of.extend(given.short_of);
            return Ok(Some(given.volumes));
        }
        Ok(None)
    }
}

/// What the shelf gives.
pub(super) struct Given {
    pub(super) volumes: Volumes,
    pub(super) short_of: Vec<Shortfall>,
}

/// The amounts of these liquids that come to the targets without taking more than there is, or the nearest.
///
/// # Errors
/// [`Refusal`] at `stock` where more is fixed than there is.
pub(super) fn take(
    liquids: &[Chosen],
    plants: &[mixture::Plant],
    targets: &Targets,
) -> Result<Given, Refusal> {
    let items = liquids
        .iter()
        .map(|chosen| {
            let mut item = StockItem::new(chosen.ingredient);
            if let Some(ml) = chosen.available_ml {
                item = item.at_most(millilitres(ml))?;
            }
            if let Some(ml) = chosen.exactly_ml {
                item = item.exactly(millilitres(ml))?;
            }
            Ok(item)
        })
        .collect::<Result<Vec<_>, OutOfRange>>()
        .map_err(|error| Refusal::new("stock", error.message()))?;
    let reached =
        reach(&items, plants, targets).map_err(|error| Refusal::new("stock", error.message()))?;
    let volumes = reached.amounts.iter();
    Ok(Given {
        volumes: volumes
            .map(|amount| (liquids[amount.index].clone(), millilitres_of(amount.volume)))
            .collect(),
        short_of: reached
            .short_of
            .into_iter()
            .map(|missed| Shortfall {
                target: Missed::Mixture(missed.target),
                wanted: missed.wanted,
                got: missed.got,
            })
            .collect(),
    })
}

/// Whether a recipe takes more of a bottle than it holds.
pub(super) fn overdrawn(volumes: &Volumes) -> bool {
    volumes.iter().any(|(chosen, ml)| {
        chosen
            .available_ml
            .is_some_and(|available| *ml > LEAST_ML && ml - available > 1e-9)
    })
}

/// What a liquid is made of, as targets for a pour of `poured_ml`.
///
/// # Errors
/// [`Refusal`] at `stock` for a liquid that no target can name.
pub(super) fn like(liquid: &Liquid, poured_ml: f64) -> Result<Targets, Refusal> {
    let refused = |error: OutOfRange| Refusal::new("stock", error.message());
    let there = |value: f64| (value > TRACE).then_some(value);
    Ok(Targets {
        strength: there(liquid.strength_percent_vol.value)
            .map(Strength::from_percent)
            .transpose()
            .map_err(refused)?,
        glycerol: there(liquid.glycerol_percent_mass.value)
            .map(MassFraction::from_percent)
            .transpose()
            .map_err(refused)?,
        sugar: there(liquid.sugar_percent_mass.value)
            .map(MassFraction::from_percent)
            .transpose()
            .map_err(refused)?,
        acidity: there(liquid.acidity_g_per_100ml.value)
            .map(Acidity::new)
            .transpose()
            .map_err(refused)?,
        volume: None,
        poured: Some(millilitres(poured_ml)),
    })
}

/// Less than this, in per cent or g per 100 mL, is no aim of a recipe.
const TRACE: f64 = 0.05;

#[cfg(test)]
mod tests;
