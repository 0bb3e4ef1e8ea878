//! A drying run with its forecast: the tray, its weigh-ins and what they say together.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

use chrono::{DateTime, FixedOffset};
use formulary::herbs;
use journal::{Air, Cooked, Surface, Tray, TrayId, Weighing, WeighingId};
use message::{At, Failure, Message, say};
use physics::drying::{self, Estimate, Lot, OvenSample};
use physics::quantity::{Mass, degrees_celsius, grams, hours};
use physics::{Interval, WetBasis};
use store::{Reading, TrayRow};

use crate::drying::batches::OwnBatches;
use crate::drying::expected::{Expected, air};
use crate::drying::weight::target_percent;
use crate::herb::Known;

/// A drying run with its forecast.
pub struct Run {
    pub row: TrayRow,
    pub known: Known,
    pub weighings: Vec<(WeighingId, Weighing)>,
    pub expected: Expected,
    pub lot: Lot,
    /// The air that was noted, as it tells of the run.
    pub air: Option<Air>,
    pub estimate: Estimate,
    /// What it is dried to, % of its weight.
    pub target_percent: f64,
}

impl Run {
    /// The run of a tray as the journal has it.
    pub fn of(reading: &Reading<'_>, row: TrayRow) -> Result<Self, Failure> {
        let weighings = reading.weighings(&row.id)?;
        Self::with(reading, row, weighings)
    }

    /// The run of the tray with this id.
    pub fn read(reading: &Reading<'_>, id: &TrayId) -> Result<Self, Failure> {
        Self::of(reading, reading.tray(id)?)
    }

    /// The run as it would be with these weigh-ins.
    pub fn with(
        reading: &Reading<'_>,
        row: TrayRow,
        weighings: Vec<(WeighingId, Weighing)>,
    ) -> Result<Self, Failure> {
        Self::beside(reading, row, weighings, &mut OwnBatches::default())
    }

    /// The run of one tray of many.
    pub fn among(
        reading: &Reading<'_>,
        row: TrayRow,
        own: &mut OwnBatches,
    ) -> Result<Self, Failure> {
        let weighings = reading.weighings(&row.id)?;
        Self::beside(reading, row, weighings, own)
    }

    fn beside(
        reading: &Reading<'_>,
        row: TrayRow,
        weighings: Vec<(WeighingId, Weighing)>,
        own: &mut OwnBatches,
    ) -> Result<Self, Failure> {
        let (tray, harvest) = (&row.tray, &row.harvest);
        let known = Known::written(reading, &harvest.herb)?;
        let own = own.fractions(reading, &known.key, &harvest.part, Some(row.id))?;
        let expected = Expected::of(known.water(&harvest.part), &harvest.part, &own).at("part")?;
        let target_percent = target_percent(&known, &harvest.part);
        let step = scale_step(tray, &weighings);
        let noted = air_of_run(tray, &weighings)?;
        let mut lot = Lot::new(grams(tray.fresh_mass_g), expected.prior)
            .at("mass_g")?
            .pace(expected.pace)
            .scale_step(step)?
            .target(WetBasis::from_percent(target_percent)?)?
            .weighings(if tray.cooked.is_some() {
                // A pot does not dry.
                Vec::new()
            } else {
                figures(tray, &weighings)?
            })
            .air(noted.as_ref().map(air).transpose()?);
        if !own.is_empty() {
            lot = lot.from_own_batches();
        }
        if let Some(sample) = tray.sample {
            lot = lot.sample(oven_sample(sample, step)?);
        }
        let estimate = estimated(row.id, &lot);
        Ok(Self {
            row,
            known,
            weighings,
            expected,
            lot,
            air: noted,
            estimate,
            target_percent,
        })
    }

    /// Net weight and time of the latest weigh-in, the take-down included.
    pub fn last_weighed(&self) -> Option<(f64, DateTime<FixedOffset>)> {
        let tray = &self.row.tray;
        match tray.down() {
            Some(end) => Some((end.gross_g - tray.tare_g, end.at)),
            None => self
                .weighings
                .last()
                .map(|(_, it)| (it.gross_g - tray.tare_g, it.at)),
        }
    }

