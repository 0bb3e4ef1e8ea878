//! Photos of jars, bottles, beds and own herbs: `portrait.*`, `bed.show` and `herb.show`.

use serde_json::{Value, json};

use crate::pantry::poured;
use crate::world::{World, text};

/// The upload of a sample, as a request names it.
fn kept(world: &World, sample: &str) -> Value {
    world.photo(sample)["photo"]["hash"].clone()
}

fn jar(world: &World) -> Value {
    poured(world, "peppermint", "leaf", 40.0, 200.0)["id"].clone()
}

fn taken(world: &World, kind: &str, id: &Value, photos: &[Value]) -> Value {
    let request = json!({"kind": kind, "id": id, "photos": photos});
    world.call("portrait.record", request)["portraits"].clone()
}

/// The column of one field.
fn each(portraits: &Value, field: &str) -> Vec<Value> {
    let lines = portraits.as_array().unwrap();
    lines.iter().map(|line| line[field].clone()).collect()
}

#[test]
fn what_is_no_photo_of_anything_is_refused_and_nothing_is_written() {
    let world = World::new();
    let (id, photo) = (jar(&world), kept(&world, "no_exif.jpg"));
    let before = world.call("deed.list", json!({}));
    let refused = |kind: &str, id: &Value, photos: Value| {
        let request = json!({"kind": kind, "id": id, "photos": photos});
        world.refused("portrait.record", request)
    };
    refused("jar", &id, json!([])).of("invalid", "photos");
    refused("jar", &id, json!(["leaf.jpg"])).of("invalid", "photos[0]");
    let unknown = "0".repeat(64);
    refused("jar", &id, json!([photo, unknown])).of("not_found", "photos[1]");
    refused("jar", &id, json!([photo, photo]))
        .of("invalid", "photos[1]")
        .says("there already");
    refused("bottle", &id, json!([photo])).of("not_found", "id");
    refused("jar", &json!("leaf"), json!([photo])).of("invalid", "id");
    refused("supply", &id, json!([photo])).of("invalid", "kind");
    let nowhere = json!({"id": id, "shown": true});
    world
        .refused("portrait.correct", nowhere)
        .of("not_found", "id");
    world
        .refused("portrait.strike", json!({"id": id}))
        .of("not_found", "id");
    assert_eq!(world.call("deed.list", json!({})), before);
}

#[test]
fn a_jar_shows_how_it_changed_in_the_order_in_which_the_photos_were_taken() {
    let world = World::new();
    let id = jar(&world);
    world.at("2026-07-20T18:00:00+02:00");
    let now = kept(&world, "no_exif.jpg");
    // The camera says February; the jar was poured in July. And one that says June lies before it too.
    let early = [
        kept(&world, "south_west_no_zone.jpg"),
        kept(&world, "place_and_zone.jpg"),
    ];
    let told = taken(
        &world,
        "jar",
        &id,
        &[now.clone(), early[0].clone(), early[1].clone()],
    );
    for at in each(&told, "at") {
        assert_eq!(
            at, "2026-07-20T18:00:00+02:00",
            "no camera puts it before the jar"
        );
    }
    let page = world.call("jar.show", json!({"id": id}));
    assert_eq!(page["jar"]["portraits"], told, "the page tells the same");
    let bed = world.call("bed.add", json!({"name": "Terrace"}))["bed"]["id"].clone();
    let told = taken(
        &world,
        "bed",
        &bed,
        &[now, early[1].clone(), early[0].clone()],
    );
    let days = [
        "2026-02-28T23:59:59+02:00",
        "2026-06-21T08:15:42+02:00",
        "2026-07-20T18:00:00+02:00",
    ];
    assert_eq!(each(&told, "at"), days, "a bed was there before");
    let shown = world.call("bed.show", json!({"id": bed}));
    assert_eq!(
        (text(&shown, "/bed/name"), &shown["portraits"]),
        ("Terrace", &told)
    );
    world
        .refused("bed.show", json!({"id": id}))
        .of("not_found", "id");
}

#[test]
fn one_photo_at_most_stands_in_the_place_of_the_drawing() {
    let world = World::new();
    let id = jar(&world);
    let photos = [kept(&world, "no_exif.jpg"), kept(&world, "gray.jpg")];
    let told = taken(&world, "jar", &id, &photos);
    assert_eq!(
        each(&told, "shown"),
        [false, false],
        "the drawing stands until somebody chooses"
    );
    let shown = |at: usize, shown: bool| {
        let request = json!({"id": told[at]["id"], "shown": shown});
        each(
            &world.call("portrait.correct", request)["portraits"],
            "shown",
        )
    };
    assert_eq!(shown(0, true), [true, false]);
    assert_eq!(shown(1, true), [false, true]);
    assert_eq!(shown(1, false), [false, false]);
    let request = json!({"id": told[1]["id"], "shown": false});
    world
        .refused("portrait.correct", request)
        .says("Nothing was changed");
}

#[test]
fn a_photo_is_removed_and_brought_back_and_holds_the_jar_that_it_shows() {
    let world = World::new();
    let pouring = poured(&world, "peppermint", "leaf", 40.0, 200.0);
    let deeds = world.call("deed.list", json!({}));
    let poured = deeds["deeds"][0]["deed"].clone();
    let told = taken(&world, "jar", &pouring["id"], &[kept(&world, "gray.jpg")]);
    world
        .refused("deed.undo", json!({"deed": poured}))
        .says("a photo of jar");
    let struck = world.call("portrait.strike", json!({"id": told[0]["id"]}));
    assert_eq!(struck["portraits"], json!([]));
    let undone = world.call("deed.undo", json!({"deed": struck["deed"]}));
    assert!(
        undone["changed"]
            .as_array()
            .unwrap()
            .contains(&json!("portrait"))
    );
    let page = world.call("jar.show", json!({"id": pouring["id"]}));
    assert_eq!(page["jar"]["portraits"], told);
}

#[test]
fn a_herb_of_ones_own_has_photos_and_one_of_the_tables_has_none() {
    let world = World::new();
    let photo = kept(&world, "place_and_zone.jpg");
    let known = json!({"kind": "herb", "id": "sage", "photos": [photo]});
    world.refused("portrait.record", known).of("invalid", "id");
    let unknown = json!({"kind": "herb", "id": "01a22b46-f0e4-72cc-9e82-79c6a3455b2e",
        "photos": [photo]});
    world
        .refused("portrait.record", unknown)
        .of("not_found", "id");
    let herb =
        json!({"common": "Mountain tea of ours", "latin": null, "parts": ["leaf"], "note": null});
    let key = world.call("herb.add", herb)["herb"]["key"].clone();
    let told = taken(&world, "herb", &key, &[photo]);
    assert_eq!(each(&told, "at"), ["2026-06-21T08:15:42+02:00"]);
    let shown = json!({"id": told[0]["id"], "shown": true});
    let told = world.call("portrait.correct", shown);
    let deeds = world.call("deed.list", json!({"limit": 1}));
    let said = "Showed a photo in place of the drawing of “Mountain tea of ours”";
    assert_eq!(text(&deeds, "/deeds/0/text"), said);
    let page = world.call("herb.show", json!({"key": key}));
    assert_eq!(page["portraits"], told["portraits"]);
    assert_eq!(each(&page["portraits"], "shown"), [true]);
    let sage = world.call("herb.show", json!({"key": "sage"}));
    assert_eq!(sage["portraits"], json!([]));
}
