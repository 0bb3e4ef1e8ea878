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

pub use asked::{Composition, Identity, Plant, Refusal, Stock};
pub use controls::{Control, Controls};
pub use liquids::name;
pub use plants::{PlantLine, TOLD_WATER};
pub use poured::{AsPoured, as_poured};
pub use proposal::{PourLine, Proposal, Shortfall};
pub use room::Room;

pub(crate) use draft::{Draft, draft};
pub(crate) use forbidden::{forbidden, refuse_poison};
pub(crate) use liquids::kind_word;
pub(crate) use plants::{LEAST_G, MOST_G};
pub(crate) use room::room;
pub(crate) use usual::published;

use message::{Argument, Message};

use crate::{
    cautions,
    note::{Note, Status},
    preparations::{self, PlantState, Preparation},
    words,
};

/// Proposes what to pour.
///
/// # Errors
/// [`Refusal`] with the field and the accepted range for an unknown preparation, a herb in the
/// wrong state, a vinegar under 5 %, a ratio of nothing, a jar smaller than the herb, and any
/// figure that is no number.
///
/// ```
/// use formulary::{compose::{Composition, Plant, compose}, preparations::PlantState};
/// let mint = Plant {
///     herb: "peppermint".into(), part: "leaf".into(), state: PlantState::Fresh,
///     mass_g: 100.0, moisture_wet_percent: None, identity: Default::default(),
/// };
/// let jar = compose(&Composition::of("glycerite", mint))?;
/// assert_eq!(jar.pours[0].name, "glycerin of 99.5 %");
/// assert!((jar.poured_ml - 200.0).abs() < 1e-6); // 1:2
/// # Ok::<(), formulary::compose::Refusal>(())
/// ```
pub fn compose(composition: &Composition) -> Result<Proposal, Refusal> {
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
) -> Result<Proposal, Refusal> {
    let draft = draft(preparation, composition)?;
    if let Some(weak) = draft.weak_vinegar() {
        return Err(weak);
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
    reasons.extend(preparation.notes.iter().map(|text| {
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
        steep_days: preparation.steep_days,
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
        let herb = plant.known.map_or_else(
            || Argument::own(&plant.common),
            |herb| Argument::herb(&herb.common),
        );
        let text = if plant.herb == "garlic" {
            Message::new("soak-garlic")
                .with("grams", Argument::grams(plant.mass_g))
                .with("acid", Argument::grams(parts * plant.mass_g))
        } else {
            Message::new("soak-herb")
                .with("herb", herb)
                .with("grams", Argument::grams(plant.mass_g))
                .with("acid", Argument::grams(parts * plant.mass_g))
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
        let mut families: Vec<String> = Vec::new();
        for preparation in preparations::all() {
            if !families.contains(&preparation.family) {
                families.push(preparation.family.clone());
            }
        }
        let known = words::list(&families);
        Refusal::new(
            "preparation",
            format!(
                "\"{}\" is no preparation known here; known are {known}.",
                composition.preparation
            ),
        )
    })
}

/// The note that a liquid was assumed.
pub(crate) fn assumed(name: &str) -> Note {
    Note::new(
        "assumed-liquid",
        format!("Counted with {name}, since none is at hand."),
        "",
        Status::Practice,
    )
}

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;
