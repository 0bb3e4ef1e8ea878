//! A jar from the day it was poured to the day it is strained: `jar.shake`, `jar.top_up`, `jar.strain`.

use journal::{Added, Jar, JarId, Pour, Shake, ShakeId, Straining, StrainingId};
use physics::quantity::{grams, grams_of, kg_per_m3, millilitres, millilitres_of};
use serde::{Deserialize, Serialize};
use store::{Reading, Writing};

use super::compose::shelf;
use super::correct::written;
use super::judged::Judged;
use super::proposal::Verdict;
use super::wire::JarWritten;
use crate::mixture::{self, StockItem, label_of};
use crate::ph::ReadWith;
use crate::wire::Interval;
use crate::{App, Command, Failure, asked, ph, words};

/// The jar was shaken.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ShakeJar {
    pub jar: String,
    pub at: Option<String>,
}

/// One liquid that was added.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TopUpPour {
    pub item: StockItem,
    pub ml: f64,
}

/// Liquid was added to a standing jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TopUpJar {
    pub jar: String,
    pub pours: Vec<TopUpPour>,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// How the liquid was got out of the marc.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum How {
    Dripped,
    Wrung,
    Pressed,
}

/// The jar was strained: exactly one of `came_out_ml` and `came_out_g`. A pH is taken of what acid
/// keeps, of all that came out; `read_with` is what it was read with.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct StrainJar {
    pub jar: String,
    pub came_out_ml: Option<f64>,
    pub came_out_g: Option<f64>,
    pub how: How,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// One shaking.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ShakeLine {
    pub id: String,
    pub at: String,
}

/// What came out, and what the marc kept after it.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct StrainingLine {
    pub id: String,
    pub at: String,
    pub how: How,
    pub came_out_ml: f64,
    pub came_out_g: Option<f64>,
    pub retained_ml: Interval,
    pub retained_ml_per_g_dry: Option<Interval>,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
}

impl Command for ShakeJar {
    const NAME: &'static str = "jar.shake";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = ShakeId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let jar = standing(writing, &jar_id, "shaken")?;
            writing.record(&id, &Shake { jar: jar_id, at })?;
            Ok((format!("Shook {} ({})", jar.name, jar.code), ()))
        })?;
        written(app, done, &jar_id)
    }
}

impl Command for TopUpJar {
    const NAME: &'static str = "jar.top_up";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        if self.pours.is_empty() {
            return Err(Failure::invalid("pours", "Say what was added."));
        }
        let note = asked::text(self.note);
        let (done, ()) = app.perform(|writing| {
            let mut jar = standing(writing, &id, "topped up")?;
            let mut added_ml = 0.0;
            for (at_index, pour) in self.pours.iter().enumerate() {
                let mut pour = measured(writing, pour)
                    .map_err(|why| why.within(&format!("pours[{at_index}]")))?;
                pour.added = Some(Added {
                    at,
                    note: note.clone(),
                });
                added_ml += pour.ml;
                jar.pours.push(pour);
            }
            let judged = Judged::of(writing, &jar)?;
            if Verdict::from(judged.poured.keeping.verdict) == Verdict::DoNotMake {
                return Err(Failure::invalid("pours", judged.poured.keeping.text));
            }
            jar.strength_percent_vol = judged.poured.liquid.strength_percent_vol;
            jar.glycerol_percent_mass = judged.poured.liquid.glycerol_percent_mass;
            writing.correct(&id, &jar)?;
            let added = words::figure(added_ml);
            Ok((
                format!("Topped up {} ({}) with {added} mL", jar.name, jar.code),
                (),
            ))
        })?;
        written(app, done, &id)
    }
}

fn measured(reading: &Reading<'_>, pour: &TopUpPour) -> Result<Pour, Failure> {
    let stock = shelf(reading, std::slice::from_ref(&pour.item)).map_err(|mut why| {
        why.field = why.field.map(|field| field.replacen("stock[0]", "item", 1));
        why
    })?;
    let supply = stock[0]
        .supply
        .as_deref()
        .map(|id| asked::id("item.supply", id))
        .transpose()?;
    let ingredient = stock[0].ingredient;
    let measured = physics::mixture::Pour::measured(ingredient, millilitres(pour.ml))
        .map_err(|why| Failure::from(why).at("ml"))?;
    let item = label_of(&ingredient);
    let name = match supply {
        Some(id) => reading.get::<journal::Supply>(&id)?.name,
        None => format!("{:?}", mixture::as_item(&item).kind),
    };
    Ok(Pour {
        item,
        name,
        ml: pour.ml,
        g: grams_of(measured.mass()),
        supply,
        added: None,
    })
}

