//! `jar.list` and `jar.show`: the jars with their day, and the recipe as poured.

use chrono::{DateTime, FixedOffset};
use formulary::preparations;
use journal::{Jar, JarId, Source, days_since};
use store::{JarFilter, JarRow, Reading};

use super::equivalent::DriedEquivalent;
use super::judged::{Judged, preparation_of};
use super::marc::{MarcOf, may_be_covered_again};
use super::proposal::PourLine;
use super::said::remarked;
use super::wire::{JarCard, JarPage, JarPlant, JarShown, JarState, Jars, ListJars, ShowJar, Step};
use super::{life, rest, retention};
use crate::herb::Known;
use crate::mixture::{self, Liquid};
use crate::wire::{Caution, Interval, Lot, Note, Status};
use crate::{App, Command, Failure, asked, bottle, ph};

impl Command for ListJars {
    const NAME: &'static str = "jar.list";
    type Reply = Jars;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let after = self
            .after
            .as_deref()
            .map(|id| asked::id("after", id))
            .transpose()?;
        let filter = JarFilter {
            today: now.date_naive(),
            state: self.state.map(Into::into),
            after,
            limit: asked::limit(self.limit, 50)?,
        };
        app.read(|reading| {
            let page = reading.jars(&filter)?;
            let cards: Result<Vec<_>, Failure> = page
                .rows
                .iter()
                .map(|row| card(reading, row, now))
                .collect();
            Ok(Jars {
                jars: cards?,
                more: page.more,
            })
        })
    }
}

impl Command for ShowJar {
    const NAME: &'static str = "jar.show";
    type Reply = JarShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(JarShown {
                jar: page(app, reading, &id)?,
            })
        })
    }
}

/// The common names of what is in a jar, each once.
pub(crate) fn herbs(reading: &Reading<'_>, jar: &Jar) -> Result<Vec<String>, Failure> {
    let mut herbs: Vec<String> = Vec::new();
    for plant in &jar.plants {
        let common = Known::written(reading, &plant.herb)?.common;
        if !herbs.contains(&common) {
            herbs.push(common);
        }
    }
    Ok(herbs)
}

/// A jar in a list.
pub(crate) fn card(
    reading: &Reading<'_>,
    row: &JarRow,
    now: DateTime<FixedOffset>,
) -> Result<JarCard, Failure> {
    let jar = &row.jar;
    let herbs = herbs(reading, jar)?;
    let preparation = preparation_of(jar);
    let (due_from, due_to) = jar.due();
    Ok(JarCard {
        id: row.id.to_string(),
        code: jar.code.to_string(),
        name: jar.name.clone(),
        preparation: jar.preparation.clone(),
        preparation_name: preparation
            .map_or(&jar.preparation, |known| &known.name)
            .clone(),
        herbs,
        poured_at: jar.poured_at.to_rfc3339(),
        day: u32::try_from(days_since(jar.poured_at, now)).unwrap_or_default(),
        due_from: due_from.to_string(),
        due_to: due_to.to_string(),
        state: jar.state(row.is_strained, now.date_naive()).into(),
        strength_percent_vol: jar.strength_percent_vol.into(),
        glycerol_percent_mass: jar.glycerol_percent_mass.into(),
        poured_ml: jar.poured_ml(),
        place: jar.place.clone(),
    })
}

/// A jar with its recipe as poured and the chain back to its beds.
pub(super) fn page(app: &App, reading: &Reading<'_>, id: &JarId) -> Result<JarPage, Failure> {
    let row = reading.jar(id)?;
    let jar = &row.jar;
    let read = reading.ph_of(id)?;
    let judged = Judged::with_ph(reading, jar, read.as_ref())?;
    let mut plants = Vec::new();
    for (plant, known) in jar.plants.iter().zip(&judged.known) {
        plants.push(with_its_chain(reading, plant, known)?);
    }
    let steps = judged.preparation.steps().into_iter().map(|step| Step {
        title: step.title.to_owned(),
        text: step.text,
        source: step.source,
        status: step.status.into(),
    });
    let mut reasons: Vec<Note> = plants.iter().map(water_it_brought).collect();
    reasons.extend(remarked(&judged.poured.liquid));
    let equivalent = DriedEquivalent::of(jar, &judged)?;
    let recipe = reading.recipe_of(id)?;
    let left = reading.left(Source::Jar(*id))?.get().max(0.0);
    let strained_on = reading
        .strainings(id)?
        .first()
        .map(|(_, it)| it.at.date_naive());
    let rest_best_before = match strained_on {
        Some(day) if left > 0.0 => judged.dates(reading, jar, day)?.best_before,
        _ => None,
    };
    let today = app.now().date_naive();
    Ok(JarPage {
        card: card(reading, &row, app.now())?,
        pours: pours(jar),
        plants,
        ratio_ml_per_g: jar.ratio_ml_per_g(),
        shakes: life::shakes(reading, id)?,
        strainings: life::strainings(reading, id)?,
        expected_out: retention::expected(reading, jar, &judged)?,
        bottles: bottle::cards_of(reading, id, jar, app.now())?,
        left_ml: row.is_strained.then_some(left),
        bin_rest: judged.only_the_date_counts && rest_best_before.is_some_and(|day| day < today),
        rest_best_before: rest_best_before.map(|day| day.to_string()),
        rests: rest::rests(reading, id)?,
        second_maceration: may_be_covered_again(reading, id, &judged)?,
        marc_of: marc_of(reading, jar)?,
        stars: recipe.as_ref().and_then(|(_, recipe)| recipe.stars),
        recipe: recipe.map(|(id, _)| id.to_string()),
        liquid: Liquid::from(&judged.poured.liquid),
        shelf_life: judged.shelf_life(reading, jar)?.into(),
        dried_equivalent_g_per_ml: equivalent.map(|it| it.alone_g_per_ml),
        dried_equivalent_with_plant_water_g_per_ml: equivalent
            .map(|it| it.with_plant_water_g_per_ml),
        takes_ph: judged.preparation.is_kept_by_acid(),
        ph: ph::shown(reading, read, None)?,
        keeping: judged.poured.keeping.into(),
        cautions: judged
            .poured
            .cautions
            .into_iter()
            .map(Caution::from)
            .collect(),
        reasons,
        steps: steps.collect(),
        note: row.jar.note,
        failed_because: row.jar.failed.map(|failed| failed.reason),
    })
}

