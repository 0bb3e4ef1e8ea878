//! What the rack doubts: a weigh-in that fits no course, a rest that may not be the end, a mass that no home
//! picks; and what it says when a lot is probably dry.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

/// Peppermint leaf on a tray without tare, laid out on the 14th at nine.
fn laid_out(mass_g: f64) -> (World, String) {
    let world = World::new();
    let request =
        json!({"herb": "peppermint", "part": "leaf", "gross_g": mass_g, "surface": "dry"});
    let harvest = text(&world.call("harvest.record", request), "/harvest/id").to_owned();
    let request = json!({"harvest": harvest, "mass_g": mass_g});
    let tray = text(&world.call("tray.start", request), "/tray/id").to_owned();
    (world, tray)
}

/// Weighed at nine on each of the days after, in air of this humidity if it was noted.
fn weighed_daily(world: &World, tray: &str, masses: &[f64], humidity: Option<f64>) -> Value {
    let mut reply = Value::Null;
    for (day, mass) in masses.iter().enumerate() {
        world.at(&format!("2026-07-{}T09:00:00+02:00", 15 + day));
        let mut request = json!({"tray": tray, "gross_g": mass});
        if let Some(percent) = humidity {
            request["air"] = json!({"temperature_c": 20, "relative_humidity_percent": percent});
        }
        reply = world.call("tray.weigh", request);
    }
    reply["tray"].clone()
}

/// A lot of 2 kg that dries and comes to rest near what peppermint leaf weighs dry.
const TO_REST: [f64; 11] = [
    1200.0, 750.0, 560.0, 500.0, 475.0, 462.0, 458.0, 456.0, 455.0, 455.0, 455.0,
];

fn codes(notes: &Value) -> Vec<&str> {
    let notes = notes.as_array().unwrap();
    notes.iter().map(|note| text(note, "/code")).collect()
}

fn width(page: &Value, at: &str) -> f64 {
    number(page, &format!("{at}/high")) - number(page, &format!("{at}/low"))
}

/// `drying.estimate` of peppermint leaf, 2 kg fresh, weighed daily.
fn estimate(masses: &[f64], more: Value) -> Value {
    let weighings: Vec<Value> = masses
        .iter()
        .enumerate()
        .map(|(day, mass)| json!({"hours": 24 * (day + 1), "mass_g": mass}))
        .collect();
    let mut request =
        json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": 2000, "weighings": weighings});
    for (key, value) in more.as_object().unwrap() {
        request[key] = value.clone();
    }
    World::new().call("drying.estimate", request)
}

fn air(percent: f64) -> Value {
    json!({"air": {"temperature_c": 20, "relative_humidity_percent": percent}})
}

#[test]
fn a_dropped_digit_is_asked_about_with_what_the_tray_weighed_yesterday() {
    let (world, tray) = laid_out(450.0);
    weighed_daily(&world, &tray, &[385.0], None);
    world.at("2026-07-16T09:00:00+02:00");
    world
        .refused("tray.weigh", json!({"tray": tray, "gross_g": 37}))
        .of("confirm_odd", "gross_g")
        .says("37 g? The tray weighed 385 g yesterday.");
    let page = world.call("tray.show", json!({"id": tray}));
    assert_eq!(
        page["tray"]["weighings"].as_array().unwrap().len(),
        1,
        "nothing was written"
    );

    let kept = json!({"tray": tray, "gross_g": 37, "confirm_odd": true});
    let reply = world.call("tray.weigh", kept);
    assert_eq!(reply["tray"]["weighings"][1]["odd"], true);
    assert_eq!(number(&reply, "/tray/mass_now_g"), 37.0, "the maker's word");
    assert!(codes(&reply["tray"]["reasons"]).contains(&"unlike_prior"));

    // Whoever nodded without looking is put right by what comes after.
    world.at("2026-07-17T09:00:00+02:00");
    let again = json!({"tray": tray, "gross_g": 330, "confirm_odd": true});
    let reply = world.call("tray.weigh", again);
    assert_eq!(number(&reply, "/tray/mass_now_g"), 330.0);
    assert!(codes(&reply["tray"]["reasons"]).contains(&"odd_weighing"));
    assert!(number(&reply, "/tray/stop_gross_g/low") > 50.0, "{reply}");
}

