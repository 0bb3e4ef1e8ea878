//! A lot with its weigh-ins sifted, its posterior, and the rules on what may be said of it.

use super::{
    lot::Lot,
    posterior::{Component, Posterior, Problem},
    sorption,
    spread::Spread,
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
/// The interval of a posterior is spread by this much; checked by coverage.
const CAUTION: f64 = 1.2;
/// SD of ln D that no weigh-in removes: lost crumbs, tare, uneven lots.
const REMAINDER_SD: f64 = 0.008;
/// Least moisture (dry basis) of anything that hangs in room air.
const LEAST_MOISTURE: f64 = 0.03;
/// Hours over which a weight must have kept still.
const STILL_HOURS: f64 = 36.0;
/// How far the weight may wander while it counts as still, and how far it may have sunk.
const STILL_RANGE: f64 = 0.015;
const STILL_DROP: f64 = 0.010;

pub(crate) struct Reading<'a> {
    pub lot: &'a Lot,
    /// Hours and grams of the weigh-ins that count, by time.
    pub weighings: Vec<(f64, f64)>,
    pub odd: Vec<usize>,
    pub posterior: Posterior,
    pub gate_is_open: bool,
    /// ln of the dry matter in grams.
    pub dry: Spread,
    pub is_still: bool,
}

impl<'a> Reading<'a> {
    pub fn of(lot: &'a Lot) -> Self {
        let (weighings, odd) = sift(lot);
        let is_still = is_still(&weighings, lot.scale_step_g);
        let after_start = weighings
            .iter()
            .position(|w| w.0 > 0.0)
            .unwrap_or(weighings.len());
        let posterior = Problem {
            fresh_g: lot.fresh_g,
            scale_step_g: lot.scale_step_g,
            prior: lot.prior,
            pace: lot.pace,
            end_moisture: end_moisture(lot),
            weighings: &weighings[after_start..],
        }
        .solve();
        let gate_is_open = weighings.last().is_some_and(|&(hours, mass_g)| {
            (mass_g <= heaviest_dry_g(lot) && share_lost_by_prior(lot, mass_g) >= GATE_SHARE)
                || (hours >= 60.0 && is_still)
        });
        let components = if gate_is_open {
            spread_out(&posterior)
        } else {
            vec![(
                1.0,
                libm::log(lot.fresh_g) + lot.prior.mean,
                lot.prior.sd * lot.prior.sd,
            )]
        };
        let lightest = weighings.iter().fold(f64::MAX, |least, w| least.min(w.1));
        let highest =
            ((lightest + 0.5 * lot.scale_step_g) / (1.0 + LEAST_MOISTURE)).min(lot.fresh_g);
        let dry = Spread::new(components, libm::log(highest));
        Self {
            lot,
            weighings,
            odd,
            posterior,
            gate_is_open,
            dry,
            is_still,
        }
    }

    /// Probability that the lot, as last weighed, holds at most this moisture (wet basis).
    pub fn probability_at_most(&self, moisture: f64) -> f64 {
        self.weighings.last().map_or(0.0, |w| {
            1.0 - self
                .dry
                .probability_below(libm::log(w.1 * (1.0 - moisture)))
        })
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
        Some(air) => sorption::room_limit(air).map_or((ANY_ROOM.0, 2.0 * ANY_ROOM.1), |(m, sd)| {
            (m.get(), libm::sqrt(sd * sd + NOTED_AIR_SD * NOTED_AIR_SD))
        }),
    }
}

/// The weigh-ins that count, by time, and the indices of those that cannot be.
fn sift(lot: &Lot) -> (Vec<(f64, f64)>, Vec<usize>) {
    let lightest = lot.fresh_g * libm::exp(lot.prior.mean - 4.0 * lot.prior.sd.max(0.2));
    let possible = lightest - lot.scale_step_g..=lot.fresh_g + lot.scale_step_g;
    let (mut kept, mut odd) = (Vec::new(), Vec::new());
    for (index, w) in lot.weighings.iter().enumerate() {
        if w.mass_g > 0.0 && possible.contains(&w.mass_g) {
            kept.push((w.hours, w.mass_g));
        } else {
            odd.push(index);
        }
    }
    kept.sort_by(|a, b| a.0.total_cmp(&b.0));
    (kept, odd)
}

/// Whether the weight has kept still, within 1.5 % or one scale step, for 36 hours and does not sink.
fn is_still(weighings: &[(f64, f64)], scale_step_g: f64) -> bool {
    let Some(&(hours, mass_g)) = weighings.last() else {
        return false;
    };
    let allowed = |share: f64| (share * mass_g).max(scale_step_g) * (1.0 + 1e-9);
    let (mut low, mut high) = (mass_g, mass_g);
    for &(t, w) in weighings.iter().rev() {
        low = low.min(w);
        high = high.max(w);
        if high - low > allowed(STILL_RANGE) {
            return false;
        }
        if hours - t >= STILL_HOURS {
            return w - mass_g <= allowed(STILL_DROP);
        }
    }
    false
}
