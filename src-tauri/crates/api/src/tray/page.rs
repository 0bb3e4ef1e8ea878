//! `tray.list` and `tray.show`.

use chrono::{DateTime, Duration, FixedOffset};
use formulary::herbs::part::class_of;
use journal::{Source, days_since};
use message::{Argument, Message};
use physics::drying::{self, Reason};
use store::{Reading, TrayRow};

use super::run::{Run, hours_between};
use super::wire::{
    CurvePoint, ListTrays, LostLine, ShowTray, TrayCard, TrayPage, TrayShown, TrayState, Trays,
    WeighingLine,
};
use crate::discard::binned;
use crate::drying::{OvenSample, noted};
use crate::harvest::OwnBatches;
use crate::wire::{Air, Interval, Note, Status};
use crate::{App, Command, Failure, asked, words};

/// A tray is weighed daily towards the end (common practice, no source); after this it was forgotten.
const FORGOTTEN_AFTER_DAYS: i64 = 4;
/// How many trays are listed at a time unless the page asks otherwise.
const USUAL: u32 = 30;

impl Command for ListTrays {
    const NAME: &'static str = "tray.list";
    type Reply = Trays;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let after = self
            .after
            .as_deref()
            .map(|id| asked::id("after", id))
            .transpose()?;
        let limit = asked::limit(self.limit, USUAL)?;
        let forgotten = app.now() - Duration::days(FORGOTTEN_AFTER_DAYS);
        app.read(|reading| {
            let page = reading.trays(forgotten.timestamp_millis(), after, limit)?;
            let mut own = OwnBatches::default();
            let cards: Result<Vec<_>, Failure> = page
                .rows
                .into_iter()
                .map(|row| Ok(card_of(&Run::among(reading, row, &mut own)?, app.now())))
                .collect();
            Ok(Trays {
                trays: cards?,
                more: page.more,
            })
        })
    }
}

impl Command for ShowTray {
    const NAME: &'static str = "tray.show";
    type Reply = TrayShown;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let id = asked::id("id", &self.id)?;
        app.read(|reading| {
            Ok(TrayShown {
                tray: page(app, reading, &id)?,
            })
        })
    }
}

/// A tray in a list.
pub(crate) fn card(app: &App, reading: &Reading<'_>, row: &TrayRow) -> Result<TrayCard, Failure> {
    Ok(card_of(&Run::of(reading, row.clone())?, app.now()))
}

/// A tray with its weigh-ins and its forecast.
pub(super) fn page(
    app: &App,
    reading: &Reading<'_>,
    id: &journal::TrayId,
) -> Result<TrayPage, Failure> {
    let run = Run::read(reading, id)?;
    let tray = &run.row.tray;
    let lines = run
        .weighings
        .iter()
        .enumerate()
        .map(|(at, (id, it))| WeighingLine {
            id: id.to_string(),
            at: it.at.to_rfc3339(),
            hours: hours_between(tray.started_at, it.at),
            gross_g: it.gross_g,
            mass_g: it.gross_g - tray.tare_g,
            odd: it.odd || run.estimate.odd.contains(&at),
            snap_test: it.snap_test,
            air: it.air.map(shown),
        });
    // Nothing is foretold of what is no more.
    let ended = tray.lost.as_ref();
    let ended = ended.map_or(f64::INFINITY, |lost| {
        hours_between(tray.started_at, lost.at)
    });
    let curve = drying::curve(&run.lot).into_iter();
    let dries = tray.cooked.is_none();
    let curve = curve
        .filter(|point| dries && point.hours <= ended)
        .map(|point| CurvePoint {
            hours: point.hours,
            low_g: point.mass_g.low,
            value_g: point.mass_g.value,
            high_g: point.mass_g.high,
        });
    Ok(TrayPage {
        card: card_of(&run, app.now()),
        dry_matter_g: run.estimate.dry_matter_g.into(),
        basis: run.estimate.basis.name().to_owned(),
        reasons: reasons(&run),
        feel: Note {
            code: "feel".to_owned(),
            text: class_of(&run.row.harvest.part).feel_when_dry().to_owned(),
            source: None,
            status: Status::Practice,
        },
        notes: notes(&run),
        telling_gross_g: run
            .estimate
            .telling_mass_g
            .filter(|_| tray.is_drying())
            .map(|mass_g| mass_g + tray.tare_g),
        ends_hours: run.ends_hours().map(Interval::from),
        weighings: lines.collect(),
        curve: curve.collect(),
        note: tray.note.clone(),
        sample: tray.sample.map(|it| OvenSample {
            fresh_g: it.fresh_g,
            dry_g: it.dry_g,
        }),
        air: tray.air.map(shown),
        air_limit_wet_percent: run.estimate.air_limit_wet_percent.map(Interval::from),
        binned: binned(reading, Source::Tray(*id))?,
        lost: tray.lost.as_ref().map(|lost| LostLine {
            at: lost.at.to_rfc3339(),
            reason: lost.reason.clone(),
        }),
    })
}

