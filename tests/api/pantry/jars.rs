//! `jar.shake`, `jar.top_up`, `jar.strain` and `jar.empty`.

use serde_json::{Value, json};

use super::{filled, oil, poured, strained};
use crate::world::{World, number, text};

/// Ounces avoirdupois and US fluid ounces.
const OUNCE_G: f64 = 28.349_523;
const FLUID_OUNCE_ML: f64 = 29.573_53;

/// The jar of the source: 4 oz of dry root in 20 fl oz.
fn valerian(world: &World) -> Value {
    let (mass_g, ml) = (4.0 * OUNCE_G, 20.0 * FLUID_OUNCE_ML);
    poured(world, "valerian", "root", mass_g, ml)
}

#[test]
fn the_strained_volumes_of_the_source_give_its_retention() {
    // Herbal Materia Medica 1995 (worked example W41): 4 oz of dry root and 20 fl oz give 13 to 14 fl oz wrung by
    // hand, up to 17 pressed; 1.57 to 1.83 and 0.78 mL for each gram, computed from those volumes
    // with liquids counted as additive. Absolute 0.03 mL/g: half the last printed digit of the
    // fluid ounces, and the contraction that the source does not know of is counted out below.
    for (how, fluid_ounces, printed) in [
        ("wrung", 13.0, 1.83),
        ("wrung", 14.0, 1.57),
        ("pressed", 17.0, 0.78),
    ] {
        let world = World::new();
        let jar = valerian(&world);
        let contraction = number(&jar, "/liquid/contraction_ml/value");
        let out = fluid_ounces * FLUID_OUNCE_ML - contraction;
        let jar = strained(&world, &jar, out, how);
        let kept = number(&jar, "/strainings/0/retained_ml_per_g_dry/value");
        assert!(
            (kept - printed).abs() < 0.03,
            "{how} {fluid_ounces}: {kept}"
        );
        assert_eq!(text(&jar, "/state"), "strained");
    }
}

#[test]
fn what_a_jar_promises_when_it_is_poured_is_what_straining_expects() {
    let spirit = json!([{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}]);
    let glycerin = json!([{"kind": "glycerin"}]);
    let oil = json!([{"kind": "oil", "oil": "olive"}]);
    let of_root = "used for dried root, as this one has no figure";
    for (preparation, state, stock, basis) in [
        ("tincture-dried", "dried", &spirit, "published"),
        ("glycerite", "fresh", &glycerin, of_root),
        ("oil", "dried", &oil, of_root),
        (
            "tincture-percolated",
            "dried",
            &spirit,
            "topped up to its volume afterwards",
        ),
    ] {
        let world = World::new();
        let plant = json!({"herb": "lemon-balm", "part": "leaf", "state": state, "mass_g": 100});
        let composition = json!({"preparation": preparation, "plants": [plant], "stock": stock});
        let promised = world.call("jar.compose", composition.clone())["comes_out"]["ml"].clone();
        let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
        let lines = jar["expected_out"].as_array().unwrap();
        let of = |how: &str| lines.iter().find(|line| line["how"] == how).unwrap();
        assert_eq!(text(of("pressed"), "/basis"), basis, "{preparation}");
        for (end, how) in [("low", "wrung"), ("high", "pressed")] {
            let expected = number(of(how), &format!("/came_out_ml/{end}"));
            let told = number(&promised, &format!("/{end}"));
            assert!(
                (expected - told).abs() < 0.5,
                "{preparation}, {end}: {told} and {expected}"
            );
        }
    }
}

