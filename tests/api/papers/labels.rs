//! `label.*` and `lot.find`.

use serde_json::{Value, json};

use super::{Pantry, bytes, kept};
use crate::readers::{codes_in, pictures_of, text_of};
use crate::world::{World, number, text};

const SIZE: [f64; 2] = [90.0, 55.0];

fn request(more: Value) -> Value {
    let mut request = json!({"paper": "a4", "gift": false, "ethanol": false,
        "label": {"width_mm": SIZE[0], "height_mm": SIZE[1]}});
    for (name, value) in more.as_object().unwrap() {
        request[name] = value.clone();
    }
    request
}

fn single(more: Value) -> Value {
    let mut request = request(more);
    request.as_object_mut().unwrap().remove("paper");
    request
}

#[test]
fn a_sheet_of_bottles_reads_back_with_every_lot_in_its_code() {
    let pantry = Pantry::begin();
    let file = pantry.world.call(
        "label.sheet",
        request(json!({"bottles": pantry.ids(), "jars": [pantry.jar["id"]], "skip": 1})),
    );
    assert_eq!(file["media_type"], "application/pdf");
    assert_eq!(file["file_name"], "labels-2026-08-14.pdf");
    let folder = kept("sheet");
    let pdf = bytes(&file);
    let words = text_of(&folder, "sheet", &pdf);
    for said in [
        "Valeriana officinalis",
        "fresh root",
        "Melissa officinalis",
        "1 g to 2 mL poured on",
        "strained and bottled 14 Aug 2026",
        "Best before",
        "Contains alcohol",
        "Long bed",
        "Cloudy",
    ] {
        assert!(words.contains(said), "{said:?} is not in {words}");
    }
    let pages = pictures_of(&folder, "sheet", &pdf);
    assert_eq!(
        pages.len(),
        1,
        "four labels after one used place fit on a page"
    );
    let codes = codes_in(&pages[0]);
    let lots = pantry.bottles.iter().chain([&pantry.jar]);
    let mut expected: Vec<String> = lots
        .map(|it| paper::link::of(text(it, "/code"), text(it, "/name")))
        .collect();
    expected.sort();
    assert_eq!(codes, expected);
    for code in codes {
        let found = pantry.world.call("lot.find", json!({"text": code}));
        let noun = text(&found, "/noun");
        assert!(["bottle", "jar"].contains(&noun), "{found}");
    }
}

#[test]
fn a_jar_says_what_was_poured_and_a_bottle_what_came_of_it() {
    let pantry = Pantry::begin();
    let folder = kept("strengths");
    let words = |request: Value, name: &str| {
        let file = pantry.world.call("label.sheet", request);
        text_of(&folder, name, &bytes(&file))
    };
    let jar = words(
        request(json!({"jars": [pantry.tincture["id"]], "paper": "label"})),
        "jar",
    );
    let bottle = words(
        request(json!({"bottles": [pantry.ids()[0]], "paper": "label"})),
        "bottle",
    );
    // 200 g of root with about two thirds of water join the 400 mL that were poured.
    let (from, to) = (
        jar.find("Poured at").unwrap(),
        bottle.find("In the bottle").unwrap(),
    );
    let percent = |text: &str| {
        let number = text
            .split_whitespace()
            .find_map(|word| word.parse::<f64>().ok());
        number.unwrap_or_else(|| panic!("{text}"))
    };
    let (poured, left) = (percent(&jar[from..]), percent(&bottle[to..]));
    let shown = pantry
        .world
        .call("bottle.show", json!({"id": pantry.ids()[0]}));
    let predicted = number(&shown, "/bottle/strength_percent_vol/value");
    assert!(
        (left - predicted).abs() < 0.5,
        "{left} and {predicted}: rounded to whole per cent"
    );
    assert!(poured > left + 5.0, "poured {poured}, in the bottle {left}");
    assert!(jar.contains("Due") && !jar.contains("Best before"), "{jar}");
}

