//! What must not be made at all, and what must never be swallowed.

use message::{Argument, Message, Refusal, say};

use super::PlantLine;
use crate::{
    Failure,
    constituents::Grade,
    herbs::{self, Herb, Limit},
    poison::{Kind, Stop, Use},
    preparations::{PlantState, Preparation, Purpose, Solvent},
};

/// Why it must not be made at all, whatever the liquid: a whole sentence.
pub(crate) fn forbidden(preparation: &Preparation, plants: &[PlantLine]) -> Option<Message> {
    if let Some((_, stop)) = stopped(preparation, plants) {
        return Some(stop.note.text);
    }
    let limited = plants.iter().find_map(|plant| {
        let herb = plant.known?;
        let (limit, note) = herb.limit_of(&plant.part)?;
        let serves = limit == Limit::Outside && serves_outside(preparation, herb);
        let cooked = limit == Limit::Cook && plant.state == PlantState::Cooked;
        (!serves && !cooked).then_some(note)
    });
    if let Some(note) = limited {
        return Some(note.text);
    }
    let only = preparation.only.as_ref()?;
    let other = plants
        .iter()
        .find(|plant| plant.known.is_none_or(|herb| !only.contains(&herb.key)))?;
    let herbs = only.iter().filter_map(|key| herbs::find(key));
    Some(say!(
        "tested-with-only",
        herbs = Argument::all_of(herbs.map(|herb| herb.name().into())),
        other = other.name()
    ))
}

/// The first plant that the list of poisonous ones stops in this preparation.
fn stopped(preparation: &Preparation, plants: &[PlantLine]) -> Option<(usize, Stop)> {
    let stops = plants.iter().enumerate().filter_map(|(at, plant)| {
        let is_for_skin = match plant.known {
            Some(herb) => serves_outside(preparation, herb),
            None => preparation.uses.contains(&Purpose::Outside),
        };
        let use_ = match is_for_skin {
            true => Use::Outside,
            false => Use::Inside,
        };
        Some((at, plant.stop(use_)?))
    });
    // What no yes lets pass is said before what asks for one.
    stops.min_by_key(|(_, stop)| stop.asks)
}

/// Gives no amounts for a plant of the list.
///
/// # Errors
/// [`Failure`] of the plant, which asks where a deliberate yes would let it pass.
pub(crate) fn refuse_poison(
    preparation: &Preparation,
    plants: &[PlantLine],
) -> Result<(), Failure> {
    match stopped(preparation, plants) {
        Some((at, stop)) => {
            let refusal = Refusal::new(format!("plants[{at}].herb"), stop.note.text);
            Err(match stop.asks {
                true => Failure::Asks(refusal),
                false => Failure::Refused(refusal),
            })
        }
        None => Ok(()),
    }
}

/// Whether a herb that must not be swallowed may go into it: a liquid that is used on the skin, and
/// that takes up something of the herb. A syrup of it would only wait to be taken by mistake.
fn serves_outside(preparation: &Preparation, herb: &Herb) -> bool {
    preparation.uses.contains(&Purpose::Outside)
        && (preparation.grade == Solvent::Ethanol
            || herb.grade_in(preparation.grade) != Some(Grade::No))
}

/// Whether what becomes of the herbs must never be swallowed.
pub(super) fn is_for_outside_only(plants: &[PlantLine]) -> bool {
    plants.iter().any(|plant| {
        let is_listed = plant
            .called
            .as_ref()
            .is_some_and(|called| called.plant.stop == Kind::Inside);
        let limit = plant.known.and_then(|herb| herb.limit_of(&plant.part));
        is_listed || limit.is_some_and(|(limit, _)| limit == Limit::Outside)
    })
}
