//! `recipe.card`, `label.*`, `trace.sheet`, `season.book`, `due.calendar`, `lot.find`: read back from the files by
//! poppler's pdftotext and pdftoppm, zbar's zbarimg and another library's calendar parser.

mod cards;
mod classes;
mod labels;
mod sheets;

use std::path::PathBuf;

use base64::Engine as _;
use serde_json::{Value, json};

use crate::readers::folder;
use crate::world::{World, text};

/// What a maker has after a summer: a valerian tincture, strained and filled, and a jar that steeps.
struct Pantry {
    world: World,
    bottles: Vec<Value>,
    tincture: Value,
    jar: Value,
}

fn bytes(file: &Value) -> Vec<u8> {
    base64::prelude::BASE64_STANDARD
        .decode(text(file, "/base64"))
        .unwrap()
}

/// A folder of this test's own files.
fn kept(test: &str) -> PathBuf {
    folder(&format!("api-{test}"))
}

impl Pantry {
    fn begin() -> Self {
        let world = World::new();
        let bed = |name: &str, wild: bool| {
            world.call("bed.add", json!({"name": name, "wild": wild}))["bed"]["id"].clone()
        };
        let (long, wood) = (bed("Long bed", false), bed("Behind the quarry", true));
        let photo = world.photo("place_and_zone.jpg");
        let pick = |herb: &str, part: &str, bed: &Value, more: Value| {
            let mut request = json!({"herb": herb, "part": part, "gross_g": 400, "surface": "dry",
                "bed": bed, "look_alike_ruled_out": true, "note": "Mine alone to read"});
            for (name, value) in more.as_object().unwrap() {
                request[name] = value.clone();
            }
            world.call("harvest.record", request)["harvest"].clone()
        };
        let root = pick(
            "valerian",
            "root",
            &long,
            json!({"photos": [photo["photo"]["hash"]]}),
        );
        let leaf = pick("lemon balm", "leaf", &wood, json!({}));
        let poured = |preparation: &str, plant: Value, more: Value| {
            let mut composition = json!({"preparation": preparation, "plants": [plant]});
            for (name, value) in more.as_object().unwrap() {
                composition[name] = value.clone();
            }
            let request = json!({"composition": composition, "note": "Not for other eyes"});
            world.call("jar.pour", request)["jar"].clone()
        };
        let plant = |harvest: &Value, herb: &str, part: &str, mass_g: f64| {
            json!({"lot": {"kind": "harvest", "id": harvest["id"]}, "herb": herb, "part": part,
                "state": "fresh", "mass_g": mass_g})
        };
        let tincture = poured(
            "tincture",
            plant(&root, "valerian", "root", 200.0),
            json!({"stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
                "ratio_ml_per_g": 2, "strength_percent_vol": 50}),
        );
        let jar = poured(
            "glycerite",
            plant(&leaf, "lemon balm", "leaf", 100.0),
            json!({"stock": [{"kind": "glycerin", "purity_percent_mass": 99.5}, {"kind": "water"}]}),
        );
        world.at("2026-08-14T09:00:00+02:00");
        world.call(
            "jar.strain",
            json!({"jar": tincture["id"], "came_out_ml": 380, "how": "wrung"}),
        );
        let filled = world.call(
            "bottle.fill",
            json!({"jar": tincture["id"], "bottles": [{"ml": 100, "count": 3}],
                "note": "Cloudy, keep it from my sister"}),
        );
        let bottles = filled["bottles"].as_array().unwrap().clone();
        Self {
            world,
            bottles,
            tincture,
            jar,
        }
    }

    fn ids(&self) -> Vec<Value> {
        self.bottles
            .iter()
            .map(|bottle| bottle["id"].clone())
            .collect()
    }
}
