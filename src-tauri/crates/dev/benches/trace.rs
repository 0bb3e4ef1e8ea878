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

/// The slowest of several runs over different rows, after one that warms up.
fn slowest(app: &App, command: &str, requests: &[Value]) -> (Duration, usize) {
    let mut worst = Duration::ZERO;
    let mut bytes = 0;
    for (number, request) in std::iter::once(&requests[0]).chain(requests).enumerate() {
        let request = request.to_string();
        let start = Instant::now();
        let reply = api::call(app, command, &request).unwrap();
        if number > 0 {
            worst = worst.max(start.elapsed());
            bytes = bytes.max(reply.len());
        }
    }
    (worst, bytes)
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
