//! What the composer and the jar say beyond the amounts: water that was measured, what is for the skin
//! alone, how long it keeps, what a millilitre stands for, and what is taken back.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

fn plant(herb: &str, part: &str, state: &str, mass_g: f64) -> Value {
    json!({"herb": herb, "part": part, "state": state, "mass_g": mass_g})
}

fn jar(preparation: &str, plant: Value, stock: Value) -> Value {
    json!({"preparation": preparation, "plants": [plant], "stock": stock})
}

fn poured(world: &World, composition: Value) -> Value {
    world.call("jar.pour", json!({"composition": composition}))["jar"].clone()
}

fn helps(proposal: &Value, code: &str) -> bool {
    let helps = proposal["would_help"].as_array().unwrap();
    helps.iter().any(|note| note["code"] == code)
}

#[test]
fn an_oven_sample_narrows_the_water_and_settles_a_jar_that_hung_on_it() {
    let world = World::new();
    let stock = json!([{"kind": "spirit", "strength_percent_vol": 35.5}]);
    let mint = plant("peppermint", "leaf", "fresh", 100.0);
    let guessed = world.call(
        "jar.compose",
        jar("tincture-fresh-strong", mint.clone(), stock.clone()),
    );
    assert_ne!(text(&guessed, "/keeping/verdict"), "keeps");
    assert!(helps(&guessed, "oven-sample"), "{}", guessed["would_help"]);

    let mut sampled = mint.clone();
    sampled["sample"] = json!({"fresh_g": 15.0, "dry_g": 3.6, "scale_step_g": 0.1});
    let known = world.call(
        "jar.compose",
        jar("tincture-fresh-strong", sampled.clone(), stock.clone()),
    );
    let water =
        |reply: &Value, end: &str| number(reply, &format!("/plants/0/moisture_wet_percent/{end}"));
    let width = |reply: &Value| water(reply, "high") - water(reply, "low");
    assert!(
        (water(&known, "value") - 76.0).abs() < 1.0,
        "3.6 of 15 g are left"
    );
    assert!(width(&known) < 0.3 * width(&guessed));
    assert!(text(&known, "/plants/0/basis").contains("oven sample"));
    assert_eq!(text(&known, "/keeping/verdict"), "keeps");
    assert!(!helps(&known, "oven-sample"), "it was taken");

    // A scale of whole grams says less, and the adviser takes the sample too.
    sampled["sample"]["scale_step_g"] = json!(1.0);
    let coarse = world.call(
        "jar.compose",
        jar("tincture-fresh-strong", sampled.clone(), stock),
    );
    assert!(width(&coarse) > 2.0 * width(&known));
    sampled["purpose"] = json!("inside");
    let advice = world.call("jar.advise", sampled);
    is_interval(&advice, "/candidates/0/liquid/strength_percent_vol");
}

#[test]
fn no_sample_is_asked_for_where_the_jar_does_not_hang_on_it() {
    let world = World::new();
    for strength in [20, 95] {
        let stock = json!([{"kind": "spirit", "strength_percent_vol": strength}]);
        let mint = plant("peppermint", "leaf", "fresh", 100.0);
        let proposal = world.call("jar.compose", jar("tincture-fresh-strong", mint, stock));
        assert!(!helps(&proposal, "oven-sample"), "{strength} % vol");
    }
}

#[test]
fn a_sample_of_dried_herb_tells_whether_it_is_crisp_enough_for_oil() {
    let world = World::new();
    let of = |dry_g: f64| {
        let mut calendula = plant("calendula", "flower", "dried", 50.0);
        calendula["sample"] = json!({"fresh_g": 12.0, "dry_g": dry_g, "scale_step_g": 0.1});
        let proposal = world.call("jar.compose", jar("oil", calendula, json!([])));
        text(&proposal, "/keeping/verdict").to_owned()
    };
    assert_eq!(of(11.0), "keeps", "8.3 % of water");
    assert_eq!(of(9.6), "use now", "20 % of water");
}

#[test]
fn a_sample_that_cannot_be_is_refused_at_its_field() {
    let world = World::new();
    let refused = |sample: Value| {
        let mut mint = plant("peppermint", "leaf", "fresh", 100.0);
        mint["sample"] = sample;
        world.refused("jar.compose", jar("tincture", mint, json!([])))
    };
    refused(json!({"fresh_g": 15, "dry_g": 16})).of("invalid", "plants[0].sample.dry_g");
    refused(json!({"fresh_g": 15, "dry_g": 3, "scale_step_g": 0}))
        .of("invalid", "plants[0].sample.dry_g");
    let mut both = plant("peppermint", "leaf", "fresh", 100.0);
    both["sample"] = json!({"fresh_g": 15, "dry_g": 3});
    both["moisture_wet_percent"] = json!({"low": 70, "value": 80, "high": 85});
    world
        .refused("jar.compose", jar("tincture", both, json!([])))
        .of("invalid", "plants[0].sample")
        .says("not both");
}

