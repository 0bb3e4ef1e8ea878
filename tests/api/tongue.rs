//! What the core says must be said in every language it speaks, and what the maker wrote must stay.

use api::Language;
use serde_json::{Value, json};

use crate::world::World;

fn german(world: &World, command: &str, request: &Value) -> Value {
    let reply = api::call_in(world.app(), Language::German, command, &request.to_string());
    serde_json::from_str(&reply.unwrap()).unwrap()
}

#[test]
fn the_demo_season_is_said_in_every_language() {
    let world = World::new();
    world.call("demo.begin", json!({}));
    for command in [
        "bed.list",
        "harvest.list",
        "herb.list",
        "tray.list",
        "supply.list",
        "lot.list",
        "preparation.list",
        "jar.list",
        "bottle.list",
        "recipe.list",
        "dropper.list",
        "plan.list",
        "due.list",
        "deed.list",
        "journal.about",
    ] {
        world.call(command, json!({}));
    }
    world.call("season.show", json!({"year": 2026}));
    for (list, show) in [
        ("harvest", "harvest.show"),
        ("tray", "tray.show"),
        ("jar", "jar.show"),
        ("bottle", "bottle.show"),
    ] {
        let reply = world.call(&format!("{list}.list"), json!({}));
        for row in reply[format!("{list}s")].as_array().unwrap() {
            world.call(show, json!({"id": row["id"]}));
        }
    }
    for herb in formulary::herbs::all() {
        world.call("herb.show", json!({"key": herb.key}));
        let part = herb.parts().first().map_or("leaf", |part| *part);
        world.call(
            "harvest.estimate",
            json!({"herb": herb.key, "part": part, "fresh_mass_g": 250}),
        );
    }
    for purpose in ["inside", "outside", "food"] {
        for herb in ["lemon-balm", "garlic", "comfrey", "elder-berry", "valerian"] {
            let part = formulary::herbs::find(herb).unwrap().parts()[0];
            for state in ["fresh", "dried"] {
                world.call(
                    "jar.advise",
                    json!({"herb": herb, "part": part, "state": state, "mass_g": 200, "purpose": purpose}),
                );
            }
        }
    }
}

#[test]
fn what_the_maker_wrote_stays_and_what_the_core_says_is_german() {
    let world = World::new();
    let bed = json!({"name": "Leaf", "note": "Nothing was changed."});
    let written = german(&world, "bed.add", &bed);
    assert_eq!(written["bed"]["name"], "Leaf");
    assert_eq!(written["bed"]["note"], "Nothing was changed.");
    let deeds = german(&world, "deed.list", &json!({}));
    assert_eq!(deeds["deeds"][0]["text"], "Beet Leaf angelegt");
    let herb = german(&world, "herb.show", &json!({"key": "lemon-balm"}));
    assert_eq!(herb["herb"]["common"], "Melisse");
    assert_eq!(herb["herb"]["key"], "lemon-balm");
    assert_eq!(
        herb["herb"]["parts"][0], "leaf",
        "a part is asked for by its key"
    );
    let refused = api::call_in(
        world.app(),
        Language::German,
        "harvest.record",
        &json!({"herb": "chamomile", "part": "flower", "gross_g": -5.5, "surface": "dry"})
            .to_string(),
    )
    .unwrap_err();
    assert_eq!(refused.field.as_deref(), Some("gross_g"));
    assert!(
        refused.message.contains("zwischen 0,01\u{a0}g"),
        "{}",
        refused.message
    );
    assert!(refused.message.contains("-5,5"), "{}", refused.message);
}

#[test]
fn labels_and_the_calendar_speak_the_language_of_the_call() {
    let world = World::new();
    world.call("demo.begin", json!({}));
    let bottles = world.call("bottle.list", json!({}));
    let bottle = &bottles["bottles"][0]["id"];
    let label = json!({"bottle": bottle, "label": {"width_mm": 100, "height_mm": 80},
        "gift": false, "ethanol": false});
    let drawn = german(&world, "label.single", &label);
    let svg = drawn["svg"].as_str().unwrap();
    assert!(svg.contains("haltbar"), "{svg}");
    assert!(!svg.contains("Best\u{a0}before"), "{svg}");
    let plain = world.call("label.single", label.clone());
    assert!(plain["svg"].as_str().unwrap().contains("before"));
}
