//! A measured pH: `bottle.check` and `jar.strain` take it of what acid keeps, and what it tells is judged.

use serde_json::{Value, json};

use super::{filled, poured, strained};
use crate::world::{World, number, text};

/// Dried sage in vinegar of 5 %, as the composer proposes it.
fn vinegar(world: &World) -> Value {
    let plant = json!({"herb": "sage", "part": "leaf", "state": "dried", "mass_g": 50});
    let composition = json!({"preparation": "vinegar", "plants": [plant],
        "stock": [{"kind": "vinegar", "acidity_g_per_100ml": 5}]});
    world.call("jar.pour", json!({"composition": composition}))["jar"].clone()
}

fn bottles(world: &World, count: u32) -> (Value, Vec<Value>) {
    let jar = vinegar(world);
    strained(world, &jar, 60.0 * f64::from(count), "dripped");
    let bottles = filled(world, &jar, 60.0, count)["bottles"].clone();
    (jar, bottles.as_array().unwrap().clone())
}

fn check(world: &World, bottle: &Value, more: Value) -> Value {
    let mut request = json!({"bottle": bottle["id"], "outcome": "good"});
    for (name, value) in more.as_object().unwrap() {
        request[name] = value.clone();
    }
    world.call("bottle.check", request)["bottle"].clone()
}

fn show(world: &World, bottle: &Value) -> Value {
    world.call("bottle.show", json!({"id": bottle["id"]}))["bottle"].clone()
}

fn codes(page: &Value) -> Vec<&str> {
    let cautions = page["cautions"].as_array().unwrap();
    cautions.iter().map(|note| text(note, "/code")).collect()
}

/// The words of a picture, one after another.
fn printed(svg: &str) -> String {
    let words = svg.split('<').filter_map(|part| part.split_once('>'));
    let words: Vec<&str> = words.map(|(_, word)| word.trim()).collect();
    words
        .join(" ")
        .split_whitespace()
        .collect::<Vec<_>>()
        .join(" ")
}

fn due(world: &World) -> Vec<Value> {
    let due = world.call("due.list", json!({"days": 0}));
    due["due"].as_array().unwrap().clone()
}

#[test]
fn a_ph_above_the_limit_ends_the_keeping_of_a_bottle() {
    let world = World::new();
    let (_, all) = bottles(&world, 1);
    let before = show(&world, &all[0]);
    assert_eq!(before["keeping"]["verdict"], "keeps");
    assert_eq!(before["takes_ph"], true);
    assert_eq!(before["ph"], Value::Null);
    assert!(before["best_before"].is_string() && codes(&before).contains(&"ph-strip"));
    assert!(due(&world).is_empty());

    let page = check(&world, &all[0], json!({"ph": 4.8, "read_with": "meter"}));
    assert_eq!(page["keeping"]["verdict"], "use now");
    assert!(text(&page, "/keeping/text").contains("measured pH 4.8 (4.7 to 4.9)"));
    assert_eq!(page["best_before"], Value::Null, "its date stands no more");
    assert_eq!(page["check_on"], Value::Null, "nobody waits for a look");
    assert_eq!(
        (&page["state"], &page["not_acid"]),
        (&json!("to check"), &json!(true))
    );
    assert_eq!(codes(&page)[0], "not-acid", "the gravest stands first");
    assert!(!codes(&page).contains(&"ph-strip"), "it was measured");
    assert_eq!(page["ph"]["is_acid_enough"], false);
    assert!((number(&page, "/ph/ph/high") - 4.9).abs() < 1e-9);
    assert!(text(&page, "/ph/told/source").contains("21 CFR 114.3"));
    assert_eq!(page["checks"][0]["ph"], 4.8);
    assert_eq!(page["checks"][0]["read_with"], "meter");

    let lines = due(&world);
    assert_eq!(
        (lines.len(), &lines[0]["what"], &lines[0]["harm"]),
        (1, &json!("use before"), &json!(3))
    );
    assert!(text(&lines[0], "/text").contains("use it within days, or throw it away"));
    let listed = world.call("bottle.list", json!({"state": "to check"}));
    assert_eq!(listed["bottles"][0]["not_acid"], true);

    // Thrown away, it asks for nobody any more.
    world.call(
        "bottle.bin",
        json!({"bottle": all[0]["id"], "reason": "pH 4.8"}),
    );
    assert!(due(&world).is_empty());
    assert_eq!(show(&world, &all[0])["not_acid"], false);
}

#[test]
fn a_strip_that_may_be_out_is_judged_at_its_bad_end() {
    let world = World::new();
    let (_, all) = bottles(&world, 1);
    // 21 CFR 114.80(a)(2): up to 4.0 a strip will do, above it takes a meter.
    let readings = [
        (json!({"ph": 3.0, "read_with": "strip"}), false, "keeps"),
        (
            json!({"ph": 4.0, "read_with": "strip"}),
            false,
            "keeps cold",
        ),
        (json!({"ph": 4.5, "read_with": "strip"}), true, "use now"),
        (json!({"ph": 4.5}), true, "use now"),
        (
            json!({"ph": 4.5, "read_with": "meter"}),
            false,
            "keeps cold",
        ),
        (json!({"ph": 3.9, "read_with": "meter"}), false, "keeps"),
    ];
    for (day, (request, not_acid, verdict)) in (15..).zip(readings) {
        world.at(&format!("2026-07-{day}T09:00:00+02:00"));
        let page = check(&world, &all[0], request.clone());
        assert_eq!(page["not_acid"], not_acid, "{request}");
        assert_eq!(page["keeping"]["verdict"], verdict, "{request}");
        assert_eq!(page["best_before"].is_null(), not_acid, "{request}");
        let told = text(&page, "/ph/told/text");
        assert_eq!(
            told.starts_with("It may not be acidic enough"),
            not_acid,
            "{told}"
        );
    }
    // Taken back, the reading before it counts again.
    let deeds = world.call("deed.list", json!({}))["deeds"].clone();
    for deed in deeds.as_array().unwrap().iter().take(2) {
        assert!(text(deed, "/text").contains(", pH "));
        world.call("deed.undo", json!({"deed": deed["deed"]}));
    }
    assert_eq!(show(&world, &all[0])["not_acid"], true);
    assert!(world.app().faults().unwrap().is_empty());
}

