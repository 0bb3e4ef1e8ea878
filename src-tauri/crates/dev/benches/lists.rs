//! The lists of a journal of twenty years (50,000 harvests, 500,000 weigh-ins, 20,000 jars, 100,000
//! bottles, 100,000 photos): each through the command that the page
//! calls, from its first page to the end of what is looked at. And a harvest written into it.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

mod common;
#[path = "../src/years/mod.rs"]
mod years;

use std::path::Path;
use std::time::Duration;

use api::App;
use common::{Repeated, Row, asked, beside, by_turns, in_rounds, open, print, timed, twenty_years};
use serde_json::{Value, json};

/// What nobody notices as waiting, with the page's own share left.
const LIMIT: Duration = Duration::from_millis(10);
/// What seems to open at once, for a whole place that asks several things (common practice, no source).
const PLACE: Duration = Duration::from_millis(100);
const ROUNDS: usize = 30;
const TIMES: usize = 10;

fn main() {
    let folder = twenty_years();
    // A journal is open in one place only, so opening it cannot be done between the others.
    let mut rows = in_rounds(ROUNDS, 4, vec![opening(&folder)]);
    rows.extend(lists(&folder));
    rows.push(recorded(&folder));
    print(&rows);
}

fn lists(folder: &Path) -> Vec<Row> {
    let app = open(folder);
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
    let lists = [
        (
            "latest harvests",
            "harvest.list",
            pages(&app, "harvest.list", "harvests", "before", 12),
        ),
        (
            "rack",
            "tray.list",
            pages(&app, "tray.list", "trays", "after", 30),
        ),
        (
            "pantry, jars",
            "jar.list",
            pages(&app, "jar.list", "jars", "after", 50),
        ),
        (
            "pantry, bottles",
            "bottle.list",
            pages(&app, "bottle.list", "bottles", "after", 50),
        ),
        ("due", "due.list", vec![json!({})]),
        ("search", "journal.search", words.collect()),
        ("season", "season.show", years),
        (
            "a harvest's page",
            "harvest.show",
            shown(&app, "harvest.list", "harvests", 12),
        ),
        (
            "a jar's page",
            "jar.show",
            shown(&app, "jar.list", "jars", 50),
        ),
    ];
    let lists = lists.map(|(what, command, requests)| of(what, &app, command, &requests));
    let all = lists.into_iter().chain([ribbon(&app)]);
    in_rounds(ROUNDS, TIMES, all.collect())
}

/// All that the page of the last year asks: its sums, its harvests for the ribbon, and when to pick by every year.
fn ribbon(app: &App) -> Repeated<'_> {
    let year = &years::LAST[..4];
    let mut picked = pages(app, "harvest.list", "harvests", "before", 200);
    picked.retain(|request| {
        let first = &asked(app, "harvest.list", request)["harvests"][0];
        first["picked_at"].as_str().unwrap().starts_with(year)
    });
    let picked = picked.into_iter().map(|request| ("harvest.list", request));
    let sums = json!({"year": year.parse::<i32>().unwrap()});
    let requests = [("season.show", sums), ("herb.calendar", json!({}))].into_iter();
    let requests: Vec<_> = requests
        .chain(picked)
        .map(|(command, request)| (command, request.to_string()))
        .collect();
    Repeated {
        what: "ribbon of the last year with the picking calendar, 20 years".to_owned(),
        limit: PLACE,
        once: Box::new(move |_| {
            let ask = || {
                for (command, request) in &requests {
                    api::call(app, command, request).unwrap();
                }
            };
            timed(ask).0
        }),
    }
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

/// The requests for the pages of what a list shows first.
fn shown(app: &App, command: &str, lines: &str, limit: u32) -> Vec<Value> {
    let reply = asked(app, command, &json!({"limit": limit}));
    let lines = reply[lines].as_array().unwrap().iter();
    lines.map(|line| json!({"id": line["id"]})).collect()
}

/// The requests of a list, one after the other and then again from the first.
fn of<'w>(what: &str, app: &'w App, command: &'w str, requests: &[Value]) -> Repeated<'w> {
    let requests: Vec<String> = requests.iter().map(Value::to_string).collect();
    Repeated {
        what: format!("{what}, 20 years"),
        limit: LIMIT,
        once: Box::new(move |time| {
            let request = &requests[time % requests.len()];
            timed(|| api::call(app, command, request).unwrap()).0
        }),
    }
}

fn opening(folder: &Path) -> Repeated<'_> {
    Repeated {
        what: "opening, 20 years".to_owned(),
        limit: LIMIT,
        once: Box::new(|_| timed(|| open(folder)).0),
    }
}

/// A harvest acknowledged, beside the same bytes put into a bare table with the same settings.
fn recorded(folder: &Path) -> Row {
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
    let turns = by_turns(
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
        &turns,
        "bare SQLite insert of the same bytes (WAL, FULL)",
        1.5,
    )
}