fn notes(run: &Run) -> Vec<Note> {
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
        text: format!("Dry means dried to {} % moisture.", run.target_percent),
        source: None,
        status: Status::Practice,
    });
    if run.was_wet() {
        notes.push(Note {
            code: "surface_wet".to_owned(),
            text: "It was weighed wet, so its own dry weight teaches nothing for the next batch."
                .to_owned(),
            source: None,
            status: Status::Practice,
        });
    }
    notes
}

/// What stands in the way of a better forecast; nothing of it matters once the run has ended.
fn reasons(run: &Run) -> Vec<Note> {
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
        let end = if is_too_damp {
            ": finish it warm or move it"
        } else {
            ""
        };
        let text = format!(
            "At {:.0} % humidity and {:.0} °C this room stops near {:.0} % moisture ({:.0} to {:.0} %){end}.",
            air.relative_humidity_percent, air.temperature_c, limit.value, limit.low, limit.high
        );
        let note = Note {
            code: "air_limit".to_owned(),
            text,
            source: Some(
                "herb-leaf isotherm of this book, tied to lemon balm leaf (Argyropoulos et al. 2012)"
                    .to_owned(),
            ),
            status: Status::Proposal,
        };
        // What keeps it from ever getting dry comes before what keeps the forecast from being sharp.
        reasons.insert(if is_too_damp { 0 } else { reasons.len() }, note);
    }
    reasons
}

fn shown(air: journal::Air) -> Air {
    Air {
        temperature_c: air.temperature_c,
        relative_humidity_percent: air.relative_humidity_percent,
    }
}

/// A tray in a list, by its forecast.
pub(crate) fn card_of(run: &Run, now: DateTime<FixedOffset>) -> TrayCard {
    let (tray, harvest, estimate) = (&run.row.tray, &run.row.harvest, &run.estimate);
    let (is_down, is_drying) = (tray.down().is_some(), tray.is_drying());
    let last = run.last_weighed();
    let looked_at = last.map_or(tray.started_at, |(_, at)| at);
    let counted = run.last_counted();
    let counted_at = counted.map_or(tray.started_at, |(_, at)| at);
    let hours_since = hours_between(counted_at, now).max(0.0);
    let hours_left = estimate
        .hours_left
        .filter(|_| is_drying)
        .map(|left| Interval::from(left.map_monotone(|hours| (hours - hours_since).max(0.0))));
    let stop = estimate
        .target_mass_g
        .map_monotone(|mass| mass + tray.tare_g);
    let is_dry = is_down || (is_drying && estimate.is_dry);
    let probably_dry = is_drying && estimate.is_probably_dry;
    let forgotten = is_drying && now - looked_at > Duration::days(FORGOTTEN_AFTER_DAYS);
    let dried_left_g = is_down.then_some(run.row.dried_left_g);
    TrayCard {
        id: run.row.id.to_string(),
        code: tray.code.to_string(),
        name: tray.name.clone(),
        harvest: tray.harvest.to_string(),
        herb: harvest.herb.to_string(),
        common: run.known.common.clone(),
        part: harvest.part.clone(),
        photo: harvest.photos.first().map(ToString::to_string),
        started_at: tray.started_at.to_rfc3339(),
        days: u32::try_from(days_since(tray.started_at, now)).unwrap_or_default(),
        fresh_mass_g: tray.fresh_mass_g,
        tare_g: tray.tare_g,
        mass_now_g: match (tray.cooked, last) {
            (Some(_), Some((mass, _))) => mass,
            _ => counted.map_or(tray.fresh_mass_g, |(mass, _)| mass),
        },
        last_weighed_at: last.map(|(_, at)| at.to_rfc3339()),
        state: if is_drying {
            TrayState::Drying
        } else if is_down && tray.cooked.is_some() {
            TrayState::Cooked
        } else if is_down {
            TrayState::Dry
        } else {
            TrayState::Lost
        },
        taken_down_at: tray.down().map(|end| end.at.to_rfc3339()),
        dried_left_g,
        moisture_now_wet_percent: if tray.cooked.is_some() {
            run.own_moisture().map(|(moisture, _)| moisture.into())
        } else {
            estimate.moisture_now_wet_percent.map(Interval::from)
        },
        target_mass_g: estimate.target_mass_g.into(),
        stop_gross_g: stop.into(),
        says: says(run, dried_left_g, hours_left, forgotten),
        hours_left,
        weigh_at: run
            .estimate
            .next_weighing_hours
            .filter(|_| is_drying && !probably_dry)
            .map(|hours| weigh_at(counted_at, looked_at, hours).to_rfc3339()),
        why: why(run),
        is_dry,
        probably_dry,
        forgotten,
    }
}

