//! `mixture.describe` and `mixture.reach`.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

fn describe(pours: Value) -> Value {
    World::new().call("mixture.describe", json!({ "pours": pours }))
}

#[test]
fn mint_in_strong_spirit_ends_near_sixty_nine_and_a_half() {
    // Common practice, no source: 50 g of mint at 80 % water, 1:2 in 95 % vol.
    let reply = World::new().call(
        "mixture.describe",
        json!({"pours": [{"kind": "spirit", "strength_percent_vol": 95, "ml": 100}],
            "plants": [{"mass_g": 50, "moisture_wet_percent": {"low": 76, "value": 80, "high": 84}}]}),
    );
    let strength = number(&reply, "/liquid/strength_percent_vol/value");
    assert!((strength - 69.5).abs() < 0.1, "{strength} % vol");
    for (name, figure) in reply["liquid"].as_object().unwrap() {
        if figure.get("value").is_some() {
            is_interval(&reply, &format!("/liquid/{name}"));
        }
    }
    assert!(
        number(&reply, "/liquid/strength_percent_vol/low") < strength,
        "the plant's water is uncertain, and so is the strength"
    );
}

#[test]
fn half_and_half_contracts() {
    // USP 29, Diluted Alcohol: 500 mL of alcohol and 500 mL of water make about 970 mL.
    let reply = describe(json!([
        {"kind": "spirit", "strength_percent_vol": 94.9, "ml": 500},
        {"kind": "water", "ml": 500}]));
    let volume = number(&reply, "/liquid/volume_ml/value");
    assert!((volume - 970.0).abs() < 4.0, "{volume} mL");
}

#[test]
fn every_kind_of_liquid_is_understood() {
    let pours = json!([
        {"kind": "water", "ml": 10}, {"kind": "spirit", "strength_percent_vol": 40, "g": 10},
        {"kind": "glycerin", "ml": 10}, {"kind": "vinegar", "acidity_g_per_100ml": 5, "ml": 10},
        {"kind": "wine", "strength_percent_vol": 12, "sugar_g_per_l": 5, "ml": 10},
        {"kind": "sugar", "g": 10}, {"kind": "syrup", "sugar_percent_mass": 65, "ml": 10},
        {"kind": "honey", "g": 10},
        {"kind": "juice", "sugar_percent_mass": 12, "acidity_g_per_100ml": 0.8, "ml": 10},
        {"kind": "oil", "oil": "olive", "ml": 10}]);
    let reply = describe(pours);
    assert!(
        number(&reply, "/liquid/acid_ph/value") > 2.0,
        "acid has a pH"
    );
    let notes = reply["notes"].to_string();
    assert!(notes.contains("Oil floats on top"), "{notes}");
    assert_eq!(
        describe(json!([{"kind": "water", "g": 1}]))["liquid"]["acid_ph"],
        Value::Null
    );
}

#[test]
fn a_wrong_figure_is_refused_at_its_field() {
    let world = World::new();
    let cases = [
        (
            json!({"kind": "spirit", "strength_percent_vol": 200, "ml": 1}),
            "strength_percent_vol",
            "between 0 and 100 % vol. You entered 200",
        ),
        (
            json!({"kind": "spirit", "ml": 1}),
            "strength_percent_vol",
            "missing",
        ),
        (
            json!({"kind": "water", "ml": 1, "strength_percent_vol": 4}),
            "strength_percent_vol",
            "Water: the strength does not belong to it",
        ),
        (json!({"kind": "water", "ml": 1, "g": 1}), "ml", "either"),
        (json!({"kind": "water"}), "ml", "either"),
        (json!({"kind": "water", "ml": -1}), "ml", "You entered -1"),
        (
            json!({"kind": "water", "g": 1e308}),
            "g",
            "You entered 1e308",
        ),
        (
            json!({"kind": "honey", "g": 1, "water_percent_mass": 60}),
            "water_percent_mass",
            "You entered 60",
        ),
        (
            json!({"kind": "vinegar", "acidity_g_per_100ml": 90, "ml": 1}),
            "acidity_g_per_100ml",
            "You entered 90",
        ),
        (
            json!({"kind": "wine", "strength_percent_vol": 40, "sugar_g_per_l": 1, "ml": 1}),
            "strength_percent_vol",
            "You entered 40",
        ),
        (
            json!({"kind": "wine", "strength_percent_vol": 12, "sugar_g_per_l": 900, "ml": 1}),
            "sugar_g_per_l",
            "You entered 900",
        ),
        (
            json!({"kind": "oil", "oil": "motor", "ml": 1}),
            "oil",
            "Choose one of these: olive",
        ),
        (json!({"kind": "oil", "ml": 1}), "oil", "which oil"),
        (
            json!({"kind": "water", "ml": "NaN"}),
            "ml",
            "must be a number",
        ),
        (
            json!({"kind": "gin", "ml": 1}),
            "kind",
            "It may be water, spirit",
        ),
        (
            json!({"kind": "water", "ml": 1, "colour": "blue"}),
            "colour",
            "does not take “colour”",
        ),
    ];
    for (pour, field, says) in cases {
        world
            .refused(
                "mixture.describe",
                json!({"pours": [{"kind": "water", "ml": 5}, pour]}),
            )
            .of("invalid", &format!("pours[1].{field}"))
            .says(says);
    }
}

