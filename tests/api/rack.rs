//! `tray.*` and `weighing.*`.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

/// 300 g of peppermint leaf, 200 g of it on a tray of 100 g.
fn laid_out() -> (World, String, String) {
    laid_out_of(300.0, 200.0)
}

fn laid_out_of(picked_g: f64, mass_g: f64) -> (World, String, String) {
    let world = World::new();
    let request =
        json!({"herb": "peppermint", "part": "leaf", "gross_g": picked_g, "surface": "dry"});
    let harvest = text(&world.call("harvest.record", request), "/harvest/id").to_owned();
    let request = json!({"harvest": harvest, "mass_g": mass_g, "tare_g": 100});
    let tray = text(&world.call("tray.start", request), "/tray/id").to_owned();
    (world, harvest, tray)
}

#[test]
fn a_tray_takes_its_grams_from_the_harvest() {
    let (world, harvest, tray) = laid_out();
    let page = world.call("harvest.show", json!({"id": harvest}));
    assert_eq!(number(&page, "/harvest/fresh_left_g"), 100.0);
    assert_eq!(text(&page, "/harvest/state"), "on the rack");
    assert_eq!(text(&page, "/harvest/trays/0/id"), tray);
    world
        .refused("tray.start", json!({"harvest": harvest, "mass_g": 101}))
        .of("not_enough", "mass_g")
        .says("100 g left");
}

#[test]
fn a_new_tray_says_its_stop_weight_and_that_it_was_not_weighed() {
    let (world, _, tray) = laid_out();
    let page = world.call("tray.show", json!({"id": tray}));
    let page = &page["tray"];
    is_interval(page, "/stop_gross_g");
    let stop = number(page, "/stop_gross_g/value") - number(page, "/target_mass_g/value");
    assert!(
        (stop - 100.0).abs() < 1e-9,
        "the stop weight on the scale includes the tray"
    );
    assert_eq!(page["moisture_now_wet_percent"], Value::Null);
    assert_eq!(page["hours_left"], Value::Null, "nobody can know yet");
    assert_eq!(text(page, "/says"), "not weighed yet");
    assert_eq!(text(page, "/state"), "drying");
}

#[test]
fn a_weigh_in_is_recorded_corrected_and_struck() {
    let (world, _, tray) = laid_out();
    world.at("2026-07-15T09:00:00+02:00");
    let reply = world.call("tray.weigh", json!({"tray": tray, "gross_g": 190}));
    assert_eq!(number(&reply, "/tray/mass_now_g"), 90.0);
    assert_eq!(number(&reply, "/tray/weighings/0/hours"), 24.0);
    is_interval(&reply["tray"], "/moisture_now_wet_percent");
    let id = text(&reply, "/tray/weighings/0/id");
    let reply = world.call("weighing.correct", json!({"id": id, "gross_g": 180}));
    assert_eq!(number(&reply, "/tray/mass_now_g"), 80.0);
    let reply = world.call("weighing.strike", json!({"id": id}));
    assert_eq!(reply["tray"]["weighings"], json!([]));
    assert_eq!(number(&reply, "/tray/mass_now_g"), 200.0);
    world
        .refused("weighing.strike", json!({"id": id}))
        .of("not_found", "id");
}

#[test]
fn a_wrong_weigh_in_is_refused_at_its_field() {
    let (world, _, tray) = laid_out();
    let ask = |field: &str, value: Value| {
        let mut request = json!({"tray": tray, "gross_g": 190});
        request[field] = value;
        world.refused("tray.weigh", request)
    };
    ask("gross_g", json!(99))
        .of("invalid", "gross_g")
        .says("100 g");
    ask("gross_g", json!(-3)).of("invalid", "gross_g");
    ask("gross_g", json!(1e308)).of("invalid", "gross_g");
    ask("at", json!("2026-07-13T09:00:00+02:00"))
        .of("invalid", "at")
        .says("loaded");
    ask("at", json!("noon")).of("invalid", "at");
    ask("tray", json!("x")).of("invalid", "tray");
    ask(
        "air",
        json!({"temperature_c": 20, "relative_humidity_percent": 400}),
    )
    .of("invalid", "air.relative_humidity_percent");
    ask(
        "air",
        json!({"temperature_c": -21, "relative_humidity_percent": 40}),
    )
    .of("invalid", "air.temperature_c")
    .says("between -20 and 90");
    let page = world.call("tray.show", json!({"id": tray}));
    assert_eq!(page["tray"]["weighings"], json!([]), "nothing half-written");
}

