//! The process whose memory is measured: takes one file in by one way, and says how it went and what
//! it took at most.

use std::fs::File;
use std::path::Path;
use std::time::Instant;

use api::{App, SystemClock};
use serde_json::{Value, json};

fn call(app: &App, command: &str, request: &Value) -> Result<Value, String> {
    match api::call(app, command, &request.to_string()) {
        Ok(reply) => serde_json::from_str(&reply).map_err(|why| why.to_string()),
        Err(failure) => Err(failure.message),
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
    let begun = Instant::now();
    let outcome = match way.as_str() {
        "photo" => {
            let from = File::open(file).expect("the file is there");
            app.take_photo(from, Some("leaf.jpg"))
                .map(|_| ())
                .map_err(|failure| failure.message)
        }
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
    let took = begun.elapsed();
    let said = outcome.err().unwrap_or_default();
    println!(
        "{}",
        json!({ "before_kb": before, "most_kb": most_kb(), "took_ms": took.as_millis() as u64, "said": said })
    );
}
