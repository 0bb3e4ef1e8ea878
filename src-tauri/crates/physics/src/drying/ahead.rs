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
pub(crate) const SHORTEST: f64 = 12.0;
/// A range wider than this many times its middle is of no use to anybody.
const WIDEST: f64 = 8.0;

/// The hours left, or why not.
pub(crate) enum Ahead {
    Hours(Interval),
    MayNotGetThere,
    TooUncertain,
}

/// Hours from the last weigh-in until a weight is reached, each with its share, and the share of
/// what never comes down to it.
#[derive(Default)]
struct Arrivals {
    times: Vec<(f64, f64)>,
    never: f64,
}

impl Arrivals {
    /// From the weight now until each goal, a goal being a weight with its share given ln of the end weight.
    fn of<const N: usize>(reading: &Reading, goals: impl Fn(f64) -> [(f64, f64); N]) -> Self {
        let fresh_g = reading.lot.fresh_g;
        let mass_g = reading.weighings.last().map_or(fresh_g, |w| w.1);
        let mut found = Self::default();
        for c in reading.posterior.heaviest() {
            let (mean, variance) = reading.ln_end(c);
            for (z_end, w_end) in NODES {
                let ln_end = mean + z_end * libm::sqrt(variance);
                let end_g = libm::exp(ln_end);
                for (goal_g, share) in goals(ln_end) {
                    let weight = c.weight * w_end * share;
                    if mass_g <= goal_g {
                        found.times.push((0.0, weight));
                    } else if goal_g <= 1.001 * end_g {
                        found.never += weight;
                    } else {
                        let span_g = (fresh_g - end_g).max(1e-9);
                        // From where the curve has today's weight, not from today: so the model's
                        // error up to now does not carry over.
                        let from = c.hours_at(((mass_g - end_g) / span_g).min(1.0));
                        let hours = c.hours_at((goal_g - end_g) / span_g) - from;
                        found.times.push((hours, weight));
                    }
                }
            }
        }
        found.times.sort_by(|a, b| a.0.total_cmp(&b.0));
        found
    }

    fn arrives(&self) -> f64 {
        self.times.iter().map(|t| t.1).sum()
    }

    /// The hours after which this share has arrived; what never does counts as later than any other,
    /// so the middle is honest.
    fn at(&self, share: f64) -> f64 {
        let limit = share * (self.arrives() + self.never);
        let mut sum = 0.0;
        for &(hours, weight) in &self.times {
            sum += weight;
            if sum >= limit {
                return hours.max(0.0);
            }
        }
        self.times.last().map_or(0.0, |t| t.0.max(0.0))
    }
}

/// Hours from the last weigh-in until the lot is ready, given that it gets there at all.
pub(crate) fn hours_left(reading: &Reading) -> Ahead {
    if reading.weighings.is_empty() {
        return Ahead::TooUncertain;
    }
    let per_dry = 1.0 / (1.0 - ready_moisture(reading.lot));
    let (intercept, slope, rest) = reading.posterior.dry_given_end;
    let found = Arrivals::of(reading, |ln_end| {
        NODES.map(|(z_dry, share)| {
            let ln_dry = intercept + slope * ln_end + z_dry * libm::sqrt(rest);
            (per_dry * libm::exp(ln_dry), share)
        })
    });
    if found.arrives() <= found.never {
        return Ahead::MayNotGetThere;
    }
    let value = found.at(0.5);
    let low = found.at(0.05) * libm::exp(-WEATHER);
    let high = found.at(0.95).max(SHORTEST) * libm::exp(WEATHER);
    if high > WIDEST * value.max(SHORTEST) {
        Ahead::TooUncertain
    } else {
        Ahead::Hours(Interval::spanning(value, low, high))
    }
}

/// Hours from the last weigh-in until the lot is down to `goal_g`, half of all lots being later;
/// `None` where most never are.
pub(crate) fn hours_until(reading: &Reading, goal_g: f64) -> Option<f64> {
    let found = Arrivals::of(reading, |_| [(goal_g, 1.0)]);
    (found.arrives() > found.never).then(|| found.at(0.5))
}
