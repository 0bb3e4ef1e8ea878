//! `herb.find` and the search, over every name of the table.

use std::collections::BTreeMap;

use serde_json::json;

use crate::world::World;

#[test]
fn every_name_of_the_table_comes_first_by_the_command() {
    let world = World::new();
    let mut keys: BTreeMap<String, Vec<&str>> = BTreeMap::new();
    for row in formulary::names::all() {
        keys.entry(row.name.to_lowercase())
            .or_default()
            .push(&row.key);
    }
    for row in formulary::names::all() {
        let found = world.call("herb.find", json!({"text": row.name, "limit": 6}));
        let several = &keys[&row.name.to_lowercase()];
        let herbs = found["herbs"].as_array().unwrap();
        let first: Vec<&str> = herbs
            .iter()
            .take(several.len().max(4))
            .map(|herb| herb["key"].as_str().unwrap())
            .collect();
        if several.iter().all(|key| *key == row.key) && first.first() != Some(&row.key.as_str()) {
            // A name that differs from another herb's only in its spelling, such as the Latin of two parts.
            assert!(first.contains(&row.key.as_str()), "{}: {first:?}", row.name);
        }
        assert!(first.contains(&row.key.as_str()), "{}: {first:?}", row.name);
    }
}

#[test]
fn what_makers_type_finds_the_herb_in_both_numbers_and_with_a_slip() {
    let world = World::new();
    for (typed, key) in [
        ("elderberry", "elder-berry"),
        ("Elderberries", "elder-berry"),
        ("rosehip", "rose"),
        ("chilli", "cayenne"),
        ("nettles", "nettle"),
        ("coneflower", "echinacea"),
        ("marigold", "calendula"),
        ("turmeric", "turmeric"),
        ("cinnamon", "cinnamon"),
        ("black pepper", "black-pepper"),
        ("catnip", "catnip"),
        ("Holunderbeeren", "elder-berry"),
        ("Brennnesseln", "nettle"),
        ("pepermint", "peppermint"),
        ("Lavendl", "lavender"),
    ] {
        let found = world.call("herb.find", json!({"text": typed}));
        assert_eq!(found["herbs"][0]["key"], key, "{typed}");
        assert!(found["stop"].is_null(), "{typed}");
    }
    let mint = world.call("herb.find", json!({"text": "mint"}));
    let keys: Vec<_> = mint["herbs"].as_array().unwrap()[..2]
        .iter()
        .map(|herb| herb["key"].as_str().unwrap())
        .collect();
    assert_eq!(keys, ["peppermint", "spearmint"], "several herbs are shown");
}

#[test]
fn the_search_finds_an_herb_by_any_of_its_names() {
    let world = World::new();
    for (typed, key) in [
        ("elderberries", "elder-berry"),
        ("chilli", "cayenne"),
        ("Ringelblume", "calendula"),
        ("marigold", "calendula"),
    ] {
        let hits = world.call("journal.search", json!({"text": typed}));
        assert_eq!(hits["hits"][0]["id"], key, "{typed}");
    }
}

#[test]
fn an_own_herb_is_found_by_the_makers_name() {
    let world = World::new();
    let added = world.call(
        "herb.add",
        json!({"common": "Aunt's mint", "latin": null, "parts": ["leaf"], "note": null}),
    );
    let found = world.call("herb.find", json!({"text": "aunt's mint"}));
    assert_eq!(found["herbs"][0]["key"], added["herb"]["key"]);
}