#[test]
fn a_gift_keeps_private_notes_and_wild_places_to_the_book() {
    let pantry = Pantry::begin();
    let world = &pantry.world;
    world.call(
        "setting.change",
        json!({"maker": "The kitchen at the north wall", "poison_line": "555 0100"}),
    );
    let asked = json!({"bottles": [pantry.ids()[0]], "gift": true, "ethanol": true,
        "label": {"width_mm": 100, "height_mm": 80}});
    let file = world.call("label.sheet", request(asked));
    let words = text_of(&kept("gift"), "gift", &bytes(&file));
    for said in [
        "Maker: The kitchen at the north wall",
        "555 0100",
        "Contents: 100 mL",
        "Ingredients:",
        "valerian root",
        "Alcohol in the whole bottle",
    ] {
        assert!(words.contains(said), "{said:?} is not in {words}");
    }
    assert!(
        !words.contains("Cloudy") && !words.contains("other eyes"),
        "{words}"
    );
    assert_eq!(
        file["remarks"],
        json!([]),
        "nothing is missing and nothing was left out"
    );

    let jar = world.call("label.sheet", request(json!({"jars": [pantry.jar["id"]]})));
    let words = text_of(&kept("gift"), "wild", &bytes(&jar));
    assert!(words.contains("harvest "), "{words}");
    assert!(
        !words.contains("quarry"),
        "a wild place is printed: {words}"
    );
}

#[test]
fn what_is_missing_on_a_label_is_said_to_the_maker() {
    let pantry = Pantry::begin();
    let drawn = pantry
        .world
        .call("label.single", single(json!({"bottle": pantry.ids()[0]})));
    assert!(text(&drawn, "/svg").starts_with("<svg"));
    assert!(
        drawn["remarks"].to_string().contains("poison centre"),
        "{}",
        drawn["remarks"]
    );
    assert_eq!(drawn["uses"], json!(["inside", "outside"]));
    assert_eq!(drawn["use_for"], "inside");
    assert!(
        number(&drawn, "/per_sheet/a4") >= 8.0,
        "{}",
        drawn["per_sheet"]
    );
}

#[test]
fn what_cannot_be_labelled_is_refused_at_its_field() {
    let pantry = Pantry::begin();
    let world = &pantry.world;
    let bottle = &pantry.ids()[0];
    let refused = |command: &str, request: Value| world.refused(command, request);
    let small = json!({"bottle": bottle, "label": {"width_mm": 10, "height_mm": 55}});
    refused("label.single", single(small)).of("invalid", "label.width_mm");
    let full = json!({"bottle": bottle, "label": {"width_mm": 25, "height_mm": 15}});
    refused("label.single", single(full)).of("invalid", "label.height_mm");
    let jar = json!({"jar": pantry.jar["id"], "gift": true});
    refused("label.single", single(jar)).of("invalid", "gift");
    let food = json!({"bottle": bottle, "use_for": "food"});
    refused("label.single", single(food)).of("invalid", "use_for");
    refused("label.single", single(json!({}))).of("invalid", "bottle");
    let gone = json!({"bottle": "01a148fb-6f40-701b-a4bd-ca31cb69f6a9"});
    refused("label.single", single(gone)).of("not_found", "bottle");
    refused("label.sheet", request(json!({}))).of("invalid", "bottles");
    let many = json!({"bottles": pantry.ids(), "paper": "label"});
    refused("label.sheet", request(many)).of("invalid", "paper");
    let skipped = json!({"bottles": [bottle], "skip": 500});
    refused("label.sheet", request(skipped)).of("invalid", "skip");
    refused("season.book", json!({"year": 1999, "paper": "a4"})).of("invalid", "year");
    refused("trace.sheet", json!({"paper": "a4"})).of("invalid", "bottle");
    refused("lot.find", json!({"text": "https://example.org"})).of("invalid", "text");
    refused("lot.find", json!({"text": "tavo-999"})).of("not_found", "text");
}

#[test]
fn an_herb_that_is_never_taken_is_labelled_for_outside_alone() {
    let world = World::new();
    let plant = json!({"herb": "comfrey", "part": "leaf", "state": "dried", "mass_g": 30});
    let composition = json!({"preparation": "oil-dried", "plants": [plant],
        "stock": [{"kind": "oil", "oil": "olive"}]});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    world.call(
        "jar.strain",
        json!({"jar": jar["id"], "came_out_ml": 100, "how": "dripped"}),
    );
    let filled = json!({"jar": jar["id"], "bottles": [{"ml": 50, "count": 1}]});
    let bottle = world.call("bottle.fill", filled)["bottles"][0].clone();
    let drawn = world.call("label.single", single(json!({"bottle": bottle["id"]})));
    assert_eq!(drawn["uses"], json!(["outside"]));
    let file = world.call("label.sheet", request(json!({"bottles": [bottle["id"]]})));
    let words = text_of(&kept("outside"), "oil", &bytes(&file));
    for said in ["EXTERNAL USE ONLY", "olive oil", "Symphytum officinale"] {
        assert!(words.contains(said), "{said:?} is not in {words}");
    }
    assert!(!words.contains("Contains alcohol"), "{words}");
}
