//! `recipe.class`, `recipe.class_cards`, `recipe.class_labels`: a jar of a recipe for each of several people.

use ::paper::{Paper, card};
use formulary::preparations::Verdict;
use journal::Recipe;
use message::{Argument, Failure, Message, Unit, say};
use reckon::jar::proposal::Proposal;
use reckon::plan::class::{self, ClassHerb};
use reckon::plan::merged::{ToBuyAll, to_buy};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::open::Open;
use crate::printed::PrintedFile;
use crate::recipe::card::{Made, recipe_of};
use crate::recipe::tag;
use crate::recipe::worked::{Liquids, Worked, composition};
use crate::request::Command;

/// A room holds no more, and neither does a table of jars.
const MOST_PEOPLE: u32 = 60;
/// The jars that a class fills, mL.
const JARS_ML: (f64, f64) = (20.0, 5000.0);

/// What `people` jars of a recipe need, each of `jar_ml`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PlanClass {
    pub recipe: Option<String>,
    pub jar: Option<String>,
    pub people: u32,
    pub jar_ml: f64,
}

/// A card for each of them, as one file.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintClassCards {
    pub recipe: Option<String>,
    pub jar: Option<String>,
    pub people: u32,
    pub jar_ml: f64,
    pub size: card::Size,
    pub note: bool,
}

/// A label for each of them, on sheets.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintClassLabels {
    pub recipe: Option<String>,
    pub jar: Option<String>,
    pub people: u32,
    pub jar_ml: f64,
    pub paper: Paper,
}

/// The answer to [`PlanClass`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ClassPlan {
    pub name: String,
    pub preparation_name: Message,
    pub people: u32,
    /// One jar, worked out with the liquids on the own shelf.
    pub each: Proposal,
    pub herbs: Vec<ClassHerb>,
    /// The liquids of all jars, less what the shelf holds.
    pub liquids: Vec<ToBuyAll>,
    /// Why the own liquids do not make it; it is then worked out with those of the recipe.
    pub own_liquids_fail: Option<Message>,
}

/// A class as it was asked for, its recipe fitted to the jar.
struct Class {
    recipe: Recipe,
    people: u32,
}

impl Class {
    fn of(
        app: &Open,
        reading: &Reading<'_>,
        named: (Option<String>, Option<String>),
        people: u32,
        jar_ml: f64,
    ) -> Result<Self, Failure> {
        if !(1..=MOST_PEOPLE).contains(&people) {
            let message = say!("class-people", most = MOST_PEOPLE);
            return Err(Failure::invalid("people", message));
        }
        let (least, most) = JARS_ML;
        if !(least..=most).contains(&jar_ml) {
            let message = say!(
                "class-jar",
                least = Argument::exact(least, Unit::None),
                most = Argument::exact(most, Unit::Millilitre)
            );
            return Err(Failure::invalid("jar_ml", message));
        }
        let recipe = recipe_of(reading, named.0, named.1)?;
        let whole = worked(app, reading, &recipe, Liquids::OfRecipe)?;
        if whole.proposal.keeping.verdict == Verdict::DoNotMake {
            let message = say!("class-must-not-be-made");
            return Err(Failure::invalid("recipe", message));
        }
        let times = jar_ml / whole.proposal.jar.needed_ml.value;
        let recipe = scaled(recipe, times);
        if recipe.plants.iter().any(|plant| plant.mass_g < LEAST_G) {
            return Err(Failure::invalid("jar_ml", say!("class-jar-too-small")));
        }
        Ok(Self { recipe, people })
    }
}

/// Less than that no kitchen scale weighs.
const LEAST_G: f64 = 0.1;

/// So many times a recipe, rounded down to what a scale shows, so that it still fits its jar.
fn scaled(mut recipe: Recipe, times: f64) -> Recipe {
    for plant in &mut recipe.plants {
        let mass = plant.mass_g * times;
        // A hair, so that a whole gram stays one.
        let cut = |steps: f64| (mass * steps + 1e-6).floor() / steps;
        plant.mass_g = if mass < 10.0 { cut(10.0) } else { cut(1.0) };
    }
    recipe
}

fn worked(
    app: &Open,
    reading: &Reading<'_>,
    recipe: &Recipe,
    liquids: Liquids,
) -> Result<Worked, Failure> {
    // Whatever was asked about its plants was answered when it was poured.
    let composition = composition(reading, recipe, liquids, true)?;
    Worked::of(app, reading, &composition)
}

impl Command for PlanClass {
    const NAME: &'static str = "recipe.class";
    type Reply = ClassPlan;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let named = (self.recipe, self.jar);
        app.read(|reading| {
            let class = Class::of(app, reading, named, self.people, self.jar_ml)?;
            let own = worked(app, reading, &class.recipe, Liquids::OwnLabels);
            let (jar, own_liquids_fail) = match own {
                Ok(own) => (own, None),
                Err(why) => {
                    let theirs = worked(app, reading, &class.recipe, Liquids::OfRecipe)?;
                    (theirs, Some(why.message))
                }
            };
            let plants = jar.known.iter().zip(&jar.proposal.plants);
            let herbs = plants
                .map(|(known, line)| class::herb(reading, known, line, class.people))
                .collect::<Result<_, _>>()?;
            let pours = jar.proposal.pours.iter();
            Ok(ClassPlan {
                liquids: to_buy(reading, pours, f64::from(class.people))?,
                name: class.recipe.name,
                preparation_name: jar.preparation.title(),
                people: class.people,
                herbs,
                each: jar.proposal,
                own_liquids_fail,
            })
        })
    }
}

impl Command for PrintClassCards {
    const NAME: &'static str = "recipe.class_cards";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let named = (self.recipe, self.jar);
        let (made, people) = app.read(|reading| {
            let class = Class::of(app, reading, named, self.people, self.jar_ml)?;
            let jar = worked(app, reading, &class.recipe, Liquids::OfRecipe)?;
            let units = reading.setting()?.units;
            let made = Made::worked(&class.recipe, &jar, units, self.note)?;
            Ok((made, class.people))
        })?;
        let cards = vec![made.card; people as usize];
        let mut drawn = card::pdf(&cards, self.size)?;
        drawn.remarks.extend(made.remarks);
        let name = format!("cards-{}.pdf", app.now().date_naive());
        Ok(PrintedFile::pdf(name, drawn))
    }
}

impl Command for PrintClassLabels {
    const NAME: &'static str = "recipe.class_labels";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let named = (self.recipe, self.jar);
        let labels = app.read(|reading| {
            let class = Class::of(app, reading, named, self.people, self.jar_ml)?;
            let jar = worked(app, reading, &class.recipe, Liquids::OfRecipe)?;
            tag::labels(reading, &class.recipe, &jar, class.people)
        })?;
        let sheet = ::paper::Sheet::new(self.paper, tag::size()?);
        let drawn = ::paper::sheet_pdf(&labels, &sheet)?;
        let name = format!("labels-{}.pdf", app.now().date_naive());
        Ok(PrintedFile::pdf(name, drawn))
    }
}
