//! `recipe.card`, `recipe.hand_out`: a recipe as a card, to be looked at, printed and handed over.

use ::paper::Herb;
use ::paper::card::{Card, Size};
use ::paper::{card, packed};
use formulary::preparations::Verdict;
use journal::{Jar, JarId, Recipe, RecipeId, Units};
use message::{Failure, Message, say};
use reckon::asked;
use reckon::jar::again::aims;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::open::Open;
use crate::printed::PrintedFile;
use crate::recipe::carried::{self, Link};
use crate::recipe::told;
use crate::recipe::worked::{Liquids, Worked, composition};
use crate::request::Command;
use crate::speech;

/// The card of a recipe, or of the recipe of a jar, as pictures.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct DrawCard {
    pub recipe: Option<String>,
    pub jar: Option<String>,
    pub size: Size,
    /// Whether the maker's own note stands on it and in its code.
    pub note: bool,
}

/// The card on paper.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintCard {
    pub recipe: Option<String>,
    pub jar: Option<String>,
    pub size: Size,
    pub note: bool,
}

/// The code that holds the recipe.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CardCode {
    pub link: String,
    pub svg: String,
}

/// The answer to [`DrawCard`]: its sides, and its code alone for the screen.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct CardDrawn {
    pub name: String,
    pub has_note: bool,
    pub sides: Vec<String>,
    pub code: Option<CardCode>,
    pub remarks: Vec<String>,
}

impl Command for DrawCard {
    const NAME: &'static str = "recipe.card";
    type Reply = CardDrawn;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let made = Made::of(app, self.recipe, self.jar, self.note)?;
        let drawn = card::svg(&made.card, self.size);
        let remarks = made.remarks.into_iter().chain(drawn.remarks);
        let code = made.card.code.and_then(|link| {
            let svg = packed::svg_of(&link, &made.card.name)?;
            Some(CardCode { link, svg })
        });
        Ok(CardDrawn {
            name: made.card.name,
            has_note: made.has_note,
            sides: drawn.bytes,
            code,
            remarks: remarks.map(String::from).collect(),
        })
    }
}

impl Command for PrintCard {
    const NAME: &'static str = "recipe.hand_out";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let made = Made::of(app, self.recipe, self.jar, self.note)?;
        let mut drawn = card::pdf(&[made.card], self.size)?;
        drawn.remarks.extend(made.remarks);
        let name = format!("card-{}.pdf", app.now().date_naive());
        Ok(PrintedFile::pdf(name, drawn))
    }
}

/// A card, and what the maker should know of it.
pub(crate) struct Made {
    pub card: Card,
    pub has_note: bool,
    pub remarks: Vec<Message>,
}

/// The recipe that is named, kept or as a jar was poured.
pub(crate) fn recipe_of(
    reading: &Reading<'_>,
    recipe: Option<String>,
    jar: Option<String>,
) -> Result<Recipe, Failure> {
    match (recipe, jar) {
        (Some(id), None) => {
            let id: RecipeId = asked::id("recipe", &id)?;
            let kept = reading.get::<Recipe>(&id);
            kept.map_err(|why| Failure::from(why).renamed("recipe"))
        }
        (None, Some(id)) => {
            let id: JarId = asked::id("jar", &id)?;
            let jar = reading
                .get::<Jar>(&id)
                .map_err(|why| Failure::from(why).renamed("jar"))?;
            if jar.marc_of.is_some() {
                return Err(Failure::invalid("jar", say!("card-second-pouring")));
            }
            aims(reading, &jar)
        }
        _ => Err(Failure::invalid("recipe", say!("recipe-or-jar"))),
    }
}

impl Made {
    fn of(
        app: &Open,
        recipe: Option<String>,
        jar: Option<String>,
        tells_note: bool,
    ) -> Result<Self, Failure> {
        app.read(|reading| {
            let recipe = recipe_of(reading, recipe, jar)?;
            // Whatever was asked about its plants was answered when it was poured.
            let composition = composition(reading, &recipe, Liquids::OfRecipe, true)?;
            let worked = Worked::of(app, reading, &composition)?;
            let units = reading.setting()?.units;
            Self::worked(&recipe, &worked, units, tells_note)
        })
    }

    /// The card of a recipe that was worked out.
    pub(crate) fn worked(
        recipe: &Recipe,
        worked: &Worked,
        units: Units,
        tells_note: bool,
    ) -> Result<Self, Failure> {
        let proposal = &worked.proposal;
        let verdict = proposal.keeping.verdict;
        if verdict == Verdict::DoNotMake {
            return Err(Failure::invalid("recipe", say!("card-must-not-be-made")));
        }
        let (code, remark) = match carried::link(recipe, tells_note)? {
            Link::Made(link, remark) => (Some(link), remark),
            Link::None(why) => (None, Some(why)),
        };
        let language = speech::language();
        let counted = |message: Message| match units {
            Units::Us => message.in_us_units(),
            Units::Metric => message,
        };
        let pairs = |of: Vec<(Message, Message)>| -> Vec<(Message, Message)> {
            of.into_iter()
                .map(|(a, b)| (counted(a), counted(b)))
                .collect()
        };
        let herb = worked.known.first().zip(recipe.plants.first());
        let herb = herb.map(|(known, plant)| Herb {
            name: reckon::told::herb(known),
            key: known.key.to_string(),
            part: plant.part.clone(),
        });
        let steps = worked.steps.iter().map(|step| {
            let (title, text) = (step.title.clone(), step.text.clone());
            counted(say!("card-step", title, text))
        });
        let keeping = std::iter::once(worked.preparation.storage(verdict));
        let keeping = keeping.chain(worked.preparation.spoilage());
        let card = Card {
            language,
            name: recipe.name.clone(),
            preparation: worked.preparation.title(),
            latin: worked
                .known
                .iter()
                .filter_map(|known| known.latin.clone())
                .collect(),
            herb,
            amounts: pairs(told::amounts(worked)),
            facts: pairs(told::facts(worked)),
            steps: steps.collect(),
            keeping: keeping.map(counted).collect(),
            ways: told::ways(worked).into_iter().map(counted).collect(),
            cautions: told::cautions(worked)
                .into_iter()
                .map(|(weight, it)| (weight, counted(it)))
                .collect(),
            note: recipe.note.clone().filter(|_| tells_note),
            code,
        };
        Ok(Self {
            card,
            has_note: recipe.note.is_some(),
            remarks: remark.into_iter().collect(),
        })
    }
}
