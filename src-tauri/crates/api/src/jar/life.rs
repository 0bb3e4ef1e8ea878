//! A jar from the day it was poured to the day it is strained: `jar.shake`, `jar.top_up`, `jar.strain`.

use formulary::preparations::Verdict;
use journal::{Added, How, Item, JarId, Pour, Shake, ShakeId, Straining, StrainingId};
use message::{Argument, Failure, say};
use physics::mixture::ph::ReadWith;
use physics::quantity::{grams_of, millilitres};
use reckon::asked;
use reckon::item::StockItem;
use reckon::jar::allowed::{
    by_weight, named_jar, refuse_failed, refuse_more_than_there_can_be, standing,
};
use reckon::jar::judged::Judged;
use reckon::jar::shelf::shelf;
use serde::Deserialize;
use store::Reading;

use crate::jar::page::{JarWritten, written};
use crate::jar::pour::plain_name;
use crate::open::Open;
use crate::ph;
use crate::request::Command;

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

impl Command for ShakeJar {
    const NAME: &'static str = "jar.shake";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = ShakeId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let jar = standing(writing, &jar_id)?;
            writing.record(&id, &Shake { jar: jar_id, at })?;
            let name = Argument::own(&jar.name);
            Ok((say!("deed-jar-shaken", name, code = &jar.code), ()))
        })?;
        written(app, done, &jar_id)
    }
}

impl Command for TopUpJar {
    const NAME: &'static str = "jar.top_up";
    type Reply = JarWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        if self.pours.is_empty() {
            return Err(Failure::invalid("pours", say!("jar-pours-missing")));
        }
        let note = asked::text(self.note);
        let (done, ()) = app.perform(|writing| {
            let mut jar = standing(writing, &id)?;
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
            if judged.poured.keeping.verdict == Verdict::DoNotMake {
                return Err(Failure::invalid("pours", judged.poured.keeping.text));
            }
            jar.strength_percent_vol = judged.poured.liquid.strength_percent_vol;
            jar.glycerol_percent_mass = judged.poured.liquid.glycerol_percent_mass;
            writing.correct(&id, &jar)?;
            let line = say!(
                "deed-jar-topped-up",
                name = Argument::own(&jar.name),
                code = &jar.code,
                volume = Argument::millilitres(added_ml)
            );
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}

fn measured(reading: &Reading<'_>, pour: &TopUpPour) -> Result<Pour, Failure> {
    let stock = shelf(reading, std::slice::from_ref(&pour.item)).map_err(|mut why| {
        why.field = why.field.map(|field| field.replacen("stock[0]", "item", 1));
        why
    })?;
    let supply = asked::id_if_any("item.supply", stock[0].supply.as_deref())?;
    let ingredient = stock[0].ingredient;
    let measured = physics::mixture::Pour::measured(ingredient, millilitres(pour.ml))
        .map_err(|why| Failure::from(why).at("ml"))?;
    let item = Item::of(&ingredient);
    let name = match supply {
        Some(id) => reading.get::<journal::Supply>(&id)?.name,
        None => plain_name(&ingredient.name()),
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

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let jar_id: JarId = asked::id("jar", &self.jar)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = StrainingId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let row = writing.jar(&jar_id).map_err(named_jar)?;
            let jar = row.jar;
            refuse_failed(&jar)?;
            if at < jar.poured_at {
                let poured = jar.poured_at;
                let (day, time) = (poured.date_naive(), Argument::time(poured.time()));
                let message = say!("jar-strained-before-poured", day, time);
                return Err(Failure::invalid("at", message));
            }
            let judged = Judged::of(writing, &jar)?;
            let came_out_ml = match (self.came_out_ml, self.came_out_g) {
                (Some(ml), None) => ml,
                (None, Some(g)) => by_weight(&jar, &judged, g)?,
                _ => {
                    return Err(Failure::invalid("came_out_ml", say!("jar-came-out-either")));
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
                how: self.how,
                came_out_ml,
                came_out_g: self.came_out_g,
                liquid_ml: judged.liquid_ml,
                dry_matter_g: judged.dry_matter_g,
                ph,
                note: asked::text(self.note),
            };
            writing.record(&id, &straining)?;
            let (volume, name) = (Argument::millilitres(came_out_ml), Argument::own(&jar.name));
            let line = match ph {
                Some(ph) => {
                    say!(
                        "deed-jar-strained-ph",
                        volume,
                        name,
                        code = &jar.code,
                        ph = ph::told(ph)
                    )
                }
                None => say!("deed-jar-strained", volume, name, code = &jar.code),
            };
            Ok((line, ()))
        })?;
        written(app, done, &jar_id)
    }
}
