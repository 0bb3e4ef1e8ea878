//! `bottle.*` and `dropper.*`.

use serde_json::{Value, json};

use super::{filled, fresh_oil, poured, strained};
use crate::world::{World, number, text};

#[test]
fn no_more_is_bottled_than_came_out() {
    let world = World::new();
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    world
        .refused(
            "bottle.fill",
            json!({"jar": jar["id"], "bottles": [{"ml": 50, "count": 1}]}),
        )
        .of("invalid", "jar")
        .says("not strained yet");
    strained(&world, &jar, 200.0, "wrung");
    world
        .refused(
            "bottle.fill",
            json!({"jar": jar["id"], "bottles": [{"ml": 50, "count": 5}]}),
        )
        .of("not_enough", "bottles")
        .says("We allow 2 %");
    let first = filled(&world, &jar, 50.0, 3);
    assert_eq!(number(&first, "/rest_ml"), 50.0);
    // 204 mL of 200: the reading of the jug may be out by 2 %.
    let last = filled(&world, &jar, 54.0, 1);
    assert_eq!(number(&last, "/rest_ml"), 0.0);
    assert!(world.app().faults().unwrap().is_empty());
    let jar_page = world.call("jar.show", json!({"id": jar["id"]}));
    assert_eq!(jar_page["jar"]["bottles"].as_array().unwrap().len(), 4);
    // A straining under its bottles cannot be taken back.
    let deeds = world.call("deed.list", json!({}));
    let straining = deeds["deeds"]
        .as_array()
        .unwrap()
        .iter()
        .find(|deed| text(deed, "/text").starts_with("Strained"))
        .unwrap();
    world
        .refused("deed.undo", json!({"deed": straining["deed"]}))
        .says("Undo that first");
    world.call("deed.undo", json!({"deed": last["deed"]}));
    world.call("deed.undo", json!({"deed": first["deed"]}));
    world.call("deed.undo", json!({"deed": straining["deed"]}));
    let jar = world.call("jar.show", json!({"id": jar["id"]}));
    assert_eq!(jar["jar"]["state"], "steeping");
    assert_eq!(jar["jar"]["left_ml"], Value::Null);
}

#[test]
fn a_bottle_is_used_by_the_measure_at_hand() {
    let world = World::new();
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    strained(&world, &jar, 200.0, "wrung");
    let bottle = filled(&world, &jar, 50.0, 1)["bottles"][0].clone();
    assert_eq!(bottle["state"], "on the shelf");
    let take = |request: Value| {
        let mut request = request;
        request["bottle"] = bottle["id"].clone();
        world.call("bottle.use", request)["bottle"].clone()
    };
    // 21 CFR 101.9(b)(5)(viii): a teaspoon is 5 mL, a tablespoon 15 mL.
    assert_eq!(number(&take(json!({"teaspoons": 1})), "/left_ml"), 45.0);
    assert_eq!(number(&take(json!({"tablespoons": 1})), "/left_ml"), 30.0);
    let request =
        json!({"name": "Brown glass", "drops_in_1_ml": [30, 28, 32], "liquid": jar["name"]});
    let dropper = world.call("dropper.count", request)["dropper"].clone();
    assert_eq!(
        dropper["drops_per_ml"],
        json!({"low": 28.0, "value": 30.0, "high": 32.0})
    );
    let page = take(json!({"drops": 60, "dropper": dropper["id"]}));
    assert_eq!(number(&page, "/left_ml"), 28.0);
    assert_eq!(page["arithmetic"]["drops_per_ml"]["value"], 30.0);
    assert_eq!(page["state"], "open");
    let refuse = |request: Value| {
        let mut request = request;
        request["bottle"] = bottle["id"].clone();
        world.refused("bottle.use", request)
    };
    refuse(json!({"ml": 5, "drops": 5})).of("invalid", "ml");
    refuse(json!({"droppers": 1})).of("invalid", "dropper");
    refuse(json!({"droppers": 1, "dropper": dropper["id"]})).says("never measured");
    refuse(json!({"ml": -1})).of("invalid", "ml");
    refuse(json!({"tablespoons": 2}))
        .of("not_enough", "tablespoons")
        .says("28 mL left");
    world.call("bottle.finish", json!({"bottle": bottle["id"]}));
    refuse(json!({"ml": 1}))
        .of("invalid", "bottle")
        .says("was emptied on");
    assert!(world.app().faults().unwrap().is_empty());
}

