//! `recipe.read_code`, `recipe.take_in`: a recipe that came on a card.

use formulary::preparations::Step;
use formulary::preparations::Verdict;
use journal::{Recipe, RecipeId};
use message::{Argument, Failure, Message, say};
use reckon::jar::proposal::Proposal;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::open::Open;
use crate::recipe::carried::{of_the_code, recipe_in};
use crate::recipe::worked::{Liquids, Worked, composition};
use crate::recipe::{RecipeLine, RecipeWritten};
use crate::request::Command;

/// What is in this code? Nothing is written.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ReadRecipeCode {
    pub text: String,
    /// A deliberate yes to what the list of poisonous plants asks.
    pub confirmed: Option<bool>,
}

/// The recipe of a code is to be kept.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TakeInRecipe {
    pub text: String,
    pub confirmed: Option<bool>,
}

/// The answer to [`ReadRecipeCode`]: the recipe, worked out with the liquids on the reader's own shelf.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct RecipeRead {
    pub name: String,
    pub note: Option<String>,
    pub preparation_name: Message,
    pub proposal: Proposal,
    pub steps: Vec<Step>,
    /// Why the reader's own liquids do not make it; it is then worked out with those of the recipe.
    pub own_liquids_fail: Option<Message>,
    /// Whether it may be kept: nothing that should not be made comes into the book.
    pub may_be_kept: bool,
    /// The recipe of the book that says the same.
    pub kept_as: Option<String>,
}

impl Command for ReadRecipeCode {
    const NAME: &'static str = "recipe.read_code";
    type Reply = RecipeRead;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let recipe = recipe_in(&self.text)?;
        let confirmed = self.confirmed.unwrap_or(false);
        app.read(|reading| {
            let theirs = made(app, reading, &recipe, confirmed)?;
            let may_be_kept = theirs.proposal.keeping.verdict != Verdict::DoNotMake;
            let own = composition(reading, &recipe, Liquids::OwnLabels, confirmed)
                .and_then(|composition| Worked::of(app, reading, &composition));
            let (worked, own_liquids_fail) = match own {
                Ok(own) => (own, None),
                Err(why) => (theirs, Some(why.message)),
            };
            Ok(RecipeRead {
                kept_as: kept_as(reading, &recipe)?,
                preparation_name: worked.preparation.title(),
                steps: worked.steps,
                proposal: worked.proposal,
                name: recipe.name,
                note: recipe.note,
                own_liquids_fail,
                may_be_kept,
            })
        })
    }
}

impl Command for TakeInRecipe {
    const NAME: &'static str = "recipe.take_in";
    type Reply = RecipeWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let recipe = recipe_in(&self.text)?;
        let confirmed = self.confirmed.unwrap_or(false);
        let id = RecipeId(app.new_id());
        let (done, recipe) = app.perform(|writing| {
            let worked = made(app, writing, &recipe, confirmed)?;
            if worked.proposal.keeping.verdict == Verdict::DoNotMake {
                let message = say!("code-must-not-be-made");
                return Err(Failure::invalid("text", message));
            }
            if kept_as(writing, &recipe)?.is_some() {
                return Err(Failure::invalid("text", say!("code-is-kept-already")));
            }
            writing.record(&id, &recipe)?;
            let line = RecipeLine::of(writing, &id, recipe)?;
            let name = Argument::own(&line.name);
            Ok((say!("deed-recipe-taken-in", name), line))
        })?;
        Ok(RecipeWritten { done, recipe })
    }
}

/// The recipe by its own liquids, with every stop of the engine.
fn made(
    app: &Open,
    reading: &Reading<'_>,
    recipe: &Recipe,
    confirmed: bool,
) -> Result<Worked, Failure> {
    composition(reading, recipe, Liquids::OfRecipe, confirmed)
        .and_then(|composition| Worked::of(app, reading, &composition))
        .map_err(of_the_code)
}

/// The recipe of the book that is made alike and called alike.
fn kept_as(reading: &Reading<'_>, recipe: &Recipe) -> Result<Option<String>, Failure> {
    let bare = |recipe: &Recipe| Recipe {
        jar: None,
        stars: None,
        note: None,
        name: recipe.name.trim().to_owned(),
        ..recipe.clone()
    };
    let wanted = bare(recipe);
    let kept = reading.recipes()?;
    let same = kept.iter().find(|(_, kept)| bare(kept) == wanted);
    Ok(same.map(|(id, _)| id.to_string()))
}
