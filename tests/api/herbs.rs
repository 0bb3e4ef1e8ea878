//! `herb.*` and `bed.*`.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

#[test]
fn recent_herbs_come_first_then_all_by_name() {
    let world = World::new();
    let names = |world: &World| -> Vec<String> {
        let list = world.call("herb.list", json!({}));
        let herbs = list["herbs"].as_array().unwrap();
        herbs
            .iter()
            .map(|herb| text(herb, "/common").to_owned())
            .collect()
    };
    let before = names(&world);
    let mut sorted = before.clone();
    sorted.sort_by_key(|name| name.to_lowercase());
    assert_eq!(before, sorted, "nothing was picked yet");

    for (herb, part) in [("sage", "leaf"), ("peppermint", "leaf")] {
        let request = json!({"herb": herb, "part": part, "gross_g": 50, "surface": "dry",
            "look_alike_ruled_out": true});
        world.call("harvest.record", request);
        world.at("2026-07-14T10:00:00+02:00");
    }
    assert_eq!(
        names(&world)[..2],
        ["Peppermint", "Sage"],
        "the latest picking first"
    );
}

#[test]
fn poisonous_plants_are_not_offered_for_picking() {
    let world = World::new();
    let list = world.call("herb.list", json!({})).to_string();
    assert!(list.contains("Peppermint") && !list.contains("Alder buckthorn"));
}

#[test]
fn a_herb_shows_its_facts_with_their_sources_and_status() {
    let world = World::new();
    let page = world.call("herb.show", json!({"key": "yarrow"}));
    assert_eq!(text(&page, "/herb/latin"), "Achillea millefolium");
    assert_eq!(page["herb"]["look_alike"], true);
    assert!(text(&page, "/look_alikes/0/name").contains("Poison hemlock"));
    let facts = page["facts"].as_array().unwrap().iter();
    let confirmed: Vec<&Value> = facts.filter(|it| it["status"] == "confirmed").collect();
    assert!(!confirmed.is_empty(), "yarrow is well known");
    for fact in confirmed {
        assert!(
            fact["source"].is_string(),
            "confirmed without a source: {fact}"
        );
    }
    assert_ne!(page["water"], json!([]));
    for water in page["water"].as_array().unwrap() {
        is_interval(water, "/water_wet_percent");
        is_interval(water, "/ratio_fresh_per_dry");
    }
    // A binomial and a common name lead to the same page.
    for name in ["Achillea millefolium", "Yarrow"] {
        assert_eq!(
            text(&world.call("herb.show", json!({"key": name})), "/herb/key"),
            "yarrow"
        );
    }
    world
        .refused("herb.show", json!({"key": "no such plant"}))
        .of("not_found", "key");
}

#[test]
fn a_herb_of_ones_own_is_added_corrected_and_picked() {
    let world = World::new();
    let request =
        json!({"common": "Aunt's mint", "parts": ["leaf", " Leaf "], "note": "by the door"});
    let added = world.call("herb.add", request);
    assert_eq!(added["changed"], json!(["herb"]));
    assert_eq!(
        added["herb"]["parts"],
        json!(["leaf"]),
        "one part, named twice"
    );
    let key = text(&added, "/herb/key");
    let corrected = world.call("herb.correct", json!({"key": key, "latin": "Mentha sp."}));
    assert_eq!(
        text(&corrected, "/herb/common"),
        "Aunt's mint",
        "what is left out stays"
    );

    let picked = json!({"herb": key, "part": "leaf", "gross_g": 100, "surface": "dry"});
    let harvest = world.harvest("harvest.record", picked);
    assert_eq!(text(&harvest, "/harvest/common"), "Aunt's mint");
    let reason = text(&harvest, "/harvest/estimate/reason");
    assert!(
        reason.contains("the general one for leaves"),
        "a general figure says that it is one: {reason}"
    );
    let page = world.call("herb.show", json!({"key": key}));
    assert!(text(&page, "/cautions/0/text").contains("We have no information on"));

    let world = world.reopened();
    let page = world.call("herb.show", json!({"key": key}));
    assert_eq!(text(&page, "/herb/latin"), "Mentha sp.");
}

