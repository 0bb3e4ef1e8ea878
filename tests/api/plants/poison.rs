//! A poisonous plant gets no recipe under any name, and no harmless one is stopped for its name.
//!
//! The list: `poison_plants.tsv` of the formulary, each row with its own source.

use api::Language;
use formulary::poison::{self, Kind, Poison};
use serde_json::{Value, json};

use crate::world::World;

fn every_name() -> impl Iterator<Item = (&'static Poison, String)> {
    poison::all().iter().flat_map(|row| {
        let latin = std::iter::once(row.latin.as_str()).chain(row.synonyms());
        let latin = latin.map(|name| name.split('(').next().unwrap_or(name).trim());
        let named = row.english().chain(row.german()).chain(latin);
        named.map(move |name| (row, name.to_owned()))
    })
}

/// A part that the row names, as a maker calls it; what stands in brackets is food.
fn part_of(row: &Poison) -> &'static str {
    const PARTS: [&str; 15] = [
        "leaf", "root", "berry", "seed", "bark", "bulb", "flower", "twig", "tuber", "rhizome",
        "corm", "cone", "frond", "pod", "capsule",
    ];
    let says = row.part.split('(').next().unwrap();
    PARTS
        .into_iter()
        .find(|part| says.contains(part))
        .unwrap_or("herb")
}

fn asked(herb: &str, part: &str, purpose: &str) -> Value {
    json!({"herb": herb, "part": part, "state": "dried", "mass_g": 50, "purpose": purpose, "without": []})
}

fn composition(herb: &str, part: &str) -> Value {
    json!({
        "preparation": "tincture",
        "plants": [{"herb": herb, "part": part, "state": "dried", "mass_g": 50}],
        "stock": [],
    })
}

fn no_candidate_but_do_not_make(world: &World, request: &Value) {
    let advice = world.call("jar.advise", request.clone());
    let candidates = advice["candidates"].as_array().unwrap();
    assert!(!candidates.is_empty(), "{request}: says why");
    for one in candidates {
        assert_eq!(
            one["verdict"], "do not make",
            "{request}: {}",
            one["preparation"]
        );
        assert_eq!(one["pours"], json!([]), "{request}");
    }
}

#[test]
fn no_name_of_the_list_gets_a_recipe() {
    let world = World::new();
    for (row, name) in every_name() {
        let request = asked(&name, part_of(row), "inside");
        // The Latin name is asked about everything that can be made, each other name about what holds no alcohol.
        if name == row.latin {
            no_candidate_but_do_not_make(&world, &request);
            if row.stop != Kind::Inside {
                no_candidate_but_do_not_make(&world, &asked(&name, part_of(row), "outside"));
            }
        } else {
            let mut few = request;
            few["without"] = json!(["alcohol", "vinegar", "oil", "honey"]);
            no_candidate_but_do_not_make(&world, &few);
        }
        let text = format!("{name} "); // a stray space is no other name
        let found = world.call("herb.find", json!({"text": text}));
        assert_eq!(found["stop"]["kind"], kind(row, &name), "{name}");
        assert!(found["stop"]["text"].as_str().unwrap().ends_with('.'));
    }
}

/// A name that is that of a whole genus asks, and a plant that shares its name is the first that has it.
fn kind(row: &Poison, name: &str) -> Value {
    let called = poison::of(name).unwrap();
    match (&called.which, called.plant.key == row.key) {
        (Some(_), _) => json!("ask"),
        (None, true) => json!(row.stop.word()),
        (None, false) => json!(called.plant.stop.word()),
    }
}

#[test]
fn an_own_herb_of_the_list_gets_no_amounts_by_any_command() {
    let world = World::new();
    for row in poison::all() {
        let part = part_of(row);
        let name = row.german().next().unwrap();
        let added = world.call(
            "herb.add",
            json!({"common": format!("Mine: {}", row.key), "latin": row.latin, "parts": [part], "note": null}),
        );
        let key = added["herb"]["key"].as_str().unwrap();
        for herb in [key, name] {
            if herb == name && formulary::herbs::find(name).is_none() {
                // Only what is in the book can be composed.
                continue;
            }
            if matches!(row.stop, Kind::Inside) {
                let sweet = json!({
                    "preparation": "cordial",
                    "plants": [{"herb": herb, "part": part, "state": "dried", "mass_g": 50}],
                    "stock": [],
                });
                let refused = world.refused("jar.compose", sweet);
                assert_eq!(
                    refused.field, "plants[0].herb",
                    "{herb}: {}",
                    refused.message
                );
            } else {
                let refused = world.refused("jar.compose", composition(herb, part));
                assert_eq!(
                    refused.field, "plants[0].herb",
                    "{herb}: {}",
                    refused.message
                );
                let expected = if row.stop == Kind::Ask {
                    "confirm_plant"
                } else {
                    "invalid"
                };
                assert_eq!(refused.code, expected, "{herb}");
                world.refused("jar.pour", json!({"composition": composition(herb, part)}));
                let wish = json!({
                    "herb": herb, "part": part, "preparation": "tincture", "state": "dried",
                    "bottles": 2, "bottle_ml": 50, "ready_on": "2027-06-01",
                });
                assert_eq!(world.refused("plan.bottles", wish.clone()).field, "herb");
                world.refused("plan.save", wish);
            }
        }
        no_candidate_but_do_not_make(&world, &asked(key, part, "inside"));
    }
}

