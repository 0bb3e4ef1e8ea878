//! From herbs, liquids and wishes to what is poured and what it becomes.
//!
//! One path for every preparation: the block of data says what is solved for, the
//! mixture engine says what the liquid is, the gates say whether it keeps.

mod asked;
mod controls;
mod draft;
mod forbidden;
mod help;
mod liquids;
mod parts;
mod plants;
mod poured;
mod pours;
mod proposal;
mod room;
mod shelf;
mod strength;
mod usual;

pub use asked::{Composition, Identity, Plant, Stock};
pub use controls::{Control, Controls};
pub use plants::PlantLine;
pub use poured::{AsPoured, as_poured};
pub use proposal::{Missed, Portion, PourLine, Proposal, Shortfall};
pub use room::Room;

pub(crate) use draft::{Draft, draft};
pub(crate) use forbidden::{forbidden, refuse_poison};
pub(crate) use plants::{LEAST_G, MOST_G};
pub(crate) use room::room;
pub(crate) use usual::published;

use message::{Argument, Message, Refusal, say};

use crate::{
    Failure, cautions,
    note::{Note, Status},
    preparations::{self, PlantState, Preparation},
};

/// Proposes what to pour.
///
/// # Errors
/// [`Failure`] with the field and the accepted range for an unknown preparation, a herb in the
/// wrong state, a vinegar under 5 %, a ratio of nothing, a jar smaller than the herb, and any
/// figure that is no number.
///
/// ```
/// use formulary::{compose::{Composition, Plant, compose}, preparations::PlantState};
/// let mint = Plant {
///     herb: "peppermint".into(), part: "leaf".into(), state: PlantState::Fresh,
///     mass_g: 100.0, moisture_wet_percent: None, told: None, identity: Default::default(),
/// };
/// let jar = compose(&Composition::of("glycerite", mint))?;
/// assert_eq!(jar.pours[0].name.id(), "glycerin-of");
/// assert!((jar.poured_ml - 200.0).abs() < 1e-6); // 1:2
/// # Ok::<(), formulary::Failure>(())
/// ```
pub fn compose(composition: &Composition) -> Result<Proposal, Failure> {
    let preparation = named(composition)?;
    compose_as(preparation, composition)
}

/// As [`compose`], by a preparation that need not be in the table.
///
/// # Errors
/// As [`compose`].
pub fn compose_as(
    preparation: &Preparation,
    composition: &Composition,
) -> Result<Proposal, Failure> {
    let draft = draft(preparation, composition)?;
    if let Some(weak) = draft.weak_vinegar() {
        return Err(weak.into());
    }
    refuse_poison(preparation, &draft.plants)?;
    let room = room(&draft, composition.jar_ml)?;
    let would_help = help::would_help(preparation, composition, &draft);
    let Draft {
        controls,
        pours,
        plants,
        liquid,
        short_of,
        keeping,
        mut reasons,
        ..
    } = draft;
    reasons.extend(soak(preparation, &plants));
    if !plants.is_empty() {
        reasons.push(room::assumption());
    }
    reasons.extend(preparation.notes().map(|text| {
        Note::new(
            "preparation",
            text,
            &preparation.method_source,
            preparation.method_status,
        )
    }));
    let subject = cautions::Subject {
        preparation,
        plants: &plants,
        purpose: None,
        kinds: &pours.iter().map(|pour| pour.kind).collect::<Vec<_>>(),
        strength_percent_vol: liquid.strength_percent_vol.high,
    };
    Ok(Proposal {
        preparation: static_key(preparation),
        controls,
        poured_ml: pours.iter().map(|pour| pour.ml).sum(),
        reached: short_of.is_empty(),
        short_of,
        would_help,
        jar: room,
        steep_days: preparation.steep_days.into(),
        cautions: cautions::for_jar(&subject),
        pours,
        plants,
        liquid,
        keeping,
        reasons,
    })
}

/// How much acid each plant lies in before the oil.
fn soak(preparation: &Preparation, plants: &[PlantLine]) -> Vec<Note> {
    let Some(soak) = &preparation.soak else {
        return Vec::new();
    };
    let line = |plant: &PlantLine| {
        let parts = if plant.herb == "garlic" {
            soak.garlic_parts
        } else {
            soak.parts
        };
        let (grams, acid) = (
            Argument::grams(plant.mass_g),
            Argument::grams(parts * plant.mass_g),
        );
        let text = if plant.herb == "garlic" {
            say!("soak-garlic", grams, acid)
        } else {
            say!("soak-herb", herb = plant.name(), grams, acid)
        };
        Note::new("soak", text, &soak.source, soak.status)
    };
    plants.iter().map(line).collect()
}

fn static_key(preparation: &Preparation) -> &'static str {
    preparations::all()
        .iter()
        .find(|one| one.key == preparation.key)
        .map_or("own", |one| &one.key)
}

/// The preparation that is named, or the refusal that lists the names.
///
/// # Errors
/// [`Refusal`] for a name that no preparation and no family has.
pub fn named(composition: &Composition) -> Result<&'static Preparation, Refusal> {
    let fresh = composition
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Fresh);
    let cooked = composition
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Cooked);
    let state = if fresh {
        PlantState::Fresh
    } else if cooked {
        PlantState::Cooked
    } else {
        PlantState::Dried
    };
    preparations::find(&composition.preparation, state).ok_or_else(|| {
        let mut families: Vec<&str> = Vec::new();
        for preparation in preparations::all() {
            if !families.contains(&preparation.family.as_str()) {
                families.push(&preparation.family);
            }
        }
        let text = say!(
            "preparation-unknown",
            asked = Argument::own(&composition.preparation),
            known = Argument::all_of(families.into_iter().map(Argument::own))
        );
        Refusal::new("preparation", text)
    })
}

/// The note that a liquid was assumed.
pub(crate) fn assumed(liquid: Message) -> Note {
    let text = say!("liquid-assumed", liquid);
    Note::new("assumed-liquid", text, "", Status::Practice)
}

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;