#[test]
fn a_low_ph_never_makes_a_verdict_better() {
    let world = World::new();
    // A shrub is kept cold however sour it is.
    let plant = json!({"herb": "sage", "part": "leaf", "state": "dried", "mass_g": 20});
    let composition = json!({"preparation": "shrub", "plants": [plant],
        "stock": [{"kind": "vinegar", "acidity_g_per_100ml": 5}, {"kind": "sugar"}]});
    let jar = world.call("jar.pour", json!({"composition": composition}))["jar"].clone();
    let verdict = jar["keeping"]["verdict"].clone();
    assert_eq!(verdict, "keeps cold");
    let request = json!({"jar": jar["id"], "came_out_ml": 60, "how": "dripped", "ph": 2.8, "read_with": "meter"});
    let jar = world.call("jar.strain", request)["jar"].clone();
    assert_eq!(jar["keeping"]["verdict"], verdict);
    assert_eq!(jar["strainings"][0]["ph"], 2.8);
    assert_eq!(jar["ph"]["told"]["code"], "acid");
}

#[test]
fn what_is_read_at_straining_or_in_one_bottle_counts_for_all_of_the_liquid() {
    let world = World::new();
    let jar = vinegar(&world);
    let request = json!({"jar": jar["id"], "came_out_ml": 200, "how": "dripped", "ph": 4.4, "read_with": "strip"});
    let strained = world.call("jar.strain", request)["jar"].clone();
    assert_eq!(strained["keeping"]["verdict"], "use now");
    assert_eq!(codes(&strained)[0], "not-acid");
    assert_eq!(due(&world)[0]["noun"], "jar", "what is left in the jar");
    let all = filled(&world, &jar, 60.0, 2)["bottles"].clone();
    assert_eq!(
        all[0]["best_before"],
        Value::Null,
        "no date for what may not keep"
    );
    assert_eq!(
        (&all[0]["not_acid"], &all[1]["not_acid"]),
        (&json!(true), &json!(true))
    );

    world.at("2026-07-16T09:00:00+02:00");
    // A meter says more of the one; the liquid is the same, but only the one was read again.
    let first = check(&world, &all[0], json!({"ph": 3.4, "read_with": "meter"}));
    assert_eq!(first["not_acid"], false);
    assert_eq!(show(&world, &all[1])["not_acid"], true);
    // And a worse reading of the other comes back to it.
    world.at("2026-07-20T09:00:00+02:00");
    check(&world, &all[1], json!({"ph": 5, "read_with": "meter"}));
    let first = show(&world, &all[0]);
    assert_eq!(first["not_acid"], true);
    assert_eq!(first["ph"]["read_in"], all[1]["code"]);
    let listed = world.call("bottle.list", json!({"state": "to check"}));
    assert_eq!(listed["bottles"].as_array().unwrap().len(), 2);

    let label = json!({"bottle": all[0]["id"], "gift": true, "ethanol": false,
        "label": {"width_mm": 100, "height_mm": 80}});
    let drawn = world.call("label.single", label);
    let printed = printed(text(&drawn, "/svg"));
    assert!(
        printed.contains("Not acidic enough to keep: pH 5 was measured"),
        "{printed}"
    );
    assert!(
        printed.contains("use it within days") && !printed.contains("Best before"),
        "{printed}"
    );
    assert!(world.app().faults().unwrap().is_empty());
    // What each write noted of the shelf is what the log tells when all is made anew.
    let folder = world.closed();
    let device = journal::DeviceId(uuid::Uuid::from_u128(1));
    let mut store = store::Store::open(&folder.path().join("journal.trugbook"), device).unwrap();
    let tables = store.tables().unwrap();
    store.rebuild().unwrap();
    assert_eq!(store.tables().unwrap(), tables);
}

#[test]
fn a_ph_is_refused_where_it_says_nothing() {
    let world = World::new();
    let (_, all) = bottles(&world, 1);
    let refuse = |bottle: &Value, more: Value| {
        let mut request = json!({"bottle": bottle["id"], "outcome": "good"});
        for (name, value) in more.as_object().unwrap() {
            request[name] = value.clone();
        }
        world.refused("bottle.check", request)
    };
    refuse(&all[0], json!({"ph": 14.5}))
        .of("invalid", "ph")
        .says("between 0 and 14");
    refuse(&all[0], json!({"ph": -1})).of("invalid", "ph");
    refuse(&all[0], json!({"read_with": "meter"}))
        .of("invalid", "ph")
        .says("Enter the pH you measured");
    let jar = poured(&world, "sage", "leaf", 50.0, 250.0);
    world
        .refused(
            "jar.strain",
            json!({"jar": jar["id"], "came_out_ml": 200, "how": "wrung", "ph": 5}),
        )
        .of("invalid", "ph");
    let tincture = strained(&world, &jar, 200.0, "wrung");
    assert_eq!(tincture["takes_ph"], false);
    let tincture = filled(&world, &jar, 50.0, 1)["bottles"][0].clone();
    refuse(&tincture, json!({"ph": 5}))
        .of("invalid", "ph")
        .says("vinegars, shrubs and oxymels");
}
