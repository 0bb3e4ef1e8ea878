//! What would reach a target that the shelf does not: each advice is tried before it is given.

use formulary::{Note, Status};
use message::{Argument, Failure, Message, Unit, say};
use physics::mixture::{Ingredient, Kind, Plant};
use physics::quantity::{grams, grams_of, millilitres, millilitres_of};
use physics::solve::{self, StockItem, Target};
use physics::{Strength, WetBasis};

/// Water in a herb that was dried until it is crisp, % of its weight.
const CRISP: f64 = 10.0;
/// The strongest spirit that is sold, % vol.
const STRONG: f64 = 96.0;

/// Drier herb, more liquid on it, stronger spirit: those of them with which every target is met.
pub(crate) fn would_reach(
    stock: &[StockItem],
    plants: &[Plant],
    targets: &solve::Targets,
    missed: &[Target],
) -> Result<Vec<Note>, Failure> {
    let mut notes = Vec::new();
    let mut offer = |code: &str, text: Message| {
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
        let water = Argument::percent(CRISP);
        offer("dry-the-herb", say!("reach-dry-first", water));
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
            let times = Argument::exact(times, Unit::None);
            offer("higher-ratio", say!("reach-higher-ratio", times));
        }
    }
    let weaker = |item: &StockItem| match item.ingredient().kind() {
        Kind::Spirit {
            strength_percent_vol,
        } => strength_percent_vol < STRONG,
        _ => false,
    };
    if missed.contains(&Target::Strength) && stock.iter().any(weaker) {
        let strong = StockItem::new(Ingredient::spirit(Strength::from_percent(STRONG)?));
        let stronger: Vec<StockItem> = stock
            .iter()
            .map(|item| if weaker(item) { strong } else { *item })
            .collect();
        if reaches(&stronger, plants, targets) {
            let strength = Argument::strength(STRONG);
            offer("stronger-spirit", say!("reach-stronger-spirit", strength));
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
