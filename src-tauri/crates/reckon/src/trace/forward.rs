//! From a bed, a harvest, a supply or a jar forward to everything that came of it.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use chrono::NaiveDate;
use journal::{Amount, BottleState, EndKind, HerbKey, Jar};
use message::{Failure, Message};
use serde::Serialize;
use store::{CameBottle, Fate, Reading, TraceFrom};

use crate::herb::Known;
use crate::jar::judged::preparation_title;
use crate::told;

/// A harvest that something came of.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TracedHarvest {
    pub id: String,
    pub code: String,
    /// The key of its herb, for papers.
    #[serde(skip)]
    pub herb: String,
    pub common: Message,
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
    pub preparation_name: Message,
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

pub fn traced(bottle: CameBottle, name: &str, today: NaiveDate) -> TracedBottle {
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
            traced.state = row.state(today);
            traced.best_before = row.last_day().map(|day| day.to_string());
            traced.not_acid = row.is_not_acid();
            traced.bin_it = row.bottle.is_to_be_binned(last, today);
        }
    }
    traced
}

impl TracedForward {
    /// Everything that came of it; `field` is what the request calls it.
    pub fn of(
        reading: &Reading<'_>,
        field: &str,
        from: TraceFrom,
        today: NaiveDate,
    ) -> Result<Self, Failure> {
        refuse_missing(reading, field, from)?;
        let came = reading.came_of(from)?;
        let mut commons: BTreeMap<HerbKey, Message> = BTreeMap::new();
        let mut harvests = Vec::new();
        for harvest in came.harvests {
            let herb = harvest.herb.to_string();
            let common = match commons.entry(harvest.herb) {
                Entry::Occupied(known) => known.into_mut(),
                Entry::Vacant(place) => {
                    let known = Known::written(reading, place.key())?;
                    place.insert(told::title(&known))
                }
            };
            harvests.push(TracedHarvest {
                id: harvest.id,
                code: harvest.code,
                herb,
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
            preparation_name: preparation_title(&jar.preparation, jar.is_fresh),
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
    }
}

pub fn refuse_missing(reading: &Reading<'_>, field: &str, from: TraceFrom) -> Result<(), Failure> {
    let found = match from {
        TraceFrom::Bed(id) => reading.get::<journal::Bed>(&id).map(|_| ()),
        TraceFrom::Harvest(id) => reading.get::<journal::Harvest>(&id).map(|_| ()),
        TraceFrom::Supply(id) => reading.get::<journal::Supply>(&id).map(|_| ()),
        TraceFrom::Jar(id) => reading.get::<Jar>(&id).map(|_| ()),
        TraceFrom::Picked(..) => Ok(()),
    };
    found.map_err(|why| Failure::from(why).renamed(field))
}
