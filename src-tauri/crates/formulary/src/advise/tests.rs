use physics::{
    Strength,
    mixture::{Acidity, Ingredient},
};

use super::*;
use crate::preparations::PlantState;

fn ask(herb: &str, part: &str, state: PlantState, purpose: Purpose) -> Request {
    let plant = Plant {
        herb: herb.into(),
        part: part.into(),
        state,
        mass_g: 100.0,
        moisture_wet_percent: None,
        told: None,
        identity: Default::default(),
    };
    Request {
        plant,
        also: Vec::new(),
        purpose,
        without: Vec::new(),
        jar_ml: None,
        stock: None,
    }
}

fn keys(candidates: &[Candidate]) -> Vec<&str> {
    candidates
        .iter()
        .map(|candidate| candidate.preparation.as_str())
        .collect()
}

fn of<'a>(candidates: &'a [Candidate], key: &str) -> &'a Candidate {
    candidates
        .iter()
        .find(|one| one.preparation == key)
        .unwrap_or_else(|| panic!("{key}"))
}

fn stock(ingredient: Ingredient) -> Stock {
    Stock {
        ingredient,
        available_ml: None,
        exactly_ml: None,
        supply: None,
    }
}

#[test]
fn lemon_balm_without_alcohol_becomes_a_glycerite_first() {
    let mut request = ask("lemon balm", "leaf", PlantState::Fresh, Purpose::Inside);
    request.without.push(Without::Alcohol);
    let candidates = advise(&request).unwrap();
    assert_eq!(
        candidates[0].preparation,
        "glycerite-fresh",
        "{:?}",
        keys(&candidates)
    );
    assert!(
        candidates
            .iter()
            .all(|one| one.liquid.strength_percent_vol.high <= 0.5)
    );
}

#[test]
fn every_candidate_has_reasons_and_unsure_ones_say_so() {
    for herb in herbs::all() {
        for state in [PlantState::Fresh, PlantState::Dried] {
            for candidate in
                advise(&ask(&herb.key, herb.first_part(), state, Purpose::Inside)).unwrap()
            {
                assert!(!candidate.reasons.is_empty(), "{}", herb.key);
                for reason in &candidate.reasons {
                    assert!(
                        reason.text.id() != "own-words",
                        "{}: {}",
                        herb.key,
                        reason.text
                    );
                    assert!(reason.source.is_some() || reason.status != Status::Confirmed);
                }
                let offered = candidate.verdict != Verdict::DoNotMake;
                assert!(
                    herb.is_offered() || !offered,
                    "{} {}",
                    herb.key,
                    candidate.preparation
                );
                assert_eq!(offered, !candidate.pours.is_empty());
            }
        }
    }
}

#[test]
fn resin_never_goes_into_glycerin() {
    let candidates = advise(&ask("hops", "cone", PlantState::Dried, Purpose::Inside)).unwrap();
    let glycerite = of(&candidates, "glycerite-dried");
    assert_eq!(glycerite.verdict, Verdict::DoNotMake);
    assert_eq!(glycerite.reasons[0].text.id(), "resin-not-in-glycerin");
    assert!(
        candidates[0].preparation.starts_with("tincture"),
        "{:?}",
        keys(&candidates)
    );
}

#[test]
fn comfrey_is_offered_for_the_skin_only() {
    let inside = advise(&ask("comfrey", "root", PlantState::Dried, Purpose::Inside)).unwrap();
    assert!(inside.iter().all(|one| one.verdict == Verdict::DoNotMake));
    let outside = advise(&ask("comfrey", "root", PlantState::Dried, Purpose::Outside)).unwrap();
    assert_ne!(of(&outside, "oil-dried").verdict, Verdict::DoNotMake);
    assert_eq!(of(&outside, "cordial").verdict, Verdict::DoNotMake);
    assert!(outside[0].verdict < Verdict::DoNotMake);
}

#[test]
fn what_must_not_be_swallowed_is_never_made_to_be() {
    for herb in herbs::all() {
        if herb.limit() != Some(herbs::Limit::Outside) {
            continue;
        }
        for purpose in [Purpose::Inside, Purpose::Food, Purpose::Outside] {
            let asked = ask(&herb.key, herb.first_part(), PlantState::Dried, purpose);
            for candidate in advise(&asked).unwrap() {
                let offered = candidate.verdict < Verdict::DoNotMake;
                let name = &candidate.preparation;
                assert!(candidate.keeping.outside_only, "{} {name}", herb.key);
                assert!(
                    !offered || purpose == Purpose::Outside,
                    "{} {name}",
                    herb.key
                );
                let preparation = preparations::find(name, PlantState::Dried).unwrap();
                assert!(
                    !offered || preparation.uses.contains(&Purpose::Outside),
                    "{name}"
                );
            }
        }
    }
    let outside = advise(&ask(
        "arnica",
        "flower",
        PlantState::Dried,
        Purpose::Outside,
    ))
    .unwrap();
    assert!(of(&outside, "tincture-dried").verdict < Verdict::DoNotMake);
    assert_eq!(of(&outside, "glycerite-dried").verdict, Verdict::DoNotMake);
}

#[test]
fn raw_elderberry_and_poison_are_never_made() {
    for (herb, part) in [
        ("elderberry", "berry"),
        ("henbane", "leaf"),
        ("adonis", "herb"),
        ("coltsfoot", "leaf"),
    ] {
        for purpose in [Purpose::Inside, Purpose::Outside, Purpose::Food] {
            let candidates = advise(&ask(herb, part, PlantState::Fresh, purpose)).unwrap();
            assert!(
                candidates
                    .iter()
                    .all(|one| one.verdict == Verdict::DoNotMake),
                "{herb}"
            );
        }
    }
}

#[test]
fn weak_vinegar_is_named_as_the_reason() {
    let mut request = ask("nettle", "leaf", PlantState::Dried, Purpose::Food);
    request.stock = Some(vec![stock(Ingredient::vinegar(Acidity::new(3.0).unwrap()))]);
    let candidates = advise(&request).unwrap();
    let vinegar = of(&candidates, "vinegar");
    assert_eq!(vinegar.verdict, Verdict::DoNotMake);
    assert_eq!(vinegar.reasons[0].text.id(), "vinegar-too-weak");
}

#[test]
fn fresh_herb_in_oil_is_never_more_than_use_now() {
    let candidates = advise(&ask(
        "calendula",
        "flower",
        PlantState::Fresh,
        Purpose::Outside,
    ))
    .unwrap();
    let oil = of(&candidates, "oil-fresh");
    assert_eq!(oil.verdict, Verdict::UseNow);
    assert_eq!(oil.best_before_days.unwrap().high, 4.0);
    assert_eq!(of(&candidates, "oil-acidified").verdict, Verdict::DoNotMake);
}

#[test]
fn what_is_at_hand_is_preferred() {
    let mut request = ask("chamomile", "flower", PlantState::Dried, Purpose::Inside);
    request.stock = Some(vec![stock(Ingredient::spirit(
        Strength::from_percent(60.0).unwrap(),
    ))]);
    let candidates = advise(&request).unwrap();
    assert!(
        candidates[0].preparation.starts_with("tincture"),
        "{:?}",
        keys(&candidates)
    );
    assert!(
        of(&candidates, "glycerite-dried")
            .reasons
            .iter()
            .any(|reason| reason.text.id() == "none-at-hand")
    );
}
