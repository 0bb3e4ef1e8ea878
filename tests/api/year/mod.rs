//! A maker with a garden, a shelf and what she makes in a year.

mod days;
mod found;
mod lists;
mod wishes;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD as BASE64;
use serde_json::{Value, json};

use crate::readers::{folder, text_of};
use crate::world::{World, text};

/// A maker with one bed, and what she has made so far.
struct Year {
    world: World,
    bed: Value,
    spirit: Value,
    oil: Value,
}

/// What a line of the list says, without its words.
fn due(world: &World, days: u32) -> Vec<(String, String, u64, String)> {
    let reply = world.call("due.list", json!({"days": days}));
    let line = |line: &Value| {
        (
            text(line, "/what").to_owned(),
            text(line, "/on").to_owned(),
            line["harm"].as_u64().unwrap(),
            text(line, "/title").to_owned(),
        )
    };
    reply["due"].as_array().unwrap().iter().map(line).collect()
}

fn whats(world: &World) -> Vec<String> {
    due(world, 0).into_iter().map(|(what, ..)| what).collect()
}

impl Year {
    fn begin() -> Self {
        let world = World::new();
        world.at("2026-06-10T09:00:00+02:00");
        let bed = world.call("bed.add", json!({"name": "Lower bank"}))["bed"].clone();
        let supply = |request: Value| world.call("supply.add", request)["supply"].clone();
        let spirit = supply(
            json!({"name": "Grain spirit", "size_ml": 2000, "price": 60, "currency": "EUR",
            "item": {"kind": "spirit", "strength_percent_vol": 95}}),
        );
        let oil = supply(
            json!({"name": "Olive oil", "size_ml": 1000, "best_before": "2027-02-01",
            "item": {"kind": "oil", "oil": "olive"}}),
        );
        Self {
            world,
            bed,
            spirit,
            oil,
        }
    }

    /// Prints the labels of the bottles that were filled and reads their codes back from the file.
    fn labelled(&self, filled: &Value) {
        let bottles = filled["bottles"].as_array().unwrap();
        let ids: Vec<&Value> = bottles.iter().map(|bottle| &bottle["id"]).collect();
        let request = json!({"bottles": ids, "paper": "a4", "gift": false, "ethanol": false,
            "label": {"width_mm": 90, "height_mm": 55}});
        let sheet = self.world.call("label.sheet", request);
        let bytes = BASE64.decode(text(&sheet, "/base64")).unwrap();
        let printed = text_of(&folder("api-year"), "labels", &bytes);
        for bottle in bottles {
            assert!(printed.contains(text(bottle, "/code")), "{printed}");
        }
    }

    fn pick(&self, herb: &str, part: &str, grams: f64) -> Value {
        let request = json!({"herb": herb, "part": part, "gross_g": grams, "surface": "dry",
            "bed": self.bed["id"], "look_alike_ruled_out": true});
        self.world.call("harvest.record", request)["harvest"].clone()
    }

    /// Dries a whole harvest in a week: weighed on the third and the sixth day.
    fn dry(&self, harvest: &Value, grams: f64, share: f64, day: u32) -> Value {
        let request = json!({"harvest": harvest["id"], "mass_g": grams, "name": "Tray 1"});
        let tray = self.world.call("tray.start", request)["tray"].clone();
        for (days, mass) in [(2, 0.5), (4, share * 1.1), (5, share * 1.01)] {
            self.world
                .at(&format!("2026-06-{:02}T09:00:00+02:00", day + days));
            let gross = (grams * mass).round();
            self.world.call(
                "tray.weigh",
                json!({"tray": tray["id"], "gross_g": gross, "confirm_odd": true}),
            );
        }
        tray
    }

    fn jar(&self, preparation: &str, plant: Value, extra: Value) -> Value {
        let mut composition = json!({"preparation": preparation, "plants": [plant],
            "stock": [{"kind": "spirit", "supply": self.spirit["id"]}, {"kind": "water"}]});
        for (name, value) in extra.as_object().unwrap() {
            composition[name] = value.clone();
        }
        let request = json!({"composition": composition, "shake": true});
        self.world.call("jar.pour", request)["jar"].clone()
    }

    /// A tincture of 100 g of a harvest of peppermint, fresh.
    fn fresh(&self, mint: &Value) -> Value {
        let plant = json!({"lot": {"kind": "harvest", "id": mint["id"]}, "herb": "peppermint",
            "part": "leaf", "state": "fresh", "mass_g": 100});
        self.jar("tincture", plant, json!({}))
    }

    /// Presses a jar out and fills bottles from it.
    fn filled(&self, jar: &Value, ml: u32, count: u32) -> Value {
        let request = json!({"jar": jar["id"], "came_out_ml": 200, "how": "pressed"});
        self.world.call("jar.strain", request);
        let request = json!({"jar": jar["id"], "bottles": [{"ml": ml, "count": count}]});
        self.world.call("bottle.fill", request)
    }
}
