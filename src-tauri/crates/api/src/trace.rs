//! `trace.back` from a bottle or jar to its beds, `trace.forward` from a bed, harvest, supply or
//! time to the bottles and the people who were given one.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::{FixedOffset, NaiveDate, NaiveTime, TimeZone};
use journal::{Amount, BottleId, EndKind, HerbKey, Jar, JarId, Lot};
use serde::{Deserialize, Serialize};
use store::{CameBottle, Fate, JarRow, Reading, TraceFrom};

use crate::bottle::{BottleCard, BottleState, Shown};
use crate::herb::Known;
use crate::jar::{JarCard, PourLine, card, pours, preparation_named};
use crate::wire::PlantState;
use crate::{App, Command, Failure, asked};

/// Where does this bottle or jar come from?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TraceBack {
    pub bottle: Option<String>,
    pub jar: Option<String>,
}

/// What became of it? Exactly one of bed, harvest, supply, jar, or both days.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TraceForward {
    pub bed: Option<String>,
    pub harvest: Option<String>,
    pub supply: Option<String>,
    pub jar: Option<String>,
    /// First day of picking.
    pub from: Option<String>,
    /// Last day of picking.
    pub to: Option<String>,
}

/// A weigh-in of the chain.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainWeighing {
    pub at: String,
    pub gross_g: f64,
}

/// The tray on which a plant dried.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainTray {
    pub id: String,
    pub code: String,
    pub name: String,
    pub started_at: String,
    pub taken_down_at: Option<String>,
    pub weighings: Vec<ChainWeighing>,
}

/// A plant of the jar, back to its bed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ChainPlant {
    pub herb: String,
    pub common: String,
    pub part: String,
    pub state: PlantState,
    pub mass_g: f64,
    pub code: Option<String>,
    pub harvest: Option<String>,
    pub bed: Option<String>,
    pub bed_id: Option<String>,
    pub picked_at: Option<String>,
    pub photo: Option<String>,
    pub tray: Option<ChainTray>,
}

/// The chain from a bottle back to its beds.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Chain {
    pub bottle: Option<BottleCard>,
    pub jar: JarCard,
    pub pours: Vec<PourLine>,
    pub plants: Vec<ChainPlant>,
    /// Where the marc comes from, if it was covered a second time.
    pub marc_of: Option<Box<Chain>>,
}

/// The answer to [`TraceBack`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedBack {
    pub chain: Chain,
}

/// A harvest that something came of.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedHarvest {
    pub id: String,
    pub code: String,
    pub common: String,
    pub part: String,
    pub picked_at: String,
    pub fresh_mass_g: f64,
    /// What was thrown away of it fresh.
    pub binned_g: f64,
}

/// A tray that something came of.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedTray {
    pub id: String,
    pub code: String,
    pub name: String,
    pub harvest: String,
    pub started_at: String,
    /// What was thrown away of the dried lot.
    pub binned_g: f64,
    /// What was laid out fresh, where it was thrown away while it was drying.
    pub lost_fresh_g: Option<f64>,
}

/// A bottle that holds any of it, or held it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedBottle {
    pub id: String,
    pub code: String,
    pub name: String,
    pub jar: String,
    pub size_ml: f64,
    pub left_ml: f64,
    pub state: BottleState,
    /// Of one that stands on the shelf.
    pub best_before: Option<String>,
    /// Whether it must not be used any more.
    pub bin_it: bool,
    /// Whether a pH was read at which acid may not protect it.
    pub not_acid: bool,
    pub place: Option<String>,
}

/// A jar that holds any of it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedJar {
    pub id: String,
    pub code: String,
    pub name: String,
    pub preparation_name: String,
    pub poured_at: String,
    pub failed: bool,
}

/// Somebody who was given a bottle.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedPerson {
    pub to: String,
    pub bottle: String,
    pub code: String,
    pub name: String,
    pub at: String,
}

/// The answer to [`TraceForward`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedForward {
    pub harvests: Vec<TracedHarvest>,
    pub trays: Vec<TracedTray>,
    pub jars: Vec<TracedJar>,
    pub bottles: Vec<TracedBottle>,
    pub people: Vec<TracedPerson>,
}

