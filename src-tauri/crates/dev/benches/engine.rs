//! What the engine takes, each figure beside the most it may take.
//!
//! Everything goes the way the page goes, through the commands; `mixture.describe` also through the
//! program that outside checks ask.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

mod common;
#[path = "../src/years/mod.rs"]
mod years;

use std::hint::black_box;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::time::Duration;

use api::{App, StandingClock};
use chrono::DateTime;
use common::{Repeated, Row, Turns, by_turns, in_rounds, median, missing, print, target, timed};
use physics::{
    MassFraction, Strength,
    mixture::ethanol::{mass_fraction_of, strength_of, twenty_celsius},
};
use serde_json::{Value, json};

fn main() {
    let world = World::new();
    let mut rows = vec![described()];
    let repeated = vec![
        composed(&world, "glycerite", "fresh", None),
        composed(&world, "tincture", "fresh", None),
        composed(&world, "tincture", "dried", None),
        composed(&world, "tincture", "fresh", Some(shelf())),
        estimated(&world),
        estimates(&world),
    ];
    rows.extend(in_rounds(20, 10, repeated));
    rows.extend(densities());
    print(&rows);
}

/// Lines a second through `cargo dev ask`, its start included; the median of rounds.
fn described() -> Row {
    const LINES: u32 = 5_000;
    const LEAST: f64 = 2000.0;
    let mut asked = String::new();
    for line in 0..LINES {
        let strength = 40.0 + f64::from(line % 550) / 10.0;
        asked += &format!(
            r#"{{"command":"mixture.describe","request":{{"pours":[{{"kind":"spirit","ml":200,"strength_percent_vol":{strength}}},{{"kind":"glycerin","g":50}}],"plants":[{{"mass_g":100,"moisture_wet_percent":{{"low":74,"value":78,"high":82}}}}],"temperature_c":20}}}}"#
        );
        asked.push('\n');
    }
    let mut times: Vec<Duration> = (0..9)
        .map(|_| timed(|| answered(&asked, LINES)).0)
        .collect();
    let per_second = f64::from(LINES) / median(&mut times).as_secs_f64();
    Row {
        what: "`mixture.describe` through `cargo dev ask`, ternary with a plant".to_owned(),
        ours: format!("{per_second:.0} lines/s"),
        peer: String::new(),
        goal: format!(">= {LEAST:.0} lines/s"),
        within: Some(per_second >= LEAST),
    }
}

fn answered(asked: &str, lines: u32) {
    let mut ask = Command::new(env!("CARGO_BIN_EXE_dev"))
        .arg("ask")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut questions = ask.stdin.take().unwrap();
    let answered = std::thread::scope(|scope| {
        let writing = scope.spawn(move || questions.write_all(asked.as_bytes()));
        let answered = ask.wait_with_output().unwrap();
        writing.join().unwrap().unwrap();
        answered
    });
    let answers = String::from_utf8(answered.stdout).unwrap();
    assert_eq!(answers.lines().count(), lines as usize);
    assert!(answers.lines().all(|line| line.starts_with("{\"reply\"")));
}

/// The jar composer's whole answer when a slider moves: what to pour, and all it could become.
fn composed<'w>(
    world: &'w World,
    preparation: &'w str,
    state: &'w str,
    stock: Option<Value>,
) -> Repeated<'w> {
    let on = if stock.is_some() {
        ", from a shelf of seven"
    } else {
        ""
    };
    Repeated {
        what: format!("composer and adviser, {preparation} of {state} herb{on}"),
        limit: Duration::from_millis(4),
        once: Box::new(move |step| {
            let plant =
                json!({"herb": "lemon-balm", "part": "leaf", "state": state, "mass_g": 180});
            let compose = json!({"preparation": preparation, "plants": [plant],
                "stock": stock.clone().unwrap_or(json!([])),
                "ratio_ml_per_g": 2.0 + 0.005 * step as f64, "jar_ml": 2000});
            let mut advise = json!({"herb": "lemon-balm", "part": "leaf", "state": state, "mass_g": 180,
                "purpose": "inside", "jar_ml": 2000});
            if let Some(stock) = &stock {
                advise["stock"] = stock.clone();
            }
            let (compose, advise) = (compose.to_string(), advise.to_string());
            timed(|| {
                black_box(world.ask("jar.compose", &compose));
                black_box(world.ask("jar.advise", &advise));
            })
            .0
        }),
    }
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