#[test]
fn what_must_not_be_swallowed_is_not_poured_as_if_it_were() {
    let world = World::new();
    let arnica = || plant("arnica", "flower", "dried", 20.0);
    for inside in ["glycerite", "cordial", "wine-table"] {
        let composition = jar(inside, arnica(), json!([]));
        let proposal = world.call("jar.compose", composition.clone());
        assert_eq!(
            text(&proposal, "/keeping/verdict"),
            "do not make",
            "{inside}"
        );
        world
            .refused("jar.pour", json!({"composition": composition}))
            .of("invalid", "composition.preparation")
            .says("Never by mouth");
    }
    let page = poured(&world, jar("tincture", arnica(), json!([])));
    assert_eq!(page["keeping"]["outside_only"], true);
    assert_eq!(text(&page, "/cautions/0/code"), "outside-only");
}

#[test]
fn a_jar_says_what_a_millilitre_stands_for_and_how_long_it_keeps() {
    let world = World::new();
    let stock = json!([{"kind": "spirit", "strength_percent_vol": 95}]);
    let mut mint = plant("peppermint", "leaf", "fresh", 100.0);
    mint["moisture_wet_percent"] = json!({"low": 80, "value": 80, "high": 80});
    let page = poured(&world, jar("tincture-fresh-strong", mint, stock));
    // F09 of the trade's formulas: (1-w)/r poured, and about (1-w)/(r+w) with the plant's own water.
    let alone = number(&page, "/dried_equivalent_g_per_ml/value");
    let with = number(&page, "/dried_equivalent_with_plant_water_g_per_ml/value");
    assert!((alone - 0.2 / 2.0).abs() < 1e-9, "{alone}");
    assert!(
        (with - 0.2 / 2.8).abs() < 0.003,
        "{with}: mixing shrinks by a few percent"
    );
    is_interval(&page, "/shelf_life/days");
    assert_eq!(text(&page, "/shelf_life/notes/0/status"), "practice");
    is_interval(&page, "/liquid/flash_point_c");
}

#[test]
fn an_oil_ages_by_its_own_label_and_sooner_where_it_stands_warm() {
    let world = World::new();
    let oil = json!({"name": "Olive oil", "item": {"kind": "oil", "oil": "olive"}, "size_ml": 1000,
        "best_before": "2027-01-10"});
    let oil = world.call("supply.add", oil)["supply"].clone();
    let mut calendula = plant("calendula", "flower", "dried", 50.0);
    calendula["moisture_wet_percent"] = json!({"low": 8, "value": 9, "high": 10});
    let stock = json!([{"kind": "oil", "supply": oil["id"]}]);
    let proposal = world.call("jar.compose", jar("oil", calendula.clone(), stock.clone()));
    let ageing = |reply: &Value| {
        let notes = reply["shelf_life"]["notes"].as_array().unwrap().clone();
        let note = notes
            .into_iter()
            .find(|note| note["code"] == "oil-ageing")
            .unwrap();
        text(&note, "/text").to_owned()
    };
    // 180 days are left on 14 July 2026: half of them at 30 C.
    assert!(
        ageing(&proposal).contains("at 30 °C by 12 Oct 2026"),
        "{}",
        ageing(&proposal)
    );
    let page = poured(&world, jar("oil", calendula, stock));
    assert_eq!(ageing(&page), ageing(&proposal));
    world.at("2026-08-10T09:00:00+02:00");
    let strained = json!({"jar": page["id"], "came_out_ml": 400, "how": "pressed"});
    world.call("jar.strain", strained);
    let fill = |warm: Value| {
        let mut request = json!({"jar": page["id"], "bottles": [{"ml": 100, "count": 1}]});
        if !warm.is_null() {
            request["stored_at_c"] = warm;
        }
        world.call("bottle.fill", request)["bottles"][0].clone()
    };
    assert_eq!(text(&fill(json!(null)), "/best_before"), "2027-01-10");
    let warm = fill(json!(30));
    assert_eq!(text(&warm, "/best_before"), "2026-10-12");
    assert!(
        text(&warm, "/check_on") < "2026-10-12",
        "rancidity is looked for before"
    );
    assert_eq!(
        text(&fill(json!(10)), "/best_before"),
        "2027-01-10",
        "never past its label"
    );
    let oven = json!({"jar": page["id"], "bottles": [{"ml": 50, "count": 1}], "stored_at_c": 80});
    world
        .refused("bottle.fill", oven)
        .of("invalid", "stored_at_c")
        .says("between 5 and 40");
}

