//! The process whose memory is measured: takes one file in by one way, and says how it went and what
//! it took at most.

use std::fs::File;
use std::io::Read as _;
use std::path::Path;

use api::{App, SystemClock};
use serde_json::{Value, json};

fn call(app: &App, command: &str, request: &Value) -> Result<Value, String> {
    match api::call(app, command, &request.to_string()) {
        Ok(reply) => serde_json::from_str(&reply).map_err(|why| why.to_string()),
        Err(failure) => Err(failure.message.to_string()),
    }
}

fn job(app: &App, command: &str, request: &Value) -> Result<(), String> {
    let begun = call(app, command, request)?;
    loop {
        let card = call(app, "job.show", &json!({ "job": begun["job"] }))?;
        match card["state"].as_str() {
            Some("running") => std::thread::sleep(std::time::Duration::from_millis(2)),
            Some("done") => return Ok(()),
            _ => return Err(card["failure"]["message"].to_string()),
        }
    }
}

/// Takes a photo in, with a byte after its end that makes it one of its own; its name.
fn photo(app: &App, file: &str, number: u8) -> Result<String, String> {
    let from = File::open(file).expect("the file is there");
    let taken = app
        .take_photo(from.chain([number].as_slice()), Some("leaf.jpg"))
        .map_err(|failure| failure.message)?;
    let taken: Value = serde_json::from_str(&taken).map_err(|why| why.to_string())?;
    let hash = taken["photo"]["hash"].as_str();
    Ok(hash.expect("a photo has a hash").to_owned())
}

/// Unpacks it; what the maker is told of it.
fn preview(app: &App, hash: &str) -> Result<(), String> {
    let card = call(app, "photo.preview", &json!({ "hash": hash }))?;
    match card["note"].as_str() {
        Some(note) => Err(note.to_owned()),
        None => Ok(()),
    }
}

/// As a page asks for the previews of a list: all at the same time.
fn at_once(app: &App, file: &str) -> Result<(), String> {
    let hashes: Vec<String> = (0..8)
        .map(|number| photo(app, file, number))
        .collect::<Result<_, _>>()?;
    std::thread::scope(|scope| {
        let asked: Vec<_> = hashes
            .iter()
            .map(|hash| scope.spawn(|| preview(app, hash)))
            .collect();
        asked
            .into_iter()
            .try_for_each(|one| one.join().expect("no panic"))
    })
}

/// The most that was ever resident, in kB, as the system counts it.
fn most_kb() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    line.and_then(|line| line.split_whitespace().next()?.parse().ok())
        .unwrap_or(0)
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let [_, way, folder, file] = args.as_slice() else {
        panic!("a way in, the folder of a journal and a file");
    };
    let app = App::open(Path::new(folder), Box::new(SystemClock)).expect("the journal opens");
    let before = most_kb();
    let outcome = match way.as_str() {
        "photo" => photo(&app, file, 0).and_then(|hash| preview(&app, &hash)),
        "photo.at_once" => at_once(&app, file),
        "import.look" | "import.apply" => call(&app, way, &json!({ "file": file })).map(|_| ()),
        "restore.look" | "merge.look" | "restore.apply" | "merge.apply" => {
            let request = json!({ "file": file, "passphrase": "nettle and balm" });
            job(&app, way, &request)
        }
        "backup.make" => job(&app, way, &json!({ "file": file })),
        "backup.sealed" => {
            let request = json!({ "file": file, "passphrase": "nettle and balm" });
            job(&app, "backup.make", &request)
        }
        "backup.about" => call(&app, way, &json!({})).map(|_| ()),
        other => panic!("{other} is no way in"),
    };
    let said = outcome.err().unwrap_or_default();
    println!(
        "{}",
        json!({ "before_kb": before, "most_kb": most_kb(), "worked_ms": checks::all_worked().as_millis() as u64, "said": said })
    );
}
