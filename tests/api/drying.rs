//! `drying.estimate`.

use serde_json::{Value, json};

use crate::world::{World, is_interval, number, text};

fn estimate(request: Value) -> Value {
    World::new().call("drying.estimate", request)
}

#[test]
fn the_basis_follows_what_was_given() {
    let table = json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": 200});
    assert_eq!(text(&estimate(table.clone()), "/basis"), "table");

    let mut own = table.clone();
    own["own_dry_matter_fractions"] = json!([0.21, 0.22, 0.2]);
    let own = estimate(own);
    assert_eq!(text(&own, "/basis"), "own batches");

    let mut sample = table.clone();
    sample["sample"] = json!({"fresh_g": 20, "dry_g": 4.2});
    sample["scale_step_g"] = json!(0.1);
    let sample = estimate(sample);
    assert_eq!(text(&sample, "/basis"), "sample");

    let width =
        |reply: &Value| number(reply, "/dry_matter_g/high") - number(reply, "/dry_matter_g/low");
    let table = estimate(table);
    assert!(
        width(&sample) < width(&own) && width(&own) < width(&table),
        "a measurement tells more than own batches, and these more than a table"
    );
    for reply in [&table, &own, &sample] {
        is_interval(reply, "/dry_matter_g");
        is_interval(reply, "/target_mass_g");
    }
}

#[test]
fn a_stated_prior_is_used_as_it_is() {
    // exp(-1.5) = 0.22313 of 1000 g; the ends are 1.644854 standard deviations away.
    let prior = json!({"ln_dry_matter_fraction_mean": -1.5, "ln_dry_matter_fraction_sd": 0.1});
    let reply = estimate(json!({"prior": prior, "fresh_mass_g": 1000}));
    assert!((number(&reply, "/dry_matter_g/value") - 223.130).abs() < 0.001);
    assert!((number(&reply, "/dry_matter_g/low") - 189.290).abs() < 0.01);
    assert!((number(&reply, "/target_mass_g/value") - 223.130 / 0.9).abs() < 0.001);
    assert_eq!(reply["moisture_now_wet_percent"], Value::Null);
    assert_eq!(reply["is_dry"], false);
    assert!(
        reply["notes"].to_string().contains("not_weighed_yet"),
        "null comes with its reason"
    );
}

#[test]
fn names_of_a_herb_are_read_with_tolerance() {
    let ask = |name: &str| estimate(json!({"herb": name, "part": "leaf", "fresh_mass_g": 100}));
    let by_key = ask("peppermint");
    for name in ["Peppermint", "Mentha x piperita", "PEPPERMINT"] {
        assert_eq!(ask(name), by_key, "{name}");
    }
    let unknown = ask("moon grass");
    assert!(
        text(&unknown, "/notes/0/text").contains("the general one"),
        "a general figure says so"
    );
}

#[test]
fn a_wrong_figure_is_refused_at_its_field() {
    let world = World::new();
    let ask = |field: &str, value: Value| {
        let mut request = json!({"herb": "sage", "part": "leaf", "fresh_mass_g": 100});
        request[field] = value;
        world.refused("drying.estimate", request)
    };
    ask("fresh_mass_g", json!(0)).of("invalid", "fresh_mass_g");
    ask("fresh_mass_g", json!(1e308)).of("invalid", "fresh_mass_g");
    ask("scale_step_g", json!(0)).of("invalid", "scale_step_g");
    ask("target_moisture_wet_percent", json!(99)).of("invalid", "target_moisture_wet_percent");
    ask(
        "weighings",
        json!([{"hours": 1, "mass_g": 90}, {"hours": -1, "mass_g": 90}]),
    )
    .of("invalid", "weighings[1].hours");
    ask("weighings", json!([{"hours": 1, "mass_g": -90}])).of("invalid", "weighings[0].mass_g");
    ask("sample", json!({"fresh_g": 10, "dry_g": 12})).of("invalid", "sample.dry_g");
    ask(
        "air",
        json!({"temperature_c": 20, "relative_humidity_percent": 120}),
    )
    .of("invalid", "air.relative_humidity_percent");
    ask(
        "air",
        json!({"temperature_c": 2000, "relative_humidity_percent": 50}),
    )
    .of("invalid", "air.temperature_c");
    ask("own_dry_matter_fractions", json!([1.5])).of("invalid", "own_dry_matter_fractions");
    world
        .refused("drying.estimate", json!({"fresh_mass_g": 100}))
        .of("invalid", "herb");
    let prior = json!({"ln_dry_matter_fraction_mean": 2, "ln_dry_matter_fraction_sd": 0.1});
    ask("prior", prior).of("invalid", "prior.ln_dry_matter_fraction_mean");
}
