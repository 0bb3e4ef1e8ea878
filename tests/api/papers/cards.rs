//! `recipe.card`, `recipe.hand_out`, `recipe.read_code`, `recipe.take_in`: a recipe from one book to another.

use api::Language;
use checks::sage;
use serde_json::{Value, json};

use super::{bytes, kept};
use crate::readers::{codes_in, pictures_at, text_of, turned_and_blurred};
use crate::world::{Refused, World, number, text};

/// What a code of ours holds, as a stranger may write it.
fn code(recipe: &Value) -> String {
    paper::packed::link_of(&recipe.to_string()).unwrap()
}

/// The same as another program writes it, with its own way of packing; it stands in `tests/e2e/asked.mjs` too.
const FIRST_VERSION: &str = "trugbook:recipe/1/N2LOL4CFRQYQVABQBRC26IUZUPKKDA7HOAWBTCUNCIUFKYWF5MNUVQJFEHX737AANM6HRWCPDVPCTFIVCCVJJLJ6ZJRVFYIEDABNYFRSSM465NR2T6OZWHCR6OL2QVELF3PBBFRHM7R7BRWWDA5CCNEL327NV7IP7IAA";

#[test]
fn a_code_of_the_first_version_is_read_whoever_packed_it() {
    let world = World::new();
    let ours = world.call("recipe.read_code", json!({"text": code(&sage())}));
    let theirs = world.call("recipe.read_code", json!({"text": FIRST_VERSION}));
    assert_eq!(theirs["name"], "Sage for winter");
    assert_eq!(theirs, ours);
}

fn changed(at: usize, value: Value) -> String {
    let mut recipe = sage();
    recipe[at] = value;
    code(&recipe)
}

fn deeds(world: &World) -> usize {
    let deeds = world.call("deed.list", json!({}));
    deeds["deeds"].as_array().unwrap().len()
}

/// Refused when it is read and when it is to be kept, in the same words, with nothing written.
#[track_caller]
fn refused(world: &World, text: &str) -> Refused {
    let before = deeds(world);
    let read = world.refused("recipe.read_code", json!({"text": text}));
    let kept = world.refused("recipe.take_in", json!({"text": text}));
    assert_eq!(read.message, kept.message);
    assert_eq!(deeds(world), before, "nothing was written");
    let recipes = world.call("recipe.list", json!({}));
    assert_eq!(recipes["recipes"], json!([]));
    read
}

#[test]
fn a_hostile_code_is_refused_in_words_and_nothing_is_written() {
    let world = World::new();
    for (text, says) in [
        (String::new(), "holds no recipe"),
        ("tavo-472".to_owned(), "holds no recipe"),
        (code(&sage()).replace("/1/", "/2/"), "newer version"),
        (code(&sage()).replace("/1/", "/1/A"), "missing or wrong"),
        (
            format!("trugbook:recipe/1/{}", "A".repeat(5000)),
            "too long",
        ),
        (code(&json!({"name": "Sage"})), "missing or wrong"),
        (code(&json!(["Sage"])), "missing or wrong"),
        (changed(0, json!("")), "name"),
        (changed(0, json!("x".repeat(121))), "121"),
        (changed(0, json!("Sage\nStop: none")), "one line"),
        (changed(0, json!("Sage \u{202e}egaS")), "do not show"),
        (
            changed(0, json!("\u{fdd0}{\"id\":\"stopped\"}\u{fdd1}")),
            "do not show",
        ),
        (changed(0, json!("Sage\u{0}")), "do not show"),
        (changed(8, json!("Take \u{feff} it")), "do not show"),
        (changed(8, json!("x".repeat(201))), "missing or wrong"),
        (changed(1, json!("tincture")), "does not know"),
        (
            changed(2, json!([["sage", "heart", "dried", 100.0]])),
            "part of sage",
        ),
        (
            changed(2, json!([["zaubertrank", "leaf", "dried", 1.0]])),
            "zaubertrank",
        ),
        (
            changed(2, json!([["sage", "leaf", "dried", -5.0]])),
            "weight",
        ),
        (
            changed(2, json!([["sage", "leaf", "dried", 1e300]])),
            "weight",
        ),
        (
            changed(2, json!([["sage", "leaf", "burnt", 5.0]])),
            "missing or wrong",
        ),
        (
            changed(2, json!(vec![json!(["sage", "leaf", "dried", 5.0]); 13])),
            "12",
        ),
        (
            changed(3, json!([["spirit", [], null]])),
            "missing or wrong",
        ),
        (
            changed(3, json!([["spirit", [95.0, 3.0], null]])),
            "missing or wrong",
        ),
        (changed(3, json!([["spirit", [950.0], null]])), "100"),
        (changed(3, json!([["oil", [], "dragon"]])), "dragon"),
        (changed(4, json!(1e9)), "50"),
        (changed(4, json!(-1)), "0.5"),
        (changed(5, json!(180)), "96.5"),
    ] {
        refused(&world, &text).of("invalid", "text").says(says);
    }
}

