//! The process that is killed: records harvests with photos as fast as it can and says when each
//! one was acknowledged.

use std::io::Write as _;
use std::path::Path;

use api::{App, SystemClock};
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
        let photo = app
            .take_photo(picture.as_slice(), Some("leaf.jpg"))
            .expect("the photo is kept");
        let photo: Value = serde_json::from_str(&photo).expect("a reply");
        let hash = photo["photo"]["hash"].as_str().expect("a hash").to_owned();
        let request = json!({
            "herb": "peppermint", "part": "leaf", "surface": "dry",
            "gross_g": 100 + number, "tare_g": 20,
            "bed_name": format!("Bed {run}"), "photos": [hash],
        });
        let reply =
            api::call(&app, "harvest.record", &request.to_string()).expect("it is recorded");
        let reply: Value = serde_json::from_str(&reply).expect("a reply");
        println!(
            "{} {hash} {}",
            reply["harvest"]["id"].as_str().expect("an id"),
            80 + number
        );
        std::io::stdout().flush().expect("the parent listens");
    }
}
