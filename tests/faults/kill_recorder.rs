//! The process that is killed: records harvests with photos, pours every third into a jar and
//! strains it twice, as fast as it can, and says when each was acknowledged.

use std::io::Write as _;
use std::path::Path;

use api::{App, Failure, Language, SystemClock};
use serde_json::{Value, json};

fn main() {
    let mut args = std::env::args().skip(1);
    let folder = args.next().expect("the folder of the journal");
    let run: u64 = args
        .next()
        .expect("the number of the run")
        .parse()
        .expect("a number");
    let app = App::open(Path::new(&folder), Box::new(SystemClock)).expect("the journal opens");
    println!("opened");
    for number in 0_u64.. {
        let mut picture = include_bytes!("../photo/samples/no_exif.jpg").to_vec();
        // Bytes after the end of a JPEG change its hash and nothing else.
        picture.extend(run.to_le_bytes());
        picture.extend(number.to_le_bytes());
        let photo = done(
            "a photo",
            app.take_photo(picture.as_slice(), Some("leaf.jpg")),
        );
        let photo: Value = serde_json::from_str(&photo).expect("a reply");
        let hash = photo["photo"]["hash"].as_str().expect("a hash").to_owned();
        let request = json!({
            "herb": "peppermint", "part": "leaf", "surface": "dry",
            "gross_g": 100 + number, "tare_g": 20,
            "bed_name": format!("Bed {run}"), "photos": [hash],
        });
        let reply = done(
            "harvest.record",
            api::call(&app, "harvest.record", &request.to_string()),
        );
        let reply: Value = serde_json::from_str(&reply).expect("a reply");
        let harvest = reply["harvest"]["id"].as_str().expect("an id").to_owned();
        say(format_args!("harvest {harvest} {hash} {}", 80 + number));
        if number % 3 == 0 {
            strain(&app, &harvest);
        }
    }
}

/// What was answered, or the end of this process with the sentence that the maker would read.
fn done(what: &str, answer: Result<String, Failure>) -> String {
    answer.unwrap_or_else(|failure| panic!("{what}: {}", Language::English.tell(&failure.message)))
}

fn say(line: std::fmt::Arguments<'_>) {
    println!("{line}");
    std::io::stdout().flush().expect("the parent listens");
}

/// Pours 40 g of a harvest into a jar, strains it and presses it.
fn strain(app: &App, harvest: &str) {
    let call = |command: &str, request: Value| -> Value {
        let reply = done(command, api::call(app, command, &request.to_string()));
        serde_json::from_str(&reply).expect("a reply")
    };
    let plant = json!({ "herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 40,
        "lot": { "kind": "harvest", "id": harvest } });
    let composition = json!({ "preparation": "tincture", "plants": [plant],
        "stock": [{ "kind": "spirit", "strength_percent_vol": 95 }, { "kind": "water" }],
        "ratio_ml_per_g": 3 });
    let jar = call("jar.pour", json!({ "composition": composition }))["jar"]["id"].clone();
    let id = jar.as_str().expect("an id");
    for (how, ml, all) in [("dripped", 60, 60), ("pressed", 20, 80)] {
        call(
            "jar.strain",
            json!({ "jar": jar, "came_out_ml": ml, "how": how }),
        );
        say(format_args!("strained {id} {all}"));
    }
}
