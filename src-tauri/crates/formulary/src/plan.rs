//! Backwards from the bottles to the plants: what to pick, pour and buy, and when to start.

use chrono::{Days, NaiveDate};
use message::{Argument, Message, Refusal, Unit, say};
use physics::{
    Interval,
    error::within,
    mixture::{IngredientKind, MOST_POURED},
};
use serde::Serialize;

use crate::{
    Failure, cautions,
    compose::{self, Composition, Identity, Plant, Portion, Stock},
    herbs::{self, WaterPrior, part::PartClass},
    note::{Note, Status},
    preparations::{PlantState, Preparation},
    retention,
};

/// What is wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct Wish {
    /// Any name of the herb.
    pub herb: String,
    /// Its part.
    pub part: String,
    /// A preparation or a family.
    pub preparation: String,
    /// Which plant it is, besides its name.
    pub identity: Identity,
    /// Fresh or dried.
    pub state: PlantState,
    /// How many bottles.
    pub bottles: u32,
    /// Size of a bottle, mL.
    pub bottle_ml: f64,
    /// When they must be ready.
    pub ready_on: NaiveDate,
    /// What the marc keeps by the maker's own jars, mL for each gram of dry herb.
    pub own_retention_ml_per_g: Option<Interval>,
    /// The liquids at hand.
    pub stock: Vec<Stock>,
    /// What the maker uses in a year, mL, and whether the rest is for gifts.
    pub yearly_use_ml: Option<f64>,
    /// Whether more than a year's use is meant as gifts.
    pub gifts: bool,
}

/// A liquid to buy.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(rename = "ToBuy"))]
pub struct Buy {
    /// Its kind.
    pub kind: IngredientKind,
    /// Its name.
    pub name: Message,
    /// How much is missing, mL.
    pub ml: f64,
}

/// What it takes.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// Fresh herb to pick, g.
    pub pick_fresh_g: Interval,
    /// Dried herb it becomes, g; none where it goes in fresh.
    pub dry_g: Option<Interval>,
    /// What to pour.
    pub pours: Vec<Portion>,
    /// What the marc keeps, mL.
    pub retained_ml: Interval,
    /// When to pour at the latest.
    pub start_on: NaiveDate,
    /// When to pick at the latest.
    pub pick_by: NaiveDate,
    /// What is missing from the shelf.
    pub buy: Vec<Buy>,
    /// What to know about these figures: first what stops or endangers whoever makes it.
    pub notes: Vec<Note>,
}

/// Lost in trimming (practice, editable).
const TRIM_LOSS: f64 = 0.10;

/// Herb that the recipe is worked out for before it is scaled, g.
const UNIT_G: f64 = 100.0;

