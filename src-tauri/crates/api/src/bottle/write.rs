//! `bottle.use`, `bottle.give`, `bottle.check`, `bottle.bin`, `bottle.finish`, `bottle.correct`.

use chrono::{DateTime, FixedOffset};
use formulary::arithmetic;
use journal::{
    Bottle, BottleId, Check, CheckId, Dropper, DropperId, End, EndKind, Jar, Outcome, Use, UseId,
};
use message::{Argument, At, Code, Failure, Unit, say};
use physics::mixture::ph::ReadWith;
use reckon::asked;
use reckon::jar::judged::preparation_of;
use serde::Deserialize;
use store::{Reading, Writing};

use crate::bottle::page::{BottleWritten, written};
use crate::open::Open;
use crate::ph;
use crate::request::Command;

/// Some was used: exactly one of the measures. A dropper is one that was counted.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct UseBottle {
    pub bottle: String,
    pub ml: Option<f64>,
    pub teaspoons: Option<f64>,
    pub tablespoons: Option<f64>,
    pub droppers: Option<f64>,
    pub drops: Option<f64>,
    pub dropper: Option<String>,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// Somebody was given it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct GiveBottle {
    pub bottle: String,
    pub to: String,
    pub at: Option<String>,
    pub note: Option<String>,
}

/// It was looked at. A pH is taken of what acid keeps; `read_with` is what it was read with.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CheckBottle {
    pub bottle: String,
    pub outcome: Outcome,
    pub ph: Option<f64>,
    pub read_with: Option<ReadWith>,
    pub note: Option<String>,
    pub at: Option<String>,
}

/// The rest was thrown away.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct BinBottle {
    pub bottle: String,
    pub reason: String,
    pub at: Option<String>,
}

/// The rest was used up.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct FinishBottle {
    pub bottle: String,
    pub at: Option<String>,
}

/// A change to a bottle; what is left out stays.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CorrectBottle {
    pub id: String,
    pub place: Option<String>,
    pub note: Option<String>,
    pub size_ml: Option<f64>,
}

/// A teaspoon and a tablespoon of a label, mL: 21 CFR 101.9(b)(5)(viii).
const TEASPOON_ML: f64 = 5.0;
const TABLESPOON_ML: f64 = 15.0;

fn here(why: store::Failure) -> Failure {
    Failure::from(why).renamed("bottle")
}

/// A bottle that is still on this shelf.
fn on_the_shelf(writing: &Writing<'_>, id: &BottleId) -> Result<Bottle, Failure> {
    let bottle = writing.bottle(id).map_err(here)?.bottle;
    if let Some(end) = &bottle.end {
        let (code, day) = (&bottle.code, end.at.date_naive());
        let message = match end.kind {
            EndKind::Finished => say!("bottle-emptied-on", code, day),
            EndKind::Binned => say!("bottle-thrown-away-on", code, day),
            EndKind::Given => say!("bottle-given-on", code, day),
        };
        return Err(Failure::invalid("bottle", message));
    }
    Ok(bottle)
}

/// Refuses what must be thrown away.
fn refuse_bad(
    writing: &Writing<'_>,
    id: &BottleId,
    bottle: &Bottle,
    at: DateTime<FixedOffset>,
) -> Result<(), Failure> {
    let last = writing.bottle(id)?.last_check;
    if !bottle.is_to_be_binned(last.as_ref(), at.date_naive()) {
        return Ok(());
    }
    let code = &bottle.code;
    let message = match bottle.only_the_date_counts {
        true => say!("bottle-past-its-date", code),
        false => say!("bottle-found-bad", code),
    };
    Err(Failure::invalid("bottle", message))
}

/// What the jar is called that it was filled from.
fn called(reading: &Reading<'_>, bottle: &Bottle) -> Result<Argument, Failure> {
    Ok(Argument::own(reading.get::<Jar>(&bottle.jar)?.name))
}

impl Command for UseBottle {
    const NAME: &'static str = "bottle.use";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let bottle_id: BottleId = asked::id("bottle", &self.bottle)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = UseId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let bottle = on_the_shelf(writing, &bottle_id)?;
            refuse_bad(writing, &bottle_id, &bottle, at)?;
            let (field, ml) = measured(writing, &self)?;
            // Two phones may have taken more than there was.
            let left = writing.bottle(&bottle_id)?.left_ml.max(0.0);
            // A thousandth is lost in a spoon.
            if ml > left + 0.001 {
                let message = say!(
                    "bottle-not-enough",
                    code = &bottle.code,
                    left = Argument::tenths(left, Unit::Millilitre),
                    wanted = Argument::tenths(ml, Unit::Millilitre)
                );
                let field = Some(field.to_owned());
                return Err(Failure {
                    field,
                    ..Failure::new(Code::NotEnough, message)
                });
            }
            let usage = Use {
                bottle: bottle_id,
                at,
                ml: ml.min(left),
                note: asked::text(self.note),
            };
            writing
                .record(&id, &usage)
                .map_err(|why| Failure::from(why).renamed(field))?;
            let (volume, name) = (Argument::millilitres(ml), called(writing, &bottle)?);
            Ok((
                say!("deed-liquid-used", volume, name, code = &bottle.code),
                (),
            ))
        })?;
        written(app, done, &bottle_id)
    }
}

