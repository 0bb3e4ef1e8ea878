//! `harvest.*`.

use serde_json::{Value, json};

use crate::world::{MORNING, World, is_interval, number, text};

fn mint(grams: f64) -> Value {
    json!({"herb": "peppermint", "part": "leaf", "gross_g": grams, "surface": "dry"})
}

fn with(mut request: Value, field: &str, value: Value) -> Value {
    request[field] = value;
    request
}

#[test]
fn a_harvest_says_at_once_what_it_will_weigh_dry() {
    let world = World::new();
    let request = json!({"herb": "peppermint", "part": "leaf", "gross_g": 320, "tare_g": 20,
        "surface": "dry", "bed_name": " Lower bank ", "stage": "before flower", "note": ""});
    let reply = world.harvest("harvest.record", request);
    assert_eq!(reply["changed"], json!(["bed", "harvest"]));
    let harvest = &reply["harvest"];
    assert_eq!(
        number(harvest, "/fresh_mass_g"),
        300.0,
        "net is gross less tare"
    );
    assert_eq!(text(harvest, "/bed/name"), "Lower bank");
    assert_eq!(harvest["note"], Value::Null, "an empty note is none");
    assert_eq!(text(harvest, "/picked_at"), MORNING);
    assert_eq!(text(harvest, "/time_from"), "clock");
    assert_eq!(text(harvest, "/state"), "fresh");
    is_interval(harvest, "/estimate/dry_mass_g");
    // USDA SR26 2064: 78.65 % water, so 21.35 % dry matter, dried to 10 % moisture.
    let dry = number(harvest, "/estimate/dry_mass_g/value");
    assert!((dry - 300.0 * 0.2135 / 0.9).abs() < 0.1, "{dry} g");
    let asked = world.call(
        "harvest.estimate",
        json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": 300}),
    );
    assert_eq!(&asked, &harvest["estimate"], "the form and the page agree");

    let again = world.call(
        "harvest.record",
        with(mint(50.0), "bed_name", json!("lower bank")),
    );
    assert_eq!(
        again["harvest"]["bed"]["id"], harvest["bed"]["id"],
        "found by its name"
    );
    assert_eq!(again["changed"], json!(["harvest"]));
}

#[test]
fn typed_time_wins_over_the_photo_and_the_photo_over_the_clock() {
    let world = World::new();
    let hash = world.photo("place_and_zone.jpg")["photo"]["hash"].clone();
    let request = with(mint(50.0), "photos", json!([hash]));
    let harvest = world.harvest("harvest.record", request.clone())["harvest"].clone();
    // exiftool: 2026:06:21 08:15:42 +02:00, 46.512345 N, 8.034567 E
    assert_eq!(text(&harvest, "/picked_at"), "2026-06-21T08:15:42+02:00");
    assert_eq!(text(&harvest, "/time_from"), "photo");
    assert!((number(&harvest, "/place/lat") - 46.512_345).abs() < 1e-6);
    assert_eq!(harvest["photo"], hash);

    let request = with(request, "picked_at", json!("2026-06-22T07:00:00+02:00"));
    let harvest = world.harvest("harvest.record", request)["harvest"].clone();
    assert_eq!(text(&harvest, "/picked_at"), "2026-06-22T07:00:00+02:00");
    assert_eq!(text(&harvest, "/time_from"), "typed");
    assert!(
        number(&harvest, "/place/lon") > 8.0,
        "the place still comes from the photo"
    );
}

#[test]
fn a_camera_that_lives_in_the_future_is_not_believed() {
    let world = World::new();
    world.at("2020-01-01T12:00:00+01:00");
    let hash = world.photo("place_and_zone.jpg")["photo"]["hash"].clone();
    let harvest = world.harvest("harvest.record", with(mint(50.0), "photos", json!([hash])));
    assert_eq!(text(&harvest, "/harvest/time_from"), "clock");
}

