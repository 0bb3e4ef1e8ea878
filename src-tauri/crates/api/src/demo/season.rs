//! A season told through the ordinary commands, each at its own moment.
//!
//! `demo-data/season.json` is a list of `{ "at", "command", "request", "save" }`. A text
//! `"$h3.harvest.id"` in a request stands for that part of the reply saved as `h3`; a photo named by
//! a file beside the season is kept first and stands for its hash, or is left out.

use std::collections::BTreeMap;
use std::io::Read;

use ::words::Language;
use chrono::{DateTime, FixedOffset};
use serde::Deserialize;
use serde_json::Value;

use crate::clock::StandingClock;
use crate::command;
use crate::open::Open;
use crate::reply::answered_in;

const SEASON: &str = include_str!("../../../../../demo-data/season.json");

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Deed {
    at: DateTime<FixedOffset>,
    command: String,
    request: Value,
    save: Option<String>,
}

/// The invented season, still untold.
pub struct Season {
    deeds: Vec<Deed>,
    begins_at: DateTime<FixedOffset>,
}

impl Season {
    /// Reads the season that comes with the app.
    ///
    /// # Errors
    /// A sentence when it cannot be understood.
    pub fn read() -> Result<Self, String> {
        let deeds: Vec<Deed> = serde_json::from_str(SEASON)
            .map_err(|error| format!("The season cannot be understood: {error}."))?;
        let begins_at = deeds.first().ok_or("The season holds no deed.")?.at;
        Ok(Self { deeds, begins_at })
    }

    /// The moment of its first deed.
    pub fn begins_at(&self) -> DateTime<FixedOffset> {
        self.begins_at
    }

    /// Tells the season to a journal, whose clock `clock` is, and returns how many deeds it was.
    /// `picture` opens a photo by its name, or says that it is to be left out.
    pub(crate) fn tell_to<R: Read>(
        &self,
        app: &Open,
        clock: &StandingClock,
        picture: impl Fn(&str) -> Result<Option<R>, String>,
    ) -> Result<usize, String> {
        app.mark_as_demo().map_err(|failure| failure.message)?;
        let mut saved = BTreeMap::new();
        for (number, deed) in self.deeds.iter().enumerate() {
            clock.set(deed.at);
            let told =
                |why: String| format!("Deed {} ({}, {}): {why}", number + 1, deed.at, deed.command);
            let mut request = deed.request.clone();
            fill_in(&mut request, app, &saved, &picture).map_err(told)?;
            let reply = answered_in(Language::English, || {
                command::carried(app, &deed.command, &request.to_string())
            })
            .map_err(|failure| told(failure.message.to_string()))?;
            if let Some(name) = &deed.save {
                let reply =
                    serde_json::from_str(&reply).map_err(|error| told(error.to_string()))?;
                saved.insert(name.clone(), reply);
            }
        }
        Ok(self.deeds.len())
    }
}

fn fill_in<R: Read>(
    value: &mut Value,
    app: &Open,
    saved: &BTreeMap<String, Value>,
    picture: &impl Fn(&str) -> Result<Option<R>, String>,
) -> Result<(), String> {
    match value {
        Value::String(text) => {
            if let Some(path) = text.strip_prefix('$') {
                *value = recalled(path, saved)?;
            }
        }
        Value::Array(items) => items
            .iter_mut()
            .try_for_each(|item| fill_in(item, app, saved, picture))?,
        Value::Object(fields) => {
            for (name, field) in fields {
                match field {
                    Value::Array(photos) if name == "photos" => {
                        let kept: Result<Vec<_>, String> = photos
                            .iter()
                            .filter_map(|photo| keep(photo, app, picture).transpose())
                            .collect();
                        *photos = kept?;
                    }
                    _ => fill_in(field, app, saved, picture)?,
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

fn keep<R: Read>(
    photo: &Value,
    app: &Open,
    picture: &impl Fn(&str) -> Result<Option<R>, String>,
) -> Result<Option<Value>, String> {
    let name = photo.as_str().ok_or("a photo is named by its file.")?;
    let Some(bytes) = picture(name)? else {
        return Ok(None);
    };
    let shown = name.rsplit('/').next();
    let reply = app
        .take_photo(bytes, shown)
        .map_err(|failure| failure.message)?;
    let reply: Value = serde_json::from_str(&reply).map_err(|error| error.to_string())?;
    Ok(Some(reply["photo"]["hash"].clone()))
}
