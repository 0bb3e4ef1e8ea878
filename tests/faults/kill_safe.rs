//! A kill at any instant of a backup, a restore, a merge, a check, an undo or a migration leaves the state
//! before it or the state after it, and every file whole.
//!
//! `TRUGBOOK_KILLS` says how many kills there are.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeSet;
use std::fs;
use std::io::{BufRead, BufReader, Read as _};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::mpsc;
use std::time::Duration;

use api::{App, SystemClock};
use archive::{Progress, Unpacker};
use checks::Random;
use journal::{DeedId, DeviceId};
use serde_json::{Value, json};
use store::Store;
use uuid::Uuid;

type Deeds = BTreeSet<DeedId>;

fn kills() -> u64 {
    let asked = std::env::var("TRUGBOOK_KILLS").ok();
    asked.and_then(|number| number.parse().ok()).unwrap_or(40)
}

fn call(app: &App, command: &str, request: Value) -> Value {
    let reply = api::call(app, command, &request.to_string())
        .unwrap_or_else(|failure| panic!("{command} {request}: {failure:?}"));
    serde_json::from_str(&reply).unwrap()
}

fn job(app: &App, command: &str, request: Value) -> Value {
    let begun = call(app, command, request);
    loop {
        let card = call(app, "job.show", json!({ "job": begun["job"] }));
        match card["state"].as_str() {
            Some("running") => std::thread::sleep(Duration::from_millis(2)),
            Some("done") => return card["outcome"].clone(),
            _ => panic!("{command}: {card}"),
        }
    }
}

fn record(app: &App, number: u64) {
    let mut picture = include_bytes!("../photo/samples/no_exif.jpg").to_vec();
    picture.extend((number + 1_000_000).to_le_bytes());
    let photo: Value = serde_json::from_str(
        &app.take_photo(picture.as_slice(), Some("leaf.jpg"))
            .unwrap(),
    )
    .unwrap();
    let request = json!({
        "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 100 + number,
        "bed_name": "Lower bank", "photos": [photo["photo"]["hash"]],
    });
    call(app, "harvest.record", request);
}

fn deeds(path: &Path) -> Deeds {
    let store = Store::open(path, DeviceId(Uuid::nil())).unwrap();
    let mut deeds = Deeds::new();
    store
        .each_deed(|deed| {
            deeds.insert(deed.id);
            Ok(())
        })
        .unwrap();
    deeds
}

/// What the journal of before holds, if there is one: what an undo leads to.
fn aside(folder: &Path) -> Option<Deeds> {
    let store = Store::open(&folder.join("journal.trugbook"), DeviceId(Uuid::nil())).unwrap();
    let name = store.aside().unwrap()?;
    let copy = tempfile::tempdir().unwrap();
    let path = copy.path().join("aside");
    fs::copy(folder.join(name), &path).ok()?;
    Some(deeds(&path))
}

