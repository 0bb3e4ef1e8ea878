//! What the engine takes, each figure beside the most it may take. Fails when one takes more.
//!
//! Everything goes the way the page goes, through the commands; `mixture.describe` also through the
//! program that outside checks ask.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

use std::hint::black_box;
use std::io::Write;
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::time::{Duration, Instant};

use api::{App, Clock, StandingClock, SystemClock};
use chrono::DateTime;
use physics::{
    MassFraction, Strength,
    mixture::ethanol::{mass_fraction_of, strength_of, twenty_celsius},
};
use serde_json::{Value, json};

struct Row {
    what: String,
    took: String,
    limit: String,
    within: bool,
}

fn main() {
    let rows = [
        described(),
        composed("glycerite", "fresh", None),
        composed("tincture", "fresh", None),
        composed("tincture", "dried", None),
        composed("tincture", "fresh", Some(shelf())),
        estimated(),
        trays(),
        density(),
        inverse(),
    ];
    println!("| what | median | at most |\n|---|---:|---:|");
    for Row {
        what, took, limit, ..
    } in &rows
    {
        println!("| {what} | {took} | {limit} |");
    }
    println!(
        "\nMeasured on {}, {}.",
        machine(),
        SystemClock.now().date_naive()
    );
    let slow: Vec<&str> = rows
        .iter()
        .filter(|row| !row.within)
        .map(|row| row.what.as_str())
        .collect();
    assert!(
        slow.is_empty(),
        "slower than it may be: {}",
        slow.join("; ")
    );
}

/// Lines a second through `cargo dev ask`, its start included.
fn described() -> Row {
    const LINES: u32 = 20_000;
    const LEAST: f64 = 2000.0;
    let mut asked = String::new();
    for line in 0..LINES {
        let strength = 40.0 + f64::from(line % 550) / 10.0;
        asked += &format!(
            r#"{{"command":"mixture.describe","request":{{"pours":[{{"kind":"spirit","ml":200,"strength_percent_vol":{strength}}},{{"kind":"glycerin","g":50}}],"plants":[{{"mass_g":100,"moisture_wet_percent":{{"low":74,"value":78,"high":82}}}}],"temperature_c":20}}}}"#
        );
        asked.push('\n');
    }
    let start = Instant::now();
    let mut ask = Command::new(env!("CARGO_BIN_EXE_dev"))
        .arg("ask")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut questions = ask.stdin.take().unwrap();
    let writing = std::thread::spawn(move || questions.write_all(asked.as_bytes()));
    let answered = ask.wait_with_output().unwrap();
    writing.join().unwrap().unwrap();
    let took = start.elapsed();
    let answers = String::from_utf8(answered.stdout).unwrap();
    assert_eq!(answers.lines().count(), LINES as usize);
    assert!(answers.lines().all(|line| line.starts_with("{\"reply\"")));
    let per_second = f64::from(LINES) / took.as_secs_f64();
    Row {
        what: "`mixture.describe` through `cargo dev ask`, ternary with a plant".to_owned(),
        took: format!("{per_second:.0} lines/s"),
        limit: format!("at least {LEAST:.0} lines/s"),
        within: per_second >= LEAST,
    }
}

/// The jar composer's whole answer when a slider moves: what to pour, and all it could become.
fn composed(preparation: &str, state: &str, stock: Option<Value>) -> Row {
    let world = World::new();
    let on = if stock.is_some() {
        ", from a shelf of seven"
    } else {
        ""
    };
    let times = (0..200).map(|step| {
        let plant = json!({"herb": "lemon-balm", "part": "leaf", "state": state, "mass_g": 180});
        let compose = json!({"preparation": preparation, "plants": [plant],
            "stock": stock.clone().unwrap_or(json!([])),
            "ratio_ml_per_g": 2.0 + 0.005 * f64::from(step), "jar_ml": 2000});
        let mut advise = json!({"herb": "lemon-balm", "part": "leaf", "state": state, "mass_g": 180,
            "purpose": "inside", "jar_ml": 2000});
        if let Some(stock) = &stock {
            advise["stock"] = stock.clone();
        }
        let (compose, advise) = (compose.to_string(), advise.to_string());
        let start = Instant::now();
        black_box(world.ask("jar.compose", &compose));
        black_box(world.ask("jar.advise", &advise));
        start.elapsed()
    });
    row(
        format!("composer and adviser, {preparation} of {state} herb{on}"),
        times.collect(),
        Duration::from_millis(16),
    )
}

fn shelf() -> Value {
    json!([
        {"kind": "spirit", "strength_percent_vol": 96, "available_ml": 150},
        {"kind": "spirit", "strength_percent_vol": 60, "available_ml": 300},
        {"kind": "spirit", "strength_percent_vol": 40, "available_ml": 700},
        {"kind": "glycerin", "purity_percent_mass": 99.5, "available_ml": 500},
        {"kind": "vinegar", "acidity_g_per_100ml": 5, "available_ml": 500},
        {"kind": "honey", "water_percent_mass": 17, "available_ml": 300},
        {"kind": "water"},
    ])
}

