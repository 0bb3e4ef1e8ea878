//! Reaching a target from what is on the shelf.

use super::{
    programme::{Free, Programme},
    stock::StockItem,
    target::{Shortfall, Targets},
};
use crate::{
    fraction::{MassFraction, Strength},
    mixture::{
        Acidity, Component, Composition, Liquid, Plant, Pour, Unmixable, describe,
        partial_millilitres,
    },
    quantity::{Mass, Volume, celsius, grams, grams_of, millilitres_of},
};

/// Volume made when nothing at all says how much, mL.
const WITHOUT_A_SIZE_ML: f64 = 100.0;

/// Linearisations after which the answer stands as it is; three to six are usual.
const MOST_ROUNDS: usize = 40;

/// How much of one stock item to pour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// Position of the item in the stock.
    pub index: usize,
    /// Measured out at 20 C.
    pub volume: Volume,
    /// Weighed out.
    pub mass: Mass,
}

/// The mixture that reaches the targets, or the nearest.
#[derive(Debug, Clone, PartialEq)]
pub struct Reached {
    /// Whether every target is met.
    pub reached: bool,
    /// What to pour, in the order of the stock; items that are not needed are left out.
    pub amounts: Vec<Amount>,
    /// The liquid at the end, at 20 C.
    pub liquid: Liquid,
    /// The targets that are not met.
    pub short_of: Vec<Shortfall>,
}

/// How much of each stock item to pour on the plants, so that the liquid at the end is as wanted.
///
/// The plants' water is counted at its likeliest; the reply's intervals show what it leaves open. When
/// not everything can be had, the size asked for is never exceeded; the strength, glycerol, sugar and
/// acidity come before filling it; of what meets all that, the least of anything but water is poured.
/// Without any size: 100 mL when there are no plants and no fixed amounts; with fixed amounts the
/// smallest liquid that meets the targets, at most ten times what is fixed.
///
/// # Errors
/// [`Unmixable`] without stock, with plants but no size, for a size outside 0.1 to 1 000 000 mL, when more
/// is fixed than there is, or without any liquid.
///
/// ```
/// use physics::{Strength, mixture::Ingredient, quantity::{millilitres, millilitres_of}};
/// use physics::solve::{StockItem, Targets, reach};
/// let stock = [
///     StockItem::new(Ingredient::spirit(Strength::from_percent(96.3)?)),
///     StockItem::new(Ingredient::water()),
/// ];
/// let targets = Targets {
///     strength: Some(Strength::from_percent(70.0)?),
///     volume: Some(millilitres(1000.0)),
///     ..Targets::default()
/// };
/// let made = reach(&stock, &[], &targets)?;
/// // British Pharmacopoeia: 727 mL of ethanol (96 per cent) make 1000 mL of 70 %.
/// assert!((millilitres_of(made.amounts[0].volume) - 727.0).abs() < 1.1);
/// # Ok::<(), physics::mixture::Unmixable>(())
/// ```
pub fn reach(
    stock: &[StockItem],
    plants: &[Plant],
    targets: &Targets,
) -> Result<Reached, Unmixable> {
    if stock.is_empty() {
        return Err(Unmixable::NoStock);
    }
    targets.refuse_sizes()?;
    let mut grams_of_each: Vec<Option<f64>> = Vec::with_capacity(stock.len());
    for (index, item) in stock.iter().enumerate() {
        if let (Some(exactly_ml), Some(available_ml)) = (item.exactly_ml(), item.available_ml())
            && exactly_ml > available_ml
        {
            return Err(Unmixable::MoreThanAvailable {
                index,
                exactly_ml,
                available_ml,
            });
        }
        grams_of_each.push(
            item.exactly_ml()
                .map(|ml| ml * item.ingredient().grams_per_ml()),
        );
    }
    let free: Vec<usize> = (0..stock.len())
        .filter(|&i| grams_of_each[i].is_none())
        .collect();
    if !free.is_empty() {
        let programme = programme(stock, plants, targets, &free)?;
        let chosen = choose(&programme)?;
        for (index, grams) in free.into_iter().zip(chosen) {
            grams_of_each[index] = Some(grams);
        }
    }

    let grams_of_each: Vec<f64> = grams_of_each
        .into_iter()
        .map(Option::unwrap_or_default)
        .collect();
    let trifle = 1e-9 * grams_of_each.iter().sum::<f64>();
    let mut pours = Vec::new();
    let mut amounts = Vec::new();
    for (index, (item, &mass)) in stock.iter().zip(&grams_of_each).enumerate() {
        if mass > trifle {
            let pour = Pour::weighed(*item.ingredient(), grams(mass))?;
            amounts.push(Amount {
                index,
                volume: pour.volume(),
                mass: pour.mass(),
            });
            pours.push(pour);
        }
    }
    let liquid = describe(&pours, plants, celsius(20.0))?;
    let poured_ml = amounts
        .iter()
        .map(|amount| millilitres_of(amount.volume))
        .sum();
    let short_of = targets.missed_by(&liquid, poured_ml);
    Ok(Reached {
        reached: short_of.is_empty(),
        amounts,
        liquid,
        short_of,
    })
}