#[test]
fn an_oil_without_a_figure_still_comes_round_to_be_looked_at() {
    let world = World::new();
    let mut damp = plant("calendula", "flower", "dried", 50.0);
    damp["moisture_wet_percent"] = json!({"low": 13, "value": 15, "high": 17});
    let page = poured(&world, jar("oil", damp, json!([])));
    assert_eq!(text(&page, "/keeping/verdict"), "use now");
    world.at("2026-08-10T09:00:00+02:00");
    world.call(
        "jar.strain",
        json!({"jar": page["id"], "came_out_ml": 400, "how": "pressed"}),
    );
    let request = json!({"jar": page["id"], "bottles": [{"ml": 100, "count": 1}]});
    let bottle = world.call("bottle.fill", request)["bottles"][0].clone();
    assert_eq!(bottle["best_before"], Value::Null, "no figure was found");
    assert_eq!(text(&bottle, "/check_on"), "2026-08-17");
}

#[test]
fn a_marc_is_covered_again_only_where_that_is_practice() {
    let world = World::new();
    let strained = |composition: Value| {
        let page = poured(&world, composition);
        assert_eq!(page["second_maceration"], false, "it is not strained yet");
        let strained = json!({"jar": page["id"], "came_out_ml": 60, "how": "pressed"});
        world.call("jar.strain", strained)["jar"].clone()
    };
    let tincture = strained(jar(
        "tincture",
        plant("sage", "leaf", "dried", 20.0),
        json!([]),
    ));
    assert_eq!(tincture["second_maceration"], true);
    world.call("jar.marc", json!({"jar": tincture["id"]}));
    let oxymel = strained(jar(
        "oxymel",
        plant("thyme", "flowering tops", "dried", 20.0),
        json!([]),
    ));
    assert_eq!(oxymel["second_maceration"], false);
    world
        .refused("jar.marc", json!({"jar": oxymel["id"]}))
        .of("invalid", "jar")
        .says("This one holds a mixture");
}

#[test]
fn what_was_written_of_a_bottle_or_a_recipe_can_be_taken_back() {
    let world = World::new();
    let bought = json!({"name": "Vodka", "item": {"kind": "spirit", "strength_percent_vol": 40},
        "size_ml": 700, "price": 14, "currency": "EUR", "bought_on": "2026-05-01", "best_before": "2030-01-01"});
    let id = world.call("supply.add", bought)["supply"]["id"].clone();
    let correct = |change: Value| {
        let mut request = change;
        request["id"] = id.clone();
        world.call("supply.correct", request)["supply"].clone()
    };
    let stronger =
        correct(json!({"item": {"kind": "spirit", "strength_percent_vol": 42}, "price": 15}));
    assert_eq!(number(&stronger, "/item/strength_percent_vol"), 42.0);
    assert_eq!(
        (number(&stronger, "/price"), text(&stronger, "/currency")),
        (15.0, "EUR")
    );
    let bare = correct(json!({"currency": "", "best_before": "", "bought_on": ""}));
    for field in ["price", "currency", "best_before", "bought_on"] {
        assert_eq!(bare[field], Value::Null, "{field}");
    }
    let page = poured(
        &world,
        jar("tincture", plant("sage", "leaf", "dried", 20.0), json!([])),
    );
    let keep = json!({"jar": page["id"], "name": "Sage", "stars": 4});
    let recipe = world.call("jar.keep_recipe", keep)["recipe"].clone();
    let stars = |stars: u8| {
        let request = json!({"id": recipe["id"], "stars": stars});
        world.call("recipe.correct", request)["recipe"]["stars"].clone()
    };
    assert_eq!(stars(2), json!(2));
    assert_eq!(stars(0), Value::Null);
}

#[test]
fn a_target_out_of_reach_says_what_would_reach_it() {
    let world = World::new();
    let ask = |strength: f64, target: f64| {
        let request = json!({"stock": [{"kind": "spirit", "strength_percent_vol": strength}, {"kind": "water"}],
            "plants": [{"mass_g": 100, "moisture_wet_percent": 80}],
            "targets": {"strength_percent_vol": target, "poured_ml": 200}});
        let reply = world.call("mixture.reach", request);
        let notes = reply["notes"].as_array().unwrap().clone();
        let codes = notes.iter().map(|note| text(note, "/code").to_owned());
        (reply["reached"] == true, codes.collect::<Vec<_>>())
    };
    let (reached, helps) = ask(40.0, 35.0);
    assert!(!reached);
    for code in ["dry-the-herb", "higher-ratio", "stronger-spirit"] {
        assert!(helps.iter().any(|one| one == code), "{code} in {helps:?}");
    }
    // Water cannot be made into spirit of 99 % by any of them.
    let (reached, helps) = ask(40.0, 99.0);
    assert!(
        !reached && helps.iter().all(|code| code != "stronger-spirit"),
        "{helps:?}"
    );
    let (reached, helps) = ask(95.0, 35.0);
    assert!(reached && helps.iter().all(|code| code != "dry-the-herb"));
}
