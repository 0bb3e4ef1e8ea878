//! From the journal to the plain record of a label.

use ::label::{Figure, Kind, Label, Meaning, Plant, Ratio, State, Strength, Use};
use formulary::cautions;
use formulary::herbs::Limit;
use formulary::preparations::{self, Verdict};
use journal::{Bed, BottleId, Jar, JarId, PlantState, Setting, Stock};
use physics::Interval;
use physics::mixture::{Liquid, Pour, describe};
use physics::quantity::{celsius, grams};
use store::Reading;

use crate::failure::At as _;
use crate::jar::{Judged, Purpose};
use crate::{Failure, mixture};

/// What the maker chose for a label.
pub(super) struct Wanted {
    pub gift: bool,
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
}

/// A label and what it may be labelled for.
pub(super) struct Record {
    pub label: Label,
    pub uses: Vec<Purpose>,
    pub use_for: Purpose,
}

/// A jar's label tells what was poured, for that is what the maker will look up.
pub(super) fn of_jar(
    reading: &Reading<'_>,
    id: &JarId,
    wanted: &Wanted,
    setting: &Setting,
) -> Result<Record, Failure> {
    let row = reading
        .jar(id)
        .map_err(|why| Failure::from(why).renamed("jar"))?;
    if wanted.gift {
        let message = "A jar that steeps is not given away; fill bottles from it and label those.";
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
pub(super) fn of_bottle(
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
        label.storage = Some("Keep it in the fridge, and use it within days.".to_owned());
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
    if !wanted.gift {
        label.note.clone_from(&bottle.note);
    }
    Ok(record)
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
            let allowed: Vec<&str> = uses.iter().map(|it| words_of(*it)).collect();
            let message = format!(
                "{} may be labelled for {} only, not for {}.",
                jar.name,
                allowed.join(" or "),
                words_of(purpose)
            );
            return Err(Failure::invalid("use_for", message));
        }
        None => uses.first().copied().unwrap_or(Purpose::Outside),
    };
    let plants = jar.plants.iter().zip(&judged.known);
    let plants = plants.map(|(plant, known)| Plant {
        common: known.common.clone(),
        latin: known.latin.clone(),
        part: plant.part.clone(),
        state: match plant.state {
            PlantState::Fresh => State::Fresh,
            PlantState::Dried => State::Dried,
            PlantState::Cooked => State::Cooked,
        },
    });
    // A second pouring stands on a marc that has given most of what it had: its own ratio would say too much.
    let ratio = jar.ratio_ml_per_g().filter(|_| jar.marc_of.is_none());
    let label = Label {
        plants: plants.collect(),
        ratio: ratio.map(|ml_per_g| Ratio {
            ml_per_g,
            meaning: Meaning::PouredOn,
        }),
        menstruum: and(&liquids(jar)),
        oil: Some(and(&oils(jar))).filter(|oil| !oil.is_empty()),
        made_on: Some(jar.poured_at.date_naive()),
        origins: origins(reading, jar)?,
        storage: Some(storage(judged)).filter(|line| !line.is_empty()),
        use_for: match use_for {
            Purpose::Inside => Use::Inside,
            Purpose::Outside => Use::OutsideOnly,
            Purpose::Food => Use::Food,
        },
        cautions: cautions::for_a_label(&judged.poured.cautions),
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

/// What it may be labelled for, the likeliest first.
fn uses(judged: &Judged) -> Vec<Purpose> {
    let forbids_inside =
        |limit: Option<Limit>| matches!(limit, Some(Limit::Outside | Limit::No | Limit::Poisonous));
    let entries = judged.known.iter().filter_map(|known| known.entry);
    let mut limits = entries.map(formulary::herbs::Herb::limit);
    if limits.any(forbids_inside) {
        return vec![Purpose::Outside];
    }
    let made_for = &judged.preparation.uses;
    let all = [
        (preparations::Purpose::Inside, Purpose::Inside),
        (preparations::Purpose::Outside, Purpose::Outside),
        (preparations::Purpose::Food, Purpose::Food),
    ];
    all.into_iter()
        .filter(|(of_book, _)| made_for.contains(of_book))
        .map(|(_, purpose)| purpose)
        .collect()
}

fn words_of(purpose: Purpose) -> &'static str {
    match purpose {
        Purpose::Inside => "use inside",
        Purpose::Outside => "use outside",
        Purpose::Food => "the table",
    }
}

fn figure(interval: Interval) -> Figure {
    Figure {
        low: interval.low,
        value: interval.value,
        high: interval.high,
    }
}

/// The pours alone, before the plant's water joined them; nothing where all of it is oil.
fn poured(jar: &Jar) -> Result<Option<Liquid>, Failure> {
    if is_all_oil(jar) {
        return Ok(None);
    }
    let pours: Result<Vec<Pour>, Failure> = jar
        .pours
        .iter()
        .map(|pour| Pour::weighed(mixture::ingredient(&pour.item)?, grams(pour.g)).at("jar"))
        .collect();
    Ok(Some(describe(&pours?, &[], celsius(20.0)).at("jar")?))
}

fn is_all_oil(jar: &Jar) -> bool {
    let mut pours = jar.pours.iter();
    pours.all(|pour| matches!(pour.item, Stock::Oil { .. }))
}

/// What makes the liquid what it is. Below these figures it is a trace from the plant or the label's rounding.
fn strengths(liquid: &Liquid) -> Vec<Strength> {
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

fn word_of(item: &Stock) -> String {
    match item {
        Stock::Water => "water".to_owned(),
        Stock::Spirit { .. } => "spirit".to_owned(),
        Stock::Glycerin { .. } => "glycerin".to_owned(),
        Stock::Vinegar { .. } => "vinegar".to_owned(),
        Stock::Wine { .. } => "wine".to_owned(),
        Stock::Sugar => "sugar".to_owned(),
        Stock::Syrup { .. } => "syrup".to_owned(),
        Stock::Honey { .. } => "honey".to_owned(),
        Stock::Juice { .. } => "juice".to_owned(),
        Stock::Oil { oil } => format!("{oil} oil"),
    }
}

/// The words of what was poured, each once, the most by weight first.
fn by_weight(jar: &Jar, is_wanted: impl Fn(&Stock) -> bool) -> Vec<(String, f64)> {
    let mut words: Vec<(String, f64)> = Vec::new();
    for pour in jar.pours.iter().filter(|pour| is_wanted(&pour.item)) {
        let word = word_of(&pour.item);
        match words.iter_mut().find(|(known, _)| *known == word) {
            Some((_, g)) => *g += pour.g,
            None => words.push((word, pour.g)),
        }
    }
    words.sort_by(|a, b| b.1.total_cmp(&a.1));
    words
}

/// The liquids but the oil, in the order in which they were measured out.
fn liquids(jar: &Jar) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    for pour in &jar.pours {
        let word = word_of(&pour.item);
        if !matches!(pour.item, Stock::Oil { .. }) && !words.contains(&word) {
            words.push(word);
        }
    }
    words
}

fn oils(jar: &Jar) -> Vec<String> {
    let oils = by_weight(jar, |item| matches!(item, Stock::Oil { .. }));
    oils.into_iter().map(|(word, _)| word).collect()
}

fn ingredients(jar: &Jar, judged: &Judged) -> Vec<String> {
    let mut all = by_weight(jar, |_| true);
    for (plant, known) in jar.plants.iter().zip(&judged.known) {
        let word = format!("{} {}", known.common.to_lowercase(), plant.part);
        all.push((word, plant.mass_g));
    }
    all.sort_by(|a, b| b.1.total_cmp(&a.1));
    all.into_iter().map(|(word, _)| word).collect()
}

/// What food law has named on labels (Regulation (EU) 1169/2011, Annex II; from memory).
fn allergens(jar: &Jar) -> Vec<String> {
    let mut found = Vec::new();
    for pour in &jar.pours {
        let allergen = match &pour.item {
            Stock::Oil { oil } if oil.contains("almond") => "almond",
            Stock::Oil { oil } if oil.contains("sesame") => "sesame",
            Stock::Wine { .. } => "sulphites of wine",
            _ => continue,
        };
        if !found.iter().any(|known| known == allergen) {
            found.push(allergen.to_owned());
        }
    }
    found
}

/// Harvests and beds; a wild place is nobody's to print.
fn origins(reading: &Reading<'_>, jar: &Jar) -> Result<Vec<String>, Failure> {
    let mut origins: Vec<String> = Vec::new();
    for lot in jar.plants.iter().filter_map(|plant| plant.lot) {
        let row = reading.lot(lot)?;
        let bed = row.bed.filter(|bed: &Bed| !bed.wild).map(|bed| bed.name);
        let harvest = format!("harvest {}", row.harvest.code);
        for origin in std::iter::once(harvest).chain(bed) {
            if !origins.contains(&origin) {
                origins.push(origin);
            }
        }
    }
    if let Some(first) = jar.marc_of {
        let first = reading.get::<Jar>(&first)?;
        origins.push(format!("the marc of {}", first.code));
    }
    Ok(origins)
}

/// One line on keeping, without the book's own marks of how sure it is.
fn storage(judged: &Judged) -> String {
    let usual = judged.preparation.storage.as_str();
    let usual = usual.replace(" (practice)", "").replace(" (proposal)", "");
    let usual = crate::words::sentence(&usual);
    let line = match judged.poured.keeping.verdict {
        Verdict::Keeps | Verdict::DoNotMake => usual,
        Verdict::KeepsCold if usual.to_lowercase().contains("fridge") => usual,
        Verdict::KeepsCold => format!("Keep it in the fridge. {usual}"),
        Verdict::UseNow => "Keep it in the fridge, and no longer than its date.".to_owned(),
    };
    line.trim().to_owned()
}

fn and(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [only] => only.clone(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}
