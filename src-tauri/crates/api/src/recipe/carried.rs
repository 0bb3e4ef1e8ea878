//! A recipe as a code carries it, out of this book and into another.
//!
//! The text is one JSON array: name, preparation, plants, liquids, the ratio in mL a gram, the strength and what it is
//! fortified to in % vol, the share of glycerin, the note. A plant is its herb, part, state and mass in g; a liquid its
//! kind, the figures of its label in the order of `physics::mixture::Item`, and the plant of an oil. Herb, part, kind
//! and preparation are the words of the book, so it reads the same in every language. No row, no lot, no maker and no
//! day is in it.

use formulary::herbs;
use formulary::poison::{self, Use};
use formulary::preparations;
use journal::{HerbKey, Item, Kept, PlantState, Recipe, RecipePlant};
use message::{Argument, Failure, Message, say};
use physics::mixture::IngredientKind;
use serde::{Deserialize, Serialize};

/// A maker's note of this many characters fits beside a recipe of several herbs.
const LONGEST_NOTE: usize = 200;
/// More plants, or more liquids, than one jar takes.
const MOST_LINES: usize = 12;

type Plant = (String, String, PlantState, f64);
type Liquid = (IngredientKind, Vec<f64>, Option<String>);

/// The text, field by field.
#[derive(Debug, Serialize, Deserialize)]
struct Carried(
    String,
    String,
    Vec<Plant>,
    Vec<Liquid>,
    Option<f64>,
    Option<f64>,
    Option<f64>,
    Option<f64>,
    Option<String>,
);

/// A link, or why there is none.
pub(crate) enum Link {
    /// The link with what was left out of it.
    Made(String, Option<Message>),
    /// Why no code can hold this recipe.
    None(Message),
}

/// The link that holds a recipe, with the maker's note where it is to be told.
pub(crate) fn link(recipe: &Recipe, tells_note: bool) -> Result<Link, Failure> {
    if recipe
        .plants
        .iter()
        .any(|plant| plant.herb.as_own().is_some())
    {
        return Ok(Link::None(say!("card-own-herb")));
    }
    let note = recipe.note.as_ref().filter(|_| tells_note);
    let short = note.filter(|note| note.chars().count() <= LONGEST_NOTE);
    let left_out = || say!("card-note-left-out", most = LONGEST_NOTE);
    for note in short.map(Some).into_iter().chain([None]) {
        let text = text(recipe, note)?;
        if let Some(link) = ::paper::packed::link_of(&text) {
            let is_less = tells_note && recipe.note.is_some() && note.is_none();
            return Ok(Link::Made(link, is_less.then(left_out)));
        }
    }
    Ok(Link::None(say!("card-too-much-for-a-code")))
}

fn text(recipe: &Recipe, note: Option<&String>) -> Result<String, Failure> {
    let plants = recipe.plants.iter().map(|plant| {
        let RecipePlant {
            herb,
            part,
            state,
            mass_g,
        } = plant;
        (herb.to_string(), part.clone(), *state, *mass_g)
    });
    let liquids = recipe.stock.iter().map(|item| {
        let figures = item.figures().into_iter().map(|(_, figure)| figure);
        (
            item.kind(),
            figures.collect(),
            item.oil().map(str::to_owned),
        )
    });
    let carried = Carried(
        recipe.name.trim().to_owned(),
        recipe.preparation.clone(),
        plants.collect(),
        liquids.collect(),
        recipe.ratio_ml_per_g,
        recipe.strength_percent_vol,
        recipe.fortify_percent_vol,
        recipe.glycerin_percent_vol,
        note.cloned(),
    );
    serde_json::to_string(&carried).map_err(|_| refused(say!("code-damaged")))
}

fn refused(message: Message) -> Failure {
    Failure::invalid("text", message)
}

