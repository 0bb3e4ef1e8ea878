//! The search, over what hangs together.

use serde_json::{Value, json};

use super::Year;
use crate::world::text;

#[test]
fn everything_is_found_by_what_it_hangs_together_with() {
    let year = Year::begin();
    let world = &year.world;
    let mint = year.pick("peppermint", "leaf", 500.0);
    let jar = year.fresh(&mint);
    world.call(
        "jar.correct",
        json!({"id": jar["id"], "note": "Für den Winter, très fort"}),
    );
    world.at("2026-07-20T08:00:00+02:00");
    let bottle = year.filled(&jar, 60, 1)["bottles"][0].clone();
    world.call(
        "bottle.give",
        json!({"bottle": bottle["id"], "to": "Old Ferry"}),
    );
    let found = |typed: &str| -> Vec<(String, String)> {
        let reply = world.call("journal.search", json!({"text": typed}));
        let hits = reply["hits"].as_array().unwrap().iter();
        hits.map(|hit| (text(hit, "/noun").to_owned(), text(hit, "/id").to_owned()))
            .collect()
    };
    let is_found = |typed: &str, noun: &str, id: &Value| {
        let hits = found(typed);
        let wanted = (noun.to_owned(), id.as_str().unwrap().to_owned());
        assert!(hits.contains(&wanted), "{typed:?} finds {hits:?}");
    };
    is_found("mentha pip", "jar", &jar["id"]);
    is_found("Peppermint", "harvest", &mint["id"]);
    is_found("peppermint", "herb", &json!("peppermint"));
    is_found("lower", "bed", &year.bed["id"]);
    is_found("lower bank", "harvest", &mint["id"]);
    is_found("fur winter", "jar", &jar["id"]);
    is_found("tres", "jar", &jar["id"]);
    is_found("ferry", "bottle", &bottle["id"]);
    is_found(text(&bottle, "/code"), "bottle", &bottle["id"]);
    is_found(
        &text(&bottle, "/code").replace('-', " ").to_uppercase(),
        "bottle",
        &bottle["id"],
    );
    is_found("grain", "supply", &year.spirit["id"]);
    for nothing in [
        "",
        "  ",
        "\"",
        "xyzzy",
        "* OR *",
        "NEAR(",
        "peppermint xyzzy",
        "'; DROP TABLE jar; --",
    ] {
        assert_eq!(found(nothing), Vec::new(), "{nothing:?}");
    }
    // A name that was taken back is no longer found.
    let deed = world.call(
        "bed.correct",
        json!({"id": year.bed["id"], "name": "Orchard"}),
    );
    is_found("orchard", "harvest", &mint["id"]);
    world.call("deed.undo", json!({"deed": deed["deed"]}));
    assert_eq!(found("orchard"), Vec::new());
}