#[test]
fn a_poisonous_plant_on_a_card_stops() {
    let world = World::new();
    for herb in ["foxglove", "monkshood", "Convallaria majalis", "Fingerhut"] {
        let text = changed(2, json!([[herb, "leaf", "dried", 10.0]]));
        let refused = refused(&world, &text).of("invalid", "text");
        assert!(
            !refused
                .message
                .contains("a herb that Trugbook does not know"),
            "{refused:?}"
        );
    }
}

#[test]
fn what_must_not_be_made_is_shown_with_its_stop_and_never_kept() {
    let world = World::new();
    let raw = json!([
        "Raw elderberries",
        "cordial",
        [["elder-berry", "berry", "fresh", 20.0]],
        [["spirit", [40.0], null]],
        null,
        null,
        null,
        null,
        null
    ]);
    let read = world.call("recipe.read_code", json!({"text": code(&raw)}));
    assert_eq!(read["proposal"]["keeping"]["verdict"], "do not make");
    assert_eq!(read["may_be_kept"], false);
    world
        .refused("recipe.take_in", json!({"text": code(&raw)}))
        .of("invalid", "text")
        .says("should not be made");
    assert_eq!(world.call("recipe.list", json!({}))["recipes"], json!([]));
}

#[test]
fn a_recipe_is_worked_out_with_the_liquids_on_the_readers_shelf() {
    let world = World::new();
    let text = code(&sage());
    let theirs = world.call("recipe.read_code", json!({"text": text}));
    assert_eq!(theirs["proposal"]["pours"][0]["name"], "spirit of 95 % vol");
    world.call(
        "supply.add",
        json!({"name": "Neighbour's", "size_ml": 700, "item": {"kind": "spirit", "strength_percent_vol": 80}}),
    );
    let own = world.call("recipe.read_code", json!({"text": text}));
    assert_eq!(own["proposal"]["pours"][0]["name"], "spirit of 80 % vol");
    assert!((number(&own, "/proposal/liquid/strength_percent_vol/value") - 50.0).abs() < 0.1);
    assert!(number(&own, "/proposal/pours/0/ml") > number(&theirs, "/proposal/pours/0/ml"));
    assert!(!own["proposal"]["cautions"].as_array().unwrap().is_empty());
    // What is kept is the recipe of the card, not what this shelf makes of it.
    let kept = world.call("recipe.take_in", json!({"text": text}))["recipe"].clone();
    assert_eq!(kept["stock"][0]["strength_percent_vol"], 95.0);
    assert_eq!(kept["jar"], Value::Null);
    let again = world.call("recipe.read_code", json!({"text": text}));
    assert_eq!(again["kept_as"], kept["id"]);
    world
        .refused("recipe.take_in", json!({"text": text}))
        .of("invalid", "text")
        .says("already");
}

#[test]
fn a_shelf_that_cannot_make_it_says_why() {
    let world = World::new();
    let vinegar = json!([
        "Thyme vinegar",
        "vinegar",
        [["thyme", "flowering tops", "dried", 20.0]],
        [["vinegar", [6.0], null]],
        10.0,
        null,
        null,
        null,
        null
    ]);
    world.call(
        "supply.add",
        json!({"name": "Mild", "size_ml": 500, "item": {"kind": "vinegar", "acidity_g_per_100ml": 4}}),
    );
    let read = world.call("recipe.read_code", json!({"text": code(&vinegar)}));
    assert!(
        text(&read, "/own_liquids_fail").contains("vinegar"),
        "{read}"
    );
    assert_eq!(read["may_be_kept"], true);
    assert!(text(&read, "/proposal/pours/0/name").contains('6'));
}

