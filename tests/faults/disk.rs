//! A disk that fails at any call of a photo, a backup, a restore, a merge or an export leaves the
//! state before or after it, and says in a sentence what happened.

#![allow(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::time::Duration;

use api::{App, StandingClock};
use archive::{Progress, Unpacker};
use chrono::DateTime;
use disk::{Disk, Fault, Faults};
use journal::DeviceId;
use serde_json::{Value, json};
use store::Store;
use uuid::Uuid;

fn open(folder: &Path, disk: Disk) -> App {
    let now = DateTime::parse_from_rfc3339("2026-07-14T09:00:00+02:00").unwrap();
    App::open_on(folder, Box::new(StandingClock::at(now)), disk).unwrap()
}

fn call(app: &App, command: &str, request: &Value) -> Result<Value, String> {
    match api::call(app, command, &request.to_string()) {
        Ok(reply) => Ok(serde_json::from_str(&reply).unwrap()),
        Err(failure) => Err(failure.message.to_string()),
    }
}

fn job(app: &App, command: &str, request: &Value) -> Result<(), String> {
    let begun = call(app, command, request)?;
    loop {
        let card = call(app, "job.show", &json!({ "job": begun["job"] })).unwrap();
        match card["state"].as_str() {
            Some("running") => std::thread::sleep(Duration::from_millis(1)),
            Some("done") => return Ok(()),
            _ => return Err(card["failure"]["message"].as_str().unwrap().to_owned()),
        }
    }
}

fn pick(app: &App, number: u8) -> Result<(), String> {
    let mut picture = include_bytes!("../photo/samples/no_exif.jpg").to_vec();
    picture.push(number);
    let photo = app
        .take_photo(picture.as_slice(), Some("leaf.jpg"))
        .map_err(|failure| failure.message)?;
    let photo: Value = serde_json::from_str(&photo).unwrap();
    let request = json!({
        "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 100,
        "photos": [photo["photo"]["hash"]],
    });
    call(app, "harvest.record", &request).map(|_| ())
}

fn copied(from: &Path, to: &Path) {
    for entry in fs::read_dir(from).unwrap().flatten() {
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            fs::create_dir_all(&target).unwrap();
            copied(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), &target).unwrap();
        }
    }
}

fn tables(folder: &Path) -> Vec<String> {
    let store = Store::open(&folder.join("journal.trugbook"), DeviceId(Uuid::nil())).unwrap();
    store.tables().unwrap()
}

