//! What lies ahead: the hours left.

use super::{estimate::ready_moisture, reading::Reading};
use crate::interval::Interval;

/// Gauss-Hermite nodes and weights of a standard normal variable, three points.
const NODES: [(f64, f64); 3] = [
    (-1.732_050_807_568_877_2, 1.0 / 6.0),
    (0.0, 2.0 / 3.0),
    (1.732_050_807_568_877_2, 1.0 / 6.0),
];

/// The ends of a range move apart by this much, in the logarithm, for weather that nobody knows yet;
/// checked by coverage.
const WEATHER: f64 = 0.4;
/// No end of a range is told finer than half a day and night.
const SHORTEST: f64 = 12.0;
/// A range wider than this many times its middle is of no use to anybody.
const WIDEST: f64 = 8.0;

/// The hours left, or why not.
pub(crate) enum Ahead {
    Hours(Interval),
    MayNotGetThere,
    TooUncertain,
}

/// Hours from the last weigh-in until the lot is ready, given that it gets there at all.
pub(crate) fn hours_left(reading: &Reading) -> Ahead {
    let Some(&(_, mass_g)) = reading.weighings.last() else {
        return Ahead::TooUncertain;
    };
    let fresh_g = reading.lot.fresh_g;
    let per_dry = 1.0 / (1.0 - ready_moisture(reading.lot));
    let (intercept, slope, rest) = reading.posterior.dry_given_end;
    let (mut times, mut never) = (Vec::new(), 0.0);
    for c in reading.posterior.heaviest() {
        for (z_end, w_end) in NODES {
            let ln_end = c.ln_end.0 + z_end * libm::sqrt(c.ln_end.1);
            let end_g = libm::exp(ln_end);
            for (z_dry, w_dry) in NODES {
                let weight = c.weight * w_end * w_dry;
                let stop_g =
                    per_dry * libm::exp(intercept + slope * ln_end + z_dry * libm::sqrt(rest));
                if mass_g <= stop_g {
                    times.push((0.0, weight));
                } else if stop_g <= 1.001 * end_g {
                    never += weight;
                } else {
                    let span_g = (fresh_g - end_g).max(1e-9);
                    // From where the curve has today's weight, not from today: so the model's
                    // error up to now does not carry over.
                    let from = c.hours_at(((mass_g - end_g) / span_g).min(1.0));
                    times.push((c.hours_at((stop_g - end_g) / span_g) - from, weight));
                }
            }
        }
    }
    let arrives: f64 = times.iter().map(|t| t.1).sum();
    if arrives <= never {
        return Ahead::MayNotGetThere;
    }
    times.sort_by(|a, b| a.0.total_cmp(&b.0));
    // Ends that are never reached count as later than any other, so the middle is honest.
    let at = |p: f64| {
        let mut sum = 0.0;
        for &(hours, weight) in &times {
            sum += weight;
            if sum >= p {
                return hours.max(0.0);
            }
        }
        times.last().map_or(0.0, |t| t.0.max(0.0))
    };
    let all = arrives + never;
    let value = at(0.5 * all);
    let low = at(0.05 * all) * libm::exp(-WEATHER);
    let high = at(0.95 * all).max(SHORTEST) * libm::exp(WEATHER);
    if high > WIDEST * value.max(SHORTEST) {
        Ahead::TooUncertain
    } else {
        Ahead::Hours(Interval::spanning(value, low, high))
    }
}
