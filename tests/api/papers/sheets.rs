//! `trace.sheet`, `trace.sheet_forward`, `season.book` and `due.calendar`.

use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty, ICalendarValue};
use serde_json::{Value, json};

use super::{Pantry, bytes, kept};
use crate::readers::text_of;
use crate::world::{World, text};

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
fn the_trace_forward_tells_of_a_tray_that_was_thrown_away_while_it_dried() {
    let world = World::new();
    let picked = json!({"herb": "peppermint", "part": "leaf", "gross_g": 300, "surface": "dry"});
    let harvest = world.call("harvest.record", picked)["harvest"]["id"].clone();
    let laid = json!({"harvest": harvest, "mass_g": 200});
    let tray = world.call("tray.start", laid)["tray"]["id"].clone();
    world.call("tray.bin", json!({"id": tray, "reason": "mould"}));
    let request = json!({"of": {"harvest": harvest}, "paper": "a4"});
    let file = world.call("trace.sheet_forward", request);
    let words = text_of(&kept("trace-forward"), "lost", &bytes(&file));
    assert!(
        words.contains("200 g (fresh weight), thrown away while it was drying."),
        "{words}"
    );
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
    let jpegs = |pdf: &[u8]| pdf.windows(9).filter(|bytes| bytes == b"DCTDecode").count();
    // On the front and beside its harvest.
    assert_eq!(jpegs(&pdf), 2, "the photo of the harvest is in the file");

    let photo = |sample: &str| pantry.world.photo(sample)["photo"]["hash"].clone();
    let of = |kind: &str, id: &Value, sample: &str| {
        let request = json!({"kind": kind, "id": id, "photos": [photo(sample)]});
        pantry.world.call("portrait.record", request);
    };
    of("jar", &pantry.tincture["id"], "gray.jpg");
    of("bottle", &pantry.bottles[1]["id"], "no_exif.jpg");
    let file = pantry
        .world
        .call("season.book", json!({"year": 2026, "paper": "a4"}));
    let pdf = bytes(&file);
    assert_eq!(jpegs(&pdf), 4, "and so are those of its jar and its bottle");
    let words = text_of(&folder, "portraits", &pdf);
    let bottle = format!("Bottle {}, 14 Aug 2026", text(&pantry.bottles[1], "/code"));
    for said in ["Day 31, 14 Aug 2026", &bottle] {
        assert!(words.contains(said), "{said:?} is not in {words}");
    }
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