#[test]
fn an_odd_weight_is_asked_about_and_kept_when_confirmed() {
    let (world, _, tray) = laid_out();
    world.at("2026-07-15T09:00:00+02:00");
    let odd = json!({"tray": tray, "gross_g": 400});
    world
        .refused("tray.weigh", odd.clone())
        .of("confirm_odd", "gross_g")
        .says("heavier than the fresh");
    let mut confirmed = odd;
    confirmed["confirm_odd"] = json!(true);
    let reply = world.call("tray.weigh", confirmed);
    assert_eq!(reply["tray"]["weighings"][0]["odd"], true);
    assert_eq!(
        reply["tray"]["moisture_now_wet_percent"],
        Value::Null,
        "an odd weigh-in is no base for an estimate"
    );
    assert_eq!(
        number(&reply, "/tray/mass_now_g"),
        200.0,
        "nor is it what lies there now"
    );
}

/// A mark of the weight, in a room of this humidity, on each of these days.
fn weighed_daily(world: &World, tray: &str, nets: &[f64], air: Option<f64>) -> Value {
    let mut reply = Value::Null;
    for (day, net) in nets.iter().enumerate() {
        world.at(&format!("2026-07-{}T09:00:00+02:00", 15 + day));
        let mut request = json!({"tray": tray, "gross_g": 100.0 + net});
        if let Some(percent) = air {
            request["air"] = json!({"temperature_c": 20, "relative_humidity_percent": percent});
        }
        reply = world.call("tray.weigh", request);
    }
    reply["tray"].clone()
}

fn codes(list: &Value) -> Vec<&str> {
    let notes = list.as_array().unwrap();
    notes.iter().map(|note| text(note, "/code")).collect()
}

#[test]
fn a_damp_room_is_said_to_stop_before_the_herb_is_dry() {
    let (world, _, tray) = laid_out();
    let page = weighed_daily(&world, &tray, &[110.0, 70.0, 54.0], Some(70.0));
    assert_eq!(text(&page, "/reasons/0/code"), "air_limit");
    let said = text(&page, "/reasons/0/text");
    assert!(
        said.contains("At 70 % humidity and 20 °C, herb in this room keeps about 14 % (")
            && said.ends_with("Finish it somewhere warm, or move it."),
        "{said}"
    );
    assert_eq!(text(&page, "/why"), "room_too_damp");
    assert_eq!(
        number(&page, "/weighings/2/air/relative_humidity_percent"),
        70.0
    );
    let id = text(&page, "/weighings/2/id");
    let dry_air = json!({"temperature_c": 24, "relative_humidity_percent": 40});
    let page = world.call("weighing.correct", json!({"id": id, "air": dry_air}));
    assert_eq!(
        number(&page, "/tray/weighings/2/air/relative_humidity_percent"),
        40.0
    );
}

#[test]
fn a_dry_room_is_no_reason_and_an_air_that_nobody_noted_is_named() {
    let (world, _, tray) = laid_out();
    let page = weighed_daily(&world, &tray, &[110.0, 70.0, 54.0, 50.0], Some(45.0));
    let said = page["reasons"].as_array().unwrap().last().unwrap();
    assert_eq!(text(said, "/code"), "air_limit");
    assert!(!text(said, "/text").contains("move it"));

    let (world, _, tray) = laid_out();
    let page = weighed_daily(&world, &tray, &[110.0, 70.0, 54.0, 50.0], None);
    assert!(codes(&page["reasons"]).contains(&"air_not_noted"));
}

