//! What a herb, a liquid and a pour are called where they stand in a sentence.

use formulary::herbs;
use journal::{Item, Pour};
use message::{Argument, Message, say};
use physics::mixture::Oil;

use crate::herb::Known;

/// A herb as it is called: one of the tables by its entry, the maker's own as the maker wrote it.
pub fn herb(known: &Known) -> Argument {
    known
        .entry
        .map_or_else(|| Argument::own(&known.common), |entry| entry.name().into())
}

/// As [`herb`] for the herb of a key of the journal, whose title is `common`.
pub fn herb_of(key: &str, common: &Message) -> Argument {
    herbs::find(key)
        .map_or_else(|| common.clone(), herbs::Herb::name)
        .into()
}

/// A herb where its name stands alone or begins a line.
pub fn title(known: &Known) -> Message {
    match known.entry {
        Some(entry) => say!("title", name = entry.name()),
        None => Message::own(&known.common),
    }
}

/// The part of a plant.
pub fn part(part: &str) -> Argument {
    herbs::part_name(part).into()
}

/// A plant with its part inside a sentence.
pub fn plant(known: &Known, of: &str) -> Argument {
    say!("herb-with-part", herb = herb(known), part = part(of)).into()
}

/// A plant with its part where it stands alone: "Peppermint leaf".
pub fn plant_title(known: &Known, of: &str) -> Message {
    say!("title", name = plant(known, of))
}

/// A plant in a list of what is in a bottle.
pub fn ingredient(known: &Known, of: &str) -> Argument {
    say!("plant-part", herb = herb(known), part = part(of)).into()
}

/// A liquid by what it is; an oil by its plant.
pub fn liquid(item: &Item) -> Argument {
    let Some(oil) = item.oil() else {
        return item.kind().name().into();
    };
    let known = Oil::from_key(oil);
    known.map_or_else(|| Argument::own(oil), |oil| oil.name().into())
}

/// A liquid as it was poured: a supply that topped a jar up is called what its maker calls it, any other by what it is.
/// The name that the journal keeps beside it is one of English whatever the maker speaks.
pub fn poured(pour: &Pour) -> Message {
    match (&pour.added, pour.supply, pour.item.ingredient()) {
        (Some(_), Some(_), _) | (_, _, Err(_)) => Message::own(&pour.name),
        (_, _, Ok(ingredient)) => ingredient.name(),
    }
}

/// What was poured and how much.
pub fn pour(name: &Message, ml: f64) -> Argument {
    say!(
        "chain-pour",
        name = name.clone(),
        ml = Argument::millilitres(ml)
    )
    .into()
}