    /// Net weight and time of the latest weigh-in that the forecast counts, the take-down included.
    pub fn last_counted(&self) -> Option<(f64, DateTime<FixedOffset>)> {
        if self.row.tray.down().is_some() {
            return self.last_weighed();
        }
        let odd = &self.estimate.odd;
        let counted = (0..self.weighings.len()).rev().find(|at| !odd.contains(at));
        counted.map(|at| {
            let it = &self.weighings[at].1;
            (it.gross_g - self.row.tray.tare_g, it.at)
        })
    }

    /// When it will be dry enough, in hours since it was laid out; nothing once the run has ended.
    pub fn ends_hours(&self) -> Option<Interval> {
        let tray = &self.row.tray;
        let left = self.estimate.hours_left?;
        let (_, at) = self.last_counted()?;
        let gone = hours_between(tray.started_at, at);
        tray.is_drying()
            .then(|| left.map_monotone(|hours| gone + hours))
    }

    /// Whether the plant was weighed with water on the outside.
    pub fn was_wet(&self) -> bool {
        self.row.harvest.surface != Surface::Dry
    }

    /// The moisture of the dried lot as its own weigh-ins or sample tell it, % of its weight, and
    /// which of them; nothing where only the tables know.
    pub fn own_moisture(&self) -> Option<(Interval, Message)> {
        if let Some(cooked) = self.row.tray.cooked {
            return Some(moisture(&self.row.tray, cooked, &self.expected));
        }
        let moisture = self.estimate.moisture_now_wet_percent?;
        match self.estimate.basis {
            drying::Basis::WeighIns => Some((moisture, say!("water-by-weigh-ins"))),
            drying::Basis::Sample => Some((moisture, say!("water-by-oven-sample"))),
            drying::Basis::Table | drying::Basis::OwnBatches => None,
        }
    }

    /// The moisture of the dried lot, % of its weight.
    pub fn dried_moisture(&self) -> Interval {
        self.own_moisture()
            .map_or_else(herbs::dried_moisture, |(moisture, _)| moisture)
    }
}

/// What was estimated of trays, for lists that show the same trays again and again.
static ESTIMATED: Mutex<BTreeMap<TrayId, (Lot, Estimate)>> = Mutex::new(BTreeMap::new());
/// More trays than one list carries.
const MOST_REMEMBERED: usize = 4000;

/// The estimate of a lot, worked out anew only where the lot is another than before.
fn estimated(id: TrayId, lot: &Lot) -> Estimate {
    if let Some((known, estimate)) = ESTIMATED
        .lock()
        .unwrap_or_else(PoisonError::into_inner)
        .get(&id)
        && known == lot
    {
        return estimate.clone();
    }
    let estimate = drying::estimate(lot);
    let mut remembered = ESTIMATED.lock().unwrap_or_else(PoisonError::into_inner);
    if remembered.len() >= MOST_REMEMBERED {
        remembered.clear();
    }
    remembered.insert(id, (lot.clone(), estimate.clone()));
    estimate
}

/// From one moment to another, in hours.
pub fn hours_between(from: DateTime<FixedOffset>, to: DateTime<FixedOffset>) -> f64 {
    (to - from).num_seconds() as f64 / 3600.0
}

/// The weigh-ins as figures, the take-down as the last of them.
fn figures(
    tray: &Tray,
    weighings: &[(WeighingId, Weighing)],
) -> Result<Vec<drying::Weighing>, Failure> {
    let figure = |at: DateTime<FixedOffset>, gross_g: f64, snaps: bool, is_confirmed: bool| {
        let since = hours_between(tray.started_at, at);
        let net = grams((gross_g - tray.tare_g).max(0.0));
        let mut figure = drying::Weighing::new(hours(since), net).at("at")?;
        if snaps {
            figure = figure.snapped();
        }
        Ok(if is_confirmed {
            figure.confirmed()
        } else {
            figure
        })
    };
    // What the lot weighed when it came down was read with care.
    let end = tray
        .down()
        .map(|end| (end.at, end.gross_g, end.snap_test, true));
    let each = weighings
        .iter()
        .map(|(_, it)| (it.at, it.gross_g, it.snap_test, it.odd));
    each.chain(end)
        .map(|(at, gross_g, snaps, is_confirmed)| figure(at, gross_g, snaps, is_confirmed))
        .collect()
}