/// A tray of peppermint: two thirds of the water that is left stay in it from one weigh-in to the next.
fn tray(fresh_g: f64) -> String {
    let mut water_g = 0.78 * fresh_g;
    let weighings: Vec<Value> = (0..12)
        .map(|n| {
            let line = json!({"hours": 8 * n, "mass_g": 0.22 * fresh_g + water_g});
            water_g *= 0.67;
            line
        })
        .collect();
    json!({"herb": "peppermint", "part": "leaf", "fresh_mass_g": fresh_g, "scale_step_g": 1,
        "weighings": weighings})
    .to_string()
}

fn estimated(world: &World) -> Repeated<'_> {
    let asked = tray(500.0);
    Repeated {
        what: "one drying estimate, twelve weigh-ins".to_owned(),
        limit: Duration::from_millis(2),
        once: Box::new(move |_| timed(|| black_box(world.ask("drying.estimate", &asked))).0),
    }
}

/// A whole rack at once, no two trays alike.
fn estimates(world: &World) -> Repeated<'_> {
    let asked: Vec<String> = (0..50).map(|n| tray(300.0 + 7.0 * f64::from(n))).collect();
    Repeated {
        what: "fifty trays estimated, twelve weigh-ins each".to_owned(),
        limit: Duration::from_millis(50),
        once: Box::new(move |_| {
            timed(|| {
                for asked in &asked {
                    black_box(world.ask("drying.estimate", asked));
                }
            })
            .0
        }),
    }
}

/// Density of ethanol and water by OIML R 22 beside one high-level call of a library for it, and
/// the way back beside as many densities as it may cost.
fn densities() -> [Row; 2] {
    let fractions: Vec<MassFraction> = (0..1000)
        .map(|n| MassFraction::from_percent(f64::from(n) / 10.0).unwrap())
        .collect();
    let strengths: Vec<Strength> = (0..1000)
        .map(|n| Strength::from_percent(f64::from(n) / 10.0).unwrap())
        .collect();
    let Turns {
        ours: forth,
        peer: back,
        ratio,
    } = by_turns(
        51,
        |_| {
            timed(|| {
                for &fraction in &fractions {
                    black_box(strength_of(black_box(fraction), twenty_celsius())).unwrap();
                }
            })
            .0
        },
        |_| {
            timed(|| {
                for &strength in &strengths {
                    black_box(mass_fraction_of(black_box(strength), twenty_celsius())).unwrap();
                }
            })
            .0
        },
    );
    let (forth_us, back_us) = (micros(forth) / 1000.0, micros(back) / 1000.0);
    let what = "OIML R 22: strength of a mass fraction, by its density";
    let times = 1.0 / ratio;
    let inverse = Row {
        what: "OIML R 22, inverse: mass fraction of a strength".to_owned(),
        ours: format!("{back_us:.3} µs"),
        peer: format!("{times:.1} densities"),
        goal: "<= 12 densities".to_owned(),
        within: Some(times <= 12.0),
    };
    let density = match peer_density_us() {
        None => missing(
            what,
            ">= 100x faster",
            "python3 -m venv target/bench/peers && target/bench/peers/bin/pip install CoolProp",
        ),
        Some(peer_us) => Row {
            what: what.to_owned(),
            ours: format!("{forth_us:.3} µs"),
            peer: format!("CoolProp: {peer_us:.1} µs, {:.0}x", peer_us / forth_us),
            goal: ">= 100x faster".to_owned(),
            within: Some(peer_us >= 100.0 * forth_us),
        },
    };
    [density, inverse]
}

fn micros(time: Duration) -> f64 {
    time.as_secs_f64() * 1e6
}

/// Microseconds of one high-level call for the density of ethanol and water; `None` where the
/// library is not there.
fn peer_density_us() -> Option<f64> {
    const SCRIPT: &str = "
import time
from CoolProp.CoolProp import PropsSI
asked = ['INCOMP::MEA[%f]' % (0.1 + i / 5000) for i in range(2000)]
def run():
    start = time.perf_counter()
    for fluid in asked: PropsSI('D', 'T', 293.15, 'P', 101325, fluid)
    return (time.perf_counter() - start) / len(asked) * 1e6
print(sorted(run() for _ in range(5))[2])
";
    let own = target().join("bench/peers/bin/python");
    for python in [own.as_path(), Path::new("python3")] {
        let said = Command::new(python).args(["-c", SCRIPT]).output();
        if let Ok(said) = said
            && said.status.success()
        {
            return String::from_utf8_lossy(&said.stdout).trim().parse().ok();
        }
    }
    None
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
}
