//! From the journal to the plain record of a label.

use ::paper::{Figure, Herb, Kind, Label, Meaning, Origin, Plant, Ratio, Strength, Use};
use formulary::cautions;
use formulary::preparations::{Purpose, Verdict};
use formulary::serving::Way;
use journal::{Bed, BottleId, Jar, JarId, Setting};
use message::{Argument, Failure, Message, say};
use physics::Interval;
use physics::mixture::Liquid;
use reckon::jar::judged::Judged;
use reckon::label::{allergens, called, ingredients, is_all_oil, liquids, poured, storage, uses};
use reckon::{serving, told};
use store::Reading;

/// What the maker chose for a label.
pub(crate) struct Wanted {
    pub gift: bool,
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
}

/// A label and what it may be labelled for.
pub(crate) struct Record {
    pub label: Label,
    pub uses: Vec<Purpose>,
    pub use_for: Purpose,
}

/// A jar's label tells what was poured, for that is what the maker will look up.
pub(crate) fn of_jar(
    reading: &Reading<'_>,
    id: &JarId,
    wanted: &Wanted,
    setting: &Setting,
) -> Result<Record, Failure> {
    let row = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    if wanted.gift {
        let message = say!("label-jar-is-no-gift");
        return Err(Failure::invalid("gift", message));
    }
    let jar = &row.jar;
    let judged = Judged::with_ph(reading, jar, reading.ph_of(id)?.as_ref())?;
    let mut record = record(reading, jar, &judged, Kind::Jar, wanted, setting)?;
    let label = &mut record.label;
    let (from, to) = jar.due();
    label.lot = jar.code.to_string();
    label.due_from = Some(from);
    label.due_to = Some(to);
    label.note.clone_from(&jar.note);
    label.strengths = match poured(jar)? {
        Some(liquid) => strengths(&liquid),
        None => Vec::new(),
    };
    Ok(record)
}

/// A bottle's label tells what the finished liquid holds.
pub(crate) fn of_bottle(
    reading: &Reading<'_>,
    id: &BottleId,
    wanted: &Wanted,
    setting: &Setting,
) -> Result<Record, Failure> {
    let row = reading
        .bottle(id)
        .map_err(|why| Failure::from(why).renamed("bottle"))?;
    let bottle = &row.bottle;
    let jar = reading.get::<Jar>(&bottle.jar)?;
    let judged = Judged::with_ph(reading, &jar, row.ph.as_ref())?;
    let kind = if wanted.gift {
        Kind::Gift
    } else {
        Kind::Bottle
    };
    let mut record = record(reading, &jar, &judged, kind, wanted, setting)?;
    let label = &mut record.label;
    label.lot = bottle.code.to_string();
    label.strained_on = reading
        .strainings(&bottle.jar)?
        .first()
        .map(|(_, straining)| straining.at.date_naive());
    label.bottled_on = Some(bottle.filled_at.date_naive());
    label.best_before = row.last_day();
    if label.best_before.is_none() && judged.poured.keeping.verdict == Verdict::UseNow {
        label.storage = Some(say!("keep-for-days"));
    }
    let holds_ml = if row.is_open && bottle.end.is_none() {
        row.left_ml.max(0.0)
    } else {
        bottle.size_ml
    };
    label.net_ml = Some(holds_ml);
    let liquid = &judged.poured.liquid;
    if !is_all_oil(&jar) {
        label.strengths = strengths(liquid);
    }
    if wanted.ethanol {
        let held = liquid.ethanol_g_per_ml.map_monotone(|g| g * holds_ml);
        label.ethanol_in_bottle_g = (held.high >= 0.05).then(|| figure(held));
    }
    if wanted.gift {
        label.ways = ways(&judged);
    } else {
        label.note.clone_from(&bottle.note);
    }
    Ok(record)
}

/// The first ways to use it, each with what to beware of.
fn ways(judged: &Judged) -> Vec<Message> {
    const MOST: usize = 2;
    let ways = serving::ways(judged).into_iter();
    ways.take(MOST).map(Way::said).collect()
}