/// Plans backwards: bottles, what the marc keeps, liquid, herb, dates.
///
/// Every amount is linear in the herb, so the recipe is composed once for 100 g and scaled by
/// `bottles x size / (liquid - retained)`.
///
/// # Errors
/// [`Failure`] for no bottle, a size outside 1 to 10 000 mL, a preparation that is not made of such
/// herb or must not be made, a marc that keeps all of the liquid, or more or less herb or liquid than a
/// jar holds.
pub fn plan(wish: &Wish) -> Result<Plan, Failure> {
    let of_bottles = |field, what, value, unit| {
        within(what, value, 1.0, 10_000.0, unit).map_err(|out| Refusal::new(field, out.message()))
    };
    let bottles = f64::from(wish.bottles);
    of_bottles(
        "bottles",
        say!("what-number-of-bottles"),
        bottles,
        Unit::None,
    )?;
    of_bottles(
        "bottle_ml",
        say!("what-size-of-a-bottle"),
        wish.bottle_ml,
        Unit::Millilitre,
    )?;
    let composition = Composition {
        // Whether there is enough is asked below, of the scaled amounts.
        stock: wish
            .stock
            .iter()
            .map(|stock| Stock {
                available_ml: None,
                exactly_ml: None,
                ..stock.clone()
            })
            .collect(),
        ..Composition::of(
            &wish.preparation,
            Plant {
                herb: wish.herb.clone(),
                part: wish.part.clone(),
                state: wish.state,
                mass_g: UNIT_G,
                moisture_wet_percent: None,
                told: None,
                identity: wish.identity.clone(),
            },
        )
    };
    let preparation = compose::named(&composition)?;
    let unit = compose::draft(preparation, &composition)?;
    if let Some(weak) = unit.weak_vinegar() {
        return Err(weak.into());
    }
    compose::refuse_poison(preparation, &unit.plants).map_err(|why| why.at("herb"))?;
    if let Some(why) = compose::forbidden(preparation, &unit.plants) {
        return Err(Refusal::new("preparation", say!("do-not-make", why)).into());
    }
    if wish.state == PlantState::Cooked {
        return Err(Refusal::new("state", say!("plan-not-cooked")).into());
    }

    let (retention, note) = retention(preparation, wish.own_retention_ml_per_g);
    let mut notes = stops(preparation, &unit);
    notes.extend(note);
    let dry = unit.plants[0].dry_matter_g();
    let kept = Interval::spanning(
        retention.value * dry.value,
        retention.low * dry.low,
        retention.high * dry.high,
    );
    let oil: f64 = unit
        .pours
        .iter()
        .filter(|pour| pour.kind == IngredientKind::Oil)
        .map(|pour| pour.ml)
        .sum();
    let liquid = if oil > 0.0 {
        Interval::exact(oil)
    } else {
        unit.liquid.volume_ml
    };
    let wanted = bottles * wish.bottle_ml;
    // A damper herb gives more liquid and keeps less of it, so the ends pair up crosswise.
    let scale = |liquid: f64, kept: f64| (liquid > kept).then(|| wanted / (liquid - kept));
    let all_kept = || Refusal::new("preparation", say!("plan-marc-keeps-all"));
    let value = scale(liquid.value, kept.value).ok_or_else(all_kept)?;
    let most = scale(liquid.low, kept.high).ok_or_else(all_kept)?;
    let least = scale(liquid.high, kept.low).ok_or_else(all_kept)?;
    let herb_g = Interval::spanning(UNIT_G * value, UNIT_G * least, UNIT_G * most);
    if herb_g.low < compose::LEAST_G || herb_g.high > compose::MOST_G {
        let text = say!(
            "plan-herb-out-of-range",
            herb = Argument::grams(herb_g.value)
        );
        return Err(Refusal::new("bottles", text).into());
    }
    // Asked of the jar that needs the most, so that whatever the plan says can be poured.
    let fits = |pour: &Portion| pour.ml.max(pour.g) * most <= MOST_POURED;
    if !unit.pours.iter().all(fits) {
        let text = say!(
            "plan-too-much-liquid",
            liquid = Argument::millilitres(wanted)
        );
        return Err(Refusal::new("bottles", text).into());
    }

    let water = wish.identity.own.water(&wish.herb, &wish.part);
    let (pick_fresh_g, why) = to_pick(&water, wish.state, herb_g);
    notes.extend(why);
    let dry_g = (wish.state == PlantState::Dried).then_some(herb_g);

    let pours: Vec<Portion> = unit
        .pours
        .into_iter()
        .map(|mut pour| {
            pour.line.ml *= value;
            pour.line.g *= value;
            pour
        })
        .collect();
    let buy = missing(&pours, &wish.stock);
    let before = |day: NaiveDate, days: f64| {
        day.checked_sub_days(Days::new(days.ceil() as u64))
            .unwrap_or(day)
    };
    let start_on = before(wish.ready_on, preparation.steep_days.high);
    let drying = (wish.state == PlantState::Dried).then(|| drying_days(&wish.part));
    let pick_by = drying
        .as_ref()
        .map_or(start_on, |(days, _)| before(start_on, *days));
    notes.extend(drying.map(|(_, note)| note));
    notes.extend(a_years_use(wish, wanted));
    let short_of = unit.short_of.iter();
    notes.extend(short_of.map(|missed| Note::computed("short-of", missed.text())));
    let retained_ml = kept.map_monotone(|ml| ml * value);
    Ok(Plan {
        pick_fresh_g,
        dry_g,
        pours,
        retained_ml,
        start_on,
        pick_by,
        buy,
        notes,
    })
}

/// The fresh plant to pick for so much of it in a state, and what that rests on.
pub fn to_pick(water: &WaterPrior, state: PlantState, herb_g: Interval) -> (Interval, Vec<Note>) {
    let mut notes = Vec::new();
    let fresh = match state {
        PlantState::Fresh | PlantState::Cooked => herb_g,
        PlantState::Dried => {
            let ratio = water.ratio_fresh_per_dry;
            notes.push(Note {
                code: "dry-down".to_owned(),
                text: say!("fresh-to-dry", basis = water.reason.clone()),
                source: water.source.clone(),
                status: water.status,
            });
            Interval {
                low: herb_g.low * ratio.low,
                value: herb_g.value * ratio.value,
                high: herb_g.high * ratio.high,
            }
        }
    };
    notes.push(Note::new(
        "trim-loss",
        say!("trim-loss"),
        "",
        Status::Practice,
    ));
    (fresh.map_monotone(|g| g / (1.0 - TRIM_LOSS)), notes)
}