/// What the keeper said before it was killed: what it completed, and what it was about. Every seventh dies
/// while it opens the journal, the others `after` they said so many lines.
fn killed(
    folder: &Path,
    outside: &Path,
    run: u64,
    lines: u64,
    after: Duration,
) -> (Vec<String>, Option<String>) {
    let mut keeper = Command::new(env!("CARGO_BIN_EXE_kill_keeper"))
        .args([folder, outside])
        .arg(run.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let told = BufReader::new(keeper.stdout.take().unwrap()).lines();
    let (saying, heard) = mpsc::channel();
    let reader = std::thread::spawn(move || {
        let (mut done, mut about) = (Vec::new(), None);
        for line in told.map_while(Result::ok) {
            let _ = saying.send(());
            match line.split_once(' ') {
                Some(("begin", what)) => about = Some(what.to_owned()),
                Some(("done", what)) => {
                    done.push(what.to_owned());
                    about = None;
                }
                _ => {}
            }
        }
        (done, about)
    });
    for _ in 0..if run % 7 == 6 { 0 } else { lines } {
        heard.recv().expect("the keeper goes on");
    }
    std::thread::sleep(after);
    keeper.kill().unwrap();
    let status = keeper.wait().unwrap();
    assert!(!status.success(), "the keeper was killed: {status}");
    reader.join().unwrap()
}

#[test]
fn a_kill_during_anything_leaves_the_state_before_or_after_it() {
    let (folder, outside, there) = (
        tempfile::tempdir().unwrap(),
        tempfile::tempdir().unwrap(),
        tempfile::tempdir().unwrap(),
    );
    let open = |folder: &Path| App::open(folder, Box::new(SystemClock)).unwrap();
    {
        let app = open(folder.path());
        (0..4).for_each(|number| record(&app, number));
        job(
            &app,
            "backup.make",
            json!({ "file": outside.path().join("base.zip") }),
        );
        let other = open(there.path());
        job(
            &other,
            "restore.apply",
            json!({ "file": outside.path().join("base.zip") }),
        );
        (10..13).for_each(|number| record(&other, number));
        job(
            &other,
            "backup.make",
            json!({ "file": outside.path().join("other.zip") }),
        );
    }
    let path = folder.path().join("journal.trugbook");
    let base = deeds(&path);
    let other = deeds(&there.path().join("journal.trugbook"));
    let (mut state, mut before) = (base.clone(), None::<Deeds>);
    let mut random = Random::of(2027);
    let (mut completed, mut interrupted) = (0, BTreeSet::new());
    for run in 0..kills() {
        let lines = 1 + random.below(12);
        let after = Duration::from_micros(random.below(40_000));
        let (done, about) = killed(folder.path(), outside.path(), run, lines, after);
        completed += done.len();
        let app = App::open(folder.path(), Box::new(SystemClock))
            .unwrap_or_else(|failure| panic!("after kill {run} in {about:?}: {failure:?}"));
        let faults = app.faults().unwrap();
        assert!(
            faults.is_empty(),
            "after kill {run} in {about:?}: {faults:?}"
        );
        drop(app);
        let found = deeds(&path);
        // Every completed step, and then the one that was under way or not.
        let mut possible = vec![(state.clone(), before.clone())];
        for (place, what) in done.iter().chain(about.iter()).enumerate() {
            let is_done = place < done.len();
            let mut next = Vec::new();
            for (now, aside) in &possible {
                let stepped = match what.as_str() {
                    "restore" => (base.clone(), Some(now.clone())),
                    "merge" if other.is_subset(now) => (now.clone(), aside.clone()),
                    "merge" => (now.union(&other).copied().collect(), Some(now.clone())),
                    "undo" => match aside {
                        Some(aside) => (aside.clone(), Some(now.clone())),
                        None => (now.clone(), None),
                    },
                    // Its deeds are known only by what is found.
                    "record" => {
                        let mut grown = now.clone();
                        grown.extend(Deeds::new());
                        (grown, aside.clone())
                    }
                    _ => (now.clone(), aside.clone()),
                };
                if !is_done {
                    next.push((now.clone(), aside.clone()));
                }
                next.push(stepped);
            }
            possible = next;
        }
        // What was recorded in this run is in no set yet: a state fits if it is found and all that
        // is more was recorded now, two deeds a record.
        let records = done
            .iter()
            .chain(about.iter())
            .filter(|what| *what == "record")
            .count();
        let fits = |(now, _): &&(Deeds, Option<Deeds>)| {
            now.is_subset(&found) && found.len() - now.len() <= 2 * records
        };
        assert!(
            possible.iter().any(|state| fits(&state)),
            "after kill {run} in {about:?} ({done:?}): {} deeds fit no state of {:?}",
            found.len(),
            possible
                .iter()
                .map(|(now, _)| now.len())
                .collect::<Vec<_>>()
        );
        // Records that were completed since the last replacement are all there: two deeds each.
        let last = done
            .iter()
            .rposition(|what| matches!(what.as_str(), "restore" | "undo" | "merge"));
        let since = done[last.map_or(0, |place| place + 1)..]
            .iter()
            .filter(|what| *what == "record");
        let was_replaced = matches!(about.as_deref(), Some("restore" | "undo"));
        if last.is_none() && !was_replaced {
            let least = state.len() + 2 * since.count();
            assert!(
                found.len() >= least,
                "after kill {run}: {} of {least} deeds",
                found.len()
            );
        }
        (state, before) = (found, aside(folder.path()));
        interrupted.extend(about);
        let made = outside.path().join("made.zip");
        if made.exists() {
            let damage = Unpacker::open(&made, None)
                .unwrap()
                .verify(&Progress::default())
                .unwrap();
            assert!(
                damage.is_none(),
                "after kill {run} the backup is torn: {damage:?}"
            );
        }
    }
    eprintln!(
        "{} kills; {completed} steps completed; killed within {interrupted:?}",
        kills()
    );
    assert!(
        interrupted.len() >= 3,
        "the kills met different steps: {interrupted:?}"
    );
}

#[test]
fn a_kill_during_a_migration_leaves_a_file_that_migrates() {
    let old = Path::new(env!("CARGO_MANIFEST_DIR")).join("migration/v1.sqlite");
    let outside = tempfile::tempdir().unwrap();
    let expected = {
        let copy = outside.path().join("copy");
        fs::copy(&old, &copy).unwrap();
        deeds(&copy)
    };
    let mut random = Random::of(11);
    let (runs, mut before) = (kills().max(20), 0);
    for run in 0..runs {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("journal.trugbook");
        fs::copy(&old, &path).unwrap();
        let length = fs::metadata(&path).unwrap().len();
        let mut keeper = opening(folder.path(), outside.path());
        let moment = Duration::from_micros(random.below(20_000));
        // By turns: before it can have begun, once it has begun, once it has written, and once it is done.
        let has_come = || match run % 4 {
            0 => true,
            1 => folder.path().join("journal.lock").exists(),
            2 => {
                let log = folder.path().join("journal.trugbook-wal").metadata();
                log.is_ok_and(|log| log.len() > 0) || fs::metadata(&path).unwrap().len() > length
            }
            _ => false,
        };
        let mut said = keeper.stdout.take().unwrap();
        let mut told = String::new();
        if run % 4 == 3 {
            let mut lines = BufReader::new(&mut said);
            lines.read_line(&mut told).unwrap();
        }
        while told.is_empty() && !has_come() && keeper.try_wait().unwrap().is_none() {
            std::thread::sleep(Duration::from_micros(100));
        }
        std::thread::sleep(if run % 4 == 0 { Duration::ZERO } else { moment });
        keeper.kill().unwrap();
        keeper.wait().unwrap();
        said.read_to_string(&mut told).unwrap();
        before += u64::from(told.is_empty());
        let store = Store::open(&path, DeviceId(Uuid::nil())).unwrap();
        assert_eq!(store.audit().unwrap(), [], "after kill {run}");
        drop(store);
        assert!(expected.is_subset(&deeds(&path)), "after kill {run}");
    }
    eprintln!(
        "{runs} kills while a file of version 1 was opened, {before} of them before it was open"
    );
    assert!(
        before > 0 && before < runs,
        "the kills came within the opening and after it: {before} of {runs}"
    );
}

/// A keeper that opens the journal in `folder`, and says so when it has.
fn opening(folder: &Path, outside: &Path) -> Child {
    Command::new(env!("CARGO_BIN_EXE_kill_keeper"))
        .args([folder, outside])
        .arg("1")
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}
