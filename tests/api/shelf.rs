//! `supply.*` and `setting.*`.

use serde_json::{Value, json};

use crate::world::{World, number, text};

#[test]
fn a_bottle_is_bought_listed_and_corrected() {
    let world = World::new();
    let request = json!({"name": "Grain spirit", "item": {"kind": "spirit", "strength_percent_vol": 95},
        "size_ml": 700, "price": 12.5, "currency": "EUR", "bought_on": "2026-05-01"});
    let supply = world.call("supply.add", request)["supply"].clone();
    assert_eq!(number(&supply, "/left_ml"), 700.0);
    assert_eq!(
        supply["item"],
        json!({"kind": "spirit", "strength_percent_vol": 95.0})
    );
    let request = json!({"id": supply["id"], "size_ml": 500, "price": 10});
    let supply = world.call("supply.correct", request)["supply"].clone();
    assert_eq!(number(&supply, "/left_ml"), 500.0);
    assert_eq!(text(&supply, "/currency"), "EUR", "what is left out stays");
    let listed = world.call("supply.list", json!({}));
    assert_eq!(listed["supplies"], json!([supply]));
}

#[test]
fn a_wrong_bottle_is_refused_at_its_field() {
    let world = World::new();
    let ask = |field: &str, value: Value| {
        let mut request =
            json!({"name": "Glycerin", "item": {"kind": "glycerin"}, "size_ml": 1000});
        request[field] = value;
        world.refused("supply.add", request)
    };
    ask("name", json!("")).of("invalid", "name");
    ask("size_ml", json!(0)).of("invalid", "size_ml");
    ask(
        "item",
        json!({"kind": "glycerin", "purity_percent_mass": 140}),
    )
    .of("invalid", "item.purity_percent_mass");
    ask("item", json!({"kind": "glycerin", "available_ml": 5})).of("invalid", "item.available_ml");
    ask("price", json!(5)).of("invalid", "currency");
    ask("currency", json!("EUR")).of("invalid", "price");
    ask("bought_on", json!("May"))
        .of("invalid", "bought_on")
        .says("2026-07-14");
    world
        .refused("supply.correct", json!({"id": "x"}))
        .of("invalid", "id");
}

#[test]
fn settings_stay_over_a_restart() {
    let world = World::new();
    let before = world.call("setting.show", json!({}));
    assert_eq!(
        before,
        json!({"units": "metric", "scheme": "system", "cautions_seen": false, "maker": null, "poison_line": null, "hemisphere": "north", "is_demo": false, "is_lost": false})
    );
    let changed = world.call(
        "setting.change",
        json!({"units": "us", "cautions_seen": true, "hemisphere": "south"}),
    );
    assert_eq!(changed["changed"], json!(["setting"]));
    let world = world.reopened();
    let after = world.call("setting.show", json!({}));
    assert_eq!(
        after,
        json!({"units": "us", "scheme": "system", "cautions_seen": true, "maker": null, "poison_line": null, "hemisphere": "south", "is_demo": false, "is_lost": false})
    );
    world
        .refused("setting.change", json!({"units": "imperial"}))
        .of("invalid", "units")
        .says("metric or us");
}
