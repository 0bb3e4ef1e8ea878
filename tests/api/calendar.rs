//! `herb.calendar`: published months beside one's own years.

use serde_json::{Value, json};

use crate::world::{World, number, text};

fn picked(world: &World, herb: &str, part: &str, on: &str) {
    let request = json!({"herb": herb, "part": part, "gross_g": 100, "surface": "dry",
        "look_alike_ruled_out": true, "picked_at": format!("{on}T10:00:00+02:00")});
    world.call("harvest.record", request);
}

fn row<'a>(calendar: &'a Value, herb: &str) -> &'a Value {
    let rows = calendar["rows"].as_array().unwrap();
    rows.iter().find(|row| row["herb"] == herb).unwrap()
}

#[test]
fn one_herb_shows_its_months_before_anything_was_picked() {
    let world = World::new();
    let calendar = world.call("herb.calendar", json!({"key": "Yarrow"}));
    let yarrow = row(&calendar, "yarrow");
    assert_eq!(yarrow["months"], json!([{"from_month": 6, "to_month": 8}]));
    assert_eq!(yarrow["own"], json!([]));
    assert_eq!(text(yarrow, "/published/0/stage"), "in flower");
    assert_eq!(text(yarrow, "/published/0/status"), "partly confirmed");
    // 14 July lies within June to August.
    assert_eq!(
        yarrow["ready"],
        json!({"is_now": true, "begins_in": null, "picked_on": []})
    );
    assert_eq!(calendar["shift"], Value::Null, "no year tells of a shift");
    assert_eq!(
        world.call("herb.calendar", json!({}))["rows"],
        json!([]),
        "nothing was picked"
    );
    world
        .refused("herb.calendar", json!({"key": "moon grass"}))
        .of("not_found", "key");
    world
        .refused("herb.calendar", json!({"herb": "yarrow"}))
        .of("invalid", "herb");
}

#[test]
fn a_source_is_told_with_each_calendar_and_an_own_herb_has_none() {
    let world = World::new();
    let calendar = world.call("herb.calendar", json!({"key": "chamomile"}));
    let chamomile = row(&calendar, "chamomile");
    assert_eq!(
        chamomile["months"],
        json!([{"from_month": 5, "to_month": 8}]),
        "two calendars joined"
    );
    let published = chamomile["published"].as_array().unwrap();
    assert_eq!(published.len(), 2);
    let source = text(&published[0], "/source");
    assert!(
        source.contains("Lower Saxony") && source.contains("2013"),
        "{source}"
    );
    let own = world.call(
        "herb.add",
        json!({"common": "Moon grass", "parts": ["leaf"]}),
    );
    let key = text(&own, "/herb/key");
    let request = json!({"key": key});
    assert_eq!(
        world.call("herb.calendar", request.clone())["rows"],
        json!([])
    );
    picked(&world, key, "leaf", "2025-06-20");
    let calendar = world.call("herb.calendar", request);
    assert_eq!(calendar["rows"][0]["published"], json!([]));
    assert_eq!(
        calendar["rows"][0]["own"],
        json!([{"year": 2025, "days": ["2025-06-20"]}])
    );
}

#[test]
fn south_of_the_equator_the_months_are_half_a_year_later() {
    let world = World::new();
    world.call("setting.change", json!({"hemisphere": "south"}));
    let calendar = world.call("herb.calendar", json!({"key": "yarrow"}));
    assert_eq!(calendar["hemisphere"], "south");
    assert_eq!(
        row(&calendar, "yarrow")["months"],
        json!([{"from_month": 12, "to_month": 2}])
    );
    assert_eq!(row(&calendar, "yarrow")["ready"], Value::Null, "it is July");
}

#[test]
fn a_shift_is_learned_from_two_years_and_two_plants_and_not_before() {
    let world = World::new();
    // Yarrow and St John's wort: June to August, the middle being day 196.5, half past 16 July.
    for (herb, on) in [("yarrow", "2025-07-30"), ("st-johns-wort", "2025-07-31")] {
        picked(&world, herb, "flowering tops", on);
    }
    let shift = |world: &World| world.call("herb.calendar", json!({}))["shift"].clone();
    assert_eq!(shift(&world), Value::Null, "one year");
    world.at("2026-08-20T09:00:00+02:00");
    for (herb, on) in [("yarrow", "2026-07-31"), ("st-johns-wort", "2026-08-02")] {
        picked(&world, herb, "flowering tops", on);
    }
    let learned = shift(&world);
    // Days 210, 211, 211 and 213 lie 13.5, 14.5, 14.5 and 16.5 after it: plants 14 and 15.5, mean 14.75, so 2.107 weeks.
    assert!(
        (number(&learned, "/weeks") - 14.75 / 7.0).abs() < 1e-9,
        "{learned}"
    );
    // Years: -0.75 and 0.75; both ranges are 6.314 x 1.5/2 = 4.7355 days, 0.6765 weeks.
    assert!((number(&learned, "/weeks_low") - (14.75 - 4.7355) / 7.0).abs() < 1e-9);
    assert!((number(&learned, "/weeks_high") - (14.75 + 4.7355) / 7.0).abs() < 1e-9);
    assert_eq!(
        (number(&learned, "/years"), number(&learned, "/plants")),
        (2.0, 2.0)
    );
    // Two weeks and a quarter of a day later, June to August end on 14 September.
    world.at("2026-09-10T09:00:00+02:00");
    let calendar = world.call("herb.calendar", json!({}));
    assert_eq!(calendar["is_shifted"], true);
    assert_eq!(row(&calendar, "yarrow")["ready"]["is_now"], true);
    assert_eq!(
        row(&calendar, "yarrow")["months"],
        json!([{"from_month": 6, "to_month": 8}]),
        "as it is printed"
    );
    let own = row(&calendar, "yarrow")["own"].as_array().unwrap();
    assert_eq!(
        own[0],
        json!({"year": 2026, "days": ["2026-07-31"]}),
        "the latest first"
    );
}