/// What was poured, the toppings up among it.
pub(crate) fn pours(jar: &Jar) -> Vec<PourLine> {
    let lines = jar.pours.iter().map(|pour| PourLine {
        kind: mixture::as_item(&pour.item).kind,
        name: pour.name.clone(),
        ml: pour.ml,
        g: pour.g,
        supply: pour.supply.map(|id| id.to_string()),
    });
    lines.collect()
}

fn marc_of(reading: &Reading<'_>, jar: &Jar) -> Result<Option<MarcOf>, Failure> {
    let Some(id) = jar.marc_of else {
        return Ok(None);
    };
    let first = reading.get::<Jar>(&id)?;
    Ok(Some(MarcOf {
        jar: id.to_string(),
        code: first.code.to_string(),
        ratio_ml_per_g: first.ratio_ml_per_g(),
        name: first.name,
    }))
}

fn water_it_brought(plant: &JarPlant) -> Note {
    let Interval { low, value, high } = plant.moisture_wet_percent;
    Note {
        code: "plant-water".to_owned(),
        text: format!(
            "{} brought {value:.0} % of its weight as water ({low:.0} to {high:.0} %), as reckoned when it was poured.",
            plant.common
        ),
        source: None,
        status: Status::Computed,
    }
}

fn with_its_chain(
    reading: &Reading<'_>,
    plant: &journal::Plant,
    known: &Known,
) -> Result<JarPlant, Failure> {
    let origin = plant.lot.map(|lot| reading.lot(lot)).transpose()?;
    let code = origin.as_ref().map(|row| {
        row.tray
            .as_ref()
            .map_or(&row.harvest.code, |tray| &tray.code)
            .to_string()
    });
    Ok(JarPlant {
        lot: plant.lot.map(Lot::from),
        herb: plant.herb.to_string(),
        common: known.common.clone(),
        part: plant.part.clone(),
        state: plant.state.into(),
        mass_g: plant.mass_g,
        moisture_wet_percent: Interval::from(plant.moisture_wet_percent),
        code,
        harvest: origin.as_ref().map(|row| row.harvest_id.to_string()),
        picked_at: origin
            .as_ref()
            .map(|row| row.harvest.picked_at.to_rfc3339()),
        bed: origin.and_then(|row| row.bed).map(|bed| bed.name),
    })
}

/// What a jar is called until the maker names it: "Peppermint and Sage glycerite".
pub(super) fn named(known: &[Known], preparation: &str) -> String {
    let mut herbs: Vec<&str> = known.iter().map(|known| known.common.as_str()).collect();
    herbs.dedup();
    let family = preparations::all()
        .iter()
        .find(|it| it.key == preparation)
        .map_or(preparation, |it| &it.family);
    let herbs = match herbs.as_slice() {
        [] => {
            let name = crate::words::sentence(family);
            return crate::speech::said(name.trim_end_matches('.'));
        }
        [one] => (*one).to_owned(),
        [one, two] => format!("{one} and {two}"),
        [one, rest @ ..] => format!("{one} and {} more", rest.len()),
    };
    crate::speech::said(&format!("{herbs} {}", family.replace('-', " ")))
}

impl From<JarState> for journal::JarState {
    fn from(state: JarState) -> Self {
        match state {
            JarState::Steeping => Self::Steeping,
            JarState::Due => Self::Due,
            JarState::Strained => Self::Strained,
            JarState::Failed => Self::Failed,
        }
    }
}

impl From<journal::JarState> for JarState {
    fn from(state: journal::JarState) -> Self {
        match state {
            journal::JarState::Steeping => Self::Steeping,
            journal::JarState::Due => Self::Due,
            journal::JarState::Strained => Self::Strained,
            journal::JarState::Failed => Self::Failed,
        }
    }
}
