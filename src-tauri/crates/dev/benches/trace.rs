//! Traces through 20,000 jars and 100,000 bottles: any bottle to its bed, any bed to its bottles,
//! each under 50 ms. Fails when one is not.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

#[path = "../src/years/mod.rs"]
mod years;

use std::sync::Arc;
use std::time::{Duration, Instant};

use api::{App, StandingClock};
use chrono::DateTime;
use serde_json::{Value, json};

/// What a maker does not notice as waiting.
const LIMIT: Duration = Duration::from_millis(50);

/// Each request is asked in so many rounds, and its median counts.
const ROUNDS: usize = 9;

/// The slowest of several requests, each by the median of rounds in which all are asked.
fn slowest(app: &App, command: &str, requests: &[Value]) -> (Duration, usize) {
    let requests: Vec<String> = requests.iter().map(Value::to_string).collect();
    let mut took = vec![Vec::new(); requests.len()];
    let mut bytes = 0;
    // The first round warms up.
    for round in 0..=ROUNDS {
        for (request, took) in requests.iter().zip(&mut took) {
            let start = Instant::now();
            let reply = api::call(app, command, request).unwrap();
            if round > 0 {
                took.push(start.elapsed());
                bytes = bytes.max(reply.len());
            }
        }
    }
    let medians = took.into_iter().map(|mut took| {
        took.sort_unstable();
        took[took.len() / 2]
    });
    (medians.max().unwrap(), bytes)
}

fn list(app: &App, command: &str, request: Value, field: &str) -> Vec<Value> {
    let reply = api::call(app, command, &request.to_string()).unwrap();
    let reply: Value = serde_json::from_str(&reply).unwrap();
    reply[field].as_array().unwrap().clone()
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let size = years::Size {
        years: 20,
        jars_a_year: 1000,
    };
    let start = Instant::now();
    let deeds = years::fill(folder.path(), size).unwrap();
    println!(
        "{deeds} deeds written in {:.1} s",
        start.elapsed().as_secs_f64()
    );
    let now = DateTime::parse_from_rfc3339(years::LAST).unwrap();
    let app = App::open(folder.path(), Box::new(Arc::new(StandingClock::at(now)))).unwrap();

    let beds = list(&app, "bed.list", json!({}), "beds");
    let beds: Vec<Value> = beds.iter().map(|bed| json!({"bed": bed["id"]})).collect();
    let of_a_bed = list(&app, "trace.forward", beds[0].clone(), "bottles");
    let bottles: Vec<Value> = of_a_bed
        .iter()
        .step_by(97)
        .map(|it| json!({"bottle": it["id"]}))
        .collect();
    let supplies = list(&app, "supply.list", json!({}), "supplies");
    let supplies: Vec<Value> = supplies
        .iter()
        .step_by(41)
        .map(|it| json!({"supply": it["id"]}))
        .collect();
    let words = ["mentha", "ferryman", "north wall", "cloudy", "tincture"];
    let words: Vec<Value> = words.iter().map(|word| json!({"text": word})).collect();
    let years: Vec<Value> = (2006..2026).map(|year| json!({"year": year})).collect();

    let mut late = Vec::new();
    for (command, requests, is_held) in [
        ("trace.back", bottles, true),
        ("trace.forward", beds, true),
        ("trace.forward", supplies, true),
        ("journal.search", words, false),
        ("due.list", vec![json!({})], false),
        ("bottle.list", vec![json!({})], false),
        ("season.show", years, false),
    ] {
        let (worst, bytes) = slowest(&app, command, &requests);
        println!(
            "{command:<14} {:>7.1} ms at worst of {}, {bytes} bytes",
            worst.as_secs_f64() * 1000.0,
            requests.len()
        );
        if is_held && worst > LIMIT {
            late.push(command);
        }
    }
    assert!(late.is_empty(), "slower than {LIMIT:?}: {late:?}");
}