#[test]
fn a_weight_that_fits_no_course_counts_once_the_maker_says_so() {
    let (world, tray) = laid_out(2000.0);
    weighed_daily(&world, &tray, &TO_REST[..8], Some(45.0));
    world.at("2026-07-23T09:00:00+02:00");
    // 465 g with its first two digits swapped would be 645 g; out of an oven it would weigh 420 g.
    for wrong in [645.0, 420.0] {
        world
            .refused("tray.weigh", json!({"tray": tray, "gross_g": wrong}))
            .of("confirm_odd", "gross_g")
            .says("The tray weighed 456 g yesterday.");
    }
    let kept = json!({"tray": tray, "gross_g": 420, "confirm_odd": true});
    let reply = world.call("tray.weigh", kept);
    assert_eq!(number(&reply, "/tray/mass_now_g"), 420.0);
    let weighings = reply["tray"]["weighings"].as_array().unwrap();
    let id = text(weighings.last().unwrap(), "/id");
    let reply = world.call("weighing.correct", json!({"id": id, "gross_g": 455}));
    let corrected = reply["tray"]["weighings"]
        .as_array()
        .unwrap()
        .last()
        .unwrap();
    assert_eq!(
        corrected["odd"], false,
        "what was put right is not odd any more"
    );
}

#[test]
fn a_tray_is_not_taken_down_at_a_slip_of_the_finger() {
    let (world, tray) = laid_out(2000.0);
    weighed_daily(&world, &tray, &TO_REST, Some(45.0));
    world
        .refused("tray.take_down", json!({"tray": tray, "gross_g": 45}))
        .of("confirm_odd", "gross_g")
        .says("45 g? The tray weighed 455 g earlier today.");
    let down = json!({"tray": tray, "gross_g": 454, "snap_test": true});
    let reply = world.call("tray.take_down", down);
    assert_eq!(number(&reply, "/tray/dried_left_g"), 454.0);
}

#[test]
fn one_low_reading_is_set_aside_with_a_word_and_closes_no_interval() {
    let honest = estimate(&TO_REST[..6], air(45.0));
    let mut masses = TO_REST[..6].to_vec();
    masses[2] = 56.0;
    masses[4] = 47.0;
    let slipped = estimate(&masses, air(45.0));
    assert!(codes(&slipped["notes"]).contains(&"odd_weighing"));
    assert!(!codes(&honest["notes"]).contains(&"odd_weighing"));
    for at in ["/dry_matter_g", "/target_mass_g"] {
        is_interval(&slipped, at);
        assert!(width(&slipped, at) > 0.5 * width(&honest, at));
    }
    let (stop, was) = (&slipped["target_mass_g"], &honest["target_mass_g"]);
    assert!(
        number(stop, "/low") < number(was, "/value")
            && number(was, "/value") < number(stop, "/high")
    );
}

#[test]
fn no_interval_is_narrower_than_the_scale_shows() {
    let finished = estimate(&TO_REST, air(45.0));
    assert!(width(&finished, "/dry_matter_g") >= 1.0);
    assert!(width(&finished, "/hours_left") > 0.0);
    for step in [10.0, 50.0] {
        let mut coarse = air(45.0);
        coarse["scale_step_g"] = json!(step);
        let masses: Vec<f64> = TO_REST.iter().map(|g| (g / step).round() * step).collect();
        let reply = estimate(&masses, coarse);
        for at in ["/dry_matter_g", "/target_mass_g"] {
            assert!(width(&reply, at) >= step, "{step} g: {reply}");
        }
        assert!(width(&reply, "/moisture_now_wet_percent") > 0.0);
    }
}

#[test]
fn a_herb_that_rests_unlike_its_kind_is_not_called_dry() {
    // It holds 57 % water there, and a snap test cannot be right.
    let stalled = [1500.0, 1100.0, 1001.0, 1000.0, 999.0, 999.0, 998.0, 998.0];
    for more in [air(45.0), json!({}), json!({"snap_test": true})] {
        let reply = estimate(&stalled, more);
        assert!(codes(&reply["notes"]).contains(&"unlike_prior"), "{reply}");
        assert_eq!(reply["is_dry"], false);
    }
}

#[test]
fn only_a_snap_test_calls_a_herb_dry_where_the_air_is_damp_or_unknown() {
    let is_dry = |more: Value| estimate(&TO_REST, more)["is_dry"].clone();
    let snapped = |mut more: Value| {
        more["snap_test"] = json!(true);
        more
    };
    assert_eq!(is_dry(air(45.0)), true);
    assert_eq!(is_dry(json!({})), false, "nobody noted the air");
    assert_eq!(is_dry(snapped(json!({}))), true);
    assert_eq!(is_dry(air(61.0)), false, "above 60 %");
    assert_eq!(is_dry(snapped(air(61.0))), true);
    assert_eq!(
        is_dry(snapped(air(85.0))),
        false,
        "no herb snaps in such air"
    );
}

