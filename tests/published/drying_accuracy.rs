//! How well the rack's forecast does on simulated batches, printed as a table and held to its goals.
//!
//! Truth in the simulation has two compartments, a capped early rate in four batches of ten, day and
//! night air with drifting weather, and an equilibrium that differs by lot, so it is not the model
//! that is fitted. Noise and shape were searched on batches 1-150; the gate, the tail, the interval factor
//! and the margins of the done rule were then chosen with all 300 in sight, so these figures flatter a
//! little: other batches of the kind are the real test, and `drying_simulation` draws some. Run with
//! `cargo dev accuracy`.

#![allow(
    clippy::unwrap_used,
    reason = "a failed step fails the test, which is what is wanted"
)]

mod drying_doubts;
mod drying_learning;
mod drying_scenes;
mod drying_simulation;

use checks::table;
use physics::{
    drying::{
        Air, DryMatterPrior, Lot, OvenSample, Pace, RelativeHumidity, Weighing, estimate, sorption,
    },
    quantity::{celsius, grams},
};
use uom::si::{f64::Time, time::hour};

/// Moisture below which a herb snaps (common practice, no source).
const SNAPS_BELOW: f64 = 0.125;

struct WeighIn {
    hours: f64,
    mass_g: f64,
    celsius: f64,
    humidity_percent: f64,
    true_moisture: f64,
}

struct Batch {
    fresh_g: f64,
    prior: DryMatterPrior,
    pace: Pace,
    dry_g: f64,
    plateau_g: f64,
    /// When it first held 12 % moisture, if it ever did.
    ready_h: Option<f64>,
    weigh_ins: Vec<WeighIn>,
}

impl Batch {
    fn true_target_g(&self) -> f64 {
        self.dry_g / 0.9
    }

    /// The first weigh-in at which this share of the losable water was gone.
    fn stage(&self, share: f64) -> Option<usize> {
        let loss_g = share * (self.fresh_g - self.plateau_g);
        self.weigh_ins
            .iter()
            .position(|w| self.fresh_g - self.dry_g / (1.0 - w.true_moisture) >= loss_g)
    }

    fn mean_air(&self, upto: usize) -> Air {
        let seen = &self.weigh_ins[..=upto];
        let mean = |of: fn(&WeighIn) -> f64| seen.iter().map(of).sum::<f64>() / seen.len() as f64;
        Air {
            temperature: celsius(mean(|w| w.celsius)),
            humidity: RelativeHumidity::from_percent(mean(|w| w.humidity_percent)).unwrap(),
        }
    }

    fn lot(&self, upto: usize, with_air: bool, keep_last: usize) -> Lot {
        self.lot_tried(upto, with_air, keep_last, false)
    }

    /// The same, tried by hand at each weigh-in if so said.
    fn lot_tried(&self, upto: usize, with_air: bool, keep_last: usize, is_tried: bool) -> Lot {
        let seen = &self.weigh_ins[1..=upto];
        let weighings = seen[seen.len().saturating_sub(keep_last)..]
            .iter()
            .map(|w| {
                let it = Weighing::new(Time::new::<hour>(w.hours), grams(w.mass_g)).unwrap();
                let snaps = is_tried && w.true_moisture < SNAPS_BELOW;
                if snaps { it.snapped() } else { it }
            })
            .collect();
        Lot::new(grams(self.fresh_g), self.prior)
            .unwrap()
            .pace(self.pace)
            .weighings(weighings)
            .air(with_air.then(|| self.mean_air(upto)))
    }
}

fn batches() -> Vec<Batch> {
    let truth = table("simulated_truth");
    assert_eq!(truth.len(), 300);
    let mut batches: Vec<Batch> = truth
        .iter()
        .map(|row| Batch {
            fresh_g: row.number("fresh_g"),
            prior: DryMatterPrior::new(
                row.number("prior_ln_dm_mean"),
                row.number("prior_ln_dm_sd"),
            )
            .unwrap(),
            pace: match row.text("part_class") {
                "root" | "fruit" | "bark" => Pace::Dense,
                _ => Pace::Leafy,
            },
            dry_g: row.number("true_dry_matter_g"),
            plateau_g: row.number("true_plateau_24h_g"),
            ready_h: row.number_or_blank("true_t_to_12pct_wb_h"),
            weigh_ins: Vec::new(),
        })
        .collect();
    let rows = table("simulated_drying");
    assert_eq!(rows.len(), 6629);
    for row in rows {
        let case = row.number("case") as usize;
        batches[case - 1].weigh_ins.push(WeighIn {
            hours: row.number("t_h"),
            mass_g: row.number("weight_g"),
            celsius: row.number("air_T_C"),
            humidity_percent: row.number("air_RH_pct"),
            true_moisture: row.number("true_moisture_wb_pct") / 100.0,
        });
    }
    batches
}