/// The stops of what is planned, as its jar will say them.
fn stops(preparation: &Preparation, unit: &compose::Draft) -> Vec<Note> {
    cautions::stops_for_jar(&cautions::Subject {
        preparation,
        plants: &unit.plants,
        purpose: None,
        kinds: &unit.pours.iter().map(|pour| pour.kind).collect::<Vec<_>>(),
        strength_percent_vol: unit.liquid.strength_percent_vol.high,
    })
}

/// What the marc keeps, mL to a gram of dry matter, and what that rests on: the maker's own figure, else the
/// printed one.
pub fn retention(preparation: &Preparation, own: Option<Interval>) -> (Interval, Option<Note>) {
    let Some(own) = own else {
        let kept = retention::of(preparation);
        return (kept.any_way(), kept.note);
    };
    let text = say!("retention-own");
    (own, Some(Note::new("retention", text, "", Status::Own)))
}

/// What comes out of a jar when it is strained, mL, by what a gram of dry matter keeps.
pub fn strained_ml(jar: &compose::Proposal, retention: Interval) -> Interval {
    let oil: f64 = jar
        .pours
        .iter()
        .filter(|pour| pour.kind == IngredientKind::Oil)
        .map(|pour| pour.ml)
        .sum();
    // The herb's water does not come out with the oil.
    let liquid = if oil > 0.0 {
        Interval::exact(oil)
    } else {
        jar.liquid.volume_ml
    };
    let dry: Vec<Interval> = jar
        .plants
        .iter()
        .map(compose::PlantLine::dry_matter_g)
        .collect();
    let kept = |per_g: f64, end: fn(&Interval) -> f64| per_g * dry.iter().map(end).sum::<f64>();
    // A damper herb gives more liquid and keeps less of it, so the ends pair up crosswise.
    Interval {
        low: (liquid.low - kept(retention.high, |dry| dry.high)).max(0.0),
        value: (liquid.value - kept(retention.value, |dry| dry.value)).max(0.0),
        high: (liquid.high - kept(retention.low, |dry| dry.low)).max(0.0),
    }
}

fn missing(pours: &[Portion], stock: &[Stock]) -> Vec<Buy> {
    pours
        .iter()
        .filter(|pour| pour.kind != IngredientKind::Water)
        .filter_map(|pour| {
            let same = |one: &&Stock| one.ingredient == pour.ingredient;
            let unlimited = stock
                .iter()
                .filter(same)
                .any(|one| one.available_ml.is_none());
            let there: f64 = stock
                .iter()
                .filter(same)
                .filter_map(|one| one.available_ml)
                .sum();
            let ml = pour.ml - there;
            (!unlimited && ml > 0.0).then(|| Buy {
                kind: pour.kind,
                name: pour.name.clone(),
                ml,
            })
        })
        .collect()
}

/// Days that drying takes in the shade, the upper end.
fn drying_days(part: &str) -> (f64, Note) {
    let (days, text, source) = match herbs::part::class_of(part) {
        PartClass::Flower => (21.0, say!("drying-time-flowers"), "source-drying-times"),
        PartClass::Root | PartClass::Bark | PartClass::Fruit | PartClass::Seed => (
            42.0,
            say!("drying-time-roots"),
            "source-ginseng-drying-time",
        ),
        _ => (15.0, say!("drying-time-leaves"), "source-drying-times"),
    };
    (
        days,
        Note::new("drying-time", text, source, Status::PartlyConfirmed),
    )
}

fn a_years_use(wish: &Wish, wanted: f64) -> Option<Note> {
    let yearly = wish.yearly_use_ml.filter(|yearly| *yearly > 0.0)?;
    (!wish.gifts && wanted > yearly).then(|| {
        let yearly = Argument::millilitres(yearly);
        let text = say!("more-than-a-year", yearly);
        Note::new("more-than-a-year", text, "", Status::Own)
    })
}

#[cfg(test)]
mod tests;
