//! What must not be made at all, and what must never be swallowed.

use message::{Argument, Message};

use super::PlantLine;
use crate::{
    constituents::Grade,
    herbs::{Herb, Limit},
    preparations::{Preparation, Purpose, Solvent},
    words,
};

/// Why it must not be made at all, whatever the liquid.
pub(crate) fn forbidden(preparation: &Preparation, plants: &[PlantLine]) -> Option<String> {
    let limited = plants.iter().find_map(|plant| {
        let herb = plant.known?;
        let (limit, note) = herb.limit_of(&plant.part)?;
        let serves = limit == Limit::Outside && serves_outside(preparation, herb);
        (!serves).then_some((herb, note))
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

/// Whether a herb that must not be swallowed may go into it: a liquid that is used on the skin, and
/// that takes up something of the herb. A syrup of it would only wait to be taken by mistake.
fn serves_outside(preparation: &Preparation, herb: &Herb) -> bool {
    preparation.uses.contains(&Purpose::Outside)
        && (preparation.grade == Solvent::Ethanol
            || herb.grade_in(preparation.grade) != Some(Grade::No))
}

/// Whether what becomes of the herbs must never be swallowed.
pub(super) fn is_for_outside_only(plants: &[PlantLine]) -> bool {
    plants
        .iter()
        .filter_map(|plant| plant.known?.limit_of(&plant.part))
        .any(|(limit, _)| limit == Limit::Outside)
}