#[test]
fn a_failing_disk_leaves_old_or_new_and_a_sentence() {
    let (here, there, outside) = (
        tempfile::tempdir().unwrap(),
        tempfile::tempdir().unwrap(),
        tempfile::tempdir().unwrap(),
    );
    let backup = outside.path().join("b.zip");
    {
        let app = open(here.path(), Disk::default());
        pick(&app, 1).unwrap();
        let other = open(there.path(), Disk::default());
        pick(&other, 2).unwrap();
        pick(&other, 3).unwrap();
        job(&other, "backup.make", &json!({ "file": backup })).unwrap();
    }
    let read = json!({ "file": backup });
    let out = outside.path().join("out");
    let written = json!({ "file": out.join("made.zip"), "photos": true });
    type Step<'a> = (&'a str, Box<dyn Fn(&App) -> Result<(), String> + 'a>);
    let steps: Vec<Step<'_>> = vec![
        ("photo", Box::new(|app| pick(app, 9))),
        ("backup", Box::new(|app| job(app, "backup.make", &written))),
        ("restore", Box::new(|app| job(app, "restore.apply", &read))),
        ("merge", Box::new(|app| job(app, "merge.apply", &read))),
        ("export", Box::new(|app| job(app, "export.make", &written))),
    ];
    let mut failures = 0;
    for (name, step) in steps {
        // How many calls it takes, and what it leads to.
        let prepared = |faults: &Arc<Faults>| {
            let folder = tempfile::tempdir().unwrap();
            copied(here.path(), folder.path());
            let _ = fs::remove_dir_all(&out);
            fs::create_dir(&out).unwrap();
            let app = open(folder.path(), Disk::failing(faults.clone()));
            (folder, app)
        };
        let counting = Arc::new(Faults::default());
        let (folder, app) = prepared(&counting);
        let first = counting.calls() + 1;
        step(&app).unwrap();
        drop(app);
        let last = counting.calls();
        assert!(last >= first + 2, "{name} writes: {first} to {last}");
        let (old, new) = (tables(here.path()), tables(folder.path()));
        let every = ((last - first) / 40).max(1) as usize;
        for fault in [
            Fault::InputOutput,
            Fault::Full,
            Fault::Short,
            Fault::ShortThenFull,
        ] {
            for nth in (first..=last).step_by(every) {
                let (folder, app) = prepared(&Arc::new(Faults::at(nth, fault)));
                let outcome = step(&app);
                drop(app);
                if let Err(message) = &outcome {
                    failures += 1;
                    let message = api::Language::English.say_messages(message);
                    assert!(message.ends_with('.'), "{name} at {nth}: {message}");
                    if matches!(fault, Fault::Full | Fault::ShortThenFull) {
                        let is_said = message.contains("full") || message.contains("no room");
                        assert!(is_said, "{name} at {nth} with {fault:?}: {message}");
                    }
                }
                let app = open(folder.path(), Disk::default());
                assert_eq!(app.faults().unwrap(), [], "{name} {fault:?} at {nth}");
                drop(app);
                let found = tables(folder.path());
                let is_old_or_new = found == old || found.len() == new.len();
                // A photo may be kept although the harvest that wanted it was not recorded.
                let is_kept_photo =
                    name == "photo" && found.len() > old.len() && found.len() < new.len();
                assert!(
                    is_old_or_new || is_kept_photo,
                    "{name} {fault:?} at {nth}: a third state"
                );
                for file in fs::read_dir(&out).unwrap().flatten() {
                    let mut zip = Unpacker::open(&file.path(), None).unwrap_or_else(|why| {
                        panic!("{name} {fault:?} at {nth}: {:?} {why}", file.path())
                    });
                    assert!(
                        zip.verify(&Progress::default()).unwrap().is_none(),
                        "{name} at {nth}"
                    );
                }
                pick(&open(folder.path(), Disk::default()), 77).unwrap();
            }
        }
    }
    assert!(failures > 100, "the disk failed often: {failures}");
}

/// The database itself: a storage of so many blocks, whatever is being written.
#[cfg(unix)]
#[test]
fn a_database_that_cannot_grow_refuses_and_keeps_what_was_acknowledged() {
    use std::process::{Command, Stdio};
    let folder = tempfile::tempdir().unwrap();
    for blocks in [2000, 3000, 4500] {
        // Files may not become longer than so many blocks; the signal is ignored, so the write fails.
        let script = format!("trap '' XFSZ; ulimit -f {blocks}; exec \"$0\" \"$1\" {blocks}");
        let output = Command::new("sh")
            .args(["-c", &script, env!("CARGO_BIN_EXE_kill_recorder")])
            .arg(folder.path())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .output()
            .unwrap();
        assert!(
            !output.status.success(),
            "the recorder ends when nothing more can be written"
        );
        let said = String::from_utf8_lossy(&output.stderr);
        assert!(
            said.contains("could not be") || said.contains("full"),
            "{said}"
        );
        let acknowledged = String::from_utf8_lossy(&output.stdout);
        let acknowledged: Vec<&str> = acknowledged
            .lines()
            .filter_map(|line| line.strip_prefix("harvest ")?.split(' ').next())
            .collect();
        assert!(
            !acknowledged.is_empty(),
            "with {blocks} blocks something is recorded: {said}"
        );
        let app = open(folder.path(), Disk::default());
        assert_eq!(app.faults().unwrap(), []);
        for id in acknowledged {
            call(&app, "harvest.show", &json!({ "id": id })).unwrap();
        }
    }
}
