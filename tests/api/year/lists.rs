//! Every list of the app on one day, as short lines.

use serde_json::{Value, json};

use crate::world::{World, number, text};

/// What every list says.
#[derive(Debug, Default, PartialEq)]
pub struct Lists {
    /// What is due today.
    pub due: Vec<String>,
    pub harvests: Vec<String>,
    pub trays: Vec<String>,
    /// The lots that may go into a jar.
    pub lots: Vec<String>,
    pub supplies: Vec<String>,
    pub jars: Vec<String>,
    /// How many bottles are in each state.
    pub bottles: Vec<String>,
    pub stock: Vec<String>,
}

/// Lines as a list has them.
pub fn told<const N: usize>(lines: [impl Into<String>; N]) -> Vec<String> {
    lines.map(Into::into).to_vec()
}

/// A title without the lot code, which differs from run to run.
fn title(line: &Value) -> &str {
    let title = text(line, "/title");
    title.split_once(" (").map_or(title, |(name, _)| name)
}

impl Lists {
    pub fn of(world: &World) -> Self {
        let lines = |command: &str, request: Value, field: &str, line: fn(&Value) -> String| {
            let reply = world.call(command, request);
            let rows = reply[field].as_array().unwrap().iter();
            rows.map(line).collect::<Vec<String>>()
        };
        let mut bottles = lines("bottle.list", json!({}), "bottles", state);
        for ended in ["finished", "binned", "given"] {
            bottles.extend(lines(
                "bottle.list",
                json!({"state": ended}),
                "bottles",
                state,
            ));
        }
        bottles.sort();
        same_counts(world);
        let mut counted: Vec<(String, usize)> = Vec::new();
        for state in bottles {
            match counted.last_mut() {
                Some((last, count)) if *last == state => *count += 1,
                _ => counted.push((state, 1)),
            }
        }
        Self {
            due: lines("due.list", json!({"days": 0}), "due", |it| {
                format!("{} {}", text(it, "/what"), title(it))
            }),
            harvests: lines("harvest.list", json!({}), "harvests", |it| {
                let left = number(it, "/fresh_left_g");
                format!("{} {}, {left} g fresh", text(it, "/common"), state(it))
            }),
            trays: lines("tray.list", json!({}), "trays", |it| {
                format!("{} {}", text(it, "/common"), state(it))
            }),
            lots: lines("lot.list", json!({}), "lots", |it| {
                let left = number(it, "/left_g");
                format!("{} {}, {left} g", text(it, "/common"), state(it))
            }),
            supplies: lines("supply.list", json!({}), "supplies", |it| {
                format!("{} {:.0} mL", text(it, "/name"), number(it, "/left_ml"))
            }),
            jars: lines("jar.list", json!({}), "jars", |it| {
                format!("{} {}", text(it, "/name"), state(it))
            }),
            bottles: counted
                .into_iter()
                .map(|(state, count)| format!("{count} {state}"))
                .collect(),
            stock: lines("bottle.list", json!({}), "stock", |it| {
                let (bottles, left) = (&it["bottles"], number(it, "/left_ml"));
                format!("{} {bottles} x, {left} mL", text(it, "/preparation_name"))
            }),
        }
    }
}

fn state(row: &Value) -> String {
    text(row, "/state").to_owned()
}

/// The first line and the counts are those of the whole list.
fn same_counts(world: &World) {
    let all = world.call("due.list", json!({"days": 30}));
    let first = world.call("due.list", json!({"days": 30, "limit": 1}));
    let today = world.call("due.list", json!({"days": 0}));
    let lines = |reply: &Value| reply["due"].as_array().unwrap().clone();
    let harmful = lines(&today).iter().filter(|it| it["harm"] == 3).count();
    assert_eq!(lines(&first), lines(&all)[..lines(&all).len().min(1)]);
    for reply in [&all, &first] {
        assert_eq!(reply["in_all"], lines(&all).len());
        assert_eq!(reply["now"], lines(&today).len());
        assert_eq!(reply["harmful_now"], harmful);
    }
}
