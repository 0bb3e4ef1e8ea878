//! The lists of a journal of twenty years (50,000 harvests, 500,000 weigh-ins, 20,000 jars, 100,000
//! bottles, 100,000 photos): the slowest of a hundred calls, each through the command that the page
//! calls, from its first page to the end of what is looked at. And a harvest written into it.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

mod common;
#[path = "../src/years/mod.rs"]
mod years;

use std::time::Duration;

use api::App;
use common::{Row, asked, beside, by_turns, open, print, quantile, shown, timed, twenty_years};
use serde_json::{Value, json};

/// What nobody notices as waiting, with the page's own share left.
const LIMIT: Duration = Duration::from_millis(10);
const CALLS: usize = 300;

fn main() {
    let folder = twenty_years();
    let mut rows = vec![opening(&folder)];
    let app = open(&folder);
    let years = (2006..=2026).map(|year| json!({"year": year})).collect();
    let words = [
        "m",
        "mint",
        "mentha",
        "sage leaf",
        "ferryman",
        "north wall",
        "cloudy",
        "tincture",
        "quarry",
    ];
    let words = words.iter().map(|text| json!({"text": text, "limit": 60}));
    rows.push(of(
        "latest harvests",
        &app,
        "harvest.list",
        pages(&app, "harvest.list", "harvests", "before", 12),
    ));
    rows.push(of(
        "rack",
        &app,
        "tray.list",
        pages(&app, "tray.list", "trays", "after", 30),
    ));
    rows.push(of(
        "pantry, jars",
        &app,
        "jar.list",
        pages(&app, "jar.list", "jars", "after", 50),
    ));
    rows.push(of(
        "pantry, bottles",
        &app,
        "bottle.list",
        pages(&app, "bottle.list", "bottles", "after", 50),
    ));
    rows.push(of("due", &app, "due.list", vec![json!({})]));
    rows.push(of("search", &app, "journal.search", words.collect()));
    rows.push(of("season", &app, "season.show", years));
    rows.push(recorded(&folder));
    print(&rows);
}

/// The requests for the first pages of a list, each after the last line of the one before.
fn pages(app: &App, command: &str, lines: &str, after: &str, limit: u32) -> Vec<Value> {
    let mut requests = vec![json!({"limit": limit})];
    while requests.len() < 20 {
        let reply = asked(app, command, &requests[requests.len() - 1]);
        if reply["more"] != true {
            break;
        }
        let last = reply[lines].as_array().unwrap().last().unwrap()["id"].clone();
        let mut next = json!({"limit": limit});
        next[after] = last;
        requests.push(next);
    }
    requests
}

/// 99 of a hundred calls stay within this. The first of all, when nothing was read before, stands beside.
fn of(what: &str, app: &App, command: &str, requests: Vec<Value>) -> Row {
    let requests: Vec<String> = requests.iter().map(Value::to_string).collect();
    let call = |request: &String| timed(|| api::call(app, command, request).unwrap()).0;
    let first = call(&requests[0]);
    let mut times: Vec<Duration> = requests.iter().cycle().take(CALLS).map(call).collect();
    let p99 = quantile(&mut times, 99);
    Row {
        what: format!("{what}, 20 years, p99 of {CALLS}"),
        ours: shown(p99),
        peer: format!(
            "median {}, once cold {}",
            shown(times[CALLS / 2]),
            shown(first)
        ),
        goal: format!("<= {}", shown(LIMIT)),
        within: Some(p99 <= LIMIT),
    }
}

fn opening(folder: &std::path::Path) -> Row {
    let mut times: Vec<Duration> = (0..100).map(|_| timed(|| open(folder)).0).collect();
    let p99 = quantile(&mut times, 99);
    Row {
        what: "opening, 20 years, p99 of 100".to_owned(),
        ours: shown(p99),
        peer: format!("median {}", shown(times[50])),
        goal: format!("<= {}", shown(LIMIT)),
        within: Some(p99 <= LIMIT),
    }
}

/// A harvest acknowledged, beside the same bytes put into a bare table with the same settings.
fn recorded(folder: &std::path::Path) -> Row {
    const RUNS: usize = 200;
    let copy = tempfile::tempdir_in(common::target()).unwrap();
    let file = "journal.trugbook";
    std::fs::copy(folder.join(file), copy.path().join(file)).unwrap();
    let app = open(copy.path());
    let bed = asked(&app, "bed.list", &json!({}))["beds"][0]["id"].clone();
    let request = |run: usize| {
        json!({"herb": "peppermint", "part": "leaf", "gross_g": 500 + run, "surface": "dry",
            "picked_at": "2026-08-01T08:00:00+02:00", "bed": bed, "note": "Cut before the dew was gone"})
        .to_string()
    };
    let bare = rusqlite::Connection::open(copy.path().join("bare.sqlite")).unwrap();
    bare.pragma_update(None, "journal_mode", "WAL").unwrap();
    bare.pragma_update(None, "synchronous", "FULL").unwrap();
    bare.execute_batch("CREATE TABLE line (number INTEGER PRIMARY KEY, body TEXT NOT NULL)")
        .unwrap();
    let (ours, peer) = by_turns(
        RUNS,
        |run| {
            let request = request(run);
            timed(|| api::call(&app, "harvest.record", &request).unwrap()).0
        },
        |run| {
            let request = request(run);
            timed(|| {
                bare.prepare_cached("INSERT INTO line (body) VALUES (?1)")
                    .unwrap()
                    .execute([&request])
                    .unwrap()
            })
            .0
        },
    );
    beside(
        "harvest acknowledged, 20 years",
        ours,
        ("bare SQLite insert of the same bytes (WAL, FULL)", peer),
        1.5,
    )
}