#[test]
fn a_deliberate_yes_lets_pass_what_asks_and_nothing_else() {
    let world = World::new();
    let yes = |herb: &str, part: &str| {
        let mut request = asked(herb, part, "inside");
        request["confirmed"] = json!(true);
        let advice = world.call("jar.advise", request);
        let candidates = advice["candidates"].as_array().unwrap();
        candidates.iter().any(|one| one["verdict"] != "do not make")
    };
    let advice = world.call("jar.advise", asked("black locust", "bark", "inside"));
    assert_eq!(advice["asks"]["code"], "poison", "it says what it asks");
    let advice = world.call("jar.advise", asked("foxglove", "leaf", "inside"));
    assert!(advice["asks"].is_null(), "nothing to ask");
    assert!(yes("black locust", "bark"), "it asks");
    assert!(yes("Solanum", "leaf"), "a mixed genus asks which");
    assert!(yes("holly", "leaf"), "a part that nobody looked up asks");
    for (herb, part) in [
        ("foxglove", "leaf"),
        ("comfrey", "leaf"),
        ("cannabis", "flower"),
        ("foxgolve", "leaf"),
    ] {
        assert!(!yes(herb, part), "{herb}");
    }
}

#[test]
fn a_plant_for_the_skin_alone_may_be_used_on_the_skin() {
    let world = World::new();
    let advice = world.call("jar.advise", asked("comfrey", "leaf", "outside"));
    let candidates = advice["candidates"].as_array().unwrap();
    assert!(candidates.iter().any(|one| one["verdict"] != "do not make"));
    no_candidate_but_do_not_make(&world, &asked("comfrey", "leaf", "inside"));
    no_candidate_but_do_not_make(&world, &asked("comfrey", "leaf", "food"));
}

#[test]
fn another_name_does_not_make_a_poisonous_plant_another_plant() {
    let world = World::new();
    let add = |common: &str, latin: Option<&str>| {
        let herb = json!({"common": common, "latin": latin, "parts": ["leaf"], "note": null});
        world.call("herb.add", herb)["herb"]["key"]
            .as_str()
            .unwrap()
            .to_owned()
    };
    let foxglove = add("Foxglove", None);
    let refused = world.refused(
        "herb.correct",
        json!({"key": foxglove, "common": "Fairy bell"}),
    );
    assert_eq!(refused.field, "common");
    assert!(refused.message.contains("foxglove"), "{}", refused.message);
    // A harmless name turned into a poisonous one stops as well.
    let bell = add("Blue bell flower", None);
    world.call("jar.compose", composition(&bell, "leaf"));
    world.call("herb.correct", json!({"key": bell, "common": "Eisenhut"}));
    world.refused("jar.compose", composition(&bell, "leaf"));
    // The Latin name decides whatever the common name is.
    let lily = add("My lily", Some("Convallaria majalis L."));
    world.refused("jar.compose", composition(&lily, "leaf"));
    // What is in the book stays readable, and its page says it first.
    let page = world.call("herb.show", json!({"key": lily}));
    assert_eq!(page["cautions"][0]["code"], "poison");
    assert!(page["cautions"][0]["source"].is_string());
}

#[test]
fn a_jar_poured_before_its_plant_was_known_stays_readable_and_is_not_made_again() {
    let world = World::new();
    let key = world.call(
        "herb.add",
        json!({"common": "Tall purple", "latin": null, "parts": ["leaf"], "note": null}),
    )["herb"]["key"]
        .as_str()
        .unwrap()
        .to_owned();
    let poured = world.call(
        "jar.pour",
        json!({"composition": composition(&key, "leaf")}),
    );
    let jar = poured["jar"]["id"].clone();
    let kept = world.call(
        "jar.keep_recipe",
        json!({"jar": jar, "name": "Purple", "note": null, "stars": null}),
    );
    world.call(
        "herb.correct",
        json!({"key": key, "common": "Purple foxglove"}),
    );
    let shown = world.call("jar.show", json!({"id": jar}));
    assert_eq!(shown["jar"]["id"], jar);
    world.refused("jar.repeat", json!({"jar": jar}));
    world.refused("recipe.compose", json!({"recipe": kept["recipe"]["id"]}));
}

#[test]
fn no_name_of_a_harmless_herb_is_stopped_by_the_command() {
    let world = World::new();
    let mut passed = 0;
    for row in formulary::names::all() {
        let listed = formulary::herbs::all()
            .iter()
            .find(|herb| herb.key == row.key)
            .is_some_and(|herb| poison::of_herb(herb).is_some());
        if !listed {
            let found = world.call("herb.find", json!({"text": row.name}));
            assert!(found["stop"].is_null(), "{}: {}", row.name, found["stop"]);
            passed += 1;
        }
    }
    assert!(passed > 1700, "{passed}");
}

#[test]
fn the_stop_is_said_in_german_with_the_german_name() {
    let world = World::new();
    let request = json!({"text": "foxglove"}).to_string();
    let reply = api::call_in(world.app(), Language::German, "herb.find", &request).unwrap();
    let found: Value = serde_json::from_str(&reply).unwrap();
    assert_eq!(
        found["stop"]["text"],
        "Roter Fingerhut ist giftig, daraus wird nichts hergestellt. \
         Herzgifte (Glykoside wie Digitoxin) lassen das Herz versagen."
    );
}
