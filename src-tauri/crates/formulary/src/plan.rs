//! Backwards from the bottles to the plants: what to pick, pour and buy, and when to start.

use chrono::{Days, NaiveDate};
use message::Message;
use physics::{Interval, mixture::MOST_POURED};

use crate::{
    cautions,
    compose::{self, Composition, Identity, Plant, PourLine, Refusal, Stock},
    herbs::{self, part::PartClass},
    note::{Note, Status},
    preparations::{Measure, PlantState, Preparation, sentence},
    words,
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
#[derive(Debug, Clone, PartialEq)]
pub struct Buy {
    /// Its kind in the words of the wire.
    pub kind: &'static str,
    /// Its name.
    pub name: String,
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
    pub pours: Vec<PourLine>,
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

/// Pressed at best, wrung by hand at worst, mL for each gram of dry herb.
///
/// *Source*: Herbal Materia Medica, 1995, computed from the strained volumes.
const RETENTION: Interval = Interval {
    low: 0.78,
    value: 1.2,
    high: 1.83,
};

/// Herb that the recipe is worked out for before it is scaled, g.
const UNIT_G: f64 = 100.0;

/// Plans backwards: bottles, what the marc keeps, liquid, herb, dates.
///
/// Every amount is linear in the herb, so the recipe is composed once for 100 g and scaled by
/// `bottles x size / (liquid - retained)`.
///
/// # Errors
/// [`Refusal`] for no bottle, a size outside 1 to 10 000 mL, a preparation that is not made of such
/// herb or must not be made, a marc that keeps all of the liquid, or more or less herb or liquid than a
/// jar holds.
pub fn plan(wish: &Wish) -> Result<Plan, Refusal> {
    if !(1..=10_000).contains(&wish.bottles) {
        return Err(Refusal::new(
            "bottles",
            format!(
                "The bottles must number between 1 and 10 000; {} is not.",
                wish.bottles
            ),
        ));
    }
    if !wish.bottle_ml.is_finite() || !(1.0..=10_000.0).contains(&wish.bottle_ml) {
        return Err(Refusal::new(
            "bottle_ml",
            format!(
                "A bottle must hold between 1 and 10 000 mL; {} is not.",
                wish.bottle_ml
            ),
        ));
    }
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
                identity: wish.identity.clone(),
            },
        )
    };
    let preparation = compose::named(&composition)?;
    let unit = compose::draft(preparation, &composition)?;
    if let Some(weak) = unit.weak_vinegar() {
        return Err(weak);
    }
    compose::refuse_poison(preparation, &unit.plants).map_err(|refusal| Refusal {
        field: "herb".to_owned(),
        ..refusal
    })?;
    if let Some(text) = compose::forbidden(preparation, &unit.plants) {
        return Err(Refusal::new("preparation", text));
    }
    if wish.state == PlantState::Cooked {
        let text = Message::new("plan-not-cooked");
        return Err(Refusal::new("state", text));
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
        .filter(|pour| pour.kind == "oil")
        .map(|pour| pour.ml)
        .sum();
    let liquid = if oil > 0.0 {
        Interval::exact(oil)
    } else {
        unit.liquid.volume_ml
    };
    let wanted = f64::from(wish.bottles) * wish.bottle_ml;
    // A damper herb gives more liquid and keeps less of it, so the ends pair up crosswise.
    let scale = |liquid: f64, kept: f64| (liquid > kept).then(|| wanted / (liquid - kept));
    let all_kept = || {
        Refusal::new(
            "preparation",
            "The marc would keep all of the liquid at this ratio; choose a preparation with more liquid to a gram.",
        )
    };
    let value = scale(liquid.value, kept.value).ok_or_else(all_kept)?;
    let most = scale(liquid.low, kept.high).ok_or_else(all_kept)?;
    let least = scale(liquid.high, kept.low).ok_or_else(all_kept)?;
    let herb_g = Interval::spanning(UNIT_G * value, UNIT_G * least, UNIT_G * most);
    if herb_g.low < compose::LEAST_G || herb_g.high > compose::MOST_G {
        return Err(Refusal::new(
            "bottles",
            format!(
                "These bottles take {} g of herb; one jar holds between 0.1 and 100 000 g of it, so ask for other bottles.",
                words::amount(herb_g.value)
            ),
        ));
    }
    // Asked of the jar that needs the most, so that whatever the plan says can be poured.
    let fits = |pour: &PourLine| pour.ml.max(pour.g) * most <= MOST_POURED;
    if !unit.pours.iter().all(fits) {
        return Err(Refusal::new(
            "bottles",
            format!(
                "These bottles come to {} mL; one jar takes up to 1 000 000 mL or g of each liquid, so ask for fewer or smaller bottles.",
                words::amount(wanted)
            ),
        ));
    }

    let after_trim = |g: f64| g / (1.0 - TRIM_LOSS);
    let water = herbs::water(&wish.herb, &wish.part);
    let (pick_fresh_g, dry_g) = match wish.state {
        PlantState::Fresh | PlantState::Cooked => (herb_g.map_monotone(after_trim), None),
        PlantState::Dried => {
            let ratio = water.ratio_fresh_per_dry;
            let fresh = Interval {
                low: herb_g.low * ratio.low,
                value: herb_g.value * ratio.value,
                high: herb_g.high * ratio.high,
            };
            notes.push(Note {
                code: "dry-down".to_owned(),
                text: sentence(&format!("fresh to dry by {}", water.reason)),
                source: water.source.clone(),
                status: water.status,
            });
            (fresh.map_monotone(after_trim), Some(herb_g))
        }
    };
    notes.push(Note::new(
        "trim-loss",
        "A tenth is added for what trimming takes.",
        "",
        Status::Practice,
    ));

    let pours: Vec<PourLine> = unit
        .pours
        .into_iter()
        .map(|pour| PourLine {
            ml: pour.ml * value,
            g: pour.g * value,
            ..pour
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
    notes.extend(unit.short_of.iter().map(|missed| {
        let text = format!(
            "The recipe misses {}: {} wanted, {} reached.",
            missed.target,
            words::number(missed.wanted, 1),
            words::number(missed.got, 1)
        );
        Note::computed("short-of", text)
    }));
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

/// What the marc keeps, mL to a gram of dry matter, and what that rests on: the maker's own figure, the
/// published one, else that of dried root.
pub fn retention(preparation: &Preparation, own: Option<Interval>) -> (Interval, Option<Note>) {
    if let Some(own) = own {
        let text = "What the marc keeps is counted from your own jars.";
        let note = Note::new("retention", text, "", Status::Own);
        return (own, Some(note));
    }
    if preparation.measure == Measure::MadeUpTo {
        return (Interval::exact(0.0), None);
    }
    match &preparation.retention {
        Some(figures) => {
            let value = 0.5 * (figures.pressed + figures.wrung_high);
            let range = Interval::spanning(value, figures.pressed, figures.wrung_high);
            let text = "The marc keeps between what a press and what a hand leaves in it.";
            let note = Note::new("retention", text, &figures.source, figures.status);
            (range, Some(note))
        }
        None => {
            let text = "No figure was found for what this marc keeps; that of dried root tinctures stands in until your own jars tell.";
            let source = "Herbal Materia Medica 1995, for dried root in spirit";
            let note = Note::new("retention", text, source, Status::Proposal);
            (RETENTION, Some(note))
        }
    }
}

/// What comes out of a jar when it is strained, mL, by what a gram of dry matter keeps.
pub fn strained_ml(jar: &compose::Proposal, retention: Interval) -> Interval {
    let oil: f64 = jar
        .pours
        .iter()
        .filter(|pour| pour.kind == "oil")
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

fn missing(pours: &[PourLine], stock: &[Stock]) -> Vec<Buy> {
    pours
        .iter()
        .filter(|pour| pour.kind != "water")
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
        PartClass::Flower => (
            21.0,
            "Flowers dry in two to three weeks.",
            "published ambient drying times",
        ),
        PartClass::Root | PartClass::Bark | PartClass::Fruit | PartClass::Seed => (
            42.0,
            "Roots dry in three to six weeks in a room.",
            "published drying time of ginseng root in a room",
        ),
        _ => (
            15.0,
            "Leaf and herb dry in six to fifteen days in the shade.",
            "published ambient drying times",
        ),
    };
    (
        days,
        Note::new("drying-time", text, source, Status::PartlyConfirmed),
    )
}

fn a_years_use(wish: &Wish, wanted: f64) -> Option<Note> {
    let yearly = wish.yearly_use_ml.filter(|yearly| *yearly > 0.0)?;
    (!wish.gifts && wanted > yearly).then(|| {
        let text = format!("That is more than the {} mL you use in a year: make less, or say that it is for gifts.", words::amount(yearly));
        Note::new("more-than-a-year", text, "", Status::Own)
    })
}

#[cfg(test)]
mod tests;