/// A recipe without its row, its jar and the maker's stars, which stay at home.
fn bare(recipe: &Value) -> Value {
    let mut recipe = recipe.clone();
    for field in ["id", "jar", "stars", "note"] {
        recipe[field] = Value::Null;
    }
    recipe
}

/// Every recipe of the demo season, kept or as a jar was poured; with what its card is asked by.
fn demo() -> (World, Vec<(Value, Value)>) {
    let world = World::new();
    world.call("demo.begin", json!({}));
    let jars = world.call("jar.list", json!({"limit": 100}))["jars"].clone();
    for jar in jars.as_array().unwrap() {
        let show = world.call("jar.show", json!({"id": jar["id"]}))["jar"].clone();
        if show["recipe"].is_null() && show["marc_of"].is_null() && show["state"] != "failed" {
            let keep = json!({"jar": jar["id"], "name": jar["name"], "note": "Strain it twice."});
            world.call("jar.keep_recipe", keep);
        }
    }
    let recipes = world.call("recipe.list", json!({}))["recipes"].clone();
    let recipes = recipes.as_array().unwrap().iter();
    let asked = |recipe: &Value| {
        (
            recipe.clone(),
            json!({"recipe": recipe["id"], "note": false}),
        )
    };
    let recipes = recipes.map(asked).collect();
    (world, recipes)
}

fn sized(asked: &Value, size: &str) -> Value {
    let mut asked = asked.clone();
    asked["size"] = json!(size);
    asked
}

#[test]
fn every_recipe_of_the_demo_season_goes_to_another_book_in_a_code_that_a_phone_reads() {
    let (world, recipes) = demo();
    let other = World::new();
    let mut largest = 0;
    let mut carried = 0;
    for (recipe, asked) in &recipes {
        let card = world.call("recipe.card", sized(asked, "a6"));
        let Some(link) = card["code"]["link"].as_str() else {
            assert!(!card["remarks"].as_array().unwrap().is_empty(), "{card}");
            continue;
        };
        let version = paper::packed::version_of(link).unwrap();
        println!(
            "{}: {} characters, version {version}",
            recipe["name"],
            link.len()
        );
        largest = largest.max(version);
        let kept = other.call("recipe.take_in", json!({"text": link}))["recipe"].clone();
        assert_eq!(bare(&kept), bare(recipe));
        carried += 1;
    }
    assert!(carried >= 10, "{carried} of {}", recipes.len());
    assert!(largest <= 12, "version {largest}");
}

#[test]
fn a_turned_and_blurred_card_is_read_and_taken_in_by_another_book() {
    let (world, recipes) = demo();
    let folder = kept("card");
    for size in ["a6", "a5", "half_letter"] {
        for (at, (recipe, asked)) in recipes.iter().enumerate().step_by(4) {
            let file = world.call("recipe.hand_out", sized(asked, size));
            let name = format!("{size}-{at}");
            let pages = pictures_at(150, &folder, &name, &bytes(&file));
            let codes = codes_in(&turned_and_blurred(&pages[0], 5.0, 1.0));
            let other = World::new();
            let kept = other.call("recipe.take_in", json!({"text": codes[0]}));
            assert_eq!(bare(&kept["recipe"]), bare(recipe), "{name}");
            let written = other.call(
                "recipe.card",
                json!({"recipe": kept["recipe"]["id"],
                "size": size, "note": false}),
            );
            assert_eq!(
                written["code"]["link"], codes[0],
                "and it goes on as it came"
            );
        }
    }
}