/// The one measure that was given, in mL, and its field.
fn measured(reading: &Reading<'_>, asked: &UseBottle) -> Result<(&'static str, f64), Failure> {
    let given = [
        ("ml", asked.ml),
        ("teaspoons", asked.teaspoons),
        ("tablespoons", asked.tablespoons),
        ("droppers", asked.droppers),
        ("drops", asked.drops),
    ];
    let mut given = given
        .into_iter()
        .filter_map(|(field, value)| value.map(|value| (field, value)));
    let (Some((field, value)), None) = (given.next(), given.next()) else {
        return Err(Failure::invalid("ml", say!("used-in-one-measure")));
    };
    if !value.is_finite() || value <= 0.0 {
        let given = Argument::exact(value, Unit::None);
        let message = say!("used-more-than-nothing", given);
        return Err(Failure::invalid(field, message));
    }
    let ml = match field {
        "teaspoons" => value * TEASPOON_ML,
        "tablespoons" => value * TABLESPOON_ML,
        "droppers" => {
            let dropper = dropper(reading, asked)?;
            let holds = dropper.holds_ml.ok_or_else(|| {
                let message = say!("dropper-never-measured", name = Argument::own(dropper.name));
                Failure::invalid("dropper", message)
            })?;
            value * holds
        }
        "drops" => {
            let counts = dropper(reading, asked)?.drops_in_1_ml;
            value / arithmetic::drops_per_ml(&counts).at("dropper")?.value
        }
        _ => value,
    };
    Ok((field, ml))
}

fn dropper(reading: &Reading<'_>, asked: &UseBottle) -> Result<Dropper, Failure> {
    let Some(text) = &asked.dropper else {
        return Err(Failure::invalid("dropper", say!("dropper-which")));
    };
    let id: DropperId = asked::id("dropper", text)?;
    reading
        .get(&id)
        .map_err(|why| Failure::from(why).renamed("dropper"))
}

impl Command for CheckBottle {
    const NAME: &'static str = "bottle.check";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let bottle_id: BottleId = asked::id("bottle", &self.bottle)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = CheckId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let bottle = on_the_shelf(writing, &bottle_id)?;
            if bottle.only_the_date_counts && self.outcome != Outcome::Bad {
                return Err(Failure::invalid(
                    "outcome",
                    say!("oil-only-the-date-counts"),
                ));
            }
            let jar = writing.get::<Jar>(&bottle.jar)?;
            let ph = ph::asked(self.ph, self.read_with, preparation_of(&jar))?;
            let check = Check {
                bottle: bottle_id,
                at,
                outcome: self.outcome,
                ph,
                note: asked::text(self.note),
            };
            writing.record(&id, &check)?;
            let outcome = match self.outcome {
                Outcome::Good => say!("outcome-good"),
                Outcome::Doubtful => say!("outcome-doubtful"),
                Outcome::Bad => say!("outcome-bad"),
            };
            let (name, code) = (called(writing, &bottle)?, &bottle.code);
            let line = match ph {
                Some(ph) => say!(
                    "deed-bottle-checked-ph",
                    name,
                    code,
                    outcome,
                    ph = ph::told(ph)
                ),
                None => say!("deed-bottle-checked", name, code, outcome),
            };
            Ok((line, ()))
        })?;
        written(app, done, &bottle_id)
    }
}

fn end(
    app: &Open,
    id: &str,
    at: Option<&str>,
    end: impl FnOnce(DateTime<FixedOffset>) -> End,
) -> Result<BottleWritten, Failure> {
    let id: BottleId = asked::id("bottle", id)?;
    let at = asked::past("at", at, app.now())?;
    let (done, ()) = app.perform(|writing| {
        let mut bottle = on_the_shelf(writing, &id)?;
        let end = end(at);
        let kind = end.kind;
        if kind == EndKind::Given {
            refuse_bad(writing, &id, &bottle, at)?;
        }
        bottle.end = Some(end);
        writing.correct(&id, &bottle)?;
        let (name, code) = (called(writing, &bottle)?, &bottle.code);
        let line = match kind {
            EndKind::Finished => say!("deed-bottle-emptied", name, code),
            EndKind::Binned => say!("deed-bottle-thrown-away", name, code),
            EndKind::Given => say!("deed-bottle-given", name, code),
        };
        Ok((line, ()))
    })?;
    written(app, done, &id)
}

impl Command for GiveBottle {
    const NAME: &'static str = "bottle.give";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let (to, reason) = (self.to.trim().to_owned(), asked::text(self.note));
        end(app, &self.bottle, self.at.as_deref(), |at| End {
            kind: EndKind::Given,
            at,
            to: Some(to),
            reason,
        })
    }
}

impl Command for BinBottle {
    const NAME: &'static str = "bottle.bin";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let Some(reason) = asked::text(Some(self.reason)) else {
            return Err(Failure::invalid("reason", say!("thrown-away-why")));
        };
        end(app, &self.bottle, self.at.as_deref(), |at| End {
            kind: EndKind::Binned,
            at,
            to: None,
            reason: Some(reason),
        })
    }
}

impl Command for FinishBottle {
    const NAME: &'static str = "bottle.finish";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        end(app, &self.bottle, self.at.as_deref(), |at| End {
            kind: EndKind::Finished,
            at,
            to: None,
            reason: None,
        })
    }
}

impl Command for CorrectBottle {
    const NAME: &'static str = "bottle.correct";
    type Reply = BottleWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id: BottleId = asked::id("id", &self.id)?;
        let (done, _) = app.correct::<Bottle>("id", &id, |writing, bottle| {
            asked::corrected(&mut bottle.place, self.place);
            asked::corrected(&mut bottle.note, self.note);
            asked::set(&mut bottle.size_ml, self.size_ml);
            let name = called(writing, bottle)?;
            Ok(say!("deed-lot-edited", name, code = &bottle.code))
        })?;
        written(app, done, &id)
    }
}