#[test]
fn a_poisonous_look_alike_is_ruled_out_before_anything_is_written() {
    let world = World::new();
    let yarrow = json!({"herb": "yarrow", "part": "flowering tops", "gross_g": 80, "surface": "dry",
        "bed_name": "Meadow"});
    world
        .refused("harvest.record", yarrow.clone())
        .of("confirm_look_alike", "look_alike_ruled_out")
        .says("Poison hemlock");
    assert_eq!(world.call("harvest.list", json!({}))["harvests"], json!([]));
    assert_eq!(
        world.call("bed.list", json!({}))["beds"],
        json!([]),
        "no half record"
    );
    world.call(
        "harvest.record",
        with(yarrow, "look_alike_ruled_out", json!(true)),
    );

    let hedge = with(
        with(mint(50.0), "bed_name", json!("Hedge")),
        "bed_wild",
        json!(true),
    );
    world
        .refused("harvest.record", hedge.clone())
        .of("confirm_look_alike", "look_alike_ruled_out");
    let beds = |world: &World| world.call("bed.list", json!({}))["beds"].clone();
    assert_eq!(
        beds(&world).as_array().unwrap().len(),
        1,
        "the meadow alone"
    );
    let picked = world.call(
        "harvest.record",
        with(hedge, "look_alike_ruled_out", json!(true)),
    );
    assert_eq!(beds(&world)[0]["wild"], true, "{}", beds(&world));
    world.call("deed.undo", json!({"deed": picked["deed"]}));
    assert_eq!(beds(&world).as_array().unwrap().len(), 1, "one deed");
    let meadow = with(
        with(mint(50.0), "bed_name", json!("Meadow")),
        "bed_wild",
        json!(true),
    );
    world
        .refused("harvest.record", meadow)
        .of("invalid", "bed_name");

    let wild = world.call("bed.add", json!({"name": "Wood edge", "wild": true}));
    world
        .refused(
            "harvest.record",
            with(mint(50.0), "bed", wild["bed"]["id"].clone()),
        )
        .of("confirm_look_alike", "look_alike_ruled_out")
        .says("grew wild");
}

#[test]
fn a_wrong_harvest_is_refused_at_its_field() {
    let world = World::new();
    let ask = |field: &str, value: Value| {
        world.refused("harvest.record", with(mint(100.0), field, value))
    };
    ask("gross_g", json!(-5))
        .of("invalid", "gross_g")
        .says("You entered -5");
    ask("gross_g", json!(0)).of("invalid", "gross_g");
    ask("gross_g", json!(1e308)).of("invalid", "gross_g");
    ask("gross_g", json!("NaN"))
        .of("invalid", "gross_g")
        .says("must be a number");
    ask("tare_g", json!(100)).of("invalid", "tare_g");
    ask("herb", json!("moon grass")).of("not_found", "herb");
    ask("part", json!(" ")).of("invalid", "part");
    ask("picked_at", json!("yesterday"))
        .of("invalid", "picked_at")
        .says("2026-07-14T09:30:00+02:00");
    ask("picked_at", json!("2026-08-01T09:00:00+02:00"))
        .of("invalid", "picked_at")
        .says("future");
    ask("surface", json!("soaked"))
        .of("invalid", "surface")
        .says("dry, dew, rain or washed");
    ask("bed", json!("x")).of("invalid", "bed");
    ask("bed", json!("01a212d7-fbd9-7985-8141-77499dbbc0e6")).of("not_found", "bed");
    ask("photos", json!(["x"])).of("invalid", "photos[0]");
    ask("photos", json!(["0".repeat(64)])).of("not_found", "photos[0]");
    ask("note", json!("x".repeat(10_001))).of("invalid", "note");
    ask("weather", json!("fine")).of("invalid", "weather");
    assert_eq!(
        world.call("harvest.list", json!({}))["harvests"],
        json!([]),
        "nothing half-written"
    );
}

#[test]
fn a_correction_supersedes_and_keeps_what_it_does_not_name() {
    let world = World::new();
    let first = world.call("harvest.record", with(mint(100.0), "bed_name", json!("A")));
    let id = text(&first, "/harvest/id");
    let request = json!({"id": id, "gross_g": 90, "stage": "in flower", "bed_name": ""});
    let corrected = world.harvest("harvest.correct", request)["harvest"].clone();
    assert_eq!(number(&corrected, "/fresh_mass_g"), 90.0);
    assert_eq!(text(&corrected, "/stage"), "in flower");
    assert_eq!(
        corrected["bed"],
        Value::Null,
        "an empty bed name clears the bed"
    );
    assert_eq!(
        corrected["code"], first["harvest"]["code"],
        "the code on the bag stays"
    );
    assert_eq!(
        text(&corrected, "/picked_at"),
        text(&first, "/harvest/picked_at")
    );

    world
        .refused("harvest.correct", json!({"id": id, "tare_g": 95}))
        .of("invalid", "tare_g");
    world
        .refused(
            "harvest.correct",
            json!({"id": id, "herb": "yarrow", "part": "flowering tops"}),
        )
        .of("confirm_look_alike", "look_alike_ruled_out");
    let started = world.call("tray.start", json!({"harvest": id, "mass_g": 60}));
    world
        .refused("harvest.correct", json!({"id": id, "gross_g": 50}))
        .of("not_enough", "mass_g");
    assert_eq!(number(&started, "/tray/fresh_mass_g"), 60.0);
}

