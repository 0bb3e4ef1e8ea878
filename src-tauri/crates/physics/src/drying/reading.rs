//! A lot with its weigh-ins sifted, its posterior, and the rules on what may be said of it.

use super::{
    doubt::{self, DAMP_ROOM, OVEN},
    lot::{Lot, Pace},
    posterior::{Component, Posterior, Problem},
    rest::without_rests,
    sift::{Look, sift, step_shown},
    sorption,
    spread::{Spread, normal_cdf},
};

/// Mean and SD of the equilibrium moisture (dry basis) in a room whose air was not noted;
/// engineering default.
const ANY_ROOM: (f64, f64) = (0.112, 0.028);
/// SD (dry basis) of what a mean of the noted air misses.
const NOTED_AIR_SD: f64 = 0.008;
/// The gate opens at what 99.5 % of lots would weigh dry. Below it a stall means closed
/// stomata, not the end: cut leaves stall at 20-30 % of the loss.
const GATE_SDS: f64 = 2.6;
/// Nor does it open before an average lot of the kind would have lost this share of its
/// water: a berry of half dry matter is light enough from the first day.
const GATE_SHARE: f64 = 0.7;
/// Mean and SD of the equilibrium moisture (dry basis) in air too damp or warm for the isotherm; chamomile
/// holds 0.52 at 90 % (abstract), herb leaf by the default 0.20 at 80 %; engineering default.
const STRANGE_ROOM: (f64, f64) = (0.20, 0.08);
/// Hours of a run after which a rest above all that a lot of its kind weighs dry may be its end.
const HIGH_REST_HOURS: f64 = 60.0;
/// Share of lots that were weighed with dew on them, and what it adds to ln F; engineering default.
const DEW: (f64, f64) = (0.12, -0.16);
/// The interval of a posterior is spread by this much; checked by coverage.
const CAUTION: f64 = 1.2;
/// SD of ln D that no weigh-in removes: lost crumbs, tare, uneven lots.
const REMAINDER_SD: f64 = 0.008;
/// What dries out loses the last of its water no faster than the rest; a rate constant so many times that of
/// the run before tells that it stopped on its way.
const SUDDEN: f64 = 1.5;
/// Least moisture (dry basis) of anything that hangs in room air.
const LEAST_MOISTURE: f64 = 0.03;
/// Least moisture (dry basis) of what came out of an oven.
const LEAST_OVEN_MOISTURE: f64 = 0.01;
/// Hours over which a weight must have kept still; the middle of a root gives its water up late.
const STILL_HOURS: f64 = 36.0;
const STILL_HOURS_DENSE: f64 = 72.0;
/// How far the weight may wander while it counts as still, and how far it may have sunk.
const STILL_RANGE: f64 = 0.015;
const STILL_DROP: f64 = 0.010;
/// A snap test holds while the lot has not become heavier than this share since.
const SNAP_RISE: f64 = 0.02;
/// Moisture (wet basis) around which a herb stops to snap, and how far lots and hands differ; common
/// practice, no source.
const SNAP: (f64, f64) = (0.125, 0.018);

pub(crate) struct Reading<'a> {
    pub lot: &'a Lot,
    /// Hours and grams of the looks that count, by time.
    pub weighings: Vec<(f64, f64)>,
    pub odd: Vec<usize>,
    /// The step that the scale shows.
    pub step_g: f64,
    pub posterior: Posterior,
    pub gate_is_open: bool,
    /// ln of the dry matter in grams, if all is as it seems.
    pub dry: Spread,
    /// The same with what else the weights may mean.
    pub wide: Spread,
    pub is_still: bool,
    /// Whether it has kept still for twice as long as that takes.
    pub is_long_still: bool,
    /// Hours of the telling weigh-ins, and the same without the rests that are over.
    clock: Vec<(f64, f64)>,
    /// Whether it came to rest more suddenly than a lot that dries out.
    pub is_sudden: bool,
    /// Whether it snapped and has not become damper since.
    pub has_snapped: bool,
}

