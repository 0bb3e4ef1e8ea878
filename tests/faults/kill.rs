//! A phone whose battery dies at any moment loses nothing that it said it had kept.
//!
//! `TRUGBOOK_KILLS` says how many times it dies.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::time::Duration;

use api::{App, SystemClock};
use checks::Random;
use serde_json::{Value, json};

fn kills() -> u64 {
    let asked = std::env::var("TRUGBOOK_KILLS").ok();
    asked.and_then(|number| number.parse().ok()).unwrap_or(50)
}

/// What a recorder said it had kept.
#[derive(Default)]
struct Kept {
    /// Each harvest with its photo and grams.
    harvests: BTreeMap<String, (String, f64)>,
    /// Each strained jar with what came out of it in all.
    jars: BTreeMap<String, f64>,
}

fn call(app: &App, command: &str, request: Value) -> Value {
    let reply = api::call(app, command, &request.to_string())
        .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"));
    serde_json::from_str(&reply).unwrap()
}

/// Starts a recorder, kills it without warning and adds every acknowledgement that reached this
/// process. Every fifth recorder dies while it opens the journal, the others `after` they said so many
/// lines: how fast the machine is then decides nothing but where within a step the kill falls.
fn killed(folder: &Path, run: u64, lines: u64, after: Duration, kept: &mut Kept) {
    let mut recorder = Command::new(env!("CARGO_BIN_EXE_kill_recorder"))
        .arg(folder)
        .arg(run.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let told = BufReader::new(recorder.stdout.take().unwrap()).lines();
    let (saying, heard) = mpsc::channel();
    let reader = std::thread::spawn(move || {
        let mut said = Vec::new();
        for line in told.map_while(Result::ok) {
            let _ = saying.send(());
            said.push(line);
        }
        said
    });
    for _ in 0..if run % 5 == 4 { 0 } else { lines } {
        heard.recv().expect("the recorder goes on");
    }
    std::thread::sleep(after);
    // On Unix this is SIGKILL: nothing of the recorder runs any more.
    recorder.kill().unwrap();
    let status = recorder.wait().unwrap();
    assert!(
        !status.success(),
        "the recorder was killed, it did not end: {status}"
    );
    for line in reader.join().unwrap() {
        let words: Vec<&str> = line.split(' ').collect();
        match words[..] {
            ["harvest", id, photo, grams] => {
                let told = (photo.to_owned(), grams.parse().unwrap());
                kept.harvests.insert(id.to_owned(), told);
            }
            ["strained", jar, ml] => {
                kept.jars.insert(jar.to_owned(), ml.parse().unwrap());
            }
            _ => {}
        }
    }
}

/// Every harvest of the journal, asked for page by page.
fn recorded(app: &App) -> BTreeMap<String, Value> {
    let mut harvests = BTreeMap::new();
    let mut before = Value::Null;
    loop {
        let page = call(
            app,
            "harvest.list",
            json!({ "before": before, "limit": 200 }),
        );
        for harvest in page["harvests"].as_array().unwrap() {
            before = harvest["id"].clone();
            harvests.insert(harvest["id"].as_str().unwrap().to_owned(), harvest.clone());
        }
        if page["more"] == false {
            return harvests;
        }
    }
}

#[test]
fn a_journal_that_another_program_has_open_is_refused_until_that_one_ends() {
    let folder = tempfile::tempdir().unwrap();
    let mut other = Command::new(env!("CARGO_BIN_EXE_kill_recorder"))
        .arg(folder.path())
        .arg("0")
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut line = String::new();
    let mut lines = BufReader::new(other.stdout.take().unwrap());
    lines.read_line(&mut line).unwrap();
    assert_eq!(line, "opened\n");

    let Err(refused) = App::open(folder.path(), Box::new(SystemClock)) else {
        panic!("two programs have it open");
    };
    assert_eq!(refused.message.id(), "book-open-elsewhere", "{refused:?}");
    // Even one that is killed lets go.
    other.kill().unwrap();
    other.wait().unwrap();
    let app = App::open(folder.path(), Box::new(SystemClock)).unwrap();
    assert!(app.faults().unwrap().is_empty());
}

#[test]
fn kills_lose_no_acknowledged_record_or_straining_and_leave_no_half_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut kept = Kept::default();
    let mut random = Random::of(2026);
    for run in 0..kills() {
        let lines = 1 + random.below(20);
        let after = Duration::from_micros(random.below(30_000));
        killed(folder.path(), run, lines, after, &mut kept);

        let app = App::open(folder.path(), Box::new(SystemClock))
            .unwrap_or_else(|failure| panic!("after kill {run}: {failure:?}"));
        let faults = app.faults().unwrap();
        assert!(faults.is_empty(), "after kill {run}: {faults:?}");
    }
    eprintln!(
        "{} kills; {} harvests and {} strainings acknowledged",
        kills(),
        kept.harvests.len(),
        kept.jars.len()
    );
    assert!(
        kept.harvests.len() as u64 > kills() / 4 && kept.jars.len() as u64 > kills() / 20,
        "the kills came while records and strainings were being written"
    );

    let app = App::open(folder.path(), Box::new(SystemClock)).unwrap();
    let harvests = recorded(&app);
    for (id, (photo, grams)) in &kept.harvests {
        let harvest = harvests
            .get(id)
            .unwrap_or_else(|| panic!("{id} was acknowledged and is gone"));
        assert_eq!(
            harvest["photo"].as_str(),
            Some(photo.as_str()),
            "the photo of {id}"
        );
        assert_eq!(
            harvest["fresh_mass_g"].as_f64(),
            Some(*grams),
            "the weight of {id}"
        );
    }
    for (id, ml) in &kept.jars {
        let jar = call(&app, "jar.show", json!({ "id": id }))["jar"].clone();
        let strainings = jar["strainings"].as_array().unwrap().iter();
        let out: f64 = strainings
            .map(|straining| straining["came_out_ml"].as_f64().unwrap())
            .sum();
        // A second straining may have been kept although the kill came before it was told.
        assert!(
            out >= *ml - 1e-6,
            "{ml} mL of jar {id} were acknowledged, {out} are there"
        );
        assert!(
            jar["left_ml"].as_f64().unwrap() >= 0.0,
            "{id} gave more than it held"
        );
    }
    for (id, harvest) in &harvests {
        assert!(
            harvest["bed"]["name"].is_string(),
            "{id} was recorded whole, with its bed"
        );
        let hash = harvest["photo"]
            .as_str()
            .unwrap_or_else(|| panic!("{id} lost its photo"));
        let mut bytes = Vec::new();
        let mut picture = app
            .original(hash)
            .unwrap()
            .unwrap_or_else(|| panic!("{hash} dangles"));
        std::io::Read::read_to_end(&mut picture.file, &mut bytes).unwrap();
        assert_eq!(photo_hash(&bytes), hash, "the bytes of the photo of {id}");
    }
}

/// The same photo taken in by an empty album is called by the same hash.
fn photo_hash(bytes: &[u8]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let album = photo::Album::open(folder.path()).unwrap();
    album.take_in(bytes).unwrap().photo.hash.to_string()
}