fn estimated() -> Row {
    let world = World::new();
    // Two thirds of the water that is left stay in it from one weigh-in to the next.
    let mut water_g = 390.0;
    let weighings: Vec<Value> = (0..12)
        .map(|n| {
            let line = json!({"hours": 8 * n, "mass_g": 110.0 + water_g});
            water_g *= 0.67;
            line
        })
        .collect();
    let asked = json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": 500, "scale_step_g": 1,
        "weighings": weighings});
    let asked = asked.to_string();
    let times = (0..200).map(|_| {
        let start = Instant::now();
        black_box(world.ask("drying.estimate", &asked));
        start.elapsed()
    });
    row(
        "one drying estimate, twelve weigh-ins".to_owned(),
        times.collect(),
        Duration::from_millis(2),
    )
}

fn trays() -> Row {
    let world = World::new();
    let harvest = json!({"herb": "peppermint", "part": "leaf", "gross_g": 99_000, "surface": "dry",
        "picked_at": "2026-07-14T08:00:00+02:00"});
    let harvest = world.asked("harvest.record", &harvest)["harvest"]["id"].clone();
    for tray in 0..500 {
        let started = json!({"harvest": harvest, "mass_g": 190, "name": format!("Tray {tray}"),
            "started_at": "2026-07-14T09:00:00+02:00"});
        let id = world.asked("tray.start", &started)["tray"]["id"].clone();
        for (day, mass_g) in [
            (15, 140 - tray % 20),
            (16, 90 - tray % 15),
            (17, 60 - tray % 10),
        ] {
            let weighed = json!({"tray": id, "gross_g": mass_g, "at": format!("2026-07-{day}T09:00:00+02:00")});
            world.asked("tray.weigh", &weighed);
        }
    }
    let times = (0..9).map(|_| {
        let start = Instant::now();
        let reply = black_box(world.ask("tray.list", "{}"));
        assert!(reply.len() > 100_000);
        start.elapsed()
    });
    row(
        "500 trays with three weigh-ins each, listed anew".to_owned(),
        times.collect(),
        Duration::from_millis(500),
    )
}

fn density() -> Row {
    let fractions: Vec<MassFraction> = (0..1000)
        .map(|n| MassFraction::from_percent(f64::from(n) / 10.0).unwrap())
        .collect();
    of_one_in(
        fractions.len(),
        "OIML R 22: strength of a mass fraction, by its density",
        || {
            for &fraction in &fractions {
                black_box(strength_of(black_box(fraction), twenty_celsius())).unwrap();
            }
        },
    )
}

fn inverse() -> Row {
    let strengths: Vec<Strength> = (0..1000)
        .map(|n| Strength::from_percent(f64::from(n) / 10.0).unwrap())
        .collect();
    of_one_in(
        strengths.len(),
        "OIML R 22, inverse: mass fraction of a strength",
        || {
            for &strength in &strengths {
                black_box(mass_fraction_of(black_box(strength), twenty_celsius())).unwrap();
            }
        },
    )
}

/// The median time of one of `many` done at once.
fn of_one_in(many: usize, what: &str, work: impl Fn()) -> Row {
    let times = (0..50).map(|_| {
        let start = Instant::now();
        work();
        start.elapsed() / u32::try_from(many).unwrap()
    });
    row(what.to_owned(), times.collect(), Duration::from_micros(100))
}

fn row(what: String, mut times: Vec<Duration>, limit: Duration) -> Row {
    times.sort_unstable();
    let median = times[times.len() / 2];
    Row {
        what,
        took: shown(median),
        limit: shown(limit),
        within: median <= limit,
    }
}

fn shown(time: Duration) -> String {
    let micros = time.as_secs_f64() * 1e6;
    if micros >= 1000.0 {
        format!("{:.2} ms", micros / 1000.0)
    } else {
        format!("{micros:.2} µs")
    }
}

fn machine() -> String {
    let told = std::fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let model = told
        .lines()
        .find_map(|line| line.strip_prefix("model name")?.split(':').nth(1));
    let model = model.map_or("an unnamed processor", str::trim);
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    format!("{model}, {cores} threads, {}", std::env::consts::OS)
}

/// A journal to throw away, on a summer's day.
struct World {
    app: App,
    _folder: tempfile::TempDir,
}

impl World {
    fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let now = DateTime::parse_from_rfc3339("2026-07-18T09:00:00+02:00").unwrap();
        let app = App::open(folder.path(), Box::new(Arc::new(StandingClock::at(now)))).unwrap();
        Self {
            app,
            _folder: folder,
        }
    }

    fn ask(&self, command: &str, request: &str) -> String {
        api::call(&self.app, command, request)
            .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"))
    }

    fn asked(&self, command: &str, request: &Value) -> Value {
        serde_json::from_str(&self.ask(command, &request.to_string())).unwrap()
    }
}
