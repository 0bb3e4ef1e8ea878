//! What the label of a jar may say.

use formulary::herbs::Limit;
use formulary::preparations;
use formulary::preparations::Purpose;
use journal::{Item, Jar};
use message::{Argument, At as _, Failure, Message, say};
use physics::mixture::{Liquid, Pour, describe};
use physics::quantity::{celsius, grams};

use crate::jar::judged::Judged;
use crate::told;

/// What it may be labelled for, the likeliest first.
pub fn uses(judged: &Judged) -> Vec<Purpose> {
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

/// What it is labelled for, in a sentence.
pub fn called(purpose: Purpose) -> Message {
    match purpose {
        Purpose::Inside => say!("use-inside"),
        Purpose::Outside => say!("use-outside"),
        Purpose::Food => say!("use-food"),
    }
}

/// The pours alone, before the plant's water joined them; nothing where all of it is oil.
pub fn poured(jar: &Jar) -> Result<Option<Liquid>, Failure> {
    if is_all_oil(jar) {
        return Ok(None);
    }
    let pours: Result<Vec<Pour>, Failure> = jar
        .pours
        .iter()
        .map(|pour| Pour::weighed(pour.item.ingredient()?, grams(pour.g)).at("jar"))
        .collect();
    Ok(Some(describe(&pours?, &[], celsius(20.0)).at("jar")?))
}

pub fn is_all_oil(jar: &Jar) -> bool {
    let mut pours = jar.pours.iter();
    pours.all(|pour| matches!(pour.item, Item::Oil { .. }))
}

/// What was poured, each once, the most by weight first.
fn by_weight(jar: &Jar, is_wanted: impl Fn(&Item) -> bool) -> Vec<(Argument, f64)> {
    let mut liquids: Vec<(Argument, f64)> = Vec::new();
    for pour in jar.pours.iter().filter(|pour| is_wanted(&pour.item)) {
        let liquid = told::liquid(&pour.item);
        match liquids.iter_mut().find(|(known, _)| *known == liquid) {
            Some((_, g)) => *g += pour.g,
            None => liquids.push((liquid, pour.g)),
        }
    }
    liquids.sort_by(|a, b| b.1.total_cmp(&a.1));
    liquids
}

/// The oils first, then the other liquids in the order in which they were measured out.
pub fn liquids(jar: &Jar) -> Vec<Argument> {
    let oils = by_weight(jar, |item| matches!(item, Item::Oil { .. }));
    let mut liquids: Vec<Argument> = oils.into_iter().map(|(oil, _)| oil).collect();
    for pour in &jar.pours {
        let liquid = told::liquid(&pour.item);
        if !liquids.contains(&liquid) {
            liquids.push(liquid);
        }
    }
    liquids
}

pub fn ingredients(jar: &Jar, judged: &Judged) -> Vec<Argument> {
    let mut all = by_weight(jar, |_| true);
    for (plant, known) in jar.plants.iter().zip(&judged.known) {
        all.push((told::ingredient(known, &plant.part), plant.mass_g));
    }
    all.sort_by(|a, b| b.1.total_cmp(&a.1));
    all.into_iter().map(|(ingredient, _)| ingredient).collect()
}

/// What food law has named on labels (Regulation (EU) 1169/2011, Annex II; from memory).
pub fn allergens(jar: &Jar) -> Vec<Argument> {
    let mut found = Vec::new();
    for pour in &jar.pours {
        let allergen = Argument::message(match &pour.item {
            Item::Oil { oil } if oil.contains("almond") => say!("allergen-almond"),
            Item::Oil { oil } if oil.contains("sesame") => say!("allergen-sesame"),
            Item::Wine { .. } => say!("allergen-wine"),
            _ => continue,
        });
        if !found.contains(&allergen) {
            found.push(allergen);
        }
    }
    found
}

/// One line on keeping.
pub fn storage(judged: &Judged) -> Option<Message> {
    Some(judged.preparation.storage(judged.poured.keeping.verdict))
}