fn record(
    reading: &Reading<'_>,
    jar: &Jar,
    judged: &Judged,
    kind: Kind,
    wanted: &Wanted,
    setting: &Setting,
) -> Result<Record, Failure> {
    let uses = uses(judged);
    let use_for = match wanted.use_for {
        Some(purpose) if uses.contains(&purpose) => purpose,
        Some(purpose) => {
            let allowed = uses.iter().map(|it| called(*it).into());
            let message = say!(
                "label-not-for",
                name = Argument::own(jar.name.as_str()),
                allowed = Argument::one_of(allowed),
                asked = called(purpose)
            );
            return Err(Failure::invalid("use_for", message));
        }
        None => uses.first().copied().unwrap_or(Purpose::Outside),
    };
    let plants = jar.plants.iter().zip(&judged.known);
    let plants = plants.map(|(plant, known)| Plant {
        common: told::herb(known),
        latin: known.latin.clone(),
        part: told::part(&plant.part),
        state: plant.state.name().into(),
    });
    // A second pouring stands on a marc that has given most of what it had: its own ratio would say too much.
    let ratio = jar.ratio_ml_per_g().filter(|_| jar.marc_of.is_none());
    let label = Label {
        plants: plants.collect(),
        drawn: (kind == Kind::Gift).then(|| most_of(jar, judged)).flatten(),
        ratio: ratio.map(|ml_per_g| Ratio {
            ml_per_g,
            meaning: Meaning::PouredOn,
        }),
        liquids: liquids(jar),
        made_on: Some(jar.poured_at.date_naive()),
        origins: origins(reading, jar)?,
        storage: storage(judged),
        use_for: match use_for {
            Purpose::Inside => Use::Inside,
            Purpose::Outside => Use::OutsideOnly,
            Purpose::Food => Use::Food,
        },
        cautions: cautions::for_a_label(&judged.cautions()),
        poison_line: setting.poison_line.clone(),
        maker: setting.maker.clone(),
        ingredients: ingredients(jar, judged),
        allergens: allergens(jar),
        ..Label::new(kind, jar.name.clone(), "")
    };
    Ok(Record {
        label,
        uses,
        use_for,
    })
}

/// The plant that a jar has most of.
fn most_of(jar: &Jar, judged: &Judged) -> Option<Herb> {
    let plants = jar.plants.iter().zip(&judged.known);
    let (plant, known) =
        plants.max_by(|(one, _), (other, _)| one.mass_g.total_cmp(&other.mass_g))?;
    Some(Herb {
        name: told::herb(known),
        key: plant.herb.to_string(),
        part: plant.part.clone(),
    })
}

fn figure(interval: Interval) -> Figure {
    Figure {
        low: interval.low,
        value: interval.value,
        high: interval.high,
    }
}

/// What makes the liquid what it is. Below these figures it is a trace from the plant or the label's rounding.
pub(crate) fn strengths(liquid: &Liquid) -> Vec<Strength> {
    let alcohol = liquid.strength_percent_vol;
    let glycerol = liquid.glycerol_percent_mass;
    let acidity = liquid.acidity_g_per_100ml;
    let sugar = liquid.sugar_percent_mass;
    [
        (alcohol, 0.5, Strength::Alcohol(figure(alcohol))),
        (glycerol, 1.0, Strength::Glycerol(figure(glycerol))),
        (acidity, 0.5, Strength::Acidity(figure(acidity))),
        (sugar, 1.0, Strength::Sugar(figure(sugar))),
    ]
    .into_iter()
    .filter(|(interval, least, _)| interval.high >= *least)
    .map(|(.., strength)| strength)
    .collect()
}

/// Harvests and beds; a wild place is nobody's to print.
fn origins(reading: &Reading<'_>, jar: &Jar) -> Result<Vec<Origin>, Failure> {
    let mut origins: Vec<Origin> = Vec::new();
    for lot in jar.plants.iter().filter_map(|plant| plant.lot) {
        let row = reading.lot(lot)?;
        let bed = row.bed.filter(|bed: &Bed| !bed.wild);
        let bed = bed.map(|bed| Origin::Bed(bed.name));
        let harvest = Origin::Harvest(row.harvest.code.to_string());
        for origin in std::iter::once(harvest).chain(bed) {
            if !origins.contains(&origin) {
                origins.push(origin);
            }
        }
    }
    if let Some(first) = jar.marc_of {
        let first = reading.get::<Jar>(&first)?;
        origins.push(Origin::Marc(first.code.to_string()));
    }
    Ok(origins)
}
