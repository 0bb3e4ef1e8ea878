//! Figures that no bottle, no scale and no jar has, refused in words at their field by every command
//! that takes them.

use serde_json::{Value, json};

use crate::world::World;

fn jar(change: impl Fn(&mut Value)) -> Value {
    let mut request = json!({
        "preparation": "tincture",
        "plants": [{"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 100}],
        "stock": [{"kind": "spirit", "strength_percent_vol": 60}, {"kind": "water"}],
    });
    change(&mut request);
    request
}

fn liquid(pour: Value) -> Value {
    json!({"pours": [pour], "plants": [], "temperature_c": 20})
}

#[test]
fn spirit_of_200_percent() {
    let world = World::new();
    world
        .refused(
            "mixture.describe",
            liquid(json!({"kind": "spirit", "ml": 100, "strength_percent_vol": 200})),
        )
        .of("invalid", "pours[0].strength_percent_vol")
        .says("200");
    world
        .refused(
            "jar.compose",
            jar(|jar| jar["stock"][0]["strength_percent_vol"] = json!(200)),
        )
        .of("invalid", "stock[0].strength_percent_vol")
        .says("200");
    let supply = json!({"name": "Rocket", "size_ml": 700,
        "item": {"kind": "spirit", "strength_percent_vol": 200}});
    world
        .refused("supply.add", supply)
        .of("invalid", "item.strength_percent_vol");
    let advice = json!({"herb": "sage", "part": "leaf", "state": "fresh", "mass_g": 100,
        "purpose": "inside", "stock": [{"kind": "spirit", "strength_percent_vol": 200}]});
    world
        .refused("jar.advise", advice)
        .of("invalid", "stock[0].strength_percent_vol");
}

#[test]
fn negative_grams() {
    let world = World::new();
    world
        .refused(
            "mixture.describe",
            liquid(json!({"kind": "water", "g": -5})),
        )
        .of("invalid", "pours[0].g")
        .says("-5");
    world
        .refused(
            "jar.compose",
            jar(|jar| jar["plants"][0]["mass_g"] = json!(-5)),
        )
        .of("invalid", "plants[0].mass_g")
        .says("-5");
    let picked = json!({"herb": "peppermint", "part": "leaf", "gross_g": -5, "surface": "dry"});
    world
        .refused("harvest.record", picked)
        .of("invalid", "gross_g");
    let advice = json!({"herb": "sage", "part": "leaf", "state": "fresh", "mass_g": -5,
        "purpose": "inside"});
    world.refused("jar.advise", advice).of("invalid", "mass_g");
}

#[test]
fn the_weight_of_another_herb_in_the_jar_is_refused_at_that_herb() {
    let also = json!([{"herb": "thyme", "part": "flowering tops", "state": "fresh", "mass_g": -5}]);
    let advice = json!({"herb": "sage", "part": "leaf", "state": "fresh", "mass_g": 100,
        "purpose": "inside", "also": also});
    World::new()
        .refused("jar.advise", advice)
        .of("invalid", "also[0].mass_g");
}

#[test]
fn glycerin_of_140_percent() {
    let world = World::new();
    world
        .refused(
            "mixture.describe",
            liquid(json!({"kind": "glycerin", "ml": 100, "purity_percent_mass": 140})),
        )
        .of("invalid", "pours[0].purity_percent_mass")
        .says("140");
    world
        .refused(
            "jar.compose",
            jar(|jar| {
                jar["preparation"] = json!("glycerite");
                jar["glycerin_percent_vol"] = json!(140);
            }),
        )
        .of("invalid", "glycerin_percent_vol")
        .says("between 0 and 100");
}

#[test]
fn vinegar_of_3_percent() {
    let world = World::new();
    world
        .refused(
            "jar.compose",
            jar(|jar| {
                jar["preparation"] = json!("vinegar");
                jar["stock"] = json!([{"kind": "vinegar", "acidity_g_per_100ml": 3}]);
            }),
        )
        .of("invalid", "stock")
        .says("5 to 30 g");
    // The adviser goes on, but will not have it made.
    let advice = world.call(
        "jar.advise",
        json!({"herb": "sage", "part": "leaf", "state": "dried", "mass_g": 50, "purpose": "food",
            "stock": [{"kind": "vinegar", "acidity_g_per_100ml": 3}]}),
    );
    let candidates = advice["candidates"].as_array().unwrap();
    let vinegar = candidates
        .iter()
        .find(|one| one["preparation"] == "vinegar")
        .unwrap();
    assert_eq!(vinegar["verdict"], "do not make");
}

#[test]
fn a_jar_smaller_than_its_herb() {
    World::new()
        .refused("jar.compose", jar(|jar| jar["jar_ml"] = json!(50)))
        .of("invalid", "jar_ml");
}

#[test]
fn a_ratio_of_zero() {
    World::new()
        .refused("jar.compose", jar(|jar| jar["ratio_ml_per_g"] = json!(0)))
        .of("invalid", "ratio_ml_per_g")
        .says("between 0.5 and 50");
}

#[test]
fn no_number_and_numbers_beyond_all_sense() {
    let world = World::new();
    for field in [
        "ratio_ml_per_g",
        "jar_ml",
        "strength_percent_vol",
        "temperature_c",
    ] {
        let with = |value: &str| {
            let text = jar(|jar| jar[field] = json!("HERE")).to_string();
            text.replace("\"HERE\"", value)
        };
        world
            .refused_text("jar.compose", &with("1e308"))
            .of("invalid", field);
        world
            .refused_text("jar.compose", &with("1e999"))
            .of("invalid", field);
        world
            .refused_text("jar.compose", &with("NaN"))
            .of("invalid", field);
    }
    for amount in ["g", "ml"] {
        world
            .refused(
                "mixture.describe",
                liquid(json!({"kind": "water", amount: 1e308})),
            )
            .of("invalid", &format!("pours[0].{amount}"));
    }
}
