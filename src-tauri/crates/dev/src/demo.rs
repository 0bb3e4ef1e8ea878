//! `cargo dev demo`: a season told through the ordinary commands, each at its own moment.
//!
//! `demo-data/season.json` is a list of `{ "at", "command", "request", "save" }`. A text
//! `"$h3.harvest.id"` in a request stands for that part of the reply saved as `h3`; a photo named by
//! a file beside the season is kept first and stands for its hash.

use std::collections::BTreeMap;
use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;

use api::{App, StandingClock};
use chrono::DateTime;
use serde::Deserialize;
use serde_json::Value;

use crate::failed;
use crate::flags::Flags;
use crate::years::{self, Size};

/// Twenty years of these are 20,000 jars and 100,000 bottles.
const JARS_A_YEAR: u32 = 1000;

/// Fills the journal in the folder after `--into`.
pub fn main(args: &[String]) -> ExitCode {
    let told = Flags::read(args, &["--into", "--years"], &[]).and_then(|flags| {
        let folder = flags
            .value("--into")
            .ok_or("--into DIR says where the journal goes.")?;
        match flags.value("--years") {
            None => tell_into(Path::new(folder)),
            Some(years) => {
                let years = years
                    .parse()
                    .ok()
                    .filter(|years| (1..=100).contains(years))
                    .ok_or("--years N is a whole number between 1 and 100.")?;
                let size = Size {
                    years,
                    jars_a_year: JARS_A_YEAR,
                };
                years::fill(Path::new(folder), size)
            }
        }
    });
    match told {
        Ok(deeds) => {
            eprintln!("{deeds} deeds were recorded.");
            ExitCode::SUCCESS
        }
        Err(why) => failed(why),
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Deed {
    at: String,
    command: String,
    request: Value,
    save: Option<String>,
}

/// Where the season and its pictures lie.
fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../demo-data")
}

/// Tells the season into the journal in `journal`, which must hold nothing yet.
///
/// # Errors
/// A sentence that names the deed that was refused.
pub fn tell_into(journal: &Path) -> Result<usize, String> {
    let file = folder().join("season.json");
    let text = std::fs::read_to_string(&file)
        .map_err(|error| format!("{} cannot be read: {error}.", file.display()))?;
    let deeds: Vec<Deed> = serde_json::from_str(&text)
        .map_err(|error| format!("{} cannot be understood: {error}.", file.display()))?;
    let moment = |deed: &Deed| {
        DateTime::parse_from_rfc3339(&deed.at).map_err(|_| format!("{:?} is no time.", deed.at))
    };
    let first = deeds
        .first()
        .map(moment)
        .transpose()?
        .ok_or("The season holds no deed.")?;
    let clock = Arc::new(StandingClock::at(first));
    let app = App::open(journal, Box::new(clock.clone())).map_err(|failure| failure.message)?;
    app.mark_as_demo().map_err(|failure| failure.message)?;
    let mut saved: BTreeMap<String, Value> = BTreeMap::new();
    for (number, deed) in deeds.iter().enumerate() {
        clock.set(moment(deed)?);
        let told =
            |why: String| format!("Deed {} ({}, {}): {why}", number + 1, deed.at, deed.command);
        let mut request = deed.request.clone();
        fill_in(&mut request, &app, &saved).map_err(told)?;
        let reply = api::call(&app, &deed.command, &request.to_string())
            .map_err(|failure| told(failure.message))?;
        if let Some(name) = &deed.save {
            let reply = serde_json::from_str(&reply).map_err(|error| told(error.to_string()))?;
            saved.insert(name.clone(), reply);
        }
    }
    Ok(deeds.len())
}

fn fill_in(value: &mut Value, app: &App, saved: &BTreeMap<String, Value>) -> Result<(), String> {
    match value {
        Value::String(text) => {
            if let Some(path) = text.strip_prefix('$') {
                *value = recalled(path, saved)?;
            }
        }
        Value::Array(items) => items
            .iter_mut()
            .try_for_each(|item| fill_in(item, app, saved))?,
        Value::Object(fields) => {
            for (name, field) in fields {
                match field {
                    Value::Array(photos) if name == "photos" => {
                        photos.iter_mut().try_for_each(|photo| keep(photo, app))?;
                    }
                    _ => fill_in(field, app, saved)?,
                }
            }
        }
        _ => {}
    }
    Ok(())
}

fn recalled(path: &str, saved: &BTreeMap<String, Value>) -> Result<Value, String> {
    let (name, rest) = path.split_once('.').unwrap_or((path, ""));
    let reply = saved
        .get(name)
        .ok_or_else(|| format!("nothing was saved as {name:?}."))?;
    let pointer = if rest.is_empty() {
        String::new()
    } else {
        format!("/{}", rest.replace('.', "/"))
    };
    let part = reply
        .pointer(&pointer)
        .ok_or_else(|| format!("${path} leads nowhere."))?;
    Ok(part.clone())
}

fn keep(photo: &mut Value, app: &App) -> Result<(), String> {
    let Some(name) = photo.as_str() else {
        return Err("a photo is named by its file.".to_owned());
    };
    let file = folder().join(name);
    let bytes = File::open(&file).map_err(|error| format!("{} : {error}.", file.display()))?;
    let shown = file.file_name().and_then(|name| name.to_str());
    let reply = app
        .take_photo(bytes, shown)
        .map_err(|failure| failure.message)?;
    let reply: Value = serde_json::from_str(&reply).map_err(|error| error.to_string())?;
    *photo = reply["photo"]["hash"].clone();
    Ok(())
}