impl<'a> Reading<'a> {
    pub fn of(lot: &'a Lot) -> Self {
        let step_g = step_shown(lot);
        let sifted = sift(lot, step_g);
        let weighings: Vec<(f64, f64)> = sifted
            .looks
            .iter()
            .map(|it| (it.hours, it.mass_g))
            .collect();
        let telling: Vec<(f64, f64)> = sifted
            .telling()
            .filter(|it| it.hours > 0.0)
            .map(|it| (it.hours, it.mass_g))
            .collect();
        let is_still = is_still(&weighings, step_g, lot.pace);
        let rest_h = rest_hours(&weighings, step_g);
        let now = weighings.last().copied();
        let has_snapped = now.is_some_and(|(_, mass_g)| {
            let most = |it: &Look| it.mass_g * (1.0 + SNAP_RISE) + step_g;
            sifted.looks.iter().any(|it| it.snaps && mass_g <= most(it))
        });
        let end_moisture = end_moisture(lot);
        let clock = without_rests(lot.fresh_g, &telling, step_g);
        let posterior = Problem {
            fresh_g: lot.fresh_g,
            scale_step_g: step_g,
            prior: lot.prior,
            pace: lot.pace,
            end_moisture,
            weighings: &clock,
        }
        .solve();
        let gate_is_open = telling.iter().any(|&(_, mass_g)| {
            mass_g <= heaviest_dry_g(lot) && share_lost_by_prior(lot, mass_g) >= GATE_SHARE
        });
        let ln_fresh = libm::log(lot.fresh_g);
        let known = vec![(1.0, ln_fresh + lot.prior.mean, lot.prior.sd * lot.prior.sd)];
        let rests_high =
            !gate_is_open && is_still && weighings.last().is_some_and(|w| w.0 >= HIGH_REST_HOURS);
        let parts = if gate_is_open {
            spread_out(&posterior)
        } else if rests_high {
            // Either the plant is unlike its kind, or cut leaves closed their stomata.
            let mut both = spread_out(&posterior);
            both.extend(known);
            both.iter_mut().for_each(|part| part.0 *= 0.5);
            both
        } else {
            known
        };
        let mut wider = parts.clone();
        if gate_is_open {
            if lot.air.is_none() {
                doubt::beside(&mut wider, &DAMP_ROOM, end_moisture, lot.prior);
            }
            if sifted.was_warmed {
                doubt::beside(&mut wider, &OVEN, end_moisture, lot.prior);
            }
            let now = (posterior.ln_dry_mean(), rest_h);
            doubt::rest_on_the_way(&mut wider, now, ln_fresh, lot.prior);
        } else if now.is_some() {
            let dewy = DEW.0;
            let dew = (
                dewy,
                ln_fresh + lot.prior.mean + DEW.1,
                lot.prior.sd * lot.prior.sd,
            );
            wider.iter_mut().for_each(|part| part.0 *= 1.0 - dewy);
            wider.push(dew);
        }
        let least = if sifted.was_warmed {
            LEAST_OVEN_MOISTURE
        } else {
            LEAST_MOISTURE
        };
        let highest = ((confirmed_g(&telling) + 0.5 * step_g) / (1.0 + least)).min(lot.fresh_g);
        let cut = libm::log(highest);
        Self {
            lot,
            odd: sifted.odd,
            step_g,
            posterior,
            gate_is_open,
            dry: Spread::new(parts, cut),
            wide: Spread::new(wider, cut),
            is_still,
            is_long_still: is_still && rest_h >= 2.0 * still_hours(lot.pace),
            clock: telling
                .iter()
                .map(|w| w.0)
                .zip(clock.iter().map(|w| w.0))
                .collect(),
            is_sudden: is_sudden(lot.fresh_g, &weighings, step_g),
            weighings,
            has_snapped,
        }
    }