/// The value below which this share of the values lies.
fn quantile(values: &mut [f64], share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    let at = share * (values.len() - 1) as f64;
    let (low, high) = (at.floor() as usize, at.ceil() as usize);
    values[low] + (at - at.floor()) * (values[high] - values[low])
}

/// Errors in per cent, and how often the 90 % interval held, in per cent.
struct Figures {
    median: f64,
    coverage: f64,
}

#[derive(Default)]
struct Tally {
    errors: Vec<f64>,
    held: usize,
    time_errors: Vec<f64>,
    time_held: usize,
}

impl Tally {
    fn add(&mut self, batch: &Batch, lot: &Lot, now_h: f64) {
        let now = estimate(lot);
        let (target, truth) = (now.target_mass_g, batch.true_target_g());
        self.errors.push(100.0 * (target.value / truth - 1.0).abs());
        self.held += usize::from((target.low..=target.high).contains(&truth));
        let left = batch
            .ready_h
            .map(|ready_h| ready_h - now_h)
            .filter(|left| *left > 0.0);
        if let (Some(left), Some(range)) = (left, now.hours_left) {
            self.time_errors
                .push(100.0 * (range.value / left - 1.0).abs());
            self.time_held += usize::from((range.low..=range.high).contains(&left));
        }
    }

    fn print(mut self, when: &str) -> Figures {
        let n = self.errors.len();
        let coverage = 100.0 * self.held as f64 / n as f64;
        let (median, tenth) = (
            quantile(&mut self.errors, 0.5),
            quantile(&mut self.errors, 0.9),
        );
        let timed = self.time_errors.len();
        let time = if timed < 20 {
            format!("time left not said ({timed})")
        } else {
            format!(
                "time left {:.0} %, held {:.0} % of {timed}",
                quantile(&mut self.time_errors, 0.5),
                100.0 * self.time_held as f64 / timed as f64
            )
        };
        println!("{when:<44} {n:>4}  {median:>5.2} %  {tenth:>5.1} %  {coverage:>5.1} %   {time}");
        Figures { median, coverage }
    }
}

fn at_stage(
    batches: &[Batch],
    share: f64,
    with_air: bool,
    keep_last: usize,
    when: &str,
) -> Figures {
    let mut tally = Tally::default();
    for batch in batches {
        let upto = if share >= 1.0 {
            Some(batch.weigh_ins.len() - 1)
        } else {
            batch.stage(share)
        };
        if let Some(upto) = upto {
            tally.add(
                batch,
                &batch.lot(upto, with_air, keep_last),
                batch.weigh_ins[upto].hours,
            );
        }
    }
    tally.print(when)
}

#[test]
fn estimates_meet_their_goals() {
    let batches = batches();
    println!("error of the stop weight                        n  median  90th pct   90 % holds");
    let prior = at_stage(&batches, 0.0, false, usize::MAX, "no weigh-in, table prior");
    assert!(prior.median <= 15.0 && (87.0..=93.0).contains(&prior.coverage));
    for (share, limit) in [
        (0.30, prior.median),
        (0.50, prior.median),
        (0.70, prior.median),
        (0.85, prior.median),
        (0.95, 7.0),
        (0.98, 3.5),
        (1.00, 1.6),
    ] {
        let what = if share >= 1.0 {
            "plateau".into()
        } else {
            format!("{:.0} % of the water lost", 100.0 * share)
        };
        let own = at_stage(
            &batches,
            share,
            false,
            usize::MAX,
            &format!("{what}, own rhythm"),
        );
        let aired = at_stage(
            &batches,
            share,
            true,
            usize::MAX,
            &format!("{what}, air noted"),
        );
        let three = at_stage(
            &batches,
            share,
            false,
            3,
            &format!("{what}, last three weigh-ins"),
        );
        assert!(
            own.median <= limit,
            "{what}: {} % is above {limit} %",
            own.median
        );
        for figures in [&own, &aired, &three] {
            assert!(
                figures.coverage >= 87.0,
                "{what}: the interval holds {} %",
                figures.coverage
            );
        }
        assert!(
            share > 0.98 || aired.median <= limit,
            "{what}, air noted: {} %",
            aired.median
        );
        if share >= 1.0 {
            assert!(
                aired.median <= 1.6,
                "plateau, air noted: {} %",
                aired.median
            );
        }
    }
}