#[test]
fn fresh_herb_in_oil_goes_by_the_calendar_and_never_by_the_nose() {
    // Confirmed: 4 days in the refrigerator (NCHFP, reviewed 2015), and no sign of the toxin.
    let world = World::new();
    let bottle = fresh_oil(&world);
    assert_eq!(bottle["best_before"], "2026-07-18");
    assert_eq!(bottle["check_on"], Value::Null);
    assert_eq!(bottle["only_the_date_counts"], true);
    world
        .refused(
            "bottle.check",
            json!({"bottle": bottle["id"], "outcome": "good"}),
        )
        .of("invalid", "outcome");
    let page = world.call("bottle.show", json!({"code": bottle["code"]}))["bottle"].clone();
    assert_eq!(page["signs"].as_array().unwrap().len(), 1);
    assert!(text(&page, "/signs/0/text").contains("Don't smell or taste it to check"));
    world.at("2026-07-18T20:00:00+02:00");
    world.call("bottle.use", json!({"bottle": bottle["id"], "ml": 10}));
    world.at("2026-07-19T08:00:00+02:00");
    let list = world.call("bottle.list", json!({}));
    assert_eq!(list["bottles"][0]["bin_it"], true);
    assert_eq!(list["stock"], json!([]), "what must be binned is no stock");
    world
        .refused("bottle.use", json!({"bottle": bottle["id"], "ml": 10}))
        .says("botulism");
    world
        .refused(
            "bottle.give",
            json!({"bottle": bottle["id"], "to": "a neighbour"}),
        )
        .says("botulism");
    world.call(
        "bottle.bin",
        json!({"bottle": bottle["id"], "reason": "past its date"}),
    );
    let page = world.call("bottle.show", json!({"id": bottle["id"]}));
    assert_eq!(page["bottle"]["state"], "binned");
}

#[test]
fn the_sums_of_a_bottle_are_the_trades() {
    let world = World::new();
    let item = json!({"kind": "spirit", "strength_percent_vol": 95});
    let supply = json!({"name": "Grain spirit", "item": item, "size_ml": 1000, "price": 40, "currency": "EUR"});
    let supply = world.call("supply.add", supply)["supply"].clone();
    let dry = json!({"low": 0, "value": 0, "high": 0});
    let plant = json!({"herb": "sage", "part": "leaf", "state": "dried", "mass_g": 50, "moisture_wet_percent": dry});
    let composition = json!({"preparation": "tincture-dried", "plants": [plant], "ratio_ml_per_g": 5,
        "stock": [{"kind": "spirit", "supply": supply["id"]}, {"kind": "water"}], "strength_percent_vol": 60});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    strained(&world, &jar, 200.0, "pressed");
    let bottle = filled(&world, &jar, 50.0, 2)["bottles"][0].clone();
    let page = world.call("bottle.show", json!({"id": bottle["id"]}))["bottle"].clone();
    // USP IX: 20 g to 100 mL is 1:5.
    assert!((number(&page, "/arithmetic/dried_equivalent_g_per_ml/value") - 0.2).abs() < 1e-9);
    // 60 % vol at 0.78924 g/mL (OIML R 22): 0.4735 g in a millilitre.
    assert!((number(&page, "/arithmetic/ethanol_g_per_ml/value") - 0.4735).abs() < 0.001);
    assert!((number(&page, "/arithmetic/ethanol_g_bottle/value") - 23.68).abs() < 0.05);
    let spirit = number(&jar, "/pours/0/ml");
    let cost = spirit / 1000.0 * 40.0 * 50.0 / 200.0;
    assert!(
        (number(&page, "/arithmetic/cost") - cost).abs() < 0.005,
        "to the cent"
    );
    assert_eq!(page["arithmetic"]["currency"], "EUR");
    let of_jar = spirit / 1000.0 * 40.0;
    assert!(
        (number(&jar, "/cost/amount") - of_jar).abs() < 0.005,
        "the whole jar"
    );
    assert_eq!(jar["cost"]["currency"], "EUR");
    assert_eq!(
        jar["cost"]["notes"][0]["text"],
        "Without water: no price is known."
    );
    assert_eq!(page["chain"]["jar"]["id"], jar["id"]);
    assert_eq!(page["chain"]["pours"][0]["supply"], supply["id"]);
}

