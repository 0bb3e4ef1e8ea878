//! `deed.*` and `journal.about`.

use serde_json::json;

use crate::pantry::poured;
use crate::world::{World, number, text};

#[test]
fn undoing_a_deed_takes_all_of_it_back_and_undoing_the_undo_does_it_again() {
    let world = World::new();
    let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 50, "surface": "dry",
        "bed_name": "New bed"});
    let recorded = world.call("harvest.record", request);
    let undone = world.call("deed.undo", json!({"deed": recorded["deed"]}));
    assert_eq!(undone["changed"], json!(["bed", "harvest"]));
    assert!(text(&undone, "/undone").contains("Recorded 50 g of peppermint leaf"));
    let counts = |world: &World| {
        let harvests = world.call("harvest.list", json!({}))["harvests"]
            .as_array()
            .unwrap()
            .len();
        (
            harvests,
            world.call("bed.list", json!({}))["beds"]
                .as_array()
                .unwrap()
                .len(),
        )
    };
    assert_eq!(
        counts(&world),
        (0, 0),
        "the bed came with the harvest and goes with it"
    );
    world
        .refused("deed.undo", json!({"deed": recorded["deed"]}))
        .of("invalid", "deed")
        .says("already");

    let world = world.reopened();
    world.call("deed.undo", json!({"deed": undone["deed"]}));
    assert_eq!(counts(&world), (1, 1));
}

#[test]
fn what_rests_on_a_deed_keeps_it() {
    let world = World::new();
    let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 50, "surface": "dry"});
    let recorded = world.call("harvest.record", request);
    let tray = json!({"harvest": recorded["harvest"]["id"], "mass_g": 50});
    let started = world.call("tray.start", tray);
    world
        .refused("deed.undo", json!({"deed": recorded["deed"]}))
        .says("rests on it");
    world.call("deed.undo", json!({"deed": started["deed"]}));
    world.call("deed.undo", json!({"deed": recorded["deed"]}));
    assert!(world.app().faults().unwrap().is_empty());
}

#[test]
fn deeds_are_listed_latest_first() {
    let world = World::new();
    world.call("bed.add", json!({"name": "A"}));
    world.at("2026-07-14T10:00:00+02:00");
    let second = world.call("bed.add", json!({"name": "B"}));
    let list = world.call("deed.list", json!({"limit": 1}));
    assert_eq!(list["deeds"].as_array().unwrap().len(), 1);
    assert_eq!(list["deeds"][0]["deed"], second["deed"]);
    assert_eq!(text(&list, "/deeds/0/at"), "2026-07-14T10:00:00+02:00");
    assert!(text(&list, "/deeds/0/text").contains("bed B"));
    world
        .refused("deed.undo", json!({"deed": "x"}))
        .of("invalid", "deed");
    world
        .refused(
            "deed.undo",
            json!({"deed": "01a212d7-fbd9-7985-8141-77499dbbc0e6"}),
        )
        .of("not_found", "deed");
}

#[test]
fn the_journal_says_what_it_holds() {
    let world = World::new();
    world.photo("sample.png");
    world.call(
        "harvest.record",
        json!({"herb": "thyme", "part": "herb", "gross_g": 5, "surface": "dry"}),
    );
    let about = world.call("journal.about", json!({}));
    assert_eq!(
        (number(&about, "/harvests"), number(&about, "/photos")),
        (1.0, 1.0)
    );
    assert_eq!(about["demo"], false);
    world.app().mark_as_demo().unwrap();
    assert_eq!(world.call("journal.about", json!({}))["demo"], true);
}

#[test]
fn what_rests_on_a_deed_is_named_in_the_makers_words() {
    let world = World::new();
    let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 400, "surface": "dry"});
    let harvest = world.call("harvest.record", request)["harvest"].clone();
    let request = json!({"harvest": harvest["id"], "mass_g": 300, "name": "Upper sieve"});
    let started = world.call("tray.start", request);
    let tray = started["tray"].clone();
    world.at("2026-07-15T09:00:00+02:00");
    world.call("tray.weigh", json!({"tray": tray["id"], "gross_g": 200}));
    world
        .refused("deed.undo", json!({"deed": started["deed"]}))
        .says("while the weight of 200 g of tray “Upper sieve” (");
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    let deeds = world.call("deed.list", json!({}));
    world.call("jar.shake", json!({"jar": jar["id"]}));
    world
        .refused("deed.undo", json!({"deed": deeds["deeds"][0]["deed"]}))
        .says("while a shake of jar “Sage tincture");
}