#[test]
fn published_retention_foretells_the_strained_volume_until_there_is_an_own_one() {
    let world = World::new();
    let first = valerian(&world);
    let contraction = number(&first, "/liquid/contraction_ml/value");
    let expected = |jar: &Value, how: &str| {
        let lines = jar["expected_out"].as_array().unwrap().clone();
        lines.into_iter().find(|line| line["how"] == how)
    };
    let wrung = expected(&first, "wrung").unwrap();
    let pressed = expected(&first, "pressed").unwrap();
    // The ranges as printed by the source, in fluid ounces of uncontracted liquid.
    let ounces = |line: &Value, end: &str| {
        (number(line, &format!("/came_out_ml/{end}")) + contraction) / FLUID_OUNCE_ML
    };
    assert!((ounces(&wrung, "low") - 13.0).abs() < 0.03);
    assert!((ounces(&wrung, "high") - 14.0).abs() < 0.03);
    assert!((ounces(&pressed, "value") - 17.0).abs() < 0.03);
    assert_eq!(wrung["basis"], "published");
    assert_eq!(
        expected(&first, "dripped"),
        None,
        "no figure was found for dripping"
    );

    strained(&world, &first, 300.0, "dripped");
    let second = poured(&world, "valerian", "root", 100.0, 500.0);
    let dripped = expected(&second, "dripped").unwrap();
    assert_eq!(dripped["basis"], "your own last jar");
    assert_eq!(dripped["status"], "own");
    let own = number(&dripped, "/retained_ml_per_g_dry/value");
    let liquid = number(&second, "/liquid/volume_ml/value");
    assert!((number(&dripped, "/came_out_ml/value") - (liquid - 100.0 * own)).abs() < 0.01);
}

#[test]
fn shaking_is_one_tap_and_stops_with_straining() {
    let world = World::new();
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    let shaken = world.call("jar.shake", json!({"jar": jar["id"]}));
    assert_eq!(shaken["changed"], json!(["shake"]));
    let page = world.call("jar.shake", json!({"jar": jar["id"]}))["jar"].clone();
    assert_eq!(
        page["shakes"].as_array().unwrap().len(),
        2,
        "more than one a day are kept"
    );
    world.call("deed.undo", json!({"deed": shaken["deed"]}));
    let page = world.call("jar.show", json!({"id": jar["id"]}))["jar"].clone();
    assert_eq!(page["shakes"].as_array().unwrap().len(), 1);
    strained(&world, &jar, 200.0, "wrung");
    world
        .refused("jar.shake", json!({"jar": jar["id"]}))
        .of("invalid", "jar")
        .says("already strained");
}

#[test]
fn topping_up_draws_from_the_shelf_and_is_reckoned_in() {
    let world = World::new();
    let item = json!({"kind": "spirit", "strength_percent_vol": 40});
    let supply = world.call(
        "supply.add",
        json!({"name": "Vodka", "item": item, "size_ml": 700}),
    )["supply"]
        .clone();
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    let before = number(&jar, "/strength_percent_vol/value");
    let request = json!({"jar": jar["id"], "note": "had sunk",
        "pours": [{"item": {"kind": "spirit", "supply": supply["id"]}, "ml": 50}]});
    let topped = world.call("jar.top_up", request);
    assert_eq!(topped["changed"], json!(["supply", "jar"]));
    let after = number(&topped, "/jar/strength_percent_vol/value");
    assert!(
        after < before - 1.0,
        "{before} thinned with 40 % to {after}"
    );
    assert!((number(&topped, "/jar/poured_ml") - 300.0).abs() < 1e-6);
    let shelf = world.call("supply.list", json!({}));
    assert!((number(&shelf, "/supplies/0/left_ml") - 650.0).abs() < 1e-6);
    let more = json!({"jar": jar["id"],
        "pours": [{"item": {"kind": "spirit", "supply": supply["id"]}, "ml": 651}]});
    world.refused("jar.top_up", more).of("not_enough", "stock");
    let wrong = json!({"jar": jar["id"], "pours": [{"item": {"kind": "spirit"}, "ml": 5}]});
    assert!(
        world
            .refused("jar.top_up", wrong)
            .field
            .starts_with("pours[0].item")
    );
    world.call("deed.undo", json!({"deed": topped["deed"]}));
    let jar = world.call("jar.show", json!({"id": jar["id"]}));
    assert!((number(&jar, "/jar/strength_percent_vol/value") - before).abs() < 1e-9);
    assert!(world.app().faults().unwrap().is_empty());
}

