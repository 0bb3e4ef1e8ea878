//! `jar.keep_recipe`: a jar's aims as a recipe.

use journal::{Jar, JarId, Recipe, RecipeId};
use message::{Argument, Failure, say};
use reckon::asked;
use reckon::jar::again::aims;
use serde::Deserialize;

use crate::open::Open;
use crate::recipe::{RecipeLine, RecipeWritten};
use crate::request::Command;

/// The recipe of a jar is to be kept.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct KeepRecipe {
    pub jar: String,
    pub name: String,
    pub note: Option<String>,
    pub stars: Option<u8>,
}

impl Command for KeepRecipe {
    const NAME: &'static str = "jar.keep_recipe";
    type Reply = RecipeWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let id = RecipeId(app.new_id());
        let (done, line) = app.perform(|writing| {
            let jar = writing
                .get::<Jar>(&jar_id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            let recipe = Recipe {
                name: self.name.trim().to_owned(),
                jar: Some(jar_id),
                note: asked::text(self.note),
                stars: self.stars.filter(|stars| *stars > 0),
                ..aims(writing, &jar)?
            };
            writing.record(&id, &recipe)?;
            let line = RecipeLine::of(writing, &id, recipe)?;
            Ok((
                say!("deed-recipe-saved", name = Argument::own(&line.name)),
                line,
            ))
        })?;
        Ok(RecipeWritten { done, recipe: line })
    }
}