    /// Hours that the lot has dried for by an hour of its run: those of rests that are over do not count.
    pub fn hours_dried(&self, hours: f64) -> f64 {
        let (mut from, mut to) = ((0.0, 0.0), None);
        for &point in &self.clock {
            if point.0 >= hours {
                to = Some(point);
                break;
            }
            from = point;
        }
        to.map_or(from.1 + hours - from.0, |to| {
            from.1 + (to.1 - from.1) * (hours - from.0) / (to.0 - from.0).max(1e-9)
        })
    }

    /// Hours of rests that are over.
    pub fn hours_rested(&self) -> f64 {
        self.clock
            .last()
            .map_or(0.0, |&(hours, dried)| hours - dried)
    }

    /// The same probability as [`Self::probability_at_most`], by the weights alone.
    pub fn probability_by_weight(&self, moisture: f64) -> f64 {
        self.weighings.last().map_or(0.0, |&(_, mass_g)| {
            1.0 - self
                .wide
                .probability_below(libm::log(mass_g * (1.0 - moisture)))
        })
    }

    /// Probability that the lot, as last weighed, holds at most this moisture (wet basis).
    pub fn probability_at_most(&self, moisture: f64) -> f64 {
        let at_most = |m: f64| self.probability_by_weight(m);
        if !self.has_snapped {
            return at_most(moisture);
        }
        // Bayes' rule by slices: what snaps is more likely to be dry.
        const SLICES: u32 = 80;
        let (mut drier, mut all, mut before) = (0.0, 0.0, 0.0);
        for slice in 1..=SLICES {
            let to = f64::from(slice) / f64::from(SLICES);
            let reached = at_most(to);
            let snaps = 1.0 - normal_cdf((to - 0.5 / f64::from(SLICES) - SNAP.0) / SNAP.1);
            let share = (reached - before) * (snaps + 0.01);
            before = reached;
            all += share;
            if to <= moisture + 1e-9 {
                drier += share;
            }
        }
        drier / all.max(1e-12)
    }

    /// Mean and variance of ln of the end weight given one shape: the prior's until the gate is open.
    pub fn ln_end(&self, shape: &Component) -> (f64, f64) {
        if self.gate_is_open {
            shape.ln_end
        } else {
            let (mean, sd) = self.posterior.end_prior;
            (mean, sd * sd)
        }
    }

    /// The weight from which on weigh-ins tell of the end: this share of the losable water is gone
    /// and the gate is open.
    pub fn telling_g(&self, share: f64) -> f64 {
        let fresh_g = self.lot.fresh_g;
        let after =
            |share: f64, dry_g: f64| fresh_g - share * (fresh_g - dry_g * (1.0 + ANY_ROOM.0));
        after(share, libm::exp(self.dry.quantile(0.5)))
            .min(after(GATE_SHARE, fresh_g * libm::exp(self.lot.prior.mean)))
            .min(heaviest_dry_g(self.lot))
    }

    /// The share of its losable water that the lot has lost.
    pub fn share_lost(&self) -> f64 {
        let Some(&(_, mass_g)) = self.weighings.last() else {
            return 0.0;
        };
        let dry_g = libm::exp(self.dry.quantile(0.5));
        (self.lot.fresh_g - mass_g) / (self.lot.fresh_g - dry_g * (1.0 + ANY_ROOM.0)).max(1e-9)
    }

    /// Whether the lot lies still where no lot of its kind is dry, or went below where most end.
    pub fn is_unlike_prior(&self) -> bool {
        let Some(&(_, mass_g)) = self.weighings.last() else {
            return false;
        };
        let prior = self.lot.prior;
        let lightest_dry = self.lot.fresh_g * libm::exp(prior.mean - GATE_SDS * prior.sd);
        mass_g < lightest_dry || (self.is_still && mass_g > heaviest_dry_g(self.lot))
    }
}

/// The share of its losable water that a lot of this kind has lost, were it an average one.
fn share_lost_by_prior(lot: &Lot, mass_g: f64) -> f64 {
    let end_g = lot.fresh_g * libm::exp(lot.prior.mean) * (1.0 + ANY_ROOM.0);
    (lot.fresh_g - mass_g) / (lot.fresh_g - end_g).max(1e-9)
}