impl Command for TraceBack {
    const NAME: &'static str = "trace.back";
    type Reply = TracedBack;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        app.read(|reading| {
            let chain = match (&self.bottle, &self.jar) {
                (Some(text), None) => {
                    let id: BottleId = asked::id("bottle", text)?;
                    let row = reading
                        .bottle(&id)
                        .map_err(|why| Failure::from(why).renamed("bottle"))?;
                    let jar = reading.get::<Jar>(&row.bottle.jar)?;
                    let today = app.now().date_naive();
                    let bottle = Shown::of(reading, &jar)?.card(&row, today);
                    chain(app, reading, &row.bottle.jar, Some(bottle))?
                }
                (None, Some(text)) => chain(app, reading, &asked::id("jar", text)?, None)?,
                _ => return Err(Failure::invalid("bottle", "Name either a bottle or a jar.")),
            };
            Ok(TracedBack { chain })
        })
    }
}

/// The chain from a jar, and a bottle of it, back to its beds.
pub(crate) fn chain(
    app: &App,
    reading: &Reading<'_>,
    id: &JarId,
    bottle: Option<BottleCard>,
) -> Result<Chain, Failure> {
    let row: JarRow = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    let jar = &row.jar;
    let mut plants = Vec::new();
    for plant in &jar.plants {
        plants.push(chained(reading, plant)?);
    }
    let marc_of = match jar.marc_of {
        Some(first) => Some(Box::new(chain(app, reading, &first, None)?)),
        None => None,
    };
    Ok(Chain {
        bottle,
        jar: card(reading, &row, app.now())?,
        pours: pours(jar),
        plants,
        marc_of,
    })
}

fn chained(reading: &Reading<'_>, plant: &journal::Plant) -> Result<ChainPlant, Failure> {
    let known = Known::written(reading, &plant.herb)?;
    let mut chained = ChainPlant {
        herb: plant.herb.to_string(),
        common: known.common,
        part: plant.part.clone(),
        state: plant.state.into(),
        mass_g: plant.mass_g,
        code: None,
        harvest: None,
        bed: None,
        bed_id: None,
        picked_at: None,
        photo: None,
        tray: None,
    };
    let Some(lot) = plant.lot else {
        return Ok(chained);
    };
    let row = reading.lot(lot)?;
    chained.code = Some(row.harvest.code.to_string());
    chained.harvest = Some(row.harvest_id.to_string());
    chained.bed_id = row.harvest.bed.map(|id| id.to_string());
    chained.bed = row.bed.map(|bed| bed.name);
    chained.picked_at = Some(row.harvest.picked_at.to_rfc3339());
    chained.photo = row.harvest.photos.first().map(ToString::to_string);
    if let (Lot::Tray(id), Some(tray)) = (lot, row.tray) {
        let weighings = reading
            .weighings(&id)?
            .into_iter()
            .map(|(_, it)| ChainWeighing {
                at: it.at.to_rfc3339(),
                gross_g: it.gross_g,
            });
        chained.tray = Some(ChainTray {
            id: id.to_string(),
            taken_down_at: tray.down().map(|end| end.at.to_rfc3339()),
            code: tray.code.to_string(),
            name: tray.name,
            started_at: tray.started_at.to_rfc3339(),
            weighings: weighings.collect(),
        });
    }
    Ok(chained)
}

/// The first moment of a day where the clock stands.
pub(crate) fn midnight(day: NaiveDate, offset: FixedOffset) -> i64 {
    offset
        .from_local_datetime(&day.and_time(NaiveTime::MIN))
        .single()
        .map_or(0, |moment| moment.timestamp_millis())
}

impl TraceForward {
    fn start(&self, app: &App) -> Result<(&'static str, TraceFrom), Failure> {
        let days = match (&self.from, &self.to) {
            (Some(from), Some(to)) => {
                let (first, last) = (asked::date("from", from)?, asked::date("to", to)?);
                if last < first {
                    let message = format!(
                        "The last day must not be before the first; {to} is before {from}."
                    );
                    return Err(Failure::invalid("to", message));
                }
                let offset = *app.now().offset();
                let after = last.succ_opt().unwrap_or(last);
                Some(TraceFrom::Picked(
                    midnight(first, offset),
                    midnight(after, offset),
                ))
            }
            (None, None) => None,
            _ => return Err(Failure::invalid("to", "A time has a first and a last day.")),
        };
        let asked = [
            self.bed
                .as_deref()
                .map(|it| Ok(("bed", TraceFrom::Bed(asked::id("bed", it)?)))),
            self.harvest
                .as_deref()
                .map(|it| Ok(("harvest", TraceFrom::Harvest(asked::id("harvest", it)?)))),
            self.supply
                .as_deref()
                .map(|it| Ok(("supply", TraceFrom::Supply(asked::id("supply", it)?)))),
            self.jar
                .as_deref()
                .map(|it| Ok(("jar", TraceFrom::Jar(asked::id("jar", it)?)))),
            days.map(|days| Ok(("from", days))),
        ];
        let mut asked = asked.into_iter().flatten();
        match (asked.next(), asked.next()) {
            (Some(only), None) => only,
            _ => Err(Failure::invalid(
                "bed",
                "Name one thing to start from: a bed, a harvest, a supply, a jar, or a first and a last day of picking.",
            )),
        }
    }
}