#[test]
fn a_card_says_amounts_steps_and_cautions_in_both_languages_and_both_units() {
    let world = World::new();
    let folder = kept("card-text");
    let kept = world.call("recipe.take_in", json!({"text": code(&sage())}));
    let asked = json!({"recipe": kept["recipe"]["id"], "note": false, "size": "a5"}).to_string();
    let printed = |language: Language, units: &str| {
        world.call("setting.change", json!({"units": units}));
        let file = api::call_in(world.app(), language, "recipe.hand_out", &asked).unwrap();
        let name = format!("{}-{units}", language.tag());
        text_of(
            &folder,
            &name,
            &bytes(&serde_json::from_str(&file).unwrap()),
        )
    };
    // 100 g are 3.53 oz, by 28.35 g to the ounce; a kitchen scale shows a tenth.
    for (language, units, says) in [
        (
            Language::English,
            "metric",
            [
                "100 g",
                "Sage leaf, dried",
                "10 to 28 days",
                "Take care",
                "gives no dose",
            ],
        ),
        (
            Language::English,
            "us",
            [
                "3.5 oz",
                "fl oz",
                "spirit of 95 % vol",
                "Steps",
                "How to keep it",
            ],
        ),
        (
            Language::German,
            "metric",
            [
                "100 g",
                "Salbei",
                "getrocknet",
                "10 bis 28 Tage",
                "keine Dosis",
            ],
        ),
        (
            Language::German,
            "us",
            [
                "3,5 oz",
                "fl oz",
                "95 % vol",
                "Schritt für Schritt",
                "Vorsicht",
            ],
        ),
    ] {
        let words = printed(language, units);
        for part in says
            .iter()
            .chain(&["Sage for winter", "Salvia officinalis"])
        {
            assert!(words.contains(part), "{part:?} is not in {words}");
        }
        let is_metric = words.contains(" mL");
        assert_eq!(is_metric, units == "metric", "{words}");
    }
}

#[test]
fn a_maker_s_note_stays_at_home_unless_it_is_sent_along() {
    let world = World::new();
    let id = world.call("recipe.take_in", json!({"text": code(&sage())}))["recipe"]["id"].clone();
    world.call(
        "recipe.correct",
        json!({"id": id, "note": "Only for my sister."}),
    );
    let card = |note: bool| {
        world.call(
            "recipe.card",
            json!({"recipe": id, "size": "a5", "note": note}),
        )
    };
    let note = |card: &Value| {
        let link = text_of_code(card);
        let read = World::new().call("recipe.read_code", json!({"text": link}));
        read["note"].clone()
    };
    let (without, with) = (card(false), card(true));
    assert_eq!(without["has_note"], true);
    assert_eq!(note(&without), Value::Null);
    assert!(!text(&without, "/sides/0").contains("sister"));
    assert_eq!(note(&with), "Only for my sister.");
    assert!(text(&with, "/sides/0").contains("sister"));
    world.call(
        "recipe.correct",
        json!({"id": id, "note": "long ".repeat(50)}),
    );
    let long = card(true);
    assert_eq!(note(&long), Value::Null);
    assert!(
        text(&long, "/remarks/0").contains("200 characters"),
        "{long}"
    );
}

fn text_of_code(card: &Value) -> String {
    text(card, "/code/link").to_owned()
}

#[test]
fn a_recipe_of_an_own_herb_has_a_card_without_a_code() {
    let world = World::new();
    let herb = world.call(
        "herb.add",
        json!({"common": "Mountain tea of ours", "latin": null, "parts": ["leaf"], "note": null}),
    )["herb"]["key"]
        .clone();
    let composition = json!({"preparation": "tincture-dried", "plants": [{"herb": herb, "part": "leaf",
        "state": "dried", "mass_g": 50}], "ratio_ml_per_g": 5, "strength_percent_vol": 50,
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}]});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    let card = world.call(
        "recipe.card",
        json!({"jar": jar["id"], "size": "a6", "note": false}),
    );
    assert_eq!(card["code"], Value::Null);
    assert!(text(&card, "/remarks/0").contains("added yourself"));
    let words = text_of(
        &kept("card"),
        "own",
        &bytes(&world.call(
            "recipe.hand_out",
            json!({"jar": jar["id"], "size": "a6", "note": false}),
        )),
    );
    assert!(words.contains("Mountain tea of ours"), "{words}");
}
