//! `plan.all`: several wishes as one list, with the shelf and the rack in it.

use serde_json::{Value, json};

use super::Year;
use crate::world::number;

#[test]
fn wishes_become_one_list() {
    let year = Year::begin();
    let world = &year.world;
    let wish = |herb: &str, bottles: u32| {
        let request = json!({"herb": herb, "part": "leaf", "preparation": "tincture", "state": "dried",
            "bottles": bottles, "bottle_ml": 60, "ready_on": "2026-12-01", "gifts": true});
        world.call("plan.save", request)
    };
    wish("sage", 6);
    wish("sage", 3);
    let mint = wish("peppermint", 40);
    let all = world.call("plan.all", json!({}));
    assert_eq!(all["wishes"].as_array().unwrap().len(), 3);
    let pick = all["pick"].as_array().unwrap();
    assert_eq!(pick.len(), 2, "the same herb is picked once");
    let each: f64 = all["wishes"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|it| it["wish"]["herb"] == "sage")
        .map(|it| number(it, "/plan/pick_fresh_g/value"))
        .sum();
    let sage = pick.iter().find(|it| it["herb"] == "sage").unwrap();
    assert!((number(sage, "/pick_fresh_g/value") - each).abs() < 1e-6);
    let mut buy = all["buy"].as_array().unwrap().iter();
    let spirit = buy.find(|line| line["kind"] == "spirit").unwrap();
    let missing = number(spirit, "/needed_ml") - number(spirit, "/on_the_shelf_ml");
    assert_eq!(number(spirit, "/on_the_shelf_ml"), 2000.0);
    assert!((number(spirit, "/buy_ml") - missing.max(0.0)).abs() < 1e-6);
    world.call("plan.strike", json!({"id": mint["wish"]["id"]}));
    assert_eq!(
        world.call("plan.list", json!({}))["wishes"]
            .as_array()
            .unwrap()
            .len(),
        2
    );
}

#[test]
fn what_is_dried_and_what_is_drying_need_not_be_picked_again() {
    let year = Year::begin();
    let world = &year.world;
    let wish = |state: &str| {
        let request = json!({"herb": "peppermint", "part": "leaf", "preparation": "tincture",
            "state": state, "bottles": 20, "bottle_ml": 100, "ready_on": "2026-12-01", "gifts": true});
        world.call("plan.save", request);
    };
    wish("dried");
    let line = |state: &str| {
        let all = world.call("plan.all", json!({}));
        let lines = all["pick"].as_array().unwrap().clone();
        lines.into_iter().find(|line| line["state"] == state)
    };
    let before = line("dried").unwrap();
    let needed = number(&before, "/dry_needed_g/value");
    let ratio = number(&before, "/pick_fresh_g/value") / needed;
    assert!(ratio > 3.0, "fresh leaf loses most of its weight");

    let hung = year.pick("peppermint", "leaf", 500.0);
    let tray = year.dry(&hung, 500.0, 0.22, 10);
    let drying = line("dried").unwrap();
    let will_be = number(&drying, "/drying_dry_g/value");
    let lacks = (needed - will_be) * ratio;
    assert!((number(&drying, "/pick_fresh_g/value") - lacks).abs() < 1e-6);
    world.call(
        "tray.take_down",
        json!({"tray": tray["id"], "gross_g": 110}),
    );
    let dried = line("dried").unwrap();
    assert_eq!(number(&dried, "/dried_left_g"), 110.0);
    assert_eq!(dried["drying_dry_g"], Value::Null);
    let lacks = (needed - 110.0) * ratio;
    assert!((number(&dried, "/pick_fresh_g/value") - lacks).abs() < 1e-6);

    // What goes in fresh is picked on the day it is poured, however much is dried.
    wish("fresh");
    let fresh = line("fresh").unwrap();
    assert_eq!(fresh["dry_needed_g"], Value::Null);
    assert_eq!(fresh["pick_by"], fresh["start_on"]);
    assert_eq!(line("dried").unwrap(), dried);
}

#[test]
fn more_than_is_used_in_a_year_is_said_of_the_wishes_together() {
    let year = Year::begin();
    let world = &year.world;
    let jar = year.fresh(&year.pick("peppermint", "leaf", 500.0));
    let filled = year.filled(&jar, 100, 2);
    let wish = |more: Value| {
        let mut request = json!({"herb": "peppermint", "part": "leaf", "preparation": "tincture",
            "state": "dried", "bottles": 1, "bottle_ml": 100, "ready_on": "2027-06-01"});
        for (name, value) in more.as_object().unwrap() {
            request[name] = value.clone();
        }
        world.call("plan.save", request);
    };
    let notes = || {
        let all = world.call("plan.all", json!({}));
        let warned = all["wishes"].as_array().unwrap().iter().any(|wish| {
            let notes = wish["plan"]["notes"].as_array().unwrap();
            notes.iter().any(|note| note["code"] == "more-than-a-year")
        });
        (warned, all["notes"].as_array().unwrap().clone())
    };
    world.call(
        "bottle.use",
        json!({"bottle": filled["bottles"][0]["id"], "ml": 40}),
    );
    wish(json!({}));
    assert_eq!(
        notes(),
        (false, Vec::new()),
        "of one day nothing can be told"
    );
    // 40 mL in 100 days are 146 mL in a year.
    world.at("2026-09-18T09:00:00+02:00");
    assert_eq!(notes(), (false, Vec::new()));
    wish(json!({}));
    let (warned, together) = notes();
    assert!(!warned, "each alone is less");
    assert!(
        together[0]["text"]
            .as_str()
            .unwrap()
            .contains("the 146 mL you use in a year")
    );
    assert!(
        together[1]["text"]
            .as_str()
            .unwrap()
            .contains("You recorded using 40 mL in the last 100 days")
    );
    wish(json!({"bottles": 2}));
    assert!(notes().0, "this one alone is more");
    wish(json!({"herb": "sage", "bottles": 200}));
    assert_eq!(notes().1.len(), 2, "of sage nothing was used yet");
}
