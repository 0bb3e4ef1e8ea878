//! A herb that the maker named is called what the maker called it, in every sentence about its jar.

use api::Language;
use formulary::{
    advise::{Request, advise},
    compose::{Composition, Plant, compose},
    herbs,
    plan::{Wish, plan},
    poison,
    preparations::{PlantState, Purpose},
};
use message::Message;

/// A name that no language knows.
const NEUTRAL: &str = "Qqzzw";

const STATES: [PlantState; 2] = [PlantState::Fresh, PlantState::Dried];

fn plant(herb: &str, state: PlantState) -> Plant {
    Plant {
        herb: herb.to_owned(),
        part: "root".to_owned(),
        state,
        mass_g: 100.0,
        moisture_wet_percent: None,
        told: None,
        identity: Default::default(),
    }
}

/// What is said of a jar of this herb, and what of one that is refused.
fn of_jars(herb: &str, preparation: &str, state: PlantState) -> Vec<Message> {
    let wish = Composition::of(preparation, plant(herb, state));
    let small = Composition {
        jar_ml: Some(20.0),
        ..wish.clone()
    };
    let mut said = Vec::new();
    if let Err(refused) = compose(&small) {
        said.push(refused.refusal().message.clone());
    }
    match compose(&wish) {
        Err(refused) => said.push(refused.refusal().message.clone()),
        Ok(jar) => {
            let notes = jar.reasons.iter().chain(&jar.would_help);
            said.extend(notes.map(|note| note.text.clone()));
            said.extend(jar.cautions.iter().map(|caution| caution.text.clone()));
            said.extend(jar.pours.iter().map(|pour| pour.name.clone()));
            said.extend(jar.plants.iter().map(|plant| plant.basis.clone()));
            said.extend([jar.controls.ratio_ml_per_g.because, jar.keeping.text]);
        }
    }
    said
}

/// What the adviser says of this herb for every use.
fn of_advice(herb: &str, state: PlantState) -> Vec<Message> {
    let mut said = Vec::new();
    for purpose in [Purpose::Inside, Purpose::Outside, Purpose::Food] {
        let request = Request {
            plant: plant(herb, state),
            also: Vec::new(),
            purpose,
            without: Vec::new(),
            jar_ml: None,
            stock: Some(Vec::new()),
        };
        for candidate in advise(&request).unwrap() {
            said.extend([candidate.name, candidate.keeping.text]);
            said.extend(candidate.reasons.into_iter().map(|reason| reason.text));
        }
    }
    said
}

fn of_plan(herb: &str, state: PlantState) -> Vec<Message> {
    let wish = Wish {
        herb: herb.to_owned(),
        part: "root".to_owned(),
        preparation: "tincture".to_owned(),
        identity: Default::default(),
        state,
        bottles: 4,
        bottle_ml: 50.0,
        ready_on: "2026-12-01".parse().unwrap(),
        own_retention_ml_per_g: None,
        stock: Vec::new(),
        yearly_use_ml: Some(10.0),
        gifts: false,
    };
    let notes = plan(&wish).unwrap().notes;
    notes.into_iter().map(|note| note.text).collect()
}

/// Says both alike, but for the name.
fn assert_alike(name: &str, said: &[Message], neutral: &[Message]) {
    assert_eq!(said.len(), neutral.len(), "{name}");
    for (said, neutral) in said.iter().zip(neutral) {
        for language in Language::ALL {
            let expected = language.tell(neutral).replace(NEUTRAL, name);
            assert_eq!(language.tell(said), expected, "{name}");
        }
    }
}

fn is_nobodys(name: &str) -> bool {
    herbs::find(name).is_none() && poison::called(name, None).is_none()
}

#[test]
fn a_makers_own_herb_is_named_as_it_was_typed() {
    let names = [
        "Bay leaf", "Harvest", "Note", "leaf", "und", "dried", "Keeps",
    ];
    for name in names {
        assert!(is_nobodys(name), "{name}");
        for state in STATES {
            let jars = |herb| {
                let families = [
                    "tincture",
                    "glycerite",
                    "vinegar",
                    "oil",
                    "oil-acidified",
                    "honey",
                ];
                let jars = families.map(|family| of_jars(herb, family, state));
                jars.into_iter().flatten().collect::<Vec<_>>()
            };
            let (said, neutral) = (jars(name), jars(NEUTRAL));
            let german: Vec<String> = said.iter().map(|it| Language::German.tell(it)).collect();
            assert!(german.iter().any(|it| it.contains(name)), "{german:#?}");
            assert_alike(name, &said, &neutral);
            assert_alike(name, &of_advice(name, state), &of_advice(NEUTRAL, state));
            assert_alike(name, &of_plan(name, state), &of_plan(NEUTRAL, state));
        }
    }
}

/// Whatever the catalogue holds is a name that a maker may give.
#[test]
#[ignore = "long"]
fn no_word_of_the_catalogue_is_taken_for_one_in_a_name() {
    let neutral = STATES.map(|state| of_jars(NEUTRAL, "tincture", state));
    let mut asked = 0;
    for (at, id) in Language::English.messages().keys().enumerate() {
        for language in Language::ALL {
            let name = language.tell(&Message::of_table(id.clone()));
            if name.is_empty() || name.contains(['$', '{']) || !is_nobodys(&name) {
                continue;
            }
            asked += 1;
            let state = at % STATES.len();
            let said = of_jars(&name, "tincture", STATES[state]);
            assert_alike(&name, &said, &neutral[state]);
        }
    }
    assert!(asked > 1000, "only {asked}");
}
