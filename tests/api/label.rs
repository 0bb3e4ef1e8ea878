//! `label.*`, `trace.sheet`, `season.book`, `due.calendar`, `lot.find`: read back from the files by
//! poppler's pdftotext and pdftoppm, zbar's zbarimg and another library's calendar parser.

use std::path::PathBuf;

use base64::Engine as _;
use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty, ICalendarValue};
use serde_json::{Value, json};

use crate::readers::{codes_in, folder, pictures_of, text_of};
use crate::world::{World, number, text};

const SIZE: [f64; 2] = [90.0, 55.0];

/// What a maker has after a summer: a valerian tincture, strained and filled, and a jar that steeps.
struct Pantry {
    world: World,
    bottles: Vec<Value>,
    tincture: Value,
    jar: Value,
}

fn bytes(file: &Value) -> Vec<u8> {
    base64::prelude::BASE64_STANDARD
        .decode(text(file, "/base64"))
        .unwrap()
}

/// A folder of this test's own files.
fn kept(test: &str) -> PathBuf {
    folder(&format!("api-{test}"))
}

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

impl Pantry {
    fn begin() -> Self {
        let world = World::new();
        let bed = |name: &str, wild: bool| {
            world.call("bed.add", json!({"name": name, "wild": wild}))["bed"]["id"].clone()
        };
        let (long, wood) = (bed("Long bed", false), bed("Behind the quarry", true));
        let photo = world.photo("place_and_zone.jpg");
        let pick = |herb: &str, part: &str, bed: &Value, more: Value| {
            let mut request = json!({"herb": herb, "part": part, "gross_g": 400, "surface": "dry",
                "bed": bed, "look_alike_ruled_out": true, "note": "Mine alone to read"});
            for (name, value) in more.as_object().unwrap() {
                request[name] = value.clone();
            }
            world.call("harvest.record", request)["harvest"].clone()
        };
        let root = pick(
            "valerian",
            "root",
            &long,
            json!({"photos": [photo["photo"]["hash"]]}),
        );
        let leaf = pick("lemon balm", "leaf", &wood, json!({}));
        let poured = |preparation: &str, plant: Value, more: Value| {
            let mut composition = json!({"preparation": preparation, "plants": [plant]});
            for (name, value) in more.as_object().unwrap() {
                composition[name] = value.clone();
            }
            let request = json!({"composition": composition, "note": "Not for other eyes"});
            world.call("jar.pour", request)["jar"].clone()
        };
        let plant = |harvest: &Value, herb: &str, part: &str, mass_g: f64| {
            json!({"lot": {"kind": "harvest", "id": harvest["id"]}, "herb": herb, "part": part,
                "state": "fresh", "mass_g": mass_g})
        };
        let tincture = poured(
            "tincture",
            plant(&root, "valerian", "root", 200.0),
            json!({"stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
                "ratio_ml_per_g": 2, "strength_percent_vol": 50}),
        );
        let jar = poured(
            "glycerite",
            plant(&leaf, "lemon balm", "leaf", 100.0),
            json!({"stock": [{"kind": "glycerin", "purity_percent_mass": 99.5}, {"kind": "water"}]}),
        );
        world.at("2026-08-14T09:00:00+02:00");
        world.call(
            "jar.strain",
            json!({"jar": tincture["id"], "came_out_ml": 380, "how": "wrung"}),
        );
        let filled = world.call(
            "bottle.fill",
            json!({"jar": tincture["id"], "bottles": [{"ml": 100, "count": 3}],
                "note": "Cloudy, keep it from my sister"}),
        );
        let bottles = filled["bottles"].as_array().unwrap().clone();
        Self {
            world,
            bottles,
            tincture,
            jar,
        }
    }

