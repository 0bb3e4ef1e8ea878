//! Two phones used the same thing up without knowing of each other: it stands below nothing, is due, and what may be
//! true of it is offered and works.

use serde_json::{Value, json};

use super::commands::{World, number, text};
use super::season::{backed_up, done, outside, pick};

/// Two phones with the same book, in which `made` wrote something; each then does the same, and the first takes in
/// what the second wrote, and the other way round. What `made` gave is handed to both.
fn both(made: impl Fn(&World) -> Value, each: impl Fn(&World, &Value)) -> ([World; 2], Value) {
    let (here, there, outside) = (World::new(), World::new(), outside());
    let made = made(&here);
    let file = backed_up(&here, outside.path(), "base.zip");
    done(&there, "restore.apply", json!({ "file": file }));
    for world in [&here, &there] {
        world.at("2026-07-16T09:00:00+02:00");
        each(world, &made);
        assert_eq!(
            asked_for(world),
            Vec::<Value>::new(),
            "one alone is within what there is"
        );
    }
    let [here_file, there_file] = [(&here, "h.zip"), (&there, "t.zip")]
        .map(|(world, name)| backed_up(world, outside.path(), name));
    done(&here, "merge.apply", json!({ "file": there_file }));
    done(&there, "merge.apply", json!({ "file": here_file }));
    ([here, there], made)
}

/// What is due because more was taken than there was.
fn asked_for(world: &World) -> Vec<Value> {
    let due = world.call("due.list", json!({}));
    let lines = due["due"].as_array().unwrap().iter();
    lines
        .filter(|line| line["what"] == "put right")
        .cloned()
        .collect()
}

/// The one line that asks, on both phones alike.
fn the_line(worlds: &[World; 2]) -> Value {
    let [here, there] = worlds.each_ref().map(asked_for);
    assert_eq!(here, there, "both phones ask the same");
    assert_eq!(here.len(), 1, "{here:?}");
    assert_eq!(here[0]["on"], "2026-07-16");
    here[0].clone()
}

/// The command settles it.
#[track_caller]
fn settles(world: &World, command: &str, request: Value) -> Value {
    let written = world.call(command, request);
    assert_eq!(
        asked_for(world),
        Vec::<Value>::new(),
        "{command} settles it"
    );
    assert_eq!(world.app().faults().unwrap(), [], "{command}");
    written["deed"].clone()
}

/// The command settles it; taken back, it asks again.
#[track_caller]
fn settles_until_taken_back(world: &World, command: &str, request: Value) {
    let deed = settles(world, command, request);
    world.call("deed.undo", json!({ "deed": deed }));
    assert_eq!(asked_for(world).len(), 1, "{command} was taken back");
}

/// Taking back what one of the phones did settles it.
#[track_caller]
fn settles_when_taken_back(world: &World, says: &str) {
    let deeds = world.call("deed.list", json!({ "limit": 20 }));
    let mut deeds = deeds["deeds"].as_array().unwrap().iter();
    let deed = deeds
        .find(|deed| text(deed, "/text").starts_with(says))
        .unwrap_or_else(|| panic!("no deed begins with {says}"));
    settles(world, "deed.undo", json!({ "deed": deed["deed"] }));
}

fn poured(world: &World, stock: Value) -> Value {
    let plant = json!({ "herb": "peppermint", "part": "leaf", "state": "dried", "mass_g": 40,
        "moisture_wet_percent": { "low": 0, "value": 0, "high": 0 } });
    let composition = json!({ "preparation": "tincture-dried", "plants": [plant], "stock": stock,
        "ratio_ml_per_g": 5, "strength_percent_vol": 50 });
    world.call("jar.pour", json!({ "composition": composition }))["jar"].clone()
}

fn strained(world: &World) -> Value {
    let spirit = json!([{ "kind": "spirit", "strength_percent_vol": 95 }, { "kind": "water" }]);
    let jar = poured(world, spirit);
    let strain = json!({ "jar": jar["id"], "came_out_ml": 150, "how": "pressed" });
    world.call("jar.strain", strain);
    jar
}

fn bottled(world: &World) -> Value {
    let jar = strained(world);
    let fill = json!({ "jar": jar["id"], "bottles": [{ "ml": 60, "count": 1 }] });
    world.call("bottle.fill", fill)["bottles"][0].clone()
}

#[test]
fn a_bottle_that_two_phones_used_is_due_and_whatever_is_true_of_it_settles_it() {
    let (worlds, bottle) = both(bottled, |world, bottle| {
        world.call("bottle.use", json!({ "bottle": bottle["id"], "ml": 40 }));
    });
    let line = the_line(&worlds);
    assert_eq!(
        (&line["noun"], &line["id"]),
        (&json!("bottle"), &bottle["id"])
    );
    assert_eq!(
        line["text"],
        "Your records show 80 mL taken from it, but it held only 60 mL. Fix one of the amounts."
    );
    assert_eq!(line["choices"], json!(["finish", "give", "bin", "correct"]));
    let id = &bottle["id"];
    let page = worlds[0].call("bottle.show", json!({ "id": id }))["bottle"].clone();
    assert_eq!(number(&page, "/left_ml"), 0.0);
    assert_eq!(page["put_right"], line["text"]);
    worlds[0]
        .refused("bottle.use", json!({ "bottle": id, "ml": 1 }))
        .of("not_enough", "ml")
        .says("has 0 mL left");

    let world = &worlds[0];
    settles_until_taken_back(world, "bottle.finish", json!({ "bottle": id }));
    settles_until_taken_back(world, "bottle.give", json!({ "bottle": id, "to": "Ada" }));
    settles_until_taken_back(
        world,
        "bottle.bin",
        json!({ "bottle": id, "reason": "spilt" }),
    );
    // What is said of it otherwise neither settles it nor is refused.
    world.call("bottle.correct", json!({ "id": id, "place": "Cellar" }));
    world.call("bottle.correct", json!({ "id": id, "size_ml": 70 }));
    assert!(text(&asked_for(world)[0], "/text").contains("held only 70 mL"));
    world
        .refused("bottle.correct", json!({ "id": id, "size_ml": 65 }))
        .says("already gave 80 mL");
    settles_when_taken_back(world, "Used 40 mL");
    settles(
        &worlds[1],
        "bottle.correct",
        json!({ "id": id, "size_ml": 80 }),
    );
}