fn traced(bottle: CameBottle, name: &str, today: NaiveDate) -> TracedBottle {
    let mut traced = TracedBottle {
        id: bottle.id,
        code: bottle.code,
        name: name.to_owned(),
        jar: bottle.jar,
        size_ml: bottle.size.get(),
        left_ml: 0.0,
        state: BottleState::Given,
        best_before: None,
        bin_it: false,
        not_acid: false,
        place: bottle.place,
    };
    match bottle.fate {
        Fate::Given { .. } | Fate::Left(EndKind::Given) => {}
        Fate::Left(EndKind::Finished) => traced.state = BottleState::Finished,
        Fate::Left(EndKind::Binned) => traced.state = BottleState::Binned,
        Fate::Stands(row) => {
            let last = row.last_check.as_ref();
            traced.left_ml = row.left_ml.max(0.0);
            traced.state = row.state(today).into();
            traced.best_before = row.last_day().map(|day| day.to_string());
            traced.not_acid = row.is_not_acid();
            traced.bin_it = row.bottle.is_to_be_binned(last, today);
        }
    }
    traced
}

fn refuse_missing(reading: &Reading<'_>, field: &str, from: TraceFrom) -> Result<(), Failure> {
    let found = match from {
        TraceFrom::Bed(id) => reading.get::<journal::Bed>(&id).map(|_| ()),
        TraceFrom::Harvest(id) => reading.get::<journal::Harvest>(&id).map(|_| ()),
        TraceFrom::Supply(id) => reading.get::<journal::Supply>(&id).map(|_| ()),
        TraceFrom::Jar(id) => reading.get::<Jar>(&id).map(|_| ()),
        TraceFrom::Picked(..) => Ok(()),
    };
    found.map_err(|why| Failure::from(why).renamed(field))
}

impl Command for TraceForward {
    const NAME: &'static str = "trace.forward";
    type Reply = TracedForward;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let (field, from) = self.start(app)?;
        let today = app.now().date_naive();
        app.read(|reading| {
            refuse_missing(reading, field, from)?;
            let came = reading.came_of(from)?;
            let mut commons: BTreeMap<HerbKey, String> = BTreeMap::new();
            let mut harvests = Vec::new();
            for harvest in came.harvests {
                let common = match commons.entry(harvest.herb) {
                    Entry::Occupied(known) => known.into_mut(),
                    Entry::Vacant(place) => {
                        let known = Known::written(reading, place.key())?;
                        place.insert(known.common)
                    }
                };
                harvests.push(TracedHarvest {
                    id: harvest.id,
                    code: harvest.code,
                    common: common.clone(),
                    part: harvest.part,
                    picked_at: harvest.picked_at,
                    fresh_mass_g: harvest.fresh.get(),
                    binned_g: harvest.binned.get(),
                });
            }
            let trays = came.trays.into_iter().map(|tray| TracedTray {
                id: tray.id,
                code: tray.code,
                name: tray.name,
                harvest: tray.harvest,
                started_at: tray.started_at,
                binned_g: tray.binned.get(),
                lost_fresh_g: (tray.lost > Amount::ZERO).then(|| tray.lost.get()),
            });
            let names: BTreeMap<&str, &str> = came
                .jars
                .iter()
                .map(|jar| (jar.id.as_str(), jar.name.as_str()))
                .collect();
            let (mut bottles, mut people) = (Vec::new(), Vec::new());
            for bottle in came.bottles {
                let name = names.get(bottle.jar.as_str()).copied().unwrap_or_default();
                if let Fate::Given { to, at } = &bottle.fate {
                    people.push(TracedPerson {
                        to: to.clone(),
                        bottle: bottle.id.clone(),
                        code: bottle.code.clone(),
                        name: name.to_owned(),
                        at: at.clone(),
                    });
                }
                bottles.push(traced(bottle, name, today));
            }
            let jars = came.jars.into_iter().map(|jar| TracedJar {
                preparation_name: preparation_named(&jar.preparation, jar.is_fresh)
                    .map_or(jar.preparation, |known| known.name.clone()),
                id: jar.id,
                code: jar.code,
                name: jar.name,
                poured_at: jar.poured_at,
                failed: jar.failed,
            });
            let jars = jars.collect();
            Ok(TracedForward {
                harvests,
                trays: trays.collect(),
                jars,
                bottles,
                people,
            })
        })
    }
}