#[test]
fn an_oven_sample_measures_the_lot_from_the_first_hour() {
    let batches = batches();
    // 15 g leave about 3 g, of which a reading in whole grams is off by a quarter of a gram in the middle.
    for (step_g, limit) in [(0.1, 2.5), (1.0, 10.0)] {
        let (mut tally, mut widths) = (Tally::default(), Vec::new());
        for batch in &batches {
            let dry_g = (15.0 * batch.dry_g / batch.fresh_g / step_g).round() * step_g;
            let sample =
                OvenSample::new(grams(15.0), grams(dry_g.max(step_g)), grams(step_g)).unwrap();
            let lot = batch.lot(0, false, 0).sample(sample);
            let held = estimate(&lot).target_mass_g;
            widths.push(50.0 * (held.high - held.low) / held.value);
            tally.add(batch, &lot, 0.0);
        }
        let figures = tally.print(&format!("oven sample of 15 g, {step_g} g scale"));
        println!(
            "    half width of its interval {:.1} %",
            quantile(&mut widths, 0.5)
        );
        assert!(figures.median <= limit);
        assert!(figures.coverage >= 87.0, "held {} %", figures.coverage);
    }
}

/// What the done rule did with lots of 100 g and more in a dry room: per cent of calls above 14 %
/// moisture, and per cent of lots called within four days of being ready. Where nobody noted the air only a
/// lot that snaps is called dry, so there each is tried by hand as well.
fn done_rule(batches: &[Batch], with_air: bool) -> (f64, f64) {
    let (mut lots, mut calls, mut in_four_days, mut too_damp) = (0, 0, 0, 0);
    for batch in batches {
        let last = batch.weigh_ins.len() - 1;
        let limit = sorption::room_limit_wet_percent(batch.mean_air(last));
        let is_dry_room = limit.is_some_and(|limit| limit.value <= 11.5);
        if !is_dry_room || batch.true_target_g() < 100.0 {
            continue;
        }
        lots += 1;
        let call = (1..=last)
            .find(|&upto| estimate(&batch.lot_tried(upto, with_air, usize::MAX, !with_air)).is_dry);
        if let Some(call) = call {
            let at = &batch.weigh_ins[call];
            calls += 1;
            too_damp += usize::from(at.true_moisture > 0.14);
            in_four_days += usize::from(batch.ready_h.is_some_and(|h| at.hours <= h + 96.0));
        }
    }
    let percent = |part: usize, whole: usize| 100.0 * part as f64 / whole as f64;
    let (damp, told) = (percent(too_damp, calls), percent(in_four_days, lots));
    println!(
        "done rule, {}: {lots} lots of 100 g and more in a dry room, {calls} called, {too_damp} above 14 % ({damp:.1} %), within 4 days {told:.0} %",
        if with_air {
            "air noted"
        } else {
            "air not noted, tried by hand"
        },
    );
    (damp, told)
}

#[test]
fn the_done_rule_rarely_calls_a_lot_too_early() {
    let batches = batches();
    for with_air in [false, true] {
        let (damp, told) = done_rule(&batches, with_air);
        assert!(damp <= 3.0 && told >= 30.0, "{damp} % damp, {told} % told");
    }
}

/// The same figures on 2,400 batches that nobody tuned anything on; on fewer where the build is slow,
/// and then too few lots are called dry to say how many in a hundred are called too early.
/// Without a note of the air the error at the plateau is what rooms and lots differ by, about 1.6 %, so
/// it is printed and not held.
#[test]
fn batches_drawn_afresh_do_as_well() {
    let are_few = cfg!(debug_assertions);
    let count = if are_few { 400 } else { 2400 };
    let fresh = drying_simulation::drawn(&batches(), count, 4);
    println!("error of the stop weight, batches drawn afresh  n  median  90th pct   90 % holds");
    for (share, limit) in [
        (0.0, Some(15.0)),
        (0.30, Some(15.0)),
        (0.50, Some(15.0)),
        (0.70, Some(15.0)),
        (0.85, Some(15.0)),
        (0.95, Some(7.0)),
        (0.98, Some(3.5)),
        (1.0, None),
    ] {
        let when = format!("afresh, {:.0} % of the water lost", 100.0 * share);
        let own = at_stage(&fresh, share, false, usize::MAX, &when);
        let aired = at_stage(
            &fresh,
            share,
            true,
            usize::MAX,
            &format!("{when}, air noted"),
        );
        for figures in [own, aired] {
            assert!(
                limit.is_none_or(|limit| figures.median <= limit),
                "{when}: {} %",
                figures.median
            );
            assert!(figures.coverage >= 87.0, "{when}: {} %", figures.coverage);
        }
    }
    for with_air in [false, true] {
        let (damp, told) = done_rule(&fresh, with_air);
        assert!(told >= 30.0, "{told} % told");
        assert!(are_few || damp <= 3.0, "{damp} % damp");
    }
}
