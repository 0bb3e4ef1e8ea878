//! What would reach a target that the shelf does not: each advice is tried before it is given.

use physics::mixture::{Ingredient, Kind, Plant};
use physics::quantity::{grams, grams_of, millilitres, millilitres_of};
use physics::solve::{self, StockItem, Target};
use physics::{Strength, WetBasis};

use crate::wire::{Note, Status};
use crate::{Failure, words};

/// Water in a herb that was dried until it is crisp, % of its weight.
const CRISP: f64 = 10.0;
/// The strongest spirit that is sold, % vol.
const STRONG: f64 = 96.0;

/// Drier herb, more liquid on it, stronger spirit: those of them with which every target is met.
pub(super) fn would_reach(
    stock: &[StockItem],
    plants: &[Plant],
    targets: &solve::Targets,
    missed: &[Target],
) -> Result<Vec<Note>, Failure> {
    let mut notes = Vec::new();
    let mut offer = |code: &str, text: String| {
        notes.push(Note {
            code: code.to_owned(),
            text,
            source: None,
            status: Status::Computed,
        });
    };
    let reaches = |stock: &[StockItem], plants: &[Plant], targets: &solve::Targets| {
        solve::reach(stock, plants, targets).is_ok_and(|answer| answer.reached)
    };
    if let Some(crisp) = dried(plants)?
        && reaches(stock, &crisp, targets)
    {
        let text = format!("Dry the herb first: crisp, at {CRISP:.0} % water, it is reached.");
        offer("dry-the-herb", text);
    }
    if !plants.is_empty() {
        let more = [1.5, 2.0, 3.0, 5.0].into_iter().find(|times| {
            let times_as_much =
                |volume: physics::quantity::Volume| millilitres(times * millilitres_of(volume));
            let larger = solve::Targets {
                volume: targets.volume.map(times_as_much),
                poured: targets.poured.map(times_as_much),
                ..*targets
            };
            reaches(stock, plants, &larger)
        });
        if let Some(times) = more {
            let times = words::figure(times);
            let text = format!(
                "A higher ratio: with {times} times the liquid on the same herb it is reached."
            );
            offer("higher-ratio", text);
        }
    }
    let weaker = |item: &StockItem| match item.ingredient().kind() {
        Kind::Spirit { strength } => strength.percent() < STRONG,
        _ => false,
    };
    if missed.contains(&Target::Strength) && stock.iter().any(weaker) {
        let strong = StockItem::new(Ingredient::spirit(Strength::from_percent(STRONG)?));
        let stronger: Vec<StockItem> = stock
            .iter()
            .map(|item| if weaker(item) { strong } else { *item })
            .collect();
        if reaches(&stronger, plants, targets) {
            let text = format!("Stronger spirit: with {STRONG:.0} % vol it is reached.");
            offer("stronger-spirit", text);
        }
    }
    Ok(notes)
}

/// The same plants after drying; none where no plant would lose water.
fn dried(plants: &[Plant]) -> Result<Option<Vec<Plant>>, Failure> {
    let crisp = WetBasis::from_percent(CRISP)?;
    let mut some_was_wet = false;
    let mut dried = Vec::with_capacity(plants.len());
    for plant in plants {
        let water = plant.moisture_wet_percent().value / 100.0;
        if water <= crisp.get() {
            dried.push(*plant);
            continue;
        }
        some_was_wet = true;
        let dry_matter = grams_of(plant.mass()) * (1.0 - water);
        dried.push(Plant::new(grams(dry_matter / (1.0 - crisp.get())), crisp)?);
    }
    Ok(some_was_wet.then_some(dried))
}