#[test]
fn at_rest_at_its_stop_weight_a_tray_is_probably_dry_and_asks_for_the_snap_test() {
    let (world, tray) = laid_out(2000.0);
    let page = weighed_daily(&world, &tray, &TO_REST, None);
    assert_eq!(
        (&page["probably_dry"], &page["is_dry"]),
        (&json!(true), &json!(false)),
        "{page}"
    );
    assert_eq!(text(&page, "/says"), "probably dry: try the snap test");
    assert_eq!(
        page["weigh_at"],
        Value::Null,
        "there is nothing to wait for"
    );
    let due = world.call("due.list", json!({"days": 3}));
    let line = &due["due"][0];
    assert_eq!(
        (text(line, "/what"), text(line, "/id")),
        ("take down", &*tray)
    );
    assert!(text(line, "/text").contains("try the snap test"), "{line}");

    world.at("2026-07-25T12:00:00+02:00");
    let tried = json!({"tray": tray, "gross_g": 455, "snap_test": true});
    let page = &world.call("tray.weigh", tried)["tray"];
    assert_eq!(
        (&page["probably_dry"], &page["is_dry"]),
        (&json!(false), &json!(true))
    );
    let weighings = page["weighings"].as_array().unwrap();
    assert_eq!(weighings.last().unwrap()["snap_test"], true);
}

#[test]
fn air_that_turned_damp_at_the_end_tells_more_than_the_mean_of_the_run() {
    let (world, tray) = laid_out(2000.0);
    weighed_daily(&world, &tray, &TO_REST[..8], Some(45.0));
    let mut is_dry = Value::Null;
    for day in 23..26 {
        world.at(&format!("2026-07-{day}T09:00:00+02:00"));
        let air = json!({"temperature_c": 20, "relative_humidity_percent": 75});
        let request = json!({"tray": tray, "gross_g": 455, "air": air});
        is_dry = world.call("tray.weigh", request)["tray"]["is_dry"].clone();
    }
    assert_eq!(
        is_dry, false,
        "the mean of the run is below 60 %, the air now is not"
    );
}

#[test]
fn a_rest_that_came_all_of_a_sudden_is_not_called_dry() {
    // Half of what it loses went in twelve hours, all the rest in the next twenty-two: it holds 44 % water.
    let prior = json!({"ln_dry_matter_fraction_mean": -1.0593, "ln_dry_matter_fraction_sd": 0.2});
    let weighings = [(12, 811), (34, 536), (48, 536), (71, 535)]
        .map(|(hours, mass)| json!({"hours": hours, "mass_g": mass}));
    let mut request = air(38.0);
    request["prior"] = prior;
    request["fresh_mass_g"] = json!(1265);
    request["weighings"] = json!(weighings);
    let reply = World::new().call("drying.estimate", request);
    assert_eq!(reply["is_dry"], false, "{reply}");
    assert!(codes(&reply["notes"]).contains(&"probably_dry"), "{reply}");
}

#[test]
fn nobody_who_has_just_weighed_is_sent_back_on_the_same_day() {
    let (world, tray) = laid_out(2000.0);
    let mut told = 0;
    for (day, mass) in TO_REST.iter().enumerate() {
        world.at(&format!("2026-07-{}T08:00:00+02:00", 15 + day));
        let air = json!({"temperature_c": 20, "relative_humidity_percent": 45});
        let request = json!({"tray": tray, "gross_g": mass, "air": air});
        let page = &world.call("tray.weigh", request)["tray"];
        let weighed = &text(page, "/last_weighed_at")[..10];
        if let Some(at) = page["weigh_at"].as_str() {
            assert!(&at[..10] > weighed, "weighed on {weighed}, again at {at}");
            told += 1;
        }
    }
    assert!(told > 0, "no day was named");
}

#[test]
fn a_mass_that_no_home_picks_is_asked_about() {
    let world = World::new();
    let mut nettle = json!({"herb": "nettle", "part": "leaf", "gross_g": 64000, "surface": "dry"});
    world
        .refused("harvest.record", nettle.clone())
        .of("confirm_odd", "gross_g")
        .says("64 kg? A home seldom picks so much of one plant.");
    nettle["confirm_odd"] = json!(true);
    let reply = world.call("harvest.record", nettle);
    let harvest = text(&reply, "/harvest/id");
    let mut start = json!({"harvest": harvest, "mass_g": 60000});
    world
        .refused("tray.start", start.clone())
        .of("confirm_odd", "mass_g");
    start["confirm_odd"] = json!(true);
    world.call("tray.start", start);
    let typed = json!({"id": harvest, "gross_g": 65000});
    world
        .refused("harvest.correct", typed)
        .of("confirm_odd", "gross_g");
    let noted = json!({"id": harvest, "note": "with the neighbours"});
    world.call("harvest.correct", noted);
    let usual = json!({"herb": "nettle", "part": "leaf", "gross_g": 6400, "surface": "dry"});
    world.call("harvest.record", usual);
}