#[test]
fn what_came_out_may_be_weighed() {
    let world = World::new();
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    let density = number(&jar, "/liquid/density_kg_m3/value") / 1000.0;
    let request = json!({"jar": jar["id"], "came_out_g": 180.0, "how": "pressed"});
    let page = world.call("jar.strain", request)["jar"].clone();
    assert!((number(&page, "/strainings/0/came_out_ml") - 180.0 / density).abs() < 1e-6);
    assert!(
        (number(&page, "/left_ml") - 180.0 / density).abs() < 1e-3,
        "the ledger counts thousandths"
    );
    for wrong in [
        json!({"jar": jar["id"], "how": "pressed"}),
        json!({"jar": jar["id"], "how": "pressed", "came_out_ml": 5, "came_out_g": 5}),
        json!({"jar": jar["id"], "how": "pressed", "came_out_ml": 300}),
        json!({"jar": jar["id"], "how": "pressed", "came_out_ml": -1}),
    ] {
        world
            .refused("jar.strain", wrong)
            .of("invalid", "came_out_ml");
    }
}

#[test]
fn the_rest_of_a_jar_is_closed_plainly_and_each_thing_is_due_once() {
    let world = World::new();
    let jar = world.call("jar.pour", json!({"composition": oil()}))["jar"].clone();
    let due = |days: u32| {
        let reply = world.call("due.list", json!({"days": days}));
        reply["due"].as_array().unwrap().clone()
    };
    let standing = due(30);
    assert_eq!(standing.len(), 1, "{standing:?}");
    let empty = |more: Value| {
        let mut request = json!({"jar": jar["id"]});
        for (name, value) in more.as_object().unwrap() {
            request[name] = value.clone();
        }
        request
    };
    let all = json!({"went_to": "used"});
    world
        .refused("jar.empty", empty(all.clone()))
        .of("invalid", "jar")
        .says("not strained yet");
    strained(&world, &jar, 60.0, "dripped");
    filled(&world, &jar, 50.0, 1);
    let lines = due(30);
    assert_eq!(lines.len(), 2, "a bottle and the rest: {lines:?}");
    assert_ne!(lines[0]["title"], lines[1]["title"]);
    let rest = lines.iter().find(|line| line["noun"] == "jar").unwrap();
    assert!(text(rest, "/title").contains("10 mL left in the jar"));

    let used = world.call(
        "jar.empty",
        empty(json!({"went_to": "used", "ml": 4, "reason": "salad"})),
    );
    assert_eq!(number(&used, "/jar/left_ml"), 6.0);
    assert_eq!(used["changed"], json!(["jar"]));
    for (wrong, field) in [
        (json!({"went_to": "thrown_away"}), "reason"),
        (json!({"went_to": "thrown_away", "reason": "  "}), "reason"),
        (json!({"went_to": "used", "ml": 6.1}), "ml"),
        (json!({"went_to": "used", "ml": 0}), "ml"),
    ] {
        world
            .refused("jar.empty", empty(wrong))
            .of("invalid", field);
    }
    world.at("2026-07-19T08:00:00+02:00");
    let page = world.call("jar.show", json!({"id": jar["id"]}))["jar"].clone();
    assert_eq!(page["bin_rest"], true);
    assert_eq!(page["rest_best_before"], "2026-07-18");
    world
        .refused("jar.empty", empty(all.clone()))
        .of("invalid", "went_to")
        .says("botulism");
    let gone = world.call(
        "jar.empty",
        empty(json!({"went_to": "thrown_away", "reason": "past its date"})),
    );
    assert_eq!(number(&gone, "/jar/left_ml"), 0.0);
    assert_eq!(gone["jar"]["rests"].as_array().unwrap().len(), 2);
    assert_eq!(gone["jar"]["rests"][1]["reason"], "past its date");
    let lines = due(30);
    assert_eq!(lines.len(), 1, "only the bottle is left: {lines:?}");
    assert_eq!(lines[0]["noun"], "bottle");
    world
        .refused(
            "jar.empty",
            empty(json!({"went_to": "thrown_away", "reason": "x"})),
        )
        .says("Nothing is left");
    world.call("deed.undo", json!({"deed": gone["deed"]}));
    assert_eq!(due(30).len(), 2);
    assert!(world.app().faults().unwrap().is_empty());
}

#[test]
fn an_oil_that_stood_past_its_date_is_binned_and_neither_strained_nor_shaken() {
    let world = World::new();
    world.call("jar.pour", json!({"composition": oil(), "shake": true}));
    world.at("2026-07-20T08:00:00+02:00");
    let due = world.call("due.list", json!({}));
    assert_eq!(due["due"].as_array().unwrap().len(), 1);
    assert_eq!(due["due"][0]["what"], "bin");
}
