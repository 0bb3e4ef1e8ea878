//! `jar.shake`, `jar.top_up`, `jar.strain`, `jar.marc`, `bottle.*`, `dropper.*`, `trace.*`, recipes.

use serde_json::{Value, json};

use crate::world::{World, number, text};

/// Ounces avoirdupois and US fluid ounces.
const OUNCE_G: f64 = 28.349_523;
const FLUID_OUNCE_ML: f64 = 29.573_53;

/// Dried herb with no water of its own in spirit and water, at 5 mL to a gram unless said otherwise.
fn poured(world: &World, herb: &str, part: &str, mass_g: f64, poured_ml: f64) -> Value {
    let dry = json!({"low": 0, "value": 0, "high": 0});
    let plant = json!({"herb": herb, "part": part, "state": "dried", "mass_g": mass_g,
        "moisture_wet_percent": dry});
    let composition = json!({"preparation": "tincture-dried", "plants": [plant],
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
        "ratio_ml_per_g": poured_ml / mass_g, "strength_percent_vol": 50});
    world.call("jar.pour", json!({"composition": composition}))["jar"].clone()
}

fn strained(world: &World, jar: &Value, ml: f64, how: &str) -> Value {
    let request = json!({"jar": jar["id"], "came_out_ml": ml, "how": how});
    world.call("jar.strain", request)["jar"].clone()
}

fn filled(world: &World, jar: &Value, ml: f64, count: u32) -> Value {
    let request =
        json!({"jar": jar["id"], "bottles": [{"ml": ml, "count": count}], "place": "Cellar"});
    world.call("bottle.fill", request)
}

