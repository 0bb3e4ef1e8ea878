//! The process that is killed: records, backs up, restores, merges, checks and takes back as fast as it
//! can, and says before and after each what the journal is.

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::time::Duration;

use api::{App, SystemClock};
use serde_json::{Value, json};

fn say(line: std::fmt::Arguments<'_>) {
    println!("{line}");
    std::io::stdout().flush().expect("the parent listens");
}

fn call(app: &App, command: &str, request: &Value) -> Value {
    let reply = api::call(app, command, &request.to_string())
        .unwrap_or_else(|failure| panic!("{command}: {failure:?}"));
    serde_json::from_str(&reply).expect("a reply is JSON")
}

/// A job from its beginning to its end.
fn job(app: &App, command: &str, request: &Value) {
    let begun = call(app, command, request);
    loop {
        let card = call(app, "job.show", &json!({ "job": begun["job"] }));
        match card["state"].as_str() {
            Some("running") => std::thread::sleep(Duration::from_millis(1)),
            Some("done") => return,
            _ => panic!("{command}: {card}"),
        }
    }
}

fn record(app: &App, run: u64, number: u64) {
    let mut picture = include_bytes!("../photo/samples/no_exif.jpg").to_vec();
    // Bytes after the end of a JPEG change its hash and nothing else.
    picture.extend(run.to_le_bytes());
    picture.extend(number.to_le_bytes());
    let photo = app
        .take_photo(picture.as_slice(), Some("leaf.jpg"))
        .expect("the photo is kept");
    let photo: Value = serde_json::from_str(&photo).expect("a reply");
    let request = json!({
        "herb": "peppermint", "part": "leaf", "surface": "dry", "gross_g": 100 + number % 900,
        "tare_g": 20, "bed_name": format!("Bed {run}"), "photos": [photo["photo"]["hash"]],
    });
    call(app, "harvest.record", &request);
}

fn main() {
    let mut args = std::env::args().skip(1);
    let folder = PathBuf::from(args.next().expect("the folder of the journal"));
    let outside = PathBuf::from(args.next().expect("the folder of the backups"));
    let run: u64 = args
        .next()
        .and_then(|run| run.parse().ok())
        .expect("the number of the run");
    let app = App::open(Path::new(&folder), Box::new(SystemClock)).expect("the journal opens");
    say(format_args!("opened"));
    let base = json!({ "file": outside.join("base.zip") });
    let other = json!({ "file": outside.join("other.zip") });
    let made = json!({ "file": outside.join("made.zip") });
    // Each run begins elsewhere in the round, so that every deed is met early and late.
    for number in run.. {
        let what = [
            "record", "backup", "record", "merge", "check", "record", "restore", "undo",
        ][number as usize % 8];
        say(format_args!("begin {what}"));
        match what {
            "record" => record(&app, run, number),
            "backup" => job(&app, "backup.make", &made),
            "merge" => job(&app, "merge.apply", &other),
            "restore" => job(&app, "restore.apply", &base),
            "check" => job(&app, "journal.begin_check", &json!({})),
            _ => {
                // There is nothing to take back in a journal that was never restored.
                let about = call(&app, "backup.about", &json!({}));
                if about["can_undo"] == true {
                    call(&app, "restore.undo", &json!({}));
                }
            }
        }
        say(format_args!("done {what}"));
    }
}
