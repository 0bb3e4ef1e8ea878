//! `jar.show`: a jar with its recipe as poured and the chain back to its beds, and how it is told after a write.

use formulary::cautions::Caution;
use formulary::compose::PourLine;
use formulary::keep::{Keeping, ShelfLife};
use formulary::preparations::{Amounts, Step};
use formulary::{Note, Status};
use journal::{Jar, JarId, Pictured, PlantState, Source};
use message::{Argument, Failure, Message, Unit, say};
use physics::Interval;
use physics::mixture::Liquid;
use reckon::bottle::card::{self, BottleCard};
use reckon::herb::Known;
use reckon::jar::card::{JarCard, card};
use reckon::jar::cost::Cost;
use reckon::jar::equivalent::DriedEquivalent;
use reckon::jar::judged::Judged;
use reckon::jar::marc::may_be_covered_again;
use reckon::jar::proposal::pours;
use reckon::jar::retention::{self, ExpectedOut};
use reckon::liquid::remarked;
use reckon::wire::Lot;
use reckon::{asked, told};
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::changed::Changed;
use crate::jar::lines::{self, MarcOf, RestLine, ShakeLine, StrainingLine};
use crate::open::Open;
use crate::ph::{self, PhShown};
use crate::portrait::{self, PortraitLine};
use crate::request::Command;

/// One jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShowJar {
    pub id: String,
}

/// A plant as it went into the jar, with the chain back to its bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarPlant {
    pub lot: Option<Lot>,
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub moisture_wet_percent: Interval,
    pub code: Option<String>,
    pub harvest: Option<String>,
    pub bed: Option<String>,
    pub picked_at: Option<String>,
}

/// A jar with its recipe as poured.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarPage {
    #[serde(flatten)]
    pub card: JarCard,
    pub pours: Vec<PourLine>,
    pub plants: Vec<JarPlant>,
    pub ratio_ml_per_g: Option<f64>,
    pub liquid: Liquid,
    pub keeping: Keeping,
    pub shelf_life: ShelfLife,
    /// Dried herb to a millilitre poured; none where no plant or a marc is in it.
    pub dried_equivalent_g_per_ml: Option<Interval>,
    /// The same to a millilitre of what there is with the plant's own water.
    pub dried_equivalent_with_plant_water_g_per_ml: Option<Interval>,
    pub cautions: Vec<Caution>,
    /// Whether its pH is worth reading, for acid keeps it.
    pub takes_ph: bool,
    pub ph: Option<PhShown>,
    pub reasons: Vec<Note>,
    pub steps: Vec<Step>,
    pub note: Option<String>,
    pub failed_because: Option<String>,
    pub shakes: Vec<ShakeLine>,
    pub strainings: Vec<StrainingLine>,
    pub expected_out: Vec<ExpectedOut>,
    pub bottles: Vec<BottleCard>,
    /// Strained liquid that no bottle holds yet; nothing before it is strained.
    pub left_ml: Option<f64>,
    /// The last day on which that should be used, and whether it must not be used any more.
    pub rest_best_before: Option<String>,
    pub bin_rest: bool,
    pub rests: Vec<RestLine>,
    pub marc_of: Option<MarcOf>,
    /// Whether its marc may be covered once more.
    pub second_maceration: bool,
    pub recipe: Option<String>,
    pub stars: Option<u8>,
    /// How it looked, the earliest first.
    pub portraits: Vec<PortraitLine>,
    /// What its liquids cost, by the prices of the supplies they came from.
    pub cost: Cost,
}

/// The answer to [`ShowJar`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarShown {
    pub jar: JarPage,
}

/// A jar was written.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct JarWritten {
    #[serde(flatten)]
    pub done: Changed,
    pub jar: JarPage,
}

impl Command for ShowJar {
    const NAME: &'static str = "jar.show";
    type Reply = JarShown;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(JarShown {
                jar: page(app, reading, &id)?,
            })
        })
    }
}

/// A jar with its recipe as poured and the chain back to its beds.
pub(crate) fn page(app: &Open, reading: &Reading<'_>, id: &JarId) -> Result<JarPage, Failure> {
    let row = reading.jar(id)?;
    let jar = &row.jar;
    let read = reading.ph_of(id)?;
    let judged = Judged::with_ph(reading, jar, read.as_ref())?;
    let mut plants = Vec::new();
    for (plant, known) in jar.plants.iter().zip(&judged.known) {
        plants.push(with_its_chain(reading, plant, known)?);
    }
    let amounts = Amounts {
        plants: jar
            .plants
            .iter()
            .map(|plant| (plant.herb.as_str(), plant.part.as_str()))
            .collect(),
        herb_g: jar.plants.iter().map(|plant| plant.mass_g).sum(),
        poured_ml: jar.pours.iter().map(|pour| pour.ml).sum(),
        kinds: judged.poured.kinds.clone(),
        strength_percent_vol: judged.poured.liquid.strength_percent_vol,
    };
    let steps = judged.preparation.steps(&amounts);
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
        shakes: lines::shakes(reading, id)?,
        strainings: lines::strainings(reading, id)?,
        expected_out: retention::expected(reading, jar, &judged)?,
        bottles: card::cards_of(reading, id, jar, app.now())?,
        left_ml: row.is_strained.then_some(left),
        bin_rest: judged.only_the_date_counts && rest_best_before.is_some_and(|day| day < today),
        rest_best_before: rest_best_before.map(|day| day.to_string()),
        rests: lines::rests(reading, id)?,
        second_maceration: may_be_covered_again(reading, id, &judged)?,
        marc_of: marc_of(reading, jar)?,
        cost: Cost::of(reading, jar)?.of_share(1.0),
        stars: recipe.as_ref().and_then(|(_, recipe)| recipe.stars),
        recipe: recipe.map(|(id, _)| id.to_string()),
        liquid: judged.poured.liquid.clone(),
        shelf_life: judged.shelf_life(reading, jar)?,
        dried_equivalent_g_per_ml: equivalent.map(|it| it.alone_g_per_ml),
        dried_equivalent_with_plant_water_g_per_ml: equivalent
            .map(|it| it.with_plant_water_g_per_ml),
        takes_ph: judged.preparation.is_kept_by_acid(),
        ph: ph::shown(reading, read, None)?,
        cautions: judged.cautions(),
        keeping: judged.poured.keeping,
        reasons,
        steps,
        portraits: portrait::lines(reading, Pictured::Jar(*id))?,
        note: row.jar.note,
        failed_because: row.jar.failed.map(|failed| failed.reason),
    })
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
        text: say!(
            "plant-brought-water",
            plant = plant.common.clone(),
            water = Argument::range(low, value, high, Unit::Percent)
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
        common: told::title(known),
        part: plant.part.clone(),
        state: plant.state,
        mass_g: plant.mass_g,
        moisture_wet_percent: plant.moisture_wet_percent,
        code,
        harvest: origin.as_ref().map(|row| row.harvest_id.to_string()),
        picked_at: origin
            .as_ref()
            .map(|row| row.harvest.picked_at.to_rfc3339()),
        bed: origin.and_then(|row| row.bed).map(|bed| bed.name),
    })
}

pub(crate) fn written(app: &Open, done: Changed, id: &JarId) -> Result<JarWritten, Failure> {
    let jar = app.read_back(|reading| page(app, reading, id))?;
    Ok(JarWritten { done, jar })
}
