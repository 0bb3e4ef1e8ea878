//! A tray in a list: how far it is, and when to weigh it.

use chrono::{DateTime, Duration, FixedOffset};
use journal::days_since;
use message::{Argument, Failure, Message, say};
use physics::Interval;
use physics::drying::Reason;
use serde::Serialize;
use store::{Reading, TrayRow};

use crate::told;
use crate::tray::run::{Run, hours_between};

/// Whether the run goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum TrayState {
    Drying,
    Dry,
    /// No drying: plant that was simmered and strained.
    Cooked,
    /// Thrown away while it was drying.
    Lost,
}

/// A tray in a list.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TrayCard {
    pub id: String,
    pub code: String,
    pub name: String,
    pub harvest: String,
    pub herb: String,
    pub common: Message,
    pub part: String,
    pub photo: Option<String>,
    pub started_at: String,
    pub days: u32,
    pub fresh_mass_g: f64,
    pub tare_g: f64,
    pub mass_now_g: f64,
    pub last_weighed_at: Option<String>,
    pub state: TrayState,
    pub taken_down_at: Option<String>,
    pub dried_left_g: Option<f64>,
    pub moisture_now_wet_percent: Option<Interval>,
    pub target_mass_g: Interval,
    pub stop_gross_g: Interval,
    pub hours_left: Option<Interval>,
    /// When the next weigh-in is worth the walk; none once the tray is dry.
    pub weigh_at: Option<String>,
    /// What most stands in the way of a time left.
    pub why: Option<Reason>,
    pub is_dry: bool,
    /// It rests at its stop weight, and only the hand can tell that it is dry.
    pub probably_dry: bool,
    pub forgotten: bool,
    pub says: Message,
}

/// A tray is weighed daily towards the end (common practice, no source); after this it was forgotten.
pub const FORGOTTEN_AFTER_DAYS: i64 = 4;

/// A tray in a list.
pub fn card(
    reading: &Reading<'_>,
    row: &TrayRow,
    now: DateTime<FixedOffset>,
) -> Result<TrayCard, Failure> {
    Ok(card_of(&Run::of(reading, row.clone())?, now))
}

/// A tray in a list, by its forecast.
pub fn card_of(run: &Run, now: DateTime<FixedOffset>) -> TrayCard {
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
        .map(|left| left.map_monotone(|hours| (hours - hours_since).max(0.0)));
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
        common: told::title(&run.known),
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
            run.own_moisture().map(|(moisture, _)| moisture)
        } else {
            estimate.moisture_now_wet_percent
        },
        target_mass_g: estimate.target_mass_g,
        stop_gross_g: stop,
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
fn why(run: &Run) -> Option<Reason> {
    let reasons = &run.estimate.reasons;
    let counts = |reason: &&Reason| !matches!(reason, Reason::AirNotNoted | Reason::OddWeighing);
    let is_open = run.row.tray.is_drying() && !run.estimate.is_dry;
    let first = reasons.iter().find(counts).or_else(|| reasons.first());
    first.filter(|_| is_open).copied()
}

/// What the tray is up to, in one line.
fn says(
    run: &Run,
    dried_left_g: Option<f64>,
    hours_left: Option<Interval>,
    forgotten: bool,
) -> Message {
    let reasons = &run.estimate.reasons;
    if let Some(left) = dried_left_g.filter(|_| run.row.tray.cooked.is_some()) {
        return say!("cooked-left", left = Argument::grams(left));
    }
    if let Some(left) = dried_left_g {
        return say!("tray-dried-left", mass = Argument::grams(left));
    }
    if run.row.tray.lost.is_some() {
        return say!("tray-lost");
    }
    if run.estimate.is_dry {
        return say!("tray-dry");
    }
    if run.estimate.is_probably_dry {
        return say!("tray-probably-dry");
    }
    if forgotten {
        let days = FORGOTTEN_AFTER_DAYS.unsigned_abs();
        return say!("tray-not-weighed-for", days);
    }
    if let Some(left) = hours_left {
        return to_go(left.low, left.high);
    }
    match reasons.first() {
        Some(Reason::RoomTooDamp) => say!("tray-air-too-damp"),
        Some(Reason::ScaleTooCoarse) => say!("tray-scale-too-coarse"),
        Some(Reason::NotWeighedYet) => say!("tray-not-weighed"),
        _ => say!("tray-too-early"),
    }
}

/// A time left as a maker would say it: hours while it is hours, then days.
fn to_go(low_hours: f64, high_hours: f64) -> Message {
    if high_hours < 1.5 {
        return say!("tray-weigh-now");
    }
    // Neither end is below nothing, and no run is forecast beyond its months.
    let whole = |number: f64| number as u64;
    if high_hours > 72.0 {
        let (low, high) = (
            whole((low_hours / 24.0).floor()),
            whole((high_hours / 24.0).ceil()),
        );
        match low {
            0 => say!("tray-days-at-most", high),
            _ if low == high => say!("tray-days-about", high),
            _ => say!("tray-days-between", low, high),
        }
    } else {
        let (low, high) = (whole(low_hours.round()), whole(high_hours.round()));
        match low {
            0 => say!("tray-hours-at-most", high),
            _ if low == high => say!("tray-hours-about", high),
            _ => say!("tray-hours-between", low, high),
        }
    }
}

#[cfg(test)]
mod tests {
    use message::say;

    use super::to_go;

    #[test]
    fn a_time_left_is_said_in_hours_or_days() {
        let (low, high) = (1_u64, 5_u64);
        assert_eq!(to_go(30.0, 100.0), say!("tray-days-between", low, high));
        assert_eq!(to_go(8.9, 381.4), say!("tray-days-at-most", high = 16_u64));
        let (low, high) = (4_u64, 20_u64);
        assert_eq!(to_go(3.6, 20.2), say!("tray-hours-between", low, high));
        assert_eq!(to_go(1.7, 1.8), say!("tray-hours-about", high = 2_u64));
        assert_eq!(to_go(0.0, 0.0), say!("tray-weigh-now"));
    }
}
