//! `bottle.use`, `bottle.give`, `bottle.check`, `bottle.bin`, `bottle.finish`, `bottle.correct`.

use chrono::{DateTime, FixedOffset};
use formulary::arithmetic;
use journal::{
    Bottle, BottleId, Check, CheckId, Dropper, DropperId, End, EndKind, Jar, Use, UseId,
};
use store::{Reading, Writing};

use super::page::page;
use super::wire::{
    BinBottle, BottleWritten, CheckBottle, CorrectBottle, FinishBottle, GiveBottle, Outcome,
    UseBottle,
};
use crate::failure::At;
use crate::jar::preparation_of;
use crate::wire::Changed;
use crate::{App, Code, Command, Failure, asked, ph, words};

/// A teaspoon and a tablespoon of a label, mL: 21 CFR 101.9(b)(5)(viii).
const TEASPOON_ML: f64 = 5.0;
const TABLESPOON_ML: f64 = 15.0;

fn written(app: &App, done: Changed, id: &BottleId) -> Result<BottleWritten, Failure> {
    let bottle = app.read_back(|reading| page(app, reading, id))?;
    Ok(BottleWritten { done, bottle })
}

fn here(why: store::Failure) -> Failure {
    Failure::from(why).renamed("bottle")
}

/// A bottle that is still on this shelf.
fn on_the_shelf(writing: &Writing<'_>, id: &BottleId) -> Result<Bottle, Failure> {
    let bottle = writing.bottle(id).map_err(here)?.bottle;
    if let Some(end) = &bottle.end {
        let what = match end.kind {
            EndKind::Finished => "is finished",
            EndKind::Binned => "was thrown away",
            EndKind::Given => "was given away",
        };
        let message = format!(
            "The bottle {} {what} on {}.",
            bottle.code,
            end.at.date_naive()
        );
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
    let why = if bottle.only_the_date_counts {
        "fresh herb in oil is not kept beyond its date, for botulism cannot be seen, smelt or tasted"
    } else {
        "it was found bad"
    };
    let message = format!(
        "The bottle {} must not be used: {why}; throw it away.",
        bottle.code
    );
    Err(Failure::invalid("bottle", message))
}

fn called(reading: &Reading<'_>, bottle: &Bottle) -> Result<String, Failure> {
    let jar = reading.get::<Jar>(&bottle.jar)?;
    Ok(format!("{} ({})", jar.name, bottle.code))
}

impl Command for UseBottle {
    const NAME: &'static str = "bottle.use";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
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
                let message = format!(
                    "The bottle {} has {} mL left; {} mL cannot be taken from it. If it is empty, finish it.",
                    bottle.code,
                    words::figure(left),
                    words::figure(ml)
                );
                let field = Some(field.to_owned());
                return Err(Failure { field, ..Failure::new(Code::NotEnough, message) });
            }
            let usage = Use { bottle: bottle_id, at, ml: ml.min(left), note: asked::text(self.note) };
            writing.record(&id, &usage).map_err(|why| Failure::from(why).renamed(field))?;
            let name = called(writing, &bottle)?;
            Ok((format!("Used {} mL of {name}", words::figure(ml)), ()))
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
        let message = "Say how much was used in one measure: mL, spoons, droppers or drops.";
        return Err(Failure::invalid("ml", message));
    };
    if !value.is_finite() || value <= 0.0 {
        let message = format!("How much was used must be more than 0; {value} is not.");
        return Err(Failure::invalid(field, message));
    }
    let ml = match field {
        "teaspoons" => value * TEASPOON_ML,
        "tablespoons" => value * TABLESPOON_ML,
        "droppers" => {
            let dropper = dropper(reading, asked)?;
            let holds = dropper.holds_ml.ok_or_else(|| {
                let message = format!(
                    "What {} holds was never measured; count it again and say how much one filling is.",
                    dropper.name
                );
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
        let message = "Say which dropper; no two give the same drops, so count yours first.";
        return Err(Failure::invalid("dropper", message));
    };
    let id: DropperId = asked::id("dropper", text)?;
    reading
        .get(&id)
        .map_err(|why| Failure::from(why).renamed("dropper"))
}

impl Command for CheckBottle {
    const NAME: &'static str = "bottle.check";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let bottle_id: BottleId = asked::id("bottle", &self.bottle)?;
        let at = asked::past("at", self.at.as_deref(), app.now())?;
        let id = CheckId(app.new_id());
        let (done, ()) = app.perform(|writing| {
            let bottle = on_the_shelf(writing, &bottle_id)?;
            if bottle.only_the_date_counts && self.outcome != Outcome::Bad {
                let message = "No look, smell or taste can tell whether fresh herb in oil is safe; only its date counts.";
                return Err(Failure::invalid("outcome", message));
            }
            let jar = writing.get::<Jar>(&bottle.jar)?;
            let ph = ph::asked(self.ph, self.read_with, preparation_of(&jar))?;
            let check = Check { bottle: bottle_id, at, outcome: self.outcome.into(), ph, note: asked::text(self.note) };
            writing.record(&id, &check)?;
            let (name, outcome) = (called(writing, &bottle)?, check.outcome.as_str());
            Ok((format!("Looked at {name}: {outcome}{}", ph::added(ph)), ()))
        })?;
        written(app, done, &bottle_id)
    }
}

fn end(
    app: &App,
    id: &str,
    at: Option<&str>,
    line: &str,
    end: impl FnOnce(DateTime<FixedOffset>) -> End,
) -> Result<BottleWritten, Failure> {
    let id: BottleId = asked::id("bottle", id)?;
    let at = asked::past("at", at, app.now())?;
    let (done, ()) = app.perform(|writing| {
        let mut bottle = on_the_shelf(writing, &id)?;
        let end = end(at);
        if end.kind == EndKind::Given {
            refuse_bad(writing, &id, &bottle, at)?;
        }
        bottle.end = Some(end);
        writing.correct(&id, &bottle)?;
        Ok((format!("{line} {}", called(writing, &bottle)?), ()))
    })?;
    written(app, done, &id)
}

impl Command for GiveBottle {
    const NAME: &'static str = "bottle.give";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let (to, reason) = (self.to.trim().to_owned(), asked::text(self.note));
        end(app, &self.bottle, self.at.as_deref(), "Gave away", |at| {
            End {
                kind: EndKind::Given,
                at,
                to: Some(to),
                reason,
            }
        })
    }
}

