//! Where the shelf sets limits: several bottles of a kind, too little of one, a fixed amount.
//!
//! One way for every preparation: what the recipe comes to is put to the linear programme of the
//! mixture engine as targets, and whatever stands on the shelf is what it may take.

use physics::{
    MassFraction, OutOfRange, Strength,
    mixture::{self, Acidity, Liquid},
    quantity::{millilitres, millilitres_of},
    solve::{StockItem, Targets, reach},
};

use super::{
    Refusal, Shortfall,
    liquids::{Chosen, chosen, kind_word},
    pours::{Jar, LEAST_ML, Volumes},
};
use crate::preparations::sentence;

impl Jar<'_> {
    /// Everything the shelf has to offer for these kinds, with what else must be used up.
    pub(super) fn offered(&self, kinds: &[&str], instead: &[Chosen]) -> Vec<Chosen> {
        let mut offered: Vec<Chosen> = self
            .composition
            .stock
            .iter()
            .filter(|stock| {
                stock.exactly_ml.is_some() || kinds.contains(&kind_word(&stock.ingredient))
            })
            .map(chosen)
            .collect();
        for one in instead {
            let kind = kind_word(&one.ingredient);
            let at_hand =
                |offer: &Chosen| kind_word(&offer.ingredient) == kind && offer.exactly_ml.is_none();
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
        let kinds: Vec<&str> = recipe
            .iter()
            .map(|chosen| kind_word(&chosen.ingredient))
            .collect();
        let targets = like(&self.describe(&volumes)?, poured)?;
        self.taken(&self.offered(&kinds, &recipe), &targets, short_of)
            .map(|taken| taken.unwrap_or(volumes))
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
    let refused =
        |error: &dyn std::fmt::Display| Refusal::new("stock", sentence(&error.to_string()));
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
        .map_err(|error| refused(&error))?;
    let reached = reach(&items, plants, targets).map_err(|error| refused(&error))?;
    let volumes = reached.amounts.iter();
    Ok(Given {
        volumes: volumes
            .map(|amount| (liquids[amount.index].clone(), millilitres_of(amount.volume)))
            .collect(),
        short_of: reached
            .short_of
            .into_iter()
            .map(|missed| Shortfall {
                target: missed.target.key().to_owned(),
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
    let refused = |error: OutOfRange| Refusal::new("stock", sentence(&error.to_string()));
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
mod tests {
    use physics::mixture::Ingredient;

    use crate::{
        compose::{
            Composition, Proposal, Stock, compose,
            tests::{mint, plant},
        },
        preparations::{self, PlantState},
    };

    fn asked(key: &str) -> Composition {
        let preparation = preparations::find(key, PlantState::Fresh).unwrap();
        let state = if preparation.takes(PlantState::Fresh) {
            PlantState::Fresh
        } else {
            PlantState::Dried
        };
        let mut wish = Composition::of(key, plant("oregano", "flowering tops", state, 100.0));
        if !preparation.takes_herb() {
            wish.plants.clear();
            wish.jar_ml = Some(1000.0);
        }
        wish
    }

    fn bottle(ingredient: Ingredient, ml: f64, name: &str) -> Stock {
        Stock {
            ingredient,
            available_ml: Some(ml),
            exactly_ml: None,
            supply: Some(name.to_owned()),
        }
    }

    fn same_liquid(a: &Proposal, b: &Proposal, key: &str) {
        for (one, other) in [
            (a.liquid.strength_percent_vol, b.liquid.strength_percent_vol),
            (
                a.liquid.glycerol_percent_mass,
                b.liquid.glycerol_percent_mass,
            ),
            (a.liquid.sugar_percent_mass, b.liquid.sugar_percent_mass),
            (a.liquid.acidity_g_per_100ml, b.liquid.acidity_g_per_100ml),
        ] {
            // What a measuring jug can tell, as the solver itself counts it.
            assert!(
                (one.value - other.value).abs() < 0.05,
                "{key}: {one:?} {other:?}"
            );
        }
    }

    #[test]
    fn two_bottles_too_small_make_what_one_large_one_makes_in_every_preparation() {
        for preparation in preparations::all() {
            let key = preparation.key.as_str();
            let plain = compose(&asked(key)).unwrap();
            let mut wish = asked(key);
            wish.stock = plain
                .pours
                .iter()
                .flat_map(|pour| {
                    ["left", "right"].map(|name| bottle(pour.ingredient, 0.6 * pour.ml, name))
                })
                .collect();
            let shared = compose(&wish).unwrap();
            assert!(shared.reached, "{key}: {:?}", shared.short_of);
            assert!(
                (shared.poured_ml - plain.poured_ml).abs() < 0.002 * plain.poured_ml,
                "{key}"
            );
            same_liquid(&plain, &shared, key);
            for pour in &shared.pours {
                let there = wish.stock.iter().find(|stock| {
                    stock.ingredient == pour.ingredient && stock.supply == pour.supply
                });
                let there = there.and_then(|stock| stock.available_ml).unwrap();
                assert!(pour.ml <= there + 1e-6, "{key}: {pour:?} of {there}");
            }
        }
    }

    #[test]
    fn a_fixed_amount_stays_fixed_in_every_preparation() {
        for preparation in preparations::all() {
            let key = preparation.key.as_str();
            let plain = compose(&asked(key)).unwrap();
            let first = &plain.pours[0];
            let mut wish = asked(key);
            wish.stock = vec![Stock {
                exactly_ml: Some(0.5 * first.ml),
                available_ml: None,
                ..bottle(first.ingredient, 0.0, "opened")
            }];
            let jar = compose(&wish).unwrap();
            let opened = jar.pours.iter().find(|pour| pour.supply.is_some());
            let ml = opened.map_or(0.0, |pour| pour.ml);
            assert!((ml - 0.5 * first.ml).abs() < 1e-6, "{key}: {ml}");
            // A right mixture in a smaller amount comes before a wrong one in the full amount.
            let full = (jar.poured_ml - plain.poured_ml).abs() < 0.01 * plain.poured_ml;
            assert!(full || !jar.short_of.is_empty(), "{key}: {}", jar.poured_ml);
        }
    }

    #[test]
    fn a_cordial_of_strong_spirit_is_let_down_to_the_recipe() {
        let plain = compose(&Composition::of("cordial", mint(80.0))).unwrap();
        let mut wish = Composition::of("cordial", mint(80.0));
        wish.stock = vec![super::super::tests::spirit(95.0)];
        let jar = compose(&wish).unwrap();
        same_liquid(&plain, &jar, "cordial");
        assert!(jar.pours.iter().any(|pour| pour.kind == "water"));
        assert!(jar.reasons.iter().any(|note| note.code == "let-down"));
    }

    #[test]
    fn what_the_shelf_cannot_make_is_said_with_what_it_lacks() {
        let mut wish = asked("glycerite-fresh");
        let glycerin = compose(&wish).unwrap().pours[0].clone();
        wish.stock = vec![bottle(glycerin.ingredient, 30.0, "nearly empty")];
        let jar = compose(&wish).unwrap();
        assert!(!jar.reached);
        assert_eq!(jar.short_of[0].got, 30.0);
    }
}