/// When to weigh again; a weigh-in that does not count is made good the next day, and nobody who has just
/// weighed is sent back on the same one.
fn weigh_at(
    counted_at: DateTime<FixedOffset>,
    looked_at: DateTime<FixedOffset>,
    hours: f64,
) -> DateTime<FixedOffset> {
    let next = counted_at + Duration::minutes((60.0 * hours) as i64);
    if looked_at > counted_at || next.date_naive() <= looked_at.date_naive() {
        looked_at + Duration::hours(24)
    } else {
        next
    }
}

/// The reason that most stands in the way of a time left.
fn why(run: &Run) -> Option<String> {
    let reasons = &run.estimate.reasons;
    let counts = |reason: &&Reason| !matches!(reason, Reason::AirNotNoted | Reason::OddWeighing);
    let is_open = run.row.tray.is_drying() && !run.estimate.is_dry;
    let first = reasons.iter().find(counts).or_else(|| reasons.first());
    first
        .filter(|_| is_open)
        .map(|reason| reason.code().to_owned())
}

/// What the tray is up to, in one line.
fn says(
    run: &Run,
    dried_left_g: Option<f64>,
    hours_left: Option<Interval>,
    forgotten: bool,
) -> String {
    let reasons = &run.estimate.reasons;
    if let Some(left) = dried_left_g.filter(|_| run.row.tray.cooked.is_some()) {
        return Message::new("cooked-left")
            .with("left", Argument::grams(left))
            .into();
    }
    if let Some(left) = dried_left_g {
        return format!("dried, {} g left", words::figure(left));
    }
    if run.row.tray.lost.is_some() {
        return "thrown away while it was drying".to_owned();
    }
    if run.estimate.is_dry {
        return "dry: take it down".to_owned();
    }
    if run.estimate.is_probably_dry {
        return Message::new("tray-probably-dry").into();
    }
    if forgotten {
        return format!("not weighed for more than {FORGOTTEN_AFTER_DAYS} days");
    }
    if let Some(left) = hours_left {
        return to_go(left.low, left.high);
    }
    let short = |reason: &Reason| match reason {
        Reason::RoomTooDamp => "the air is too damp to dry it",
        Reason::ScaleTooCoarse => "the scale is too coarse to tell",
        Reason::NotWeighedYet => "not weighed yet",
        _ => "cannot say yet",
    };
    reasons.first().map_or("cannot say yet", short).to_owned()
}

/// A time left as a maker would say it: hours while it is hours, then days.
fn to_go(low_hours: f64, high_hours: f64) -> String {
    if high_hours < 1.5 {
        return "weigh it now".to_owned();
    }
    let (low, high, unit) = if high_hours > 72.0 {
        (
            (low_hours / 24.0).floor(),
            (high_hours / 24.0).ceil(),
            "days",
        )
    } else {
        (low_hours.round(), high_hours.round(), "hours")
    };
    if low < 1.0 {
        format!("up to {high} {unit} to go")
    } else if low == high {
        format!("about {high} {unit} to go")
    } else {
        format!("{low} to {high} {unit} to go")
    }
}

#[cfg(test)]
mod tests {
    use super::to_go;

    #[test]
    fn a_time_left_is_said_in_hours_or_days() {
        assert_eq!(to_go(8.9, 381.4), "up to 16 days to go");
        assert_eq!(to_go(30.0, 100.0), "1 to 5 days to go");
        assert_eq!(to_go(3.6, 20.2), "4 to 20 hours to go");
        assert_eq!(to_go(0.0, 0.0), "weigh it now");
    }
}
