//! What becomes of a poured jar: `jar.shake` to `jar.empty`, `bottle.*`, `dropper.*`, `trace.*`, recipes.

mod again;
mod bottles;
mod jars;
mod ph;

use serde_json::{Value, json};

use crate::world::World;

/// Dried herb with no water of its own in spirit and water, at 5 mL to a gram unless said otherwise.
pub fn poured(world: &World, herb: &str, part: &str, mass_g: f64, poured_ml: f64) -> Value {
    let dry = json!({"low": 0, "value": 0, "high": 0});
    let plant = json!({"herb": herb, "part": part, "state": "dried", "mass_g": mass_g,
        "moisture_wet_percent": dry});
    let composition = json!({"preparation": "tincture-dried", "plants": [plant],
        "stock": [{"kind": "spirit", "strength_percent_vol": 95}, {"kind": "water"}],
        "ratio_ml_per_g": poured_ml / mass_g, "strength_percent_vol": 50});
    world.call("jar.pour", json!({"composition": composition}))["jar"].clone()
}

fn strained(world: &World, jar: &Value, ml: f64, how: &str) -> Value {
    let request = json!({"jar": jar["id"], "came_out_ml": ml, "how": how});
    world.call("jar.strain", request)["jar"].clone()
}

fn filled(world: &World, jar: &Value, ml: f64, count: u32) -> Value {
    let request =
        json!({"jar": jar["id"], "bottles": [{"ml": ml, "count": count}], "place": "Cellar"});
    world.call("bottle.fill", request)
}

/// Fresh peppermint in olive oil.
fn oil() -> Value {
    let plant = json!({"herb": "peppermint", "part": "leaf", "state": "fresh", "mass_g": 20});
    json!({"preparation": "oil", "plants": [plant], "stock": [{"kind": "oil", "oil": "olive"}]})
}

/// A bottle of that oil, strained and filled at once.
fn fresh_oil(world: &World) -> Value {
    let jar = world.call("jar.pour", json!({"composition": oil()}))["jar"].clone();
    strained(world, &jar, 50.0, "dripped");
    filled(world, &jar, 50.0, 1)["bottles"][0].clone()
}