#[test]
fn an_oil_found_bad_is_binned_before_its_date() {
    let world = World::new();
    let bottle = fresh_oil(&world);
    world.call(
        "bottle.check",
        json!({"bottle": bottle["id"], "outcome": "bad", "note": "mould at the neck"}),
    );
    let due = world.call("due.list", json!({"days": 30}));
    assert_eq!(due["due"].as_array().unwrap().len(), 1);
    assert_eq!(due["due"][0]["what"], "bin");
}

#[test]
fn a_bottle_tells_ways_to_use_it_and_what_is_for_the_skin_tells_none() {
    let world = World::new();
    let filled = |preparation: &str, plant: Value, liquid: Value| {
        let composition = json!({"preparation": preparation, "plants": [plant],
            "stock": [liquid, {"kind": "water"}]});
        let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
        let strained = json!({"jar": jar["id"], "came_out_ml": 100, "how": "pressed"});
        world.call("jar.strain", strained);
        let fill = json!({"jar": jar["id"], "bottles": [{"ml": 50, "count": 1}]});
        world.call("bottle.fill", fill)["bottles"][0]["id"].clone()
    };
    let dried = |herb: &str, part: &str| json!({"herb": herb, "part": part, "state": "dried", "mass_g": 40});
    let ways = |bottle: &Value| {
        let reply = world.call("bottle.ways", json!({"bottle": bottle}));
        reply["ways"].as_array().unwrap().clone()
    };
    let spirit = json!({"kind": "spirit", "strength_percent_vol": 95});
    let sage = filled("tincture-dried", dried("sage", "leaf"), spirit);
    let told = ways(&sage);
    assert_eq!(
        told[0]["text"],
        "Stir it into hot water or tea and let it stand a little."
    );
    assert_eq!(
        told.last().unwrap()["care"],
        "Not for children, not in pregnancy, not before driving."
    );
    // Nothing that anybody swallows is told by how much.
    assert!(
        told.iter()
            .all(|way| !text(way, "/text").contains(|it: char| it.is_ascii_digit()))
    );

    let olive = json!({"kind": "oil", "oil": "olive"});
    let arnica = filled("oil-dried", dried("arnica", "flower"), olive.clone());
    assert_eq!(ways(&arnica), Vec::<Value>::new());
    let thyme = filled("oil-dried", dried("thyme", "flowering tops"), olive);
    assert!(!ways(&thyme).is_empty());

    // A gift's label has them where there is room, and asks for none where there is not.
    let label = |width: u32, height: u32| {
        let asked = json!({"bottle": sage, "gift": true, "ethanol": false,
            "label": {"width_mm": width, "height_mm": height}});
        world.call("label.single", asked)
    };
    assert!(text(&label(150, 100), "/svg").contains("Try it:"));
    let small = label(70, 50);
    assert!(!text(&small, "/svg").contains("Try it:"));
    assert!(
        !small["remarks"].to_string().contains("ways to use"),
        "{small}"
    );
    world
        .refused("bottle.ways", json!({"bottle": "none"}))
        .of("invalid", "bottle");
}