/// The step of the scale by the figures it showed: tenths once one was not whole.
fn scale_step(tray: &Tray, weighings: &[(WeighingId, Weighing)]) -> Mass {
    let shown = weighings.iter().map(|(_, it)| it.gross_g);
    let all = shown
        .chain([tray.fresh_mass_g, tray.tare_g])
        .chain(tray.down().map(|it| it.gross_g));
    let is_whole = all.into_iter().all(|figure| figure.fract() == 0.0);
    grams(if is_whole { 1.0 } else { 0.1 })
}

/// What was measured of the air, by the hour: what tells of the run.
fn air_of_run(tray: &Tray, weighings: &[(WeighingId, Weighing)]) -> Result<Option<Air>, Failure> {
    let at_start = tray.air.map(|it| (0.0, it));
    let noted = weighings.iter().filter_map(|(_, weighing)| {
        let hours = hours_between(tray.started_at, weighing.at);
        weighing.air.map(|it| (hours, it))
    });
    let figures = at_start
        .into_iter()
        .chain(noted)
        .map(|(hours, it)| Ok((hours, air(&it)?)));
    let figures: Vec<(f64, drying::Air)> = figures.collect::<Result<_, Failure>>()?;
    Ok(drying::Air::of_run(&figures).map(|it| Air {
        temperature_c: degrees_celsius(it.temperature),
        relative_humidity_percent: 100.0 * it.humidity.get(),
    }))
}

/// The sample as figures. The scale is the one that was named; otherwise one that shows tenths
/// where a tenth was written down, and the tray's own where none was.
pub fn oven_sample(sample: journal::OvenSample, step: Mass) -> Result<OvenSample, Failure> {
    let has_tenths = sample.fresh_g.fract() != 0.0 || sample.dry_g.fract() != 0.0;
    let implied = if has_tenths { grams(0.1) } else { step };
    let step = sample.scale_step_g.map_or(implied, grams);
    OvenSample::new(grams(sample.fresh_g), grams(sample.dry_g), step).at("dry_g")
}

/// The water of what was strained, % of its weight, and what that rests on.
///
/// By a refractometer `100 - Brix`; else between all of the plant's dry matter dissolved and none of it, half of it
/// being the likeliest (our own choice, no source).
pub fn moisture(tray: &Tray, cooked: Cooked, expected: &Expected) -> (Interval, Message) {
    const LEAST: f64 = 20.0;
    const MOST: f64 = 99.0;
    if let Some(sugar) = cooked.sugar_percent_mass {
        let water = (100.0 - sugar).min(MOST);
        // A hand refractometer is read to half a per cent (common practice, no source).
        let range = Interval::spanning(water, (water - 0.5).max(0.0), (water + 0.5).min(MOST));
        return (range, say!("cooked-water-by-refractometer"));
    }
    let wet = match cooked.from {
        Some(_) => formulary::herbs::dried_moisture(),
        None => expected.prior.fresh_water_wet_percent(),
    };
    let net = tray.dried().get().max(0.001);
    let solids = |moisture: f64| 100.0 * tray.fresh_mass_g * (1.0 - moisture / 100.0) / net;
    let low = (100.0 - solids(wet.low)).clamp(LEAST, MOST);
    let value = (100.0 - 0.5 * solids(wet.value)).clamp(low, MOST);
    let range = Interval {
        low,
        value,
        high: MOST,
    };
    (range, say!("cooked-water-from-the-pot"))
}

/// Nothing is learned any more of what was thrown away.
pub fn refuse_if_lost(tray: &Tray) -> Result<(), Failure> {
    match &tray.lost {
        Some(lost) => {
            let day = lost.at.date_naive();
            Err(Failure::invalid("tray", say!("tray-thrown-away-on", day)))
        }
        None => Ok(()),
    }
}

pub fn refuse_if_ended(tray: &Tray) -> Result<(), Failure> {
    refuse_if_lost(tray)?;
    match tray.taken_down {
        Some(end) => {
            let day = end.at.date_naive();
            Err(Failure::invalid("tray", say!("tray-down-already", day)))
        }
        None => Ok(()),
    }
}