/// What a lot of this kind weighs dry at most, by its prior.
fn heaviest_dry_g(lot: &Lot) -> f64 {
    lot.fresh_g * libm::exp(lot.prior.mean + GATE_SDS * lot.prior.sd) / 0.9
}

fn spread_out(posterior: &Posterior) -> Vec<(f64, f64, f64)> {
    let mean = posterior.ln_dry_mean();
    posterior
        .components
        .iter()
        .map(|c| {
            let (m, v) = posterior.ln_dry(c);
            let variance = CAUTION * CAUTION * (v + REMAINDER_SD * REMAINDER_SD);
            (c.weight, mean + CAUTION * (m - mean), variance)
        })
        .collect()
}

fn end_moisture(lot: &Lot) -> (f64, f64) {
    match lot.air {
        None => ANY_ROOM,
        Some(air) => sorption::room_limit(air).map_or(STRANGE_ROOM, |(m, sd)| {
            (m.get(), libm::sqrt(sd * sd + NOTED_AIR_SD * NOTED_AIR_SD))
        }),
    }
}

/// The lightest weight that a second one bears out; the only one where there is no second.
fn confirmed_g(weighings: &[(f64, f64)]) -> f64 {
    let (mut lightest, mut second) = (f64::MAX, f64::MAX);
    for &(_, mass_g) in weighings {
        if mass_g < lightest {
            (lightest, second) = (mass_g, lightest);
        } else {
            second = second.min(mass_g);
        }
    }
    if second < f64::MAX { second } else { lightest }
}

/// Whether the excess over the weight at rest fell to nothing faster than it had fallen before.
fn is_sudden(fresh_g: f64, weighings: &[(f64, f64)], scale_step_g: f64) -> bool {
    let rest_h = rest_hours(weighings, scale_step_g);
    let Some(&(hours, mass_g)) = weighings.last() else {
        return false;
    };
    let Some(first) = weighings.iter().position(|w| w.0 >= hours - rest_h) else {
        return false;
    };
    let (before_h, before_g) = match first {
        0 => return false,
        first => weighings[first - 1],
    };
    let left = (STILL_RANGE * mass_g).max(scale_step_g);
    let (all, excess) = (fresh_g - mass_g, before_g - mass_g);
    if excess <= 3.0 * left || all <= excess || before_h <= 0.0 {
        return false;
    }
    let early = libm::log(all / excess) / before_h;
    let late = libm::log(excess / left) / (weighings[first].0 - before_h).max(1.0);
    late > SUDDEN * early
}

/// How long the weight has kept still, within 1.5 % or one scale step, in hours.
fn rest_hours(weighings: &[(f64, f64)], scale_step_g: f64) -> f64 {
    let Some(&(hours, mass_g)) = weighings.last() else {
        return 0.0;
    };
    let range = (STILL_RANGE * mass_g).max(scale_step_g) * (1.0 + 1e-9);
    let resting = weighings.iter().rev();
    let resting = resting.take_while(|w| (w.1 - mass_g).abs() <= range);
    resting.last().map_or(0.0, |w| hours - w.0)
}

fn still_hours(pace: Pace) -> f64 {
    match pace {
        Pace::Leafy => STILL_HOURS,
        Pace::Dense => STILL_HOURS_DENSE,
    }
}

/// Whether the weight has kept still, within 1.5 % or one scale step, for as long as its part takes and does not sink.
fn is_still(weighings: &[(f64, f64)], scale_step_g: f64, pace: Pace) -> bool {
    let Some(&(hours, mass_g)) = weighings.last() else {
        return false;
    };
    let long = still_hours(pace);
    let allowed = |share: f64| (share * mass_g).max(scale_step_g) * (1.0 + 1e-9);
    let (mut low, mut high) = (mass_g, mass_g);
    for &(t, w) in weighings.iter().rev() {
        low = low.min(w);
        high = high.max(w);
        if high - low > allowed(STILL_RANGE) {
            return false;
        }
        if hours - t >= long {
            return w - mass_g <= allowed(STILL_DROP);
        }
    }
    false
}
