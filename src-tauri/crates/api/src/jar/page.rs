//! `jar.list` and `jar.show`: the jars with their day, and the recipe as poured.

use chrono::{DateTime, FixedOffset};
use formulary::compose::{self, as_poured};
use formulary::preparations::{self, PlantState as State, Preparation};
use journal::{Jar, JarId, PlantState, days_since};
use physics::quantity::grams;
use store::{JarFilter, Reading};

use super::proposal::PourLine;
use super::said::remarked;
use super::wire::{JarCard, JarPage, JarPlant, JarShown, JarState, Jars, ListJars, ShowJar, Step};
use crate::herb::Known;
use crate::mixture::{self, Liquid};
use crate::wire::{Interval, Lot, Note, Status};
use crate::{App, Code, Command, Failure, asked};

/// More jars than any shelf holds.
const MOST_JARS: usize = 10_000;

impl Command for ListJars {
    const NAME: &'static str = "jar.list";
    type Reply = Jars;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let now = app.now();
        let state = self.state.map(|state| (state.into(), now.date_naive()));
        app.read(|reading| {
            let filter = JarFilter {
                state,
                before: None,
                limit: MOST_JARS,
            };
            let rows = reading.jars(&filter)?.rows;
            let cards: Result<Vec<_>, Failure> = rows
                .iter()
                .map(|row| card(reading, &row.id, &row.jar, now))
                .collect();
            let mut jars = cards?;
            let rank = |state| match state {
                JarState::Due => 0,
                JarState::Steeping => 1,
                JarState::Strained => 2,
                JarState::Failed => 3,
            };
            jars.sort_by(|a, b| (rank(a.state), &a.due_from).cmp(&(rank(b.state), &b.due_from)));
            Ok(Jars { jars })
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

fn card(
    reading: &Reading<'_>,
    id: &JarId,
    jar: &Jar,
    now: DateTime<FixedOffset>,
) -> Result<JarCard, Failure> {
    let mut herbs: Vec<String> = Vec::new();
    for plant in &jar.plants {
        let common = Known::written(reading, &plant.herb)?.common;
        if !herbs.contains(&common) {
            herbs.push(common);
        }
    }
    let preparation = preparation_of(jar);
    let (due_from, due_to) = jar.due();
    Ok(JarCard {
        id: id.to_string(),
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
        state: jar.state(now.date_naive()).into(),
        strength_percent_vol: jar.strength_percent_vol.into(),
        glycerol_percent_mass: jar.glycerol_percent_mass.into(),
        poured_ml: jar.poured_ml(),
        place: jar.place.clone(),
    })
}

/// A jar with its recipe as poured and the chain back to its beds.
pub(super) fn page(app: &App, reading: &Reading<'_>, id: &JarId) -> Result<JarPage, Failure> {
    let jar = reading.get::<Jar>(id)?;
    let preparation = preparation_of(&jar).ok_or_else(|| {
        let message = format!(
            "This jar is a preparation that this version does not know, {:?}; update the app to see it.",
            jar.preparation
        );
        Failure::new(Code::NotFound, message)
    })?;
    let mut plants = Vec::new();
    let mut judged = Vec::new();
    for plant in &jar.plants {
        let known = Known::written(reading, &plant.herb)?;
        judged.push(compose::Plant {
            herb: known.table_name().to_owned(),
            part: plant.part.clone(),
            state: state(plant.state),
            mass_g: plant.mass_g,
            moisture_wet_percent: Some(plant.moisture_wet_percent),
        });
        plants.push(with_its_chain(reading, plant, known)?);
    }
    let mut poured = Vec::new();
    for pour in &jar.pours {
        poured.push((mixture::ingredient(&pour.item)?, grams(pour.g)));
    }
    let judged = as_poured(preparation, &poured, &judged)?;
    let pours = jar.pours.iter().map(|pour| PourLine {
        kind: mixture::as_item(&pour.item).kind,
        name: pour.name.clone(),
        ml: pour.ml,
        g: pour.g,
        supply: pour.supply.map(|id| id.to_string()),
    });
    let steps = preparation.steps().into_iter().map(|step| Step {
        title: step.title.to_owned(),
        text: step.text,
        source: step.source,
        status: step.status.into(),
    });
    let mut reasons: Vec<Note> = plants.iter().map(water_it_brought).collect();
    reasons.extend(remarked(&judged.liquid));
    Ok(JarPage {
        card: card(reading, id, &jar, app.now())?,
        pours: pours.collect(),
        plants,
        ratio_ml_per_g: jar.ratio_ml_per_g(),
        liquid: Liquid::from(&judged.liquid),
        keeping: judged.keeping.into(),
        cautions: judged.cautions.into_iter().map(Note::from).collect(),
        reasons,
        steps: steps.collect(),
        note: jar.note,
        failed_because: jar.failed.map(|failed| failed.reason),
    })
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
    known: Known,
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
        common: known.common,
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

fn state(state: PlantState) -> State {
    match state {
        PlantState::Fresh => State::Fresh,
        PlantState::Dried => State::Dried,
    }
}

fn preparation_of(jar: &Jar) -> Option<&'static Preparation> {
    let is_fresh = jar
        .plants
        .iter()
        .any(|plant| plant.state == PlantState::Fresh);
    preparations::find(
        &jar.preparation,
        if is_fresh { State::Fresh } else { State::Dried },
    )
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
            return crate::words::sentence(family)
                .trim_end_matches('.')
                .to_owned();
        }
        [one] => (*one).to_owned(),
        [one, two] => format!("{one} and {two}"),
        [one, rest @ ..] => format!("{one} and {} more", rest.len()),
    };
    format!("{herbs} {}", family.replace('-', " "))
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
