//! Every command, asked in every shape its request can have.

use std::cell::Cell;
use std::collections::BTreeMap;
use std::time::Duration;

use api::{App, StandingClock};
use checks::worked;
use chrono::DateTime;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use serde_json::{Value, json};

use crate::shapes::{Bindings, Known};
use crate::{HANG, times};

const NOW: &str = "2026-07-14T09:00:00+02:00";

fn open(folder: &std::path::Path) -> App {
    let now = DateTime::parse_from_rfc3339(NOW).unwrap();
    App::open(folder, Box::new(StandingClock::at(now))).unwrap()
}

fn call(app: &App, command: &str, request: &Value) -> Value {
    let reply = api::call(app, command, &request.to_string());
    serde_json::from_str(&reply.unwrap_or_else(|why| panic!("{command}: {why:?}"))).unwrap()
}

/// A little of everything, so that ids lead somewhere.
fn filled(app: &App) -> Known {
    let harvest = json!({ "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 600,
        "bed_name": "Lower bank" });
    let harvest = call(app, "harvest.record", &harvest)["harvest"]["id"].clone();
    let tray = json!({ "harvest": harvest, "name": "Sieve", "mass_g": 300, "tare_g": 0 });
    let tray = call(app, "tray.start", &tray);
    let supply = json!({ "name": "Spirit", "size_ml": 5000,
        "item": { "kind": "spirit", "strength_percent_vol": 96 } });
    let supply = call(app, "supply.add", &supply);
    let plant = json!({ "herb": "peppermint", "part": "leaf", "state": "dried", "mass_g": 40 });
    let composition = json!({ "preparation": "tincture-dried", "plants": [plant], "ratio_ml_per_g": 5,
        "stock": [{ "kind": "spirit", "strength_percent_vol": 95 }, { "kind": "water" }],
        "strength_percent_vol": 50 });
    let jar = call(app, "jar.pour", &json!({ "composition": composition }));
    let id = &jar["jar"]["id"];
    let strain = json!({ "jar": id, "came_out_ml": 150, "how": "pressed" });
    call(app, "jar.strain", &strain);
    let fill = json!({ "jar": id, "bottles": [{ "ml": 50, "count": 2 }] });
    let bottles = call(app, "bottle.fill", &fill);
    call(
        app,
        "dropper.count",
        &json!({ "name": "Blue", "drops_in_1_ml": [28, 30, 29] }),
    );
    let mut known = Known::new();
    for reply in [&harvest, &tray, &supply, &jar, &bottles] {
        ids(reply, &mut known);
    }
    known.sort_unstable();
    known.dedup();
    known
}

/// Every text that looks like an id or a code.
fn ids(value: &Value, into: &mut Known) {
    match value {
        Value::String(text) if text.len() == 36 && text.matches('-').count() == 4 => {
            into.push(text.clone());
        }
        Value::Array(values) => values.iter().for_each(|value| ids(value, into)),
        Value::Object(fields) => fields.values().for_each(|value| ids(value, into)),
        _ => {}
    }
}

/// Waits for a job that a command may have begun.
fn settled(app: &App) {
    while !call(app, "job.running", &json!({}))["job"].is_null() {
        std::thread::sleep(Duration::from_millis(1));
    }
}

#[test]
fn every_command_answers_or_refuses_in_a_sentence_whatever_it_is_asked() {
    let folder = tempfile::tempdir().unwrap();
    let app = open(folder.path());
    let known = filled(&app);
    let bindings = Bindings::read(&api::bindings());
    let commands = bindings.commands();
    assert_eq!(
        commands.len(),
        api::names().len(),
        "every command has a request"
    );
    let (mut asked, mut answered) = (0_u32, 0_u32);
    let mut slowest: BTreeMap<Duration, String> = BTreeMap::new();
    for command in &commands {
        let cases = 24 * times();
        let mut runner = TestRunner::new(ProptestConfig {
            failure_persistence: None,
            ..ProptestConfig::with_cases(cases)
        });
        let (longest, good) = (Cell::new(Duration::ZERO), Cell::new(0));
        let outcome = runner.run(&bindings.request(command, &known), |request| {
            let text = request.to_string();
            let before = worked();
            let answer = api::call(&app, command, &text);
            let took = worked() - before;
            // A job is work that a page watches; the command that begins it must not wait for it.
            settled(&app);
            longest.set(longest.get().max(took));
            prop_assert!(took < HANG, "{command} worked {took:?} at {text:.400}");
            match answer {
                Ok(reply) => {
                    good.set(good.get() + 1);
                    prop_assert!(serde_json::from_str::<Value>(&reply).is_ok(), "{}", reply);
                }
                Err(failure) => {
                    let said = failure.message;
                    prop_assert!(
                        said.to_string().ends_with('.')
                            && !said
                                .to_string()
                                .starts_with(|first: char| first.is_lowercase()),
                        "{command} {text:.400} is refused by no sentence: {said}"
                    );
                    prop_assert!(
                        said.to_string().chars().count() < 900,
                        "too long to read: {said:.300}"
                    );
                }
            }
            Ok(())
        });
        outcome.unwrap_or_else(|why| panic!("{command}: {why}"));
        asked += cases;
        answered += good.get();
        slowest.insert(longest.get(), command.clone());
    }
    let slowest: Vec<_> = slowest.iter().rev().take(3).collect();
    eprintln!(
        "{asked} requests to {} commands, {answered} carried out; the most work: {slowest:?}",
        commands.len()
    );
    assert!(
        answered * 10 > asked,
        "too few requests make sense: {answered} of {asked}"
    );
    drop(app);
    assert_eq!(open(folder.path()).faults().unwrap(), []);
}

#[test]
fn a_request_longer_than_any_page_sends_is_refused_unread() {
    let folder = tempfile::tempdir().unwrap();
    let app = open(folder.path());
    let request = format!(
        "{{\"name\":{}1{}}}",
        "[".repeat(32_000_000),
        "]".repeat(32_000_000)
    );
    let before = worked();
    let failure = api::call(&app, "bed.add", &request).unwrap_err();
    assert!(failure.message.to_string().contains("2 MiB"), "{failure:?}");
    let took = worked() - before;
    assert!(took < Duration::from_secs(1), "reading it works {took:?}");
    let deep = format!(
        "{{\"name\":{}1{}}}",
        "[".repeat(900_000),
        "]".repeat(900_000)
    );
    assert!(
        api::call(&app, "bed.add", &deep).is_err(),
        "nor is one that is nested without end"
    );
}
