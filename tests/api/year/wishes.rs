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
    for line in all["buy"].as_array().unwrap() {
        let missing = number(line, "/needed_ml") - number(line, "/on_the_shelf_ml");
        if line["kind"] == "spirit" {
            assert!(number(line, "/on_the_shelf_ml") == 2000.0);
            assert!((number(line, "/buy_ml") - missing.max(0.0)).abs() < 1e-6);
        }
    }
    world.call("plan.strike", json!({"id": mint["wish"]["id"]}));
    assert_eq!(
        world.call("plan.list", json!({}))["wishes"]
            .as_array()
            .unwrap()
            .len(),
        2
    );
}