fn programme(
    stock: &[StockItem],
    plants: &[Plant],
    targets: &Targets,
    free: &[usize],
) -> Result<Programme, Unmixable> {
    let plant_water: f64 = plants.iter().map(|plant| plant.water()[1]).sum();
    let plant_sugar: f64 = plants.iter().map(Plant::sugar).sum();
    let mut fixed = Composition::none()
        .plus(Component::Water, plant_water)
        .plus(Component::Glucose, 0.5 * plant_sugar)
        .plus(Component::Fructose, 0.5 * plant_sugar);
    let mut fixed_ml = 0.0;
    for item in stock {
        if let Some(ml) = item.exactly_ml() {
            fixed.add_scaled(
                item.ingredient().unit(),
                ml * item.ingredient().grams_per_ml(),
            );
            fixed_ml += ml;
        }
    }
    let mut volume_ml = targets.volume.map(millilitres_of);
    let poured_ml = targets.poured.map(millilitres_of);
    if volume_ml.is_none() && poured_ml.is_none() && fixed_ml <= 0.0 {
        if plants.iter().any(|plant| grams_of(plant.mass()) > 0.0) {
            return Err(Unmixable::NoSize);
        }
        volume_ml = Some(WITHOUT_A_SIZE_ML);
    }
    let scale_ml = volume_ml
        .or(poured_ml.map(|ml| ml + plant_water))
        .unwrap_or(fixed_ml + plant_water);
    if !(scale_ml > 0.0 && scale_ml <= 1e7) {
        return Err(Unmixable::NoLiquid);
    }
    Ok(Programme {
        free: free
            .iter()
            .map(|&index| {
                let ingredient = stock[index].ingredient();
                Free {
                    unit: *ingredient.unit(),
                    ml_per_g: 1.0 / ingredient.grams_per_ml(),
                    available_g: stock[index]
                        .available_ml()
                        .map(|ml| ml * ingredient.grams_per_ml()),
                }
            })
            .collect(),
        fixed,
        fixed_ml,
        strength: targets.strength.map(Strength::get),
        glycerol: targets.glycerol.map(MassFraction::get),
        sugar: targets.sugar.map(MassFraction::get),
        acid: targets
            .acidity
            .map(|acidity| Acidity::grams_per_100_ml(acidity) / 100.0),
        volume_ml,
        poured_ml,
        scale_ml,
    })
}

/// Solves the programme again and again, each time with the partial volumes at the last answer.
fn choose(programme: &Programme) -> Result<Vec<f64>, Unmixable> {
    let mixed = |amounts: &[f64]| {
        let mut mixture = programme.fixed;
        for (item, &amount) in programme.free.iter().zip(amounts) {
            mixture.add_scaled(&item.unit, amount);
        }
        mixture
    };
    let even: Vec<f64> = programme.free.iter().map(|_| programme.scale_ml).collect();
    let mut partial = partial_millilitres(&mixed(&even)).ok_or(Unmixable::NoLiquid)?;
    let mut amounts = Vec::new();
    for round in 0..MOST_ROUNDS {
        amounts = programme.solve(&partial)?;
        let next = partial_millilitres(&mixed(&amounts)).ok_or(Unmixable::NoLiquid)?;
        let change = partial
            .iter()
            .zip(next)
            .map(|(a, b)| (a - b).abs())
            .fold(0.0, f64::max);
        if change < 1e-8 {
            break;
        }
        // Two corners of the programme can take turns; meeting half way ends that.
        let share = if round < 12 { 1.0 } else { 0.5 };
        for (mine, theirs) in partial.iter_mut().zip(next) {
            *mine += share * (theirs - *mine);
        }
    }
    Ok(amounts)
}
