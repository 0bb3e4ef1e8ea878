//! What the reader of a tray's figures should know, and why it is not told sooner.

use formulary::{Note, Status};
use message::{Argument, Unit, say};
use physics::drying::Reason;

use crate::drying::expected::noted;
use crate::tray::run::Run;

pub fn notes(run: &Run) -> Vec<Note> {
    if let Some((_, basis)) = run.own_moisture().filter(|_| run.row.tray.cooked.is_some()) {
        return vec![Note {
            code: "cooked_water".to_owned(),
            text: basis,
            source: None,
            status: Status::Practice,
        }];
    }
    let mut notes = vec![run.expected.note()];
    notes.push(Note {
        code: "dried_to".to_owned(),
        text: say!("dried-to", moisture = Argument::percent(run.target_percent)),
        source: None,
        status: Status::Practice,
    });
    if run.was_wet() {
        notes.push(Note {
            code: "surface_wet".to_owned(),
            text: say!("wet-teaches-nothing"),
            source: None,
            status: Status::Practice,
        });
    }
    notes
}

/// What stands in the way of a better forecast; nothing of it matters once the run has ended.
pub fn reasons(run: &Run) -> Vec<Note> {
    if !run.row.tray.is_drying() {
        return Vec::new();
    }
    let is_too_damp = run.estimate.reasons.contains(&Reason::RoomTooDamp);
    // What the card and the air's own line say is not said again.
    let elsewhere = [Reason::RoomTooDamp, Reason::ProbablyDry].map(Reason::code);
    let mut reasons: Vec<Note> = noted(&run.estimate)
        .filter(|note| !elsewhere.contains(&&*note.code))
        .collect();
    if let (Some(air), Some(limit)) = (run.air, run.estimate.air_limit_wet_percent) {
        let whole = |number: f64, unit| Argument::exact(number.round(), unit);
        let humidity = whole(air.relative_humidity_percent, Unit::Percent);
        let temperature = whole(air.temperature_c, Unit::Celsius);
        let moisture = Argument::range(limit.low, limit.value, limit.high, Unit::Percent);
        let text = match is_too_damp {
            true => say!("air-limit-too-damp", humidity, temperature, moisture),
            false => say!("air-limit", humidity, temperature, moisture),
        };
        let note = Note {
            code: "air_limit".to_owned(),
            text,
            source: Some(say!("source-leaf-isotherm").into()),
            status: Status::Proposal,
        };
        // What keeps it from ever getting dry comes before what keeps the forecast from being sharp.
        reasons.insert(if is_too_damp { 0 } else { reasons.len() }, note);
    }
    reasons
}