#[test]
fn a_tray_says_when_to_weigh_it_again_and_from_which_weight_on_it_tells() {
    let (world, _, tray) = laid_out();
    let page = world.call("tray.show", json!({"id": tray}));
    let page = &page["tray"];
    let telling = number(page, "/telling_gross_g");
    assert!(
        telling > number(page, "/stop_gross_g/value") && telling < 200.0,
        "{telling} g lies between the stop weight and half of the fresh"
    );
    let weigh_at = |page: &Value| {
        let at = text(page, "/weigh_at");
        chrono::DateTime::parse_from_rfc3339(at).unwrap()
    };
    let laid_out_at = chrono::DateTime::parse_from_rfc3339(text(page, "/started_at")).unwrap();
    let first = (weigh_at(page) - laid_out_at).num_hours();
    assert!((12..=72).contains(&first), "{first} h");

    let (world, _, tray) = laid_out_of(2000.0, 2000.0);
    let mut nets = vec![1200.0, 750.0, 560.0];
    let page = weighed_daily(&world, &tray, &nets, Some(45.0));
    assert_eq!(page["telling_gross_g"], Value::Null, "now they tell");
    is_interval(&page, "/ends_hours");
    let ends = number(&page, "/ends_hours/low");
    assert!(ends >= 72.0, "not before the last weigh-in, {ends} h");

    let (world, _, tray) = laid_out_of(2000.0, 2000.0);
    nets.extend([500.0, 475.0, 462.0, 458.0, 456.0, 455.0, 455.0, 455.0]);
    let page = weighed_daily(&world, &tray, &nets, Some(45.0));
    assert_eq!(page["weigh_at"], Value::Null, "{page}");
    assert_eq!(page["is_dry"], true);
}

#[test]
fn what_is_due_of_a_tray_bears_its_hour_and_its_predicted_end() {
    let (world, _, tray) = laid_out_of(2000.0, 2000.0);
    let page = weighed_daily(&world, &tray, &[1200.0, 750.0, 560.0], Some(45.0));
    let due = world.call("due.list", json!({"days": 10}));
    let line = &due["due"][0];
    assert_eq!(text(line, "/id"), tray);
    assert_eq!(text(line, "/at"), text(&page, "/weigh_at"));
    assert_eq!(text(line, "/on"), &text(&page, "/weigh_at")[..10]);
    assert!(
        text(line, "/text").starts_with("Likely dry between 18 Jul 2026 and "),
        "{line}"
    );
    assert_eq!(number(line, "/harm"), 1.0, "so that a reminder rings");
    let title = |world: &World| {
        let due = world.call("due.list", json!({"days": 10}));
        text(&due, "/due/0/title").to_owned()
    };
    assert_eq!(title(&world), "Peppermint leaf", "nobody named it");
    world.call("tray.correct", json!({"tray": tray, "name": "Top shelf"}));
    assert_eq!(title(&world), "Peppermint, Top shelf");
}

#[test]
fn every_tray_says_how_the_hand_tells_that_it_is_dry() {
    let (world, _, tray) = laid_out();
    let page = world.call("tray.show", json!({"id": tray}));
    assert_eq!(text(&page, "/tray/feel/status"), "practice");
    assert!(
        text(&page, "/tray/feel/text").contains("crumbles"),
        "a leaf does"
    );
}

#[test]
fn the_air_at_the_start_is_put_right() {
    let (world, _, tray) = laid_out();
    let air = json!({"temperature_c": -2, "relative_humidity_percent": 55});
    let page = world.call("tray.correct", json!({"tray": tray, "air": air}));
    assert_eq!(number(&page, "/tray/air/temperature_c"), -2.0);
    let page = world.call("tray.correct", json!({"tray": tray, "name": "Loft"}));
    assert_eq!(
        number(&page, "/tray/air/temperature_c"),
        -2.0,
        "what is left out stays"
    );
}

#[test]
fn what_is_taken_down_is_a_dried_lot() {
    let (world, harvest, tray) = laid_out();
    world
        .refused("tray.take_down", json!({"tray": tray}))
        .of("invalid", "gross_g")
        .says("has not been weighed");
    world
        .refused("tray.take_down", json!({"tray": tray, "gross_g": 301}))
        .of("invalid", "gross_g");
    world.at("2026-07-18T09:00:00+02:00");
    let reply = world.call("tray.take_down", json!({"tray": tray, "gross_g": 146}));
    assert_eq!(number(&reply, "/tray/dried_left_g"), 46.0);
    assert_eq!(text(&reply, "/tray/state"), "dry");
    assert_eq!(text(&reply, "/tray/says"), "dried, 46 g left");
    world
        .refused("tray.take_down", json!({"tray": tray, "gross_g": 145}))
        .of("invalid", "tray");
    world
        .refused("tray.weigh", json!({"tray": tray, "gross_g": 145}))
        .of("invalid", "tray");

    // The next estimate learns from it; its own page does not.
    let own = world.call("herb.show", json!({"key": "peppermint"}));
    assert!((number(&own, "/own_ratios/0/ratio_fresh_per_dry") - 200.0 / 46.0).abs() < 1e-9);
    let request = json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": 100});
    assert_eq!(
        text(&world.call("harvest.estimate", request), "/basis"),
        "own batches"
    );
    let page = world.call("harvest.show", json!({"id": harvest}));
    assert_eq!(
        text(&page, "/harvest/state"),
        "fresh",
        "100 g were never dried"
    );
}