    fn ids(&self) -> Vec<Value> {
        self.bottles
            .iter()
            .map(|bottle| bottle["id"].clone())
            .collect()
    }
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
        .map(|it| label::link::of(text(it, "/code"), text(it, "/name")))
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
        "Holds 100 mL",
        "Made of",
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
        drawn["remarks"].to_string().contains("poison line"),
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

#[test]
fn the_trace_sheet_leads_from_the_bottle_to_its_bed() {
    let pantry = Pantry::begin();
    let asked = json!({"bottle": pantry.ids()[0], "paper": "letter"});
    let file = pantry.world.call("trace.sheet", asked);
    let words = text_of(&kept("trace"), "trace", &bytes(&file));
    let mut from = 0;
    for said in [
        "Bottle",
        "Strained",
        "380 mL came out",
        "Jar: Valerian",
        "200 g",
        "Long bed",
    ] {
        let at = words[from..].find(said);
        from += at.unwrap_or_else(|| panic!("{said:?} is not in its place in {words}"));
    }
}

#[test]
fn the_trace_forward_names_whom_to_tell_first_and_no_wild_place() {
    let pantry = Pantry::begin();
    let world = &pantry.world;
    world.call(
        "bottle.give",
        json!({"bottle": pantry.ids()[0], "to": "the ferryman"}),
    );
    let beds = world.call("bed.list", json!({}));
    let bed = |name: &str| {
        let beds = beds["beds"].as_array().unwrap();
        let found = beds.iter().find(|bed| bed["name"] == name).unwrap();
        found["id"].clone()
    };
    let sheet = |name: &str, request: Value| {
        let file = world.call("trace.sheet_forward", request);
        text_of(&kept("trace-forward"), name, &bytes(&file))
    };
    let words = sheet(
        "bed",
        json!({"of": {"bed": bed("Long bed")}, "paper": "a4"}),
    );
    let mut from = 0;
    for said in [
        "Long bed",
        "Given to the ferryman",
        "Jar: Valerian",
        "Valerian, root",
        "400 g fresh",
    ] {
        let at = words[from..].find(said);
        from += at.unwrap_or_else(|| panic!("{said:?} is not in its place in {words}"));
    }
    // Bottles filled in one go stand in no order of their own.
    assert!(
        words.contains("given away") && words.contains("100 mL left"),
        "{words}"
    );
    let wild = sheet(
        "wild",
        json!({"of": {"bed": bed("Behind the quarry")}, "paper": "letter"}),
    );
    assert!(
        wild.contains("A wild place") && !wild.contains("quarry"),
        "{wild}"
    );
    assert!(wild.contains("No bottle of it was given away"), "{wild}");
    let jar = sheet(
        "jar",
        json!({"of": {"jar": pantry.tincture["id"]}, "paper": "a4"}),
    );
    assert!(jar.contains("Given to the ferryman"), "{jar}");
    world
        .refused("trace.sheet_forward", json!({"of": {}, "paper": "a4"}))
        .of("invalid", "bed");
}

#[test]
fn the_season_s_book_has_its_harvests_and_no_wild_place() {
    let pantry = Pantry::begin();
    let file = pantry
        .world
        .call("season.book", json!({"year": 2026, "paper": "a4"}));
    assert_eq!(file["file_name"], "season-2026.pdf");
    let pdf = bytes(&file);
    let folder = kept("season");
    let words = text_of(&folder, "season", &pdf);
    for said in [
        "The season of 2026",
        "July",
        "Lemon balm",
        "Long bed",
        "380 mL",
        "3 bottles",
    ] {
        assert!(words.contains(said), "{said:?} is not in {words}");
    }
    assert!(
        !words.contains("quarry"),
        "a wild place is printed: {words}"
    );
    let jpeg = pdf.windows(9).any(|bytes| bytes == b"DCTDecode");
    assert!(jpeg, "the photo of the harvest is in the file");
}

#[test]
fn another_parser_reads_the_calendar_of_what_is_due() {
    let pantry = Pantry::begin();
    let file = pantry.world.call("due.calendar", json!({"days": 60}));
    assert_eq!(file["media_type"], "text/calendar");
    let listed = pantry.world.call("due.list", json!({"days": 60}));
    let due = listed["due"].as_array().unwrap();
    let written = String::from_utf8(bytes(&file)).unwrap();
    let calendar = ICalendar::parse(&written).unwrap_or_else(|error| panic!("{error:?}"));
    let events = calendar.components.iter();
    let events: Vec<_> = events
        .filter(|component| component.component_type == ICalendarComponentType::VEvent)
        .collect();
    assert!(!due.is_empty() && events.len() == due.len(), "{due:?}");
    for (event, line) in events.iter().zip(due) {
        let entry = event
            .entries
            .iter()
            .find(|it| it.name == ICalendarProperty::Summary);
        let ICalendarValue::Text(title) = &entry.unwrap().values[0] else {
            panic!("{entry:?}")
        };
        assert!(title.ends_with(text(line, "/title")), "{title} and {line}");
    }
    let world = World::new();
    world
        .refused("due.calendar", json!({}))
        .of("invalid", "days");
}
