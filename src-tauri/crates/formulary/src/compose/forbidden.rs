//! What must not be made at all, and what must never be swallowed.

use message::{Argument, Message};

use super::{PlantLine, Refusal};
use crate::{
    constituents::Grade,
    herbs::{Herb, Limit},
    poison::{Kind, Stop, Use},
    preparations::{PlantState, Preparation, Purpose, Solvent},
    words,
};

/// Why it must not be made at all, whatever the liquid.
pub(crate) fn forbidden(preparation: &Preparation, plants: &[PlantLine]) -> Option<String> {
    if let Some((_, stop)) = stopped(preparation, plants) {
        return Some(format!("Do not make it: {}", stop.note.text));
    }
    let limited = plants.iter().find_map(|plant| {
        let herb = plant.known?;
        let (limit, note) = herb.limit_of(&plant.part)?;
        let serves = limit == Limit::Outside && serves_outside(preparation, herb);
        let cooked = limit == Limit::Cook && plant.state == PlantState::Cooked;
        (!serves && !cooked).then_some((herb, note))
    });
    if let Some((herb, note)) = limited {
        if !herb.use_text.is_empty() {
            return Some(format!("Do not make it: {}.", herb.use_text));
        }
        let why = Argument::message(Message::plain(note.text));
        return Some(Message::new("do-not-make").with("why", why).into());
    }
    let only = preparation.only.as_ref()?;
    let other = plants
        .iter()
        .find(|plant| plant.known.is_none_or(|herb| !only.contains(&herb.key)))?;
    Some(format!(
        "Do not make it: this was tested with {} only, not with {}.",
        words::list(only),
        words::herb(&other.common)
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
/// [`Refusal`] of the plant; `asks` where a deliberate yes would let it pass.
pub(crate) fn refuse_poison(
    preparation: &Preparation,
    plants: &[PlantLine],
) -> Result<(), Refusal> {
    match stopped(preparation, plants) {
        Some((at, stop)) => Err(Refusal {
            asks: stop.asks,
            ..Refusal::new(format!("plants[{at}].herb"), stop.note.text)
        }),
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