#[test]
fn an_oven_sample_narrows_the_stop_weight() {
    let (world, _, tray) = laid_out();
    let width = |page: &Value| {
        number(page, "/tray/stop_gross_g/high") - number(page, "/tray/stop_gross_g/low")
    };
    let before = world.call("tray.show", json!({"id": tray}));
    let request = json!({"tray": tray, "fresh_g": 20, "dry_g": 4.3, "scale_step_g": 0.1});
    let after = world.call("tray.sample", request);
    assert!(width(&after) < 0.5 * width(&before));
    assert_eq!(text(&after, "/tray/basis"), "sample");
    let whole = json!({"tray": tray, "fresh_g": 20, "dry_g": 4, "scale_step_g": 1});
    assert!(
        width(&world.call("tray.sample", whole)) > 2.0 * width(&after),
        "a scale of whole grams measures less"
    );
    let unnamed = json!({"tray": tray, "fresh_g": 20, "dry_g": 4.3});
    let unnamed = width(&world.call("tray.sample", unnamed));
    assert!(
        (unnamed - width(&after)).abs() < 1e-9,
        "a tenth was written, so it shows tenths"
    );
    world
        .refused(
            "tray.sample",
            json!({"tray": tray, "fresh_g": 10, "dry_g": 11}),
        )
        .of("invalid", "dry_g");
}

#[test]
fn a_forgotten_tray_stands_on_top() {
    let (world, harvest, tray) = laid_out();
    world.at("2026-07-20T09:00:00+02:00");
    let request = json!({"harvest": harvest, "mass_g": 50, "name": "Late tray"});
    world.call("tray.start", request);
    let list = world.call("tray.list", json!({}));
    assert_eq!(text(&list, "/trays/0/id"), tray);
    assert_eq!(list["trays"][0]["forgotten"], true);
    assert_eq!(number(&list, "/trays/0/days"), 6.0);
    assert_eq!(list["trays"][1]["forgotten"], false);
}

#[test]
fn the_rack_draws_how_each_tray_dries() {
    let (world, harvest, tray) = laid_out();
    let request = json!({"harvest": harvest, "mass_g": 50, "name": "Late tray"});
    let late = world.call("tray.start", request);
    let request = json!({"tray": text(&late, "/tray/id"), "gross_g": 12});
    world.call("tray.take_down", request);
    let list = world.call("tray.list", json!({}));
    let page = world.call("tray.show", json!({"id": tray}));
    for part in ["ends_hours", "weighings", "curve"] {
        let drawn = &list["trays"][0]["course"][part];
        assert_eq!(
            drawn, &page["tray"][part],
            "the rack and the page draw one {part}"
        );
    }
    let points = list["trays"][0]["course"]["curve"].as_array();
    assert!(points.is_some_and(|points| points.len() > 2), "{list}");
    assert_eq!(list["trays"][1]["course"], Value::Null, "it dries no more");
}

#[test]
fn a_tray_is_corrected_and_refused_field_by_field() {
    let (world, harvest, tray) = laid_out();
    let request = json!({"tray": tray, "name": "Top shelf", "tare_g": 90, "note": "by the stove"});
    let reply = world.call("tray.correct", request);
    assert_eq!(text(&reply, "/tray/name"), "Top shelf");
    assert_eq!(number(&reply, "/tray/tare_g"), 90.0);
    world
        .refused("tray.correct", json!({"tray": tray, "name": " "}))
        .of("invalid", "name");
    world
        .refused("tray.start", json!({"harvest": harvest, "mass_g": 0}))
        .of("invalid", "mass_g");
    world
        .refused("tray.start", json!({"harvest": harvest, "mass_g": 0.5}))
        .of("invalid", "mass_g");
    world
        .refused("tray.start", json!({"harvest": "x", "mass_g": 5}))
        .of("invalid", "harvest");
    let early = json!({"harvest": harvest, "mass_g": 5, "started_at": "2026-07-01T09:00:00+02:00"});
    world
        .refused("tray.start", early)
        .of("invalid", "started_at")
        .says("picked");
}