/// The recipe in what was scanned, typed or pasted; every word of it is a stranger's.
///
/// Whether it can be made is for the engine to say, which is asked next.
pub(crate) fn recipe_in(link: &str) -> Result<Recipe, Failure> {
    let text = ::paper::packed::text_in(link)?;
    let strange = |_| refused(say!("code-damaged"));
    let Carried(name, preparation, plants, liquids, ratio, strength, fortify, glycerin, note) =
        serde_json::from_str(&text).map_err(strange)?;
    if plants.len() > MOST_LINES || liquids.len() > MOST_LINES {
        return Err(refused(say!("code-too-much", most = MOST_LINES)));
    }
    let own = [Some(&name), note.as_ref()];
    if !own.into_iter().flatten().all(|text| is_plain(text)) {
        return Err(refused(say!("code-hidden-letters")));
    }
    if note
        .as_ref()
        .is_some_and(|note| note.chars().count() > LONGEST_NOTE)
    {
        return Err(refused(say!("code-damaged")));
    }
    if preparations::of_key(&preparation).is_none() {
        return Err(refused(say!("code-preparation-unknown")));
    }
    let recipe = Recipe {
        name,
        jar: None,
        plants: plants.into_iter().map(plant).collect::<Result<_, _>>()?,
        stock: liquids.into_iter().map(liquid).collect::<Result<_, _>>()?,
        preparation,
        ratio_ml_per_g: ratio,
        strength_percent_vol: strength,
        glycerin_percent_vol: glycerin,
        fortify_percent_vol: fortify,
        stars: None,
        note,
    };
    recipe.check_typed().map_err(of_the_code)?;
    recipe.check().map_err(of_the_code)?;
    Ok(recipe)
}

/// A refusal of something in the code, which the reader cannot mend field by field.
pub(crate) fn of_the_code(why: impl Into<Failure>) -> Failure {
    let why = why.into();
    Failure {
        field: Some("text".to_owned()),
        ..why
    }
}

fn plant((herb, part, state, mass_g): Plant) -> Result<RecipePlant, Failure> {
    let book = herbs::all().iter().find(|known| known.key == herb);
    let Some(book) = book else {
        // What is poisonous is said so, though the book has no herb of that name.
        let stop =
            poison::called(&herb, None).and_then(|called| called.stop(&part, Use::Inside, false));
        return Err(refused(match stop {
            Some(stop) => stop.note.text,
            None if is_plain(&herb) => say!("code-herb-unknown", name = Argument::own(herb)),
            None => say!("code-hidden-letters"),
        }));
    };
    if !book.parts().contains(&part.as_str()) {
        return Err(refused(say!("code-part-unknown", herb = book.name())));
    }
    let key: HerbKey = (herb.parse()).map_err(|_| refused(say!("code-damaged")))?;
    Ok(RecipePlant {
        herb: key,
        part,
        state,
        mass_g,
    })
}

fn liquid((kind, figures, oil): Liquid) -> Result<Item, Failure> {
    let damaged = || refused(say!("code-damaged"));
    let mut left = figures.into_iter();
    let item = Item::read(
        kind,
        |_, _| left.next().ok_or_else(damaged),
        || oil.clone().ok_or_else(damaged),
    )?;
    let is_whole = left.next().is_none() && item.oil().is_some() == oil.is_some();
    if !is_whole {
        return Err(damaged());
    }
    // What the label may say, and which oils there are, the engine holds it to.
    item.ingredient().map_err(of_the_code)?;
    Ok(item)
}

/// Whether a text is of letters that everybody sees: no marks that turn, hide or end what stands beside them.
fn is_plain(text: &str) -> bool {
    let is_hidden = |letter: char| {
        matches!(letter, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}'
            | '\u{feff}' | '\u{fdd0}'..='\u{fdef}' | '\u{fff0}'..='\u{ffff}' | '\u{e0000}'..='\u{e0fff}')
            || (letter.is_control() && letter != '\n')
            || u32::from(letter) & 0xfffe == 0xfffe
    };
    !text.contains(is_hidden)
}