impl Command for StrainJar {
    const NAME: &'static str = "jar.strain";
    type Reply = JarWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = StrainingId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let row = writing.jar(&jar_id).map_err(named_jar)?;
            let jar = row.jar;
            refuse_failed(&jar, "strained")?;
            if at < jar.poured_at {
                let poured = jar.poured_at.format("%Y-%m-%d %H:%M");
                let message = format!("It cannot be strained before it was poured, {poured}.");
                return Err(Failure::invalid("at", message));
            }
            let judged = Judged::of(writing, &jar)?;
            let came_out_ml = match (self.came_out_ml, self.came_out_g) {
                (Some(ml), None) => ml,
                (None, Some(g)) => by_weight(&jar, &judged, g)?,
                _ => {
                    let message = "Say what came out either in mL or in g.";
                    return Err(Failure::invalid("came_out_ml", message));
                }
            };
            let before: f64 = writing
                .strainings(&jar_id)?
                .iter()
                .map(|(_, it)| it.came_out_ml)
                .sum();
            refuse_more_than_there_can_be(&jar, before, came_out_ml)?;
            let ph = ph::asked(self.ph, self.read_with, Some(judged.preparation))?;
            let straining = Straining {
                jar: jar_id,
                at,
                how: self.how.into(),
                came_out_ml,
                came_out_g: self.came_out_g,
                liquid_ml: judged.liquid_ml,
                dry_matter_g: judged.dry_matter_g,
                ph,
                note: asked::text(self.note),
            };
            writing.record(&id, &straining)?;
            let out = words::figure(came_out_ml);
            Ok((
                format!(
                    "Strained {out} mL off {} ({}){}",
                    jar.name,
                    jar.code,
                    ph::added(ph)
                ),
                (),
            ))
        })?;
        written(app, done, &jar_id)
    }
}

/// The volume of a weight of this jar's liquid, at 20 C.
fn by_weight(jar: &Jar, judged: &Judged, g: f64) -> Result<f64, Failure> {
    let oils = jar
        .pours
        .iter()
        .filter(|pour| matches!(pour.item, journal::Stock::Oil { .. }));
    let (oil_g, oil_ml) = oils.fold((0.0, 0.0), |(g, ml), pour| (g + pour.g, ml + pour.ml));
    let density =
        if oil_ml > 0.0 && judged.preparation.grade == formulary::preparations::Solvent::Oil {
            oil_g / oil_ml * 1000.0
        } else {
            judged.poured.liquid.density_kg_m3.value
        };
    if !g.is_finite() || g <= 0.0 {
        let message = format!("What came out must weigh more than 0 g; {g} g is not.");
        return Err(Failure::invalid("came_out_g", message));
    }
    Ok(millilitres_of(grams(g) / kg_per_m3(density)))
}

/// More than what was poured and all that the plants weighed cannot come out, but for the reading.
fn refuse_more_than_there_can_be(jar: &Jar, before: f64, ml: f64) -> Result<(), Failure> {
    let plants: f64 = jar.plants.iter().map(|plant| plant.mass_g).sum();
    let most = (jar.poured_ml() + plants) * 1.02 - before;
    if ml.is_finite() && ml > 0.0 && ml <= most {
        return Ok(());
    }
    let message = format!(
        "What came out must be more than 0 mL and at most {} mL, for no more can be in the jar; {} mL is not.",
        words::figure(most.max(0.0)),
        words::figure(ml)
    );
    Err(Failure::invalid("came_out_ml", message))
}

fn named_jar(why: store::Failure) -> Failure {
    Failure::from(why).renamed("jar")
}

/// A jar that still stands on its plants.
pub(super) fn standing(writing: &Writing<'_>, id: &JarId, done: &str) -> Result<Jar, Failure> {
    let row = writing.jar(id).map_err(named_jar)?;
    refuse_failed(&row.jar, done)?;
    if row.is_strained {
        let message = format!("{} is strained already and cannot be {done}.", row.jar.name);
        return Err(Failure::invalid("jar", message));
    }
    Ok(row.jar)
}

pub(crate) fn refuse_failed(jar: &Jar, done: &str) -> Result<(), Failure> {
    if jar.failed.is_some() {
        let message = format!("{} was given up and cannot be {done}.", jar.name);
        return Err(Failure::invalid("jar", message));
    }
    Ok(())
}

/// The shakes of a jar.
pub(super) fn shakes(reading: &Reading<'_>, id: &JarId) -> Result<Vec<ShakeLine>, Failure> {
    let shakes = reading.shakes(id)?.into_iter().map(|(id, it)| ShakeLine {
        id: id.to_string(),
        at: it.at.to_rfc3339(),
    });
    Ok(shakes.collect())
}

/// The strainings of a jar, each with what the marc kept after it.
pub(super) fn strainings(reading: &Reading<'_>, id: &JarId) -> Result<Vec<StrainingLine>, Failure> {
    let mut out = 0.0;
    let lines = reading.strainings(id)?.into_iter().map(|(id, it)| {
        out += it.came_out_ml;
        StrainingLine {
            id: id.to_string(),
            at: it.at.to_rfc3339(),
            how: it.how.into(),
            came_out_ml: it.came_out_ml,
            came_out_g: it.came_out_g,
            retained_ml: it.retained_ml(out).into(),
            retained_ml_per_g_dry: it.retained_ml_per_g_dry(out).map(Interval::from),
            ph: it.ph.map(|ph| ph.value),
            read_with: it.ph.and_then(|ph| ph.read_with).map(Into::into),
            note: it.note,
        }
    });
    Ok(lines.collect())
}

impl From<How> for journal::How {
    fn from(how: How) -> Self {
        match how {
            How::Dripped => Self::Dripped,
            How::Wrung => Self::Wrung,
            How::Pressed => Self::Pressed,
        }
    }
}

impl From<journal::How> for How {
    fn from(how: journal::How) -> Self {
        match how {
            journal::How::Dripped => Self::Dripped,
            journal::How::Wrung => Self::Wrung,
            journal::How::Pressed => Self::Pressed,
        }
    }
}