#[test]
fn a_wrong_plant_or_temperature_is_refused_at_its_field() {
    let world = World::new();
    let water = json!([{"kind": "water", "ml": 5}]);
    let plant = |plant: Value| json!({"pours": water, "plants": [plant]});
    let wet = "plants[0].moisture_wet_percent";
    world
        .refused(
            "mixture.describe",
            plant(json!({"mass_g": -5, "moisture_wet_percent": 80})),
        )
        .of("invalid", "plants[0].mass_g");
    world
        .refused(
            "mixture.describe",
            plant(json!({"mass_g": 5, "moisture_wet_percent": 100})),
        )
        .of("invalid", wet);
    world
        .refused(
            "mixture.describe",
            plant(json!({"mass_g": 5, "moisture_wet_percent": "wet"})),
        )
        .of("invalid", wet);
    let upside_down = json!({"low": 90, "value": 80, "high": 85});
    world
        .refused(
            "mixture.describe",
            plant(json!({"mass_g": 5, "moisture_wet_percent": upside_down})),
        )
        .of("invalid", wet);
    world
        .refused(
            "mixture.describe",
            json!({"pours": water, "temperature_c": 300}),
        )
        .of("invalid", "temperature_c");
    world
        .refused("mixture.describe", json!({"pours": []}))
        .of("invalid", "pours");
}

#[test]
fn a_target_is_reached_from_the_shelf() {
    let world = World::new();
    let stock = json!([{"kind": "spirit", "strength_percent_vol": 96}, {"kind": "water"}]);
    let request = json!({"stock": stock, "plants": [], "targets": {"strength_percent_vol": 40, "volume_ml": 1000}});
    let reply = world.call("mixture.reach", request);
    assert_eq!(reply["reached"], true);
    let reached = number(&reply, "/liquid/strength_percent_vol/value");
    assert!((reached - 40.0).abs() < 1e-6, "{reached} % vol");

    let request = json!({"stock": stock, "plants": [{"mass_g": 500, "moisture_wet_percent": 85}],
        "targets": {"strength_percent_vol": 90, "poured_ml": 500}});
    let reply = world.call("mixture.reach", request);
    assert_eq!(
        reply["reached"], false,
        "no spirit is strong enough for so wet a plant"
    );
    assert_eq!(text(&reply, "/short_of/0/target"), "strength_percent_vol");
}

#[test]
fn a_wrong_target_is_refused_at_its_field() {
    let world = World::new();
    let stock = json!([{"kind": "water"}]);
    let ask = |targets: Value| json!({"stock": stock, "targets": targets});
    world
        .refused("mixture.reach", ask(json!({"strength_percent_vol": 101})))
        .of("invalid", "targets.strength_percent_vol");
    world
        .refused("mixture.reach", ask(json!({"flavour": 1})))
        .of("invalid", "targets.flavour");
    world
        .refused("mixture.reach", json!({"stock": [], "targets": {}}))
        .of("invalid", "stock");
    let short = json!([{"kind": "water", "available_ml": 10, "exactly_ml": 20}]);
    world
        .refused("mixture.reach", json!({"stock": short, "targets": {}}))
        .of("invalid", "stock[0].exactly_ml")
        .says("only 10 mL");
    let wet = json!([{"mass_g": 5, "moisture_wet_percent": 80}]);
    world
        .refused(
            "mixture.reach",
            json!({"stock": stock, "plants": wet, "targets": {}}),
        )
        .of("invalid", "targets");
}
