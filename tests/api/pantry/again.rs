//! What a jar leaves for the next one: its marc, its recipe, what its herb kept back; `trace.*`.

use serde_json::{Value, json};

use super::{poured, strained};
use crate::world::{World, number, text};

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