#[test]
fn fresh_plant_is_asked_about_from_the_next_day_until_it_is_said_what_became_of_it() {
    let world = World::new();
    let id = world.call("harvest.record", mint(100.0))["harvest"]["id"].clone();
    let due = || world.call("due.list", json!({"days": 0}))["due"].clone();
    assert_eq!(
        due(),
        json!([]),
        "on the day of picking it is still in hand"
    );
    world.at("2026-07-15T07:00:00+02:00");
    let line = due()[0].clone();
    assert_eq!(text(&line, "/what"), "see to");
    assert_eq!(text(&line, "/on"), "2026-07-15");
    assert_eq!((number(&line, "/harm"), &line["id"]), (2.0, &id));
    assert!(text(&line, "/text").contains("100 g still fresh"));
    world.call("tray.start", json!({"harvest": id, "mass_g": 60}));
    let of = |what: &str| {
        let lines = due();
        let lines = lines.as_array().unwrap().iter();
        lines
            .filter(|it| it["what"] == what)
            .cloned()
            .collect::<Vec<_>>()
    };
    assert!(text(&of("see to")[0], "/text").starts_with("40 g"));
    let asked = || world.call("harvest.show", json!({"id": id}))["harvest"]["past_saving"].clone();
    world.at("2026-07-17T23:00:00+02:00");
    assert_eq!(number(&of("see to")[0], "/harm"), 2.0);
    assert_eq!(asked(), json!(null), "three days after the picking");
    world.at("2026-07-18T00:00:00+02:00");
    let late = of("see to")[0].clone();
    assert_eq!(number(&late, "/harm"), 1.0, "nothing can be saved any more");
    assert!(text(&late, "/text").contains("What happened to it?"));
    assert_eq!(
        asked(),
        late["text"],
        "the harvest's own page asks the same"
    );
    let gone = world.call("harvest.bin", json!({"id": id, "reason": "wilted"}));
    assert_eq!(of("see to").len(), 0);
    assert_eq!(asked(), json!(null), "nothing of it is left");
    world.call("deed.undo", json!({"deed": gone["deed"]}));
    assert_eq!(of("see to").len(), 1, "what was taken back is asked again");
}

#[test]
fn harvests_come_page_by_page_the_latest_first() {
    let world = World::new();
    for day in 1..=5 {
        let at = json!(format!("2026-06-0{day}T08:00:00+02:00"));
        world.call(
            "harvest.record",
            with(mint(f64::from(day)), "picked_at", at),
        );
    }
    let page = world.call("harvest.list", json!({"limit": 2}));
    let weights = |page: &Value| -> Vec<f64> {
        page["harvests"]
            .as_array()
            .unwrap()
            .iter()
            .map(|it| number(it, "/fresh_mass_g"))
            .collect()
    };
    assert_eq!(
        (weights(&page), &page["more"]),
        (vec![5.0, 4.0], &json!(true))
    );
    let next = world.call(
        "harvest.list",
        json!({"limit": 3, "before": page["harvests"][1]["id"]}),
    );
    assert_eq!(
        (weights(&next), &next["more"]),
        (vec![3.0, 2.0, 1.0], &json!(false))
    );
    assert_eq!(
        weights(&world.call("harvest.list", json!({"herb": "sage"}))),
        Vec::<f64>::new()
    );
    world
        .refused("harvest.list", json!({"limit": 0}))
        .of("invalid", "limit");
    world
        .refused("harvest.list", json!({"limit": -1}))
        .of("invalid", "limit");
    world
        .refused(
            "harvest.show",
            json!({"id": "01a212d7-fbd9-7985-8141-77499dbbc0e6"}),
        )
        .of("not_found", "id");
}

#[test]
fn dew_is_said_to_spoil_the_estimate() {
    let world = World::new();
    let reply = world.harvest("harvest.record", with(mint(100.0), "surface", json!("dew")));
    let notes = reply["harvest"]["estimate"]["notes"].to_string();
    assert!(notes.contains("surface_wet"), "{notes}");
}
