//! A phone whose battery dies at any moment loses nothing that it said it had kept.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::time::Duration;

use api::{App, SystemClock};
use serde_json::{Value, json};

const KILLS: u64 = 50;

fn call(app: &App, command: &str, request: Value) -> Value {
    let reply = api::call(app, command, &request.to_string())
        .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"));
    serde_json::from_str(&reply).unwrap()
}

/// Starts a recorder, kills it without warning and returns every acknowledgement that reached this
/// process: harvest -> (photo, grams). Every fifth recorder dies while it opens the journal, the
/// others `after` that.
fn killed(folder: &Path, run: u64, after: Duration) -> BTreeMap<String, (String, f64)> {
    let mut recorder = Command::new(env!("CARGO_BIN_EXE_kill_recorder"))
        .arg(folder)
        .arg(run.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let lines = BufReader::new(recorder.stdout.take().unwrap()).lines();
    let (begun, opened) = mpsc::channel();
    let reader = std::thread::spawn(move || {
        let mut acknowledged = BTreeMap::new();
        for line in lines.map_while(Result::ok) {
            let _ = begun.send(());
            let words: Vec<&str> = line.split(' ').collect();
            if let [harvest, photo, grams] = words[..] {
                acknowledged.insert(
                    harvest.to_owned(),
                    (photo.to_owned(), grams.parse().unwrap()),
                );
            }
        }
        acknowledged
    });
    if run % 5 == 4 {
        std::thread::sleep(after / 10);
    } else {
        opened.recv().expect("the recorder opens the journal");
        std::thread::sleep(after);
    }
    // On Unix this is SIGKILL: nothing of the recorder runs any more.
    recorder.kill().unwrap();
    let status = recorder.wait().unwrap();
    assert!(
        !status.success(),
        "the recorder was killed, it did not end: {status}"
    );
    reader.join().unwrap()
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
fn fifty_kills_lose_no_acknowledged_record_and_leave_no_half_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut acknowledged = BTreeMap::new();
    // A linear congruential generator (constants of Knuth's MMIX): the moments differ from run to
    // run of the loop and are the same in every run of the test.
    let mut random = 2026_u64;
    for run in 0..KILLS {
        random = random
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        let after = Duration::from_micros((random >> 33) % 500_000);
        acknowledged.extend(killed(folder.path(), run, after));

        let app = App::open(folder.path(), Box::new(SystemClock))
            .unwrap_or_else(|failure| panic!("after kill {run}: {failure:?}"));
        let faults = app.faults().unwrap();
        assert!(faults.is_empty(), "after kill {run}: {faults:?}");
    }
    assert!(
        acknowledged.len() as u64 > KILLS,
        "the kills came while records were being written"
    );

    let app = App::open(folder.path(), Box::new(SystemClock)).unwrap();
    let harvests = recorded(&app);
    for (id, (photo, grams)) in &acknowledged {
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