impl Command for BinBottle {
    const NAME: &'static str = "bottle.bin";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let Some(reason) = asked::text(Some(self.reason)) else {
            return Err(Failure::invalid("reason", "Say why it is thrown away."));
        };
        end(app, &self.bottle, self.at.as_deref(), "Threw away", |at| {
            End {
                kind: EndKind::Binned,
                at,
                to: None,
                reason: Some(reason),
            }
        })
    }
}

impl Command for FinishBottle {
    const NAME: &'static str = "bottle.finish";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        end(app, &self.bottle, self.at.as_deref(), "Finished", |at| {
            End {
                kind: EndKind::Finished,
                at,
                to: None,
                reason: None,
            }
        })
    }
}

impl Command for CorrectBottle {
    const NAME: &'static str = "bottle.correct";
    type Reply = BottleWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id: BottleId = asked::id("id", &self.id)?;
        let (done, ()) = app.perform(|writing| {
            let mut bottle = writing.get::<Bottle>(&id)?;
            asked::corrected(&mut bottle.place, self.place);
            asked::corrected(&mut bottle.note, self.note);
            bottle.size_ml = self.size_ml.unwrap_or(bottle.size_ml);
            writing.correct(&id, &bottle)?;
            Ok((format!("Corrected {}", called(writing, &bottle)?), ()))
        })?;
        written(app, done, &id)
    }
}
