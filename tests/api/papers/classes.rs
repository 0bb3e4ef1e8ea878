//! `recipe.class`, `recipe.class_cards`, `recipe.class_labels`: a class of twelve, by figures worked out by hand.

use serde_json::{Value, json};

use super::{bytes, kept};
use crate::readers::{codes_in, pictures_of, text_of};
use crate::world::{World, number};

/// The chamomile tincture of the demo season, taken into an empty book by its card.
fn chamomile() -> (World, Value) {
    let season = World::new();
    season.call("demo.begin", json!({}));
    let recipe = season.call("recipe.list", json!({}))["recipes"][0].clone();
    assert_eq!(recipe["name"], "Chamomile, half strength");
    let card = json!({"recipe": recipe["id"], "size": "a6", "note": false});
    let link = season.call("recipe.card", card)["code"]["link"].clone();
    let world = World::new();
    let kept = world.call("recipe.take_in", json!({"text": link}));
    (world, kept["recipe"]["id"].clone())
}

fn class(world: &World, recipe: &Value, people: u32, jar_ml: f64) -> Value {
    let asked = json!({"recipe": recipe, "people": people, "jar_ml": jar_ml});
    world.call("recipe.class", asked)
}

#[test]
fn a_class_of_twelve_is_what_one_works_out_by_hand() {
    let (world, recipe) = chamomile();
    world.call(
        "supply.add",
        json!({"name": "Spirit", "size_ml": 700, "item": {"kind": "spirit", "strength_percent_vol": 96}}),
    );
    let class = class(&world, &recipe, 12, 250.0);
    // A jar of 250 mL holds 39 g in whole grams: the liquid, 0.9 mL for each gram of dry matter, and a tenth of air.
    // 39 g at 5 mL to a gram are 195 mL, twelve times 2,340; 40 g would need a jar of 256 mL.
    assert_eq!(number(&class, "/herbs/0/each_g"), 39.0);
    assert_eq!(number(&class, "/herbs/0/needed_g"), 468.0);
    assert!(number(&class, "/each/jar/needed_ml/value") <= 250.0);
    let total = |pointer: &str| {
        let lines = class["liquids"].as_array().unwrap().iter();
        lines.map(|line| number(line, pointer)).sum::<f64>()
    };
    assert!((total("/needed_ml") - 2340.0).abs() < 0.01);
    // x mL of spirit of 96 % vol (0.8074 g a mL) and 195 - x of water (0.9982), with the 3.9 g of water that 39 g dried
    // at 10 % bring, make a liquid of 50 % vol (0.9301): 0.8074 x + 0.9982 (195 - x) + 3.9 = 0.9301 * 96 x / 50.
    // So x = 198.549 / 1.97659 = 100.45, twelve times 1,205.4 (densities: OIML R 22, 1975).
    let spirit = class["liquids"].as_array().unwrap().iter();
    let spirit = spirit
        .clone()
        .find(|line| line["kind"] == "spirit")
        .unwrap();
    assert!(
        (number(spirit, "/needed_ml") - 1205.4).abs() < 0.5,
        "{spirit}"
    );
    assert_eq!(number(spirit, "/on_the_shelf_ml"), 700.0);
    assert!((number(spirit, "/buy_ml") - 505.4).abs() < 0.5, "{spirit}");
    // Nothing is there, so all is picked: of the fresh flower exp(-1.7737) = 0.1697 is dry, a gram dried to 10 % takes
    // 0.9 / 0.1697 g, and a tenth is lost in trimming: 468 * 0.9 / 0.1697 / 0.9 = 2,758 g.
    assert_eq!(number(&class, "/herbs/0/lacking_g"), 468.0);
    let pick = number(&class, "/herbs/0/pick_fresh_g/value");
    assert!((pick - 2758.0).abs() < 2.0, "{pick}");
}

#[test]
fn a_class_takes_what_there_is_before_more_is_picked() {
    let season = World::new();
    season.call("demo.begin", json!({}));
    let recipe = season.call("recipe.list", json!({}))["recipes"][0]["id"].clone();
    let herb = class(&season, &recipe, 12, 250.0)["herbs"][0].clone();
    let taken: f64 = (herb["take"].as_array().unwrap().iter())
        .map(|lot| number(lot, "/take_g"))
        .sum();
    // 25 and 51 g dried are left of the chamomile, both of one terrace.
    assert_eq!((taken, number(&herb, "/lacking_g")), (76.0, 392.0));
    assert_eq!(herb["take"][0]["bed"], "South terrace");
    assert_eq!(herb["beds"], json!(["South terrace"]));
    // One person with a small jar needs 19 g, and nothing is picked for it.
    let one = class(&season, &recipe, 1, 125.0)["herbs"][0].clone();
    assert_eq!(
        (number(&one, "/needed_g"), number(&one, "/lacking_g")),
        (19.0, 0.0)
    );
    assert_eq!(one["pick_fresh_g"], Value::Null);
}

#[test]
fn each_of_twelve_has_a_card_and_a_label() {
    let (world, recipe) = chamomile();
    let folder = kept("class");
    let asked = json!({"recipe": recipe, "people": 12, "jar_ml": 250, "size": "a5", "note": false});
    let cards = bytes(&world.call("recipe.class_cards", asked));
    let words = text_of(&folder, "cards", &cards);
    assert_eq!(words.matches("Chamomile, half strength").count(), 12);
    assert_eq!(
        words.matches("39 g German chamomile flower, dried").count(),
        12,
        "{words}"
    );
    assert_eq!(
        words.matches("100 mL spirit of 96 % vol").count(),
        12,
        "{words}"
    );
    let codes = codes_in(&pictures_of(&folder, "cards", &cards)[11]);
    let read = World::new().call("recipe.read_code", json!({"text": codes[0]}));
    // The code holds the jar of the class, not that of the book.
    assert_eq!(number(&read, "/proposal/plants/0/mass_g"), 39.0);

    let asked = json!({"recipe": recipe, "people": 12, "jar_ml": 250, "paper": "a4"});
    let labels = bytes(&world.call("recipe.class_labels", asked));
    let words = text_of(&folder, "labels", &labels);
    for number in 1..=12 {
        assert!(
            words.contains(&format!("{number} of 12")),
            "{number}: {words}"
        );
    }
    for said in [
        "Name:",
        "Poured on:",
        "Strain it after 10 to 28 days.",
        "Contains alcohol",
        "daisy family",
    ] {
        assert_eq!(words.matches(said).count(), 12, "{said}: {words}");
    }
    let codes: Vec<String> = (pictures_of(&folder, "labels", &labels).iter())
        .flat_map(|page| codes_in(page))
        .collect();
    assert_eq!(codes.len(), 12, "each label bears the recipe");
    assert!(codes.iter().all(|code| code == &codes[0]));
}

#[test]
fn a_class_that_cannot_be_is_refused_at_its_field() {
    let (world, recipe) = chamomile();
    for (people, jar_ml, field) in [
        (0, 250.0, "people"),
        (61, 250.0, "people"),
        (12, 5.0, "jar_ml"),
        (12, 1e9, "jar_ml"),
    ] {
        let asked = json!({"recipe": recipe, "people": people, "jar_ml": jar_ml});
        world
            .refused("recipe.class", asked.clone())
            .of("invalid", field);
        let mut printed = asked;
        printed["paper"] = json!("a4");
        world
            .refused("recipe.class_labels", printed)
            .of("invalid", field);
    }
    world
        .refused("recipe.class", json!({"people": 12, "jar_ml": 250}))
        .of("invalid", "recipe");
}