/// Fresh peppermint in olive oil, strained and filled at once.
fn fresh_oil(world: &World) -> Value {
    let plant = json!({"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 20});
    let composition = json!({"preparation": "oil", "plants": [plant],
        "stock": [{"kind": "oil", "oil": "olive"}]});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    strained(world, &jar, 50.0, "dripped");
    filled(world, &jar, 50.0, 1)["bottles"][0].clone()
}

#[test]
fn the_strained_volumes_of_the_source_give_its_retention() {
    // Moore 1995 (worked example W41): 4 oz of dry root and 20 fl oz give 13 to 14 fl oz wrung by
    // hand, up to 17 pressed; 1.57 to 1.83 and 0.78 mL for each gram, computed from those volumes
    // with liquids counted as additive. Absolute 0.03 mL/g: half the last printed digit of the
    // fluid ounces, and the contraction that the source does not know of is counted out below.
    for (how, fluid_ounces, printed) in [
        ("wrung", 13.0, 1.83),
        ("wrung", 14.0, 1.57),
        ("pressed", 17.0, 0.78),
    ] {
        let world = World::new();
        let jar = poured(
            &world,
            "valerian",
            "root",
            4.0 * OUNCE_G,
            20.0 * FLUID_OUNCE_ML,
        );
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
fn published_retention_foretells_the_strained_volume_until_there_is_an_own_one() {
    let world = World::new();
    let first = poured(
        &world,
        "valerian",
        "root",
        4.0 * OUNCE_G,
        20.0 * FLUID_OUNCE_ML,
    );
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
        .says("strained already");
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
        .says("2 % is allowed");
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
        .says("take that back first");
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
        .says("is finished");
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
    assert!(text(&page, "/signs/0/text").contains("do not smell or taste"));
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
    assert_eq!(page["chain"]["jar"]["id"], jar["id"]);
    assert_eq!(page["chain"]["pours"][0]["supply"], supply["id"]);
}

#[test]
fn a_marc_is_covered_a_second_time_and_both_ratios_stay() {
    let world = World::new();
    let first = poured(&world, "sage", "leaf", 100.0, 500.0);
    world
        .refused("jar.marc", json!({"jar": first["id"]}))
        .of("invalid", "jar")
        .says("not strained yet");
    let first = strained(&world, &first, 380.0, "wrung");
    let kept = number(&first, "/strainings/0/retained_ml/value");
    let mut composition = world.call("jar.marc", json!({"jar": first["id"]}));
    assert!((number(&composition, "/stock/0/exactly_ml") - kept).abs() < 1e-9);
    assert!((number(&composition, "/plants/0/mass_g") - 100.0).abs() < 1e-9);
    let stock = composition["stock"].as_array_mut().unwrap();
    stock.push(json!({"kind": "spirit", "strength_percent_vol": 95}));
    stock.push(json!({"kind": "water"}));
    let proposal = world.call("jar.compose", composition.clone());
    assert!(number(&proposal, "/poured_ml") > kept);
    let request = json!({"composition": composition, "marc_of": first["id"], "name": "Sage again"});
    let second = world.call("jar.pour", request.clone())["jar"].clone();
    assert_eq!(second["marc_of"]["jar"], first["id"]);
    assert_eq!(number(&second, "/marc_of/ratio_ml_per_g"), 5.0);
    assert!(number(&second, "/ratio_ml_per_g") > 0.0);
    world
        .refused("jar.pour", request)
        .of("invalid", "marc_of")
        .says("already");
    let chain = world.call("trace.back", json!({"jar": second["id"]}))["chain"].clone();
    assert_eq!(chain["marc_of"]["jar"]["id"], first["id"]);
    // The sprayed herb of the first jar is in the second too.
    let forward = world.call("trace.forward", json!({"jar": first["id"]}));
    assert_eq!(forward["jars"].as_array().unwrap().len(), 2);
}

#[test]
fn a_jar_is_made_again_with_this_years_water() {
    let world = World::new();
    let pick = |grams: f64| {
        let request =
            json!({"herb": "peppermint", "part": "leaf", "gross_g": grams, "surface": "dry"});
        world.call("harvest.record", request)["harvest"].clone()
    };
    let harvest = pick(200.0);
    let plant = |harvest: &Value, moisture: Value| {
        json!({"lot": {"kind": "harvest", "id": harvest["id"]}, "herb": "peppermint", "part": "leaf",
            "state": "fresh", "mass_g": 100, "moisture_wet_percent": moisture})
    };
    let wet = json!({"low": 80, "value": 82, "high": 84});
    let composition = json!({"preparation": "tincture", "plants": [plant(&harvest, wet)],
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
        "strength_percent_vol": 45, "ratio_ml_per_g": 3});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    let request =
        json!({"jar": jar["id"], "name": "Mint for winter", "stars": 5, "note": "Bright."});
    let recipe = world.call("jar.keep_recipe", request)["recipe"].clone();
    assert_eq!(number(&recipe, "/strength_percent_vol"), 45.0);
    let page = world.call("jar.show", json!({"id": jar["id"]}))["jar"].clone();
    assert_eq!(
        (page["stars"].clone(), page["recipe"].clone()),
        (json!(5), recipe["id"].clone())
    );

    world.at("2027-07-14T09:00:00+02:00");
    let next = pick(150.0);
    let plants = json!([plant(&next, Value::Null)]);
    let again = world.call(
        "recipe.compose",
        json!({"recipe": recipe["id"], "plants": plants}),
    );
    assert_eq!(again["plants"][0]["moisture_wet_percent"], Value::Null);
    let proposal = world.call("jar.compose", again.clone());
    // The aim stays, the amounts follow this year's water.
    assert!((number(&proposal, "/liquid/strength_percent_vol/value") - 45.0).abs() < 0.1);
    let (spirit, before) = (
        number(&proposal, "/pours/0/ml"),
        number(&jar, "/pours/0/ml"),
    );
    assert!(
        (spirit - before).abs() > 0.5,
        "{spirit} mL for other water than {before} mL"
    );
    let repeated = world.call("jar.repeat", json!({"jar": jar["id"], "plants": plants}));
    assert_eq!(repeated, again);
    let corrected = world.call("recipe.correct", json!({"id": recipe["id"], "stars": 3}));
    assert_eq!(corrected["recipe"]["stars"], 3);
    world
        .refused("recipe.correct", json!({"id": recipe["id"], "stars": 6}))
        .of("invalid", "stars");
    assert_eq!(
        world.call("recipe.list", json!({}))["recipes"]
            .as_array()
            .unwrap()
            .len(),
        1
    );
}

#[test]
fn a_plan_goes_by_the_makers_own_marcs() {
    let world = World::new();
    let wish = json!({"herb": "sage", "part": "leaf", "preparation": "tincture", "state": "dried",
        "bottles": 6, "bottle_ml": 60, "ready_on": "2026-12-01", "gifts": true});
    let before = world.call("plan.bottles", wish.clone());
    let jar = poured(&world, "sage", "leaf", 100.0, 500.0);
    let jar = strained(&world, &jar, 420.0, "pressed");
    let own = number(&jar, "/strainings/0/retained_ml_per_g_dry/value");
    let after = world.call("plan.bottles", wish);
    let per_g = number(&after, "/retained_ml/value");
    assert!(
        own < 1.0 && per_g < number(&before, "/retained_ml/value"),
        "a pressed marc keeps less"
    );

    // Composing what the plan says and straining with the same retention gives the bottles.
    let dry_g = number(&after, "/dry_g/value");
    let plant = json!({"herb": "sage", "part": "leaf", "state": "dried", "mass_g": dry_g});
    let pours = after["pours"].as_array().unwrap();
    let poured_ml: f64 = pours.iter().map(|pour| number(pour, "/ml")).sum();
    let stock: Vec<Value> = pours
        .iter()
        .map(|pour| match text(pour, "/kind") {
            "spirit" => json!({"kind": "spirit", "strength_percent_vol": 95}),
            kind => json!({"kind": kind}),
        })
        .collect();
    let composition = json!({"preparation": "tincture-dried", "plants": [plant], "stock": stock,
        "ratio_ml_per_g": poured_ml / dry_g});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    let expected = jar["expected_out"].as_array().unwrap();
    let pressed = expected
        .iter()
        .find(|line| line["how"] == "pressed")
        .unwrap();
    assert!(
        number(pressed, "/came_out_ml/low") <= 360.0
            && 360.0 <= number(pressed, "/came_out_ml/high"),
        "6 x 60 mL within {}",
        pressed["came_out_ml"]
    );
}

#[test]
fn the_rest_of_a_jar_is_closed_plainly_and_each_thing_is_due_once() {
    let world = World::new();
    let plant = json!({"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 20});
    let composition = json!({"preparation": "oil", "plants": [plant],
        "stock": [{"kind": "oil", "oil": "olive"}]});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
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
fn an_oil_that_stood_past_its_date_is_binned_and_neither_strained_nor_shaken() {
    let world = World::new();
    let plant = json!({"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 20});
    let composition = json!({"preparation": "oil", "plants": [plant],
        "stock": [{"kind": "oil", "oil": "olive"}]});
    world.call(
        "jar.pour",
        json!({"composition": composition, "shake": true}),
    );
    world.at("2026-07-20T08:00:00+02:00");
    let due = world.call("due.list", json!({}));
    assert_eq!(due["due"].as_array().unwrap().len(), 1);
    assert_eq!(due["due"][0]["what"], "bin");
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
        .says("while the weigh-in at 200 g of tray “Upper sieve” (");
    let poured = poured(&world, "sage", "leaf", 50.0, 250.0);
    let deeds = world.call("deed.list", json!({}));
    world.call("jar.shake", json!({"jar": poured["id"]}));
    world
        .refused("deed.undo", json!({"deed": deeds["deeds"][0]["deed"]}))
        .says("while a shake of jar “Sage tincture");
}