#[test]
fn a_bottle_that_two_phones_ended_asks_nothing() {
    let (worlds, bottle) = both(bottled, |world, bottle| {
        world.call("bottle.use", json!({ "bottle": bottle["id"], "ml": 40 }));
        world.call("bottle.finish", json!({ "bottle": bottle["id"] }));
    });
    for world in &worlds {
        assert_eq!(asked_for(world), Vec::<Value>::new());
        assert_eq!(world.app().faults().unwrap(), []);
        let page = world.call("bottle.show", json!({ "id": bottle["id"] }));
        assert_eq!(page["bottle"]["put_right"], Value::Null);
    }
}

#[test]
fn a_bottle_that_must_be_thrown_away_is_offered_nothing_else_but_a_correction() {
    let (worlds, bottle) = both(bottled, |world, bottle| {
        world.call("bottle.use", json!({ "bottle": bottle["id"], "ml": 40 }));
        world.call(
            "bottle.check",
            json!({ "bottle": bottle["id"], "outcome": "bad" }),
        );
    });
    let line = the_line(&worlds);
    assert_eq!(line["choices"], json!(["bin", "correct"]));
    settles(
        &worlds[0],
        "bottle.bin",
        json!({ "bottle": bottle["id"], "reason": "found bad" }),
    );
}

#[test]
fn a_harvest_that_two_phones_laid_out_is_due_and_its_weight_or_one_of_the_two_settles_it() {
    let (worlds, picked) = both(
        |world| pick(world, "gray.jpg", 420.0, "Terrace"),
        |world, picked| {
            let laid =
                json!({ "harvest": picked["id"], "name": "Sieve", "mass_g": 400, "tare_g": 0 });
            world.call("tray.start", laid);
        },
    );
    let line = the_line(&worlds);
    assert_eq!(
        (&line["noun"], &line["id"]),
        (&json!("harvest"), &picked["id"])
    );
    assert!(
        text(&line, "/text").contains("800 g taken from it"),
        "{line}"
    );
    assert_eq!(line["choices"], json!(["correct", "take back"]));
    settles(
        &worlds[1],
        "harvest.correct",
        json!({ "id": picked["id"], "gross_g": 820 }),
    );
    settles_when_taken_back(&worlds[0], "Put 400 g");
}

#[test]
fn what_was_poured_filled_or_dried_and_used_on_two_phones_is_due_too() {
    let spirit = |world: &World| {
        let item = json!({ "kind": "spirit", "strength_percent_vol": 95 });
        world.call(
            "supply.add",
            json!({ "name": "Spirit", "size_ml": 150, "item": item }),
        )["supply"]
            .clone()
    };
    let (worlds, supply) = both(spirit, |world, supply| {
        poured(
            world,
            json!([{ "kind": "spirit", "supply": supply["id"] }, { "kind": "water" }]),
        );
    });
    let line = the_line(&worlds);
    assert_eq!(
        (&line["noun"], &line["title"]),
        (&json!("supply"), &json!("Spirit"))
    );
    assert_eq!(line["choices"], json!(["correct", "take back"]));
    settles(
        &worlds[1],
        "supply.correct",
        json!({ "id": supply["id"], "size_ml": 1000 }),
    );
    settles_when_taken_back(&worlds[0], "Started");

    let (worlds, jar) = both(strained, |world, jar| {
        let fill = json!({ "jar": jar["id"], "bottles": [{ "ml": 50, "count": 2 }] });
        world.call("bottle.fill", fill);
    });
    let line = the_line(&worlds);
    assert_eq!((&line["noun"], &line["id"]), (&json!("jar"), &jar["id"]));
    assert_eq!(line["choices"], json!(["take back"]));
    settles_when_taken_back(&worlds[0], "Filled");

    let dried = |world: &World| {
        let picked = pick(world, "gray.jpg", 420.0, "Terrace");
        let laid = json!({ "harvest": picked["id"], "name": "Sieve", "mass_g": 400, "tare_g": 0 });
        let tray = world.call("tray.start", laid)["tray"].clone();
        world.at("2026-07-15T20:00:00+02:00");
        world.call(
            "tray.take_down",
            json!({ "tray": tray["id"], "gross_g": 90 }),
        );
        tray
    };
    let (worlds, tray) = both(dried, |world, tray| {
        let lot = json!({ "kind": "tray", "id": tray["id"] });
        let plant = json!({ "herb": "peppermint", "part": "leaf", "state": "dried", "mass_g": 60, "lot": lot });
        let stock = json!([{ "kind": "spirit", "strength_percent_vol": 95 }, { "kind": "water" }]);
        let composition = json!({ "preparation": "tincture-dried", "plants": [plant], "stock": stock,
            "ratio_ml_per_g": 5, "strength_percent_vol": 50 });
        world.call("jar.pour", json!({ "composition": composition }));
    });
    let line = the_line(&worlds);
    assert_eq!((&line["noun"], &line["id"]), (&json!("tray"), &tray["id"]));
    settles_when_taken_back(&worlds[0], "Started");
}
