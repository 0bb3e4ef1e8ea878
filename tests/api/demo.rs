//! The demo season lies beside the maker's own book and never in it.

use serde_json::json;

use crate::world::World;

fn picked(world: &World) -> usize {
    let list = world.call("harvest.list", json!({}));
    list["harvests"].as_array().unwrap().len()
}

fn with_one_harvest() -> World {
    let world = World::new();
    let harvest = json!({"herb": "calendula", "part": "flower", "gross_g": 210, "surface": "dry", "look_alike_ruled_out": true});
    world.call("harvest.record", harvest);
    world
}

#[test]
fn the_demo_season_leaves_the_own_book_as_it_was() {
    let world = with_one_harvest();
    let before = world.call("deed.list", json!({}));
    assert_eq!(world.call("demo.begin", json!({})), json!({"demo": true}));
    assert!(
        picked(&world) > 20,
        "the season is shown in the place of the book"
    );
    assert_eq!(
        world.call("setting.show", json!({}))["is_demo"],
        json!(true)
    );
    world.call(
        "harvest.record",
        json!({"herb": "peppermint", "part": "leaf", "gross_g": 90, "surface": "dry"}),
    );
    assert_eq!(world.call("demo.end", json!({})), json!({"demo": false}));
    assert_eq!(
        world.call("setting.show", json!({}))["is_demo"],
        json!(false)
    );
    assert_eq!(
        world.call("deed.list", json!({})),
        before,
        "what was written into the season went with it, and nothing of it is in the book"
    );
}

#[test]
fn the_demo_season_stays_open_until_it_is_removed() {
    let world = with_one_harvest();
    world.call("demo.begin", json!({}));
    let due = world.call("due.list", json!({}));
    world.at("2031-02-01T09:00:00+01:00");
    let world = world.reopened();
    assert_eq!(
        world.call("setting.show", json!({}))["is_demo"],
        json!(true)
    );
    assert_eq!(
        world.call("due.list", json!({})),
        due,
        "its own calendar goes on where it was left"
    );
    world.call("demo.end", json!({}));
    assert_eq!(picked(&world.reopened()), 1);
}

#[test]
fn a_demo_season_begins_anew_after_it_was_removed() {
    let world = World::new();
    world.call("demo.begin", json!({}));
    let count = picked(&world);
    world.call(
        "harvest.record",
        json!({"herb": "peppermint", "part": "leaf", "gross_g": 90, "surface": "dry"}),
    );
    world.call("demo.end", json!({}));
    world.call("demo.begin", json!({}));
    assert_eq!(picked(&world), count);
}

#[test]
fn nothing_of_the_demo_season_gets_into_a_backup_or_a_merge() {
    let world = World::new();
    let refused = world.refused("demo.end", json!({}));
    assert_eq!(refused.code, "not_found");
    world.call("demo.begin", json!({}));
    assert_eq!(world.refused("demo.begin", json!({})).code, "invalid");
    for (command, request) in [
        ("backup.make", json!({"photos": false})),
        ("restore.undo", json!({})),
        ("merge.apply", json!({"file": "brought:x"})),
        ("export.make", json!({"photos": false, "places": false})),
        ("import.apply", json!({"file": "brought:x"})),
    ] {
        let refused = world.refused(command, request);
        assert!(
            refused
                .message
                .contains("never mixed with your own records"),
            "{command}: {}",
            refused.message
        );
    }
}