#[test]
fn what_a_maker_knows_of_an_own_herb_enters_every_estimate_and_caution() {
    let world = World::new();
    let known = json!({"common": "Aunt's mint", "parts": ["leaf"], "strength_percent_vol": 40,
        "water_wet_percent": {"low": 70, "value": 75, "high": 80},
        "caution": "It makes my hands itch.", "look_alikes": "The weed by the gate; it has no scent."});
    let key = text(&world.call("herb.add", known), "/herb/key").to_owned();
    let page = world.call("herb.show", json!({"key": key}));
    assert_eq!(text(&page, "/cautions/0/text"), "It makes my hands itch.");
    assert_eq!(
        text(&page, "/look_alikes/0/why"),
        "The weed by the gate; it has no scent."
    );
    assert!((number(&page, "/water/0/water_wet_percent/value") - 75.0).abs() < 1e-9);

    let picked = json!({"herb": key, "part": "leaf", "gross_g": 400, "surface": "dry"});
    world
        .refused("harvest.record", picked.clone())
        .of("confirm_look_alike", "look_alike_ruled_out");
    let mut picked = picked;
    picked["look_alike_ruled_out"] = json!(true);
    let harvest = world.harvest("harvest.record", picked);
    let reason = text(&harvest, "/harvest/estimate/reason");
    assert!(reason.contains("own figure for Aunt's mint"), "{reason}");
    // Worked by hand: 400 g with 75 % water hold 100 g of dry matter, which is 111.1 g at 10 % moisture.
    let dry = number(&harvest, "/harvest/estimate/dry_mass_g/value");
    assert!((dry - 111.1).abs() < 0.1, "{dry}");

    let plant = json!({"herb": key, "part": "leaf", "state": "fresh", "mass_g": 100});
    let jar = json!({"preparation": "tincture", "plants": [plant],
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}]});
    let jar = world.call("jar.compose", jar);
    assert!((number(&jar, "/plants/0/moisture_wet_percent/value") - 75.0).abs() < 1e-9);
    assert!((number(&jar, "/controls/strength_percent_vol/value") - 40.0).abs() < 1e-9);
    let cautions = jar["cautions"].to_string();
    assert!(cautions.contains("It makes my hands itch."), "{cautions}");

    for (low, value, high) in [(0, 75, 80), (70, 75, 100), (76, 75, 80), (70, 75, 74)] {
        let water = json!({"low": low, "value": value, "high": high});
        world
            .refused(
                "herb.correct",
                json!({"key": key, "water_wet_percent": water}),
            )
            .of("invalid", "water_wet_percent");
    }
    world
        .refused(
            "herb.correct",
            json!({"key": key, "strength_percent_vol": 120}),
        )
        .of("invalid", "strength_percent_vol");
    let cleared = json!({"key": key, "strength_percent_vol": 0, "caution": "",
        "water_wet_percent": {"low": 0, "value": 0, "high": 0}});
    let cleared = world.call("herb.correct", cleared);
    assert_eq!(
        cleared["herb"]["own_figures"]["water_wet_percent"],
        json!(null)
    );
    assert_eq!(cleared["herb"]["own_figures"]["caution"], json!(null));
    assert_ne!(
        cleared["herb"]["own_figures"]["look_alikes"],
        json!(null),
        "what is left out stays"
    );
    let sage = world.call("herb.show", json!({"key": "sage"}));
    assert_eq!(sage["herb"]["own_figures"], json!(null));
}

#[test]
fn herbs_and_beds_are_refused_field_by_field() {
    let world = World::new();
    world
        .refused("herb.add", json!({"common": " ", "parts": ["leaf"]}))
        .of("invalid", "common");
    world
        .refused("herb.add", json!({"common": "X", "parts": []}))
        .of("invalid", "parts");
    world
        .refused("herb.add", json!({"common": "sage", "parts": ["leaf"]}))
        .of("invalid", "common")
        .says("already");
    world
        .refused("herb.correct", json!({"key": "sage", "latin": "x"}))
        .of("not_found", "key");
    world
        .refused("bed.add", json!({"name": ""}))
        .of("invalid", "name");
    world
        .refused("bed.add", json!({"name": "X", "area_m2": -1}))
        .of("invalid", "area_m2");
    world.call("bed.add", json!({"name": "Lower bank"}));
    world
        .refused("bed.add", json!({"name": "lower BANK "}))
        .of("invalid", "name")
        .says("already");
    world
        .refused("bed.correct", json!({"id": "x", "name": "Y"}))
        .of("invalid", "id");
}

#[test]
fn a_bed_is_corrected_and_stays_where_it_is_used() {
    let world = World::new();
    let bed = world.call(
        "bed.add",
        json!({"name": "Wall bed", "area_m2": 4, "note": "dry"}),
    );
    let id = text(&bed, "/bed/id");
    let request =
        json!({"herb": "thyme", "part": "herb", "gross_g": 80, "surface": "dry", "bed": id});
    let harvest = world.call("harvest.record", request);
    let corrected = world.call(
        "bed.correct",
        json!({"id": id, "name": "South wall", "note": ""}),
    );
    assert_eq!(
        corrected["bed"]["note"],
        json!(null),
        "an empty text is cleared"
    );
    assert_eq!(
        number(&corrected, "/bed/area_m2"),
        4.0,
        "what is left out stays"
    );
    let page = world.call("harvest.show", json!({"id": text(&harvest, "/harvest/id")}));
    assert_eq!(text(&page, "/harvest/bed/name"), "South wall");
}

#[test]
fn a_caution_says_how_grave_it_is_where_it_is_said_and_what_was_read() {
    let world = World::new();
    let page = world.call("herb.show", json!({"key": "willow"}));
    let cautions = page["cautions"].as_array().unwrap();
    let of = |code: &str| {
        let mut found = cautions.iter().filter(|one| one["code"] == code);
        found.next().unwrap_or_else(|| panic!("no {code}"))
    };
    // Safety review of willow bark, USP, Planta Medica 85:1192, 2019.
    let pregnancy = of("pregnancy");
    assert_eq!(pregnancy["severity"], "not for");
    assert_eq!(pregnancy["at"], json!(["use"]));
    assert_eq!(pregnancy["status"], "confirmed");
    assert_eq!(pregnancy["text"], "Not for anyone who is pregnant.");
    assert!(text(pregnancy, "/source").contains("Planta Medica"));
    let grave = |one: &Value| {
        let order = ["stop", "not for", "warn", "note"];
        order
            .iter()
            .position(|word| one["severity"] == *word)
            .unwrap()
    };
    assert!(cautions.iter().map(grave).is_sorted(), "the gravest first");
}
